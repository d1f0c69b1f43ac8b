import { expect, test } from 'vitest';
import {
  atmosphericPressure,
  dynamicViscosity,
  headAsPressure,
  kinematicViscosity,
  pressureAsHead,
  vapourPressure,
  waterDensity,
} from '../../../src/model/formulas/water.ts';
import { feet, toPsi } from '../../../src/model/units.ts';

// Kell (1975) and IAPWS values as handbooks print them, from memory: kg/m³ to 0.01, mPa s to 0.1 %, Pa to 0.1 %.
// prettier-ignore
test.each([
  [0, 999.84, 1.7918, 611], [5, 999.97, 1.5182, 873], [10, 999.7, 1.3059, 1228], [15, 999.1, 1.1376, 1706],
  [20, 998.21, 1.0016, 2339], [25, 997.05, 0.89, 3170], [30, 995.65, 0.7972, 4247], [40, 992.22, 0.6527, 7385],
])('water of %d degC has %d kg/m³, %d mPa s and a vapour pressure of %d Pa', (temperature, density, viscosity, vapour) => {
  expect(Math.abs(waterDensity(temperature) - density)).toBeLessThan(0.01);
  expect(Math.abs(dynamicViscosity(temperature) * 1000 - viscosity)).toBeLessThan(0.001 * viscosity);
  expect(Math.abs(vapourPressure(temperature) - vapour)).toBeLessThan(0.001 * vapour);
});

test('water is densest at 4 degC and flows easier the warmer it is', () => {
  for (const other of [0, 2, 3, 5, 6, 10]) expect(waterDensity(4)).toBeGreaterThan(waterDensity(other));
  for (let t = 1; t <= 40; t++) expect(kinematicViscosity(t)).toBeLessThan(kinematicViscosity(t - 1));
});

// US Standard Atmosphere (1976), Table I: 84,556 Pa at 1,500 m and 70,121 Pa at 3,000 m. From memory.
test.each([
  [0, 101325],
  [1500, 84556],
  [3000, 70121],
])('the air at %d m presses with %d Pa', (altitude, pressure) => {
  expect(Math.abs(atmosphericPressure(altitude) / pressure - 1)).toBeLessThan(0.0005);
});

test('the air at 5,000 ft presses with 12.23 psi', () => {
  expect(Math.abs(toPsi(atmosphericPressure(feet(5000))) - 12.23)).toBeLessThan(0.01);
});

test('a pressure survives as head and back', () => {
  expect(headAsPressure(pressureAsHead(414_000, 999.7), 999.7)).toBeCloseTo(414_000, 6);
});

test('ice, steam and heights without air are refused', () => {
  expect(() => waterDensity(-1)).toThrow('water is liquid between 0 and 100 degC');
  expect(() => vapourPressure(101)).toThrow(RangeError);
  expect(() => atmosphericPressure(NaN)).toThrow(RangeError);
});
