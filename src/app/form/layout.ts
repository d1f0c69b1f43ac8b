/**
 * The record as a form: groups in the record's order, each a row of single fields, lists and parts that may be left out.
 * All of it comes from the model's fields.
 */
import { fields, groups, type FieldInfo } from '../../model/plan/fields.ts';
import { valueAt } from '../../model/plan/editPlan.ts';
import { capital } from '../../words/en/phrases.ts';
import { sayChoice } from '../../words/en/plan/choices.ts';
import type { Kinds } from './knowing.ts';
import { listOf } from './names.ts';
import type { Plan } from '../../model/plan/schema.ts';

export type Leaf =
  | { readonly kind: 'field'; readonly field: FieldInfo }
  | { readonly kind: 'list'; readonly path: string; readonly fields: readonly FieldInfo[] };

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

/** Parts of the plan that are there as a whole or not at all. */
export const PARTS: Readonly<Record<string, { readonly label: string; readonly the: string }>> = {
  'well.grout': { label: 'Grout', the: 'the grout' },
  'water.pumping': { label: 'How it was tested', the: 'the test of the well' },
  'house.line': { label: 'Line to the house', the: 'the line to the house' },
  rope: { label: 'Safety rope', the: 'the safety rope' },
};

/** The fewest items that a list can have, where it cannot be empty. */
export const FEWEST: Readonly<Record<string, number>> = {
  'well.casings': 1,
  'water.pumping.steps': 1,
  'pump.curve.points': 2,
};

/** Lists that say something by being empty: there is none. Of the others an empty one says nothing. */
export const MAY_BE_NONE = new Set(['string.checkValves', 'string.splices']);

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

/** Items that are a bare height carry the item's name; under its heading they say what of it. */
const HEIGHTS: Readonly<Record<string, string>> = { 'string.checkValves.*': 'Height', 'string.splices.*': 'Height' };

/** Every field that the record asks for, under the words that it asks with. */
export const ASKED: readonly FieldInfo[] = fields
  // Pumps to choose among are pasted where one chooses; what was put in is written down where it is built.
  .filter(({ path }) => !HIDDEN.has(path) && !/^(?:house\.branches|ownPumps|asBuilt)/.test(path))
  .map((field) => ({
    ...field,
    label: KINDS[field.path] ?? HEIGHTS[field.path] ?? field.label,
    help: helpOf(field),
  }));

/** Help for a choice of kinds tells each under the words that stand for it in the list. */
function helpOf({ path, help, options = [] }: FieldInfo): string {
  if (KINDS[path] === undefined) return help;
  return options.reduce<string>(
    (told, option) => told.replace(`${option}: `, () => `${capital(sayChoice(path, option))}: `),
    help,
  );
}

export const ABOUT: readonly FieldInfo[] = ASKED.filter((field) => field.group === '');

export const SECTIONS: readonly Section[] = ORDER.map((path) => {
  const { label, help } = groups.find((group) => group.path === path) ?? TOP;
  return { path, label, help, blocks: blocksOf(ASKED.filter((field) => field.group === path)) };
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
  return grouped(own, ({ path }) => listOf(path) ?? undefined).flatMap(({ key, members }): readonly Leaf[] =>
    key === undefined
      ? members.map((field) => ({ kind: 'field', field }))
      : [{ kind: 'list', path: key, fields: members }],
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
export function applies({ when }: FieldInfo, plan: Plan, { assumed }: Kinds): boolean {
  return when === undefined || (valueAt(plan, when.path) ?? assumed.get(when.path)?.value) === when.is;
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

/** A choice that decides which fields follow: they start as not known, or as assumed, until somebody says them. */
export function startOfKind(path: string, kind: string): unknown {
  switch (`${path} ${kind}`) {
    case 'water.pumping test':
      return { kind, flow: 'unknown', drawdown: 'unknown' };
    case 'water.pumping level':
      return { kind, level: 'unknown', flow: 'unknown' };
    case 'water.pumping steps':
      return { kind, steps: [{ flow: 'unknown', drawdown: 'unknown' }] };
    case 'water.pumping aquifer':
      return { kind, transmissivity: 'unknown', storativity: 'unknown' };
    default:
      return { kind };
  }
}

/** The choices whose value decides the shape of what is beside them. */
export const SHAPING = new Set(['water.pumping.kind', 'top.kind', 'pump.curve.kind']);
