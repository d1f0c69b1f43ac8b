/** What hangs on the hook while the string goes down: the formula of the hanging load for what is below the casing's top. */
import type { Facts } from '../facts.ts';
import { FOR_STICKING } from '../figures/gearRating.ts';
import { hangingString, hangLoads } from '../figures/hanging.ts';
import { LIFT_TWO_PEOPLE } from '../formulas/lifting.ts';
import { STANDARD_GRAVITY } from '../formulas/water.ts';
import type { Metres, Newtons } from '../si.ts';
import type { Solved } from '../solution.ts';
import { isBarbed } from '../tables/pipeMaterials.ts';
import type { OldString, OnTheHook } from './step.ts';
import { whoHolds } from './whoHolds.ts';

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

/**
 * What pulling may take. A plan whose pipe nobody told as standing there is that of the new string, and says nothing of the
 * old one: steel pipe weighs several times what PE does.
 */
export function pullingHook(solved: Pick<Solved, 'facts' | 'values'>): OnTheHook & { readonly old: OldString } {
  const { hangLoadDry } = solved.values;
  const old = oldString(solved.facts);
  const known = old !== 'not told' && hangLoadDry !== null;
  const hook = onTheHook(solved, known ? hangLoadDry * FOR_STICKING : null);
  return { ...hook, ...(old === 'not told' ? { holder: 'oldUnknown', threaded: false } : {}), old };
}

/** What the plan tells of the string that is pulled. */
export function oldString({ status, dropPipe }: Facts): OldString {
  const said = status['dropPipe.material'] ?? status['dropPipe'];
  if (said === undefined || said === 'to choose') return 'not told';
  return isBarbed(dropPipe) ? 'bends' : 'threaded';
}

/**
 * A load with what its gear is chosen for: a string is drawn again with its pipe full, so that counts from the first.
 *
 * @param to  where it is another by the end of a step
 */
export function onTheHook(
  { facts, values }: Pick<Solved, 'facts' | 'values'>,
  from: Newtons | null,
  to: Newtons | null = from,
): OnTheHook {
  const whole = values.hangLoadAtRest ?? values.hangLoadDry;
  const gear = from === null || to === null || whole === null ? null : Math.max(from, to, whole);
  const threaded = !isBarbed(facts.dropPipe);
  return { from, to, gear, threaded, holder: whoHolds({ gear, threaded }), two: LIFT_TWO_PEOPLE };
}

/** The same load with rigid pipe over it that stands above the casing: flexible pipe lies on the ground there. */
export function withStanding({ facts }: Pick<Solved, 'facts'>, load: Newtons | null, above: Metres): Newtons | null {
  const { dropPipe } = facts;
  if (load === null || isBarbed(dropPipe)) return load;
  return load + dropPipe.massPerLength * above * STANDARD_GRAVITY;
}
