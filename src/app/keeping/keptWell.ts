/**
 * A well as it is kept, and what becomes of one that is to be written where another version may stand already.
 * Every version has a name of its own and names the one it was built on: none is ever written over by a stranger to it.
 */
import type { Plan } from '../../model/plan/schema.ts';
import type { KeptHistory } from './keptHistory.ts';
import type { Decision, Put } from './rooms.ts';

export interface WellEntry {
  readonly id: string;
  readonly title: string;
  /** Where the well is, as its plan has it; empty where nobody said. */
  readonly place: string;
  /** When it was written, milliseconds since 1970 by the clock of the device. */
  readonly saved: number;
  /** Empty for one that cannot be read. */
  readonly version: string;
  /** Id of the well that it was put beside, since both had been changed; null for most. */
  readonly beside: string | null;
  /** When it was taken away; null while it is among the wells. */
  readonly takenAway: number | null;
  /** What stands there, as text, where it is no well that can be read; null for most. */
  readonly raw: string | null;
}

export interface KeptWell extends WellEntry {
  /** As it was stored: read it before use. */
  readonly plan: unknown;
  /** Names of the versions that it was built on, the latest last. */
  readonly lineage: readonly string[];
}

export interface Writing {
  readonly id: string;
  readonly version: string;
  /** Versions that it may take the place of: what this tab read or wrote last, and what it tried to write since. */
  readonly on: readonly string[];
  /** Milliseconds since 1970. */
  readonly at: number;
  readonly plan: Plan;
  readonly history: KeptHistory;
  /** The id under which it stands where another version is there already. */
  readonly besideId: string;
}

export type Written =
  /** `again`: nothing stood there any more, though it had been kept. */
  | { readonly outcome: 'kept'; readonly entry: WellEntry; readonly again: boolean }
  | { readonly outcome: 'beside'; readonly entry: WellEntry; readonly theirs: WellEntry };

/** More than a tab can fall behind by. */
const LONGEST_LINEAGE = 100;

/** What to put where this stands, and what came of it. */
export function place(there: unknown, writing: Writing): Decision<Written> {
  const { id, on, version } = writing;
  if (there === undefined) {
    const well = wellOf(writing, id, on.slice(-1), null);
    return decided(writing, well, { outcome: 'kept', entry: entryOf(well), again: on.length > 0 });
  }
  const stored = readKept(id, there);
  if (stored.version === version || stored.lineage.includes(version))
    return { puts: [], answer: { outcome: 'kept', entry: entryOf(stored), again: false } };
  if (stored.raw === null && on.includes(stored.version)) {
    const well = wellOf(writing, id, [...stored.lineage, stored.version], stored.beside);
    return decided(writing, well, { outcome: 'kept', entry: entryOf(well), again: false });
  }
  const well = wellOf(writing, writing.besideId, on, id);
  return decided(writing, well, { outcome: 'beside', entry: entryOf(well), theirs: entryOf(stored) });
}

function wellOf(
  { plan, version, at }: Writing,
  id: string,
  lineage: readonly string[],
  beside: string | null,
): KeptWell {
  const title = plan.title ?? '';
  const names = lineage.slice(-LONGEST_LINEAGE);
  return {
    id,
    title,
    place: placeIn(plan),
    saved: at,
    version,
    lineage: names,
    beside,
    takenAway: null,
    raw: null,
    plan,
  };
}

function decided(writing: Writing, well: KeptWell, answer: Written): Decision<Written> {
  const history: Put = { room: 'histories', key: well.id, value: writing.history };
  return {
    puts: [storing(well), history, { room: 'page', key: 'last', value: well.id }],
    answer,
  };
}

/** A well as it is put in its room. */
export function storing(well: KeptWell): Put {
  const { id, title, saved, version, lineage, beside, takenAway, raw, plan } = well;
  const value = raw === null ? { title, saved, version, lineage, beside, takenAway, plan } : { raw, takenAway };
  return { room: 'wells', key: id, value };
}

export function entryOf({ id, title, place, saved, version, beside, takenAway, raw }: KeptWell): WellEntry {
  return { id, title, place, saved, version, beside, takenAway, raw };
}

/** Whatever stands there: what is no well keeps its place, with its text. */
export function readKept(id: string, there: unknown): KeptWell {
  const record = typeof there === 'object' && there !== null ? (there as Record<string, unknown>) : {};
  const { title, saved, version, lineage, beside, takenAway, raw, plan } = record;
  const readable = typeof plan === 'object' && plan !== null && typeof version === 'string' && version !== '';
  return {
    id,
    title: typeof title === 'string' ? title : '',
    place: readable ? placeIn(plan) : '',
    saved: typeof saved === 'number' ? saved : 0,
    version: readable ? version : '',
    lineage: Array.isArray(lineage) ? lineage.filter((name) => typeof name === 'string') : [],
    beside: typeof beside === 'string' ? beside : null,
    takenAway: typeof takenAway === 'number' ? takenAway : null,
    raw: readable ? null : typeof raw === 'string' ? raw : textOf(there),
    plan,
  };
}

/** Read from the plan and kept nowhere else, so that it cannot differ from it. */
function placeIn(plan: object): string {
  return 'place' in plan && typeof plan.place === 'string' ? plan.place : '';
}

/** As much of it as can be written down. */
export function textOf(there: unknown): string {
  if (typeof there === 'string') return there;
  try {
    return `${JSON.stringify(there, null, 2)}\n`;
  } catch (fault) {
    console.info('wellcut: a kept value cannot be written as text', fault);
    return String(there);
  }
}
