/** The time until the water is gone, against small steps in depth taken here and against printed gallons per foot. */
import { describe, expect, test } from 'vitest';
import { pumpAtLevel } from '../../../src/model/figures/curves.ts';
import { solve, type Plan } from '../../../src/model/index.ts';
import { withValue } from '../../../src/model/plan/editPlan.ts';
import { feet, gpm, toFeet, toGpm } from '../../../src/model/units.ts';
import { rockWell } from '../../plans/build.ts';

const timeOf = (plan: Plan): number | null => solve(plan).values.timeToBreakSuction;

/** What the plan says, in feet and gallons a minute, apart from the figures. */
interface Told {
  readonly tested: number;
  readonly drawdown: number;
  readonly wellYield: number | null;
}

/**
 * Small steps in depth, the slope taken in their middle: each lasts as long as the pump needs to take the ring's water
 * and what flows in meanwhile. The pump's flow is searched for anew at every depth.
 */
function marched(plan: Plan, { tested, drawdown, wellYield }: Told, steps = 20_000): number {
  const { facts, bore } = solve(plan);
  const from = facts.water.staticLevel!;
  const high = (facts.pump.setting - from) / steps;
  let time = 0;
  for (let i = 0; i < steps; i++) {
    const depth = from + (i + 0.5) * high;
    const { insideRadius } = bore.find(({ top, bottom }) => top <= depth && depth <= bottom)!;
    const area = Math.PI * (insideRadius ** 2 - facts.dropPipe.outsideDiameter ** 2 / 4);
    const pumped = toGpm(pumpAtLevel(facts, { end: 'most', tank: 'cutIn' }, depth)!.flow);
    const inflow = Math.min((tested * toFeet(depth - from)) / drawdown, wellYield ?? Infinity);
    time += (area * high) / gpm(pumped - inflow);
  }
  return time;
}

const well = (wellYield: number) => ({
  depth: '400 ft',
  casing: { material: 'steel', size: '6 in', bottom: '60 ft', height: '12 in' },
  intake: { kind: 'open hole', diameter: '6 in' },
  yield: `${wellYield} gpm`,
  yieldFrom: 'pump',
});

/** Two laws of a well's inflow: as the drawdown, and no more than the yield; so it turns on the way down. */
function turning({ tested, drawdown, wellYield }: Told, pump: object): Plan {
  const pumping = { kind: 'test', flow: `${tested} gpm`, drawdown: `${drawdown} ft`, after: '4 h' };
  return rockWell({
    ...(wellYield === null ? {} : { well: well(wellYield) }),
    water: { staticLevel: '40 ft', pumping },
    pump: { setting: '180 ft', power: '1 hp', curve: { kind: 'generic', flow: '7 gpm' }, ...pump },
  });
}

describe('where a valve holds the flow a little over the yield', () => {
  test.each([
    [2, 3, 5],
    [2.9, 3, 5],
    [2.9, 3, 80],
    [1, 3, 100],
    [2.5, 3, 0.5],
  ])('%d gpm come in at the most, 3 gpm are pumped, tested at %d gpm with %d ft', (wellYield, tested, drawdown) => {
    const told = { tested, drawdown, wellYield };
    const plan = turning(told, { flowLimiter: '3 gpm' });
    expect(Math.abs(timeOf(plan)! / marched(plan, told) - 1)).toBeLessThan(1e-4);
  });
  // By hand: 3 gpm less 0.6 gpm/ft of drawdown down to 2 gpm at 3 1/3 ft, then 3 - 2 gpm for the rest.
  test('in one width of casing it is the logarithm down to the turn, and volume over 1 gpm below it', () => {
    const cased = { ...well(2), depth: '200 ft', casing: { material: 'steel', size: '6 in', bottom: '200 ft' } };
    const plan = withValue(turning({ tested: 3, drawdown: 5, wellYield: 2 }, { flowLimiter: '3 gpm' }), 'well', cased);
    const { facts, bore } = solve(plan);
    const area = Math.PI * (bore[0]!.insideRadius ** 2 - facts.dropPipe.outsideDiameter ** 2 / 4);
    const c = gpm(3) / feet(5);
    const turn = feet(5) * (2 / 3);
    const below = facts.pump.setting - facts.water.staticLevel! - turn;
    const byHand = (area / c) * Math.log(3) + (area * below) / gpm(1);
    expect(Math.abs(timeOf(plan)! / byHand - 1)).toBeLessThan(1e-9);
  });
});

describe('where the pump gives less and less', () => {
  test.each([
    [1, 20, null],
    [5, 90, null],
    [5, 110, null],
    [6, 20, 4],
    [6, 20, 5],
    [8, 5, 5.5],
    [7, 140, 5],
  ])('tested at %d gpm with %d ft, yield %d', (tested, drawdown, wellYield) => {
    const told = { tested, drawdown, wellYield };
    const plan = turning(told, {});
    expect(Math.abs(timeOf(plan)! / marched(plan, told) - 1)).toBeLessThan(1e-4);
  });
  test('and a valve that ends to hold on the way down', () => {
    const told = { tested: 3, drawdown: 60, wellYield: 2 };
    const plan = turning(told, { flowLimiter: '9 gpm', setting: '380 ft' });
    const { facts } = solve(plan);
    const at = (depth: number) => toGpm(pumpAtLevel(facts, { end: 'most', tank: 'cutIn' }, feet(depth))!.flow);
    expect(at(60)).toBeCloseTo(9, 9);
    expect(at(370)).toBeLessThan(8.9);
    expect(Math.abs(timeOf(plan)! / marched(plan, told) - 1)).toBeLessThan(1e-4);
  });
});

// MIL-HDBK-1164 (1997), Operation and Maintenance of Water Supply Systems, Table 1: a 6 in hole holds 1.4688 gal a foot.
// The table's own 0.0408 gal/ft for each square inch of the diameter takes the drop pipe off again.
test('5 gpm against a yield of 1 gpm empty 140 ft of 6 in hole in its printed gallons over 4 gpm', () => {
  const plan = rockWell({
    well: { ...well(1), casing: { material: 'steel', size: '6 in', bottom: '38 ft', height: '12 in' } },
    water: { staticLevel: '40 ft', pumping: { kind: 'yield only' } },
    pump: { setting: '180 ft', power: '1 hp', curve: { kind: 'generic', flow: '7 gpm' }, flowLimiter: '5 gpm' },
  });
  const pipe = solve(plan).facts.dropPipe.outsideDiameter / 0.0254;
  const minutes = ((1.4688 - 0.0408 * pipe * pipe) * 140) / 4;
  expect(Math.abs(timeOf(plan)! / 60 / minutes - 1)).toBeLessThan(0.001);
});

test('water at rest a hair above the lowest level that the pump draws it to is no way to fall, and no fault', () => {
  for (const apart of ['59.13', '59.1299999', '59.129999999999995', '59.1300001']) {
    const plan = rockWell({
      well: {
        depth: '79 m',
        casing: { material: 'steel', size: '6 in', bottom: '12.5 m', height: '35 cm' },
        intake: { kind: 'open hole', diameter: '152 mm' },
        yield: '0.4 L/min',
      },
      water: {
        staticLevel: `${apart} m`,
        pumping: { kind: 'test', flow: '0.4 L/min', drawdown: '42.67 m', after: '6 h' },
      },
      pump: {
        setting: '62.18 m',
        power: '3/4 hp',
        curve: { kind: 'generic', flow: '5 gpm' },
        lowLevelCutOff: '59.13 m',
      },
    });
    expect(timeOf(plan) ?? 0).toBeLessThan(1);
  }
});
