import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  anodeOf,
  coupleClass,
  galvanicDifference,
  leadAverage,
  pairVerdict,
  waterClass,
} from '../../../src/model/formulas/corrosion.ts';
import type { AreaSituation, PairVerdict } from '../../../src/model/formulas/corrosion.ts';
import { METALS } from '../../../src/model/tables/metals.ts';
import type { Metal } from '../../../src/model/tables/metals.ts';

const metals = Object.keys(METALS) as Metal[];
const [steel304, steel316] = ['304 stainless steel', '316 stainless steel'] as const;

// Verdicts of the trade for the couples met in a string, with the area rule of MIL-DTL-14072F, 3.13 and the remarks of
// Corrosion Engineering Principles and Practice, pp. 178-179, on waters of low conductivity. Common practice.
test.each<[string, Metal, Metal, AreaSituation, PairVerdict, PairVerdict]>([
  ['brass adapter on a stainless pump', 'brass', steel304, 'similar', 'ok', 'caution'],
  ['brass check valve on galvanized pipe', 'zinc', 'brass', 'small noble part', 'caution', 'avoid'],
  ['stainless pump head on galvanized pipe', 'zinc', steel304, 'small noble part', 'caution', 'avoid'],
  ['galvanized fitting on a large stainless part', 'zinc', steel304, 'small active part', 'avoid', 'avoid'],
  ['stainless motor against steel casing', 'carbon steel', steel304, 'small noble part', 'ok', 'caution'],
  ['brass pitless adapter in steel casing', 'carbon steel', 'brass', 'small noble part', 'ok', 'caution'],
  ['stainless pitless adapter in steel casing', 'carbon steel', steel304, 'small noble part', 'ok', 'caution'],
  ['cast iron pitless unit on steel casing', 'carbon steel', 'cast iron', 'similar', 'ok', 'ok'],
  ['stainless clamp on plastic pipe over a brass barb', 'brass', steel304, 'apart', 'ok', 'ok'],
  ['carbon steel screw in a stainless clamp', 'carbon steel', steel304, 'small active part', 'avoid', 'avoid'],
  ['304 with 316', steel304, steel316, 'similar', 'ok', 'ok'],
  ['brass with bronze', 'brass', 'bronze', 'similar', 'ok', 'ok'],
  ['galvanized nipple in black steel', 'zinc', 'carbon steel', 'similar', 'caution', 'caution'],
  ['steel casing bonded to copper grounding', 'carbon steel', 'copper', 'large noble field', 'caution', 'caution'],
  ['galvanized nipple in cast iron', 'zinc', 'cast iron', 'similar', 'caution', 'caution'],
  ['steel screw in a copper part', 'carbon steel', 'copper', 'small active part', 'caution', 'avoid'],
  ['aluminium on aluminium', 'aluminium', 'aluminium', 'similar', 'ok', 'ok'],
  ['aluminium on anything', 'aluminium', steel304, 'similar', 'avoid', 'avoid'],
])('%s', (_name, first, second, areas, mild, aggressive) => {
  expect(pairVerdict({ first, second, areas, water: 'mild' })).toBe(mild);
  expect(pairVerdict({ first, second, areas, water: 'aggressive' })).toBe(aggressive);
  expect(pairVerdict({ first, second, areas, water: 'between' })).toBe(aggressive);
});

// Galvanic series in flowing sea water, differences of the printed potentials; limits 0.15 V and 0.25 V.
test.each<[Metal, Metal, number, 'A' | 'B' | 'C']>([
  ['zinc', 'aluminium', 0.24, 'B'],
  ['carbon steel', 'copper', 0.25, 'B'],
  ['carbon steel', 'bronze', 0.3, 'C'],
  ['active stainless steel', 'brass', 0.13, 'A'],
  ['active stainless steel', '304 stainless steel', 0.45, 'C'],
  ['bronze', '304 stainless steel', 0.23, 'B'],
  ['bronze', '316 stainless steel', 0.26, 'C'],
])('%s and %s are %d V apart, class %s', (first, second, volts, letter) => {
  expect(galvanicDifference(first, second)).toBeCloseTo(volts, 9);
  expect(coupleClass(first, second)).toBe(letter);
});

test('the order of the two metals makes no difference', () => {
  for (const first of metals) {
    for (const second of metals) {
      expect(coupleClass(first, second)).toBe(coupleClass(second, first));
      expect(anodeOf(first, second)).toBe(anodeOf(second, first));
      const couple = { areas: 'similar', water: 'aggressive' } as const;
      expect(pairVerdict({ first, second, ...couple })).toBe(pairVerdict({ first: second, second: first, ...couple }));
    }
  }
});

test('aggressive water never gets the better verdict', () => {
  const rank = { ok: 0, caution: 1, avoid: 2 };
  const areas = fc.constantFrom<AreaSituation>(
    'similar',
    'small noble part',
    'small active part',
    'large noble field',
    'apart',
  );
  fc.assert(
    fc.property(fc.constantFrom(...metals), fc.constantFrom(...metals), areas, (first, second, situation) => {
      const verdict = (water: 'mild' | 'aggressive') => rank[pairVerdict({ first, second, areas: situation, water })];
      expect(verdict('mild')).toBeLessThanOrEqual(verdict('aggressive'));
    }),
    { seed: 20260304 },
  );
});

test.each([
  [0.04, 7, 'mild'],
  [0.05, 7, 'between'],
  [0.15, 7, 'between'],
  [0.16, 7, 'aggressive'],
  [0.04, 6.9, 'aggressive'],
  [null, 7.5, 'between'],
  [0.04, null, 'between'],
  [null, null, 'between'],
])('water of %d S/m and pH %d is %s', (conductivity, acidity, kind) => {
  expect(waterClass({ conductivity, acidity })).toBe(kind);
});

test('the average of lead goes by area', () => {
  expect(leadAverage([{ area: 2, lead: 0.001 }])).toBe(0.001);
  expect(
    leadAverage([
      { area: 1, lead: 0.003 },
      { area: 3, lead: 0 },
    ]),
  ).toBeCloseTo(0.00075, 12);
  expect(() => leadAverage([])).toThrow(RangeError);
  expect(() => leadAverage([{ area: -1, lead: 0 }])).toThrow(RangeError);
  expect(() => waterClass({ conductivity: -1, acidity: 7 })).toThrow(RangeError);
});
