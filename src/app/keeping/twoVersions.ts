/**
 * Two tabs on one well: one follows the other while it has nothing of its own in hand, and where both have changed it, a
 * choice is carried out on the wells that it names, in the versions that were shown, whatever lies on a desk.
 */
import type { Keeper } from './keeper.ts';
import type { WellEntry } from './keptWell.ts';
import type { LoadedWell, Wells } from './wells.ts';

/** Two versions of one well, both kept. */
export interface Conflict {
  /** Id of the one that was changed in this tab. */
  readonly mine: string;
  /** The other, as it was listed last. */
  readonly theirs: WellEntry;
}

/** What stands there now: nothing that this tab has itself gone on from while it was being read. */
export async function loadNewest(wells: Wells, keeper: Keeper, id: string): Promise<LoadedWell | null> {
  for (;;) {
    const known = keeper.version(id);
    const loaded = await wells.load(id);
    if (keeper.version(id) === known) return loaded;
  }
}

/** Whether another tab has gone on from what this one shows and has changed nothing of. */
export function goesOn(keeper: Keeper, { well }: LoadedWell): boolean {
  const shown = keeper.version(well.id);
  return shown !== null && well.raw === null && well.version !== shown && keeper.isClean(well.id);
}

/** @returns  whether the other one is taken away: not if it has changed since it was listed */
export function keepOnlyMine(wells: Wells, { theirs }: Conflict, now: number): Promise<boolean> {
  return wells.takeAway(theirs.id, theirs.version, now);
}

/** @returns  whether this tab's is taken away: not if it was changed since, here or there, or cannot be written first */
export async function keepOnlyTheirs(wells: Wells, keeper: Keeper, { mine }: Conflict, now: number): Promise<boolean> {
  const seen = keeper.changes;
  await keeper.settled();
  const version = keeper.version(mine);
  if (version === null || !keeper.isClean(mine) || keeper.changes !== seen) return false;
  return wells.takeAway(mine, version, now);
}
