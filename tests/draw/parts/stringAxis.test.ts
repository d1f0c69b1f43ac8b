import fc from 'fast-check';
import { expect, test } from 'vitest';
import { makeStringAxis } from '../../../src/draw/parts/stringAxis.ts';

const inch = 0.0254;
const inputs = fc.record({
  hangsFrom: fc.double({ min: -0.5, max: 4, noNaN: true }),
  discharge: fc.double({ min: 6, max: 300, noNaN: true }),
  casingInsideRadius: fc.double({ min: 1.9 * inch, max: 5 * inch, noNaN: true }),
  pipeRadius: fc.double({ min: 0.5 * inch, max: 1.2 * inch, noNaN: true }),
  cableRadius: fc.double({ min: 0.15 * inch, max: 0.35 * inch, noNaN: true }),
  atWall: fc.boolean(),
});

test('pipe, cable and rope stay inside the casing at every depth, and the pipe ends in the middle', () => {
  fc.assert(
    fc.property(inputs, (input) => {
      const axis = makeStringAxis({ ...input, boreInsideRadius: input.casingInsideRadius });
      for (let i = 0; i <= 40; i++) {
        const depth = input.hangsFrom + ((input.discharge - input.hangsFrom) * i) / 40;
        expect(Math.abs(axis.pipe(depth)) + input.pipeRadius).toBeLessThanOrEqual(input.casingInsideRadius + 1e-9);
        expect(Math.abs(axis.cable(depth)) + input.cableRadius).toBeLessThanOrEqual(input.casingInsideRadius + 1e-9);
        expect(Math.abs(axis.rope(depth))).toBeLessThanOrEqual(input.casingInsideRadius + 1e-9);
      }
      expect(axis.pipe(input.discharge)).toBeCloseTo(0, 9);
    }),
    { seed: 11, numRuns: 300 },
  );
});

test('where the hole is narrower farther down, rope and cable still keep apart in the casing above', () => {
  const cableRadius = 0.25 * inch;
  const axis = makeStringAxis({
    hangsFrom: 2,
    discharge: 50,
    casingInsideRadius: 3 * inch,
    boreInsideRadius: 2 * inch,
    pipeRadius: 0.66 * inch,
    cableRadius,
    atWall: true,
  });
  for (const depth of [0, 0.5, 1, 1.5, 2])
    expect(axis.cable(depth) - axis.rope(depth)).toBeGreaterThan(2 * cableRadius);
  for (const depth of [2, 4, 6, 30, 50]) expect(Math.abs(axis.rope(depth))).toBeLessThan(3 * inch);
  expect(Math.abs(axis.rope(20))).toBeLessThan(2 * inch);
});

test('under a seal the pipe hangs from the middle', () => {
  const axis = makeStringAxis({
    hangsFrom: 0,
    discharge: 60,
    casingInsideRadius: 3 * inch,
    boreInsideRadius: 3 * inch,
    pipeRadius: 0.66 * inch,
    cableRadius: 0.25 * inch,
    atWall: false,
  });
  for (const depth of [0, 1, 5, 30]) expect(axis.pipe(depth)).toBe(0);
});
