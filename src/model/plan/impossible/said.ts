/** Fields of which one of several must be said, and those that say the same twice. */
import { shortJson } from '../problem.ts';
import type { Problem } from '../problem.ts';
import { isRecord } from '../shape.ts';
import { record } from './raw.ts';
import type { Fields } from './raw.ts';

export function eitherOr(well: Fields, water: Fields): Problem[] {
  const problems: Problem[] = [];
  const both = (path: string, value: unknown, other: string) =>
    problems.push({ path, read: shortJson(value), problem: `beside ${other}`, write: 'one of the two', kind: 'value' });
  if (well['casing'] !== undefined && well['casings'] !== undefined)
    both('well.casing', well['casing'], 'well.casings');
  if (isRecord(well) && Object.keys(well).length > 0 && well['casing'] === undefined && well['casings'] === undefined) {
    problems.push({
      path: 'well.casing',
      read: '',
      problem: 'missing',
      write: '{ "material": "steel", "size": "6 in", "bottom": "90 ft" }',
      kind: 'missing',
    });
  }
  const intake = record(well['intake']);
  if (intake['screens'] !== undefined && (intake['top'] !== undefined || intake['bottom'] !== undefined)) {
    both('well.intake.screens', intake['screens'], 'well.intake.top and bottom');
  }
  for (const [one, other] of [
    ['top', 'bottom'],
    ['bottom', 'top'],
  ] as const) {
    if (
      intake[one] !== undefined &&
      intake[one] !== 'unknown' &&
      intake[other] === undefined &&
      intake['screens'] === undefined
    ) {
      problems.push({
        path: `well.intake.${other}`,
        read: '',
        problem: 'missing',
        write: 'a depth, or "unknown"',
        kind: 'missing',
      });
    }
  }
  if (water['staticLowest'] !== undefined && water['dryFall'] !== undefined) {
    both('water.dryFall', water['dryFall'], 'water.staticLowest');
  }
  return problems;
}
