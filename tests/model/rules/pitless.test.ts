import { describe, expect, test } from 'vitest';
import { mostPastAdapter } from '../../../src/model/rules/pitless.ts';
import { inches, show, toInches } from '../../../src/model/units.ts';
import { en } from '../../../src/words/en/index.ts';
import { sayHolding } from '../../../src/words/sayJudgement.ts';
import type { Changes } from './fixture.ts';
import { changed, findingOf, fixOf, judged, saidOf, solvedPlan } from './fixture.ts';

function heldText(rule: string, changes: Changes): string {
  const held = judged(changes).holding.find((each) => each.rule === rule);
  return held === undefined ? '' : sayHolding(held, en, show('us')).message;
}

const climateOnly = { 'site.frostDepth': undefined, 'site.freezing': { station: 'Escalante' } };

describe('the frost that an adapter is below', () => {
  test.each([
    [undefined, 'meets the depth you entered'],
    ['local code', 'meets the local code’s depth'],
    ['adviser', 'meets the depth an adviser named'],
    ['estimate', 'meets an estimated depth'],
  ])('said by %s: %s', (frostFrom, text) => {
    expect(heldText('PR-19', { 'site.frostFrom': frostFrom })).toContain(text);
  });

  test('that the program estimated is not the depth that anybody entered', () => {
    const text = heldText('PR-19', climateOnly);
    expect(text).not.toContain('entered');
    expect(text).toContain('estimated');
  });
});

describe('where only the climate is said', () => {
  test('the verdict turns at the outlet less the margin, and says which field decides', () => {
    const finding = findingOf('PR-19', { ...climateOnly, 'top.depth': '40 in' });
    expect(finding.severity).toBe('warning');
    expect(finding.turn?.field).toBe('site.frostDepth');
    expect(toInches(finding.turn!.at)).toBeCloseTo(34, 6);
  });

  test('lowering goes below the deepest that the climate allows', () => {
    const { changes } = fixOf('PR-19', { ...climateOnly, 'top.depth': '40 in' });
    expect(judged({ ...climateOnly, 'top.depth': changes?.[0]?.to }).verdicts['PR-19']).toBe('ok');
  });
});

test('a level at rest is not called the highest', () => {
  expect(heldText('PR-20', {})).toContain('today');
  expect(heldText('PR-20', { 'water.staticHighest': '35 ft' })).toContain('at its highest');
});

test('an adapter deep below the frost is not moved up to dig less', () => {
  for (const { rule } of judged({ 'top.depth': '10 ft' }).findings) expect(rule).not.toMatch(/PR-19|PR-64/);
  expect(fixOf('PR-64', { 'top.depth': '20 ft' }).changes).toBeNull();
});

describe('an adapter of unknown reach', () => {
  test('was never judged: in a 4 in casing a 3.9 in pump passes none', () => {
    const slim = { 'pump.shroudDiameter': undefined, 'well.casing.insideDiameter': '4.072 in' };
    expect(judged({ ...slim, 'top.protrusion': undefined }).verdicts['PR-21']).toBe('danger');
  });

  test('where not even the shortest leaves room, to measure it is no help', () => {
    const slim = { 'pump.shroudDiameter': undefined, 'well.casing.insideDiameter': '4.072 in' };
    const unsaid = { ...slim, 'top.protrusion': undefined };
    expect(saidOf('PR-21', unsaid).message).toMatch(/^Even an adapter of 0\.5 in reach leaves 3\.57 in free/);
    expect(fixOf('PR-21', unsaid).words).toContain('Choose a slimmer pump');
    const some = { 'top.protrusion': undefined, 'well.casing.insideDiameter': '5.2 in' };
    expect(fixOf('PR-21', some).words).toContain('Measure how far the adapter stands');
  });

  test('turns where a quarter inch is left', () => {
    const { turn } = findingOf('PR-21', { 'top.protrusion': undefined, 'well.casing.insideDiameter': '5.2 in' });
    // 5.2 less the shroud of 4.2 and 0.25.
    expect(turn?.field).toBe('top.protrusion');
    expect(turn?.at).toBeCloseTo(inches(0.75), 9);
  });

  test('in a casing of unknown bore is not judged', () => {
    const unknown = { 'well.casing': { material: 'PVC', bottom: '60 ft', height: '12 in' } };
    expect(judged(unknown).verdicts['PR-21']).toBe('not judged');
  });
});

test('feet typed for inches are asked back in the units of the plan', () => {
  expect(saidOf('PR-64', { 'top.depth': '25 ft' }).message).toContain('feet typed for inches');
  expect(saidOf('PR-64', { units: 'metric', 'top.depth': '25 ft' }).message).toContain('metres typed for centimetres');
});

test('what holds after one reading says that it holds today', () => {
  expect(heldText('PR-20', { 'water.staticHighest': undefined })).toMatch(
    / today; how high it rises in a wet season is not known\.$/,
  );
  expect(heldText('PR-20', { 'water.staticHighest': '12 ft' })).not.toMatch(/today|not known/);
  const unsaid = { 'water.staticLowest': undefined, 'water.dryFall': undefined, 'pump.lowLevelCutOff': undefined };
  expect(heldText('PR-02', unsaid)).toMatch(/ today; how low it stands in a dry season is not known\.$/);
  expect(heldText('PR-02', { ...unsaid, 'water.dryFall': '1 ft' })).not.toMatch(/today|not known/);
});

test('the widest pump that passes the adapter leaves a quarter inch beside it, or beside the least one that there is', () => {
  const most = (changes: Changes) =>
    mostPastAdapter(solvedPlan(changed({ 'well.casing.insideDiameter': '5 in', ...changes })));
  expect(most({ 'top.protrusion': '1 in' })).toBeCloseTo(inches(3.75), 9);
  // Adapters stand half an inch to an inch and a quarter into their casing: common practice, no source.
  expect(most({ 'top.protrusion': undefined })).toBeCloseTo(inches(4.25), 9);
});

test('nothing says it under a seal, or in a casing of unknown width', () => {
  const most = (changes: Changes) => mostPastAdapter(solvedPlan(changed(changes)));
  expect(most({ top: { kind: 'seal' } })).toBeNull();
  expect(most({ 'well.casing.size': undefined })).toBeNull();
});
