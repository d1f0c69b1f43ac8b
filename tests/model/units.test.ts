import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  UNITS,
  feet,
  gallons,
  gpm,
  horsepower,
  inBothUnits,
  inches,
  parseQuantity,
  poundsForce,
  poundsMass,
  psi,
  show,
  toFeet,
  toGallons,
  toGpm,
  toHorsepower,
  toInches,
  toPoundsForce,
  toPoundsMass,
  toPsi,
  writeQuantity,
  wireName,
} from '../../src/model/units.ts';
import type { QuantityKind } from '../../src/model/units.ts';

function si(text: string, kind: QuantityKind): number {
  const parsed = parseQuantity(text, kind);
  if (!parsed.ok) throw new Error(`"${text}": ${parsed.problem}`);
  return parsed.si;
}

function complaint(text: string, kind: QuantityKind): string {
  const parsed = parseQuantity(text, kind);
  return parsed.ok ? `read as ${parsed.si}` : parsed.problem;
}

// NIST Special Publication 811 (2008), Guide for the Use of the SI, Appendix B.8: seven figures, those in bold exact.
const NIST: readonly (readonly [text: string, kind: QuantityKind, factor: number])[] = [
  ['1 ft', 'length', 3.048e-1],
  ['1 in', 'length', 2.54e-2],
  ['1 gpm', 'flow', 6.30902e-5],
  ['1 psi', 'pressure', 6.894757e3],
  ['1 bar', 'pressure', 1e5],
  ['1 gal', 'volume', 3.785412e-3],
  ['1 lb', 'mass', 4.535924e-1],
  ['1 lbf', 'force', 4.448222],
  ['1 kgf', 'force', 9.80665],
  ['2 kN', 'force', 2000],
  ['1 hp', 'power', 7.456999e2],
  ['1 h', 'time', 3.6e3],
  ['1 d', 'time', 8.64e4],
];

describe('factors', () => {
  test.each(NIST)('%s of %s is %d in SI, as NIST SP 811 tables it', (text, kind, factor) => {
    expect(Math.abs(si(text, kind) / factor - 1)).toBeLessThan(2e-7);
  });

  // NIST SP 811, Appendix B.8: (degF - 32) / 1.8. Fixed points: ice and steam.
  test.each([
    ['32 degF', 0],
    ['212 degF', 100],
    ['50 degF', 10],
    ['-40 degF', -40],
  ])('%s is %d degC', (text, celsius) => {
    expect(si(text, 'temperature')).toBeCloseTo(celsius, 12);
  });

  // NIST SP 811, Appendix B.8: ft2/h is 2.58064e-5 m2/s, gallon per day 4.381264e-8 m3/s.
  test('transmissivities follow from the tabled square foot and gallon a day', () => {
    expect(si('24 ft2/d', 'transmissivity')).toBeCloseTo(2.58064e-5, 11);
    expect(Math.abs(si('0.3048 gpd/ft', 'transmissivity') / 4.381264e-8 - 1)).toBeLessThan(2e-7);
    expect(si('86400 m2/d', 'transmissivity')).toBe(1);
  });

  test('metric units and ratios are powers of ten', () => {
    expect(si('1 L/min', 'flow') * 60).toBeCloseTo(1e-3, 15);
    expect(si('3.6 m3/h', 'flow')).toBe(1e-3);
    expect(si('100 mg/L', 'concentration')).toBe(0.1);
    expect(si('5.25 %', 'ratio')).toBe(0.0525);
    expect(si('0.0001', 'ratio')).toBe(0.0001);
    expect(si('400 uS/cm', 'conductivity')).toBeCloseTo(0.04, 15);
  });

  test('each number converter undoes the other', () => {
    const pairs: [(n: number) => number, (n: number) => number][] = [
      [feet, toFeet],
      [inches, toInches],
      [gpm, toGpm],
      [psi, toPsi],
      [gallons, toGallons],
      [poundsForce, toPoundsForce],
      [poundsMass, toPoundsMass],
      [horsepower, toHorsepower],
    ];
    for (const [there, back] of pairs) expect(back(there(7.25))).toBeCloseTo(7.25, 12);
    expect(feet(1)).toBe(si('1 ft', 'length'));
    expect(psi(60)).toBe(si('60 psi', 'pressure'));
  });
});

describe('the ways people write lengths', () => {
  const SIXTY_SIX_INCHES = 66 * 0.0254;
  test.each([`5' 6"`, `5'6"`, '5 ft 6 in', '5 ft 6', '5ft 6in', '5 feet, 6 inches', '5′ 6″', `5' 6`, '5.5 ft', '66"'])(
    '%s is 66 inches',
    (text) => {
      expect(si(text, 'length')).toBeCloseTo(SIXTY_SIX_INCHES, 12);
    },
  );

  test.each(['1-1/4 in', '1 1/4 in', '1¼ in', '1.25 in', '1,25 in', '1-1/4"'])(
    '%s is an inch and a quarter',
    (text) => {
      expect(si(text, 'length')).toBe(1.25 * 0.0254);
    },
  );

  test('half inches stand after feet too', () => {
    expect(si(`5' 6-1/2"`, 'length')).toBeCloseTo(66.5 * 0.0254, 12);
  });

  test('a comma with fewer or more than three figures after it is a decimal comma', () => {
    expect(si('1,5 m', 'length')).toBe(1.5);
    expect(si('0,400 m', 'length')).toBe(0.4);
    expect(si('12,2500 m', 'length')).toBe(12.25);
  });

  test('the sign counts for feet and inches together', () => {
    expect(si('-3 ft 6 in', 'length')).toBeCloseTo(-42 * 0.0254, 12);
    expect(si('−3 ft', 'length')).toBe(si('-3 ft', 'length'));
  });
});

test('gauges thicker than 1 AWG count down through zero', () => {
  expect([si('12 AWG', 'gauge'), si('#12 AWG', 'gauge'), si('1/0 AWG', 'gauge'), si('2/0 AWG', 'gauge')]).toEqual([
    12, 12, 0, -1,
  ]);
  expect(writeQuantity(-1, 'gauge', 'AWG')).toBe('2/0 AWG');
});

describe('what cannot be read', () => {
  test('5,400 ft is asked about, not guessed', () => {
    expect(complaint('5,400 ft', 'length')).toBe('either thousands or a decimal comma; write "5400 ft" or "5.4 ft"');
  });

  test('marks between thousands are refused even where a decimal mark follows', () => {
    expect(complaint('1,234.5 ft', 'length')).toContain('"1234.5 ft"');
    expect(complaint('1.234,5 m', 'length')).toContain('"1234.5 m"');
  });

  test('a missing unit is named, with both ways to write it', () => {
    expect(parseQuantity('90', 'length')).toMatchObject({ ok: false, fault: 'without a unit', bare: 90 });
    expect(inBothUnits(90, 'length')).toBe('"90 ft" or "27.4 m"');
    expect(inBothUnits(90, 'length', 'metric')).toBe('"90 m" or "295 ft"');
  });

  test('an unknown unit is answered with those that are read', () => {
    expect(complaint('10 ft3/min', 'flow')).toContain('gpm, L/min, L/s, m3/h');
    expect(complaint('10 fathom', 'length')).toContain('ft, m, in, cm, mm');
  });

  test('a unit of another kind is not read', () => {
    expect(complaint('60 psi', 'length')).toContain('"psi"');
  });

  test.each([
    '',
    '  ',
    'abc',
    'ft',
    '1/0 ft',
    '5.5.5 ft',
    '5 6 ft',
    '--3 ft',
    `${'9'.repeat(400)} ft`,
    'Infinity ft',
    'NaN m',
  ])('"%s" is no length', (text) => {
    expect(parseQuantity(text, 'length').ok).toBe(false);
  });

  test('twelve inches or more after feet are answered with the feet they make', () => {
    expect(complaint('5 ft 14 in', 'length')).toContain('"6 ft 2 in"');
  });

  test('whatever is typed gives a finite number or a complaint', () => {
    const kinds = Object.keys(UNITS) as QuantityKind[];
    const pieces = fc.constantFrom(
      '1',
      '25',
      '.',
      ',',
      '-',
      '/',
      ' ',
      "'",
      '"',
      'ft',
      'in',
      'e9',
      '%',
      'gpm',
      '½',
      'x',
    );
    fc.assert(
      fc.property(fc.array(pieces, { maxLength: 8 }), fc.constantFrom(...kinds), (typed, kind) => {
        const parsed = parseQuantity(typed.join(''), kind);
        return parsed.ok ? Number.isFinite(parsed.si) : parsed.problem.length > 0;
      }),
      { seed: 11, numRuns: 3000 },
    );
  });
});

describe('writing', () => {
  const kindAndUnit = fc.constantFrom(
    ...(Object.keys(UNITS) as QuantityKind[]).flatMap((kind) => UNITS[kind].map(({ name }) => [kind, name] as const)),
  );

  test('a quantity survives text, SI, text, SI to the last bit', () => {
    const decimal = fc.tuple(fc.integer({ min: 0, max: 1e8 }), fc.integer({ min: 0, max: 5 }));
    fc.assert(
      fc.property(kindAndUnit, decimal, ([kind, unit], [whole, places]) => {
        const first = si(`${kind === 'gauge' ? whole % 20 : whole / 10 ** places} ${unit}`.trim(), kind);
        expect(si(writeQuantity(first, kind, unit), kind)).toBe(first);
      }),
      { seed: 12, numRuns: 3000 },
    );
  });

  test('twenty switches of the unit change nothing that is typed to six figures', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 999999 }), (count) => {
        const typed = `${count / 1000} ft`;
        let text = typed;
        for (let turn = 0; turn < 20; turn++) {
          text = writeQuantity(si(text, 'length'), 'length', turn % 2 === 0 ? 'm' : 'ft');
        }
        return Math.abs(si(text, 'length') - si(typed, 'length')) < 1e-12 * count;
      }),
      { seed: 13 },
    );
  });

  test('a step rounds what is written to its multiples', () => {
    expect(writeQuantity(20.1, 'length', 'm', 0.1)).toBe('20.1 m');
    expect(writeQuantity(54.88, 'length', 'ft', feet(0.5))).toBe('180 ft');
    expect(writeQuantity(inches(47.8), 'length', 'in', inches(1))).toBe('48 in');
    expect(writeQuantity(19, 'length', 'ft', 0.1)).toBe('62.3 ft');
  });

  test('no length is ever written or shown with twelve inches', () => {
    const spoken = show('us');
    fc.assert(
      fc.property(fc.double({ min: -300, max: 300, noNaN: true }), (length) => {
        const written = writeQuantity(length, 'length', 'ft in', inches(0.25));
        return !/\b12(\.0*)? in/.test(
          `${/ft/.test(written) ? written : ''} ${spoken.length(length).replace(/^-?12 in$/, '')}`,
        );
      }),
      { seed: 14, numRuns: 2000 },
    );
    expect(spoken.length(feet(4) - 1e-4)).toBe('4 ft');
    expect(writeQuantity(feet(4) - 1e-6, 'length', 'ft in', inches(0.25))).toBe('4 ft');
  });

  test('feet and inches come back as feet and inches', () => {
    expect(writeQuantity(si(`5' 6"`, 'length'), 'length', 'ft in')).toBe('5 ft 6 in');
    expect(writeQuantity(-inches(42), 'length', 'ft in')).toBe('-3 ft 6 in');
  });
});

describe('figures for the reader', () => {
  const us = show('us');
  const metric = show('metric');

  test('lengths, depths and diameters', () => {
    expect([us.length(52.578), metric.length(52.578)]).toEqual(['172 ft 6 in', '52.6 m']);
    expect([us.depth(feet(62)), metric.depth(feet(62))]).toEqual(['62 ft', '18.9 m']);
    expect([us.small(inches(18)), metric.small(inches(18))]).toEqual(['18 in', '46 cm']);
    expect([us.bore(0.0266446), metric.bore(0.0266446)]).toEqual(['1.05 in', '26.6 mm']);
  });

  test('flow, pressure, force and volume', () => {
    expect([us.flow(gpm(8)), metric.flow(gpm(8))]).toEqual(['8 gpm', '30 L/min']);
    expect([us.pressure(psi(60)), metric.pressure(psi(60))]).toEqual(['60 psi', '4.14 bar']);
    expect([us.force(738), metric.force(738)]).toEqual(['166 lb', '738 N']);
    // 738 N in standard gravity, 9.80665 m/s2 (NIST SP 811, B.8), weigh 75.26 kg.
    expect([us.hook(738), metric.hook(738), metric.hook(50)]).toEqual(['166 lb', '75 kg', '5.1 kg']);
    expect([us.volume(gallons(44)), metric.volume(gallons(44))]).toEqual(['44 gal', '167 L']);
    expect([us.velocity(1.13), metric.velocity(1.13)]).toEqual(['3.7 ft/s', '1.13 m/s']);
  });

  test('ratios, times and electricity are the same in both', () => {
    expect([us.percent(0.0525), us.time(4 * 3600), us.time(5400), us.voltage(230), us.current(10)]).toEqual([
      '5.3 %',
      '4 h',
      '90 min',
      '230 V',
      '10 A',
    ]);
  });

  test('nothing reads minus zero', () => {
    expect([us.depth(-1e-9), us.length(-1e-9), metric.depth(-0.001), metric.small(-1e-9)]).toEqual([
      '0 ft',
      '0 in',
      '0 m',
      '0 cm',
    ]);
  });
});

test('a wire is called by its gauge, and for readers of metric units by its copper too', () => {
  // Areas as printed in NFPA 70 (NEC), Chapter 9, Table 8: 2.08, 3.31, 5.26, 13.30 and 67.43 mm².
  const named = [14, 12, 10, 6, -1].map((gauge) => wireName(gauge, 'metric'));
  expect(named).toEqual([
    '14 AWG (2.1 mm²)',
    '12 AWG (3.3 mm²)',
    '10 AWG (5.3 mm²)',
    '6 AWG (13 mm²)',
    '2/0 AWG (67 mm²)',
  ]);
  expect([wireName(12, 'us'), wireName(0, 'us')]).toEqual(['12 AWG', '1/0 AWG']);
});

test('watts, and flows by the hour', () => {
  expect(parseQuantity('750 W', 'power')).toMatchObject({ ok: true, si: 750, unit: 'W' });
  expect(parseQuantity('0.75 kW', 'power')).toMatchObject({ ok: true, si: 750 });
  expect(si('480 gph', 'flow')).toBeCloseTo(si('8 gpm', 'flow'), 15);
  expect(si('1800 L/h', 'flow')).toBeCloseTo(si('30 L/min', 'flow'), 15);
  expect(si('0.5 L/s', 'flow')).toBeCloseTo(si('30 L/min', 'flow'), 15);
});
