import { expect, test } from 'vitest';
import { boreOf, boreRadiusAt, widestBetween } from '../../src/model/bore.ts';
import { readFacts } from '../../src/model/index.ts';
import { feet, inches } from '../../src/model/units.ts';
import { rockWell } from '../plans/build.ts';

const boreWith = (well: Record<string, unknown>) => boreOf(readFacts(rockWell({ well })).facts);

test('casing above, open rock below, without a gap from the casing top to the bottom', () => {
  const bore = boreWith({
    depth: '220 ft',
    casing: { material: 'steel', size: '6 in', bottom: '90 ft', height: '16 in' },
    intake: { kind: 'open hole', diameter: '6 in' },
  });
  expect(bore.map((each) => each.kind)).toEqual(['casing', 'openHole']);
  expect(bore[0]!.top).toBeCloseTo(-inches(16), 9);
  expect(bore[1]!.top).toBe(bore[0]!.bottom);
  expect(bore[1]!.bottom).toBeCloseTo(feet(220), 9);
});

test('a liner inside the casing is the bore where it stands', () => {
  const bore = boreWith({
    depth: '220 ft',
    casings: [
      { material: 'steel', size: '6 in', bottom: '90 ft', height: '12 in' },
      { material: 'PVC', size: '4 in', top: '80 ft', bottom: '220 ft' },
    ],
    intake: { kind: 'open hole', diameter: '6 in' },
  });
  expect(boreRadiusAt(bore, feet(50))).toBeCloseTo(inches(6.065 / 2), 6);
  expect(boreRadiusAt(bore, feet(150))).toBeLessThan(inches(2.1));
  expect(widestBetween(bore, feet(70), feet(100))).toBeCloseTo(inches(6.065 / 2), 6);
});

test('blank pipe stands between casing and screen, and as a sump below it', () => {
  const bore = boreWith({
    depth: '140 ft',
    casing: { material: 'PVC', size: '5 in', bottom: '100 ft', height: '12 in' },
    intake: { kind: 'screen', diameter: '4 in', screens: [{ top: '110 ft', bottom: '130 ft' }] },
  });
  expect(bore.map((each) => each.kind)).toEqual(['casing', 'casing', 'screen', 'casing']);
  expect(bore[3]!.bottom).toBeCloseTo(feet(140), 9);
});
