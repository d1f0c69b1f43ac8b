/** The sample plans, and copies of one that may be changed. */
import { readFileSync } from 'node:fs';
import type { Plan } from '../../../src/model/plan/schema.ts';

export const SAMPLES = ['tamarack-ridge', 'heron-flats', 'willow-dale', 'palo-amargo', 'slate-hollow'] as const;

export function sampleText(name: (typeof SAMPLES)[number]): string {
  return readFileSync(new URL(`../../../static/samples/${name}.json`, import.meta.url), 'utf8');
}

export function sample(name: (typeof SAMPLES)[number] = 'tamarack-ridge'): Plan {
  return JSON.parse(sampleText(name)) as Plan;
}

/** A plan with anything at all at a path, whether a plan may have it or not; `undefined` takes it out. */
export function spoiled(path: string, value: unknown, name: (typeof SAMPLES)[number] = 'tamarack-ridge'): unknown {
  const plan: unknown = sample(name);
  const keys = path.split('.');
  const last = keys.pop() ?? '';
  const owner = keys.reduce<unknown>((at, key) => (at as Record<string, unknown>)[key], plan) as Record<
    string,
    unknown
  >;
  if (value === undefined) Reflect.deleteProperty(owner, last);
  else owner[last] = value;
  return plan;
}
