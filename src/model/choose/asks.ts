/** What has to be known of a pump, or of what hangs it, before it can be called right: nobody said it. */
import { pumpAtLevel } from '../figures/curves.ts';
import { lowestStatic } from '../figures/lowestPumping.ts';
import { isAssumed } from '../rules/assumed.ts';
import { mostThatPasses } from '../rules/clearance.ts';
import { dropPipeNeed } from '../rules/pipeNeeds.ts';
import { mostPastAdapter } from '../rules/pitless.ts';
import type { Sentence } from '../rules/rule.ts';
import { largestPumpFlow } from '../rules/yield.ts';
import type { CubicMetresPerSecond, Metres, Pascals, Watts } from '../si.ts';
import type { Solution } from '../solution.ts';
import { leastShaftPower, mostShaftPower } from './powerOfPoints.ts';

export type Ask =
  /** Wire, supply and control box follow from it. */
  | Sentence<'power', object>
  /** Its points ask for more than the motor that was said can give: `least` at the best. */
  | Sentence<'powerTooSmall', { said: Watts; least: Watts }>
  /** It would work beyond the last of its points. */
  | Sentence<'pastPoints', { flow: CubicMetresPerSecond; last: CubicMetresPerSecond }>
  /** Of the drop pipe that hangs: what its rating has to bear. */
  | Sentence<'pipeRating', { need: Pascals }>
  /** `flow` is what it takes at the strongest that its name can stand for. */
  | Sentence<'wellYield', { flow: CubicMetresPerSecond }>
  /** A level was read while pumping, and nobody said how much. */
  | Sentence<'testFlow', { flow: CubicMetresPerSecond }>
  /** An open tank, and nobody said how much it holds: the more, the less is asked of the pump. */
  | Sentence<'openTank', object>
  /** `most` is the widest pump that passes. */
  | Sentence<'pumpWidth', { most: Metres }>;

const STRENGTH = 'PR-18';
const PASSES = 'PR-17';
const PASSES_ADAPTER = 'PR-21';
const WITHIN_YIELD = 'PR-07';

/**
 * @param solution  of the plan with the pump, its pipe and its wire in it
 * @param flow      that the pump gives there; null where nobody can tell
 */
export function asksOf(solution: Solution, flow: CubicMetresPerSecond | null): readonly Ask[] {
  return [
    ...ofMotor(solution),
    ...ofPoints(solution, flow),
    ...ofPipe(solution),
    ...ofWell(solution),
    ...ofTank(solution),
    ...ofWidth(solution),
  ];
}

function lacks({ notJudged }: Solution, rule: string, fact: string): boolean {
  return notJudged.some((each) => each.rule === rule && each.fact === fact);
}

function ofMotor(solution: Solution): Ask[] {
  const { power, curve } = solution.facts.pump;
  if (power === null) return [{ variant: 'power', numbers: {} }];
  if (curve.kind !== 'points') return [];
  const asked = leastShaftPower(curve.points, solution.facts);
  const most = mostShaftPower(power, solution.facts);
  return asked > most ? [{ variant: 'powerTooSmall', numbers: { said: power, least: (power * asked) / most } }] : [];
}

function ofPoints({ facts }: Solution, flow: CubicMetresPerSecond | null): Ask[] {
  const { curve } = facts.pump;
  if (curve.kind !== 'points' || flow === null) return [];
  const last = Math.max(...curve.points.map((point) => point.flow));
  return flow > last ? [{ variant: 'pastPoints', numbers: { flow, last } }] : [];
}

function ofPipe(solution: Solution): Ask[] {
  if (!lacks(solution, STRENGTH, 'ratingOfDropPipe')) return [];
  return [{ variant: 'pipeRating', numbers: { need: dropPipeNeed(solution) } }];
}

function ofWell(solution: Solution): Ask[] {
  const { facts } = solution;
  const { pumping } = facts.water;
  const { demand } = facts.house;
  // What was told of the aquifer says how far it falls.
  const unsaid = lacks(solution, WITHIN_YIELD, 'yield') && pumping?.kind !== 'aquifer';
  const rest = lowestStatic(facts) ?? 0;
  const flow = largestPumpFlow(solution) ?? pumpAtLevel(facts, { end: 'most', tank: 'cutIn' }, rest)?.flow ?? null;
  const gives: Ask[] = unsaid && flow !== null ? [{ variant: 'wellYield', numbers: { flow } }] : [];
  const isRead = pumping?.kind === 'level' && pumping.flowAssumed === true && demand !== null;
  return isRead ? [{ variant: 'testFlow', numbers: { flow: demand } }] : gives;
}

function ofTank({ facts: { house } }: Solution): Ask[] {
  return house.kind === 'open tank' && house.tank === null ? [{ variant: 'openTank', numbers: {} }] : [];
}

function ofWidth(solution: Solution): Ask[] {
  if (!isAssumed(solution, 'pump.diameter')) return [];
  // Where the adapter's reach decides, that is to be measured, not the pump.
  const isStuck = solution.findings.some(
    ({ rule, severity, turn }) => rule === PASSES_ADAPTER && severity !== 'note' && turn === null,
  );
  if (!isStuck && !lacks(solution, PASSES, 'pumpDiameter')) return [];
  const ends = [mostThatPasses(solution), mostPastAdapter(solution)].filter((end) => end !== null);
  return ends.length === 0 ? [] : [{ variant: 'pumpWidth', numbers: { most: Math.min(...ends) } }];
}
