/** What was put in, said of no field of the plan, or in words that the field does not take. */
import { quantityFault } from '../field.ts';
import { fieldAt, fields } from '../fields.ts';
import { nearestName } from '../nearest.ts';
import { shortJson } from '../problem.ts';
import type { Problem } from '../problem.ts';
import { record, type Fields } from './raw.ts';

export function strangeInstalled(plan: Fields): Problem[] {
  return ['installed', 'planned'].flatMap((part) => strangeIn(part, plan));
}

function strangeIn(part: string, plan: Fields): Problem[] {
  const installed = record(record(plan['asBuilt'])[part]);
  const units = plan['units'] === 'metric' ? 'metric' : 'us';
  return Object.entries(installed).flatMap(([path, value]): Problem[] => {
    const at = { path: `asBuilt.${part}.${path}`, read: shortJson(value), kind: 'value' } as const;
    const field = path.startsWith('asBuilt.') ? null : fieldAt(path);
    if (field === null) {
      const near = nearestName(
        path,
        fields.map((each) => each.path),
      );
      const write = near === null ? 'the path of a field, as in "pump.setting"' : `did you mean "${near}"?`;
      return [{ ...at, problem: 'said of no field of the plan', write }];
    }
    const fault = faultOf(field, value, units);
    return fault === null ? [] : [{ ...at, ...fault }];
  });
}

type Field = NonNullable<ReturnType<typeof fieldAt>>;

function faultOf(field: Field, value: unknown, units: 'us' | 'metric'): { problem: string; write: string } | null {
  const { kind, options = [], orFlag, from = 0, to = 0 } = field;
  if (kind === 'choice')
    return options.some((option) => option === value)
      ? null
      : { problem: 'not one of its choices', write: options.map((option) => shortJson(option)).join(', ') };
  if (kind === 'flag' || (orFlag && typeof value === 'boolean'))
    return typeof value === 'boolean' ? null : { problem: 'neither yes nor no', write: 'true or false' };
  if (kind === 'count')
    return typeof value === 'number' && Number.isInteger(value) && value >= Number(from) && value <= Number(to)
      ? null
      : { problem: 'not such a number', write: `a whole number from ${from} to ${to}` };
  if (typeof value !== 'string') return { problem: 'not text', write: 'text in quotes, with its unit' };
  if (kind === 'text') return null;
  const fault = quantityFault(value, field as Parameters<typeof quantityFault>[1], units);
  return fault === null ? null : { problem: fault.fault, write: fault.write };
}
