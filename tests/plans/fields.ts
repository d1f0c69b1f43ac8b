/** Every field that a plan may have, from its schema, and plans that differ from another in one of them alone. */
import { jsonSchema } from '../../src/model/plan/jsonSchema.ts';
import { readPlan, type Plan } from '../../src/model/index.ts';

interface Json {
  readonly type?: string;
  readonly enum?: readonly unknown[];
  readonly const?: unknown;
  readonly examples?: readonly unknown[];
  readonly properties?: Readonly<Record<string, Json>>;
  readonly additionalProperties?: boolean | Json;
  readonly items?: Json;
  readonly prefixItems?: readonly Json[];
  readonly anyOf?: readonly Json[];
  readonly oneOf?: readonly Json[];
}

/** Of a list or a record every entry. */
const EACH = '*';

export interface Field {
  /** "well.layers.*.material" */
  readonly path: string;
  /** What the schema itself gives to put there. */
  readonly values: readonly unknown[];
}

/** Fields and groups of them, each once. */
export function fieldsOf(schema: Json = jsonSchema() as Json): Field[] {
  const found = new Map<string, unknown[]>();
  const walk = (at: Json, path: string): void => {
    if (path !== '') {
      const values = found.get(path) ?? [];
      found.set(path, values);
      values.push(...(at.enum ?? []), ...(at.examples ?? []));
      if (at.const !== undefined) values.push(at.const);
      if (at.type === 'boolean') values.push(true, false);
      if (at.type === 'integer') values.push(1, 3, 6);
      if (at.type === 'string' && at.enum === undefined && at.const === undefined) values.push('unknown');
    }
    const under = (key: string): string => (path === '' ? key : `${path}.${key}`);
    for (const [key, each] of Object.entries(at.properties ?? {})) walk(each, under(key));
    if (typeof at.additionalProperties === 'object') walk(at.additionalProperties, under(EACH));
    // A pair has no other entries than its own.
    if (at.prefixItems !== undefined) for (const [i, each] of at.prefixItems.entries()) walk(each, under(String(i)));
    else if (at.items !== undefined) walk(at.items, under(EACH));
    for (const each of [...(at.anyOf ?? []), ...(at.oneOf ?? [])]) walk(each, path);
  };
  walk(schema, '');
  return [...found].map(([path, values]) => ({ path, values }));
}

type Node = Readonly<Record<string, unknown>>;
const isNode = (value: unknown): value is Node => typeof value === 'object' && value !== null;

/** The places in a plan that a field's path names: of a list each entry, of a record those that it has. */
function placesIn(plan: unknown, path: string): string[][] {
  return path.split('.').reduce<string[][]>(
    (places, key) =>
      places.flatMap((place) => {
        const at = valueAt(plan, place);
        if (key !== EACH) return isNode(at) ? [[...place, key]] : [];
        return isNode(at) ? Object.keys(at).map((each) => [...place, each]) : [];
      }),
    [[]],
  );
}

/** Whether a plan has a place for that field, said or not. */
export function hasPlace(plan: unknown, { path }: Field): boolean {
  return placesIn(plan, path).length > 0;
}

/** Whether a plan says something there. */
export function says(plan: unknown, { path }: Field): boolean {
  return placesIn(plan, path).some((place) => valueAt(plan, place) !== undefined);
}

function valueAt(plan: unknown, place: readonly string[]): unknown {
  return place.reduce<unknown>((at, key) => (isNode(at) && Object.hasOwn(at, key) ? at[key] : undefined), plan);
}

function withAt(plan: unknown, place: readonly string[], value: unknown): unknown {
  const copy: unknown = structuredClone(plan);
  const last = place.at(-1) ?? '';
  const holder = valueAt(copy, place.slice(0, -1)) as Record<string, unknown>;
  if (value === undefined && Array.isArray(holder)) holder.splice(Number(last), 1);
  else if (value === undefined) Reflect.deleteProperty(holder, last);
  else holder[last] = value;
  return copy;
}

/** The same quantity a good deal less and more: "62 ft" as "43.4 ft" and "85.56 ft". */
function scaled(value: unknown): unknown[] {
  const [, figure, unit] = /^(-?\d+(?:\.\d+)?)( .+)$/.exec(typeof value === 'string' ? value : '') ?? [];
  if (figure === undefined || unit === undefined) return [];
  return [0.7, 1.38].map((times) => `${Math.round(Number(figure) * times * 100) / 100}${unit}`);
}

export interface OneOther {
  /** "well.layers.0.material: peat" */
  readonly what: string;
  readonly plan: Plan;
}

/** What stands at each field in any of these plans, as typed. */
export function saidIn(plans: readonly unknown[], fields: readonly Field[]): ReadonlyMap<string, readonly unknown[]> {
  return new Map(
    fields.map(({ path }) => {
      const said = plans.flatMap((plan) => placesIn(plan, path).map((place) => valueAt(plan, place)));
      return [path, said.filter((value) => value !== undefined)];
    }),
  );
}

/**
 * A plan that reads and differs from this one in that field alone: it says what the schema allows, what others say there,
 * less, more, or nothing. `null` where there is none.
 *
 * @param plan    as typed
 * @param said    what others say there
 * @param random  numbers in [0, 1)
 */
export function otherIn(
  plan: unknown,
  { path, values }: Field,
  said: readonly unknown[],
  random: () => number,
): OneOther | null {
  const pick = <T>(from: readonly T[]): T | undefined => from[Math.floor(random() * from.length)];
  // What does not read with the rest of the plan is left for another.
  for (let i = 0; i < 6; i++) {
    const place = pick(placesIn(plan, path));
    if (place === undefined) return null;
    const now = valueAt(plan, place);
    const value = pick(pick([scaled(now), values, said, [undefined]].filter((kind) => kind.length > 0)) ?? []);
    const [was, is] = [JSON.stringify(now), JSON.stringify(value)];
    if (was === is) continue;
    const read = readPlan(withAt(plan, place, structuredClone(value)));
    if (read.ok) return { what: `${place.join('.')}: ${String(is).slice(0, 80)}`, plan: read.plan };
  }
  return null;
}
