/** Laws of the short formulas, whose published values stand in tests/reference. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { fixtureUnits, peakDemand } from '../../../src/model/formulas/demand.ts';
import { chlorineGranules, chlorineProduct, chlorineStrength } from '../../../src/model/formulas/disinfection.ts';
import {
  flowForMotorVelocity,
  screenEntranceVelocity,
  velocityPastMotor,
  widestShroud,
} from '../../../src/model/formulas/flowPast.ts';
import {
  deratingFactor,
  isoDeratingFactor,
  pvcRating,
  ratingFromDimensionRatio,
  ratingFromSidr,
} from '../../../src/model/formulas/pipeStrength.ts';
import { atSpeed, shaftPower, stagesFor } from '../../../src/model/formulas/pumpPower.ts';
import { PIPE_MATERIALS } from '../../../src/model/tables/pipeMaterials.ts';
import { columnHeldByAir, netPositiveSuctionHead } from '../../../src/model/formulas/suction.ts';
import { suddenWithin, surgePressure, waveSpeed } from '../../../src/model/formulas/waterHammer.ts';
import { feet, gpm, inches, psi, toFeet, toGpm, toPsi } from '../../../src/model/units.ts';
import { between, SEED } from '../laws.ts';

test('a dose of bleach gives its strength back', () => {
  fc.assert(
    fc.property(between(0.1, 10), between(0.01, 0.5), between(0.03, 0.125), (waterVolume, target, strength) => {
      const bleachVolume = chlorineProduct({ waterVolume, target, strength });
      expect(chlorineStrength({ bleachVolume, waterVolume, strength })).toBeCloseTo(target, 12);
    }),
    SEED,
  );
});

test('granules hold as much chlorine as the bleach of the same dose, and a label without strength is refused', () => {
  const dose = { waterVolume: 1, target: 0.1 };
  expect(chlorineGranules({ ...dose, strength: 0.65 }) * 0.65).toBeCloseTo(0.1, 12);
  expect(() => chlorineProduct({ ...dose, strength: 0 })).toThrow('strength is 0');
});

test('a wider casing slows the water past the motor, and the flow for a velocity gives it back', () => {
  const ring = { insideDiameter: inches(6.065), motorDiameter: inches(3.75) };
  const flow = flowForMotorVelocity({ ...ring, velocity: feet(0.25) });
  expect(velocityPastMotor({ ...ring, flow })).toBeCloseTo(feet(0.25), 12);
  expect(velocityPastMotor({ ...ring, insideDiameter: inches(7.981), flow })).toBeLessThan(feet(0.25));
  expect(widestShroud(flow, ring.motorDiameter, feet(0.25))).toBeCloseTo(ring.insideDiameter, 12);
  expect(() => velocityPastMotor({ ...ring, insideDiameter: inches(3.7), flow })).toThrow('does not fit');
});

test('twice the screen lets the water in at half the velocity', () => {
  const screen = { flow: gpm(5), diameter: inches(4), length: feet(5), openArea: 0.1 };
  expect(screenEntranceVelocity({ ...screen, length: feet(10) })).toBeCloseTo(screenEntranceVelocity(screen) / 2, 12);
  expect(() => screenEntranceVelocity({ ...screen, openArea: 5 })).toThrow('open area is 5');
});

test('the two ways of naming a plastic wall agree: DR is SIDR + 2', () => {
  fc.assert(
    fc.property(between(3, 30), (sidr) => {
      expect(ratingFromSidr(psi(1000), sidr)).toBeCloseTo(ratingFromDimensionRatio(psi(1000), sidr + 2), 6);
    }),
    SEED,
  );
});

test('a wall by thickness is rated as by its ratio', () => {
  const rating = pvcRating({ hydrostaticDesignStress: psi(2000), outsideDiameter: 21 * 3, wall: 3 });
  expect(rating).toBeCloseTo(ratingFromDimensionRatio(psi(2000), 21), 6);
});

// PE: AWWA M55 (2006), Table 4-6. PVC: PPFA User Bulletin 3-96 to 80 degF; 90 degF and more from memory.
test.each([
  ['PE', 50, 1],
  ['PE', 80, 1],
  ['PE', 85, 0.9],
  ['PE', 90, 0.9],
  ['PE', 95, 0.8],
  ['PE', 101, null],
  ['PVC', 50, 1],
  ['PVC', 73, 1],
  ['PVC', 80, 0.88],
  ['PVC', 85, 0.815],
  ['PVC', 120, 0.4],
  ['PVC', 121, null],
] as const)('%s at %d degF keeps %s of its rating', (material, fahrenheit, share) => {
  const factor = deratingFactor(material, (fahrenheit - 32) / 1.8);
  if (share === null) expect(factor).toBeNull();
  else expect(factor).toBeCloseTo(share, 9);
});

// AWWA M55 (2006), p. 47-48: 11.3 psi per ft/s for DR 17; the others by the same equation.
test.each([
  ['PE', 9, 16.2],
  ['PE', 11, 14.4],
  ['PE', 13.5, 12.8],
  ['PE', 17, 11.3],
] as const)('%s of DR %d turns a stop of 1 ft/s into %d psi', (material, ratio, rise) => {
  const surge = surgePressure({
    density: 999.7,
    speed: waveSpeed(psi(PIPE_MATERIALS[material].suddenModulus), ratio - 2),
    velocityChange: feet(1),
  });
  expect(Math.abs(toPsi(surge) - rise)).toBeLessThan(0.01 * rise);
});

test('a stiffer wall carries the wave faster, and a longer pipe leaves more time to close', () => {
  const [soft, stiff] = (['PE', 'galvanized steel'] as const).map((material) =>
    waveSpeed(psi(PIPE_MATERIALS[material].suddenModulus), 9),
  ) as [number, number];
  expect(soft).toBeLessThan(stiff);
  expect(suddenWithin(200, soft)).toBeCloseTo(2 * suddenWithin(100, soft), 12);
});

test('the column that air holds shrinks with altitude and warmth, from 33.4 ft at sea level to under 25 ft above 7,500 ft', () => {
  expect(columnHeldByAir({ altitude: 1000, temperature: 10 })).toBeLessThan(
    columnHeldByAir({ altitude: 0, temperature: 10 }),
  );
  expect(columnHeldByAir({ altitude: 0, temperature: 25 })).toBeLessThan(
    columnHeldByAir({ altitude: 0, temperature: 10 }),
  );
  expect(toFeet(columnHeldByAir({ altitude: feet(7400), temperature: 15 }))).toBeGreaterThan(25);
  expect(toFeet(columnHeldByAir({ altitude: feet(7900), temperature: 15 }))).toBeLessThan(25);
});

test('speed moves flow, head and power by its first, second and third power', () => {
  expect(atSpeed({ flow: 1, head: 1, power: 1 }, 0.5)).toEqual({ flow: 0.5, head: 0.25, power: 0.125 });
  expect(stagesFor(26, 13)).toBe(2);
  expect(stagesFor(26.01, 13)).toBe(3);
  expect(() => shaftPower(500, 0)).toThrow('efficiency is 0');
});

// International Plumbing Code (2018), Table E103.3(3): units and gpm.
test.each([
  [1, 3],
  [5, 9.4],
  [10, 14.6],
  [14, 17],
  [20, 19.6],
  [22.5, 20.55],
  [60, 32],
])('%d fixture units ask for %d gpm', (units, flow) => {
  expect(toGpm(peakDemand(units)!)).toBeCloseTo(flow, 9);
});

test('more fixtures never ask for less, and beyond its table the code has no answer', () => {
  for (let units = 0.5; units <= 60; units += 0.5) expect(peakDemand(units)!).toBeGreaterThan(peakDemand(units - 0.5)!);
  expect(peakDemand(60.1)).toBeNull();
  expect(peakDemand(fixtureUnits({}))).toBe(0);
});

test('what an inlet takes of the head is taken off it, and what stands over it added', () => {
  const air = { altitude: 0, temperature: 10 };
  const at = (submergence: number, inletLoss: number) => netPositiveSuctionHead({ ...air, submergence, inletLoss });
  expect(at(3, 0) - at(0, 0)).toBeCloseTo(3, 12);
  expect(at(3, 0.5)).toBeCloseTo(columnHeldByAir(air) + 2.5, 12);
});

test('a closing is sudden while the wave runs there and back', () => {
  expect(suddenWithin(100, 400)).toBeCloseTo(0.5, 12);
});

// AWWA M55 (2006), Table 4-6: steps that end at 80, 90 and 100 degF. 80 degF is 26.67 degC.
test.each([
  [80, 1],
  [80.1, 0.9],
  [90, 0.9],
  [90.1, 0.8],
  [100, 0.8],
  [100.1, null],
])('polyethylene at %d degF keeps %d of its rating', (fahrenheit, share) => {
  expect(deratingFactor('PE', (fahrenheit - 32) / 1.8)).toBe(share);
});

// PPFA User Bulletin 3-96 at 73 and 80 degF; warmer rows from memory. Straight lines between.
test.each([
  [40, 1],
  [73, 1],
  [76.5, 0.94],
  [80, 0.88],
  [85, 0.815],
  [100, 0.62],
  [105, 0.56],
  [120, 0.4],
])('PVC at %d degF keeps %d of its rating', (fahrenheit, share) => {
  expect(deratingFactor('PVC', (fahrenheit - 32) / 1.8)).toBeCloseTo(share, 9);
});

test('PVC has no rating past 120 degF', () => {
  expect(deratingFactor('PVC', (120.1 - 32) / 1.8)).toBeNull();
});

// ISO 4427-1, annex A (as ISO 13761), from memory.
test.each([
  [5, 1],
  [20, 1],
  [30, 0.87],
  [40, 0.74],
  [40.1, null],
])('polyethylene of the ISO standards at %d degC keeps %d of its rating', (temperature, share) => {
  const kept = isoDeratingFactor(temperature);
  if (share === null) expect(kept).toBeNull();
  else expect(kept).toBeCloseTo(share, 12);
});
