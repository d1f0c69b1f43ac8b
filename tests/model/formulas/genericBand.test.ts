import { expect, test } from 'vitest';
import { bandFactors, END_SHARE, genericBand, unended } from '../../../src/model/formulas/genericBand.ts';
import { operatingPoint } from '../../../src/model/formulas/pumpCurve.ts';
import { feet, gpm, horsepower, toFeet } from '../../../src/model/units.ts';

const band = (hp: number, flow: number, frequency: 50 | 60 | null = 60) =>
  genericBand({ power: horsepower(hp), designFlow: gpm(flow), density: 999.7, frequency });

// Usual shut-off heads in feet of 4 in pumps of 5 to 20 gpm, as such curves run; from memory, good to a tenth or so.
test.each([
  [5, 0.5, 380],
  [5, 1, 670],
  [7, 0.5, 300],
  [7, 1, 530],
  [10, 0.5, 250],
  [10, 0.75, 330],
  [10, 1, 430],
  [10, 1.5, 580],
  [15, 1, 300],
  [20, 1, 235],
  [20, 1.5, 330],
])('a %d gpm pump of %d hp usually shuts off at %d ft: inside the band', (flow, hp, shutOff) => {
  const { least, most } = band(hp, flow);
  expect(shutOff).toBeGreaterThan(toFeet(least.shutOffHead));
  expect(shutOff).toBeLessThan(toFeet(most.shutOffHead));
});

test('the stronger end has four thirds of the weaker end’s head at any flow, and no end before its head is gone', () => {
  const { least, most } = band(1, 10);
  for (const flow of [0, 4, 8, 12]) expect(most.headAt(gpm(flow)) / least.headAt(gpm(flow))).toBeCloseTo(4 / 3, 12);
  expect(most.endFlow).toBeUndefined();
  expect(least.endFlow).toBeCloseTo(END_SHARE * gpm(10), 12);
});

test('an unknown frequency reaches from the weaker end at 50 Hz to the stronger at 60', () => {
  expect(band(1, 10, null).least.shutOffHead).toBe(band(1, 10, 50).least.shutOffHead);
  expect(band(1, 10, null).most.shutOffHead).toBe(band(1, 10, 60).most.shutOffHead);
  expect(bandFactors(horsepower(1), 50)).toEqual({ least: 0.9, most: 1.2 });
});

test('nothing flows beyond the end of a curve, however little is asked; without its end it flows on', () => {
  const { least } = band(1, 10);
  const little = () => feet(20);
  expect(operatingPoint(least, little)).toEqual({ flow: least.endFlow, head: least.headAt(least.endFlow!) });
  const on = operatingPoint(unended(least), little);
  expect(on.flow).toBeGreaterThan(least.endFlow!);
  expect(on.head).toBeCloseTo(feet(20), 6);
});
