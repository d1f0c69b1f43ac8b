/** A bare number of frost that was likely meant in another unit than the one it would be read in. */
import { parseQuantity } from '../../model/units.ts';

export interface FrostDoubt {
  /** "4 in" */
  readonly read: string;
  /** "4 ft" */
  readonly meant: string;
}

/** Shallower than this frost is hardly a matter, deeper than that only in the far north. Common practice, no source. */
const LEAST = 0.15;
const MOST = 3.048;

/** What may have been meant, by the unit that a bare number is read in. */
const SHALLOW: Readonly<Record<string, string>> = { in: 'ft', cm: 'm', mm: 'cm' };
const DEEP: Readonly<Record<string, string>> = { in: 'cm', cm: 'mm', ft: 'in', m: 'cm' };

/** Null where the number makes sense in that unit, or is none, or has a unit of its own. */
export function frostDoubt(text: string, unit: string): FrostDoubt | null {
  const bare = text.trim();
  const read = parseQuantity(`${bare} ${unit}`, 'length');
  if (!/^[\d.,]+(?:[-\s]+\d+\/\d+)?$/.test(bare) || !read.ok || !(read.si > 0)) return null;
  const other = read.si < LEAST * 1.01 ? SHALLOW[unit] : read.si > MOST * 1.001 ? DEEP[unit] : undefined;
  return other === undefined ? null : { read: `${bare} ${unit}`, meant: `${bare} ${other}` };
}
