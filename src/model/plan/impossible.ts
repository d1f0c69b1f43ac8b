/**
 * What cannot be true of any well, whatever its numbers are alone: a casing that ends above its top, shares over 100 %.
 *
 * It reads the raw plan, so that these faults are told together with those of single fields, and passes over whatever is
 * missing or unreadable. What is only odd or bad (a pump below the bottom, water above ground), and a record that
 * contradicts itself, is left to the rules.
 */
import { defaultsIn } from './defaults.ts';
import { record } from './impossible/raw.ts';
import { eitherOr } from './impossible/said.ts';
import { strangeInstalled } from './impossible/installed.ts';
import { strangeStatus } from './impossible/status.ts';
import { pressures, pumpCurve, steps, stringLength } from './impossible/use.ts';
import { casings, inflows, layers, screens } from './impossible/well.ts';
import type { Problem } from './problem.ts';

export function impossible(plan: Record<string, unknown>): Problem[] {
  const well = record(plan['well']);
  const water = record(plan['water']);
  const house = record(plan['house']);
  const usual = defaultsIn(plan['units']);
  return [
    ...eitherOr(well, water),
    ...casings(well, usual),
    ...screens(well),
    ...inflows(well),
    ...layers(well),
    ...pressures(house, usual),
    ...steps(water),
    ...pumpCurve(record(plan['pump'])),
    ...stringLength(plan, well, usual),
    ...strangeStatus(record(plan['status'])),
    ...strangeInstalled(plan),
  ];
}
