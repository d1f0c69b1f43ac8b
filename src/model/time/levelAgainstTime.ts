/** Water level in the well from the first minute to the thirtieth day, pumped and then left to come back. */
import { lowestLevel } from '../figures/lowestLevel.ts';
import { provenYield } from '../figures/provenYield.ts';
import { boreKnown } from '../figures/waterFall.ts';
import { boreResponse, groundResponse } from '../formulas/boreStorage.ts';
import { radiusOfZeroDrawdown } from '../formulas/theis.ts';
import type { Metres, Ratio, Seconds } from '../si.ts';
import type { Solved } from '../solution.ts';
import { fallingCurve } from './fallingCurve.ts';
import { drawdownKnown, fallOf } from './fallOf.ts';
import { FIRST_MINUTE, groundOf, type Ground } from './ground.ts';
import { LAST_DAY } from './lastDay.ts';
import type { CurveSetting, GroundLevel, LevelCurve, Phase } from './levelCurve.ts';

import { pumpedFlow, type FlowChoice } from './pumpedFlow.ts';
import { drawdownAfter, flowAfter, pumpingHistory } from './pumpingHistory.ts';
import { sampleTimes } from './sampleTimes.ts';
import type { Unknown } from './unknown.ts';

export interface TimeOptions {
  /** How long the pump runs [s]; null: it runs on. */
  readonly pumpFor: Seconds | null;
  /** Default: operating. */
  readonly flow?: FlowChoice;
  /** Start from the level at rest or from the lowest of the dry season. Default: rest. */
  readonly start?: 'rest' | 'dry season';
  /** S of an aquifer known only from a test; default 0.0001. */
  readonly storativity?: Ratio;
}

/**
 * Water level in the well against time.
 *
 * An aquifer's own figures are used where the plan gives them; else transmissivity is estimated so that the measured
 * drawdown comes out exactly at the time of its test. The water of the bore counts from the start, so that the level
 * neither jumps when the pump starts nor when it stops. The flow is constant until the water reaches the intake or
 * a cut-off; from there on the level stays and the flow is what the well gives.
 *
 * Where the well cannot keep up with the pump's own flow, which falls as the water does, and where a yield alone is
 * known, the level is the balance of stored water that also gives the figure `timeToBreakSuction`.
 *
 * @returns  the curve, or the reason why there is none
 *
 * Source   Theis (1935); Papadopulos & Cooper (1967); recovery and changing flow by superposition, Kruseman & de Ridder
 *          (1994), Analysis and Evaluation of Pumping Test Data, ch. 12 and 13
 */
export function levelAgainstTime(solved: Solved, options: TimeOptions): LevelCurve | Unknown {
  const { facts } = solved;
  const staticLevel = options.start === 'dry season' ? facts.water.staticLowest : facts.water.staticLevel;
  if (staticLevel === null)
    return {
      reason:
        options.start === 'dry season' ? 'The lowest static level is not known.' : 'The static level is not known.',
    };
  const pumped = pumpedFlow(solved, options.flow);
  if (pumped === null) return { reason: 'The flow is not known, or the pump gives none.' };
  const lowest = lowestLevel(facts);
  if (!(lowest.depth > staticLevel)) return { reason: `The ${lowest.by} hangs above the water at rest.` };
  if (options.pumpFor !== null && !(options.pumpFor > 0)) return { reason: 'The pump must run for some time.' };
  const { pumping } = facts.water;
  const yieldAlone = !drawdownKnown(solved);
  const choice = options.flow ?? 'operating';
  const fall = yieldAlone || choice === 'operating' ? fallOf(solved, staticLevel, choice) : null;
  const ground: Ground | Unknown =
    pumping === null || pumping.kind === 'yield only'
      ? { reason: withoutDrawdown(solved) }
      : groundOf(solved, { flow: pumped.flow, staticLevel, storativity: options.storativity });
  const known = 'reason' in ground ? null : ground;
  if (fall !== null) {
    const flow = fall.moments[0]?.pumpFlow ?? pumped.flow;
    const words = choice === 'operating' && flow !== pumped.flow ? FALLING : pumped.words;
    return fallingCurve(solved, fall, known, { flow, words, staticLevel, lowest, pumpFor: options.pumpFor });
  }
  return 'reason' in ground
    ? ground
    : groundCurve(ground, { ...pumped, staticLevel, lowest, pumpFor: options.pumpFor });
}

const FALLING = 'the flow at cut-in from the level at rest, and less as the water falls';

/** Why no level can be told where a report gives a yield at the most. */
function withoutDrawdown({ facts, bore }: Solved): string {
  const { staticLevel } = facts.water;
  if (provenYield(facts) === null) return 'Nothing is known of the drawdown, nor of the yield.';
  if (staticLevel !== null && !boreKnown(bore, staticLevel, lowestLevel(facts).depth))
    return 'The width of the bore is not known, so neither is the water that it holds.';
  return 'The report gives a yield and no drawdown: how far the level falls at this flow is not known.';
}

function groundCurve(ground: Ground, { flow, words, staticLevel, lowest, pumpFor }: CurveSetting): LevelCurve {
  const response = (time: Seconds) => boreResponse(ground, time);
  const most = lowest.depth - staticLevel;
  const { steps, breaksSuction, stops } = pumpingHistory({ response, flow, most, pumpFor, until: LAST_DAY });
  const phaseAt = (time: Seconds): Phase => {
    if (stops !== null && time > stops) return 'recovery';
    return breaksSuction !== null && time >= breaksSuction ? 'at lowest' : 'pumping';
  };
  const levelAt = (time: Seconds): Metres =>
    phaseAt(time) === 'at lowest' ? lowest.depth : staticLevel + Math.max(drawdownAfter(response, steps, time), 0);
  const coneAt = (time: Seconds, distances: readonly Metres[]): GroundLevel[] =>
    distances.map((distance) => {
      const there = (since: Seconds) => groundResponse(ground, distance, since);
      // Far out the sum that inverts the transform ends a hair on either side of nothing.
      const drawdown = Math.max(drawdownAfter(there, steps, time), 0);
      return { distance, depth: staticLevel + drawdown, drawdown };
    });
  const times = sampleTimes(FIRST_MINUTE, stops, LAST_DAY);
  return {
    by: 'ground',
    flow,
    flowWords: words,
    staticLevel,
    lowest,
    pumpFor,
    breaksSuction,
    claimedFrom: ground.claimedFrom,
    assumptions: ground.assumptions,
    transmissivity: ground.transmissivity,
    transmissivityRange: ground.transmissivityRange,
    storativity: ground.storativity,
    testTime: ground.testTime,
    samples: times.map((time) => ({ time, level: levelAt(time), phase: phaseAt(time) })),
    levelAt,
    phaseAt,
    flowAt: (time) => flowAfter(steps, time),
    coneAt,
    radiusOfInfluenceAt: (time) => radiusOfZeroDrawdown({ ...ground, time }),
  };
}
