/** The chips of a sheet as they stand on the page: the same objects as long as a chip stands where it stood and says what it said. */
import type { ChipPlace, Scene } from '../../draw/view.ts';
import type { HeardLevel } from './heardLevels.svelte.ts';
import { sameFields } from './sameFields.ts';

export interface ChipEntry extends HeardLevel {
  readonly chip: ChipPlace;
}

/** Remembers the chips of the scene before, so that one which stands as it stood is left alone on the page. */
export function createChipEntries(): (levels: readonly HeardLevel[], scene: Scene) => readonly ChipEntry[] {
  let standing: ReadonlyMap<string, ChipEntry> = new Map();
  return (levels, { chips }) => {
    const places = new Map(chips.map((chip) => [chip.handle, chip]));
    const entries = new Map<string, ChipEntry>();
    // In the order of the kinds, never of the depths: tabbing stays the same when levels cross.
    for (const { handle, words } of levels) {
      const chip = places.get(handle.id);
      if (chip === undefined) continue;
      const last = standing.get(handle.id);
      // All of a handle counts, and not only what is heard of it: keys and fields go by its limits.
      const stands =
        last !== undefined && last.words === words && sameFields(last.chip, chip) && sameFields(last.handle, handle);
      entries.set(handle.id, stands ? last : { handle, words, chip });
    }
    standing = entries;
    return [...entries.values()];
  };
}
