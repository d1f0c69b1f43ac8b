/** The order of the work builds just the plan's string: each piece once, and none before what it stands on. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { solve, type Plan, type Solution } from '../../../src/model/index.ts';
import { graphOf } from '../../../src/model/string/graph/graph.ts';
import { pipeRun } from '../../../src/model/string/pipeRun.ts';
import { orderOfWork } from '../../../src/model/work/orderOfWork.ts';
import type { Kind, Step, StepId } from '../../../src/model/work/step.ts';
import { feet, toFeet, toPoundsForce } from '../../../src/model/units.ts';
import { anyPlan } from '../../plans/anyPlan.ts';
import { planOf, rockWell, sample, SAMPLES } from '../../plans/build.ts';
import { anyString } from '../string/anyString.ts';

const work = (solution: Solution, kind?: Kind) => {
  const done = orderOfWork(solution, kind);
  if (done.kind === 'stop') throw new Error(`stopped: ${done.why}`);
  return done;
};
const steps = (plan: Plan, kind?: Kind): readonly Step[] => work(solve(plan), kind).steps;
const ids = (plan: Plan, kind?: Kind): readonly StepId[] => steps(plan, kind).map(({ id }) => id);
const STEEL = { material: 'galvanized steel', size: '1-1/4 in', sectionLength: '21 ft' };

describe('laws of any string', () => {
  /** What is there before it is put on: by the joints of the graph, but for wires, which are landed from either end. */
  const check = (solution: Solution, kind: Kind): void => {
    const done = orderOfWork(solution, kind);
    if (done.kind === 'stop') return;
    const { pieces, joints } = graphOf(solution);
    const put = done.steps.flatMap(({ puts }) => puts);
    expect(new Set(put).size, 'no piece twice').toBe(put.length);
    expect([...put, ...done.there].sort()).toEqual(pieces.map(({ key }) => key).sort());
    if (kind === 'new') expect(done.there).toEqual(['casing/0']);
    const keys = done.steps.map(({ key }) => key);
    expect(new Set(keys).size).toBe(keys.length);
    const stepOf = new Map(done.steps.flatMap(({ puts }, i) => puts.map((key) => [key, i] as const)));
    for (const { a, b, first, way } of joints) {
      if (way.by === 'wires') continue;
      const [before, then] = first === 'a' ? [a.piece, b.piece] : [b.piece, a.piece];
      const [early, late] = [stepOf.get(before) ?? -1, stepOf.get(then) ?? Infinity];
      if (!stepOf.has(then)) continue;
      expect(early, `${then} on ${before}`).toBeLessThanOrEqual(late);
    }
    // A string only goes down, and never past where it hangs.
    const down = done.steps.flatMap((each) => (each.id === 'lower' || each.id === 'sections' ? [each.numbers] : []));
    for (const [i, { from, to }] of down.entries()) {
      expect(to).toBeGreaterThanOrEqual(from - 1e-9);
      if (i > 0) expect(from).toBeGreaterThanOrEqual(down[i - 1]!.to - 1e-9);
    }
  };

  test('as anyone might hang it, new or in place of an old one', () => {
    fc.assert(
      fc.property(anyString, fc.constantFrom<Kind>('new', 'replace'), (plan, kind) => check(solve(plan), kind)),
      { numRuns: 200, seed: 21 },
    );
  });
  test('and of any plan', () => {
    fc.assert(
      fc.property(anyPlan, fc.constantFrom<Kind>('new', 'replace'), (json, kind) => check(solve(planOf(json)), kind)),
      { numRuns: 150, seed: 22 },
    );
  });
  test.each(SAMPLES)('%s', (name) => check(solve(planOf(sample(name))), 'new'));
});

// Common practice, no source: what is slid over or fastened below comes on before what is above it is joined.
describe('the order that the trade keeps', () => {
  const before = (all: readonly StepId[], ...these: readonly StepId[]): void => {
    const places = these.map((id) => all.indexOf(id));
    expect(places, these.join(', ')).not.toContain(-1);
    expect([...places].sort((a, b) => a - b)).toEqual(places);
  };

  test('permit and buried services before digging, the trench and the adapter before the pump hangs', () => {
    before(
      ids(rockWell()),
      'permits',
      'services',
      'trench',
      'hole',
      'adapterBody',
      'line',
      'insulation',
      'lift',
      'seat',
    );
  });
  test('the breaker is off before anything is opened, and the pressure let off before the string is unseated', () => {
    before(ids(rockWell(), 'replace'), 'breakerOff', 'houseShut', 'openTop', 'unseat', 'pull', 'sound', 'insulation');
  });
  test('a splice low over the pump is made on the ground, a high one when the cable is there', () => {
    const low = steps(rockWell({ string: { splices: ['4 ft'] } })).find(({ id }) => id === 'splice')!;
    expect(low).toMatchObject({ phase: 'pump', numbers: { beforeLowering: true, joints: 4 } });
    const high = steps(rockWell({ string: { splices: ['60 ft'] } })).find(({ id }) => id === 'splice')!;
    expect(high).toMatchObject({ phase: 'lowering', numbers: { beforeLowering: false } });
  });
  test('rope on the pump before it is lowered, tied at the top once it hangs', () => {
    const plan = rockWell({ rope: { material: 'polypropylene', diameter: '1/4 in', tied: 'casing hook' } });
    before(ids(plan), 'ropeOn', 'lift', 'seat', 'ropeTied', 'cap');
  });
  test('the bond and the splice before the cap, the cap before power', () => {
    before(ids(rockWell()), 'conduit', 'capSplice', 'cap', 'firstRun');
  });
  test('a tank is charged with air before power, and held under pressure before the trench is filled', () => {
    before(ids(rockWell()), 'tank', 'firstRun', 'pressureTest', 'backfill', 'readings', 'disinfect', 'flush', 'sample');
  });
  test('a seal is slid on before its collar, and the line follows', () => {
    before(ids(rockWell({ top: { kind: 'seal' } })), 'lower', 'seal', 'aboveSeal', 'line', 'conduit', 'capSplice');
    expect(ids(rockWell({ top: { kind: 'seal' } }))).not.toContain('trench');
  });
  test('a rope is tied to the eye under a seal before the seal sits on the casing', () => {
    const rope = { material: 'polypropylene', diameter: '1/4 in', tied: 'casing hook' };
    before(ids(rockWell({ top: { kind: 'seal' }, rope })), 'lower', 'ropeTied', 'seal');
  });
  test('tee and plug of a seal come off with the old string and on again, and the empty tank’s air is looked at', () => {
    const sealed = rockWell({ top: { kind: 'seal' } });
    before(ids(sealed, 'replace'), 'houseShut', 'unseat', 'seal', 'aboveSeal', 'capSplice', 'tank', 'firstRun');
    expect(work(solve(sealed), 'replace').there).toEqual(expect.arrayContaining(['union', 'buriedLine', 'tank']));
    expect(ids(sealed, 'replace')).not.toContain('line');
  });
  test('an old string’s trench, adapter and house stay as they are', () => {
    const of = work(solve(rockWell()), 'replace');
    expect(of.there).toEqual(expect.arrayContaining(['casing/0', 'pitlessAdapter', 'buriedLine', 'conduit', 'tank']));
    expect(of.there).not.toContain('pitlessAdapter/spool');
  });
  test('a pump that the plan tells as installed is replaced', () => {
    expect(work(solve(planOf({ ...rockWell(), status: { 'pump.setting': 'installed' } }))).kind).toBe('replace');
    expect(work(solve(rockWell())).kind).toBe('new');
  });
});

test('a probe is fastened over the casing’s rim, not under it', () => {
  const plan = rockWell({ pump: { ...rockWell().pump, lowLevelCutOff: '130 ft' } });
  const of = work(solve(plan)).steps;
  const at = of.findIndex(({ id }) => id === 'probe');
  const before = of.slice(0, at).findLast((each) => each.id === 'lower');
  const probe = of[at]!;
  // The pump's outlet hangs at 138.5 ft, the probe 8.5 ft over it; when it is fastened, it stands over the rim still.
  const height = 138.5 - 130;
  const inside = before?.id === 'lower' ? toFeet(before.numbers.to) + 1 : 0;
  expect(probe.puts).toContain('probeWires');
  expect(inside).toBeLessThan(height - 1);
});

test('in place of an old pump nothing is cut before the well is sounded, and the box is looked at before power', () => {
  const of = ids(rockWell(), 'replace');
  expect(of.indexOf('layOut')).toBeGreaterThan(of.indexOf('sound'));
  expect(of.indexOf('boxCheck')).toBeLessThan(of.indexOf('firstRun'));
});

test('a valve in rigid pipe takes the next length with it', () => {
  const valve = steps(rockWell({ dropPipe: STEEL, string: { checkValves: ['0 ft', '63 ft'] } })).find(
    ({ id }) => id === 'valve',
  );
  expect(valve?.id === 'valve' && valve.numbers.next).toBeGreaterThan(0);
});

test('figures that nobody said are told with their step', () => {
  const { top, ...rest } = rockWell();
  expect(top).toBeDefined();
  const hole = steps(rest as Plan).find(({ id }) => id === 'hole')!;
  expect(hole.assumed).toContain('top.depth');
  expect(steps(rockWell()).find(({ id }) => id === 'hole')!.assumed).toEqual([]);
});

test('a casing of which nobody said the material may need its bond, and the step says so', () => {
  const { casing, ...well } = rockWell().well as { casing: object };
  expect(casing).toBeDefined();
  const plan = rockWell({ well: { ...well, casing: { size: '6 in', bottom: '200 ft', height: '12 in' } } });
  const conduit = steps(plan).find(({ id }) => id === 'conduit');
  expect(conduit?.id === 'conduit' && conduit.numbers.bonded).toBeNull();
});

test('sections of rigid pipe that nothing comes between are one step, and a valve in the pipe is its own', () => {
  const of = steps(rockWell({ dropPipe: STEEL, string: { checkValves: ['0 ft', '63 ft'], splices: ['4 ft'] } }));
  const lowering = of.filter(({ phase }) => phase === 'lowering').map(({ id }) => id);
  expect(lowering.filter((id) => id === 'sections').length).toBe(2);
  expect(lowering).toContain('valve');
  const sections = of.find((each) => each.id === 'sections')!;
  expect(sections.id === 'sections' && toFeet(sections.numbers.longest)).toBeCloseTo(21, 6);
});

test('what hangs on the hook grows on the way down and ends at what is said of the whole string', () => {
  const solution = solve(rockWell());
  const down = work(solution).steps.flatMap((each) => (each.id === 'lower' ? [each.numbers] : []));
  const hooks = down.flatMap(({ hook }) => [hook.from!, hook.to!]);
  for (let i = 1; i < hooks.length; i++) expect(hooks[i]!).toBeGreaterThanOrEqual(hooks[i - 1]! - 1e-9);
});

test('a string is let down until its pipe’s end is a hand over the casing, and no further before its top joint is made', () => {
  for (const plan of [rockWell(), rockWell({ dropPipe: STEEL }), rockWell({ top: { kind: 'seal' } })]) {
    const solution = solve(plan);
    const down = work(solution).steps.flatMap((each) => ('to' in each.numbers ? [each.numbers] : []));
    const { facts, values } = solution;
    // The pipe's end hangs over the pump's outlet by all that is cut and what stands between: from there up, 4 in.
    const end = values.pumpDischargeDepth! - pipeRun(facts).top;
    expect(down.at(-1)!.to + facts.well.casingHeight).toBeCloseTo(end - 4 * 0.0254, 6);
  }
});

test('rigid pipe that stands over the casing hangs on the hook too', () => {
  const hookOf = (plan: Plan) => {
    const lift = steps(plan).find((each) => each.id === 'lift');
    return lift?.id === 'lift' ? lift.numbers.hook : null;
  };
  const flexible = hookOf(rockWell())!;
  const rigid = hookOf(rockWell({ dropPipe: STEEL }))!;
  expect([flexible.threaded, rigid.threaded]).toEqual([false, true]);
  // 21 ft of 1-1/4 in schedule 40 steel at 2.27 lb/ft (ASME B36.10), and less than a foot of nipple and valve below it.
  const more = toPoundsForce(rigid.from! - flexible.from!);
  expect([more > 21 * 2.26, more < 22 * 2.28]).toEqual([true, true]);
  // Gear is chosen for what the string comes to when it has to be drawn again.
  expect(flexible.gear).toBeCloseTo(solve(rockWell()).values.hangLoadAtRest!, 6);
});

test('what holds a string is judged as the rule of the hanging load judges it', () => {
  const variants = {
    twoPeople: 'twoCanHold',
    wheel: 'needsWheel',
    hoist: 'needsHoist',
    machine: 'needsMachine',
    threaded: 'threaded',
  };
  const deep = { power: '3 hp', curve: { kind: 'generic', flow: '10 gpm' } };
  const plans = ['50 ft', '140 ft', '190 ft'].flatMap((setting) => [
    rockWell({ pump: { ...rockWell().pump, setting } }),
    rockWell({ pump: { ...deep, setting }, dropPipe: { material: 'PE', size: '2 in', rating: '200 psi' } }),
    rockWell({ pump: { ...deep, setting }, dropPipe: STEEL }),
  ]);
  const seen = plans.map((plan) => {
    const solution = solve(plan);
    const lift = steps(plan).find((each) => each.id === 'lift');
    const holder = lift?.id === 'lift' ? lift.numbers.hook.holder : 'unknown';
    const said = [...solution.findings, ...solution.atWork, ...solution.holding].find(
      ({ rule }) => rule === 'PR-51',
    )?.variant;
    expect(holder === 'unknown' || holder === 'oldUnknown' ? null : variants[holder]).toBe(said);
    return holder;
  });
  expect(new Set(seen).size).toBeGreaterThan(3);
});

describe('what is pulled', () => {
  const pulled = (plan: Plan) => {
    const work = orderOfWork(solve(plan), 'replace');
    const found = work.kind === 'stop' ? undefined : work.steps.find(({ id }) => id === 'pull');
    if (found?.id !== 'pull') throw new Error('nothing is pulled');
    return found.numbers;
  };
  test('is not reckoned from the new string: where nobody said what hangs there, no load is told', () => {
    const { hook, old } = pulled(rockWell());
    expect([old, hook.to, hook.gear, hook.holder]).toEqual(['not told', null, null, 'oldUnknown']);
    expect(pulled(rockWell({ status: { 'dropPipe.material': 'to choose' } })).old).toBe('not told');
  });
  test('as it is told to stand there: its load, and how it comes out', () => {
    const steel = pulled(rockWell({ dropPipe: STEEL, status: { dropPipe: 'installed' } }));
    const coil = pulled(rockWell({ status: { 'dropPipe.material': 'reported' } }));
    expect([steel.old, coil.old]).toEqual(['threaded', 'bends']);
    const { hangLoadDry } = solve(rockWell()).values;
    expect(coil.hook.to).toBeCloseTo(hangLoadDry! * 1.5, 6);
    expect(steel.hook.to).toBeGreaterThan(coil.hook.to! * 1.5);
  });
});

test('the pump’s weight being unknown, what hangs is unknown', () => {
  const pump = { setting: '140 ft', curve: { kind: 'generic', flow: '10 gpm' } };
  for (const each of steps(rockWell({ pump })))
    if ('hook' in each.numbers)
      expect(each.numbers.hook).toMatchObject({ from: null, to: null, gear: null, holder: 'unknown' });
});

test('one hears of pits while nobody said whether the top is in one, and of the coil where it is cut open', () => {
  const cautionsOf = (plan: Plan, id: StepId) => steps(plan).find((each) => each.id === id)?.cautions;
  expect(cautionsOf(rockWell(), 'measure')).toContain('pit');
  expect(cautionsOf(rockWell({ well: { ...rockWell().well, inPit: false } }), 'measure')).not.toContain('pit');
  expect(cautionsOf(rockWell(), 'layOut')).toContain('coil');
  expect(cautionsOf(rockWell({ dropPipe: STEEL }), 'layOut')).not.toContain('coil');
  for (const id of ['trench', 'hole', 'adapterBody', 'line', 'conduit'] as const)
    expect(cautionsOf(rockWell(), id), id).toContain('digging');
});

test('nothing is told of a flowing well or of one in a pit but to stop', () => {
  const flowing = rockWell({ water: { ...rockWell().water, staticLevel: '-2 ft' } });
  expect(orderOfWork(solve(flowing))).toEqual({ kind: 'stop', why: 'flowing' });
  expect(orderOfWork(solve(rockWell({ well: { ...rockWell().well, inPit: true } })))).toEqual({
    kind: 'stop',
    why: 'inPit',
  });
  expect(feet(0)).toBe(0);
});
