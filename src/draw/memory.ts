import { createRecall, makeAnew, type Recall } from '../model/recall.ts';

/**
 * What a drawing remembers of the one before it: pieces whose values are the same are not made again. They come back as
 * the same objects, so that a patcher can pass them by. What is drawn never depends on what is remembered.
 */
export interface Memory {
  readonly recall: Recall;
  /** Last time's value where this one is equal to it, branch by branch: a value that can stand in a list of values. */
  readonly same: <T>(key: string, value: T) => T;
}

/** For a single drawing: everything is made. */
export const forgetful: Memory = { recall: makeAnew, same: (_key, value) => value };

export function createMemory(): Memory {
  const values = new Map<string, unknown>();
  return {
    recall: createRecall(),
    same<T>(key: string, value: T): T {
      const kept = keepEqual(values.get(key), value) as T;
      values.set(key, kept);
      return kept;
    },
  };
}

/** A part of a memory whose words do not meet those of another part. */
export function memoryUnder(name: string, memory: Memory): Memory {
  // Nothing is looked up by words where nothing is remembered.
  if (memory === forgetful) return forgetful;
  const { recall, same } = memory;
  return {
    recall: (key, from, make) => recall(`${name}/${key}`, from, make),
    same: (key, value) => same(`${name}/${key}`, value),
  };
}

/**
 * `after`, with every branch of plain data that equals its place in `before` replaced by that one.
 * Equal wholes are the same object as before, so that comparing them later costs nothing.
 */
export function keepEqual(before: unknown, after: unknown): unknown {
  if (Object.is(before, after) || typeof before !== 'object' || typeof after !== 'object') return after;
  if (before === null || after === null) return after;
  if (Array.isArray(after)) return Array.isArray(before) ? keepList(before, after) : after;
  return Array.isArray(before) ? after : keepRecord(before as Plain, after as Plain);
}

type Plain = Readonly<Record<string, unknown>>;

// Both copy only from the first difference on: nearly all that is compared is equal.
function keepList(before: readonly unknown[], after: readonly unknown[]): readonly unknown[] {
  let kept: unknown[] | null = before.length === after.length ? null : [];
  let byKey: ReadonlyMap<unknown, unknown> | undefined;
  for (let i = 0; i < after.length; i++) {
    let last = before[i];
    const key = keyOf(after[i]);
    // One more at the front of a keyed list, and all behind it are still the same.
    if (key !== undefined && keyOf(last) !== key) {
      byKey ??= new Map(before.map((each) => [keyOf(each), each]));
      last = byKey.get(key);
    }
    const branch = keepEqual(last, after[i]);
    if (kept === null) {
      if (Object.is(branch, before[i])) continue;
      kept = before.slice(0, i);
    }
    kept.push(branch);
  }
  return kept ?? before;
}

function keyOf(value: unknown): unknown {
  return typeof value === 'object' && value !== null && 'key' in value ? value.key : undefined;
}

function keepRecord(before: Plain, after: Plain): Plain {
  let kept: Record<string, unknown> | null = null;
  let count = 0;
  for (const name in after) {
    count++;
    const branch = keepEqual(before[name], after[name]);
    if (kept === null) {
      if (Object.is(branch, before[name])) continue;
      kept = {};
      for (const equal in after) {
        if (equal === name) break;
        kept[equal] = before[equal];
      }
    }
    kept[name] = branch;
  }
  if (kept !== null) return kept;
  return count === Object.keys(before).length ? before : after;
}
