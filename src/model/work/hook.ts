/** What hangs on the hook while the string goes down: the formula of the hanging load for what is below the casing's top. */
import { hangingString, hangLoads } from '../figures/hanging.ts';
import type { Metres, Newtons } from '../si.ts';
import type { Solved } from '../solution.ts';

/**
 * The pipe fills through the pump as it goes down. Where the level at rest is unknown nothing is taken off for water: the
 * load is then the most that it can be.
 *
 * @param discharge  depth of the pump's discharge at the moment [m]
 * @returns          null while nobody knows what the pump weighs
 */
export function hookAt({ facts, levels }: Pick<Solved, 'facts' | 'levels'>, discharge: Metres): Newtons | null {
  const casingTop = -facts.well.casingHeight;
  const string = hangingString(facts, Math.max(discharge - casingTop, 0));
  const loads = hangLoads(string, casingTop, levels.static, null);
  return loads.lowering ?? loads.dry;
}

/** For sticking, half as much again as what hangs there full of water: common practice, no source. */
const FOR_STICKING = 1.5;

/** What pulling may take; null while nobody knows what the pump weighs. */
export function pullingHook({ values }: Pick<Solved, 'values'>): Newtons | null {
  return values.hangLoadDry === null ? null : values.hangLoadDry * FOR_STICKING;
}
