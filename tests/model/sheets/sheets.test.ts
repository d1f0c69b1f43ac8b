/** Laws that every sheet of every plan keeps. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { allSheets, sheetsOf } from '../../../src/model/sheets/index.ts';
import type { Sheet, SheetFigure } from '../../../src/model/sheets/index.ts';
import { solve } from '../../../src/model/solve.ts';
import { anyPlan } from '../../plans/anyPlan.ts';
import { planOf, rockWell, sample, SAMPLES } from '../../plans/build.ts';
import { lastDigit, redo } from './redo.ts';

const SEED = 20_261_125;
const SYSTEMS = ['us', 'metric'] as const;
const FORBIDDEN = /\bsafe\b|will not freeze|undefined|NaN|Infinity|\[object/i;

/** Empirical formulas in units of their own. */
const OWN_UNITS = new Set(['vortexSubmergence', 'conductivity', 'insulationFloor', 'groundWire', 'quickDepth']);

function checkFigure(each: SheetFigure, where: string): void {
  const opened = each.explanation();
  expect(opened.name, where).toBe(each.key);
  expect(each.title.length, where).toBeGreaterThan(3);
  expect(opened.formula, where).toContain(' = ');
  expect(opened.source.length, where).toBeGreaterThan(3);
  expect(opened.range.holds.length, where).toBeGreaterThan(5);
  expect(JSON.stringify([each, opened]), where).not.toMatch(FORBIDDEN);
  if (each.value === null) {
    expect(each.text, where).toBe('not known');
    expect(each.unknown.length, `${where} does not say what is missing`).toBeGreaterThan(0);
    expect(opened.worked, where).toBeNull();
  } else {
    expect(Number.isFinite(each.value), where).toBe(true);
    expect(each.unknown, where).toEqual([]);
    expect(each.text, where).not.toBe('not known');
    expect(opened.result, where).toBe(each.text);
    expect(opened.worked, where).not.toMatch(/not known/);
    const found = redo(opened.worked!, where);
    // A text in words ("about 12", "15 an hour") belongs to a sum in the units of its formula.
    if (/^[−\d][\d.]*( \S+)?$/.test(each.text) && !OWN_UNITS.has(each.key)) {
      const off = Math.abs(found.value - each.value);
      expect(off, where).toBeLessThanOrEqual(
        found.error + 2 * lastDigit(each.text, each.value) + 1e-6 * Math.abs(each.value) + 1e-9,
      );
    }
  }
}

function checkSheet(sheet: Sheet): void {
  expect(new Set(sheet.figures.map(({ key }) => key)).size, sheet.key).toBe(sheet.figures.length);
  for (const each of sheet.figures) checkFigure(each, `${sheet.key}: ${each.key}`);
  for (const table of sheet.tables) {
    for (const { cells, numbers } of table.rows) {
      expect(cells.length, `${sheet.key}: ${table.key}`).toBe(table.columns.length);
      expect(numbers.length).toBe(cells.length);
      for (const number of numbers)
        expect(number === null || Number.isFinite(number), `${sheet.key}: ${table.key}`).toBe(true);
    }
    expect(JSON.stringify(table), table.key).not.toMatch(FORBIDDEN);
  }
  expect(JSON.stringify([sheet.notes, sheet.cautions])).not.toMatch(FORBIDDEN);
  expect(sheet.cautions.length, sheet.key).toBeGreaterThan(0);
}

test.each(SAMPLES)('every figure of %s opens into a sum that is true, in both systems of units', (name) => {
  const solution = solve(planOf(sample(name)));
  for (const units of SYSTEMS) sheetsOf(solution, units).forEach(checkSheet);
});

/** What only sheets read: who lives there, what is bred, where it freezes, and what the rope is. */
const extras = fc.record({
  people: fc.option(fc.integer({ min: 0, max: 12 }), { nil: undefined }),
  fixtures: fc.option(
    fc.dictionary(fc.constantFrom('shower', 'toilets', 'hose bibb', 'sauna', 'bedrooms', 'full bath'), fc.nat(20)),
    { nil: undefined },
  ),
  stock: fc.option(fc.dictionary(fc.constantFrom('horses', 'llama', 'chickens'), fc.nat(200)), { nil: undefined }),
  irrigation: fc.option(fc.constantFrom('1 gpm', '40 gpm'), { nil: undefined }),
  kind: fc.constantFrom('pressure tank', 'open tank'),
  control: fc.constantFrom('switch', 'variable speed'),
  cutIn: fc.constantFrom('40 psi', '1 psi', '59 psi'),
  precharge: fc.constantFrom('38 psi', '55 psi', '0 psi'),
  branches: fc.option(fc.constantFrom([{}], [{ name: 'barn', demand: '9 gpm', distance: '900 ft', rise: '200 ft' }]), {
    nil: undefined,
  }),
  freezing: fc.option(
    fc.constantFrom(
      { station: 'Duluth' },
      { station: 'nowhere' },
      { index: '900 degC d' },
      { station: 'Minneapolis', index: '0 degC d', soil: 'peat', surface: 'trees' },
    ),
    { nil: undefined },
  ),
  altitude: fc.constantFrom('0 ft', '5000 ft'),
  waterTemperature: fc.constantFrom('32 degF', '50 degF', '120 degF'),
  ropes: fc.option(
    fc.constantFrom(
      { material: 'polypropylene', diameter: '1/4 in' },
      { material: 'hemp', diameter: '1 in' },
      { material: 'polyester', breakingStrength: '1 lbf' },
    ),
    { nil: undefined },
  ),
});

test('any plan gives every sheet without a throw, and says what is missing', () => {
  fc.assert(
    fc.property(anyPlan, extras, fc.constantFrom(...SYSTEMS), (plan, extra, units) => {
      const { freezing, altitude, waterTemperature, ropes, ...house } = extra;
      const said = (object: object) =>
        Object.fromEntries(Object.entries(object).filter(([, value]) => value !== undefined));
      const whole = planOf({
        ...plan,
        site: said({ ...plan.site, freezing, altitude, waterTemperature }),
        house: said({ ...plan.house, ...house }),
        ...(ropes === undefined ? {} : { rope: ropes }),
      });
      const sheets = sheetsOf(solve(whole), units);
      expect(sheets.map(({ key }) => key)).toEqual(allSheets.map(({ key }) => key));
      sheets.forEach(checkSheet);
    }),
    { seed: SEED, numRuns: 120 },
  );
});

test('figures are SI and the same whatever units the reader chose', () => {
  const solution = solve(rockWell());
  const [us, metric] = SYSTEMS.map((units) => sheetsOf(solution, units));
  us!.forEach((sheet, i) => {
    const other = metric![i]!;
    sheet.figures.forEach((each, j) => {
      // A hundred feet are not a hundred metres.
      if (!/Friction(Darcy|HazenWilliams)$/.test(each.key)) expect(other.figures[j]!.value, each.key).toBe(each.value);
    });
  });
});
