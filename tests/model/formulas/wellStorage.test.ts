import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  boreVolumePerMetre,
  timeToBreakSuction,
  usableStorage,
  wellVolume,
} from '../../../src/model/formulas/wellStorage.ts';
import { between, SEED } from '../laws.ts';

const bore = [
  { top: -0.3, bottom: 18, insideRadius: 0.077 },
  { top: 18, bottom: 60, insideRadius: 0.0762 },
  { top: 60, bottom: 65, insideRadius: 0.05 },
];

test('volumes of neighbouring stretches add up', () => {
  fc.assert(
    fc.property(between(-1, 70), between(-1, 70), between(-1, 70), (a, b, c) => {
      const [top, middle, bottom] = [a, b, c].sort((x, y) => x - y) as [number, number, number];
      expect(wellVolume(bore, top, middle) + wellVolume(bore, middle, bottom)).toBeCloseTo(
        wellVolume(bore, top, bottom),
        12,
      );
    }),
    SEED,
  );
});

test('a stretch of one bore holds its length times the volume per metre', () => {
  expect(wellVolume(bore, 20, 30)).toBeCloseTo(10 * boreVolumePerMetre(0.1524), 12);
});

test('the drop pipe takes its own volume from the storage, and a margin keeps water over the intake', () => {
  const well = { bore, staticLevel: 20, intakeDepth: 50, dropPipeOutsideDiameter: 0.0428 };
  expect(usableStorage(well)).toBeCloseTo(30 * (boreVolumePerMetre(0.1524) - boreVolumePerMetre(0.0428)), 12);
  expect(usableStorage({ ...well, margin: 3 })).toBeCloseTo(0.9 * usableStorage(well), 12);
  expect(usableStorage({ ...well, intakeDepth: 10 })).toBe(0);
});

test('the pump breaks suction sooner with less storage, and never while the well keeps up', () => {
  const well = { storage: 0.5, pumpFlow: 6e-4, wellYield: 2e-4 };
  expect(timeToBreakSuction(well)).toBeCloseTo(1250, 9);
  expect(timeToBreakSuction({ ...well, storage: 0.4 })!).toBeLessThan(1250);
  expect(timeToBreakSuction({ ...well, wellYield: 6e-4 })).toBeNull();
});
