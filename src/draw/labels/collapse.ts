/**
 * Which labels are shortened so that all fit: the least important first, a step of the ladder at a time.
 *
 * The steps are full, short, code and value, balloon; what each is as high as is the caller's business.
 * Decided when the layout settles (release, resize, another language), never while something is dragged.
 */
import { fitLabels, type Margin } from './fit.ts';

export interface LabelLadder {
  /** Where its middle would like to be at each step [px]. */
  readonly anchors: readonly number[];
  /** Height at each step, falling [px]. */
  readonly heights: readonly number[];
  readonly weight: number;
  /** Lower goes first. */
  readonly priority: number;
  /** The last step it may take: what is selected or in danger stays readable. */
  readonly lastStep: number;
}

/** Farther than this from its level, a label is hard to follow back [px]. */
const FARTHEST = 120;

/** @returns the step of each label, in the same order */
export function collapseLabels(labels: readonly LabelLadder[], margin: Margin): number[] {
  const steps = labels.map(() => 0);
  while (!fits(labels, steps, margin)) {
    const next = nextToCollapse(labels, steps);
    if (next < 0) break;
    steps[next] = (steps[next] ?? 0) + 1;
  }
  return steps;
}

function fits(labels: readonly LabelLadder[], steps: readonly number[], margin: Margin): boolean {
  const { gap, lo, hi } = margin;
  const now = labels.map((label, i) => labelAt(label, steps[i] ?? 0));
  const total = now.reduce((sum, { height }) => sum + height, 0) + Math.max(0, labels.length - 1) * gap;
  if (total > hi - lo) return false;
  const middles = fitLabels(now, margin);
  return middles.every((middle, i) => Math.abs(middle - (now[i]?.anchor ?? middle)) <= FARTHEST);
}

export function labelAt(label: LabelLadder, step: number): { anchor: number; height: number; weight: number } {
  return { anchor: label.anchors[step] ?? 0, height: label.heights[step] ?? 0, weight: label.weight };
}

/** Every label loses its notes before any loses its name; among equals the least important, then the lowest one. */
function nextToCollapse(labels: readonly LabelLadder[], steps: readonly number[]): number {
  let best = -1;
  let bestRank = Infinity;
  labels.forEach((label, i) => {
    const step = steps[i] ?? 0;
    if (step >= Math.min(label.lastStep, label.heights.length - 1)) return;
    const rank = step * 100 + label.priority;
    if (rank <= bestRank) {
      bestRank = rank;
      best = i;
    }
  });
  return best;
}
