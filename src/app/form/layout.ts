/**
 * The record as a form: groups in the record's order, each a row of single fields, lists and parts that may be left out.
 * All of it comes from the model's fields; what stands here is only what a new item or part starts as.
 */
import { fields, groups, type FieldInfo } from '../../model/plan/fields.ts';
import { valueAt } from '../../model/plan/editPlan.ts';
import type { Plan } from '../../model/plan/schema.ts';
import { parseQuantity, writeQuantity } from '../../model/units.ts';

export type Leaf =
  | { readonly kind: 'field'; readonly field: FieldInfo }
  | { readonly kind: 'list'; readonly path: string; readonly label: string; readonly fields: readonly FieldInfo[] };

export type Block =
  Leaf | { readonly kind: 'part'; readonly path: string; readonly label: string; readonly leaves: readonly Leaf[] };

export interface Section {
  readonly path: string;
  readonly label: string;
  readonly help: string;
  readonly blocks: readonly Block[];
}

/** Asked first: the record's order starts with the well and its water. */
const ORDER = ['well', 'water', 'site', 'top', 'pump', 'dropPipe', 'string', 'wire', 'rope', 'house', 'disinfection'];

/** Parts of the plan that are there as a whole or not at all, with what they start as. */
const PARTS: Readonly<Record<string, { readonly label: string; readonly start: (plan: Plan) => unknown }>> = {
  'well.grout': { label: 'Grout', start: () => ({ bottom: 'unknown' }) },
  'water.pumping': { label: 'How it was tested', start: () => ({ kind: 'yield only' }) },
  'house.line': { label: 'Buried line', start: () => ({ material: 'PE', size: '1 in', rating: '200 psi' }) },
  rope: { label: 'Safety rope', start: () => ({ material: 'polypropylene' }) },
};

const LISTS: Readonly<Record<string, string>> = {
  'well.casings': 'Casing',
  'well.intake.screens': 'Screen',
  'well.inflows': 'Inflow',
  'well.layers': 'Layer',
  'water.pumping.steps': 'Step of the test',
  'pump.curve.points': 'Point of the curve',
  'string.checkValves': 'Check valve',
  'string.splices': 'Splice',
};

/** Not on the form: fixed, set elsewhere, or a short way of writing a list that is there. */
const HIDDEN = new Set(['format', 'units', 'well.intake.top', 'well.intake.bottom']);

/** Sections and choices that the schema leaves without words of their own. */
const TOP = {
  label: 'Top of the well',
  help: 'How the pipe leaves the well: through the side of the casing below frost, or through a seal on top.',
} as const;
const KINDS: Readonly<Record<string, string>> = {
  'top.kind': 'How the pipe leaves',
  'water.pumping.kind': 'Kind of test',
  'pump.curve.kind': 'Curve of the pump',
};

const asked: readonly FieldInfo[] = fields
  .filter(({ path }) => !HIDDEN.has(path) && !path.startsWith('house.branches'))
  .map((field) => ({ ...field, label: KINDS[field.path] ?? field.label }));

export const ABOUT: readonly FieldInfo[] = asked.filter((field) => field.group === '');

export const SECTIONS: readonly Section[] = ORDER.map((path) => {
  const { label, help } = groups.find((group) => group.path === path) ?? TOP;
  return { path, label, help, blocks: blocksOf(asked.filter((field) => field.group === path)) };
});

/** Parts gather what is under their path; the rest stands by itself, in the fields' order. */
function blocksOf(own: readonly FieldInfo[]): readonly Block[] {
  const partOf = ({ path }: FieldInfo): string | undefined =>
    Object.keys(PARTS).find((part) => path === part || path.startsWith(`${part}.`));
  return grouped(own, partOf).flatMap(({ key, members }): readonly Block[] =>
    key === undefined
      ? leavesOf(members)
      : [{ kind: 'part', path: key, label: PARTS[key]?.label ?? key, leaves: leavesOf(members) }],
  );
}

function leavesOf(own: readonly FieldInfo[]): readonly Leaf[] {
  const listOf = ({ path }: FieldInfo): string | undefined =>
    path.includes('.*') ? path.slice(0, path.indexOf('.*')) : undefined;
  return grouped(own, listOf).flatMap(({ key, members }): readonly Leaf[] =>
    key === undefined
      ? members.map((field) => ({ kind: 'field', field }))
      : [{ kind: 'list', path: key, label: LISTS[key] ?? key, fields: members }],
  );
}

/** Runs of fields with the same key, in order; a key comes once, where its first field stands. */
function grouped(
  own: readonly FieldInfo[],
  keyOfField: (field: FieldInfo) => string | undefined,
): readonly { readonly key: string | undefined; readonly members: readonly FieldInfo[] }[] {
  const groups: { key: string | undefined; members: FieldInfo[] }[] = [];
  for (const field of own) {
    const key = keyOfField(field);
    const found = key === undefined ? groups.at(-1) : groups.find((group) => group.key === key);
    if (found !== undefined && found.key === key) found.members.push(field);
    else groups.push({ key, members: [field] });
  }
  return groups;
}

/** Two kinds of a test may have a field of the same path. */
export function keyOf(block: Block): string {
  return block.kind === 'field' ? `${block.field.path} ${block.field.when?.is ?? ''}` : block.path;
}

/** A field that hangs on another's value shows only then. */
export function applies({ when }: FieldInfo, plan: Plan): boolean {
  return when === undefined || valueAt(plan, when.path) === when.is;
}

export function startOfPart(path: string, plan: Plan): unknown {
  return PARTS[path]?.start(plan);
}

/** How many items a list has, also where it is written in its short form. */
export function lengthOfList(path: string, plan: Plan): number {
  const list = valueAt(plan, path);
  if (Array.isArray(list)) return list.length;
  return valueAt(plan, `${path}.0`) !== undefined || shortForm(path, plan) ? 1 : 0;
}

function shortForm(path: string, plan: Plan): boolean {
  if (path === 'well.casings') return plan.well.casing !== undefined;
  return (
    path === 'well.intake.screens' && (plan.well.intake.top !== undefined || plan.well.intake.bottom !== undefined)
  );
}

/** What a new item starts as: whole enough to be read, to be typed over. */
export function startOfItem(path: string, plan: Plan): unknown {
  const metric = plan.units === 'metric';
  const deep = plan.well.depth;
  switch (path) {
    case 'well.casings':
      return { material: 'PVC', size: '4 in', bottom: 'unknown' };
    case 'well.intake.screens':
      return { top: aboveBottom(deep, metric), bottom: deep };
    case 'well.inflows':
      return { depth: deep };
    case 'well.layers':
      return { material: 'rock', bottom: deep };
    case 'water.pumping.steps':
      return { flow: metric ? '40 L/min' : '10 gpm', drawdown: metric ? '5 m' : '20 ft' };
    case 'pump.curve.points':
      return metric ? ['0 L/min', '100 m'] : ['0 gpm', '300 ft'];
    default:
      return metric ? '30 m' : '100 ft';
  }
}

/** A first screen stands in the lowest ten feet or three metres. */
function aboveBottom(depth: string, metric: boolean): string {
  const read = parseQuantity(depth, 'length');
  const top = read.ok ? Math.max(read.si - 3.048, read.si / 2) : 0;
  return metric ? writeQuantity(top, 'length', 'm', 0.1) : writeQuantity(top, 'length', 'ft', 0.3048);
}

/** A choice that decides which fields follow: its other fields start anew where the reader asks for them. */
export function startOfKind(path: string, kind: string, plan: Plan): unknown {
  const metric = plan.units === 'metric';
  const flow = metric ? '38 L/min' : '10 gpm';
  switch (`${path} ${kind}`) {
    case 'water.pumping test':
      return { kind, flow, drawdown: metric ? '10 m' : '30 ft' };
    case 'water.pumping level':
      return {
        kind,
        level: plan.water.staticLevel === 'unknown' ? (metric ? '20 m' : '60 ft') : plan.water.staticLevel,
      };
    case 'water.pumping steps':
      return { kind, steps: [{ flow, drawdown: metric ? '10 m' : '30 ft' }] };
    case 'water.pumping aquifer':
      return { kind, transmissivity: metric ? '10 m2/d' : '800 gpd/ft', storativity: '0.0001' };
    case 'top pitless':
      return { kind, depth: metric ? '1.8 m' : '6 ft' };
    case 'pump.curve generic':
      return { kind, flow };
    case 'pump.curve points':
      return {
        kind,
        points: metric
          ? [
              ['0 L/min', '100 m'],
              ['40 L/min', '70 m'],
              ['60 L/min', '30 m'],
            ]
          : [
              ['0 gpm', '350 ft'],
              ['10 gpm', '270 ft'],
              ['16 gpm', '120 ft'],
            ],
      };
    default:
      return { kind };
  }
}

/** The choices whose value decides the shape of what is beside them. */
export const SHAPING = new Set(['water.pumping.kind', 'top.kind', 'pump.curve.kind']);
