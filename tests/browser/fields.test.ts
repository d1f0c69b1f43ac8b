import { describe, expect, test } from 'vitest';
import {
  ABOUT,
  lengthOfList,
  SECTIONS,
  startOfItem,
  startOfKind,
  startOfPart,
  type Block,
} from '../../src/app/form/layout.ts';
import { textOf, valueOf } from '../../src/app/form/typedValue.ts';
import { planFromReport, type Report } from '../../src/app/start/reportPlan.ts';
import { fieldAt, fields } from '../../src/model/plan/fields.ts';
import { valueAt, withValue } from '../../src/model/plan/editPlan.ts';
import { readPlan } from '../../src/model/plan/readPlan.ts';
import type { Plan } from '../../src/model/plan/schema.ts';
import { solve } from '../../src/model/solve.ts';
import rock from '../../static/samples/tamarack-ridge.json';

const reading = readPlan(rock);
if (!reading.ok) throw new Error('the sample does not read');
const plan: Plan = reading.plan;

function field(path: string) {
  const found = fieldAt(path);
  if (found === null) throw new Error(`no field ${path}`);
  return found;
}

function pathsOf(block: Block): readonly string[] {
  if (block.kind === 'field') return [block.field.path];
  return block.kind === 'list' ? block.fields.map(({ path }) => path) : block.leaves.flatMap(pathsOf);
}

describe('the record', () => {
  test('asks for every field of the plan but those that are set elsewhere', () => {
    const asked = new Set([
      ...ABOUT.map(({ path }) => path),
      ...SECTIONS.flatMap(({ blocks }) => blocks.flatMap(pathsOf)),
    ]);
    const left = fields
      .map(({ path }) => path)
      .filter((path) => !asked.has(path) && !path.startsWith('house.branches'));
    // The screen's short form is asked for as a list; format and units are no questions.
    expect(left).toEqual(['format', 'units', 'well.intake.top', 'well.intake.bottom']);
  });

  test('every list takes a new item that reads', () => {
    for (const path of [
      'well.casings',
      'well.intake.screens',
      'well.inflows',
      'well.layers',
      'string.checkValves',
      'string.splices',
    ]) {
      const added = withValue(plan, `${path}.${lengthOfList(path, plan)}`, startOfItem(path, plan));
      expect(readPlan(added), path).toMatchObject({ ok: true });
      expect(lengthOfList(path, added)).toBe(lengthOfList(path, plan) + 1);
    }
  });

  test('every part that may be left out reads when it is added', () => {
    for (const path of ['well.grout', 'water.pumping', 'house.line', 'rope']) {
      const without = withValue(plan, path, undefined);
      expect(readPlan(without), path).toMatchObject({ ok: true });
      expect(readPlan(withValue(without, path, startOfPart(path, plan))), path).toMatchObject({ ok: true });
    }
  });

  test('every kind of test, top and curve reads when it is chosen', () => {
    for (const path of ['water.pumping', 'top', 'pump.curve']) {
      for (const kind of field(`${path}.kind`).options ?? []) {
        expect(readPlan(withValue(plan, path, startOfKind(path, String(kind), plan))), `${path} ${kind}`).toMatchObject(
          { ok: true },
        );
      }
    }
  });
});

describe('a typed value', () => {
  test('keeps its own unit and its own way of writing', () => {
    expect(valueOf(field('pump.setting'), '171\' 6"', '180 ft')).toBe('171\' 6"');
  });

  test('takes the unit of what stood there when it is a bare number', () => {
    expect(valueOf(field('pump.setting'), '171', '180 ft')).toBe('171 ft');
    expect(valueOf(field('pump.setting'), '52.3', '54.9 m')).toBe('52.3 m');
  });

  test('is never given a unit where none stood', () => {
    expect(valueOf(field('house.rise'), '8', undefined)).toBe('8');
  });

  test('is unknown when it is empty and may be, and gone when it is optional', () => {
    expect(valueOf(field('water.staticLevel'), ' ', '62 ft')).toBe('unknown');
    expect(valueOf(field('site.frostDepth'), '', '48 in')).toBeUndefined();
    expect(textOf('unknown')).toBe('');
  });
});

describe('a driller’s report', () => {
  const empty: Report = {
    title: '',
    units: 'us',
    depthsFrom: 'ground',
    depth: '',
    casingMaterial: 'steel',
    casingSize: '6',
    casingBottom: '',
    intake: 'open hole',
    screenTop: '',
    screenBottom: '',
    staticLevel: '',
    test: 'unknown',
    testFlow: '',
    testDrawdown: '',
    testHours: '',
    pumpingLevel: '',
    demand: '',
    frostDepth: '',
    pumpSetting: '',
    distance: '',
    rise: '',
    power: '',
  };

  test('with the depth alone makes a plan in which the rest is unknown', () => {
    const report = planFromReport({ ...empty, depth: '240' });
    if (!report.ok) throw new Error(JSON.stringify(report.problems));
    expect(valueAt(report.plan, 'well.depth')).toBe('240 ft');
    expect(valueAt(report.plan, 'water.staticLevel')).toBe('unknown');
    expect(solve(report.plan).values.pumpingWaterLevel).toBeNull();
  });

  test('in metres keeps metres', () => {
    const report = planFromReport({ ...empty, units: 'metric', depth: '73', staticLevel: '12,5', frostDepth: '0.9' });
    if (!report.ok) throw new Error(JSON.stringify(report.problems));
    expect(valueAt(report.plan, 'water.staticLevel')).toBe('12,5 m');
    expect(solve(report.plan).values.pitlessBelowFrost).toBeGreaterThan(0);
  });

  test('says beside each line what is wrong with it', () => {
    const report = planFromReport({
      ...empty,
      depth: 'deep',
      staticLevel: '60 gpm',
      test: 'test',
      testFlow: '10',
      testDrawdown: '30',
    });
    expect(report.ok).toBe(false);
    if (!report.ok) expect(Object.keys(report.problems).sort()).toEqual(['depth', 'staticLevel']);
  });

  test.each(['test', 'level', 'yield only', 'unknown'] as const)('tested by "%s" reads', (test) => {
    const report = planFromReport({
      ...empty,
      depth: '240',
      staticLevel: '60',
      test,
      testFlow: '10',
      testDrawdown: '40',
      pumpingLevel: '100',
    });
    expect(report).toMatchObject({ ok: true });
  });

  test('with a screen reads', () => {
    const report = planFromReport({
      ...empty,
      depth: '120',
      casingBottom: '100',
      intake: 'screen',
      screenTop: '100',
      screenBottom: '115',
    });
    expect(report).toMatchObject({ ok: true });
  });
});
