/** No path, name of a field or list in brackets is ever read by a person. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { sayAssumed, sayValue } from '../../src/words/en/plan/assumed.ts';
import { sayChoice } from '../../src/words/en/plan/choices.ts';
import { nameOfPath, withoutPaths } from '../../src/words/en/plan/paths.ts';
import { fields } from '../../src/model/plan/fields.ts';
import { readFacts } from '../../src/model/plan/readFacts.ts';
import type { Plan } from '../../src/model/plan/schema.ts';
import { anyPlan } from '../plans/anyPlan.ts';

/** A dot between letters, a capital in a word, brackets, quotes, or a word that only the program knows. */
const RAW = /[a-z]\.[a-z*]|\b[a-z]{2,}[A-Z]|[[\]{}"*]|\bundefined\b|\b(?:us|degF|degC)\b/;

const BARE = {
  format: 'wellcut-plan/1',
  well: { depth: '240 ft', casing: {}, intake: { kind: 'screen' }, tested: '2019' },
  water: { staticLevel: 'unknown', sand: true, gas: true },
} as unknown as Plan;

function said(plan: Plan): string[] {
  const { assumed, unknown, notUsed } = readFacts(plan);
  return [
    ...[...unknown, ...notUsed].map(nameOfPath),
    ...assumed.flatMap((each) => [sayAssumed(each, 'us'), sayAssumed(each, 'metric')]),
  ];
}

test('of thousands of plans, every name of what is assumed or unknown is words', () => {
  expect(said(BARE).filter((words) => RAW.test(words))).toEqual([]);
  fc.assert(
    fc.property(anyPlan, (plan) => {
      expect(said(plan).filter((words) => RAW.test(words))).toEqual([]);
    }),
    { seed: 83, numRuns: 2000 },
  );
});

test('every field of the plan has a name in words, and no two the same', () => {
  const paths = [...new Set(fields.map(({ path }) => path.replaceAll('*', '0')))].filter(
    (path) => !path.startsWith('house.branches') && !/^well\.intake\.(?:top|bottom)$/.test(path),
  );
  expect(paths.filter((path) => RAW.test(nameOfPath(path)))).toEqual([]);
  const names = paths.map(nameOfPath);
  const twice = paths.filter((_, i) => names.indexOf(names[i] ?? '') !== i);
  expect(twice).toEqual([]);
});

test('every choice is words', () => {
  const options = fields.flatMap(({ path, options: all, kind }) =>
    kind === 'choice' && path !== 'format' ? (all ?? []).map((option) => sayChoice(path, option)) : [],
  );
  expect(options.filter((words) => RAW.test(words) || /^\d+$/.test(words))).toEqual([]);
});

describe('an assumed value', () => {
  test.each([
    ['string.splices', '4 ft', 'us', 'Splice heights above the pump: 4 ft'],
    ['string.splices', '1.2 m', 'metric', 'Splice heights above the pump: 1.2 m'],
    ['pump.checkValveInside', 'no', 'us', 'Check valve in the pump: no'],
    ['site.waterTemperature', '10 degC', 'us', 'Temperature of the water: 50 °F'],
    ['pump.setting', '60 m', 'us', 'Pump intake: 196 ft 10 in'],
    ['top.depth', '48 in', 'metric', 'Depth of the pitless adapter: 1.22 m'],
    ['house.demand', '8 gpm', 'metric', 'Peak flow needed: 30 L/min'],
    ['dropPipe.rating', '200 psi', 'metric', 'Pressure rating of the drop pipe: 13.8 bar'],
    ['site.frostDepth', '44 in (estimate)', 'metric', 'Frost depth: 1.12 m (estimate)'],
    ['house.control', 'switch', 'us', 'Control: a pressure switch'],
  ] as const)('%s %s in %s', (path, value, units, words) => {
    expect(sayAssumed({ path, value }, units)).toBe(words);
  });
});

test('what stands at a path is said in the reader’s units and words', () => {
  expect(sayValue('pump.setting', '180 ft', 'metric')).toBe('54.9 m');
  expect(sayValue('string.checkValves', ['0 ft', '80 ft'], 'us')).toBe('0 ft, 80 ft');
  expect(sayValue('pump.lowLevelCutOff', true, 'us')).toBe('yes');
  expect(sayValue('house.control', 'switch', 'us')).toBe('a pressure switch');
  expect(sayValue('string.torqueArrestor', undefined, 'us')).toBe('left out');
});

test('the second of a kind is told by its number', () => {
  expect(nameOfPath('well.casings.1.bottom')).toBe('Bottom of the casing, number 2');
  expect(nameOfPath('well.casing.bottom')).toBe('Bottom of the casing');
});

test('a sentence of the reader of plans names fields in words', () => {
  expect(withoutPaths('not below cut-out ("60 psi", since house.cutOut is not said)')).toBe(
    'not below cut-out ("60 psi", since cut-out is not said)',
  );
});
