import fc from 'fast-check';
import { expect, test } from 'vitest';
import { explain, explainAll } from '../../../src/model/explain/explain.ts';
import type { Explanation } from '../../../src/model/explain/explain.ts';
import { solve } from '../../../src/model/solve.ts';
import type { Plan } from '../../../src/model/plan/schema.ts';
import type { Solution, ValueName } from '../../../src/model/solution.ts';
import { anyPlan } from '../../plans/anyPlan.ts';
import { planOf, rockWell, sample, SAMPLES } from '../../plans/build.ts';
import { evaluate, requireSame } from './evaluate.ts';
import type { Found } from './evaluate.ts';

const SEED = 20_261_125;
const SYSTEMS = ['us', 'metric'] as const;

/**
 * Does every sum of a worked line again and holds each result of it to what the digits before it give; returns the
 * last: the figure.
 */
function redo({ worked, name }: Explanation): Found {
  let last: Found | null = null;
  for (const line of worked!.split(/; |, and /)) {
    const [, ...sides] =
      /^[\p{L}\p{Nd}_′ /√().²]+ = /u.test(line) && !/^[\d(−]|^1 \//.test(line)
        ? line.split(' = ')
        : ['', ...line.split(' = ')];
    const found = sides.map(evaluate);
    for (let i = 1; i < found.length; i++) {
      const [one, next] = [found[i - 1]!, found[i]!];
      requireSame(one, next, `${name}: ${line}`);
      const off = Math.abs(one.value - next.value);
      // The reader's unit ends in four digits; everything before it carries more.
      const room =
        one.error +
        next.error +
        1e-6 * Math.abs(next.value) +
        (i === found.length - 1 ? lastDigit(sides[i]!, next) : 0);
      expect(off, `${name}: ${line}`).toBeLessThanOrEqual(room + 1e-12);
    }
    last = found[found.length - 1] ?? last;
  }
  return last!;
}

/** Half of the last digit that the text stands for, in SI: "42 ft" is 42.0 ft with its zero left out. */
function lastDigit(text: string, { value }: Found): number {
  const [number = '0'] = /[\d.]+/.exec(text) ?? [];
  const shown = Number(number);
  const whole = /(N|Pa|s)$/.test(text) || shown >= 1000;
  const decimals = number.split('.')[1]?.length ?? (whole ? 0 : 1);
  return shown === 0 ? 1e-3 : Math.abs(value / shown) * 0.501 * 10 ** -decimals;
}

function check(solution: Solution, system: 'us' | 'metric'): void {
  for (const each of explainAll(solution, system)) {
    const value = solution.values[each.name];
    expect(each.title.length, each.name).toBeGreaterThan(4);
    expect(each.formula, each.name).toContain(' = ');
    expect(each.source.length, each.name).toBeGreaterThan(3);
    expect(each.range.holds.length, each.name).toBeGreaterThan(5);
    expect(JSON.stringify(each)).not.toMatch(/undefined|NaN|Infinity/);
    if (value === null) {
      expect(each.worked).toBeNull();
      expect(each.result).toBeNull();
      expect(each.unknown.length, `${each.name} does not say what is missing`).toBeGreaterThan(0);
    } else {
      expect(each.unknown).toEqual([]);
      expect(each.worked).not.toMatch(/not known/);
      const found = redo(each);
      const result = evaluate(each.result!);
      expect(Math.abs(result.value - value), `${each.name}: ${each.result}`).toBeLessThanOrEqual(
        lastDigit(each.result!, result) + 1e-9,
      );
      expect(Math.abs(found.value - value), `${each.name}: ${each.worked}`).toBeLessThanOrEqual(
        found.error + lastDigit(each.result!, result) + 1e-6 * Math.abs(value) + 1e-12,
      );
    }
  }
}

test.each(SAMPLES.flatMap((name) => SYSTEMS.map((system) => [name, system] as const)))(
  'every figure of %s can be done again from its text, in %s units',
  (name, system) => check(solve(planOf(sample(name))), system),
);

test.each<readonly [string, Record<string, unknown>]>([
  [
    'a pumping level with its flow',
    { water: { staticLevel: '40 ft', pumping: { kind: 'level', level: '82 ft', flow: '10 gpm' } } },
  ],
  ['a pumping level without one', { water: { staticLevel: '40 ft', pumping: { kind: 'level', level: '82 ft' } } }],
  [
    'a step test',
    {
      water: {
        staticLevel: '40 ft',
        staticLowest: '55 ft',
        pumping: {
          kind: 'steps',
          steps: [
            { flow: '5 gpm', drawdown: '11 ft' },
            { flow: '10 gpm', drawdown: '26 ft' },
            { flow: '15 gpm', drawdown: '45 ft' },
          ],
        },
      },
    },
  ],
  [
    'an aquifer',
    { water: { staticLevel: '40 ft', pumping: { kind: 'aquifer', transmissivity: '4 m2/d', storativity: '0.0002' } } },
  ],
  [
    'a maker’s points',
    {
      pump: {
        setting: '140 ft',
        power: '1 hp',
        curve: {
          kind: 'points',
          points: [
            ['0 gpm', '310 ft'],
            ['5 gpm', '285 ft'],
            ['10 gpm', '235 ft'],
            ['15 gpm', '140 ft'],
          ],
        },
      },
    },
  ],
  [
    'a pump too weak for its well',
    { pump: { setting: '140 ft', power: '1/2 hp', curve: { kind: 'generic', flow: '20 gpm' } } },
  ],
  [
    'a yield far under what its pump takes',
    {
      well: {
        depth: '400 ft',
        yield: '1 gpm',
        casing: { material: 'steel', size: '6 in', bottom: '60 ft' },
        intake: { kind: 'open hole', diameter: '6 in' },
      },
      water: { staticLevel: '40 ft', pumping: { kind: 'yield only' } },
      pump: { setting: '300 ft', power: '1 hp', curve: { kind: 'generic', flow: '5 gpm' } },
    },
  ],
  [
    'a flow-limiting valve',
    {
      pump: { setting: '140 ft', power: '1 hp', curve: { kind: 'generic', flow: '10 gpm' }, flowLimiter: '6 gpm' },
    },
  ],
  [
    'a metric pump of unknown frequency, weak',
    { pump: { setting: '190 ft', power: '0.37 kW', curve: { kind: 'generic', flow: '10 gpm' } } },
  ],
  [
    'an intake above the water',
    { water: { staticLevel: '150 ft', pumping: { kind: 'test', flow: '5 gpm', drawdown: '9 ft' } } },
  ],
  ['an estimated frost depth', { site: { freezing: { station: 'Duluth', soil: 'silt loam', surface: 'lawn' } } }],
  ['a rope', { rope: { material: 'polypropylene', diameter: '1/4 in' } }],
  ['a seal on PVC pipe', { top: { kind: 'seal' }, dropPipe: { material: 'PVC', size: '1 in' } }],
  [
    'an open tank',
    {
      house: {
        demand: '7 gpm',
        distance: '120 ft',
        rise: '10 ft',
        kind: 'open tank',
        line: { material: 'PE', size: '1-1/4 in', rating: '200 psi' },
      },
    },
  ],
  [
    'a flow between laminar and turbulent',
    {
      house: {
        demand: '1.2 gpm',
        distance: '120 ft',
        rise: '10 ft',
        line: { material: 'PE', size: '1-1/4 in', rating: '200 psi' },
      },
    },
  ],
  [
    'a trickle',
    {
      house: {
        demand: '0.3 gpm',
        distance: '120 ft',
        rise: '10 ft',
        line: { material: 'PE', size: '1-1/4 in', rating: '200 psi' },
      },
    },
  ],
  [
    'three phases',
    {
      pump: {
        setting: '140 ft',
        power: '3 hp',
        phase: 3,
        voltage: '460 V',
        curve: { kind: 'generic', flow: '10 gpm' },
      },
    },
  ],
])('every figure of a rock well with %s can be done again from its text', (_what, change) => {
  const solution = solve(rockWell(change));
  for (const system of SYSTEMS) check(solution, system);
});

test('every figure of any plan can be done again from its text, or says what is missing', () => {
  fc.assert(
    fc.property(anyPlan, fc.constantFrom(...SYSTEMS), (plan: Plan, system) => check(solve(plan), system)),
    { seed: SEED, numRuns: 150 },
  );
});

test('the plan’s own units are taken where none are asked for', () => {
  const solution = solve(rockWell());
  expect(explain(solution, 'totalDynamicHead').result).toMatch(/ ft$/);
  expect(explain(solution, 'totalDynamicHead', 'metric').result).toMatch(/ m$/);
});

test('total dynamic head adds up in plain sight', () => {
  const told = explain(solve(rockWell()), 'totalDynamicHead');
  expect(told.title).toBe('Total dynamic head');
  expect(told.formula).toBe('H = z + r + h_p + h_d + h_l + h_f');
  expect(told.worked).toMatch(/^H = 82 ft \+ 10 ft \+ 138\.\d+ ft \+ /);
  expect(told.symbols.map(({ symbol }) => symbol)).toEqual(['z', 'r', 'h_p', 'h_d', 'h_l', 'h_f']);
});

test('the friction factor and the operating flow stand put back into both sides of their equations', () => {
  const solution = solve(rockWell());
  expect(explain(solution, 'frictionDropPipe').worked).toMatch(/1 \/ √.* = [\d.]+, and −2 × log10/);
  const told = explain(solution, 'operatingFlowAtCutOut').worked!;
  const heads = [...told.matchAll(/H_(?:pump|system) = .*? = ([\d.]+) ft(?:;|$)/g)].map(([, head]) => Number(head));
  expect(heads).toHaveLength(2);
  // The sum of heads is told to a hundredth of a foot.
  expect(Math.abs(heads[0]! - heads[1]!)).toBeLessThan(0.0051);
});

test('an unknown figure names the fields that are missing', () => {
  const bare = { ...rockWell().water, staticLevel: 'unknown', pumping: undefined };
  const told = explain(solve(rockWell({ water: JSON.parse(JSON.stringify(bare)) as object })), 'pumpingWaterLevel');
  expect(told.worked).toBeNull();
  expect(told.unknown.map(({ path }) => path)).toEqual(['water.staticLevel', 'water.pumping']);
  expect(told.symbols[0]!.value).toBe('not known');
});

test('a well that keeps up with its pump says so instead of a time', () => {
  const well = {
    depth: '200 ft',
    yield: '30 gpm',
    casing: { material: 'steel', size: '6 in', bottom: '200 ft' },
    intake: { kind: 'open hole', diameter: '6 in' },
  };
  const told = explain(solve(rockWell({ well })), 'timeToBreakSuction');
  expect(told.unknown.map(({ words }) => words).join()).toMatch(/keeps up/);
});

test('a demand above the tested flow lies outside the range of the test', () => {
  const inside = (demand: string) => explain(solve(rockWell({ house: { demand } })), 'drawdown').range.inside;
  expect(inside('10 gpm')).toBe(true);
  expect(inside('10.5 gpm')).toBe(false);
});

test('explanations cover the whole table of figures, in its order', () => {
  const solution = solve(rockWell());
  expect(explainAll(solution).map(({ name }) => name)).toEqual(
    Object.keys(solution.values).sort((a, b) => order(a) - order(b)),
  );
  function order(name: string): number {
    return explainAll(solution).findIndex((each) => each.name === (name as ValueName));
  }
});

test('a generic pump’s figures say which end of its band they lie on, and what a service factor it was given', () => {
  const solution = solve(rockWell());
  expect(explain(solution, 'operatingFlowAtCutIn').notes.join()).toMatch(/weaker end of a generic pump’s band/);
  expect(explain(solution, 'operatingFlowAtCutInMost').notes.join()).toMatch(/stronger end/);
  const { symbols } = explain(solution, 'shutOffPressureAtTankLeast');
  expect(symbols.find(({ symbol }) => symbol === 'f')).toMatchObject({ value: '1.4' });
  expect(symbols.find(({ symbol }) => symbol === 'k')).toMatchObject({ value: '0.9' });
});

test('a level whose flow nobody wrote down says at which flow it is taken', () => {
  const told = explain(
    solve(rockWell({ water: { staticLevel: '40 ft', pumping: { kind: 'level', level: '82 ft' } } })),
    'drawdown',
  );
  expect(told.symbols.find(({ symbol }) => symbol === 'Q_t')!.meaning).toMatch(/assumed/);
});
