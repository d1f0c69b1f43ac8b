/**
 * Places labels along one margin: no two overlap, the order is kept, and the weighted sum of squared displacements is
 * the least there is.
 *
 * With the order fixed, subtracting each label's offset from the first turns "do not overlap" into "do not decrease",
 * an isotonic regression that pooling adjacent violators solves exactly in one pass. Walls are the same interval for
 * every shifted label, and the projection onto them is a clamp.
 *
 * Calm: when one anchor moves by d px, no label moves by more than d, because a projection onto such an ordered set
 * does not stretch distances.
 *
 * Source  Best & Chakravarti (1990), Active set algorithms for isotonic regression, Mathematical Programming 47,
 *         for pooling; from memory
 */
export interface LabelToFit {
  /** Where its middle would like to be [px]. */
  readonly anchor: number;
  /** px */
  readonly height: number;
  /** Larger is stiller; never changed during a drag. */
  readonly weight: number;
}

/** So heavy that a pinned label stays on the pointer to a millionth of a pixel whatever crowds it. */
const PINNED_WEIGHT = 1e12;

/** What labels stand along. */
export interface Margin {
  /** Least space between two [px]. */
  readonly gap: number;
  /** Its ends [px]; labels that do not fit begin at `lo` and run over `hi`. */
  readonly lo: number;
  readonly hi: number;
}

/**
 * @param labels  in the order they shall stand, from the top
 * @param pinned  index of the label that is held: it stays on its anchor
 * @returns       middles [px], in the same order
 */
export function fitLabels(labels: readonly LabelToFit[], { gap, lo, hi }: Margin, pinned = -1): number[] {
  const first = labels[0];
  if (first === undefined) return [];
  const offsets = offsetsOf(labels, gap);
  const pooled = pool(labels, offsets, pinned);
  const lastOffset = offsets[offsets.length - 1] ?? 0;
  const lastHeight = labels[labels.length - 1]?.height ?? 0;
  const lowest = lo + first.height / 2;
  const highest = Math.max(lowest, hi - lastHeight / 2 - lastOffset);
  return pooled.map((mean, i) => Math.min(highest, Math.max(lowest, mean)) + (offsets[i] ?? 0));
}

/** Distance of each middle from the first one's when all stand as close as they may. */
function offsetsOf(labels: readonly LabelToFit[], gap: number): number[] {
  const offsets: number[] = [];
  let sum = 0;
  let before: LabelToFit | undefined;
  for (const label of labels) {
    if (before !== undefined) sum += (before.height + label.height) / 2 + gap;
    offsets.push(sum);
    before = label;
  }
  return offsets;
}

interface Block {
  mean: number;
  weight: number;
  count: number;
}

/** The non-decreasing sequence nearest to the shifted anchors. */
function pool(labels: readonly LabelToFit[], offsets: readonly number[], pinned: number): number[] {
  const blocks: Block[] = [];
  labels.forEach((label, i) => {
    let block: Block = {
      mean: label.anchor - (offsets[i] ?? 0),
      weight: i === pinned ? PINNED_WEIGHT : label.weight,
      count: 1,
    };
    for (
      let last = blocks[blocks.length - 1];
      last !== undefined && last.mean >= block.mean;
      last = blocks[blocks.length - 1]
    ) {
      blocks.pop();
      block = merge(last, block);
    }
    blocks.push(block);
  });
  const means: number[] = [];
  for (const { mean, count } of blocks) for (let i = 0; i < count; i++) means.push(mean);
  return means;
}

/** Weighted mean, written as a step from the heavier block so that a pinned one is not rounded away. */
function merge(a: Block, b: Block): Block {
  const weight = a.weight + b.weight;
  const [heavy, slight] = a.weight >= b.weight ? [a, b] : [b, a];
  return { mean: heavy.mean + ((slight.mean - heavy.mean) * slight.weight) / weight, weight, count: a.count + b.count };
}
