/**
 * The record as a form: groups in the record's order, each a row of single fields, lists and parts that may be left out.
 * All of it comes from the model's fields; what stands here is only what a new item or part starts as.
 */
import { fields, groups, type FieldInfo } from '../../model/plan/fields.ts';
import { valueAt } from '../../model/plan/editPlan.ts';
import type { Plan } from '../../model/plan/schema.ts';
import { parseQuantity, writeQuantity } from '../../model/units.ts';

export type Block =
  | { readonly kind: 'field'; readonly field: FieldInfo }
  | { readonly kind: 'list'; readonly path: string; readonly label: string; readonly fields: readonly FieldInfo[] }
  | { readonly kind: 'part'; readonly path: string; readonly label: string; readonly blocks: readonly Block[] };

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

export const ABOUT: readonly FieldInfo[] = fields.filter((field) => field.group === '' && !HIDDEN.has(field.path));

export const SECTIONS: readonly Section[] = ORDER.map((path) => {
  const info = groups.find((group) => group.path === path);
  const own = fields.filter(
    (field) => field.group === path && !HIDDEN.has(field.path) && !field.path.startsWith('house.branches'),
  );
  return { path, label: info?.label ?? path, help: info?.help ?? '', blocks: blocksOf(own, '') };
});

function blocksOf(own: readonly FieldInfo[], within: string): readonly Block[] {
  const blocks: Block[] = [];
  const done = new Set<string>();
  for (const field of own) {
    const part = Object.keys(PARTS).find(
      (path) => path !== within && (field.path === path || field.path.startsWith(`${path}.`)),
    );
    const list = field.path.includes('.*') ? field.path.slice(0, field.path.indexOf('.*')) : undefined;
    const key = part ?? list;
    if (key === undefined) {
      blocks.push({ kind: 'field', field });
    } else if (!done.has(key)) {
      done.add(key);
      const inside = own.filter(({ path }) => path.startsWith(`${key}.`));
      if (part === undefined)
        blocks.push({ kind: 'list', path: key, label: LISTS[key] ?? field.label, fields: inside });
      else
        blocks.push({
          kind: 'part',
          path: key,
          label: PARTS[key]?.label ?? field.label,
          blocks: blocksOf(inside, key),
        });
    }
  }
  return blocks;
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
