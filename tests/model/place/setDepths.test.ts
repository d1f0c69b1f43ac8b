import { describe, expect, test } from 'vitest';
import { setDepths, type Placement } from '../../../src/model/place/setDepths.ts';
import { show, solve, withValue, type Plan } from '../../../src/model/index.ts';
import { levelAtNoFlow } from '../../../src/model/figures/curves.ts';
import { en } from '../../../src/words/en/index.ts';
import { sayClash, sayNotPlaced, sayWhyLeft, sayWhyPlaced } from '../../../src/words/sayPlacement.ts';
import { SAMPLES, planOf, sample } from '../../plans/build.ts';
import { blown, lowYield, metric, plain } from './tradeWells.ts';

const US = show('us');
const at = ({ changes }: Placement, path: string) => changes.find((change) => change.path === path);
const whyPlaced = (placement: Placement, path: string, units = US) => sayWhyPlaced(at(placement, path)!.why, en, units);
const whyLeft = ({ left }: Placement, path: string, units = US) =>
  sayWhyLeft(left.find((each) => each.path === path)!.why, en, units);

// Wells in which pumps would have run dry, burned out or been hung where they lift nothing.
describe('what was wrong', () => {
  // 45 ft of rest level, blown with air: 5 to 12 ft under it a pump draws air within minutes.
  test('the pump of a well of unknown drawdown was left a few feet under the water at rest', () => {
    const placed = setDepths(blown({ 'pump.setting': '50 ft' }));
    expect(at(placed, 'pump.setting')?.to).toBe('278 ft');
    expect(at(placed, 'pump.lowLevelCutOff')?.to).toBe('276 ft');
    expect(solve(placed.plan).findings.filter(({ severity }) => severity !== 'note')).toEqual([]);
  });

  test('a pump with room was brought up “since less is to lift”, though lift is from the water', () => {
    const placed = setDepths(plain({ 'pump.setting': '150 ft' }));
    expect(placed.plan.pump?.setting).toBe('150 ft');
    expect(at(placed, 'pump.lowLevelCutOff')).toBeUndefined();
  });

  test('and a cut-off was bought since little water was left over it', () => {
    const placed = setDepths(plain({ 'pump.setting': '78 ft' }));
    expect(placed.changes.map(({ path }) => path)).toEqual(['pump.setting']);
  });

  test('a pump was lowered “to store most” past the depth from which it lifts', () => {
    // 350 ft of shut-off head, less 10 ft of rise and 92.4 ft for 40 psi.
    const curve = {
      kind: 'points',
      points: [
        ['0 gpm', '350 ft'],
        ['5 gpm', '280 ft'],
        ['8 gpm', '175 ft'],
      ],
    };
    const placed = setDepths(lowYield({ 'pump.curve': curve, 'pump.setting': '270 ft' }));
    const { facts, lowest, verdicts } = solve(placed.plan);
    expect(levelAtNoFlow(facts, { end: 'least', tank: 'cutIn' })! / 0.3048).toBeCloseTo(247.6, 0);
    expect(lowest!.depth / 0.3048).toBeLessThan(247.6);
    // At 1 gpm or so the water is long in coming back to where the switch opens: that is told, and is no danger.
    expect(verdicts['PR-46']).toBe('warning');
  });

  test('a pump was placed in a flowing well', () => {
    const plan = plain({ 'water.staticLevel': '-2 ft' });
    const placed = setDepths(plan);
    expect(placed.plan).toEqual(plan);
    expect(whyLeft(placed, 'pump.setting')).toMatch(/^The well flows by itself\. Stop: a licensed contractor/);
  });

  test('a wire size that had just been changed was the reason of a depth', () => {
    const placed = setDepths(plain({ 'wire.size': '14 AWG', 'wire.run': '400 ft' }));
    expect(at(placed, 'pump.setting')?.rule).toBe('PR-02');
    expect(whyPlaced(placed, 'pump.setting')).not.toMatch(/AWG|volt|wire/i);
    expect(at(placed, 'wire.size')?.rule).toMatch(/PR-(?:49|50)/);
  });

  test('an adapter was brought up from 239 cm “since less is to dig”', () => {
    const plan = metric({ 'top.depth': '239 cm', 'site.frostDepth': '0 cm' });
    expect(setDepths(plan).plan.top).toEqual(plan.top);
  });

  test('an adapter was set into a liner', () => {
    const plan = plain({
      'well.casing': undefined,
      'well.casings': [
        { material: 'steel', size: '6 in', bottom: '30 ft', height: '12 in' },
        {
          material: 'PVC',
          size: '4-1/2 in',
          insideDiameter: '4.5 in',
          outsideDiameter: '5 in',
          top: '4 ft',
          bottom: '200 ft',
        },
      ],
      'pump.diameter': '3.8 in',
      'site.frostDepth': '60 in',
      'top.depth': '2 ft',
    });
    const placed = setDepths(plan);
    expect(placed.plan.top).toEqual(plan.top);
    const said = sayClash(
      placed.clashes.find(({ setting }) => setting === 'top.depth')!,
      en,
      US,
    );
    expect(said.words).toMatch(/above the liner\. They miss each other by/);
    expect(said.wayOut).toMatch(/^A driller who sees whether the liner can be cut off lower/);
  });
});

describe('the reasons', () => {
  test.each([
    ['with room', plain(), 'pump.setting', '30 ft under the lowest water while pumping.'],
    [
      'a shallow well',
      plain({ 'well.depth': '105 ft' }),
      'pump.setting',
      'The motor ends 20.5 ft off the bottom; that is 13 ft under the lowest water while pumping.',
    ],
    [
      'blown with air',
      blown({ 'pump.setting': '50 ft' }),
      'pump.setting',
      'The motor ends 20.5 ft off the bottom; nobody knows how far the water falls.',
    ],
    [
      'low yield',
      lowYield({ 'pump.setting': '90 ft' }),
      'pump.setting',
      'The motor ends 20.5 ft off the bottom; the well gives less than the house wants, and the water that stands in it helps out.',
    ],
    [
      'protection',
      blown({ 'pump.setting': '50 ft' }),
      'pump.lowLevelCutOff',
      '24 in over the intake, so that the pump stops before it runs dry.',
    ],
    ['an adapter', plain({ 'top.depth': '2 ft' }), 'top.depth', '6 in below the frost, which reaches 36 in.'],
    [
      'an adapter nobody digs to',
      plain({ 'top.depth': '20 ft' }),
      'top.depth',
      '6 in below the frost, which reaches 36 in; so deep as it stood nobody digs for an adapter.',
    ],
  ] as const)('%s', (_, plan, path, words) => {
    expect(whyPlaced(setDepths(plan), path)).toBe(words);
  });

  test.each([
    [
      'hangs well',
      plain({ 'pump.setting': '105 ft' }),
      'It hangs well and stays: 35 ft under the lowest water while pumping, the motor 93.5 ft off the bottom.',
    ],
    ['installed', plain({ status: { pump: 'installed' } }), 'It stands installed.'],
    ['measured', plain({ status: { pump: 'measured' } }), 'It stands as it was measured.'],
    ['unknown level', plain({ 'water.staticLevel': 'unknown' }), 'Nobody said the static water level.'],
    [
      'dry',
      plain({ 'water.staticLevel': '210 ft' }),
      'The water stands at 210 ft and the well ends at 200 ft: there is nothing to pump. Measure again and ask the driller.',
    ],
    [
      'little water',
      blown({ 'well.depth': '60 ft', 'pump.setting': '50 ft' }),
      /^To hang far enough under the water at rest it would have to go to 55 ft, and 48\.5 ft is as deep as it may \(10 ft off the bottom\)\. What would have to change: a well that is 6\.5 ft deeper\.$/,
    ],
  ] as const)('left: %s', (_, plan, words) => {
    expect(whyLeft(setDepths(plan), 'pump.setting')).toMatch(words instanceof RegExp ? words : exactly(words));
  });

  test('in metric plans they are metric', () => {
    const placed = setDepths(metric());
    expect(at(placed, 'pump.setting')?.to).toBe('30 m');
    expect(whyPlaced(placed, 'pump.setting', show('metric'))).toBe('9 m under the lowest water while pumping.');
  });
});

function exactly(words: string): RegExp {
  return new RegExp(`^${words.replace(/[.*+?^${}()|[\]\\]/g, '\\$&')}$`);
}

describe('where nothing can meet all rules', () => {
  test('frost and water exclude each other, and it says what would have to change', () => {
    const { clashes } = setDepths(plain({ 'water.staticHighest': '38 in', 'top.depth': '2 ft' }));
    expect(clashes.map(({ rules }) => rules)).toEqual([['PR-19', 'PR-20']]);
    const said = sayClash(clashes[0]!, en, US);
    expect(said.words).toMatch(/They miss each other by 4 in\.$/);
    expect(said.wayOut).toMatch(/under water/);
  });

  test('where they miss each other by a hair no distance is told', () => {
    const { clashes } = setDepths(plain({ 'water.staticHighest': '42 in', 'top.depth': '2 ft' }));
    expect(sayClash(clashes[0]!, en, US).words).toMatch(/They only just miss each other\.$/);
  });

  // 10 ft under a level of 85 ft is 95 ft; the motor, 1.5 ft under the intake, must stay above the screen at 94 ft.
  test('water and screen: the pump stays, and the finding says so', () => {
    const { plan, clashes, remaining } = setDepths(
      plain({
        'well.depth': '104 ft',
        'well.casing.bottom': '94 ft',
        'well.intake': { kind: 'screen', diameter: '6 in', top: '94 ft', bottom: '102 ft' },
        'well.layers': undefined,
        'water.pumping': { kind: 'test', flow: '7 gpm', drawdown: '45 ft', after: '6 h' },
        'pump.setting': '92.5 ft',
      }),
    );
    expect(plan.pump?.setting).toBe('92.5 ft');
    const said = sayClash(clashes[0]!, en, US);
    expect(said.words).toMatch(/They miss each other by 30 in\.$/);
    expect(said.wayOut).toMatch(/^Water that falls 30 in less while pumping: a smaller flow/);
    const { notPlaced } = remaining.find(({ rule }) => rule === 'PR-02')!;
    expect(sayNotPlaced('PR-02', notPlaced, en, US)).toMatch(/\.$/);
  });
});

describe('what follows the depths', () => {
  test('valve and wire are brought into order, each with the finding as its reason', () => {
    const placed = setDepths(plain({ 'string.checkValves': [], 'wire.size': '14 AWG', 'wire.run': '400 ft' }));
    expect(at(placed, 'string.checkValves')?.rule).toBe('PR-09');
    for (const { why } of placed.changes) expect(sayWhyPlaced(why, en, US)).toMatch(/\.$/);
    expect(placed.remaining.filter(({ severity }) => severity === 'danger')).toEqual([]);
  });

  test('a probe goes where the pump goes', () => {
    const placed = setDepths(plain({ 'pump.lowLevelCutOff': '50 ft' }));
    expect(at(placed, 'pump.setting')?.to).toBe('100 ft');
    expect(at(placed, 'pump.lowLevelCutOff')?.to).toBe('98 ft');
  });

  test('what the house gets from its switch is not changed for a depth', () => {
    const placed = setDepths(plain({ 'house.cutIn': '70 psi', 'house.cutOut': '90 psi', 'pump.power': '1/2 hp' }));
    expect(placed.plan.house).toMatchObject({ cutIn: '70 psi', cutOut: '90 psi' });
  });

  test('a choice that stands keeps its finding, which says why it stays', () => {
    const placed = setDepths(
      plain({ 'string.torqueArrestor': 'none', status: { 'string.torqueArrestor': 'installed' } }),
    );
    expect(whyLeft(placed, 'string.torqueArrestor')).toMatch(/^It stands installed\. /);
    const { notPlaced } = placed.remaining.find(({ rule }) => rule === 'PR-12')!;
    expect(sayNotPlaced('PR-12', notPlaced, en, US)).toMatch(/^It stands installed\. .*\.$/);
  });

  test('wire that stands does not hang a pump higher: it is told instead', () => {
    const plan = blown({
      'pump.setting': '60 ft',
      'wire.size': '14 AWG',
      'wire.run': '250 ft',
      status: { 'wire.size': 'installed' },
    });
    const placed = setDepths(plan);
    if (at(placed, 'pump.setting') === undefined)
      expect(whyLeft(placed, 'pump.setting')).toMatch(/but there something else would be worse: /);
    else expect(at(placed, 'pump.setting')?.to).toBe('278 ft');
  });
});

test.each(SAMPLES)('%s is placed without a danger', (name) => {
  const placed = setDepths(planOf(sample(name)));
  expect(placed.remaining.filter(({ severity }) => severity === 'danger')).toEqual([]);
});

test('a plan that nobody touched is left as it was typed', () => {
  const plan: Plan = withValue(plain({ 'pump.setting': '100 ft' }), 'title', 'Left alone');
  expect(setDepths(plan).plan).toEqual(plan);
});
