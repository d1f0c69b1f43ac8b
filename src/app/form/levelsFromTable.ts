/** From a table of readings to the levels of the record. */
import type { LevelReading, LevelTable } from '../../model/records/groundwaterLevels.ts';
import { withDepth, withValue } from '../../model/plan/editPlan.ts';
import type { Plan } from '../../model/plan/schema.ts';
import { feet } from '../../model/units.ts';

/** Readings are printed to a hundredth of a foot; the nearest round step in metres is a millimetre. */
const HUNDREDTH_FOOT = feet(0.01);
const MILLIMETRE = 0.001;

/**
 * The water of the plan with the latest level at rest as the static one, and the highest and lowest beside it. A fall in a
 * dry season goes: it would say the lowest level a second time. Null where no reading is at rest.
 */
export function waterFromTable(plan: Plan, { latest, highest, lowest }: LevelTable): Plan['water'] | null {
  if (latest === null || highest === null || lowest === null) return null;
  const levels: readonly (readonly [path: string, reading: LevelReading])[] = [
    ['water.staticLevel', latest],
    ['water.staticHighest', highest],
    ['water.staticLowest', lowest],
  ];
  const step = plan.units === 'metric' ? MILLIMETRE : HUNDREDTH_FOOT;
  return levels.reduce(
    (changed, [path, { depth }]) => withDepth(changed, path, depth, step),
    withValue(plan, 'water.dryFall', undefined),
  ).water;
}
