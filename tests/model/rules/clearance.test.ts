import { describe, expect, test } from 'vitest';
import { readFacts } from '../../../src/model/plan/readFacts.ts';
import { mostThatPasses } from '../../../src/model/rules/clearance.ts';
import { inches, toFeet } from '../../../src/model/units.ts';
import { changed, judged, saidOf, solvedPlan } from './fixture.ts';

const bare = { 'pump.shroudDiameter': undefined };
const bandOf = (changes: Parameters<typeof judged>[0]) =>
  judged(changes).bands.find(({ setting }) => setting === 'pump.setting')!;

describe('the band of a 3.9 in pump', () => {
  test('went on into a hole that is narrower still than a casing which it hardly passes', () => {
    // 0.2 in free in the casing, 0.05 in the hole from 60 ft on; the motor hangs 1.5 ft under the intake.
    const band = bandOf({
      ...bare,
      'well.casing.insideDiameter': '4.1 in',
      'well.intake.diameter': '3.95 in',
      'water.staticLevel': '10 ft',
      'water.pumping.level': '20 ft',
    });
    expect([band.toEnd.rule, toFeet(band.to!)]).toEqual(['PR-17', expect.closeTo(58, 6)]);
  });

  test('ends above a narrow liner under a wide casing', () => {
    const band = bandOf({
      ...bare,
      'well.casing': undefined,
      'well.casings': [
        { material: 'PVC', size: '6 in', bottom: '60 ft', height: '12 in' },
        { material: 'PVC', insideDiameter: '4 in', top: '120 ft', bottom: '200 ft' },
      ],
      'well.intake.diameter': '5.5 in',
    });
    expect([band.toEnd.rule, toFeet(band.to!)]).toEqual(['PR-17', expect.closeTo(118, 6)]);
  });

  test('is not ended by what is as tight from the top', () => {
    const band = bandOf({ ...bare, 'well.casing.insideDiameter': '4.1 in', 'well.intake.diameter': '4.1 in' });
    expect(band.toEnd.rule).not.toBe('PR-17');
  });
});

test('the widest pump that passes leaves a quarter inch in the narrowest bore on its way, if any is known', () => {
  const most = (changes: Parameters<typeof judged>[0]) => mostThatPasses(solvedPlan(changed(changes)));
  expect(most({ 'well.casing.insideDiameter': '5 in', 'well.intake.diameter': '4.5 in' })).toBeCloseTo(inches(4.25), 9);
  const inCasing = { 'well.casing.insideDiameter': '5 in', 'well.intake.diameter': '4.5 in', 'pump.setting': '58 ft' };
  expect(most(inCasing)).toBeCloseTo(inches(4.75), 9);
  expect(most({ 'well.casing.size': undefined, 'well.intake.diameter': undefined })).toBeNull();
});

test('the title names what is tight: the hole, not the casing above it', () => {
  expect(saidOf('PR-17', { ...bare, 'well.intake.diameter': '3.99 in' }).title).toBe(
    'The pump is too wide for the hole',
  );
  expect(saidOf('PR-17', { ...bare, 'well.casing.insideDiameter': '3.99 in' }).title).toBe(
    'The pump is too wide for the casing',
  );
});

test('a hole of unknown width was taken for as wide as the casing', () => {
  const { verdicts, notJudged } = judged({ 'well.intake.diameter': undefined });
  expect(verdicts['PR-17']).toBe('not judged');
  expect(notJudged.find(({ rule }) => rule === 'PR-17')?.fields).toContain('well.intake.diameter');
});

describe('a flow sleeve', () => {
  const sleeve = (wall: string | undefined) => ({ 'pump.shroudDiameter': '4.1 in', 'pump.shroudWall': wall });

  test('has to pass with its outside, not with its bore', () => {
    // 4.1 in inside and a quarter inch of wall on each side are 4.6 in; 5 in of casing less half an inch of adapter are 4.5.
    const inside = { 'well.casing.insideDiameter': '5 in' };
    expect(judged({ ...inside, ...sleeve('1/4 in') }).verdicts['PR-21']).toBe('danger');
    expect(judged({ ...inside, ...sleeve('1/32 in') }).verdicts['PR-21']).toBe('ok');
    expect(judged({ 'well.casing.insideDiameter': '4.65 in', ...sleeve('1/4 in') }).verdicts['PR-17']).toBe('danger');
  });

  test('of which nobody said the wall is taken to be cut from pipe, and the verdicts say so', () => {
    const assumed = judged(sleeve(undefined));
    for (const rule of ['PR-17', 'PR-21'])
      expect([...assumed.holding, ...assumed.findings].find((each) => each.rule === rule)?.assumed).toContain(
        'pump.shroudWall',
      );
    const said = judged(sleeve('1/4 in'));
    for (const rule of ['PR-17', 'PR-21'])
      expect([...said.holding, ...said.findings].find((each) => each.rule === rule)?.assumed).not.toContain(
        'pump.shroudWall',
      );
  });

  // ASTM D1785, table of schedule 40: least wall 0.237 in at 4 in and 0.258 in at 5 in.
  test('of which nobody said the wall is as thick as schedule 40 pipe of 4 and 5 in', () => {
    const { pump } = readFacts(changed(sleeve(undefined))).facts;
    expect(Math.abs(pump.shroudWall - inches(0.237))).toBeLessThan(inches(0.02));
    expect(Math.abs(pump.shroudWall - inches(0.258))).toBeLessThan(inches(0.02));
    expect(readFacts(changed({ units: 'metric', ...sleeve(undefined) })).facts.pump.shroudWall).toBeCloseTo(0.006, 9);
  });

  test('is drawn as wide as it is outside and cools by its bore', () => {
    const thick = solvedPlan(changed(sleeve('1/4 in')));
    const thin = solvedPlan(changed(sleeve('1/16 in')));
    const part = thick.parts.find(({ kind }) => kind === 'shroud')!;
    expect(part.radius * 2).toBeCloseTo(inches(4.6), 9);
    expect(part.insideRadius! * 2).toBeCloseTo(inches(4.1), 9);
    expect(thick.values.velocityPastMotor).toBe(thin.values.velocityPastMotor);
  });
});

describe('what is widest is named', () => {
  const inSleeve = { 'pump.shroudDiameter': '4 in', 'pump.shroudWall': '1/4 in', 'pump.diameter': '3.9 in' };
  test('a flow sleeve that does not pass, and not the pump in it', () => {
    const said = saidOf('PR-17', { ...inSleeve, 'well.casing.insideDiameter': '4.4 in' });
    expect(said.title).toBe('The flow sleeve is too wide for the casing');
    expect(said.message).toBe('The casing is 4.4 in wide inside, the flow sleeve 4.5 in.');
  });
  test('a bare pump over its cable guard', () => {
    const said = saidOf('PR-17', { ...bare, 'well.casing.insideDiameter': '3.95 in' });
    expect(said.title).toBe('The pump is too wide for the casing');
    expect(said.message).toMatch(/the pump 3\.9 in over its cable guard\.$/);
  });
  test('beside the adapter too', () => {
    const beside = { 'well.casing.insideDiameter': '5 in', 'top.protrusion': '0.75 in' };
    expect(saidOf('PR-21', { ...inSleeve, ...beside }).message).toMatch(/; the flow sleeve is 4\.5 in wide\.$/);
    const narrow = { ...beside, 'well.casing.insideDiameter': '4.5 in' };
    expect(saidOf('PR-21', { ...bare, ...narrow }).message).toMatch(/; the pump is 3\.9 in wide over its guard\.$/);
  });
});
