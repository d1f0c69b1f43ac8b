/** Changes one field of a plan and leaves every other as typed. Plans are never mutated. */
import type { Metres } from '../si.ts';
import { readQuantity, writeQuantity } from '../units.ts';
import { defaultsIn } from './defaults.ts';
import { UNKNOWN } from './unknown.ts';
import { casingPlans } from './facts/well.ts';
import type { Plan } from './schema.ts';

type Keys = readonly string[];

/** What stands at a path ("pump.setting", "well.casings.0.bottom", "string.checkValves.1"); undefined where nothing does. */
export function valueAt(plan: Plan, path: string): unknown {
  return keysOf(plan, path).reduce<unknown>(
    (value, key) => (isContainer(value) && Object.hasOwn(value, key) ? value[key] : undefined),
    plan,
  );
}

/** The plan with another value at a path; `undefined` takes the field out, and an item out of a list. */
export function withValue(plan: Plan, path: string, value: unknown): Plan {
  if (value === undefined && valueAt(plan, path) === undefined) return plan;
  const keys = keysOf(plan, path);
  const next = setAt(withKind(opened(plan, keys), keys), keys, value) as Plan;
  return value === undefined ? withoutStatus(next, keys) : next;
}

/**
 * The plan with a depth at a path, given in metres from the ground: written in the unit that the field had (else in the
 * plan's units) and from the datum that the field has. `step` (SI) rounds what is written.
 */
export function withDepth(plan: Plan, path: string, depth: Metres, step?: Metres): Plan {
  return withLength(plan, path, depth - datumOf(plan, path), step);
}

/** The same for what has no datum: heights and differences. */
export function withLength(plan: Plan, path: string, length: Metres, step?: Metres): Plan {
  return withValue(plan, path, writeQuantity(length, 'length', unitFor(plan, path), step));
}

/** Depth below ground at which the counting of a field begins [m]: minus the casing height, or 0. */
export function datumOf(plan: Plan, path: string): Metres {
  if (plan.well.depthsFrom !== 'casing top' || !isCountedFromDatum(path)) return 0;
  const [outermost] = casingPlans(plan.well);
  const parsed = readQuantity(outermost?.casing.height ?? defaultsIn(plan.units).casingHeight, 'length');
  return parsed.ok ? -parsed.si : 0;
}

/** Of well, water and pump setting every depth; no difference, height or diameter. */
export function isCountedFromDatum(path: string): boolean {
  if (path === 'pump.setting') return true;
  if (!/^(?:well|water)\./.test(path)) return false;
  return /(?:^|\.)(?:depth|soundedDepth|top|bottom|staticLevel|staticHighest|staticLowest|level)$/.test(path);
}

/** Told in hands, not in fathoms: by the trade and by the offices that ask for them. */
const SHALLOW = new Set(['top.depth', 'site.frostDepth', 'site.frostMargin', 'site.casingHeightRequired']);

/** The unit of what stands there, so that a drag does not turn metres into feet. */
function unitFor(plan: Plan, path: string): string {
  const typed = valueAt(plan, path);
  const parsed = typeof typed === 'string' && typed !== UNKNOWN ? readQuantity(typed, 'length') : null;
  if (parsed?.ok) return parsed.unit;
  const metric = plan.units === 'metric';
  return SHALLOW.has(path) ? (metric ? 'cm' : 'in') : metric ? 'm' : 'ft';
}

/** The keys under which the plan itself has the field: a single casing or screen may be typed in its short form. */
function keysOf(plan: Plan, path: string): Keys {
  const keys = path.split('.');
  const [first, second, third, ...rest] = keys;
  if (first !== 'well') return keys;
  const { casing, casings, intake } = plan.well;
  if (second === 'casings' && third === '0' && casing) return ['well', 'casing', ...rest];
  if (second === 'casing' && !casing && casings) return ['well', 'casings', '0', ...keys.slice(2)];
  const short = intake.screens === undefined && (intake.top !== undefined || intake.bottom !== undefined);
  if (second === 'intake' && third === 'screens' && rest[0] === '0' && short && isShortScreenField(rest[1])) {
    return ['well', 'intake', ...rest.slice(1)];
  }
  if (second === 'intake' && isShortScreenField(third) && intake.screens && intake.screens.length > 0) {
    return ['well', 'intake', 'screens', '0', ...keys.slice(2)];
  }
  return keys;
}

function isShortScreenField(name: string | undefined): boolean {
  return name === 'top' || name === 'bottom';
}

/** What is no longer in the plan stands nowhere: its status goes too, and that of the items behind it in a list. */
function withoutStatus(plan: Plan, keys: Keys): Plan {
  if (plan.status === undefined || keys[0] === 'status') return plan;
  const last = keys.at(-1) ?? '';
  const owner = keys.slice(0, -1).join('.');
  const gone = (path: string): boolean => {
    const own = keysOf(plan, path);
    if (own.length < keys.length || own.slice(0, keys.length - 1).join('.') !== owner) return false;
    const key = own[keys.length - 1] ?? '';
    return /^\d+$/.test(last) ? Number(key) >= Number(last) : key === last;
  };
  const kept = Object.entries(plan.status).filter(([path]) => !gone(path));
  return setAt(plan, ['status'], kept.length > 0 ? Object.fromEntries(kept) : undefined) as Plan;
}

/** What a field is of, where the plan has not said it yet: a depth of the outlet is that of a pitless adapter. */
const KIND_OF: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  top: {
    depth: 'pitless',
    protrusion: 'pitless',
    thread: 'pitless',
    submergedUse: 'pitless',
    heated: 'seal',
    housed: 'seal',
  },
  curve: { flow: 'generic', points: 'points' },
};

function withKind(plan: Plan, keys: Keys): Plan {
  const owner = keys[0] === 'top' ? ['top'] : keys[0] === 'pump' && keys[1] === 'curve' ? ['pump', 'curve'] : null;
  if (owner === null || valueAt(plan, owner.join('.')) !== undefined) return plan;
  const kind = KIND_OF[owner.at(-1) ?? '']?.[keys[owner.length] ?? ''];
  return kind === undefined ? plan : (setAt(plan, [...owner, 'kind'], kind) as Plan);
}

/** A short form is written out where the path asks for more than it can hold: a second casing, a screen's slot. */
function opened(plan: Plan, keys: Keys): Plan {
  const { casing, ...well } = plan.well;
  if (keys[1] === 'casings' && casing) {
    const { status } = plan;
    const renamed = status && Object.fromEntries(Object.entries(status).map(([path, word]) => [longForm(path), word]));
    return { ...plan, well: { ...well, casings: [casing] }, ...(renamed && { status: renamed }) };
  }
  const { top, bottom, ...intake } = plan.well.intake;
  if (keys[1] === 'intake' && keys[2] === 'screens' && top !== undefined && bottom !== undefined) {
    return { ...plan, well: { ...plan.well, intake: { ...intake, screens: [{ top, bottom }] } } };
  }
  return plan;
}

function longForm(path: string): string {
  return path.replace(/^well\.casing(?=\.|$)/, 'well.casings.0');
}

function setAt(container: unknown, keys: Keys, value: unknown): unknown {
  const [key, ...rest] = keys;
  if (key === undefined) return value;
  const isList = Array.isArray(container) || (container === undefined && /^\d+$/.test(key));
  if (isList) {
    const items: unknown[] = [...((container as unknown[] | undefined) ?? [])];
    const item = setAt(items[Number(key)], rest, value);
    if (item === undefined) items.splice(Number(key), 1);
    else items[Number(key)] = item;
    return items;
  }
  const fields: Record<string, unknown> = { ...(container as Record<string, unknown> | undefined) };
  const field = setAt(Object.hasOwn(fields, key) ? fields[key] : undefined, rest, value);
  if (field === undefined) Reflect.deleteProperty(fields, key);
  else Object.defineProperty(fields, key, { value: field, enumerable: true, writable: true, configurable: true });
  return fields;
}

function isContainer(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null;
}
