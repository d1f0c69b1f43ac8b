/** What drop pipe and buried line must bear in their well, and how fast water may run through them. */
import { pumpFromLevel } from '../figures/curves.ts';
import { lowestStatic } from '../figures/lowestPumping.ts';
import type { Facts } from '../facts.ts';
import { WORKING_SHARE_WITHOUT_SURGE } from '../formulas/pipeStrength.ts';
import { siteWater } from '../figures/siteWater.ts';
import { STANDARD_GRAVITY } from '../formulas/water.ts';
import type { Metres, MetresPerSecond, Pascals } from '../si.ts';
import type { Solved } from '../solution.ts';
import { feet } from '../units.ts';
import { highestStaticLevel } from './highestStatic.ts';
import { LEAST_RATING } from './pipeRating.ts';
import { lineDepth } from '../string/topDepths.ts';

/** Water runs no faster through a pipe. */
export const MOST_VELOCITY: MetresPerSecond = feet(5.6);

/** A line is rated for this many times the pressure at which the pump stops. Common practice, no source. */
export const TIMES_CUT_OUT = 1.5;

/** What a height of this water presses. */
function pressureOf(height: Metres, { site }: Facts): Pascals {
  return height * siteWater(site).density * STANDARD_GRAVITY;
}

/**
 * Pressure in the drop pipe where it leaves the pump, just before the switch opens: the head of the strongest pump that
 * the plan's name can stand for, from the lowest water at rest. Null while the pump's working point is unknown.
 */
export function runningPressureAtCutOut(solved: Solved): Pascals | null {
  return runningAtCutOut(solved)?.pressure ?? null;
}

/** The same, and whether a flow-limiting valve holds it back: house and well would ask for less. */
export function runningAtCutOut({
  facts,
  lowest,
  values,
}: Solved): { readonly pressure: Pascals; readonly byValve: boolean } | null {
  // Drawn down to where it lifts no more, the pump runs on all but at its shut-off.
  if (lowest?.by === 'lift') {
    const pressure = values.shutOffPressureAtPump;
    return pressure === null ? null : { pressure, byValve: false };
  }
  const rest = lowestStatic(facts);
  const point = rest === null ? null : pumpFromLevel(facts, { end: 'most', tank: 'cutOut' }, rest);
  if (point === null) return null;
  return { pressure: pressureOf(point.head, facts), byValve: point.flow === facts.pump.flowLimiter };
}

/** The least that plastic drop pipe must bear, as far as it is known: running, at no flow, and by custom. */
export function dropPipeNeed(solved: Solved): Pascals {
  const { facts, values } = solved;
  const running = runningPressureAtCutOut(solved) ?? 0;
  return Math.max(values.shutOffPressureAtPump ?? 0, running / WORKING_SHARE_WITHOUT_SURGE, LEAST_RATING[facts.units]);
}

/**
 * The most that the pump can put on the line with every outlet shut, at the line's lowest end, with the water in the
 * well as high as it gets; null while the level or the pump is unknown.
 */
export function mostOnLine(solved: Solved): Pascals | null {
  const { facts, values } = solved;
  const level = highestStaticLevel(solved);
  const atPump = values.shutOffPressureAtPump;
  if (level === null || atPump === null) return null;
  const outlet = lineDepth(facts);
  const lowestEnd = Math.max(outlet, -(facts.house.rise ?? 0));
  return atPump - pressureOf(level - lowestEnd, facts);
}

/** What the switch asks of the line: nothing where an open tank has none. */
export function askedBySwitch({ house }: Facts): Pascals {
  return house.kind === 'open tank' ? 0 : TIMES_CUT_OUT * house.cutOut;
}

/** The least that the buried line must bear, as far as it is known. */
export function lineNeed(solved: Solved): Pascals {
  const { facts } = solved;
  const unrelieved = facts.house.reliefValve === true ? 0 : (mostOnLine(solved) ?? 0);
  return Math.max(LEAST_RATING[facts.units], askedBySwitch(facts), unrelieved);
}
