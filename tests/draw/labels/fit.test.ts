import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { fitLabels, type LabelToFit } from '../../../src/draw/labels/fit.ts';

const GAP = 4;
const RUNS = { seed: 20_260_101, numRuns: 2000 } as const;

const label: fc.Arbitrary<LabelToFit> = fc.record({
  anchor: fc.double({ min: -50, max: 850, noNaN: true }),
  height: fc.integer({ min: 14, max: 53 }),
  weight: fc.constantFrom(1, 2, 4, 8),
});
const labels = fc
  .array(label, { minLength: 1, maxLength: 12 })
  .map((all) => [...all].sort((a, b) => a.anchor - b.anchor));

const LO = 0;
const HI = 1000;
const MARGIN = { gap: GAP, lo: LO, hi: HI };

describe('labels along a margin', () => {
  test('a label with room stands at its anchor', () => {
    expect(
      fitLabels(
        [
          { anchor: 100, height: 20, weight: 1 },
          { anchor: 200, height: 20, weight: 1 },
        ],
        MARGIN,
      ),
    ).toEqual([100, 200]);
  });

  test('two on one spot part evenly, and the heavier moves less', () => {
    const at = (weight: number) =>
      fitLabels(
        [
          { anchor: 100, height: 20, weight },
          { anchor: 100, height: 20, weight: 1 },
        ],
        MARGIN,
      );
    expect(at(1)).toEqual([88, 112]);
    expect(at(3)).toEqual([94, 118]);
  });

  test('none overlaps, and all stand within the track', () => {
    fc.assert(
      fc.property(labels, (all) => {
        const middles = fitLabels(all, MARGIN);
        all.forEach((each, i) => {
          expect(middles[i]! - each.height / 2).toBeGreaterThanOrEqual(LO - 1e-9);
          expect(middles[i]! + each.height / 2).toBeLessThanOrEqual(HI + 1e-9);
          const next = all[i + 1];
          if (next !== undefined) {
            expect(middles[i + 1]! - middles[i]!).toBeGreaterThanOrEqual((each.height + next.height) / 2 + GAP - 1e-9);
          }
        });
      }),
      RUNS,
    );
  });

  test('when one anchor moves by d, no label moves further than d', () => {
    fc.assert(
      fc.property(labels, fc.nat(), fc.double({ min: -80, max: 80, noNaN: true }), (all, pick, d) => {
        const i = pick % all.length;
        const moved = all.map((each, j) => (j === i ? { ...each, anchor: each.anchor + d } : each));
        const before = fitLabels(all, MARGIN);
        const after = fitLabels(moved, MARGIN);
        before.forEach((middle, j) => expect(Math.abs(after[j]! - middle)).toBeLessThanOrEqual(Math.abs(d) + 1e-9));
      }),
      RUNS,
    );
  });

  test('a pinned label stays on its anchor, and pinning it where it stands moves nothing', () => {
    fc.assert(
      fc.property(labels, fc.nat(), (all, pick) => {
        const i = pick % all.length;
        const before = fitLabels(all, MARGIN);
        const held = all.map((each, j) => (j === i ? { ...each, anchor: before[j]! } : each));
        const pinned = fitLabels(held, MARGIN, i);
        expect(Math.abs(pinned[i]! - before[i]!)).toBeLessThan(1e-6);
        pinned.forEach((middle, j) => expect(Math.abs(middle - before[j]!)).toBeLessThan(1e-6));
      }),
      RUNS,
    );
  });

  // Dykstra's alternating projections reach the least-squares point of any set of half-spaces by another road:
  // Boyle & Dykstra (1986), A method for finding projections onto the intersection of convex sets in Hilbert spaces;
  // from memory.
  test('no other arrangement is nearer to the anchors', () => {
    fc.assert(
      fc.property(labels, (all) => {
        const ours = fitLabels(all, MARGIN);
        const theirs = projectByDykstra(all);
        ours.forEach((middle, i) => expect(Math.abs(middle - theirs[i]!)).toBeLessThan(1e-3));
      }),
      { ...RUNS, numRuns: 200 },
    );
  });
});

/** Weighted projection onto "each stands clear of the next, all within the track". */
function projectByDykstra(all: readonly LabelToFit[]): number[] {
  const x = all.map((each) => each.anchor);
  // One correction per half-space: neighbours first, then the two walls.
  const between = all.map(() => 0);
  let upper = 0;
  let lower = 0;
  for (let round = 0; round < 60_000; round++) {
    let change = 0;
    for (let i = 0; i + 1 < all.length; i++) {
      const wa = 1 / all[i]!.weight;
      const wb = 1 / all[i + 1]!.weight;
      const least = (all[i]!.height + all[i + 1]!.height) / 2 + GAP;
      const a = x[i]! - between[i]! * wa;
      const b = x[i + 1]! + between[i]! * wb;
      const push = Math.min(0, (b - a - least) / (wa + wb));
      change = Math.max(change, Math.abs(push - between[i]!));
      x[i] = a + push * wa;
      x[i + 1] = b - push * wb;
      between[i] = push;
    }
    const w0 = 1 / all[0]!.weight;
    const first = x[0]! - lower * w0;
    const up = Math.max(0, (LO + all[0]!.height / 2 - first) / w0);
    change = Math.max(change, Math.abs(up - lower));
    x[0] = first + up * w0;
    lower = up;
    const n = all.length - 1;
    const wn = 1 / all[n]!.weight;
    const last = x[n]! + upper * wn;
    const down = Math.max(0, (last - (HI - all[n]!.height / 2)) / wn);
    change = Math.max(change, Math.abs(down - upper));
    x[n] = last - down * wn;
    upper = down;
    if (change < 1e-9) break;
  }
  return x;
}
