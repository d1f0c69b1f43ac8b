/** What is the matter: every symptom has causes, each at a place that the well has, and nothing is said that the plan does not say. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { solve, valueAt, withValue, type Plan, type Solution } from '../../../src/model/index.ts';
import { standing } from '../../../src/model/fixes/standing.ts';
import type { Cause, CauseId, Likelihood } from '../../../src/model/matter/cause.ts';
import { CAUSES_OF } from '../../../src/model/matter/orderOfLooking.ts';
import type { OwnId, OwnNumbers } from '../../../src/model/matter/own.ts';
import { SYMPTOMS, type SymptomId } from '../../../src/model/matter/symptom.ts';
import { troubleOf } from '../../../src/model/matter/trouble.ts';
import { feet, psi } from '../../../src/model/units.ts';
import { anyPlan } from '../../plans/anyPlan.ts';
import { planOf, rockWell, sample, SAMPLES } from '../../plans/build.ts';
import { BAD } from '../../wells/bad.ts';
import { anyString } from '../string/anyString.ts';

const causes = (solution: Solution, symptom: SymptomId): readonly Cause[] => troubleOf(solution, symptom).causes;

function cause(plan: Plan, symptom: SymptomId, id: CauseId): Cause {
  const found = causes(solve(plan), symptom).find((each) => each.id === id);
  if (found === undefined) throw new Error(`no cause ${id}`);
  return found;
}

function own<Id extends OwnId>({ says }: Cause, id: Id): OwnNumbers[Id] | undefined {
  return says.find((each) => each.id === id)?.numbers as OwnNumbers[Id] | undefined;
}

const order = (all: readonly Cause[]): readonly CauseId[] => all.map(({ id }) => id);

describe('laws of any well', () => {
  const check = (solution: Solution): void => {
    const keys = new Set(solution.parts.map(({ key }) => key));
    for (const symptom of SYMPTOMS) {
      const all = causes(solution, symptom);
      expect(all.length, symptom).toBeGreaterThanOrEqual(2);
      expect(new Set(order(all)).size).toBe(all.length);
      expect(CAUSES_OF[symptom]).toEqual(expect.arrayContaining([...order(all)]));
      for (const each of all) {
        expect(each.parts.length, each.id).toBeGreaterThan(0);
        expect([...keys], each.id).toEqual(expect.arrayContaining([...each.parts]));
        expect(solution.parts.find(({ key }) => key === each.parts[0])?.kind).toBe(each.kind);
        judged(each, solution);
        for (const { id, numbers } of each.says) finite(`${each.id}: ${id}`, numbers);
        levels(each, solution);
      }
      inOrder(all, symptom);
    }
  };

  const finite = (of: string, numbers: object): void => {
    for (const [name, value] of Object.entries(numbers) as [string, unknown][])
      if (typeof value === 'number') expect(Number.isFinite(value), `${of} ${name} is ${value}`).toBe(true);
  };

  /** No level of the water is told that lies under the well. */
  const levels = (each: Cause, { facts }: Solution): void => {
    const bottom = facts.well.bottom + 1e-6;
    for (const numbers of [own(each, 'drawnDown'), own(each, 'staysOver')])
      if (numbers !== undefined) expect(numbers.level, each.id).toBeLessThanOrEqual(bottom);
    const fall = own(each, 'lower');
    if (fall !== undefined && facts.water.staticLevel !== null && fall.by > 0) {
      expect(facts.water.staticLevel + fall.by).toBeLessThanOrEqual(bottom);
      if (fall.most !== null) expect(facts.water.staticLevel + fall.most).toBeLessThanOrEqual(bottom);
    }
    const pipe = own(each, 'pipeInAir');
    if (pipe !== undefined) {
      expect(pipe.to).toBeLessThanOrEqual(bottom);
      expect(pipe.length).toBeCloseTo(pipe.to - pipe.from, 9);
    }
  };

  /** A mark is what the rules say, or what was said. */
  const judged = (each: Cause, solution: Solution): void => {
    for (const finding of each.found) {
      expect(solution.findings).toContain(finding);
      expect([finding.rule, ...finding.together.map(({ rule }) => rule)].some((r) => standing(solution, r) >= 2)).toBe(
        true,
      );
      expect(each.likelihood).toBe('likely');
    }
    for (const held of each.against) {
      expect(solution.verdicts[held.rule]).toBe('ok');
      expect([held.assumed, held.unsaid, held.taken]).toEqual([[], [], null]);
      expect(each.likelihood).toBe('unlikely');
    }
    const unsaid = (path: string): boolean =>
      [undefined, 'unknown'].includes(valueAt(solution.plan, path) as undefined);
    const assumed = solution.assumed.map(({ path }) => path.replace('well.casings.0.', 'well.casing.'));
    for (const path of each.assumed) expect(assumed, each.id).toContain(path);
    // What lacks is asked for where it lacks; a field that a rule turns on may have been said in another way.
    if (each.found.length === 0)
      for (const path of each.deciding) expect([path, unsaid(path) || isOpen(path, solution)]).toEqual([path, true]);
    if (each.likelihood === 'unlikely') expect(each.deciding).toEqual([]);
  };
  const isOpen = (path: string, { notJudged, findings }: Solution): boolean =>
    notJudged.some(({ fields }) => fields.includes(path)) || findings.some(({ turn }) => turn?.field === path);

  const inOrder = (all: readonly Cause[], symptom: SymptomId): void => {
    const rank: Record<Likelihood, number> = { likely: 0, open: 1, unlikely: 2 };
    const rest = all.filter(({ id }) => !['power', 'terminal'].includes(id));
    for (const [i, each] of rest.entries()) {
      const before = rest[i - 1];
      if (before === undefined) continue;
      expect(rank[before.likelihood]).toBeLessThanOrEqual(rank[each.likelihood]);
      if (before.likelihood === each.likelihood)
        expect(CAUSES_OF[symptom].indexOf(before.id)).toBeLessThan(CAUSES_OF[symptom].indexOf(each.id));
    }
  };

  test('of any plan', () => {
    fc.assert(
      fc.property(anyPlan, (json) => check(solve(planOf(json)))),
      { numRuns: 80, seed: 31 },
    );
  }, 60_000);
  test('of any string', () => {
    fc.assert(
      fc.property(anyString, (plan) => check(solve(plan))),
      { numRuns: 40, seed: 32 },
    );
  }, 60_000);
  test.each(SAMPLES)('%s', (name) => check(solve(planOf(sample(name)))));
});

describe('figures are those of the solution', () => {
  const plans: readonly (readonly [string, Plan])[] = SAMPLES.map((name) => [name, planOf(sample(name))]);
  test.each(plans)('%s', (_, plan) => {
    const solution = solve(plan);
    const { values, facts } = solution;
    const all = SYMPTOMS.flatMap((symptom) => causes(solution, symptom));
    const of = <Id extends OwnId>(id: Id) => all.flatMap((each) => own(each, id) ?? []);
    for (const each of of('gives'))
      expect(each).toMatchObject({ least: values.operatingFlowAtCutIn, most: values.operatingFlowAtCutInMost });
    for (const each of of('topsOut'))
      expect(each).toMatchObject({ least: values.shutOffPressureAtTankLeast, most: values.shutOffPressureAtTank });
    for (const each of of('tankGives')) expect(each.water).toBe(values.tankDrawdown);
    for (const each of of('leaks')) expect(each.water).toBe(values.tankDrawdown);
    for (const each of of('runningDrop')) expect(each.share).toBe(values.voltageDropRunning);
    for (const each of of('drawnDown')) expect(each.time).toBe(values.timeToBreakSuction);
    for (const each of of('dose'))
      expect(each).toMatchObject({ water: values.wellVolume, product: values.chlorineDose });
    for (const each of of('offBottom')) expect(each.clearance).toBe(values.clearanceToBottom);
    for (const each of of('switchPoints'))
      expect(each).toEqual({ cutIn: facts.house.cutIn, cutOut: facts.house.cutOut });
    expect(of('friction').length).toBeGreaterThan(0);
  });
  test('a tank without air gives what the plan with no air gives', () => {
    const plan = planOf(sample('tamarack-ridge'));
    const without = solve(withValue(plan, 'house.precharge', '0 psi')).values.tankDrawdown!;
    expect(own(cause(plan, 'short-cycles', 'waterlogged'), 'withoutAir')?.water).toBeCloseTo(without, 12);
  });
});

describe('what the plan itself makes likely comes first, and says so', () => {
  test('no check valve at all', () => {
    const plan = rockWell({ string: { checkValves: [] } });
    const found = cause(plan, 'meter-runs', 'checkValve');
    expect(found.likelihood).toBe('likely');
    expect(found.found.map(({ rule }) => rule)).toEqual(['PR-09']);
    expect(own(found, 'noValve')).toEqual({});
    expect(order(causes(solve(plan), 'meter-runs'))[0]).toBe('checkValve');
  });
  test('air set five psi over cut-in', () => {
    const plan = rockWell({ house: { ...rockWell().house, cutIn: '40 psi', cutOut: '60 psi', precharge: '45 psi' } });
    const found = cause(plan, 'short-cycles', 'precharge');
    expect(found.likelihood).toBe('likely');
    expect(own(found, 'airOver')!.over).toBeCloseTo(psi(5), 3);
  });
  test('an adapter in the frost', () => {
    const found = cause(
      rockWell({ site: { frostDepth: '60 in' }, top: { kind: 'pitless', depth: '48 in' } }),
      'freezes',
      'frostAtTop',
    );
    expect(found.likelihood).toBe('likely');
    expect(own(found, 'frostAt')!.depth).toBeCloseTo(feet(4), 9);
    expect(own(found, 'frostAt')!.frost).toBeCloseTo(feet(5), 9);
  });
  test('a pump that takes more than the well gives, with the minutes until it draws air', () => {
    const plan = rockWell({
      well: { ...rockWell().well, yield: '2 gpm' },
      water: { staticLevel: '40 ft', pumping: { kind: 'yield only' } },
    });
    const found = cause(plan, 'air', 'outpumped');
    expect(found.likelihood).toBe('likely');
    expect(own(found, 'drawnDown')!.time).toBe(solve(plan).values.timeToBreakSuction);
    expect(own(found, 'drawnDown')!.time).toBeGreaterThan(60);
    expect(order(causes(solve(plan), 'air'))[0]).toBe('outpumped');
    // It is the pump that draws the water down: the water itself has not fallen.
    expect(cause(plan, 'air', 'waterLow').likelihood).toBe('open');
  });
  test('but where protection stops the pump, air and a pump that runs on do not come of it', () => {
    const slate = planOf(sample('slate-hollow'));
    for (const symptom of ['air', 'never-stops'] as const) {
      const found = cause(slate, symptom, 'outpumped');
      expect(found.likelihood).toBe('open');
      expect(found.says.map(({ id }) => id)).toEqual(['drawnDown', 'guardStops']);
    }
    expect(cause(slate, 'no-water', 'dryRunStop').likelihood).toBe('likely');
    expect(cause(slate, 'short-cycles', 'outpumped').likelihood).toBe('likely');
  });
  test('but the breaker is looked at first, whatever else is likely', () => {
    const plan = rockWell({ water: { staticLevel: '150 ft' } });
    const all = causes(solve(plan), 'no-water');
    expect(order(all).slice(0, 2)).toEqual(['power', 'waterLow']);
    expect(all[1]!.likelihood).toBe('likely');
  });
  test('each well with one thing wrong shows it under some symptom, where a symptom comes of it', () => {
    // What shows at work, on paper or in the law is no trouble of a well in use.
    const none = BAD.filter(({ plan, breaks }) => {
      const solution = solve(planOf(plan));
      const found = SYMPTOMS.flatMap((symptom) => causes(solution, symptom)).flatMap((each) => each.found);
      return SHOWS.has(breaks[0]) && standing(solution, breaks[0]) >= 2 && found.length === 0;
    });
    expect(none.map(({ name, breaks }) => `${name}: ${breaks[0]}`)).toEqual([]);
  });
  const SHOWS = new Set([
    'PR-01',
    'PR-02',
    'PR-03',
    'PR-09',
    'PR-11',
    'PR-19',
    'PR-46',
    'PR-49',
    'PR-50',
    'PR-54',
    'PR-56',
    'PR-57',
    'PR-59',
  ]);
});

describe('what was said speaks against a cause; what was assumed does not', () => {
  const house = { ...rockWell().house, cutIn: '40 psi', cutOut: '60 psi' };
  test('the air, where somebody said it', () => {
    expect(cause(rockWell({ house: { ...house, precharge: '38 psi' } }), 'short-cycles', 'precharge').likelihood).toBe(
      'unlikely',
    );
    const assumed = cause(rockWell({ house }), 'short-cycles', 'precharge');
    expect(assumed.likelihood).toBe('open');
    expect(assumed.deciding).toEqual(['house.precharge']);
    expect(own(assumed, 'airSet')).toBeUndefined();
    expect(own(assumed, 'airUsual')!.usual).toBeCloseTo(psi(38), 3);
  });
  test('gas and sand, where somebody said that there is none', () => {
    const water = rockWell().water as object;
    expect(cause(rockWell({ water: { ...water, gas: false } }), 'milky', 'gas').likelihood).toBe('unlikely');
    expect(cause(rockWell(), 'milky', 'gas')).toMatchObject({ likelihood: 'open', deciding: ['water.gas'] });
    expect(cause(rockWell({ water: { ...water, sand: true } }), 'trips', 'jammed').likelihood).toBe('likely');
  });
  test('a valve beyond the well is not denied where nobody said that there is none', () => {
    const open = cause(rockWell(), 'bangs', 'secondValve');
    expect(open.says).toEqual([]);
    expect(open).toMatchObject({ likelihood: 'open', deciding: ['string.valveBetweenTopAndTank'] });
    expect(cause(rockWell({ string: { valveBetweenTopAndTank: false } }), 'bangs', 'secondValve').likelihood).toBe(
      'unlikely',
    );
    expect(cause(rockWell({ string: { valveBetweenTopAndTank: true } }), 'bangs', 'secondValve').likelihood).toBe(
      'likely',
    );
  });
  test('a switch, a splice and an arrestor that nobody chose are not told as the plan’s', () => {
    expect(cause(rockWell(), 'never-stops', 'switch').says).toEqual([]);
    expect(cause(rockWell(), 'trips', 'cable').says).toEqual([]);
    expect(cause(rockWell(), 'bangs', 'twist').says).toEqual([]);
  });
});

describe('of what the well has not, nothing is told', () => {
  test('no tank’s air and no switch where the tank is open', () => {
    const open = solve(rockWell({ house: { ...rockWell().house, kind: 'open tank' } }));
    for (const symptom of SYMPTOMS)
      for (const each of causes(open, symptom))
        expect([
          'switch',
          'precharge',
          'waterlogged',
          'tankSmall',
          'switchGap',
          'cutOutHigh',
          'switchLow',
        ]).not.toContain(each.id);
    expect(order(causes(open, 'never-stops'))).toContain('float');
  });
  test('no control box on two wires, and no turning backward on one phase', () => {
    const two = solve(rockWell({ pump: { ...rockWell().pump, power: '1/2 hp', wires: 2 } }));
    expect(order(causes(two, 'no-water'))).not.toContain('controlBox');
    expect(order(causes(two, 'weak-flow'))).not.toContain('rotation');
    const three = solve(rockWell({ pump: { ...rockWell().pump, phase: 3, wires: 3 } }));
    expect(order(causes(three, 'weak-flow'))).toContain('rotation');
  });
  test('no adapter under a seal', () => {
    const sealed = solve(rockWell({ top: { kind: 'seal' } }));
    expect(order(causes(sealed, 'no-water'))).not.toContain('adapterLeak');
    expect(order(causes(sealed, 'no-water'))).toContain('sealLeak');
  });
});

test('a flowing well and one in a pit say so over the list', () => {
  expect(troubleOf(solve(rockWell({ water: { staticLevel: '-2 ft' } })), 'no-water').wellCautions).toEqual(['flowing']);
  expect(troubleOf(solve(rockWell({ well: { ...rockWell().well, inPit: true } })), 'taste').wellCautions).toEqual([
    'inPit',
  ]);
});
