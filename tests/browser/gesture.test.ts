import { describe, expect, test } from 'vitest';
import { dragStep } from '../../src/app/drawing/dragStep.ts';
import { Gesture, type GestureStart } from '../../src/app/drawing/gesture.ts';
import { CATCH, caughtBy, LET_GO } from '../../src/app/drawing/snaps.ts';
import { feet, inches } from '../../src/model/units.ts';

const FREE = { fine: false, loose: false };
const START: GestureStart = {
  depth: feet(180),
  pointerY: 500,
  metresPerPixel: feet(0.3),
  units: 'us',
  origin: 0,
  snaps: [],
};

describe('the step of a drag', () => {
  test.each([
    [feet(0.01), inches(1)],
    [feet(0.2), inches(3)],
    [feet(0.43), inches(6)],
    [feet(0.9), feet(1)],
    [feet(3), feet(5)],
  ])('a pixel worth %d m drags in steps of %d m, never finer than it can show', (pixel, step) => {
    expect(dragStep(pixel, 'us')).toBeCloseTo(step, 9);
  });

  test('metres have their own round steps', () => {
    expect(dragStep(0.3, 'metric')).toBe(0.5);
  });
});

describe('a gesture', () => {
  test('follows the pointer by the scale of its view, in whole steps', () => {
    const { depth } = new Gesture(START).moveTo(520, FREE);
    expect(depth).toBeCloseTo(feet(186), 9);
  });

  test('is exactly where it began when the pointer is back', () => {
    const gesture = new Gesture({ ...START, depth: feet(180.37) });
    gesture.moveTo(560, FREE);
    expect(gesture.moveTo(500, FREE).depth).toBe(feet(180.37));
  });

  test('goes a tenth of the way while fine, from where it was', () => {
    const gesture = new Gesture(START);
    gesture.moveTo(520, FREE);
    const { depth } = gesture.moveTo(540, { fine: true, loose: false });
    // 20 px x 0.3 ft x 1/10 = 0.6 ft beyond 186 ft, in steps of an inch.
    expect(depth).toBeCloseTo(feet(186) + inches(7), 9);
  });

  test('counts its steps from the datum of the record', () => {
    const { depth } = new Gesture({ ...START, origin: -inches(16) }).moveTo(520, FREE);
    expect((depth + inches(16)) / inches(6)).toBeCloseTo(Math.round((depth + inches(16)) / inches(6)), 6);
  });

  test('catches a limit within 6 px, holds it to 9, and passes it while loose', () => {
    const snaps = [{ depth: feet(186), reason: 'foot of the casing' }];
    const gesture = new Gesture({ ...START, snaps });
    expect(gesture.moveTo(520 - CATCH + 1, FREE).caught?.reason).toBe('foot of the casing');
    expect(gesture.moveTo(520 + LET_GO - 1, FREE).depth).toBe(feet(186));
    expect(gesture.moveTo(520 + LET_GO + 1, FREE).caught).toBeNull();
    expect(gesture.moveTo(520, { fine: false, loose: true }).caught).toBeNull();
  });
});

test('of two snaps within reach the nearer one catches', () => {
  const snaps = [
    { depth: 10, reason: 'a' },
    { depth: 10.4, reason: 'b' },
  ];
  expect(caughtBy(10.3, snaps, 0.1, null)?.reason).toBe('b');
});
