import { expect, test } from 'vitest';
import { berggrenDepth } from '../../../src/model/formulas/berggren.ts';
import { insulationWidth, layeredFrostDepth } from '../../../src/model/formulas/frostLayers.ts';
import { SOILS } from '../../../src/model/tables/soils.ts';

const freezing = { surfaceIndex: 900, meanAnnual: 7, season: 150 };
const ground = (soil: (typeof SOILS)[number], thickness = 0.4) => ({ kind: 'soil' as const, thickness, soil });
const board = (resistance: number) => ({ kind: 'insulation' as const, thickness: 0.05, resistance });
const silt = SOILS.find(({ id }) => id === 'silt loam')!;

test.each(SOILS)('one soil in two layers is one soil: $id', (soil) => {
  const layered = layeredFrostDepth({ ...freezing, layers: [ground(soil), ground(soil)] });
  expect(layered).toBeCloseTo(berggrenDepth({ ...freezing, soil }), 6);
});

test('a better board keeps the frost higher', () => {
  const depth = (resistance: number) =>
    layeredFrostDepth({ ...freezing, layers: [ground(silt), board(resistance), ground(silt)] });
  expect(depth(2)).toBeLessThan(depth(1));
  expect(depth(1)).toBeLessThan(berggrenDepth({ ...freezing, soil: silt }));
});

test('a board below the frost does nothing', () => {
  const deep = layeredFrostDepth({ ...freezing, layers: [ground(silt, 5), board(2), ground(silt)] });
  expect(deep).toBeCloseTo(berggrenDepth({ ...freezing, soil: silt }), 6);
});

test('a stack that ends in a board, and a sheet below the frost, are refused', () => {
  expect(() => layeredFrostDepth({ ...freezing, layers: [board(1)] })).toThrow(RangeError);
  expect(() => insulationWidth({ pipeOutsideDiameter: 0.03, frostDepth: 1, sheetDepth: 1.2 })).toThrow(RangeError);
});
