/** The chips of a sheet as they stand on the page: in the order of the kinds, and the same objects as long as nothing moves them. */
import type { ChipPlace, Scene } from '../../draw/view.ts';
import type { Handle } from '../../model/handles.ts';
import type { Solution } from '../../model/solution.ts';
import type { Workspace } from '../state/workspace.svelte.ts';
import { samePlace } from './lookup.ts';

export interface ChipEntry {
  readonly handle: Handle;
  readonly chip: ChipPlace;
  /** The well that the chip speaks of. */
  readonly told: Solution;
}

/** Remembers the chips of the scene before, so that one which stands as it stood is left alone on the page. */
export function createChipEntries(): (workspace: Workspace, scene: Scene, solution: Solution) => readonly ChipEntry[] {
  /** While one level is dragged the others keep what they say: nobody hears it before the release. */
  let atRest: { readonly solution: Solution; readonly handles: readonly Handle[] } | null = null;
  let standing: readonly ChipEntry[] = [];
  return (workspace, scene, solution) => {
    const dragged = workspace.heldHandle;
    if (dragged === null || atRest === null) atRest = { solution, handles: workspace.handles };
    const places = new Map(scene.chips.map((chip) => [chip.handle, chip]));
    const before = new Map(standing.map((entry) => [entry.handle.id, entry]));
    const entries: ChipEntry[] = [];
    // In the order of the kinds, never of the depths: tabbing stays the same when levels cross.
    for (const resting of atRest.handles) {
      const isHeld = dragged === resting.id;
      const handle = isHeld ? (workspace.handles.find(({ id }) => id === resting.id) ?? resting) : resting;
      const chip = places.get(handle.id);
      if (chip === undefined) continue;
      const told = isHeld ? solution : atRest.solution;
      const last = before.get(handle.id);
      const stands = last !== undefined && last.handle === handle && last.told === told && samePlace(last.chip, chip);
      entries.push(stands ? last : { handle, chip, told });
    }
    standing = entries;
    return entries;
  };
}
