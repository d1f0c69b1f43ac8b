/**
 * Whole tenths as the shortest number of a path: "-.5", "12", "3.4". A sheet writes some eight thousand of them, nearly
 * all of them small steps, so the texts of those are made once.
 */

/** Tenths of a pixel either way that stand in the tables: two hundred pixels. */
const REACH = 2000;

/** @param tenths  a whole number */
export function tenthsText(tenths: number): string {
  return tenths > -REACH && tenths < REACH ? (ALONE[tenths + REACH] ?? '') : written(tenths);
}

/** The same behind another number: a minus sign separates by itself. */
export function nextTenths(tenths: number): string {
  return tenths > -REACH && tenths < REACH ? (BEHIND[tenths + REACH] ?? '') : behind(tenths);
}

/** A place or a length to a tenth of a pixel. */
export function pxText(px: number): string {
  return tenthsText(Math.round(px * 10));
}

function written(tenths: number): string {
  const size = Math.abs(tenths);
  const digit = size % 10;
  const whole = (size - digit) / 10;
  const sign = tenths < 0 ? '-' : '';
  if (digit === 0) return sign + whole;
  return whole === 0 ? `${sign}.${digit}` : `${sign}${whole}.${digit}`;
}

function behind(tenths: number): string {
  return tenths < 0 ? written(tenths) : ` ${written(tenths)}`;
}

const ALONE: readonly string[] = Array.from({ length: 2 * REACH }, (_, i) => written(i - REACH));
const BEHIND: readonly string[] = Array.from({ length: 2 * REACH }, (_, i) => behind(i - REACH));
