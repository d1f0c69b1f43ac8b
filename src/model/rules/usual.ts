/** What a plan takes where nobody said what the local code asks for. */
import { defaultsIn } from '../plan/defaults.ts';
import { read } from '../plan/take.ts';
import type { Metres } from '../si.ts';

/** A default length of the plan, as each country names it. */
export function usualIn(name: 'frostMargin' | 'casingHeightRequired'): Readonly<Record<'us' | 'metric', Metres>> {
  return { us: read(defaultsIn('us')[name], 'length'), metric: read(defaultsIn('metric')[name], 'length') };
}
