import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { pumpAtLevel, sampleCurves } from '../../src/model/figures/curves.ts';
import { solve, type Plan, type Solution } from '../../src/model/index.ts';
import { feet, toFeet, toGallons, toGpm, toPoundsForce, toPsi } from '../../src/model/units.ts';
import { anyPlan } from '../plans/anyPlan.ts';
import { edgePlan } from './plan/edgePlan.ts';
import { SAMPLES, planOf, rockWell, sample } from '../plans/build.ts';

const near = (measured: number | null, expected: number, relative: number) => {
  expect(measured).not.toBeNull();
  expect(Math.abs((measured as number) - expected)).toBeLessThanOrEqual(Math.abs(expected) * relative);
};

// Worked by hand from specific capacity (Freeze & Cherry 1979, Groundwater, ch. 8), geometry and 0.0408 gal/ft per in2
// of bore (USDA NRCS and others); tolerance 0.2 % as the figures are printed to three or four digits.
describe('a residential well worked from top to bottom', () => {
  const { values } = solve(rockWell());
  test('7 gpm from a well tested at 10 gpm with 60 ft of drawdown falls 42 ft, to 82 ft', () => {
    near(values.drawdown && toFeet(values.drawdown), 42, 0.002);
    near(values.pumpingWaterLevel && toFeet(values.pumpingWaterLevel), 82, 0.002);
    near(values.submergence && toFeet(values.submergence), 58, 0.002);
  });
  test('the motor ends 58.5 ft above the bottom and 133.5 ft of pipe hangs below the adapter', () => {
    near(values.clearanceToBottom && toFeet(values.clearanceToBottom), 58.5, 0.002);
    near(values.dropPipeCutLength && toFeet(values.dropPipeCutLength), 133.5, 0.002);
  });
  test('160 ft of water in a 6.065 in casing are 240 gal and want 58.6 fl oz of 5.25 % bleach for 100 mg/L', () => {
    near(values.wellVolume && toGallons(values.wellVolume), 240.13, 0.002);
    near(values.chlorineDose && toGallons(values.chlorineDose) * 128, 58.55, 0.002);
  });
});

test('a seal on top adds the casing height to the drop pipe: 138.5 ft of discharge and 12 in make 139.5 ft', () => {
  const { values } = solve(rockWell({ top: { kind: 'seal' } }));
  near(values.dropPipeCutLength && toFeet(values.dropPipeCutLength), 139.5, 1e-6);
  expect(values.pitlessBelowFrost).toBeNull();
});

// EPANET 2.2 User Manual (US EPA), "Pump curves": one design point gives 4/3 of its head at no flow.
// 50 % of 1 hp at 10 gpm: 3960 x 0.5 / 10 = 198 ft (constant 3960 = 33,000 / 8.34), and 264 ft shut off. Service factor
// of 1 hp at 60 Hz, 1.4, and the band of 0.9 to 1.2 of it: common practice, from memory.
test("a generic pump's shut-off is four thirds of the head that its power, service factor and efficiency give", () => {
  const { values } = solve(rockWell());
  near(values.shutOffPressureAtPump && toPsi(values.shutOffPressureAtPump) * 2.307, 264 * 1.4 * 1.2, 0.003);
  const atTank = (pressure: number | null) => toPsi(pressure ?? NaN) * 2.307 + 50;
  near(atTank(values.shutOffPressureAtTank), 264 * 1.4 * 1.2, 0.003);
  near(atTank(values.shutOffPressureAtTankLeast), 264 * 1.4 * 0.9, 0.003);
});

test('a pump named in kilowatts may run on 50 Hz or 60: its band reaches from the one to the other', () => {
  const pump = { setting: '140 ft', power: '0.75 kW', curve: { kind: 'generic', flow: '10 gpm' } };
  const of = (frequency?: string) => solve(rockWell({ pump: frequency === undefined ? pump : { ...pump, frequency } }));
  const [unsaid, fifty, sixty] = [of(), of('50 Hz'), of('60 Hz')];
  expect(unsaid.facts.pump.frequency).toBeNull();
  expect(unsaid.unknown).toContain('pump.frequency');
  expect(unsaid.values.shutOffPressureAtTankLeast).toBe(fifty.values.shutOffPressureAtTankLeast);
  expect(unsaid.values.shutOffPressureAtPump).toBe(sixty.values.shutOffPressureAtPump);
  near(fifty.values.shutOffPressureAtPump, sixty.values.shutOffPressureAtPump! / 1.4, 1e-9);
});

test('a pump named in horsepower is taken to run on 60 Hz, which is listed as assumed', () => {
  const { assumed, facts } = solve(rockWell());
  expect(facts.pump.frequency).toBe(60);
  expect(assumed).toContainEqual({ path: 'pump.frequency', value: '60 Hz' });
});

test("a maker's own points leave no band", () => {
  const points = [
    ['0 gpm', '310 ft'],
    ['10 gpm', '235 ft'],
    ['15 gpm', '140 ft'],
  ];
  const { values, assumed } = solve(
    rockWell({ pump: { setting: '140 ft', power: '1 hp', curve: { kind: 'points', points } } }),
  );
  expect(values.operatingFlowAtCutInMost).toBe(values.operatingFlowAtCutIn);
  expect(values.shutOffPressureAtTankLeast).toBe(values.shutOffPressureAtTank);
  expect(assumed.map(({ path }) => path)).not.toContain('pump.frequency');
});

test('the operating point lies on the pump curve and on what well and pipes ask for', () => {
  const solution = solve(rockWell());
  const { atCutOut } = solution.curves;
  const { pump } = sampleCurves(solution);
  expect(atCutOut).not.toBeNull();
  const shutOff = pump[0]!.head;
  const rated = 10;
  const flow = toGpm(atCutOut!.flow);
  near(atCutOut!.head, shutOff * (1 - 0.25 * (flow / rated) ** 2), 1e-6);
});

describe('a well that cannot keep up with its pump', () => {
  const poor = (change: Record<string, unknown> = {}) =>
    rockWell({
      well: {
        depth: '700 ft',
        yield: '1 gpm',
        yieldFrom: 'air lift',
        casing: { material: 'steel', size: '6 in', bottom: '60 ft' },
        intake: { kind: 'open hole', diameter: '6 in' },
      },
      water: { staticLevel: '80 ft', pumping: { kind: 'test', flow: '1 gpm', drawdown: '470 ft', after: '4 h' } },
      pump: { setting: '640 ft', power: '2 hp', curve: { kind: 'generic', flow: '5 gpm' } },
      ...change,
    });
  test('no operating point puts the water below the intake', () => {
    const { curves } = solve(poor());
    for (const point of [curves.atCutIn, curves.atCutOut, curves.atCutInMost]) {
      expect(toFeet(point!.waterLevel)).toBeCloseTo(640, 9);
      expect(point!.outpumped).toBe(true);
    }
  });
  test('nor below a cut-off, and the flow there is larger, as less is to lift', () => {
    const pump = { ...poor().pump, lowLevelCutOff: '600 ft' };
    const { curves } = solve(poor({ pump }));
    expect(toFeet(curves.atCutIn!.waterLevel)).toBeCloseTo(600, 9);
    expect(curves.atCutIn!.flow).toBeGreaterThan(solve(poor()).curves.atCutIn!.flow);
  });
  test('a yield alone, under what the pump gives even with the water at the intake, gives the same flow', () => {
    const { curves } = solve(poor({ water: { staticLevel: '80 ft', pumping: { kind: 'yield only' } } }));
    expect(curves.atCutIn).toEqual(solve(poor()).curves.atCutIn);
  });
  test('the flow falls from its value at the static level to that with the water at the intake', () => {
    const { facts, values } = solve(poor());
    const at = (depth: number) => pumpAtLevel(facts, { end: 'most', tank: 'cutIn' }, feet(depth))!.flow;
    const flows = [80, 200, 320, 440, 560, 640].map(at);
    for (let i = 1; i < flows.length; i++) expect(flows[i]).toBeLessThan(flows[i - 1]!);
    expect(values.operatingFlowAtCutInMost).toBeCloseTo(flows[5]!, 12);
  });
  test('a pump whose intake hangs above the water at rest moves none', () => {
    const { values } = solve(
      poor({ water: { staticLevel: '650 ft', pumping: { kind: 'test', flow: '1 gpm', drawdown: '20 ft' } } }),
    );
    expect(values.operatingFlowAtCutIn).toBe(0);
    expect(values.usableStorage).toBe(0);
    expect(values.timeToBreakSuction).toBeNull();
  });
});

describe('water that the pump can take', () => {
  test('ends where a weak pump no longer reaches cut-in, though its intake hangs deeper', () => {
    const weak = { setting: '190 ft', power: '1/2 hp', curve: { kind: 'generic', flow: '10 gpm' } };
    const { values, facts } = solve(rockWell({ pump: weak }));
    // 3960 x 0.5 x 0.5 / 10 x 1.6 x 0.9 x 4/3 = 190 ft at no flow, less 10 ft of rise and 40 psi x 2.307 ft.
    const deepest = (3960 * 0.5 * 0.5 * 1.6 * 0.9 * 4) / 30 - 10 - 40 * 2.307;
    const perFoot = 0.0408 * (6.065 ** 2 - (facts.dropPipe.outsideDiameter / 0.0254) ** 2);
    near(values.usableStorage && toGallons(values.usableStorage), perFoot * (deepest - 40), 0.01);
  });
  test('and volume and dose are unknown where nobody says how wide the bore is', () => {
    const well = {
      depth: '200 ft',
      casing: { material: 'steel', size: '6 in', bottom: '60 ft' },
      intake: { kind: 'open hole' },
    };
    const { values } = solve(rockWell({ well }));
    expect([values.usableStorage, values.wellVolume, values.chlorineDose]).toEqual([null, null, null]);
  });
});

describe('a pumping level whose flow nobody wrote down', () => {
  const level = (flow?: string) => ({
    staticLevel: '40 ft',
    pumping: { kind: 'level', level: '82 ft', ...(flow === undefined ? {} : { flow }) },
  });
  test('is taken as measured at what the house wants, and that is listed as assumed', () => {
    const solution = solve(rockWell({ water: level() }));
    expect(solution.assumed).toContainEqual({ path: 'water.pumping.flow', value: '7 gpm' });
    expect(solution.values).toEqual(solve(rockWell({ water: level('7 gpm') })).values);
  });
  test('is no drawdown where the demand is unknown too', () => {
    const solution = solve(rockWell({ water: level(), house: { demand: 'unknown' } }));
    expect(solution.unknown).toContain('water.pumping.flow');
    expect(solution.values.specificCapacity).toBeNull();
    expect(solution.curves.atCutIn).toBeNull();
  });
});

test('total dynamic head is the sum of its six terms', () => {
  const { values } = solve(rockWell());
  const sum =
    values.lift! +
    values.rise! +
    values.pressureHead! +
    values.frictionDropPipe! +
    values.frictionLine! +
    values.frictionFittings!;
  near(values.totalDynamicHead, sum, 1e-12);
});

// 10.4 A at the service factor of 1 hp at 230 V: common practice, from memory; NFPA 70, Table 430.248, has 8.0. Chapter 9, Table 8: 1.24 ohm per 1,000 ft of stranded 10 AWG.
test('the wire loses what current, code table and twice its one-way length say', () => {
  const { values } = solve(rockWell());
  const oneWay = 120 + ((138.5 - 4 + 1) * 1.02 + 5) + 4;
  near(values.voltageDropRunning, (2 * 10.4 * 1.24 * oneWay) / 1000 / 230, 0.001);
});

describe('what the driller did not say', () => {
  test('an air-lift yield leaves the pumping level and all that rests on it unknown', () => {
    const water = { staticLevel: '40 ft', pumping: { kind: 'yield only' } };
    const { values, verdicts, findings } = solve(rockWell({ water }));
    for (const name of [
      'drawdown',
      'pumpingWaterLevel',
      'submergence',
      'totalDynamicHead',
      'operatingFlowAtCutOut',
    ] as const)
      expect(values[name]).toBeNull();
    // Water covers the intake with the water at rest and not with the water at the intake: told in one entry.
    for (const rule of ['PR-02', 'PR-08']) expect(verdicts[rule]).toBe('depends');
    expect(findings.map(({ rule, severity }) => [rule, severity])).toEqual([['PR-53', 'warning']]);
    expect(findings[0]!.together.map(({ rule }) => rule)).toEqual(['PR-02', 'PR-08']);
    // Where the inflows are nobody knows either, and they have no ends.
    expect(verdicts['PR-04']).toBe('not judged');
  });
  test('and is a note where a probe stops the pump ten feet over its intake', () => {
    const water = { staticLevel: '40 ft', pumping: { kind: 'yield only' } };
    const pump = { ...rockWell().pump, lowLevelCutOff: '125 ft' };
    const { findings, verdicts } = solve(rockWell({ water, pump }));
    expect(verdicts['PR-02']).toBe('ok');
    expect(findings.map(({ rule, severity }) => [rule, severity])).toEqual([['PR-53', 'note']]);
  });
  test('an unknown frost depth judges no frost rule and lists the path', () => {
    const solution = solve(rockWell({ site: {} }));
    expect(solution.values.frostDepth).toBeNull();
    expect(solution.verdicts['PR-19']).toBe('not judged');
    expect(solution.unknown).toContain('site.frostDepth');
  });
  test('choices that were left out are assumed and listed', () => {
    const { assumed } = solve(rockWell());
    const paths = assumed.map((each) => each.path);
    expect(paths).toEqual(
      expect.arrayContaining(['site.waterTemperature', 'house.cutIn', 'house.cutOut', 'pump.voltage']),
    );
  });
});

/** "PR-01" to "PR-65", none left out. */
const EVERY_RULE = Array.from({ length: 65 }, (_, i) => `PR-${String(i + 1).padStart(2, '0')}`);

describe('laws', () => {
  const finite = (value: unknown, path: string): void => {
    if (typeof value === 'number') expect(Number.isFinite(value), path).toBe(true);
    else if (value !== null && typeof value === 'object')
      for (const [key, each] of Object.entries(value)) finite(each, `${path}.${key}`);
  };
  test('any valid plan solves to finite figures, a verdict for every rule and no throw', () => {
    fc.assert(
      fc.property(anyPlan, (json) => {
        const solution = solve(planOf(json));
        finite({ ...solution, plan: null, sampled: sampleCurves(solution) }, 'solution');
        expect(Object.keys(solution.verdicts).sort()).toEqual(EVERY_RULE);
      }),
      { numRuns: 400, seed: 7 },
    );
  });
  test('no operating point implies a water level below the intake, unless the water rests there', () => {
    const check = (plan: Plan) => {
      const { curves, facts } = solve(plan);
      for (const point of [curves.atCutIn, curves.atCutOut, curves.atCutInMost])
        if (point !== null && point.flow > 0) {
          expect(point.waterLevel).toBeLessThanOrEqual(Math.min(facts.pump.setting, facts.well.bottom) + 1e-9);
        }
    };
    fc.assert(
      fc.property(anyPlan, (json) => check(planOf(json))),
      { numRuns: 300, seed: 9 },
    );
    fc.assert(fc.property(edgePlan, check), { numRuns: 200, seed: 10 });
  });
  test('the stronger end of the band gives no less than the weaker', () => {
    fc.assert(
      fc.property(anyPlan, (json) => {
        const { values, curves } = solve(planOf(json));
        const [least, most] = [values.operatingFlowAtCutIn, values.operatingFlowAtCutInMost];
        // A well that keeps up with the weaker end only is drawn down by the stronger: then the flows are not of one level.
        if (least !== null && most !== null && curves.atCutIn!.outpumped === curves.atCutInMost!.outpumped)
          expect(most).toBeGreaterThanOrEqual(least - 1e-12);
      }),
      { numRuns: 300, seed: 11 },
    );
  });
  test('so does any plan whose fields stand at the ends of their limits', () => {
    fc.assert(
      fc.property(edgePlan, (plan) => finite({ ...solve(plan), plan: null }, 'solution')),
      { numRuns: 400, seed: 8 },
    );
  });

  const over = (paths: (step: number) => Plan, figure: (solution: Solution) => number | null) =>
    Array.from({ length: 12 }, (_, i) => figure(solve(paths(i))));
  const rises = (row: (number | null)[]) => {
    for (let i = 1; i < row.length; i++) expect(row[i]!).toBeGreaterThan(row[i - 1]!);
  };
  test('a deeper pump is heavier on the hook, wants more wire and loses more volts', () => {
    const deeper = (i: number) =>
      rockWell({ pump: { setting: `${90 + 8 * i} ft`, power: '1 hp', curve: { kind: 'generic', flow: '10 gpm' } } });
    rises(over(deeper, ({ values }) => values.hangLoadDry));
    rises(over(deeper, ({ values }) => values.wireLength));
    rises(over(deeper, ({ values }) => values.voltageDropRunning));
  });
  test('more flow means more drawdown and more friction', () => {
    const house = { distance: '120 ft', rise: '10 ft', line: { material: 'PE', size: '1-1/4 in', rating: '200 psi' } };
    const thirstier = (i: number) => rockWell({ house: { ...house, demand: `${2 + i} gpm` } });
    rises(over(thirstier, ({ values }) => values.drawdown));
    rises(over(thirstier, ({ values }) => values.frictionDropPipe));
    rises(over(thirstier, ({ values }) => values.totalDynamicHead));
  });
  test('a lower static level takes from the flow at cut-out', () => {
    const water = (i: number) => ({
      staticLevel: `${20 + 4 * i} ft`,
      pumping: { kind: 'test', flow: '10 gpm', drawdown: '30 ft', after: '4 h' },
    });
    rises(
      over(
        (i) => rockWell({ water: water(i) }),
        ({ values }) => -values.operatingFlowAtCutOut!,
      ),
    );
  });
  test('a full pipe out of water weighs more than one that hangs in it', () => {
    const { values } = solve(rockWell());
    expect(values.hangLoadLowering!).toBeLessThan(values.hangLoadAtRest!);
    expect(values.hangLoadAtRest!).toBeLessThan(values.hangLoadPumping!);
    expect(toPoundsForce(values.hangLoadPumping!)).toBeLessThan(toPoundsForce(values.hangLoadDry!));
  });
});

test('the impossible is a finding, not an error: a pump below the bottom, water above the ground', () => {
  const deep = solve(
    rockWell({ pump: { setting: '260 ft', power: '1 hp', curve: { kind: 'generic', flow: '10 gpm' } } }),
  );
  expect(deep.verdicts['PR-01']).toBe('danger');
  const flowing = solve(
    rockWell({ water: { staticLevel: '-3 ft', pumping: { kind: 'test', flow: '10 gpm', drawdown: '20 ft' } } }),
  );
  expect(flowing.verdicts['PR-38']).toBe('danger');
});

// Demo wells, invented: common practice, no source.
test.each<readonly [(typeof SAMPLES)[number], readonly string[]]>([
  ['tamarack-ridge', ['note PR-51']],
  ['heron-flats', []],
  ['willow-dale', ['note PR-51']],
  ['palo-amargo', ['note PR-51']],
  ['slate-hollow', ['note PR-55']],
])('%s is sound: no warning, one note at most', (name, told) => {
  const { findings } = solve(planOf(sample(name)));
  expect(findings.map(({ rule, severity }) => `${severity} ${rule}`)).toEqual(told);
});

test('the deep sample of a low yield is carried by what stands in its bore, and a probe stops its pump', () => {
  const { findings, facts, levels, values } = solve(planOf(sample('slate-hollow')));
  expect(levels.pumping).toBeNull();
  expect(facts.pump.lowLevelCutOff).toBeCloseTo(feet(290), 9);
  expect(findings[0]).toMatchObject({ rule: 'PR-55', variant: 'carried' });
  // An hour at 4.5 gpm, while half of the 1.5 gpm that was blown flows in.
  expect(toGallons(values.usableStorage ?? 0)).toBeGreaterThan(60 * (4.5 - 0.75));
});
