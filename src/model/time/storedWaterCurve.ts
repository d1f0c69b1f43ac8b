/** Where a report gives a yield and no drawdown: the bore's own water is all that can be followed. */
import type { Seconds } from '../si.ts';
import type { Solved } from '../solution.ts';
import { levelAfter, waterBetween } from './freeSurface.ts';
import { FIRST_MINUTE } from './ground.ts';
import type { CurveSetting, LevelCurve, Phase } from './levelCurve.ts';
import { LAST_DAY } from './lastDay.ts';
import { sampleTimes } from './sampleTimes.ts';
import type { Unknown } from './unknown.ts';

/**
 * Level against time by the water stored and the yield reported.
 *
 *     pumping:   V taken = (Q - Y) t
 *     coming back:  s = s0 exp(-Y t' / V0)
 *
 * V0 is the water from rest to the lowest level: the well is held to give Y there, and less in proportion as the level
 * rises, which is how a well behaves whose inflow follows its drawdown.
 *
 * @returns  the curve; or the reason when the pump draws no more than the yield, since nothing then says how far the
 *           level falls
 *
 * Source   a balance of volumes; the way back as in a rising-head test, Hvorslev (1951), US Army Corps of Engineers,
 *          Waterways Experiment Station Bulletin 36, from memory
 */
export function storedWaterCurve(solved: Solved, setting: CurveSetting): LevelCurve | Unknown {
  const { flow, words, staticLevel, lowest, pumpFor } = setting;
  const wellYield = solved.facts.well.yield;
  if (wellYield === null) return { reason: 'Nothing is known of the drawdown, nor of the yield.' };
  if (!(flow > wellYield))
    return { reason: 'The report gives a yield and no drawdown: how far the level falls at this flow is not known.' };
  const stored = waterBetween(solved, staticLevel, lowest.depth);
  if (!(stored > 0))
    return { reason: 'No water stands in the bore above the lowest level: see the diameters of pipe and bore.' };
  const emptied = stored / (flow - wellYield);
  const stops = pumpFor !== null && pumpFor < LAST_DAY ? pumpFor : null;
  const breaksSuction = emptied < (stops ?? LAST_DAY) ? emptied : null;
  const pumpedLevel = (time: Seconds) =>
    time >= emptied ? lowest.depth : levelAfter(solved, staticLevel, (flow - wellYield) * time);
  const phaseAt = (time: Seconds): Phase => {
    if (stops !== null && time > stops) return 'recovery';
    return breaksSuction !== null && time >= breaksSuction ? 'at lowest' : 'pumping';
  };
  const levelAt = (time: Seconds) => {
    if (stops === null || time <= stops) return pumpedLevel(time);
    return staticLevel + (pumpedLevel(stops) - staticLevel) * Math.exp((-wellYield * (time - stops)) / stored);
  };
  const flows: Record<Phase, number> = { pumping: flow, 'at lowest': wellYield, recovery: 0 };
  return {
    by: 'stored water',
    flow,
    flowWords: words,
    staticLevel,
    lowest,
    pumpFor,
    breaksSuction,
    claimedFrom: FIRST_MINUTE,
    assumptions: [
      'Only the water in the bore and the reported yield are known: the level is a balance of the two.',
      'The well gives its reported yield all the while it is pumped; a yield blown with air is a rough maximum, so the water may be gone sooner.',
      'While the water comes back, the inflow falls off in proportion as the level rises.',
    ],
    transmissivity: null,
    transmissivityRange: null,
    storativity: null,
    testTime: null,
    samples: sampleTimes(FIRST_MINUTE, stops, LAST_DAY).map((time) => ({
      time,
      level: levelAt(time),
      phase: phaseAt(time),
    })),
    levelAt,
    phaseAt,
    flowAt: (time) => flows[phaseAt(time)],
    coneAt: () => null,
    radiusOfInfluenceAt: () => null,
  };
}
