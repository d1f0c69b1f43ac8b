import { describe, expect, test } from 'vitest';
import { placeForMe } from '../../../src/model/place/placeForMe.ts';
import { show, solve, withValue } from '../../../src/model/index.ts';
import { en } from '../../../src/words/en/index.ts';
import { sayClash, sayNotPlaced, sayWhyLeft, sayWhyPlaced } from '../../../src/words/sayPlacement.ts';
import { SAMPLES, planOf, rockWell, sample } from '../../plans/build.ts';

const readable = (json: unknown) => planOf(JSON.parse(JSON.stringify(json)));
const US = show('us');
const at = (changes: ReturnType<typeof placeForMe>['changes'], path: string) =>
  changes.find((change) => change.path === path);
const said = (left: ReturnType<typeof placeForMe>['left'], path: string) =>
  sayWhyLeft(left.find((each) => each.path === path)!.why, en, US);

describe('a rock well with its parts in the wrong places', () => {
  const wrong = [
    ['top.depth', '2 ft'],
    ['pump.setting', '195 ft'],
    ['string.checkValves', []],
    ['wire.size', '14 AWG'],
  ].reduce((plan, [path, to]) => withValue(plan, path as string, to), rockWell());
  const { plan, changes, remaining } = placeForMe(wrong);
  test('the adapter goes to the margin below frost and the pump to its least submergence', () => {
    expect(at(changes, 'top.depth')).toMatchObject({ from: '2 ft', to: '3.5 ft', rule: 'PR-19' });
    // 40 ft of static level, 42 ft of drawdown at 7 gpm and 10 ft of water over the intake.
    expect(at(changes, 'pump.setting')).toMatchObject({ from: '195 ft', to: '92 ft', rule: 'PR-02' });
  });
  test('valve and wire follow the rules’ own fixes, each with its reason', () => {
    expect(at(changes, 'string.checkValves')?.rule).toBe('PR-09');
    for (const { why } of changes) expect(sayWhyPlaced(why, en, US)).toMatch(/\.$/);
  });
  test('no danger is left', () => {
    expect(remaining.filter(({ severity }) => severity === 'danger')).toEqual([]);
    expect(remaining).toMatchObject(solve(plan).findings);
  });
});

test('what was reported or stands installed is left and said', () => {
  const plan = readable({
    ...rockWell(),
    status: { 'pump.setting': 'installed' },
    pump: { setting: '195 ft', power: '1 hp', curve: { kind: 'generic', flow: '10 gpm' } },
  });
  const { plan: after, left } = placeForMe(plan);
  expect(after.pump.setting).toBe('195 ft');
  expect(left.map(({ path }) => path)).toEqual(['pump.setting']);
  expect(left.map(({ why }) => sayWhyLeft(why, en, US))).toEqual(['It stands installed.']);
});

// Common practice, no source: in a low-yield well the pump hangs deep, for storage.
test('in a well that gives little the pump goes as deep as the rules allow', () => {
  const well = {
    depth: '300 ft',
    casing: { material: 'steel', size: '6 in', bottom: '40 ft', height: '12 in' },
    intake: { kind: 'open hole', diameter: '6 in' },
    yield: '1 gpm',
    yieldFrom: 'pump',
  };
  const { changes } = placeForMe(
    rockWell({ well, water: { staticLevel: '40 ft', pumping: { kind: 'level', level: '90 ft', flow: '7 gpm' } } }),
  );
  expect(at(changes, 'pump.setting')).toMatchObject({ to: '288 ft', rule: 'PR-01' });
});

test('where frost and water exclude each other the rules are named, and what would have to change', () => {
  const { clashes } = placeForMe(
    rockWell({ water: { staticLevel: '38 in', pumping: { kind: 'test', flow: '10 gpm', drawdown: '60 ft' } } }),
  );
  expect(clashes.map(({ rules }) => rules)).toEqual([['PR-19', 'PR-20']]);
  const said = sayClash(clashes[0]!, en, US);
  expect(said.words).toMatch(/pitless adapter/);
  expect(said.wayOut).toMatch(/under water/);
});

describe('a well with a short screen', () => {
  const well = {
    depth: '100 ft',
    casing: { material: 'steel', size: '6 in', bottom: '94 ft', height: '12 in' },
    intake: { kind: 'screen', diameter: '6 in', top: '94 ft', bottom: '98 ft' },
  };
  const withLevel = (level: string) =>
    rockWell({ well, water: { staticLevel: '40 ft', pumping: { kind: 'level', level, flow: '7 gpm' } } });

  test('takes the pump between the water and the screen', () => {
    expect(at(placeForMe(withLevel('60 ft')).changes, 'pump.setting')).toMatchObject({ to: '70 ft', rule: 'PR-02' });
  });

  // 10 ft under a level of 85 ft is 95 ft; the motor's lower end, 1.5 ft under the intake, must stay above 94 ft.
  test('that water falls too near to leaves no place, and both rules are named with what is missing between them', () => {
    const { clashes, remaining } = placeForMe(withLevel('85 ft'));
    expect(clashes.map(({ rules }) => rules)).toEqual([['PR-02', 'PR-03']]);
    const said = sayClash(clashes[0]!, en, US);
    expect(said.words).toMatch(/They miss each other by 30 in\.$/);
    expect(said.wayOut).toMatch(/^Water that falls 30 in less while pumping: a smaller flow/);
    const { notPlaced } = remaining.find(({ rule }) => rule === 'PR-03')!;
    expect(notPlaced.fix?.changes).toBeNull();
    expect(sayNotPlaced('PR-03', notPlaced, en, US)).toBe(
      'No depth meets both: 10 ft under the pumping level, and motor above the screen.',
    );
  });
});

// Common practice, no source: a low-yield well is drawn down on purpose to a cut-off above the intake.
test('a poor well that no depth suits is drawn down to a cut-off over the deepest setting', () => {
  const well = {
    depth: '300 ft',
    casing: { material: 'steel', size: '6 in', bottom: '40 ft', height: '12 in' },
    intake: { kind: 'open hole', diameter: '6 in' },
    yield: '1 gpm',
    yieldFrom: 'pump',
  };
  const { plan, changes, clashes } = placeForMe(
    rockWell({ well, water: { staticLevel: '40 ft', pumping: { kind: 'test', flow: '1 gpm', drawdown: '100 ft' } } }),
  );
  expect(at(changes, 'pump.setting')?.to).toBe('288 ft');
  expect(at(changes, 'pump.lowLevelCutOff')?.to).toBe('286 ft');
  expect(clashes).toEqual([]);
  expect(solve(plan).verdicts['PR-02']).toBe('ok');
});

test('a cut-off follows the pump of a poor well down, so that what is stored can be used', () => {
  const { changes } = placeForMe(planOf(sample('slate-hollow')));
  // 831 ft as sounded, 10 ft off the bottom, a motor that ends 2.5 ft under its intake: 818 ft; 2 ft above it the probe.
  expect(at(changes, 'pump.setting')?.to).toBe('818 ft');
  expect(at(changes, 'pump.lowLevelCutOff')).toMatchObject({ from: '770 ft', to: '816 ft' });
});

test('without a drawdown no shallow place is known, so the pump stays', () => {
  const { left, plan } = placeForMe(rockWell({ water: { staticLevel: '40 ft', pumping: { kind: 'yield only' } } }));
  expect(plan.pump.setting).toBe('140 ft');
  expect(said(left, 'pump.setting')).toBe('Nobody said the pumping level: a test with flow and drawdown.');
});

test('a choice that stands keeps its finding, which says why it stays', () => {
  const { left, remaining } = placeForMe(
    rockWell({ string: { torqueArrestor: 'none' }, status: { 'string.torqueArrestor': 'installed' } }),
  );
  expect(said(left, 'string.torqueArrestor')).toBe('It stands installed. No torque arrestor is planned (PR-12).');
  const { notPlaced } = remaining.find(({ rule }) => rule === 'PR-12')!;
  expect(sayNotPlaced('PR-12', notPlaced, en, US)).toBe('It stands installed. Add a torque arrestor.');
});

test('an unknown water level places no pump and says so', () => {
  const { left, plan } = placeForMe(rockWell({ water: { staticLevel: 'unknown' } }));
  expect(plan.pump.setting).toBe('140 ft');
  expect(left[0]?.path).toBe('pump.setting');
  expect(said(left, 'pump.setting')).toBe('Nobody said the static water level.');
});

test.each(SAMPLES)('%s is placed without a danger', (name) => {
  expect(placeForMe(planOf(sample(name))).remaining.filter(({ severity }) => severity === 'danger')).toEqual([]);
});
