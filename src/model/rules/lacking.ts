/** What nobody told, one entry for each field that would take it, with the rules that could not be checked for want of it. */
import { UNKNOWN } from '../plan/unknown.ts';
import { valueAt } from '../plan/editPlan.ts';
import type { NotJudged, Solution } from '../solution.ts';
import type { MissingFact } from './missing.ts';

export interface Lacking {
  /** Path of the field to fill in. */
  readonly field: string;
  readonly fact: MissingFact;
  readonly numbers: object;
  readonly rules: readonly string[];
}

export function lackingIn({ plan, notJudged }: Pick<Solution, 'plan' | 'notJudged'>): readonly Lacking[] {
  const open = notJudged.map((each) => {
    const unsaid = each.fields.filter((path) => !isSaid(valueAt(plan, path)));
    return { each, fields: unsaid.length > 0 ? unsaid : each.fields };
  });
  const firsts = new Map<string, number>();
  for (const { fields } of open) firsts.set(fields[0] ?? '', (firsts.get(fields[0] ?? '') ?? 0) + 1);
  const byField = new Map<string, NotJudged[]>();
  for (const { each, fields } of open) {
    // Where either of two fields would do, the one that others wait for too.
    const field = fields.reduce((best, own) => ((firsts.get(own) ?? 0) > (firsts.get(best) ?? 0) ? own : best));
    byField.set(field, [...(byField.get(field) ?? []), each]);
  }
  return [...byField].map(([field, waiting]) => {
    // "The rise to the tank" says more than "the operating point, which needs levels, pipes and pump".
    const named = waiting.toSorted((one, other) => vagueness(one, field) - vagueness(other, field))[0];
    if (named === undefined) throw new RangeError(`lackingIn: nothing waits for ${field}`);
    const same = waiting.filter(({ fact }) => fact === named.fact);
    const numbers = same.reduce<object>((all, each) => ({ ...each.numbers, ...all }), named.numbers);
    return { field, fact: named.fact, numbers, rules: waiting.map(({ rule }) => rule) };
  });
}

/** How badly the words for a fact fit one of its fields: well where it is the first of few. */
function vagueness({ fields }: NotJudged, field: string): number {
  return fields.length + (fields[0] === field ? 0 : MANY);
}

const MANY = 100;

/** Of a part every field that stands in it; a test by air alone says nothing of how far the water falls. */
export function isSaid(value: unknown): boolean {
  if (value === undefined || value === UNKNOWN || value === AIR_ALONE) return false;
  return typeof value === 'object' && value !== null ? Object.values(value).every(isSaid) : true;
}

const AIR_ALONE = 'yield only';
