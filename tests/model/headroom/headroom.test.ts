import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { headroomOf } from '../../../src/model/headroom/headroom.ts';
import type { Direction, Headroom, HeadroomOf, Step } from '../../../src/model/headroom/told.ts';
import type { Plan } from '../../../src/model/plan/schema.ts';
import type { Solution } from '../../../src/model/solution.ts';
import { solve } from '../../../src/model/solve.ts';
import { feet, inches, psi } from '../../../src/model/units.ts';
import { anyPlan } from '../../plans/anyPlan.ts';
import { SAMPLES, planOf, rockWell, sample } from '../../plans/build.ts';
import { SOUND } from '../../wells/sound.ts';
import { movedTo, waysTo } from './moved.ts';

/** How bad a rule stands, told anew here: what turns on an unknown fact stands as the finding that tells it. */
function badness({ verdicts, findings }: Solution, rule: string): number {
  const verdict = verdicts[rule];
  const told = findings.find(({ together }) => together.some((each) => each.rule === rule));
  const severity = verdict === 'depends' ? told?.severity : verdict;
  return severity === 'danger' ? 3 : severity === 'warning' ? 2 : 0;
}

/** Rules that stand so badly one way or another and did not before. */
function newAt(before: readonly number[][], ways: readonly Solution[], level: number): string[] {
  return ways.flatMap((after) =>
    Object.keys(after.verdicts).filter(
      (rule, i) => badness(after, rule) >= level && before[i]!.every((each) => each < level),
    ),
  );
}

const isOverWater = ({ facts, levels }: Solution) => levels.static !== null && facts.pump.setting < levels.static;

function expectTrue(plan: Plan, line: Headroom, between: readonly number[]): number {
  const solution = solve(plan);
  const { of, direction, now, end, warning, danger } = line;
  if (now === null || end === null) {
    expect([warning, danger, line.missing === null], of).toEqual([null, null, false]);
    return 0;
  }
  const at = (value: number) => waysTo(plan, solution, of, value).map((way) => solve(way));
  // A limit that lies on the value now may go either way with the last bits of another unit.
  const here = [solution, ...at(now)];
  const both = Object.keys(solution.verdicts).map((rule) => here.map((each) => badness(each, rule)));
  const either = both.map((pair) => [Math.min(...pair)]);
  const told = (value: number) => `${of} ${direction} from ${now} at ${value}: ${JSON.stringify(plan)}`;
  let checked = 0;
  const levels: readonly (readonly [number, Step | null])[] = [
    [2, warning],
    [3, danger],
  ];
  for (const [level, step] of levels) {
    if (step?.already === true) {
      expect(badness(solution, step.rule), told(now)).toBeGreaterThanOrEqual(level);
      expect([step.last, step.at]).toEqual([now, now]);
      continue;
    }
    const last = step?.last ?? end;
    // Inside by a hair, where a limit that lies on a round value is not a matter of its last bits.
    const hair = step === null ? (end - now) / 1e4 : (step.at - step.last) / 50;
    if (last !== now) expect(newAt(both, at(last - hair), level), told(last)).toEqual([]);
    for (const share of between) expect(newAt(both, at(now + share * (last - now)), level), told(share)).toEqual([]);
    if (step === null) continue;
    if (step.overWater) {
      expect([last, step.at + hair].map((value) => at(value).some(isOverWater))).toEqual([false, true]);
      expect(badness(at(step.at + hair)[0]!, step.rule), told(step.at)).toBe(3);
      continue;
    }
    expect(newAt(either, at(step.at + hair), level), told(step.at)).toContain(step.rule);
    expect(step.finding.severity === 'danger' ? 3 : 2).toBeGreaterThanOrEqual(level);
    checked++;
  }
  return checked;
}

const share = fc.double({ min: 0.01, max: 0.99, noNaN: true });

describe('up to the last value nothing more is wrong, and just past it the rule is broken', () => {
  test('in every sound well and every sample', () => {
    const plans = [...SOUND.map(({ plan }) => planOf(plan)), ...SAMPLES.map((name) => planOf(sample(name)))];
    let checked = 0;
    for (const plan of plans) {
      for (const line of headroomOf(plan, solve(plan)).lines) checked += expectTrue(plan, line, [0.3, 0.8]);
    }
    expect(checked).toBeGreaterThan(11 * plans.length);
  });

  test('in 150 plans made at random', () => {
    fc.assert(
      fc.property(anyPlan, fc.array(share, { minLength: 2, maxLength: 2 }), (plan, between) => {
        for (const line of headroomOf(plan, solve(plan)).lines) expectTrue(plan, line, between);
      }),
      { seed: 41, numRuns: 150 },
    );
  });
});

describe('a well comes to give less, however it was tested, its yield said or not', () => {
  test.each([
    { kind: 'test', flow: '10 gpm', drawdown: '60 ft', after: '4 h' },
    { kind: 'level', level: '80 ft', flow: '7 gpm' },
    { kind: 'level', level: '80 ft' },
    {
      kind: 'steps',
      steps: [
        { flow: '4 gpm', drawdown: '18 ft', after: '1 h' },
        { flow: '8 gpm', drawdown: '40 ft', after: '1 h' },
        { flow: '12 gpm', drawdown: '66 ft', after: '1 h' },
      ],
    },
    { kind: 'aquifer', transmissivity: '2 m2/d', storativity: '0.0002' },
    { kind: 'yield only' },
  ])('$kind', (pumping) => {
    const unsaid = {
      depth: '200 ft',
      casing: { material: 'steel', size: '6 in', bottom: '40 ft', height: '12 in' },
      intake: { kind: 'open hole', diameter: '6 in' },
    };
    for (const well of [unsaid, { ...unsaid, yield: '12 gpm' }]) {
      const plan = rockWell({ well, water: { staticLevel: '40 ft', pumping } });
      const found = line(plan, 'yield', 'less');
      if (found.now !== null) expect(found.warning).not.toBeNull();
      expectTrue(plan, found, [0.3, 0.6, 0.9]);
    }
  });
});

const line = (plan: Plan, of: HeadroomOf, direction: Direction = 'more'): Headroom => {
  const found = headroomOf(plan, solve(plan)).lines.find((each) => each.of === of && each.direction === direction);
  if (found === undefined) throw new Error(`no line of ${of}`);
  return found;
};

/** A turn that can be worked out by hand lies between the last value without and the first with. */
function expectTurn(step: Step | null, rule: string, turn: number) {
  expect(step?.rule).toBe(rule);
  const [least, most] = [step!.last, step!.at].toSorted((one, other) => one - other) as [number, number];
  expect(turn).toBeGreaterThanOrEqual(least - 1e-4);
  expect(turn).toBeLessThanOrEqual(most + 1e-4);
}

/** An open hole whose water falls 20 ft for every 5 gpm, and a strong pump that a valve holds to 5 gpm. */
const held = rockWell({
  well: {
    depth: '200 ft',
    casing: { material: 'steel', size: '6 in', bottom: '40 ft', height: '12 in' },
    intake: { kind: 'open hole', diameter: '6 in' },
    yield: '10 gpm',
  },
  water: { staticLevel: '40 ft', pumping: { kind: 'test', flow: '10 gpm', drawdown: '40 ft', after: '4 h' } },
  pump: { setting: '120 ft', power: '1-1/2 hp', curve: { kind: 'generic', flow: '7 gpm' }, flowLimiter: '5 gpm' },
  top: { kind: 'pitless', depth: '60 in' },
});

describe('where the turn can be worked out by hand', () => {
  test('the intake wants ten feet of water over it: 120 - 10 - the drawdown at the most that is pumped', () => {
    const { lowest, levels } = solve(held);
    const drawdown = lowest!.depth - levels.static!;
    const { warning } = line(held, 'staticLevel');
    expectTurn(warning, 'PR-02', feet(120 - 10) - drawdown);
  });

  test('raised, it wants the same ten feet under the lowest pumping level', () => {
    expectTurn(line(held, 'pumpSetting', 'less').warning, 'PR-02', solve(held).lowest!.depth + feet(10));
  });

  test('lowered, its motor wants ten feet off the bottom, and five before it is a danger', () => {
    const motor = solve(held).facts.pump.intakeToMotorBottom;
    const { warning, danger } = line(held, 'pumpSetting');
    expectTurn(warning, 'PR-01', feet(200 - 10) - motor);
    expectTurn(danger, 'PR-01', feet(200 - 5) - motor);
  });

  test('frost comes to the adapter, and to the margin above it', () => {
    const { warning, danger, assumed } = line(held, 'frostDepth');
    expectTurn(warning, 'PR-19', inches(60) - solve(held).facts.site.frostMargin);
    expectTurn(danger, 'PR-19', inches(60));
    expect(assumed).toContain('site.frostMargin');
  });

  test('the switch warns ten psi under what the weaker pump reaches, and is a danger no higher than what it reaches at rest', () => {
    const weak: Plan = {
      ...held,
      house: { ...held.house!, demand: '1 gpm', tank: 'unknown' },
      pump: { ...held.pump!, power: '3/4 hp' },
    };
    const solution = solve(weak);
    const { warning, danger } = line(weak, 'switch');
    const past = solve(movedTo(weak, solution, 'switch', warning!.at));
    const found = past.findings.find(({ rule }) => rule === 'PR-46')!;
    // The rule measures what is left over cut-out.
    expectTurn(warning, 'PR-46', warning!.at + found.measured! - psi(10));
    expect(danger!.rule).toBe('PR-46');
    expect(danger!.at).toBeLessThanOrEqual(solution.values.shutOffPressureAtTankLeast! + psi(1));
  });
});

test('with the water at rest the levels of the seasons and while pumping fall too, so that no record contradicts itself', () => {
  const water = {
    staticLevel: '40 ft',
    staticLowest: '48 ft',
    staticHighest: '35 ft',
    pumping: { kind: 'level', level: '60 ft', flow: '7 gpm' },
  };
  const { warning, danger } = line(rockWell({ water }), 'staticLevel');
  for (const step of [warning, danger]) {
    expect(step!.rule).not.toBe('PR-62');
    expect(step!.last).toBeGreaterThan(feet(48));
  }
});

test('what is wrong already, and would not be with the value moved the other way, has no way left', () => {
  const deep = rockWell({ pump: { setting: '192 ft', power: '1 hp', curve: { kind: 'generic', flow: '10 gpm' } } });
  const { verdicts } = solve(deep);
  expect(verdicts['PR-01']).toBe('warning');
  const { now, warning, danger } = line(deep, 'pumpSetting');
  expect(warning).toMatchObject({ already: true, rule: 'PR-01', last: now, at: now });
  expectTurn(danger, 'PR-01', feet(195) - solve(deep).facts.pump.intakeToMotorBottom);
  // Raising it makes that no worse: there it does not count.
  expect(line(deep, 'pumpSetting', 'less').warning?.rule).not.toBe('PR-01');
});

test('a yield that is said falls alone: its test is no easier on the pump', () => {
  // As the driller pumped it: 20 gpm draw it down 40 ft, and the pump takes some 12.
  const plan = rockWell({
    well: { ...held.well!, depth: '325 ft', yield: '20 gpm' },
    water: { staticLevel: '60 ft', pumping: { kind: 'test', flow: '20 gpm', drawdown: '40 ft', after: '6 h' } },
    pump: { setting: '180 ft', power: '3/4 hp', curve: { kind: 'generic', flow: '10 gpm' } },
  });
  const { danger } = line(plan, 'yield', 'less');
  for (const [flow, isDanger] of [
    [danger!.last * 1.001, false],
    [danger!.at * 0.999, true],
  ] as const) {
    const { verdicts } = solve({ ...plan, well: { ...plan.well!, yield: `${flow * 60000} L/min` } });
    expect(Object.values(verdicts).includes('danger'), String(flow)).toBe(isDanger);
  }
});

/** A pump that takes more than its well gives: it runs dry already, wherever it hangs in the water. */
const drained = () =>
  rockWell({
    well: { ...held.well!, depth: '325 ft', yield: '2 gpm' },
    water: { staticLevel: '45 ft', pumping: { kind: 'yield only' } },
    pump: { setting: '258 ft', power: '1-1/2 hp', curve: { kind: 'generic', flow: '10 gpm' } },
  });

describe('a pump over its water is the danger, though it runs dry already', () => {
  test('raised past the water at rest', () => {
    expect(badness(solve(drained()), 'PR-02')).toBe(3);
    const { danger, standing } = line(drained(), 'pumpSetting', 'less');
    expectTurn(danger, 'PR-02', feet(45));
    expect(danger).toMatchObject({ overWater: true, already: false, severity: 'danger' });
    expect(standing).toContain('PR-02');
  });

  test('with the water at rest falling past the pump, if nothing else is a danger before', () => {
    const { danger } = line(drained(), 'staticLevel');
    expect(danger).not.toBeNull();
    if (danger!.overWater) expectTurn(danger, 'PR-02', feet(258));
    expect(danger!.at).toBeLessThanOrEqual(feet(258.5));
  });
});

test('what is wrong for another reason does not count', () => {
  const thin = rockWell({ wire: { size: '14 AWG', run: '600 ft' } });
  expect(solve(thin).findings.some(({ rule, severity }) => rule === 'PR-49' && severity !== 'note')).toBe(true);
  for (const of of ['staticLevel', 'frostDepth'] as const) {
    for (const step of [line(thin, of).warning, line(thin, of).danger]) expect(step?.rule).not.toBe('PR-49');
  }
});

describe('what nobody said has no headroom, and the field that would tell it', () => {
  test.each([
    ['staticLevel', 'more', { water: { staticLevel: 'unknown' } }, 'water.staticLevel'],
    ['yield', 'less', { water: { staticLevel: '40 ft' } }, 'well.yield'],
    ['demand', 'more', { house: { demand: 'unknown' } }, 'house.demand'],
    ['frostDepth', 'more', { site: {} }, 'site.frostDepth'],
  ] as const)('%s', (of, direction, change, missing) => {
    expect(line(rockWell(change), of, direction)).toEqual({
      of,
      direction,
      now: null,
      missing,
      end: null,
      warning: null,
      danger: null,
      standing: [],
      assumed: [],
    });
  });
});

test('what rests on a value that nobody said tells so', () => {
  const house = { distance: '120 ft', rise: '10 ft', line: { material: 'PE', size: '1-1/4 in', rating: '200 psi' } };
  const plan = rockWell({ house });
  expect(line(plan, 'demand').assumed).toContain('house.demand');
  expect(line(plan, 'switch').assumed).toEqual(expect.arrayContaining(['house.cutOut', 'house.cutIn']));
  expect(line(plan, 'pumpSetting').assumed).not.toContain('house.demand');
});

test('a flowing well and a dry one are told of before this', () => {
  const flowing = rockWell({ water: { staticLevel: '-3 ft' } });
  const dry = rockWell({ water: { staticLevel: '200 ft' } });
  expect(headroomOf(flowing, solve(flowing))).toEqual({ refused: 'flowing', lines: [] });
  expect(headroomOf(dry, solve(dry))).toEqual({ refused: 'dry', lines: [] });
});

test('an open tank has no switch to turn up', () => {
  const open = rockWell({ house: { demand: '7 gpm', kind: 'open tank' } });
  expect(headroomOf(open, solve(open)).lines.map(({ of }) => of)).not.toContain('switch');
});

test('asked again it says the same, and leaves the plan as it was', () => {
  for (const name of SAMPLES) {
    const plan = planOf(sample(name));
    const typed = structuredClone(plan);
    const solution = solve(plan);
    expect(headroomOf(plan, solution)).toEqual(headroomOf(plan, solution));
    expect(plan).toEqual(typed);
  }
});

test('every sound well can be told of whole: each line has its value, and the danger comes no sooner than the warning', () => {
  for (const { name, plan } of SOUND) {
    const read = planOf(plan);
    for (const { of, now, end, warning, danger, missing } of headroomOf(read, solve(read)).lines) {
      if (now === null) {
        expect(missing, name).not.toBeNull();
        continue;
      }
      const way = (value: number) => Math.abs(value - now);
      if (warning !== null && danger !== null)
        expect(way(danger.at), `${name} ${of}`).toBeGreaterThanOrEqual(way(warning.at));
      if (danger !== null) expect(warning, `${name} ${of}`).not.toBeNull();
      for (const step of [warning, danger]) {
        // A sound well has no warning yet, so that none can be there already.
        expect(step?.already ?? false, `${name} ${of}`).toBe(false);
        if (step !== null) expect(way(step.at)).toBeLessThanOrEqual(way(end!) + 1e-9);
      }
    }
  }
});
