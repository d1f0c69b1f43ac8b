/** "With the water so much lower it would do just this": solved there it does, and a step higher it does not. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { solve, valueAt, withValue, type Plan, type Solution } from '../../../src/model/index.ts';
import type { Own, Shows } from '../../../src/model/matter/own.ts';
import type { SymptomId } from '../../../src/model/matter/symptom.ts';
import { troubleOf } from '../../../src/model/matter/trouble.ts';
import { feet, parseQuantity, writeQuantity } from '../../../src/model/units.ts';
import { anyPlan } from '../../plans/anyPlan.ts';
import { planOf, rockWell, sample, SAMPLES } from '../../plans/build.ts';

const SHOWN: readonly (readonly [SymptomId, Shows])[] = [
  ['no-water', 'nothing'],
  ['weak-flow', 'little'],
  ['never-stops', 'noStop'],
  ['air', 'air'],
];
const STEP = { us: feet(1), metric: 0.5 } as const;

/** As it would be typed: each level that the plan has, so much lower; what the program put in stays where it was. */
function lowered(plan: Plan, by: number): Plan {
  const pinned = solve(plan).assumed.reduce(
    (now, { path, value }) =>
      path === 'pump.setting' || (path === 'top.depth' && plan.top?.kind !== undefined)
        ? withValue(now, path, value)
        : now,
    plan,
  );
  return ['water.staticLevel', 'water.staticHighest', 'water.staticLowest', 'water.pumping.level'].reduce(
    (now, path) => {
      const typed = valueAt(now, path);
      const read = typeof typed === 'string' ? parseQuantity(typed, 'length') : null;
      return read?.ok === true ? withValue(now, path, writeQuantity(read.si + by, 'length', read.unit)) : now;
    },
    pinned,
  );
}

/** By the figures and verdicts that everybody sees. */
function does(shows: Shows, solution: Solution, strong = false): boolean {
  const { facts, values, levels, curves, verdicts, findings } = solution;
  const probe = facts.pump.lowLevelCutOff;
  const intake = Math.min(facts.pump.setting, facts.well.bottom, typeof probe === 'number' ? probe : Infinity) - 1e-6;
  const guarded = probe === true || (typeof probe === 'number' && probe < facts.pump.setting);
  if (levels.static! >= intake) return !(guarded && (shows === 'noStop' || shows === 'air'));
  const reach = strong ? values.shutOffPressureAtTank : values.shutOffPressureAtTankLeast;
  switch (shows) {
    case 'nothing':
      return reach !== null && reach <= (facts.house.kind === 'open tank' ? 0 : facts.house.cutIn);
    case 'noStop':
      return reach !== null && reach < facts.house.cutOut;
    case 'air':
      return (
        !guarded && (curves.atCutInMost?.outpumped === true || (levels.pumping !== null && levels.pumping >= intake))
      );
    case 'little': {
      const told = findings.find(
        ({ rule, together }) => rule === 'PR-54' || together.some((each) => each.rule === 'PR-54'),
      );
      const bad = ['warning', 'danger'].includes(verdicts['PR-54']!);
      const open = verdicts['PR-54'] === 'depends' && told !== undefined && told.severity !== 'note';
      return bad || open || curves.atCutIn?.outpumped === true;
    }
  }
}

type Lower = Extract<Own, { readonly id: 'lower' }>['numbers'];

function told(solution: Solution, symptom: SymptomId): Lower | null {
  const low = troubleOf(solution, symptom).causes.find(({ id }) => id === 'waterLow');
  return (low?.says.find(({ id }) => id === 'lower')?.numbers as Lower | undefined) ?? null;
}

function check(plan: Plan): number {
  const solution = solve(plan);
  const step = STEP[solution.facts.units];
  let checked = 0;
  const at = (shows: Shows, by: number, strong: boolean): void => {
    expect(does(shows, solve(lowered(plan, by)), strong), `${shows} at ${by}`).toBe(true);
    if (by === 0) return;
    const before = Math.max(0, (Math.ceil(by / step - 1e-6) - 1) * step);
    expect(does(shows, solve(lowered(plan, before)), strong), `${shows} at ${before}, before ${by}`).toBe(false);
    checked++;
  };
  for (const [symptom, shows] of SHOWN) {
    const fall = told(solution, symptom);
    if (fall === null) continue;
    expect(fall.shows).toBe(shows);
    at(shows, fall.by, false);
    if (fall.most !== null) at(shows, fall.most, true);
  }
  return checked;
}

describe('the fall that is told does it, and a step less does not', () => {
  test.each(SAMPLES)('%s', (name) => {
    expect(check(planOf(sample(name)))).toBeGreaterThan(0);
  });
  test('of any plan', () => {
    let checked = 0;
    fc.assert(
      fc.property(anyPlan, (json) => {
        checked += check(planOf(json));
      }),
      { numRuns: 120, seed: 33 },
    );
    expect(checked).toBeGreaterThan(100);
  }, 60_000);
});

test('a weak pump reaches its lift before the water leaves it', () => {
  // Shut-off of a generic 1/2 hp, 10 gpm pump lies well under 40 psi over 150 ft.
  const weak = rockWell({
    water: { staticLevel: '40 ft', pumping: { kind: 'test', flow: '10 gpm', drawdown: '5 ft', after: '4 h' } },
    pump: { setting: '190 ft', power: '1/2 hp', curve: { kind: 'generic', flow: '10 gpm' } },
  });
  const fall = told(solve(weak), 'no-water')!;
  expect(fall.dryAt).toBeNull();
  expect(fall.by).toBeLessThan(feet(150));
  const stops = told(solve(weak), 'never-stops')!;
  // A psi is 2.31 ft of water: the cut-out is 20 psi over the cut-in.
  expect(fall.by - stops.by).toBeGreaterThan(feet(44));
  expect(fall.by - stops.by).toBeLessThan(feet(48));
  // Of a rating there are weaker and stronger pumps: the strongest lifts from deeper.
  expect(stops.most).toBeGreaterThan(stops.by);
});

test('a dry season that goes as far makes it likely, and one that does not is told beside it', () => {
  const water = (dryFall: string) => ({
    staticLevel: '40 ft',
    dryFall,
    pumping: { kind: 'test', flow: '10 gpm', drawdown: '20 ft', after: '4 h' },
  });
  const low = (dryFall: string) =>
    troubleOf(
      solve(rockWell({ water: water(dryFall), pump: { ...rockWell().pump, setting: '180 ft' } })),
      'no-water',
    ).causes.find(({ id }) => id === 'waterLow')!;
  expect(low('145 ft').likelihood).toBe('likely');
  expect(low('15 ft').likelihood).toBe('open');
  expect(low('15 ft').says.map(({ id }) => id)).toEqual(['lower', 'dryFall']);
});

test('where nobody knows the water’s level, it is asked for and no fall is told', () => {
  const low = troubleOf(solve(rockWell({ water: { staticLevel: 'unknown' } })), 'no-water').causes.find(
    ({ id }) => id === 'waterLow',
  )!;
  expect(low.says).toEqual([]);
  expect(low.deciding).toContain('water.staticLevel');
});

test('protection against running dry stops the pump before it runs on or brings air', () => {
  const guarded = rockWell({ pump: { ...rockWell().pump, lowLevelCutOff: '135 ft' } });
  expect(told(solve(guarded), 'never-stops')).toBeNull();
  expect(told(solve(guarded), 'air')).toBeNull();
  expect(told(solve(guarded), 'no-water')).toMatchObject({ dryAt: 'cutOff', by: feet(95) });
  const bare = rockWell();
  expect(told(solve(bare), 'never-stops')).toMatchObject({ dryAt: 'intake' });
});
