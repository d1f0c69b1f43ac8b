import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { solve, type Plan } from '../../../src/model/index.ts';
import {
  dailyCycle,
  levelAgainstTime,
  poorWell,
  type CycleOptions,
  type DailyCycle,
  type PoorWell,
  type Unknown,
} from '../../../src/model/time/index.ts';
import { feet, gallons, gpm, toGallons } from '../../../src/model/units.ts';
import { edgePlan } from '../plan/edgePlan.ts';
import { anyPlan } from '../../plans/anyPlan.ts';
import { planOf, rockWell, sample } from '../../plans/build.ts';
import { between, SEED } from '../laws.ts';

const DAY = 86400;
const well = (wellYield: string) => ({
  depth: '400 ft',
  casing: { material: 'steel', size: '6 in', bottom: '60 ft', height: '12 in' },
  intake: { kind: 'open hole', diameter: '6 in' },
  yield: wellYield,
  yieldFrom: 'air lift',
});
const pump = { setting: '240 ft', power: '1 hp', curve: { kind: 'generic', flow: '5 gpm' } };

/** 150 ft of water over the intake in a 6 in hole, half a gallon a minute blown with air. */
const tight = (change: Record<string, unknown> = {}) =>
  rockWell({
    well: well('0.5 gpm'),
    water: { staticLevel: '90 ft', pumping: { kind: 'yield only' } },
    pump,
    ...change,
  });

function told<T extends object>(answer: T): Exclude<T, Unknown> {
  if ('reason' in answer) throw new Error(String(answer.reason));
  return answer as Exclude<T, Unknown>;
}
const poor = (plan: Plan, flow: number): PoorWell => told(poorWell(solve(plan), { flow }));
const day = (plan: Plan, options: CycleOptions): DailyCycle => told(dailyCycle(solve(plan), options));

// 0.0408 gal/ft per square inch of bore: 220.3 gal in 150 ft of 6 in; less the drop pipe, 1.315 in outside at least.
test('storage of the low-yield well is that of its bore less the drop pipe', () => {
  const { storage } = poor(tight(), gpm(5));
  const pipe = solve(tight()).facts.dropPipe.outsideDiameter / 0.0254;
  expect(Math.abs(toGallons(storage) / (0.0408 * (36 - pipe ** 2) * 150) - 1)).toBeLessThan(0.001);
});

test('5 gpm against half a gallon a minute empty it in storage over 4.5 gpm, and the yield refills it in storage over 0.5', () => {
  const { storage, breaksSuction, byYield, comesBack } = poor(tight(), gpm(5));
  expect(breaksSuction).toBeCloseTo(storage / gpm(4.5), 6);
  expect(byYield).toBe(breaksSuction);
  expect(comesBack(0.5)!.soonest).toBeCloseTo((0.5 * storage) / gpm(0.5), 6);
});

test('half comes back in ln 2 of the time that the full yield would take for all of it', () => {
  const { storage, comesBack } = poor(tight(), gpm(5));
  const whole = storage / gpm(0.5);
  // The drop pipe and one width of hole from rest to intake: shares of water are shares of drawdown.
  expect(Math.abs(comesBack(0.5)!.likely / (whole * Math.LN2) - 1)).toBeLessThan(1e-6);
});

describe('one time to break suction: figure, account and level against time', () => {
  const agree = (plan: Plan): number | null => {
    const solution = solve(plan);
    const time = solution.values.timeToBreakSuction;
    if (time === null) return null;
    const { breaksSuction, byYield, lowest } = told(poorWell(solution));
    expect(breaksSuction).toBe(time);
    expect(byYield).toBe(time);
    const curve = told(levelAgainstTime(solution, { pumpFor: null }));
    expect(curve.levelAt(time)).toBe(lowest.depth);
    expect(curve.levelAt(0.999 * time)).toBeLessThanOrEqual(lowest.depth);
    if (time < 30 * DAY) {
      expect(curve.breaksSuction).toBe(time);
      expect(told(dailyCycle(solution)).firstRun).toBe(time);
    }
    return time;
  };
  test('of the deep sample of a low yield', () => {
    expect(agree(planOf(sample('slate-hollow')))).toBeGreaterThan(1800);
  });
  test('of a well tested at 3 gpm', () => {
    const pumping = { kind: 'test', flow: '3 gpm', drawdown: '60 ft', after: '4 h' };
    expect(agree(rockWell({ water: { staticLevel: '40 ft', pumping } }))).not.toBeNull();
  });
  test('of a tight aquifer, with a cone that is still told', () => {
    const pumping = { kind: 'aquifer', transmissivity: '0.3 m2/d', storativity: '0.0001' };
    const plan = rockWell({ water: { staticLevel: '40 ft', pumping } });
    const time = agree(plan)!;
    const curve = told(levelAgainstTime(solve(plan), { pumpFor: null }));
    const [near, far] = curve.coneAt(time, [0.1, 5])!;
    expect(near!.drawdown).toBeGreaterThan(far!.drawdown);
    expect(far!.drawdown).toBeGreaterThan(0);
  });
  test('of any plan', () => {
    let compared = 0;
    const each = (plan: Plan) => {
      if (agree(plan) !== null) compared++;
    };
    fc.assert(
      fc.property(anyPlan, (json) => each(planOf(json))),
      { ...SEED, numRuns: 600 },
    );
    expect(compared).toBeGreaterThan(10);
  });
  test('and the pump gives less all the while', () => {
    const plan = tight();
    const curve = told(levelAgainstTime(solve(plan), { pumpFor: null }));
    const time = curve.breaksSuction!;
    expect(curve.flowAt(0)).toBeCloseTo(curve.flow, 12);
    expect(curve.flowAt(0.5 * time)).toBeLessThan(curve.flow);
    expect(curve.flowAt(0.9 * time)).toBeLessThan(curve.flowAt(0.5 * time));
    expect(curve.flowAt(2 * time)).toBeCloseTo(gpm(0.5), 12);
  });
});

test('a step test counts with its largest flow', () => {
  const steps = [
    { flow: '3 gpm', drawdown: '20 ft' },
    { flow: '6 gpm', drawdown: '50 ft' },
  ];
  const plan = rockWell({ water: { staticLevel: '40 ft', pumping: { kind: 'steps', steps } } });
  expect(poor(plan, gpm(5)).wellYield).toBeCloseTo(gpm(6), 12);
});

test('a test at 10 gpm does not say that 12 gpm is too much: the level does', () => {
  const { byYield, byLevel, breaksSuction, yieldFrom } = poor(rockWell(), gpm(12));
  expect(yieldFrom).toBe('test');
  expect(byYield).toBeNull();
  expect(byLevel).toBeNull();
  expect(breaksSuction).toBeNull();
});

test('a well that keeps up is not emptied, and there is nothing to come back', () => {
  const { breaksSuction, comesBack } = poor(rockWell(), gpm(5));
  expect(breaksSuction).toBeNull();
  expect(comesBack(0.9)).toBeNull();
});

test('law: more of the water takes longer to come back, and never less than the full yield would take', () => {
  fc.assert(
    fc.property(between(0.1, 2), between(0.1, 0.45), between(0.5, 0.95), (wellYield, less, more) => {
      const { comesBack } = poor(tight({ well: well(`${wellYield.toFixed(3)} gpm`) }), gpm(5));
      const [soon, late] = [comesBack(less)!, comesBack(more)!];
      expect(late.likely).toBeGreaterThan(soon.likely);
      expect(late.likely).toBeGreaterThan(late.soonest!);
    }),
    { ...SEED, numRuns: 50 },
  );
});

describe('a day of run and rest', () => {
  test('each later cycle pumps what flowed in: the inflow at its mean drawdown', () => {
    const { flow, run, rest, laterDays, mostFlow } = day(tight(), { flow: gpm(5), restart: { share: 0.5 } });
    // Inflow of a bore between full drawdown and half of it, integrated by the trapezoid rule over many small steps.
    const most = feet(150);
    const c = mostFlow / most;
    const area = day(tight(), { flow: gpm(5) }).storage / most;
    let [drawdown, flowedIn] = [most, 0];
    const steps = 100_000;
    for (let i = 0; i < steps; i++) {
      const step = (run! + rest!) / steps;
      const pumping = i * step >= rest! ? flow : 0;
      const inflow = c * drawdown;
      flowedIn += inflow * step;
      drawdown += ((pumping - inflow) * step) / area;
    }
    expect(Math.abs(flowedIn / (flow * run!) - 1)).toBeLessThan(1e-3);
    expect(Math.abs(laterDays / ((flowedIn * DAY) / (run! + rest!)) - 1)).toBeLessThan(1e-3);
    expect(Math.abs(drawdown / most - 1)).toBeLessThan(1e-3);
  });
  test('half a gallon a minute gives no more than 720 gal a day, and the first day adds what was stored', () => {
    const { laterDays, firstDay, storage } = day(tight(), { flow: gpm(5) });
    expect(laterDays).toBeLessThan(gallons(720));
    expect(laterDays).toBeGreaterThan(gallons(400));
    expect(firstDay).toBeGreaterThan(laterDays);
    expect(firstDay).toBeLessThan(gallons(720) + storage);
  });
  test('a pump that starts sooner gets more water', () => {
    const water = (share: number) => day(tight(), { flow: gpm(5), restart: { share } }).laterDays;
    expect(water(0.1)).toBeGreaterThan(water(0.5));
    expect(water(0.5)).toBeGreaterThan(water(0.9));
  });
  test('a rest by timer is that rest', () => {
    expect(day(tight(), { flow: gpm(5), restart: { rest: 1800 } }).rest).toBeCloseTo(1800, 6);
  });
  test('a well that keeps up runs all day', () => {
    const { firstRun, laterDays } = day(rockWell(), { flow: gpm(5) });
    expect(firstRun).toBeNull();
    expect(toGallons(laterDays)).toBeCloseTo(7200, 6);
  });
});

test('law: any plan gives finite figures or a reason', () => {
  fc.assert(
    fc.property(edgePlan, (plan) => {
      const solution = solve(plan);
      for (const answer of [poorWell(solution), dailyCycle(solution)])
        for (const [name, value] of Object.entries(answer))
          if (typeof value === 'number') expect([name, Number.isFinite(value)]).toEqual([name, true]);
    }),
    { ...SEED, numRuns: 100 },
  );
});
