/** Where the well cannot keep up: the level by the water that is stored, that flows in and that is pumped. */
import { groundResponse } from '../formulas/boreStorage.ts';
import type { LevelFall } from '../formulas/levelFall.ts';
import type { FlowStep } from '../formulas/recovery.ts';
import { radiusOfZeroDrawdown } from '../formulas/theis.ts';
import type { Metres, Seconds } from '../si.ts';
import type { Solved } from '../solution.ts';
import { waterBetween } from './freeSurface.ts';
import { FIRST_MINUTE, type Ground } from './ground.ts';
import type { CurveSetting, GroundLevel, LevelCurve, Phase } from './levelCurve.ts';
import { LAST_DAY } from './lastDay.ts';
import { drawdownAfter } from './pumpingHistory.ts';
import { sampleTimes } from './sampleTimes.ts';
import { roughYield } from './roughYield.ts';

/**
 * Level against time of a well that is emptied.
 *
 *     pumping:   as `levelFall`
 *     coming back:  s = s0 exp(-q t' / V0)
 *
 * V0 is the water from rest to the lowest level and q the inflow there: it falls off in proportion as the level rises.
 *
 * @param breaks  the fall ends at the lowest level; else where the pump takes just what the well gives
 * @param ground  for the cone round the well, under the flow that was pumped; null where nothing is known of the ground
 *
 * Source   a balance of volumes; the way back as in a rising-head test, Hvorslev (1951), US Army Corps of Engineers,
 *          Waterways Experiment Station Bulletin 36, from memory
 */
export function fallingCurve(
  solved: Solved,
  { fall, breaks }: { readonly fall: LevelFall; readonly breaks: boolean },
  ground: Ground | null,
  { flow, words, staticLevel, lowest, pumpFor }: CurveSetting,
): LevelCurve {
  const atLowest = fall.moments[fall.moments.length - 1]?.inflow ?? 0;
  const stored = waterBetween(solved, staticLevel, lowest.depth);
  const stops = pumpFor !== null && pumpFor < LAST_DAY ? pumpFor : null;
  const breaksSuction = breaks && fall.time < (stops ?? Infinity) ? fall.time : null;
  const phaseAt = (time: Seconds): Phase => {
    if (stops !== null && time > stops) return 'recovery';
    return breaksSuction !== null && time >= breaksSuction ? 'at lowest' : 'pumping';
  };
  const levelAt = (time: Seconds): Metres => {
    if (stops === null || time <= stops) return fall.levelAt(time);
    const left = stored > 0 ? Math.exp((-atLowest * (time - stops)) / stored) : 0;
    return staticLevel + (fall.levelAt(stops) - staticLevel) * left;
  };
  const flowAt = (time: Seconds) => {
    const phase = phaseAt(time);
    return phase === 'recovery' ? 0 : time >= fall.time ? atLowest : fall.pumpFlowAt(time);
  };
  const steps = ground === null ? [] : stepsOf(fall, atLowest, stops);
  const coneAt = (time: Seconds, distances: readonly Metres[]): GroundLevel[] | null =>
    ground === null
      ? null
      : distances.map((distance) => {
          const there = (since: Seconds) => groundResponse(ground, distance, since);
          const drawdown = Math.max(drawdownAfter(there, steps, time), 0);
          return { distance, depth: staticLevel + drawdown, drawdown };
        });
  return {
    by: 'stored water',
    flow,
    flowWords: words,
    staticLevel,
    lowest,
    pumpFor,
    breaksSuction,
    toldFor: null,
    fitReaches: null,
    claimedFrom: FIRST_MINUTE,
    assumptions: assumptionsOf(solved, fall, breaks),
    transmissivity: ground?.transmissivity ?? null,
    transmissivityRange: ground?.transmissivityRange ?? null,
    storativity: ground?.storativity ?? null,
    testTime: ground?.testTime ?? null,
    samples: sampleTimes(FIRST_MINUTE, stops, LAST_DAY).map((time) => ({
      time,
      level: levelAt(time),
      phase: phaseAt(time),
    })),
    levelAt,
    phaseAt,
    flowAt,
    coneAt,
    radiusOfInfluenceAt: (time) => (ground === null ? null : radiusOfZeroDrawdown({ ...ground, time })),
  };
}

/** The flow out of the well by steps, each the mean of its two ends, up to the stop. */
function stepsOf({ moments, time: end }: LevelFall, atLowest: number, stops: Seconds | null): readonly FlowStep[] {
  const steps: FlowStep[] = [];
  for (const [i, { time, pumpFlow }] of moments.entries()) {
    const next = moments[i + 1];
    if (next !== undefined && next.time > time) steps.push({ from: time, flow: (pumpFlow + next.pumpFlow) / 2 });
  }
  steps.push({ from: end, flow: atLowest });
  if (stops === null) return steps;
  return [...steps.filter(({ from }) => from < stops), { from: stops, flow: 0 }];
}

function assumptionsOf({ facts }: Solved, { moments }: LevelFall, breaks: boolean): readonly string[] {
  const [first, last] = [moments[0], moments[moments.length - 1]];
  const falls = first !== undefined && last !== undefined && last.pumpFlow < first.pumpFlow;
  const rough = roughYield(facts.well);
  const onlyYield = facts.water.pumping === null || facts.water.pumping.kind === 'yield only';
  return [
    onlyYield
      ? 'Only the water in the bore and the reported yield are known: the level is a balance of the two.'
      : breaks
        ? CANNOT_KEEP_UP
        : 'The well yields less than its drawdown says: the water falls until the pump gives no more than that.',
    onlyYield
      ? `The well gives its reported yield all the while it is pumped${rough === null ? '' : `; ${rough}, and the water may be gone sooner`}.`
      : 'What flows in grows with the drawdown as the plan’s test or aquifer tells, and no further than the reported yield allows.',
    ...(falls
      ? ['The pump gives less and less as the water falls; a generic pump is taken at the stronger end of its band.']
      : []),
    'While the water comes back, the inflow falls off in proportion as the level rises.',
  ];
}

const CANNOT_KEEP_UP =
  'The well cannot keep up: the level is a balance of the water in the bore, of what flows in and of what is pumped.';
