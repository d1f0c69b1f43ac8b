/** A value that is refused is told in whole sentences: what, where, how to mend. */
import { describe, expect, test } from 'vitest';
import { readPlan, withValue } from '../../src/model/index.ts';
import { sayRefusal } from '../../src/words/en/plan/refusal.ts';
import { fields } from '../../src/model/plan/fields.ts';
import { sample } from '../model/plan/sample.ts';

function refused(path: string, value: unknown, units: 'us' | 'metric' = 'us'): string[] {
  const read = readPlan({ ...withValue(sample(), path, value), units });
  return read.ok ? [] : read.problems.map(sayRefusal);
}

describe('a refusal', () => {
  test.each([
    ['pump.setting', '180', 'Pump intake cannot be "180": it is without a unit. Write it as "180 ft" or "54.9 m".'],
    [
      'site.frostDepth',
      '90 ft',
      'Frost depth cannot be "90 ft": it must be at most 30 ft. Write a value from "0 ft" to "30 ft".',
    ],
    ['house.cutIn', 'forty', 'Cut-in cannot be "forty": it is not a number with a unit. Write'],
    ['top.kind', undefined, ''],
  ] as const)('of %s %s', (path, value, words) => {
    const [said = ''] = refused(path, value);
    expect(said.startsWith(words), said).toBe(true);
  });

  test('is of whole sentences without a path, a bracket or a field of the file', () => {
    const wrong = [
      ...refused('pump.setting', '9000 ft'),
      ...refused('house.cutOut', '20 psi'),
      ...refused('well.casing', 'steel'),
      ...refused('pump.curve.kind', 'strong'),
      ...refused('water.pumping', {}),
      ...refused('dropPipe.size', '17 in'),
    ];
    expect(wrong.length).toBeGreaterThanOrEqual(6);
    for (const said of wrong) {
      expect(said).toMatch(/^[A-Z][^.].*[.?]$/);
      expect(said).not.toMatch(/[{}[\]]|[a-z]\.[a-z]|: which|\.\.|[?]\./);
    }
  });

  // Whoever takes over what a refusal shows must not get a wrong value that looks read.
  test.each([
    ['pump.voltage', '120/240', /Write the motor’s own voltage: "115 V" or "230 V"/],
    ['pump.voltage', '208-230 V', /Write the motor’s own voltage: "115 V" or "230 V"/],
    ['pump.power', '750', /Write "1-1\/2 hp" or "1.1 kW"/],
    ['house.demand', '30 L', /Write "8 gpm",? (?:or )?"30 L\/min"/],
    ['water.staticLevel', '40psi', /Write "62 ft",? (?:or )?"18.9 m"/],
    ['water.pH', '12 psi', /Write "7.2", a bare number from 0 to 14/],
    ['pump.shroudDiameter', '-5', /Write "5 in" or "127 mm"/],
    ['pump.shroudDiameter', '5', /Write it as "5 in" or "127 mm"/],
    ['wire.size', '80', /Write "12 AWG"/],
    ['wire.size', '80 AWG', /not a size of pump wire. Write "14 AWG", "12 AWG" or "10 AWG"/],
    ['pump.motorDiameter', 'wide', /Write "3.75 in" or "95 mm"/],
  ])('of %s %s shows a value that can be', (path, value, words) => {
    expect(refused(path, value)[0]).toMatch(words);
  });

  test('never shows the number again with a unit that nobody typed, where one was', () => {
    for (const { path, kind } of fields.filter(({ path: each }) => /^(pump|house|site|water|well)\./.test(each))) {
      if (['text', 'choice', 'flag', 'count'].includes(kind) || path.includes('*')) continue;
      for (const units of ['us', 'metric'] as const)
        for (const said of refused(path, '7351 furlongs', units))
          expect(said.replace('"7351 furlongs"', '')).not.toContain('7351');
    }
  });

  test('shows only values that are read in that field', () => {
    for (const { path, kind } of fields.filter(({ path: each }) => /^(pump|house|site|water|well|wire)\./.test(each))) {
      if (['text', 'choice', 'flag', 'count'].includes(kind) || path.includes('*')) continue;
      for (const bare of ['-5', '3', '80', '750', '99999'])
        for (const units of ['us', 'metric'] as const) {
          const said = refused(path, bare, units).find((each) => /without a unit/.test(each)) ?? '';
          const shown = [...(said.split(' unit. ')[1] ?? '').matchAll(/"([^"]*)"/g)].map(([, text = '']) => text);
          for (const text of shown)
            expect(
              refused(path, text, units).filter((each) => /must be|unit|not a size of pump/.test(each)),
              `${path} ${bare}: ${said}`,
            ).toEqual([]);
        }
    }
  });

  test('of a pH with a unit: it has none, and a percentage is no pH', () => {
    for (const typed of ['7 %', '650 %', '7.5 %', '6.5 pH'])
      expect(refused('water.pH', typed)[0]).toContain('a pH has none');
    expect(refused('water.pH', '15')[0]).toContain('it must be at most 14');
    expect(refused('water.pH', '6.5')).toEqual([]);
    expect(refused('water.pH', 6.5)[0]).toBe(
      'PH cannot be 6.5: it is not text. Write it in quotes, as "7.2", a bare number from 0 to 14.'.replace('PH', 'pH'),
    );
  });

  test.each([
    [
      'water.staticLevel',
      '3 ft 14 in',
      'Static level cannot be "3 ft 14 in": 14 in is a foot or more. Write "4 ft 2 in".',
    ],
    ['water.staticLevel', '40psi', 'Static level cannot be "40psi": it has the unit "psi", which is not read here'],
    ['water.staticLevel', '3.5 ft 2 in', 'Static level cannot be "3.5 ft 2 in": it has inches after a part of a foot.'],
    [
      'site.waterTemperature',
      '10 deg',
      'Temperature of the water cannot be "10 deg": it has the unit "deg", which is not read here (these are: °F, °C). Write "50 °F" or "10 °C".',
    ],
    [
      'site.frostDepth',
      '400 in',
      'Frost depth cannot be "400 in": it must be at most 360 in. Write a value from "0 in" to "360 in".',
    ],
    [
      'well.casing.size',
      '150',
      'Size of the casing cannot be "150": it would be 12.5 ft wide. Did you mean "6 in", the name of 150 mm?',
    ],
    [
      'well.casing.size',
      '60 in',
      'Size of the casing cannot be "60 in": it would be 5 ft wide. Write its name in inches, as "6 in".',
    ],
  ])('of %s %s is a sentence', (path, value, words) => {
    expect(refused(path, value)[0]?.startsWith(words), refused(path, value)[0]).toBe(true);
  });

  test('a wide size is no fault of a well that was dug, or of one whose bore was measured', () => {
    const dug = withValue(withValue(sample(), 'well.intake', { kind: 'dug', diameter: '60 in' }), 'well.casing', {
      size: '60 in',
      bottom: '20 ft',
    });
    expect(readPlan(dug)).toMatchObject({ ok: true });
    expect(refused('well.casing', { size: '60 in', insideDiameter: '58 in', bottom: '20 ft' })).toEqual([]);
  });

  test('names the limit in the units of the plan', () => {
    expect(refused('site.frostDepth', '90 m', 'metric')[0]).toBe(
      'Frost depth cannot be "90 m": it must be at most 9.14 m. Write a value from "0 m" to "9.14 m".',
    );
  });
});
