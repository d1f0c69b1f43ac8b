/** All wells of a device as one file, and such a file read: each well is a plan as it would be saved alone. */
import type { Plan } from '../../model/plan/schema.ts';
import type { KeptWell } from './keptWell.ts';

const FORMAT = 'wellcut-wells/1';

export interface FiledWell {
  readonly plan: Plan;
  /** When it was written, milliseconds since 1970; null where the file does not tell, or tells what cannot be. */
  readonly saved: number | null;
}

export interface FiledWells {
  readonly wells: readonly FiledWell[];
  /** Titles, or places in the file, of those that cannot be read. */
  readonly unread: readonly string[];
}

/** Those that were taken away stay out; what cannot be read goes along as it stands. */
export function fileOf(wells: readonly KeptWell[]): string {
  const filed = wells
    .filter(({ takenAway }) => takenAway === null)
    .map(({ title, saved, plan, raw }) => ({ title, saved, ...(raw === null ? { plan } : { text: raw }) }));
  return `${JSON.stringify({ format: FORMAT, wells: filed }, null, 2)}\n`;
}

/**
 * @param reads  whether it is a plan
 * @param now    nothing was written later, whatever a file says
 * @returns      null for text that is no such file
 */
export function readFile(text: string, reads: (plan: unknown) => boolean, now: number): FiledWells | null {
  const filed = parsed(text);
  if (filed === null || filed['format'] !== FORMAT || !Array.isArray(filed['wells'])) return null;
  const wells: FiledWell[] = [];
  const unread: string[] = [];
  for (const [i, well] of (filed['wells'] as unknown[]).entries()) {
    const { plan, title, saved } = (well ?? {}) as Record<string, unknown>;
    if (reads(plan)) wells.push({ plan: plan as Plan, saved: isTime(saved, now) ? saved : null });
    else unread.push(typeof title === 'string' && title !== '' ? title : `well ${i + 1}`);
  }
  return { wells, unread };
}

/** Of the wells of a file those that do not stand there yet, equal in plan and time. */
export function notThere(wells: readonly FiledWell[], there: readonly KeptWell[]): readonly FiledWell[] {
  const known = new Set(there.filter(({ takenAway }) => takenAway === null).map(toCompare));
  return wells.filter((well) => !known.has(toCompare(well)));
}

function toCompare({ plan, saved }: { readonly plan: unknown; readonly saved: number | null }): string {
  return JSON.stringify([saved, plan]);
}

function isTime(saved: unknown, now: number): saved is number {
  return typeof saved === 'number' && saved > 0 && saved <= now;
}

function parsed(text: string): Record<string, unknown> | null {
  // Only a file that says so in its beginning is read for it: a plan may be long.
  if (!text.slice(0, 200).includes(FORMAT)) return null;
  try {
    const value: unknown = JSON.parse(text.replace(/^\uFEFF/, ''));
    return typeof value === 'object' && value !== null ? (value as Record<string, unknown>) : null;
  } catch (fault) {
    if (!(fault instanceof SyntaxError)) throw fault;
    return null;
  }
}
