import { expect, test } from 'vitest';
import { cableDisplacedArea, cableMassPerLength, cableThickness } from '../../../src/model/formulas/cable.ts';
import { GAUGES } from '../../../src/model/tables/conductors.ts';
import { WATER_DENSITY } from '../../../src/model/formulas/hangLoad.ts';

test('thicker conductors and a third wire make cable heavier and larger', () => {
  for (let place = 0; place < GAUGES.length; place++) {
    const gauge = GAUGES[place]!;
    expect(cableMassPerLength(gauge, 3)).toBeGreaterThan(cableMassPerLength(gauge, 2));
    expect(cableDisplacedArea(gauge, 3)).toBeGreaterThan(cableDisplacedArea(gauge, 2));
    if (place > 0) expect(cableMassPerLength(gauge, 2)).toBeGreaterThan(cableMassPerLength(GAUGES[place - 1]!, 2));
  }
});

test('cable sinks: it is heavier than the water it displaces', () => {
  for (const gauge of GAUGES) {
    expect(cableMassPerLength(gauge, 2)).toBeGreaterThan(1.4 * WATER_DENSITY * cableDisplacedArea(gauge, 2));
  }
});

test('three conductors and the ground of 12 AWG lie flat in a cable 0.212 in thick', () => {
  // Strand 0.092 in (NEC Chapter 9 Table 8) with insulation and jacket of 30 mil on both sides (UL 83, from memory).
  expect(cableThickness(12)).toBeCloseTo((0.092 + 4 * 0.03) * 0.0254, 12);
});

test('a gauge that is not tabulated is refused', () => {
  expect(() => cableMassPerLength(16, 2)).toThrow(RangeError);
});
