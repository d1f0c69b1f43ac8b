/** One choice is one change of the plan: what was chosen is written, and nothing else; what stands is left. */
import { changed } from '../fixes/fixesOf.ts';
import { readFacts } from '../plan/readFacts.ts';
import { valueAt } from '../plan/editPlan.ts';
import { mayMove } from '../rules/fix.ts';
import { whatStands } from '../place/stands.ts';
import type { Stands } from '../place/told.ts';
import type { Plan } from '../plan/schema.ts';
import type { Change } from '../solution.ts';
import type { PumpRow } from './choosePump.ts';
import type { TankRow } from './chooseTank.ts';
import type { Part } from './outfit.ts';

/** What may be chosen by itself. */
export type Choice = Part | 'tank';

/** What a choice would write where somebody said that it stands. */
export interface LeftStanding {
  readonly choice: Choice;
  readonly status: Stands;
}

export interface Chosen {
  readonly plan: Plan;
  readonly changes: readonly Change[];
  readonly left: readonly LeftStanding[];
}

/** What one click takes of a pump: where it hangs, its pipe and its wire follow it. */
export const WITH_THE_PUMP: readonly Part[] = ['pump', 'depth', 'pipe', 'wire'];

/**
 * @param plan   for which the row was worked out
 * @param row    of the pumps or of the tanks
 * @param parts  of a pump's row; the tank's has one
 * @returns  the changes of what was asked for; a part of which anything stands is left whole, and where the pump stands,
 *           so does all that was worked out for another
 */
export function choosing(plan: Plan, row: PumpRow | TankRow, parts: readonly Part[] = WITH_THE_PUMP): Chosen {
  const { facts } = readFacts(plan);
  const asked: (readonly [Choice, readonly Change[]])[] =
    'parts' in row ? parts.map((part) => [part, row.parts[part]]) : [['tank', row.changes]];
  const changes: Change[] = [];
  const left: LeftStanding[] = [];
  for (const [choice, wanted] of asked) {
    const real = wanted.filter(({ path, to }) => !isSame(valueAt(plan, path), to));
    const held = real.find(({ path }) => !mayMove(facts, path));
    if (held === undefined) changes.push(...real);
    else left.push({ choice, status: whatStands(facts, held.path) });
    if (choice === 'pump' && held !== undefined) return { plan, changes: [], left };
  }
  return { plan: changed(plan, changes), changes, left };
}

function isSame(one: unknown, other: unknown): boolean {
  return one === other || JSON.stringify(one) === JSON.stringify(other);
}
