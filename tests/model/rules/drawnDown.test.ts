/** Pumps that take more than flows in, and what is said of them where something is not known. */
import { describe, expect, test } from 'vitest';
import { solve } from '../../../src/model/solve.ts';
import { feet, gpm, toFeet } from '../../../src/model/units.ts';
import { readFacts } from '../../../src/model/plan/readFacts.ts';
import { probeWritten } from '../../../src/model/rules/addCutOff.ts';
import { changed, findingOf, fixesFor, judged, solvedPlan, type Changes } from './fixture.ts';

const held = (rule: string, changes: Changes) => judged(changes).holding.find((each) => each.rule === rule)?.variant;

/** 1 gpm and 100 ft of drawdown: every pump draws it down. Water stands at 40 ft, the pump hangs near 200. */
const poor: Changes = {
  'well.depth': '300 ft',
  'well.yield': '1 gpm',
  'water.pumping': { kind: 'test', flow: '1 gpm', drawdown: '100 ft', after: '6 h' },
  'house.demand': '8 gpm',
};
/** 270 ft at no flow: less 5 ft of rise it reaches 60 psi, 138.5 ft, and 10 psi more, from 103 ft, 40 psi from 172 ft. */
const curve = {
  'pump.curve': {
    kind: 'points',
    points: [
      ['0 gpm', '270 ft'],
      ['10 gpm', '200 ft'],
      ['15 gpm', '100 ft'],
    ],
  },
};

describe('a switch that opens while the water is high', () => {
  const drawn: Changes = { ...poor, ...curve, 'pump.setting': '170 ft', 'pump.lowLevelCutOff': '165 ft' };

  test('holds with dry-run protection that stops the pump before it runs on in vain', () => {
    // It opens from 126.5 ft: 39 ft of a 5 in hole are 38 gal and more than half an hour at 1 gpm, 24 ft are less.
    expect(findingOf('PR-46', drawn).variant).toBe('opensLate');
    const quick: Changes = { ...drawn, 'pump.setting': '155 ft', 'pump.lowLevelCutOff': '150 ft' };
    expect(solve(changed(quick)).lowest?.by).toBe('cutOff');
    expect(held('PR-46', quick)).toBe('reachesWhileHigh');
  });
  test('does not without it', () => {
    expect(findingOf('PR-46', { ...drawn, 'pump.lowLevelCutOff': undefined }).variant).toBe('reachesLate');
  });
  test('does not where the protection acts lower than the weaker pump lifts from', () => {
    // Nobody knows the drawdown, and the stronger pump empties the well down to 295 ft: the weaker one lifts from 240 ft.
    const deep: Changes = {
      'well.depth': '400 ft',
      'well.yield': '0.1 gpm',
      'water.pumping': undefined,
      'pump.setting': '300 ft',
      'pump.lowLevelCutOff': '295 ft',
    };
    expect(solve(changed(deep)).lowest?.by).toBe('cutOff');
    expect(findingOf('PR-46', deep).severity).toBe('warning');
    // From 225 ft the weaker one lifts, but at 0.1 gpm the water is hours coming back to where the switch opens.
    expect(findingOf('PR-46', { ...deep, 'pump.setting': '230 ft', 'pump.lowLevelCutOff': '225 ft' }).variant).toBe(
      'opensLate',
    );
  });
  test('does not where only the stronger pump draws the water down: nothing stops the weaker one', () => {
    // 8 gpm at the most would come from 160 ft of fall; the weaker end of 1 hp takes less, the stronger end more.
    const between: Changes = {
      'well.depth': '300 ft',
      'well.yield': undefined,
      'water.pumping': { kind: 'test', flow: '8 gpm', drawdown: '125 ft', after: '6 h' },
      'house.demand': '5 gpm',
      'pump.setting': '172 ft',
      'pump.lowLevelCutOff': '170 ft',
    };
    const { curves } = solve(changed(between));
    expect([curves.atCutIn?.outpumped, curves.atCutInMost?.outpumped]).toEqual([false, true]);
    expect(held('PR-46', between)).not.toBe('reachesWhileHigh');
  });
});

describe('a pump that gives enough', () => {
  test('at first, and less once the water is drawn down', () => {
    const drawn = { ...poor, ...curve, 'pump.setting': '170 ft', 'pump.lowLevelCutOff': '165 ft' };
    expect(held('PR-54', drawn)).toBe('givesEnoughAtFirst');
  });
  test('all the time where the water is not drawn so far', () => {
    expect(held('PR-54', {})).toBe('givesEnough');
  });
});

test('a valve that holds the pump under what is wanted is what is to be changed, not the pump', () => {
  const variantFor = (changes: Changes) =>
    fixesFor(findingOf('PR-54', changes), solvedPlan(changed(changes)))[0]!.variant;
  expect(variantFor({ 'pump.flowLimiter': '4 gpm' })).toBe('largerLimiter');
  // The well gives 15 gpm: no pump gives 30 for long.
  expect(variantFor({ 'house.demand': '30 gpm' })).toBe('wellGivesNoMore');
  expect(variantFor({ 'house.demand': '30 gpm', 'well.yield': '40 gpm' })).toBe('strongerOrLess');
});

describe('a well that gives less than is wanted', () => {
  const less = { 'well.yield': '5 gpm', 'house.demand': '9 gpm' };
  test('in a bore of unknown width: nobody can tell whether its store carries the peak', () => {
    const finding = findingOf('PR-55', { ...less, 'well.intake.diameter': undefined });
    expect([finding.variant, finding.severity]).toEqual(['peakUnsure', 'note']);
  });
  test('in a known one it is told', () => {
    expect(findingOf('PR-55', less).variant).not.toBe('peakUnsure');
  });
  test('too little for a day is a danger in any bore', () => {
    const finding = findingOf('PR-55', { ...less, 'well.yield': '0.05 gpm', 'well.intake.diameter': undefined });
    expect([finding.variant, finding.severity]).toEqual(['dayNotMet', 'danger']);
  });
});

describe('a button for a probe says what it sets', () => {
  test('rounded as it is written', () => {
    // 140.4 ft less 2 ft is 138.4 ft, written 138 ft.
    const low = { 'pump.setting': '140.4 ft', 'pump.lowLevelCutOff': '140 ft' };
    const [fix] = fixesFor(findingOf('PR-08', low), solvedPlan(changed(low)));
    const written = fix!.changes![0]!.to;
    expect(written).toBe('138 ft');
    expect(toFeet((fix!.numbers as { depth: number }).depth)).toBeCloseTo(138, 6);
    const set = readFacts(changed({ ...low, 'pump.lowLevelCutOff': written })).facts.pump.lowLevelCutOff;
    expect((fix!.numbers as { depth: number }).depth).toBeCloseTo(set as number, 9);
  });
  test('and what cannot be read is what was meant', () => {
    expect(probeWritten({ path: 'pump.lowLevelCutOff', to: true }, feet(10))).toBe(feet(10));
    expect(probeWritten({ path: 'pump.lowLevelCutOff', to: '42 m' }, feet(10))).toBe(42);
  });
});

test('the demand that these wells are held against is read as typed', () => {
  expect(readFacts(changed(poor)).facts.house.demand).toBeCloseTo(gpm(8), 9);
});

describe('a pump hung deeper than even the strongest of its name lifts from', () => {
  /** 0.75 gpm, and 6 gpm wanted: 1/2 hp lifts from some 300 ft at the most, and hangs at 640 ft. */
  const deep: Changes = {
    'well.depth': '700 ft',
    'well.yield': '0.75 gpm',
    'well.yieldFrom': 'air lift',
    'water.staticLevel': '90 ft',
    'water.pumping': { kind: 'yield only' },
    'house.demand': '6 gpm',
    'pump.power': '1/2 hp',
    'pump.curve': { kind: 'generic', flow: '5 gpm' },
    'pump.setting': '640 ft',
    'pump.lowLevelCutOff': '620 ft',
  };
  const verdict = (rule: string, changes: Changes) => judged(changes).verdicts[rule];

  test('is a danger, and nothing of it is told as guarded', () => {
    expect(solve(changed(deep)).lowest?.by).toBe('lift');
    expect(findingOf('PR-46', deep)).toMatchObject({ severity: 'danger', variant: 'probeBelowItsLift' });
    expect(verdict('PR-07', deep)).toBe('not judged');
    expect(verdict('PR-08', deep)).toBe('not judged');
  });
  test('is offered no probe where it cannot draw the water', () => {
    const bare = { ...deep, 'pump.lowLevelCutOff': undefined };
    const found = judged(bare);
    expect(found.findings.find(({ rule }) => rule === 'PR-46')?.variant).toBe('hangsBelowItsLift');
    for (const finding of found.findings)
      for (const fix of fixesFor(finding, solvedPlan(changed(bare)))) expect(fix.variant).not.toBe('protectByProbe');
  });
  test('hung where it lifts from the probe is guarded again', () => {
    const lifted = { ...deep, 'pump.setting': '160 ft', 'pump.lowLevelCutOff': '158 ft' };
    expect(verdict('PR-46', lifted)).not.toBe('danger');
    expect(verdict('PR-08', lifted)).toBe('ok');
    expect(held('PR-07', lifted)).toBe('guarded');
  });
  test('a well that gives what the house wants is not drawn so far', () => {
    expect(verdict('PR-46', { ...deep, 'house.demand': '0.5 gpm' })).not.toBe('danger');
  });
  test('a valve that holds back 3 of 6 gpm is told at any depth, the protection’s depth said or not', () => {
    for (const lowLevelCutOff of [true, '620 ft'])
      expect(
        findingOf('PR-54', {
          ...deep,
          'pump.power': '1-1/2 hp',
          'pump.flowLimiter': '3 gpm',
          'pump.lowLevelCutOff': lowLevelCutOff,
        }).severity,
      ).toBe('warning');
  });
});

test('a flow that the pump takes is told with its level, and of a yield blown with air the half that is sure', () => {
  const blown: Changes = {
    'well.depth': '325 ft',
    'well.yield': '6 gpm',
    'well.yieldFrom': 'air lift',
    'water.staticLevel': '45 ft',
    'water.pumping': { kind: 'yield only' },
    'house.demand': '8 gpm',
    'pump.curve': { kind: 'generic', flow: '10 gpm' },
    'pump.power': '1 hp',
    'pump.setting': '280 ft',
    'pump.lowLevelCutOff': undefined,
  };
  const { numbers } = findingOf('PR-07', blown) as unknown as {
    numbers: { flow: number; gives: number; sure: number; drawn: { atRest: number } };
  };
  expect(numbers.sure).toBe(numbers.gives / 2);
  expect(numbers.drawn.atRest).toBeGreaterThan(1.5 * numbers.flow);
});

test('a probe above the water at rest: nothing is said of what a pump at work would do', () => {
  const held = { 'pump.lowLevelCutOff': '20 ft' };
  for (const rule of ['PR-07', 'PR-48', 'PR-58']) expect(judged(held).verdicts[rule]).toBe('not judged');
});

test('where only the weaker pump of a name fails, the stronger is told', () => {
  const strongOf = (demand: string) => {
    const found = findingOf('PR-54', {
      'house.demand': demand,
      'pump.power': '1/2 hp',
      'pump.curve': { kind: 'generic', flow: '10 gpm' },
    });
    return (found as unknown as { numbers: { strong: number | null } }).numbers.strong;
  };
  expect(strongOf('10 gpm')).toBeGreaterThan(0.8 * gpm(10));
  expect(strongOf('30 gpm')).toBeNull();
});
