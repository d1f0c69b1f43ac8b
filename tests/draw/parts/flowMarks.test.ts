/** Where the marks of the flow lie and where they point: plain geometry. */
import { expect, test } from 'vitest';
import { drawFlow, type FlowWay } from '../../../src/draw/parts/flowMarks.ts';
import { chevrons } from '../chevrons.ts';

const BOX = { left: 0, right: 200, top: 0, bottom: 200 };
const LOOK = { stroke: '#000', width: 1 };
const up: FlowWay = {
  course: [
    [50, 190],
    [50, 10],
  ],
  half: 4,
  pitch: 24,
};
const marks = (ways: readonly FlowWay[], phase: number, box = BOX) =>
  chevrons(drawFlow('up', ways, { ...LOOK, phase }, box));

test('stand on the way, a pitch apart, with their tips where the water goes', () => {
  const drawn = marks([up], 0.5);
  expect(drawn).toHaveLength(7);
  drawn.forEach(({ tip, middle, towards }, i) => {
    expect(tip[0]).toBeCloseTo(50, 1);
    expect(middle[1]).toBeCloseTo(190 - 12 - 24 * i, 1);
    expect(towards).toEqual([0, -1]);
  });
});

test('turn with the way', () => {
  const round: FlowWay = {
    ...up,
    course: [
      [50, 100],
      [50, 60],
      [150, 60],
    ],
  };
  const drawn = marks([round], 0.5);
  expect(drawn.map(({ towards }) => towards)).toEqual([
    [0, -1],
    [0, -1],
    [1, 0],
    [1, 0],
    [1, 0],
    [1, 0],
  ]);
});

test('have come to the place of the next when the phase is full', () => {
  const [start, end] = [marks([up], 0.001), marks([up], 0.999)];
  // The first of all has only just come in, and is not drawn over the end of the way.
  expect(end[0]?.middle[1]).toBeCloseTo(start[0]?.middle[1] ?? 0, 0);
});

test('that would reach out of the window are left out', () => {
  const drawn = marks([up], 0.5, { ...BOX, top: 100 });
  expect(drawn.length).toBeGreaterThan(0);
  for (const { tip } of drawn) expect(tip[1]).toBeGreaterThanOrEqual(100);
});
