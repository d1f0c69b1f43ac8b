import { expect, test } from 'vitest';
import { collapseLabels, type LabelLadder } from '../../../src/draw/labels/collapse.ts';
import { orderLabels } from '../../../src/draw/labels/order.ts';

const ladder = (anchor: number, priority: number, lastStep = 3): LabelLadder => ({
  anchors: [anchor, anchor, anchor, anchor],
  heights: [54, 26, 20, 16],
  weight: priority,
  priority,
  lastStep,
});

test('labels that fit are left in full', () => {
  expect(collapseLabels([ladder(50, 2), ladder(150, 4)], { gap: 4, lo: 0, hi: 400 })).toEqual([0, 0]);
});

test('the least important loses its notes first', () => {
  expect(collapseLabels([ladder(50, 4), ladder(60, 2), ladder(70, 4)], { gap: 4, lo: 0, hi: 146 })).toEqual([0, 1, 0]);
});

test('a label in danger never becomes a balloon', () => {
  const steps = collapseLabels([ladder(10, 2, 2), ladder(20, 4), ladder(30, 4), ladder(40, 4)], {
    gap: 4,
    lo: 0,
    hi: 60,
  });
  expect(steps[0]).toBe(2);
  expect(steps.slice(1)).toEqual([3, 3, 3]);
});

test('without a former order labels stand by anchor, then by name', () => {
  const order = orderLabels([
    { handle: 'b', anchor: 5 },
    { handle: 'a', anchor: 5 },
    { handle: 'c', anchor: 1 },
  ]);
  expect(order.map(({ handle }) => handle)).toEqual(['c', 'a', 'b']);
});

test('while dragging two change places only once they have passed each other by more than four pixels', () => {
  const before = ['static', 'pumping'];
  const at = (anchor: number) =>
    orderLabels(
      [
        { handle: 'static', anchor },
        { handle: 'pumping', anchor: 100 },
      ],
      before,
    ).map(({ handle }) => handle);
  expect(at(103)).toEqual(['static', 'pumping']);
  expect(at(105)).toEqual(['pumping', 'static']);
});
