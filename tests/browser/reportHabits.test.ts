/**
 * How reports write numbers. The habits are common practice, no source, but for the feet and inches, the fractions and the
 * units, which are those of the forms that drillers fill in.
 */
import { describe, expect, test } from 'vitest';
import { solve } from '../../src/model/solve.ts';
import { blankReport, withKept } from '../../src/app/start/reportDraft.ts';
import { linesOf, wouldChange } from '../../src/app/start/reportFromText.ts';
import { draftPlan } from '../../src/reading/draftPlan.ts';
import { readReport } from '../../src/reading/readReport.ts';
import { habitOf } from '../../src/app/start/reportHabits.ts';
import { planFromReport } from '../../src/app/start/reportPlan.ts';
import { planSoFar } from '../../src/app/start/reportSoFar.ts';
import type { MeasuredField, Report } from '../../src/app/start/report.ts';
import { stillToAsk } from '../../src/app/start/stillToAsk.ts';
import { sayQuestion } from '../../src/words/en/questions.ts';

const FOOT = 0.3048;
/** US gallon of 231 cubic inches a minute (NIST Handbook 44, appendix C) [m3/s]. */
const GPM = 3.785411784e-3 / 60;

function habit(field: MeasuredField, text: string, units: Report['units'] = 'us') {
  return habitOf({ ...blankReport(units), [field]: text }, field);
}

function factsOf(lines: Partial<Report>) {
  const read = planFromReport({ ...blankReport('us'), depth: '400', ...lines });
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  return solve(read.plan).facts;
}

describe('what means one thing is read', () => {
  test.each([
    ["45'6", 45.5],
    ['45 ft 6 in', 45.5],
    ['about 40', 40],
    ['approx. 40 ft', 40],
    ['~40', 40],
    ['40 ft below ground', 40],
    ['40 below grade', 40],
    ['40 bgl', 40],
    ['+3 ft above', -3],
    ['3 ft above ground level', -3],
    ['3 above', -3],
    ['at ground level', 0],
    ['surface', 0],
  ])('a static level of “%s” is %s ft', (staticLevel, feet) => {
    expect(factsOf({ staticLevel }).water.staticLevel).toBeCloseTo(feet * FOOT, 6);
  });

  test.each([
    ['300 gph', 5],
    ['>20', 20],
    ['20+', 20],
    ['at least 6 gpm', 6],
    ['about 12 gpm', 12],
  ])('a yield of “%s” is %s gpm', (testFlow, gpm) => {
    expect(factsOf({ test: 'yield only', testFlow }).well.yield).toBeCloseTo(gpm * GPM, 8);
  });

  test.each([
    ['1,200', 1200],
    ['1,200 ft', 1200],
    ['1,200.5', 1200.5],
  ])('a depth of “%s” is %s ft', (depth, feet) => {
    expect(factsOf({ depth }).well.depth).toBeCloseTo(feet * FOOT, 6);
  });

  test('a decimal comma stays one', () => {
    expect(habit('staticLevel', '12,5', 'metric')).toEqual({ text: '12,5' });
    expect(habit('staticLevel', '12,55', 'metric')).toEqual({ text: '12,55' });
  });

  test.each(['N/A', 'n.a.', 'unk', 'not given', '-', '?', ''])('“%s” says nothing', (text) => {
    expect(habit('staticLevel', text)).toEqual({ text: '' });
  });
});

describe('what can mean two things is asked back, and every answer reads', () => {
  const doubtful: readonly (readonly [MeasuredField, string, Report['units'], readonly string[]])[] = [
    ['staticLevel', '+3', 'us', ['3 ft', '-3 ft']],
    ['staticLevel', '40-45', 'us', ['40 ft', '45 ft']],
    ['staticLevel', '40 to 45 ft', 'us', ['40 ft', '45 ft']],
    ['staticLevel', 'flowing', 'us', ['-0.3 ft']],
    ['staticLevel', '1,200', 'metric', ['1200 m', '1.200 m']],
    ['staticLevel', '40 below top of casing', 'us', ['40 ft']],
    ['depth', '200-220', 'us', ['200 ft', '220 ft']],
    ['testFlow', '<1 gpm', 'us', ['0.5 gpm', 'unknown']],
    ['testFlow', 'less than 2', 'us', ['1 gpm', 'unknown']],
    ['testFlow', '300', 'us', ['300 gph', '300 gpm']],
    ['testFlow', '900', 'metric', ['900 L/h', '900 L/min']],
    ['testFlow', '5-6', 'us', ['5 gpm', '6 gpm']],
    ['casingSize', '160', 'us', ['160 mm', '160 in']],
    ['frostDepth', '4', 'us', ['4 ft', '4 in']],
  ];
  test.each(doubtful)('%s “%s” in %s', (field, text, units, answers) => {
    const report: Report = { ...blankReport(units), depth: '70', test: 'yield only', [field]: text };
    const asked = habitOf(report, field);
    expect('doubt' in asked ? asked.doubt.answers.map((each) => each.text) : asked).toEqual(answers);
    expect(planFromReport(report).ok).toBe(false);
    for (const answer of answers) {
      // An answer is not asked about again.
      expect(habitOf({ ...report, [field]: answer }, field)).not.toHaveProperty('doubt');
      if (answer === '160 in') continue;
      expect([answer, planFromReport({ ...report, [field]: answer }).ok]).toEqual([answer, true]);
    }
  });

  test('sizes with a fraction are no ranges', () => {
    expect(habit('casingSize', '6-5/8')).toEqual({ text: '6-5/8' });
    expect(habit('holeDiameter', '6-1/4')).toEqual({ text: '6-1/4' });
  });

  test('a line that another choice has hidden is not asked about', () => {
    const hidden = { ...blankReport('us'), depth: '70', pumpingLevel: '40-45', screenTop: '+3', adapterDepth: '4-5' };
    expect(planFromReport({ ...hidden, top: 'seal' }).ok).toBe(true);
  });
});

describe('as far as it can be drawn', () => {
  const report = { ...blankReport('us'), depth: '240', casingBottom: '60' };

  test('there is nothing before the depth', () => {
    expect(planSoFar(blankReport('us'))).toBeNull();
    expect(planSoFar({ ...report, depth: 'deep' })).toBeNull();
  });

  test('lines that cannot be read are left out, and named', () => {
    const soFar = planSoFar({ ...report, staticLevel: 'wet', frostDepth: '4', test: 'test', testFlow: 'some' });
    expect(soFar?.leftOut).toEqual(expect.arrayContaining(['staticLevel', 'frostDepth', 'testFlow']));
    expect(soFar?.plan.well.depth).toBe('240 ft');
    expect(soFar?.plan.site?.frostDepth).toBeUndefined();
    expect(soFar?.plan.water.staticLevel).toBe('unknown');
  });

  test('what can be read whole is the plan that will be drawn', () => {
    const whole = { ...report, staticLevel: '60', test: 'test', testFlow: '10', testDrawdown: '40' } as const;
    const read = planFromReport(whole);
    expect(planSoFar(whole)).toEqual({ plan: read.ok ? read.plan : null, leftOut: [] });
  });

  test('a choice without its number waits for it', () => {
    for (const test of ['test', 'level'] as const)
      expect(planSoFar({ ...report, test })?.plan.well.depth).toBe('240 ft');
  });
});

describe('what is still to ask', () => {
  const questions = (lines: Partial<Report>) =>
    stillToAsk({ ...blankReport('us'), ...lines }).map(({ question }) => question);

  test('goes away with its answer', () => {
    expect(questions({})).toContain('depth');
    expect(questions({ depth: '240' })).not.toContain('depth');
    expect(questions({ depth: 'N/A' })).toContain('depth');
    expect(questions({ test: 'yield only', testFlow: '5' })).toContain('pumped');
    expect(questions({ intake: 'screen' })).toContain('screen');
    expect(questions({ intake: 'screen', screenTop: '80', screenBottom: '90' })).not.toContain('screen');
    expect(questions({ casingSize: '6-5/8' })).toContain('casingInside');
    expect(questions({ casingSize: '6' })).not.toContain('casingInside');
  });

  test('each is a question, in the reader’s own length', () => {
    for (const { question } of stillToAsk(blankReport('us'))) {
      expect(sayQuestion(question, 'us')).toMatch(/\?/);
      expect(sayQuestion(question, 'metric')).not.toMatch(/feet/);
    }
  });

  test('each leads to a line that stays open until it is answered', () => {
    for (const { question, field } of stillToAsk(blankReport('us'))) {
      const again = stillToAsk(blankReport('us')).find((each) => each.question === question);
      expect(again?.field).toBe(field);
    }
  });
});

describe('a text that was read', () => {
  const TEXT = `Well depth 350 ft
Casing: 6 in steel +2 to 41 ft
0-12 clay
12-41 shale
41-350 granite
Water bearing zones: 120-121 ft 2 gpm
300-301 ft 6 gpm
Static level 60 ft
Yield 8 gpm by air
`;
  const read = readReport(TEXT);
  const lines = linesOf(read.units, read.readings, {});
  const report: Report = { ...blankReport('us'), ...lines };

  test('fills the lines, and what has no line stands beside them', () => {
    expect(report).toMatchObject({
      ...{ depth: '350 ft', casingSize: '6 in', casingMaterial: 'steel', casingBottom: '41 ft', staticLevel: '60 ft' },
      ...{ test: 'yield only', testFlow: '8 gpm', yieldFrom: 'air lift' },
    });
    expect(Object.keys(report.also).sort()).toEqual(['well.casing.height', 'well.inflows', 'well.layers']);
  });

  test('makes the plan that the command line makes', () => {
    const plan = planFromReport(report);
    const { title, ...rest } = plan.ok ? plan.plan : { title: '' };
    expect(title).toBe('My well');
    expect(rest).toEqual(draftPlan(read, read.readings));
  });

  test('what a line says counts before it, and what was left out is gone', () => {
    const typed = planFromReport({ ...report, inflow: '200', also: { 'well.layers': report.also['well.layers'] } });
    expect(typed.ok ? typed.plan.well.inflows : '').toEqual([{ depth: '200 ft' }]);
    expect(typed.ok ? typed.plan.well.casing : '').not.toHaveProperty('height');
  });

  test('what does not fit is named beside it, and the rest is drawn', () => {
    const upsideDown = {
      'well.layers': [
        { material: 'clay', bottom: '60 ft' },
        { material: 'sand', bottom: '20 ft' },
      ],
    };
    const odd = { ...blankReport('us'), depth: '200', also: upsideDown };
    const plan = planFromReport(odd);
    expect(plan.ok ? [] : Object.keys(plan.problems)).toEqual(['also']);
    expect(planSoFar(odd)).toMatchObject({ plan: { well: { depth: '200 ft' } }, leftOut: ['also'] });
  });

  test('what it leaves open is asked by the form, and drawn in neither way before', () => {
    const open = readReport('Well depth 200 ft\nStatic level 60-75 ft\nYield less than 1 gpm\n');
    const lines = linesOf('us', open.readings, {});
    expect(lines).toMatchObject({ staticLevel: '60-75 ft', testFlow: '<1 gpm' });
    const plan = planFromReport({ ...blankReport('us'), ...lines });
    expect(plan.ok ? [] : Object.keys(plan.problems).sort()).toEqual(['staticLevel', 'testFlow']);
    const plus = readReport('Well depth 200 ft\nStatic level +3 ft\n');
    expect(linesOf('us', plus.readings, {}).staticLevel).toBe('+3 ft');
  });

  test('says which typed lines it would change', () => {
    expect(wouldChange({ ...blankReport('us'), depth: '300' }, lines)).toEqual(['depth']);
    expect(wouldChange(blankReport('us'), lines)).toEqual([]);
  });

  test('is kept with the rest, and nothing else is taken from what was kept', () => {
    const kept = withKept(blankReport('us'), JSON.stringify(report));
    expect(kept).toEqual(report);
    const odd = {
      also: { 'well.layers': 'x', 'well.casings': [1], __proto__: 'y', 'house.tank': '1 gal', 'well.grout': null },
    };
    expect(withKept(blankReport('us'), JSON.stringify(odd)).also).toEqual({ 'well.layers': 'x' });
  });
});

describe('who says it', () => {
  test('levels read with a tape are measured, the hole stays the driller’s word', () => {
    const read = planFromReport({
      ...blankReport('us'),
      ...{ depth: '240', soundedDepth: '231', staticLevel: '60', saidBy: 'measured', date: '2026-05-04' },
    });
    expect(read.ok ? read.plan.status : read.problems).toEqual({
      'well.depth': 'reported',
      'water.staticLevel': 'measured',
      'well.soundedDepth': 'measured',
    });
    expect(read.ok ? read.plan.well.tested : '').toBe('2026-05-04');
  });

  test('a way out that stands alone is not moved, and a pump that is planned may be', () => {
    const read = planFromReport({
      ...blankReport('us'),
      ...{ depth: '240', hanging: 'top', top: 'pitless', adapterDepth: '60', pumpSetting: '200' },
    });
    expect(read.ok ? read.plan.status : read.problems).toEqual({ 'well.depth': 'reported', top: 'installed' });
  });

  test('an old pipe is installed with the pump, and none is written where none hangs', () => {
    const old = { ...blankReport('us'), depth: '240', oldPipe: 'galvanized steel', oldPipeSize: '1-1/4' } as const;
    const hangs = planFromReport({ ...old, hanging: 'pump' });
    expect(hangs.ok ? hangs.plan.dropPipe : hangs.problems).toEqual({ material: 'galvanized steel', size: '1-1/4 in' });
    expect(hangs.ok ? hangs.plan.status?.['dropPipe'] : '').toBe('installed');
    const none = planFromReport({ ...old, hanging: 'nothing' });
    expect(none.ok ? none.plan : none.problems).not.toHaveProperty('dropPipe');
  });

  test('house and supply are kept as they were said', () => {
    const read = planFromReport({
      ...blankReport('us'),
      ...{ depth: '240', people: '4', tank: '44', wireRun: '150', voltage: '230 V', phase: '1', wires: '2' },
    });
    expect(read.ok ? read.plan : read.problems).toMatchObject({
      house: { people: 4, tank: '44 gal' },
      wire: { run: '150 ft' },
      pump: { voltage: '230 V', phase: 1, wires: 2 },
    });
  });
});
