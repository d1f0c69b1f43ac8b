/**
 * A number with at most so many decimals, without trailing zeros, never "-0".
 *
 * Written from whole steps, because a double's own text is slow to find and a picture writes thousands.
 */
export function decimals(value: number, places: 0 | 1 | 2): string {
  const scale = SCALES[places];
  const steps = Math.round(value * scale);
  if (!(steps < 1e9 && steps > -1e9)) return String(steps / scale);
  // As a 32-bit integer, of which a remainder is quick to take.
  const size = (steps < 0 ? -steps : steps) | 0;
  const rest = size % scale;
  const whole = (size - rest) / scale;
  const text = rest === 0 ? String(whole) : whole + (AFTER_POINT[places][rest] ?? '');
  return steps < 0 ? `-${text}` : text;
}

const SCALES = [1, 10, 100] as const;

/** ".01", ".1" and so on, by steps. */
const AFTER_POINT = [fractions(1), fractions(10), fractions(100)] as const;

function fractions(scale: number): readonly string[] {
  return Array.from({ length: scale }, (_, i) => String(i / scale).slice(1));
}
