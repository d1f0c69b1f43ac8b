/** Water level in the well from the first minute to the thirtieth day, pumped and then left to come back. */
import { lowestLevel } from '../figures/lowestLevel.ts';
import { provenYield } from '../figures/provenYield.ts';
import { boreKnown } from '../figures/waterFall.ts';
import { boreResponse, groundResponse } from '../formulas/boreStorage.ts';
import { radiusOfZeroDrawdown } from '../formulas/theis.ts';
import type { Metres, Ratio, Seconds } from '../si.ts';
import type { Solved } from '../solution.ts';
import { fallingCurve } from './fallingCurve.ts';
import { accountOf, because } from './account.ts';
import { drawdownKnown } from './standing.ts';
import { FIRST_MINUTE, groundOf, type Ground } from './ground.ts';
import { LAST_DAY } from './lastDay.ts';
import type { CurveSetting, GroundLevel, LevelCurve, Phase } from './levelCurve.ts';

import type { FlowChoice } from './pumpedFlow.ts';
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
 * For the pump's own flow one account decides, that of the figure `timeToBreakSuction`: where by it the well cannot keep
 * up, the level is its balance of stored water, and where a fact that it needs is unknown, that is the reason why there
 * is no curve. Where the well keeps up, that rests on the drawdown after the tested hours. The curve goes on past them
 * by the ground's fit, but never breaks suction: should the fit come down to the lowest level it is told as `fitReaches`.
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
  const account = accountOf(solved, staticLevel, options.flow);
  if ('reason' in account) return account;
  if (options.pumpFor !== null && !(options.pumpFor > 0)) return { reason: 'The pump must run for some time.' };
  const { flow, words, fall } = account;
  const setting = { flow, words, staticLevel, lowest: lowestLevel(facts), pumpFor: options.pumpFor };
  const ground: Ground | Unknown = drawdownKnown(solved)
    ? groundOf(solved, { flow, staticLevel, storativity: options.storativity })
    : { reason: withoutDrawdown(solved) };
  if (fall !== null)
    return fallingCurve(
      solved,
      { fall, breaks: account.kind === 'falls' },
      'reason' in ground ? null : ground,
      setting,
    );
  return 'reason' in ground ? ground : groundCurve(solved, ground, setting, account.kind === 'keepsUp');
}

/** Why no level can be told where a report gives a yield at the most. */
function withoutDrawdown(solved: Solved): string {
  const { facts, bore } = solved;
  const { pumping, staticLevel } = facts.water;
  if (pumping !== null && pumping.kind !== 'yield only') return because(solved, 'inflow');
  if (staticLevel !== null && provenYield(facts) !== null && !boreKnown(bore, staticLevel, lowestLevel(facts).depth))
    return 'The width of the bore is not known, so neither is the water that it holds.';
  return because(solved, 'inflow');
}

/** @param keepsUp  by the figures: what the fit says of later runs is then told as no more than that */
function groundCurve(
  solved: Solved,
  ground: Ground,
  { flow, words, staticLevel, lowest, pumpFor }: CurveSetting,
  keepsUp: boolean,
): LevelCurve {
  const response = (time: Seconds) => boreResponse(ground, time);
  const most = lowest.depth - staticLevel;
  const { steps, breaksSuction: reaches, stops } = pumpingHistory({ response, flow, most, pumpFor, until: LAST_DAY });
  const phaseAt = (time: Seconds): Phase => {
    if (stops !== null && time > stops) return 'recovery';
    return reaches !== null && time >= reaches ? 'at lowest' : 'pumping';
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
  const { toldFor } = ground;
  const width = boreKnown(
    solved.bore,
    staticLevel,
    Math.min(staticLevel + flow * response(toldFor.time), lowest.depth),
  );
  return {
    by: 'ground',
    flow,
    flowWords: words,
    staticLevel,
    lowest,
    pumpFor,
    breaksSuction: keepsUp ? null : reaches,
    toldFor,
    fitReaches: keepsUp ? reaches : null,
    claimedFrom: width ? ground.claimedFrom : Math.max(ground.claimedFrom, toldFor.time),
    assumptions: width ? ground.assumptions : [...ground.assumptions, WIDTH_UNKNOWN],
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

const WIDTH_UNKNOWN = 'The width of the bore is not known: how fast its own water is drawn down at first is a guess.';
