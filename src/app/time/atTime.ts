/** The well as it stands a time after the pump started: for the drawing alone, the plan knows nothing of it. */
import type { Metres, Seconds } from '../../model/si.ts';
import type { ConePoint, Solution } from '../../model/solution.ts';
import type { LevelCurve } from '../../model/time/index.ts';

/**
 * Levels and cone of that time in place of the usual ones.
 *
 * The flow of that time stands where the drawing reads the demand, so that "drawdown at 8 gpm" names the flow that
 * makes it, and a level that comes back is no drawdown of any flow. The dry season's own dashes are left out, for the
 * curve may itself start from there.
 *
 * @param time  since the pump started [s]
 * @returns  a solution whose cone has the same distances, where there is one
 */
export function atTime(solution: Solution, curve: LevelCurve, time: Seconds): Solution {
  const { levels, facts, values } = solution;
  const pumping = curve.levelAt(time);
  const recovers = curve.phaseAt(time) === 'recovery';
  // At the instant of the stop nothing flows any more, and the level is still that of the flow before.
  const flow = curve.flowAt(time) || curve.flow;
  return {
    ...solution,
    facts: { ...facts, house: { ...facts.house, demand: recovers ? facts.house.demand : flow } },
    levels: { ...levels, static: curve.staticLevel, pumping, pumpingDry: null },
    values: {
      ...values,
      pumpingWaterLevel: pumping,
      drawdown: recovers ? null : pumping - curve.staticLevel,
      submergence: values.intakeDepth === null ? null : values.intakeDepth - pumping,
    },
    cone: coneOf(solution, curve, time),
  };
}

function coneOf({ cone, bore }: Solution, curve: LevelCurve, time: Seconds): readonly ConePoint[] | null {
  const wall = Math.max(...bore.map(({ outsideRadius }) => outsideRadius), 0.05);
  const distances = cone?.map(({ distance }) => distance) ?? outFrom(wall);
  return curve.coneAt(time, distances)?.map(({ distance, depth }) => ({ distance, depth })) ?? null;
}

/** From the hole's wall a thousandfold out, evenly by logarithm. */
function outFrom(wall: Metres): Metres[] {
  return Array.from({ length: 31 }, (_, i) => wall * 10 ** (i / 10));
}
