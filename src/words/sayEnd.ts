import type { EndName } from '../model/solution.ts';
import type { Show } from '../model/units.ts';

/** Names of ends, whatever else the language knows: several of its own sentences need them. */
export interface EndWords {
  readonly rules: object;
  readonly ends: Readonly<Record<string, string>>;
}

/** What ends a band: "10 ft under the lowest pumping level". */
export function sayEnd({ rule, variant, numbers }: EndName, { rules, ends }: EndWords, show: Show): string {
  if (rule === null) return ends[variant] ?? variant;
  // The types of rule and words are held together where the words are written; here any rule may come.
  const { limits } = (rules as Readonly<Record<string, AnyLimits>>)[rule] as AnyLimits;
  return limits[variant]?.(numbers, show) ?? variant;
}

interface AnyLimits {
  readonly limits: Readonly<Record<string, (numbers: object, show: Show) => string>>;
}
