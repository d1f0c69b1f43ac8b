/** Depths at the well's top: where the string hangs from, and where the water leaves. */
import type { Facts } from '../facts.ts';
import type { Metres } from '../si.ts';

/** Depth from which the drop pipe's length and the hanging load count (plan: `dropPipeCutLength`). */
export function suspensionDepth({
  top,
  well,
}: {
  readonly top: Facts['top'];
  readonly well: Pick<Facts['well'], 'casingHeight'>;
}): Metres {
  return top.kind === 'pitless' ? top.depth : -well.casingHeight;
}

/** Where the line to the house begins: a seal's is told at the ground, though it stands a hand higher. */
export function lineDepth({ top }: Pick<Facts, 'top'>): Metres {
  return top.kind === 'pitless' ? top.depth : 0;
}
