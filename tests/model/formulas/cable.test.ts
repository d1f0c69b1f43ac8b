import { expect, test } from 'vitest';
import { cableDisplacedArea, cableMassPerLength, cableThickness } from '../../../src/model/formulas/cable.ts';
import { GAUGES } from '../../../src/model/tables/conductors.ts';
import { metricConductorOf } from '../../../src/model/tables/metricConductors.ts';
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

test('metric cable is as heavy and as thick as what it is made of', () => {
  // Four conductors of 2.5 mm2: strand 1.14 times √(4/π 2.5) mm, insulation 0.9 and sheath 1.2 mm; copper of 8890 kg/m3.
  const { insulationMillimetres, sheathMillimetres } = metricConductorOf('2.5 mm2');
  const strand = 1.14 * Math.sqrt((4 / Math.PI) * 2.5);
  const insulated = strand + 2 * insulationMillimetres;
  const thickness = insulated + 2 * sheathMillimetres;
  const section = 3 * insulated * thickness + (Math.PI / 4) * thickness ** 2;
  expect(cableThickness('2.5 mm2')).toBeCloseTo(thickness / 1000, 9);
  expect(cableDisplacedArea('2.5 mm2', 3)).toBeCloseTo(section * 1e-6, 12);
  const copper = 4 * 2.5e-6 * 1.02 * 8890;
  const plastic = (section - 4 * (Math.PI / 4) * strand ** 2) * 1e-6 * 1400;
  // Water of 62.4 lb/ft3 is 999.55 kg/m3, not 1000.
  expect(cableMassPerLength('2.5 mm2', 3) / (copper + plastic)).toBeCloseTo(0.99955, 4);
});

test('a gauge that is not tabulated is refused', () => {
  expect(() => cableMassPerLength(16, 2)).toThrow(RangeError);
});
