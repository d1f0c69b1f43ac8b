/** As it was built: beside the plan, never in its figures; and what a reading says of this very well. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { asPlan, pulledAsFacts } from '../../../src/model/asBuilt/asPlan.ts';
import { othersOf, rowsOf, withInstalled } from '../../../src/model/asBuilt/asked.ts';
import { bucketFlow } from '../../../src/model/asBuilt/bucketFlow.ts';
import { insulation } from '../../../src/model/asBuilt/insulation.ts';
import { compared, expectations, type Compared } from '../../../src/model/asBuilt/measured.ts';
import type { Reading } from '../../../src/model/asBuilt/readings.ts';
import { sameValue } from '../../../src/model/asBuilt/sameValue.ts';
import { pumpAtLevel } from '../../../src/model/figures/curves.ts';
import { wellRelation } from '../../../src/model/formulas/wellRelation.ts';
import { solve, type Plan } from '../../../src/model/index.ts';
import { withValue } from '../../../src/model/plan/editPlan.ts';
import { readPlan, readPlanText } from '../../../src/model/plan/readPlan.ts';
import { startCard } from '../../../src/model/work/startCard.ts';
import { feet, gpm, psi, toFeet, toGpm } from '../../../src/model/units.ts';
import { anyPlan } from '../../plans/anyPlan.ts';
import { planOf, rockWell, sample } from '../../plans/build.ts';

const WELL = planOf(sample('tamarack-ridge'));
const problemsOf = (asBuilt: object): readonly { path: string; write: string }[] => {
  const reading = readPlan({ ...WELL, asBuilt });
  return reading.ok ? [] : reading.problems;
};
const planFrom = (plan: Plan): Plan => {
  const reading = asPlan(plan);
  if (!reading.ok) throw new Error(reading.problems[0]?.problem);
  return reading.plan;
};
const readings = (measured: NonNullable<Plan['asBuilt']>['measured'], plan: Plan = WELL): readonly Compared[] =>
  compared(solve({ ...plan, asBuilt: { measured } }));
const reading = (all: readonly Compared[], name: Reading): Compared => {
  const found = all.find((each) => each.reading === name);
  if (found === undefined) throw new Error(`no reading ${name}`);
  return found;
};

describe('what is written down', () => {
  test('is kept as typed', () => {
    const asBuilt = {
      date: '2026-06-01',
      by: 'R. and the neighbour',
      installed: { 'pump.setting': '54,9 m', 'house.tank': '44 gal', 'string.checkValves.0': '0 ft' },
      measured: { flow: '10.5 gpm', insulation: '> 200' },
      pulled: { intake: '171 ft', found: 'worn wheels' },
    };
    const text = JSON.stringify({ ...WELL, asBuilt }, null, 2);
    const read = readPlanText(text);
    expect(read.ok && JSON.stringify(read.plan, null, 2)).toBe(text);
  });
  test('of a field that there is not, or in words that it does not take, says what and how to mend it', () => {
    expect(problemsOf({ installed: { 'pump.seting': '170 ft' } })).toMatchObject([
      { path: 'asBuilt.installed.pump.seting', write: 'did you mean "pump.setting"?' },
    ]);
    expect(problemsOf({ installed: { 'pump.setting': 'deep' } })).toMatchObject([
      { path: 'asBuilt.installed.pump.setting' },
    ]);
    expect(problemsOf({ installed: { 'dropPipe.material': 'bamboo' } })[0]?.write).toContain('"PE"');
    expect(problemsOf({ installed: { 'pump.wires': 4 } })).toHaveLength(1);
    expect(problemsOf({ installed: { 'asBuilt.date': 'x' } })).toHaveLength(1);
    expect(problemsOf({ measured: { flow: 'a lot' } })).toHaveLength(1);
  });
  test('changes no figure and no finding, whatever it says', () => {
    fc.assert(
      fc.property(anyPlan, fc.constantFrom('12 ft', '200 ft', '61 m'), (json, depth) => {
        const plan = planOf(json);
        const bare = withValue(plan, 'asBuilt', undefined);
        const noted = { ...bare, asBuilt: { installed: { 'pump.setting': depth }, measured: { flow: '1 gpm' } } };
        const [one, other] = [solve(bare), solve(noted)];
        expect(other.values).toEqual(one.values);
        expect(other.verdicts).toEqual(one.verdicts);
        expect(other.parts).toEqual(one.parts);
      }),
      { numRuns: 40, seed: 5 },
    );
  });
  test('what is taken out again leaves nothing behind', () => {
    const noted = withInstalled(WELL, 'house.tank', '60 gal');
    expect(noted.asBuilt?.installed).toEqual({ 'house.tank': '60 gal' });
    expect(withInstalled(noted, 'house.tank', null)).toEqual(WELL);
  });
});

describe('planned beside put in', () => {
  const row = (plan: Plan, path: string) => rowsOf(solve(plan)).find((each) => each.path === path);
  test('tells what was planned, and that the program put it in where nobody did', () => {
    expect(row(WELL, 'pump.setting')).toMatchObject({ planned: '180 ft', assumed: false, differs: false });
    const { house, ...rest } = rockWell();
    expect(house).toBeDefined();
    expect(row(rest, 'house.cutIn')).toMatchObject({ planned: '40 psi', assumed: true });
  });
  // 180 ft are 54.864 m exactly: the foot is 0.3048 m (NIST SP 811, B.8).
  test.each([
    ['pump.setting', '180 ft', '54.86 m', true],
    ['pump.setting', '180 ft', '181.5 ft', false],
    ['wire.size', '10 AWG', '12 AWG', false],
    ['house.cutIn', '40 psi', '276 kPa', true],
    ['house.cutIn', '40 psi', '30 psi', false],
    ['string.fittings', 'brass', 'Brass', true],
  ] as const)('%s: %s and %s the same, %s', (path, one, other, same) => {
    expect(sameValue(path, one, other)).toBe(same);
  });
  test('made the plan, it stands there, no fix moves it, and what was planned is still told', () => {
    const noted = withInstalled(withInstalled(WELL, 'pump.setting', '171 ft'), 'house.tank', '60 gal');
    expect(rowsOf(solve(noted)).filter(({ isPlan }) => isPlan)).toEqual([]);
    const next = planFrom(noted);
    const differing = rowsOf(solve(next)).filter(({ differs }) => differs);
    expect(differing.map(({ path, planned, isPlan }) => [path, planned, isPlan])).toEqual([
      ['pump.setting', '180 ft', true],
      ['house.tank', '44 gal', true],
    ]);
    expect(next.pump?.setting).toBe('171 ft');
    expect(next.status).toMatchObject({ 'pump.setting': 'installed', 'house.tank': 'installed' });
    // Once more changes nothing, and a second change keeps what was planned first.
    expect(planFrom(next)).toEqual(next);
    expect(planFrom(withInstalled(next, 'pump.setting', '165 ft')).asBuilt?.planned?.['pump.setting']).toBe('180 ft');
  });
  test('a second valve stands over the one that was assumed', () => {
    const { string, ...rest } = WELL;
    expect(string).toBeDefined();
    const next = planFrom(withInstalled({ ...rest, string: { splices: ['4 ft'] } }, 'string.checkValves.1', '100 ft'));
    expect(next.string?.checkValves).toEqual([
      ...(solve({ ...rest })
        .assumed.find(({ path }) => path === 'string.checkValves')
        ?.value.split(', ') ?? []),
      '100 ft',
    ]);
  });
  test('what else may be written down is of the build, and nothing that moves the well', () => {
    const others = othersOf(solve(WELL));
    expect(others).toContain('string.checkValves.1');
    expect(others).toContain('pump.lowLevelCutOff');
    expect(
      others.filter((path) => /^(?:well|water|site|disinfection)\.|demand|people|distance|kind$/.test(path)),
    ).toEqual([]);
    expect(new Set(others).size).toBe(others.length);
  });
  test('where the plan counts from the casing’s top, a depth says so', () => {
    const fromTop = { ...WELL, well: { ...WELL.well, depthsFrom: 'casing top' as const } };
    const rows = rowsOf(solve(fromTop));
    expect(rows.filter(({ fromCasingTop }) => fromCasingTop).map(({ path }) => path)).toEqual(['pump.setting']);
    expect(rowsOf(solve(WELL)).some(({ fromCasingTop }) => fromCasingTop)).toBe(false);
  });
  test('the sounded bottom of the old pump’s record becomes a fact that was measured', () => {
    const next = pulledAsFacts({ ...WELL, asBuilt: { pulled: { soundedDepth: '214 ft' } } });
    expect(next.ok && next.plan.well.soundedDepth).toBe('214 ft');
    expect(next.ok && next.plan.status?.['well.soundedDepth']).toBe('measured');
    // It is told from the ground; a plan that counts from a casing's top 16 in up has it 16 in deeper.
    const well = { ...WELL.well, depthsFrom: 'casing top' as const };
    const fromTop = pulledAsFacts({ ...WELL, well, asBuilt: { pulled: { soundedDepth: '214 ft' } } });
    if (!fromTop.ok) throw new Error('not read');
    expect(toFeet(solve(fromTop.plan).facts.well.soundedDepth ?? NaN)).toBeCloseTo(214, 2);
  });
});

// 5 gal in 30 s: 10 gpm, by the definition of the minute.
describe('a bucket', () => {
  test.each([
    ['5 gal in 30 s', 'us', '10 gpm'],
    ['20 L in 40 s', 'metric', '30 L/min'],
    ['5 gal IN 0.5 min', 'us', '10 gpm'],
  ] as const)('%s', (text, units, flow) => {
    expect(bucketFlow(text, units)).toBe(flow);
  });
  test.each(['10 gpm', '5 gal in 0 s', '5 in 30 s', '5 gal in 30 s in all', 'in'])('%s is none', (text) => {
    expect(bucketFlow(text, 'us')).toBeNull();
  });
});

describe('the first start', () => {
  test('is held against what was put in, and against the switch as it was read', () => {
    const shallow = {
      ...WELL,
      asBuilt: { installed: { 'pump.setting': '150 ft' }, measured: { pumpingLevel: '145 ft' } },
    };
    expect(reading(compared(solve(shallow)), 'pumpingLevel').causes[0]).toMatchObject({ id: 'nearIntake' });
    // At a higher cut-in the same pump gives less: that is no leak.
    const { facts } = solve(WELL);
    const high = { ...facts, house: { ...facts.house, cutIn: psi(50) } };
    const gives = pumpAtLevel(high, { end: 'least', tank: 'cutIn' }, feet(95))!.flow;
    const measured = { cutIn: '50 psi', pumpingLevel: '95 ft', flow: `${toGpm(gives)} gpm` };
    expect(reading(readings(measured), 'flow').verdict).toBe('as expected');
    expect(reading(readings({ precharge: '48 psi', cutIn: '50 psi' }), 'precharge').verdict).toBe('as expected');
  });
  test('the flow is held against the water that was read, also where nobody knew its level', () => {
    const blown = planOf(sample('slate-hollow'));
    const { facts, levels } = solve(blown);
    const level = (levels.static ?? 0) + feet(60);
    const most = pumpAtLevel(facts, { end: 'most', tank: 'cutIn' }, level)!.flow;
    const at = (share: number) =>
      reading(readings({ pumpingLevel: `${toFeet(level)} ft`, flow: `${toGpm(most * share)} gpm` }, blown), 'flow')
        .verdict;
    expect([at(1), at(0.2), at(1.4)]).toEqual(['as expected', 'low', 'high']);
  });
  test('the same yield a foot at a larger flow is no lesser well', () => {
    const { facts, levels } = solve(WELL);
    const relation = wellRelation(facts.water.pumping, facts.water.staticLevel)!;
    const level = `${toFeet(levels.static! + relation.drawdownAt(gpm(13)))} ft`;
    const { verdict, causes } = reading(readings({ flow: '13 gpm', pumpingLevel: level }), 'pumpingLevel');
    expect([verdict, causes]).toEqual(['as expected', []]);
  });
  test('a cut-out at or under the cut-in is read again', () => {
    expect(reading(readings({ cutIn: '40 psi', cutOut: '38 psi' }), 'cutOut').causes[0]).toEqual({ id: 'readAgain' });
  });
  // IEEE Std 43-1974: kV + 1 megohm, 1.23 at 230 V.
  test.each([
    ['200', 230, false],
    ['> 200 megohms', 230, false],
    ['1.3', 230, false],
    ['1,2 MΩ', 230, true],
    ['0.2 megohm', 460, true],
    ['1.4', 460, true],
  ] as const)('insulation of %s at %d V is low: %s', (typed, volts, low) => {
    expect(insulation(typed, volts)?.low).toBe(low);
  });
  test.each(['good', '', '20 ohm', undefined])('insulation "%s" is no number of megohms', (typed) => {
    expect(insulation(typed, 230)).toBeNull();
  });
  test('an open tank has neither air nor switch to read', () => {
    const house = { ...WELL.house, kind: 'open tank' as const };
    expect([...expectations(solve({ ...WELL, house })).keys()]).not.toContain('cutIn');
    expect([...expectations(solve(WELL)).keys()]).toContain('cutIn');
  });
  const card = startCard(solve(WELL));
  test('as expected it names no cause', () => {
    const all = readings({
      staticLevel: '62 ft',
      voltage: '236 V',
      current: '8 A',
      flow: `${toGpm((card.flow!.least + card.flow!.most) / 2)} gpm`,
      precharge: '38 psi',
      cutIn: '40 psi',
      cutOut: '60 psi',
      run: '2 min',
    });
    expect(all.map(({ reading: name, verdict, causes }) => [name, verdict, causes])).toEqual(
      all.map(({ reading: name }) => [name, 'as expected', []]),
    );
  });
  test('a smaller flow tells at which water this pump gives just that', () => {
    const { facts } = solve(WELL);
    const flow = pumpAtLevel(facts, { end: 'least', tank: 'cutIn' }, feet(150))!.flow;
    const { verdict, causes } = reading(readings({ flow: `${toGpm(flow)} gpm` }), 'flow');
    expect(verdict).toBe('low');
    const [cause] = causes;
    if (cause?.id !== 'waterLower') throw new Error('no level is told');
    expect(toFeet(cause.from)).toBeCloseTo(150, 1);
    expect(cause.from).toBeGreaterThan(solve(WELL).values.pumpingWaterLevel!);
    expect(cause.to).toBeLessThanOrEqual(facts.pump.setting);
  });
  test('less than it gives with water at its intake is not the water alone', () => {
    const { facts } = solve(WELL);
    const { causes } = reading(readings({ flow: '0.5 gpm' }), 'flow');
    const gives = pumpAtLevel(facts, { end: 'least', tank: 'cutIn' }, facts.pump.setting)!.flow;
    expect(causes[0]).toEqual({ id: 'notEvenAtIntake', gives });
    expect(gives).toBeGreaterThan(gpm(0.5));
  });
  test('with the water measured higher it is not the water', () => {
    const { facts } = solve(WELL);
    const flow = `${toGpm(pumpAtLevel(facts, { end: 'least', tank: 'cutIn' }, feet(150))!.flow)} gpm`;
    const { causes } = reading(readings({ flow, pumpingLevel: '95 ft' }), 'flow');
    expect(causes[0]).toMatchObject({ id: 'notTheWater', measured: feet(95) });
    expect(causes.map(({ id }) => id)).toContain('wayOut');
  });
  test('a level drawn down further tells what the well gives, and how little is left', () => {
    const all = readings({ staticLevel: '62 ft', pumpingLevel: '174 ft', flow: '10 gpm' });
    const { causes } = reading(all, 'pumpingLevel');
    expect(causes[0]).toMatchObject({ id: 'nearIntake' });
    expect(toFeet((causes[0] as { over: number }).over)).toBeCloseTo(6, 9);
    // 10 gpm over 112 ft: specific capacity, Driscoll (1986), Groundwater and Wells, ch. 9 (from memory).
    const [, gives] = causes;
    if (gives?.id !== 'givesLess') throw new Error('nothing is told of the well');
    expect(gives.now).toBeCloseTo(gpm(10) / feet(112), 9);
  });
  test('water at the intake is told where nobody knew what to expect', () => {
    const blown = planOf(sample('slate-hollow'));
    const intake = solve(blown).facts.pump.setting;
    const [level] = readings({ pumpingLevel: `${toFeet(intake) + 3} ft` }, blown);
    expect(level?.causes.map(({ id }) => id)).toContain('nearIntake');
  });
  test('where the water stood lower before the start, it is expected lower after it', () => {
    const planned = solve(WELL).values.pumpingWaterLevel!;
    const { expected } = reading(readings({ staticLevel: '72 ft', pumpingLevel: '106 ft' }), 'pumpingLevel');
    expect(expected?.least).toBeCloseTo(planned + feet(10), 9);
  });
  test('amps over the plate at a low voltage come of the voltage first', () => {
    const { verdict, causes } = reading(readings({ current: '14 A', voltage: '200 V' }), 'current');
    expect([verdict, causes[0]?.id]).toEqual(['high', 'lowVoltage']);
    expect(reading(readings({ current: '14 A' }), 'current').causes.map(({ id }) => id)).not.toContain('lowVoltage');
    expect(reading(readings({ current: '2 A' }), 'current').causes[0]).toMatchObject({ id: 'drawsAir' });
  });
  test('air over the cut-in is said, and what to set it to', () => {
    const { causes } = reading(readings({ precharge: '46 psi' }), 'precharge');
    expect(causes.map(({ id }) => id)).toEqual(['airOverCutIn', 'setAir']);
    expect(causes[1]).toMatchObject({ to: solve(WELL).facts.house.precharge });
    expect(reading(readings({ cutIn: '30 psi' }), 'cutIn').causes[0]).toMatchObject({ id: 'setSwitch', to: psi(40) });
  });
  test('every number of any comparison is finite', () => {
    fc.assert(
      fc.property(
        anyPlan,
        fc.record({
          flow: fc.constantFrom('0.2 gpm', '5 gpm', '90 gpm'),
          pumpingLevel: fc.constantFrom('2 ft', '90 ft', '900 ft'),
          current: fc.constantFrom('1 A', '40 A'),
          run: fc.constantFrom('3 s', '4 min'),
          staticLevel: fc.constantFrom('-3 ft', '50 ft', '400 ft'),
        }),
        (json, measured) => {
          for (const { causes, expected } of readings(measured, planOf(json)))
            for (const value of [...causes.flatMap((cause) => Object.values(cause)), expected?.least ?? 0])
              if (typeof value === 'number') expect(Number.isFinite(value)).toBe(true);
        },
      ),
      { numRuns: 60, seed: 9 },
    );
  });
});
