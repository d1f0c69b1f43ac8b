/** Walks the schema beside a plan: which schema stands at a path, and what it is called. */
import * as z from 'zod/mini';
import { fieldMeta } from './field.ts';
import type { FieldMeta } from './field.ts';

export type Path = readonly (string | number)[];
type Schema = z.core.$ZodType;
type Definition = z.core.$ZodTypes['_zod']['def'];

export function definition(schema: Schema): Definition {
  return schema._zod.def as Definition;
}

/** The schema inside an optional one. */
export function bare(schema: Schema): Schema {
  const def = definition(schema);
  return def.type === 'optional' ? bare(def.innerType) : schema;
}

export function isOptional(schema: Schema): boolean {
  return definition(schema).type === 'optional';
}

/** Metadata of a field or group; null for what carries none. */
export function metaOf(schema: Schema): FieldMeta | null {
  return fieldMeta.get(bare(schema)) ?? null;
}

/** The member schemas of an object, or of the branch of a union that the value's kind names. */
export function membersOf(schema: Schema, value: unknown): Readonly<Record<string, Schema>> | null {
  const def = definition(bare(schema));
  if (def.type === 'object') return def.shape;
  if (def.type !== 'union') return null;
  const branches = branchesOf(schema);
  const kind = isRecord(value) ? value['kind'] : undefined;
  return branches.find((branch) => branch.kind === kind)?.members ?? null;
}

/** The branches of a union of objects that differ in `kind`. */
export function branchesOf(
  schema: Schema,
): readonly { kind: string; members: Readonly<Record<string, Schema>>; schema: Schema }[] {
  const def = definition(bare(schema));
  if (def.type !== 'union') return [];
  return def.options.flatMap((option) => {
    const inner = definition(option);
    if (inner.type !== 'object') return [];
    const kindSchema = inner.shape['kind'];
    const kind = kindSchema && definition(kindSchema);
    return kind?.type === 'literal' ? [{ kind: String(kind.values[0]), members: inner.shape, schema: option }] : [];
  });
}

/** The schema of an item of a list, a pair or a record. */
export function itemOf(schema: Schema, index: string | number): Schema | null {
  const def = definition(bare(schema));
  if (def.type === 'array') return def.element;
  if (def.type === 'tuple') return def.items[Number(index)] ?? null;
  if (def.type === 'record') return def.valueType;
  return null;
}

/** The schema at a path of the plan, read beside the value that stands there. */
export function schemaAt(root: Schema, plan: unknown, path: Path): Schema | null {
  let schema: Schema | null = root;
  let value = plan;
  for (const key of path) {
    if (schema === null) return null;
    schema = membersOf(schema, value)?.[String(key)] ?? itemOf(schema, key);
    value = isRecord(value) || Array.isArray(value) ? (value as Record<string | number, unknown>)[key] : undefined;
  }
  return schema;
}

export function isRecord(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

/** "well.casings.0.bottom" */
export function joinPath(path: Path): string {
  return path.join('.');
}
