import { expect, test } from 'vitest';
import { metalCouples } from '../../../src/model/sheets/materials/pairs.ts';
import { contextOf } from '../../../src/model/explain/context.ts';
import { solve } from '../../../src/model/solve.ts';
import { toInches } from '../../../src/model/units.ts';
import { rockWell } from '../../plans/build.ts';
import { figureOf, numberAt, sheetOf, tableOf, valueOf } from './find.ts';

const plastic = {
  depth: '200 ft',
  casing: { material: 'PVC', size: '6 in', bottom: '200 ft', height: '12 in' },
  intake: { kind: 'open hole', diameter: '6 in' },
};
const couplesOf = (change: Record<string, unknown>) => metalCouples(contextOf(solve(rockWell(change)), 'us'));
const pair = (change: Record<string, unknown>, one: string, other: string) =>
  couplesOf(change).find(({ first, second }) => first.name === one && second.name === other)!;

// Galvanic series in flowing sea water, of the kind ASTM G82 describes: zinc −1.03 V, stainless steel 304 −0.08 V.
test('galvanized fittings on the stainless pump differ by 0.95 V, and are the small part that gives way', () => {
  const found = pair({ string: { fittings: 'galvanized steel' } }, 'pump and motor', 'fittings');
  expect(found.joined).toBe('touching');
  expect(found.areas).toBe('small active part');
  expect(found.verdict).toBe('avoid');
  expect(
    valueOf(
      sheetOf(rockWell({ well: plastic, string: { fittings: 'galvanized steel' } }), 'materials'),
      'widestDifference',
    ),
  ).toBeCloseTo(0.95, 9);
});

// NFPA 70 (NEC), 250.112(M): a metal casing is bonded to the ground of the pump's circuit.
test('the ground wire joins motor and steel casing, whatever pipe hangs between', () => {
  const found = pair({}, 'pump and motor', 'casing');
  expect(found.joined).toBe('bonded by the ground wire');
  expect(found.areas).toBe('small noble part');
});

test('carbon-steel clamp screws touch their clamps and nothing else', () => {
  const screws = couplesOf({ well: plastic, string: { clampScrew: 'carbon steel' } }).filter(({ first, second }) =>
    [first.name, second.name].includes('clamp screws'),
  );
  expect(screws.filter(({ joined }) => joined === 'touching').length).toBe(1);
  expect(screws.find(({ joined }) => joined === 'touching')!.verdict).toBe('avoid');
});

test('stainless fittings in plastic casing leave no unlike metals', () => {
  const sheet = sheetOf(rockWell({ well: plastic }), 'materials');
  expect(tableOf(sheet, 'metals').rows).toEqual([]);
  expect(valueOf(sheet, 'widestDifference')).toBe(0);
});

// ASTM D2239 bore 1.049 in; ASTM D3035 DR 11 1.315 − 2 × 0.120 = 1.075 in; ASTM D2737 SDR 9 1.125 − 2 × 0.125 = 0.875 in.
test.each([
  ['ASTM D2239', 0, 'fits'],
  ['ASTM D3035', 0.026, 'sits loose'],
  ['ASTM D2737', -0.174, 'does not go in'],
])('a 1 in barb in pipe of %s has %d in of play: it %s', (standard, play, word) => {
  const ratio = standard === 'ASTM D3035' ? 'DR 11' : undefined;
  const sheet = sheetOf(
    rockWell({ dropPipe: { material: 'PE', size: '1 in', standard, ...(ratio ? { ratio } : {}) } }),
    'materials',
  );
  expect(toInches(valueOf(sheet, 'barbPlay'))).toBeCloseTo(play, 3);
  const table = tableOf(sheet, 'sizeSystems');
  expect(table.rows[0]!.cells.at(-1)).toBe(word);
});

// ASME B1.20.1: 0.400 in by hand and three turns of 11.5 to the inch, 0.661 in.
test('a 1 in thread engages 0.661 in', () => {
  const table = tableOf(sheetOf(rockWell(), 'materials'), 'sizeSystems');
  expect(toInches(numberAt(table, table.rows[0]!, 'thread')!)).toBeCloseTo(0.661, 3);
});

// 42 U.S.C. 300g-6(d): 0.25 % at most, on average over the wetted surface.
test('lead is never claimed: the average stays unknown and the limit is told', () => {
  const sheet = sheetOf(rockWell(), 'materials');
  expect(figureOf(sheet, 'leadAverage').value).toBeNull();
  expect(sheet.cautions.join()).toContain('0.25 %');
});
