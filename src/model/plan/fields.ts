/** Every field of the plan in the record's order, as the form shows it: made from the schema. */
import type * as z from 'zod/mini';
import type { QuantityKind } from '../units.ts';
import type { FieldMeta } from './field.ts';
import { planSchema } from './schema.ts';
import { bare, branchesOf, definition, isOptional, membersOf, metaOf } from './shape.ts';

export interface FieldInfo {
  /** "pump.setting"; "*" stands for the number of an item: "well.layers.*.bottom". */
  readonly path: string;
  /** First word of the path; empty for the plan's own fields. */
  readonly group: string;
  readonly label: string;
  readonly help: string;
  /** The same where it names a quantity, for readers of metric units. */
  readonly metricHelp?: string;
  readonly kind: QuantityKind | 'text' | 'choice' | 'flag' | 'count';
  /** Of a choice everything; of a quantity the words that may stand instead. */
  readonly options?: readonly (string | number)[];
  /** As one would type it. */
  readonly default?: string | number | readonly string[];
  readonly required: boolean;
  readonly unknownAllowed: boolean;
  /** Least and most that is possible, as one would type them. */
  readonly from?: string | number;
  readonly to?: string | number;
  /** Yes or no may stand instead of the quantity. */
  readonly orFlag: boolean;
  /** Only where another field has this value. */
  readonly when?: { readonly path: string; readonly is: string };
  /** No figure or rule reads it yet. */
  readonly notUsed: boolean;
}

/** Group labels and help, by path, in the record's order. */
export interface GroupInfo {
  readonly path: string;
  readonly label: string;
  readonly help: string;
}

type Schema = z.core.$ZodType;
type When = FieldInfo['when'];

export const fields: readonly FieldInfo[] = fieldsOf('', planSchema, true, undefined);

export const groups: readonly GroupInfo[] = Object.entries(planSchema.shape).flatMap(([path, schema]) => {
  const meta = metaOf(schema);
  return meta?.kind === 'group' ? [{ path, label: meta.label, help: meta.help }] : [];
});

/** The field at a path of a plan ("well.layers.2.bottom"), or null. */
export function fieldAt(path: string, where: (when: NonNullable<When>) => boolean = () => true): FieldInfo | null {
  const plain = path
    .replace(/^well\.casing\./, 'well.casings.*.')
    // Of two numbers in a row the second is the place in a pair: flow or head of a point.
    .replace(/\.\d+(\.\d+)?(?=\.|$)/g, '.*$1');
  const found = fields.filter((field) => field.path === plain);
  return found.find((field) => !field.when || where(field.when)) ?? found[0] ?? null;
}

function fieldsOf(path: string, schema: Schema, required: boolean, when: When): FieldInfo[] {
  const meta = metaOf(schema);
  const inner = bare(schema);
  const branches = branchesOf(inner);
  if (branches.length > 0) {
    const kindField: FieldInfo = {
      ...info(
        `${path}.kind`,
        { kind: 'choice', label: 'Kind', help: '', options: branches.map(({ kind }) => kind) },
        required,
        when,
      ),
      help: branches.map((branch) => `${branch.kind}: ${metaOf(branch.schema)?.help ?? ''}`).join(' '),
    };
    return [
      kindField,
      ...branches.flatMap(({ kind, members }) =>
        membersFields(path, members, required, { path: `${path}.kind`, is: kind }, true),
      ),
    ];
  }
  const members = membersOf(inner, null);
  if (members) return membersFields(path, members, required, when, false);
  const def = definition(inner);
  if (def.type === 'array') return fieldsOf(`${path}.*`, def.element, false, when);
  if (def.type === 'tuple')
    return def.items.flatMap((item, index) => fieldsOf(`${path}.${index}`, item, required, when));
  if (def.type === 'record' || !meta || meta.kind === 'group' || meta.kind === 'list') return [];
  return [info(path, { ...meta, kind: meta.kind }, required, when)];
}

function membersFields(
  path: string,
  members: Readonly<Record<string, Schema>>,
  required: boolean,
  when: When,
  inUnion: boolean,
): FieldInfo[] {
  return Object.entries(members).flatMap(([key, member]) => {
    if (inUnion && key === 'kind') return [];
    // The short form of a single casing: the form works on the list.
    if (path === 'well' && key === 'casing') return [];
    return fieldsOf(path === '' ? key : `${path}.${key}`, member, required && !isOptional(member), when);
  });
}

function info(path: string, meta: FieldMeta & { kind: FieldInfo['kind'] }, required: boolean, when: When): FieldInfo {
  return {
    path,
    group: path.includes('.') ? path.slice(0, path.indexOf('.')) : '',
    label: meta.label,
    help: meta.help,
    kind: meta.kind,
    ...(meta.metricHelp !== undefined && { metricHelp: meta.metricHelp }),
    ...(meta.options && { options: meta.options }),
    ...(meta.default !== undefined && { default: meta.default }),
    required,
    unknownAllowed: meta.unknown ?? false,
    ...(meta.from !== undefined && { from: meta.from }),
    ...(meta.to !== undefined && { to: meta.to }),
    orFlag: meta.orFlag ?? false,
    ...(when && { when }),
    notUsed: meta.later === true,
  };
}
