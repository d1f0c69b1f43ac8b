/** As it was built, as a reader reads it. */
import { describe, expect, test } from 'vitest';
import { rowsOf } from '../../src/model/asBuilt/asked.ts';
import { compared } from '../../src/model/asBuilt/measured.ts';
import { solve } from '../../src/model/index.ts';
import { show } from '../../src/model/units.ts';
import { asBuilt as words } from '../../src/words/en/asBuilt.ts';
import { sayCompared, sayRow } from '../../src/words/sayAsBuilt.ts';
import { planOf, sample } from '../plans/build.ts';
import { gradeOf } from './reading.ts';

const PLAN = planOf(sample('tamarack-ridge'));
const READINGS = [
  { flow: '0.5 gpm', current: '14 A', voltage: '200 V', precharge: '46 psi', run: '5 s', staticLevel: '70 ft' },
  { flow: '6 gpm', pumpingLevel: '95 ft', current: '1 A', cutIn: '20 psi', cutOut: '80 psi', staticLevel: '50 ft' },
  { flow: '8.6 gpm', pumpingLevel: '178 ft', voltage: '300 V', staticLevel: '190 ft' },
  { flow: '40 gpm', pumpingLevel: '182 ft', precharge: '20 psi', run: '20 s' },
] as const;

describe.each(['us', 'metric'] as const)('in %s', (units) => {
  const texts = READINGS.flatMap((measured) =>
    compared(solve({ ...PLAN, units, asBuilt: { measured } })).flatMap(
      (each) => sayCompared(each, words, show(units)).causes,
    ),
  ).flatMap((text) => text.split(/(?<=[.;:]) /));
  test('something is told of most causes', () => {
    expect(new Set(texts).size).toBeGreaterThan(15);
  });
  test('no sentence is longer than twenty-two words', () => {
    expect(texts.filter((text) => text.split(/\s+/).length > 22)).toEqual([]);
  });
  test('in the reader’s units', () => {
    const foreign =
      units === 'metric' ? /\d (?:ft|psi|gpm|in|lb)\b|\bfoot\b/ : /\d (?:m|bar|kPa|L\/min|mm)\b|\bmetre\b/;
    expect(texts.filter((text) => foreign.test(text))).toEqual([]);
  });
  test('read at the eighth grade or under, as a whole', () => {
    expect(gradeOf(texts)).toBeLessThanOrEqual(8);
  });
});

test('a difference is told in words, and what was assumed says so', () => {
  const plan = { ...PLAN, asBuilt: { installed: { 'pump.setting': '171 ft', 'house.tank': '44 gal' } } };
  const said = rowsOf(solve(plan)).map((row) => sayRow(row, words, show('us')));
  expect(said.find(({ name }) => name === 'Pump intake')).toMatchObject({
    planned: '180 ft',
    installed: '171 ft',
    differs: 'not as planned',
  });
  expect(said.some(({ planned }) => planned.endsWith(', assumed'))).toBe(true);
  expect(said.find(({ installed }) => installed === '44 gal')?.differs).toBe('');
});
