/** How a field of the plan is declared: its schema, and beside it what the form, the messages and the JSON Schema say of it. */
import * as z from 'zod/mini';
import { isForeign, parseQuantity, UNITS, writeQuantity } from '../units.ts';
import type { QuantityKind } from '../units.ts';
import { UNKNOWN } from './unknown.ts';

export interface FieldMeta {
  readonly kind: QuantityKind | 'text' | 'choice' | 'flag' | 'count' | 'group' | 'list';
  readonly label: string;
  /** For someone who has never done this: what it is, and where to find it. */
  readonly help: string;
  /** The same where it names a quantity, for readers of metric units. */
  readonly metricHelp?: string;
  /** The least and the most that is possible, as one would type them. */
  readonly from?: string | number;
  readonly to?: string | number;
  /** The least is not possible itself: a depth above 0 ft. */
  readonly above?: boolean;
  /** What may be typed: of a choice everything, of a quantity what may stand instead of it ("none"). */
  readonly options?: readonly (string | number)[];
  /** Yes or no may stand instead of the quantity. */
  readonly orFlag?: boolean;
  readonly default?: string | number | readonly string[];
  /** A fact of the place: "unknown" is an answer. */
  readonly unknown?: boolean;
  /** No figure or rule reads it yet: always, or when it has this value. */
  readonly later?: true | string;
  /** What to write where it is missing, if not the usual example of its kind. */
  readonly example?: string;
}

/** Every field's and group's metadata, by schema. */
export const fieldMeta = z.registry<FieldMeta>();

type Extra = Partial<Omit<FieldMeta, 'kind' | 'label' | 'help'>>;

/** Text with a unit. What is possible at all is bounded per kind, so that no plan can make a figure overflow. */
export function quantity(kind: QuantityKind, label: string, help: string, extra: Extra = {}) {
  const meta: FieldMeta = { kind, label, help, ...BOUNDS[kind], ...extra };
  return z
    .string()
    .check(z.refine((text) => quantityFault(text, meta) === null))
    .register(fieldMeta, meta);
}

/** A quantity of the place that may be typed as "unknown". */
export function fact(kind: QuantityKind, label: string, help: string, extra: Extra = {}) {
  return quantity(kind, label, help, { ...extra, unknown: true });
}

/** A quantity or yes or no. */
export function quantityOrFlag(kind: QuantityKind, label: string, help: string, extra: Extra = {}) {
  const text = quantity(kind, label, help, extra);
  return z
    .union([z.boolean(), text])
    .register(fieldMeta, { kind, label, help, ...BOUNDS[kind], ...extra, orFlag: true });
}

export function choice<const Options extends readonly (string | number)[]>(
  options: Options,
  label: string,
  help: string,
  extra: Extra = {},
) {
  const schema = z.literal(options);
  fieldMeta.add(schema, { kind: 'choice', options, label, help, ...extra });
  return schema;
}

export function flag(label: string, help: string, extra: Extra = {}) {
  return z.boolean().register(fieldMeta, { kind: 'flag', label, help, ...extra });
}

export function count(from: number, to: number, label: string, help: string, extra: Extra = {}) {
  return z
    .int()
    .check(z.gte(from), z.lte(to))
    .register(fieldMeta, { kind: 'count', from, to, label, help, ...extra });
}

/** Free text, as long as a page at most. */
export function words(label: string, help: string, extra: Extra = {}) {
  return z
    .string()
    .check(z.maxLength(LONGEST_TEXT))
    .register(fieldMeta, { kind: 'text', label, help, ...extra });
}

export function group<Shape extends z.core.$ZodLooseShape>(
  label: string,
  help: string,
  shape: Shape,
  extra: Extra = {},
) {
  return z.strictObject(shape).register(fieldMeta, { kind: 'group', label, help, ...extra });
}

export function list<Item extends z.core.$ZodType>(label: string, help: string, item: Item, extra: Extra = {}) {
  const { from = 0, to = LONGEST_LIST } = extra;
  return z
    .array(item)
    .check(z.minLength(Number(from)), z.maxLength(Number(to)))
    .register(fieldMeta, { kind: 'list', label, help, ...extra, from, to });
}

export function pair<const Items extends readonly [z.core.$ZodType, z.core.$ZodType]>(
  label: string,
  help: string,
  items: Items,
  example: string,
) {
  const schema = z.tuple([...items]);
  fieldMeta.add(schema, { kind: 'list', label, help, from: 2, to: 2, example });
  return schema;
}

export const LONGEST_TEXT = 4000;
const LONGEST_LIST = 100;

/** Why a text is not the quantity asked for: what is wrong and what to write; null when it is. */
export function quantityFault(
  text: string,
  meta: FieldMeta,
  units: 'us' | 'metric' = 'us',
): { fault: string; write: string; bare: number | null } | null {
  if (meta.options?.includes(text) || (meta.unknown && text === UNKNOWN)) return null;
  const kind = meta.kind as QuantityKind;
  const parsed = parseQuantity(text, kind);
  if (!parsed.ok) return parsed;
  const least = limit(meta.from, kind);
  const most = limit(meta.to, kind);
  const { si } = parsed;
  if (si >= least && si <= most && !(meta.above && si <= least)) return null;
  // Of two numbers that count backwards no limit is of use.
  if (kind === 'gauge')
    return { fault: 'not a size of pump wire', write: `${GAUGES[units]}; ${THICKER[units]}`, bare: null };
  const [from, to] = [meta.from, meta.to].map((each) => limitIn(each, kind, units, parsed.unit));
  const low = si < least || (meta.above === true && si <= least);
  return {
    fault: low
      ? `which is not possible: it must be ${meta.above ? 'more than' : 'at least'} ${from}`
      : `which is not possible: it must be at most ${to}`,
    write: `a value ${meta.above ? 'above' : 'from'} "${from}" ${meta.above ? 'and up to' : 'to'} "${to}"`,
    bare: null,
  };
}

const GAUGES = { us: '"14 AWG", "12 AWG" or "10 AWG"', metric: '"2.5 mm2", "4 mm2" or "6 mm2"' } as const;
const THICKER = { us: 'a smaller number is a thicker wire', metric: 'a larger number is a thicker wire' } as const;

/**
 * A limit as one would type it: in the small unit that the value was typed in, else the printed one, or the nearest of
 * three figures in the other kind of unit.
 */
function limitIn(
  text: string | number | undefined,
  kind: QuantityKind,
  units: 'us' | 'metric',
  typedIn: string,
): string {
  const parsed = parseQuantity(String(text), kind);
  if (parsed.ok && SMALL_UNITS.has(typedIn) && !isForeign(typedIn, units))
    return writeQuantity(parsed.si, kind, typedIn, roundStep(parsed.si, kind, typedIn));
  const unit = UNITS[kind][units === 'us' ? 0 : 1];
  if (!parsed.ok || unit === undefined || !isForeign(parsed.unit, units)) return String(text);
  const small = kind === 'length' && Math.abs(parsed.si) < 0.5 && parsed.si !== 0;
  const name = small ? (units === 'us' ? 'in' : 'mm') : unit.name;
  return writeQuantity(parsed.si, kind, name, roundStep(parsed.si, kind, name));
}

/** Who types inches reads inches. */
const SMALL_UNITS: ReadonlySet<string> = new Set(['in', 'cm', 'mm']);

/** A step of three figures in that unit, SI. */
function roundStep(si: number, kind: QuantityKind, unit: string): number {
  const one = parseQuantity(`1 ${unit}`, kind);
  const size = one.ok ? one.si : 1;
  const figures = Math.floor(Math.log10(Math.max(Math.abs(si / size), 1)));
  return kind === 'temperature' ? 1 : size * 10 ** Math.min(0, figures - 2);
}

function limit(text: string | number | undefined, kind: QuantityKind): number {
  const parsed = parseQuantity(String(text), kind);
  return parsed.ok ? parsed.si : Number.NaN;
}

/** Widest sensible range of each kind: beyond any well, any house and any pump of this trade. */
const BOUNDS: Readonly<Record<QuantityKind, { from: string; to: string; above?: boolean }>> = {
  length: { from: '0 ft', to: '5000 ft' },
  flow: { from: '0 gpm', to: '5000 gpm', above: true },
  pressure: { from: '0 psi', to: '1000 psi', above: true },
  temperature: { from: '32 degF', to: '120 degF' },
  volume: { from: '0 gal', to: '100000 gal', above: true },
  time: { from: '0 s', to: '10000 d', above: true },
  transmissivity: { from: '0 ft2/d', to: '10000000 ft2/d', above: true },
  mass: { from: '0 lb', to: '10000 lb', above: true },
  force: { from: '0 lbf', to: '100000 lbf', above: true },
  voltage: { from: '12 V', to: '1000 V' },
  current: { from: '0 A', to: '500 A', above: true },
  power: { from: '0 hp', to: '200 hp', above: true },
  gauge: { from: '4/0 AWG', to: '16 AWG' },
  ratio: { from: '0', to: '1' },
  acidity: { from: '0', to: '14' },
  concentration: { from: '0 mg/L', to: '10000 mg/L', above: true },
  freezingIndex: { from: '0 degF d', to: '20000 degF d' },
  conductivity: { from: '0 uS/cm', to: '100000 uS/cm' },
};
