/** A well whose pump fills an open tank: what the tank carries, what that asks of well and pump, and what rests on no switch. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { wantedOfPump } from '../../../src/model/figures/wantedOfPump.ts';
import { withValue } from '../../../src/model/plan/editPlan.ts';
import { readPlan } from '../../../src/model/plan/readPlan.ts';
import type { Plan } from '../../../src/model/plan/schema.ts';
import { candidatesFor } from '../../../src/model/fixes/candidatesFor.ts';
import { givenBy } from '../../../src/model/rules/index.ts';
import { solve } from '../../../src/model/solve.ts';
import { show, toGpm } from '../../../src/model/units.ts';
import { en } from '../../../src/words/en/index.ts';
import { sayFinding, sayFix, sayHolding } from '../../../src/words/sayJudgement.ts';
import { anyPlan } from '../../plans/anyPlan.ts';

/** 620 ft of rock that gave 0.6 gpm to the air, four people, and a pump that is guarded. */
const CISTERN = {
  format: 'wellcut-plan/1',
  units: 'us',
  site: { frostDepth: '42 in' },
  well: {
    depth: '620 ft',
    casing: { material: 'steel', size: '6 in', bottom: '60 ft', height: '18 in' },
    intake: { kind: 'open hole', diameter: '6 in' },
    yield: '0.6 gpm',
    yieldFrom: 'air lift',
    inflows: [
      { depth: '240 ft', share: '40 %' },
      { depth: '510 ft', share: '60 %' },
    ],
  },
  water: { staticLevel: '70 ft', pumping: { kind: 'yield only' } },
  house: {
    people: 4,
    demand: '4 gpm',
    kind: 'open tank',
    tank: '500 gal',
    distance: '70 ft',
    rise: '28 ft',
    line: { material: 'PE', size: '1 in', rating: '200 psi' },
  },
  top: { kind: 'pitless', depth: '54 in' },
  pump: {
    power: '3/4 hp',
    frequency: '60 Hz',
    curve: { kind: 'generic', flow: '7 gpm' },
    setting: '288 ft',
    lowLevelCutOff: '286 ft',
  },
};

function planOf(changes: Readonly<Record<string, unknown>> = {}): Plan {
  const read = readPlan(JSON.parse(JSON.stringify(CISTERN)));
  if (!read.ok) throw new Error('the plan does not read');
  return Object.entries(changes).reduce((plan, [path, value]) => withValue(plan, path, value), read.plan);
}

function foundBy(rule: string, changes: Readonly<Record<string, unknown>> = {}) {
  const solution = solve(planOf(changes));
  const finding = solution.findings.find((each) => each.rule === rule);
  if (finding === undefined) throw new Error(`${rule} finds nothing`);
  const { units } = solution.facts;
  const fixes = candidatesFor(finding, givenBy(solution)).map((fix) => ({
    ...fix,
    words: sayFix(rule, fix, en, show(units)),
  }));
  return { ...finding, ...sayFinding(finding, en, show(units)), fixes };
}

const pumped = { 'well.yieldFrom': 'pump' };

describe('the store of an open tank', () => {
  test('is told with its own volume', () => {
    const of = (tank: string) => foundBy('PR-55', { ...pumped, 'house.tank': tank }).message;
    expect(of('500 gal')).toBe('It gives 0.6 gpm of 4 gpm; the 500 gal of the open tank carry 60 min.');
    expect(of('5000 gal')).toContain('the 5000 gal of the open tank');
  });

  test('that carries the peak is not asked to be larger', () => {
    for (const changes of [pumped, {}, { ...pumped, 'pump.power': undefined }, { 'well.yield': '0.1 gpm' }])
      for (const { words } of foundBy('PR-55', changes).fixes) expect(words).not.toMatch(/[Ss]tore water|open tank of/);
  });

  // 4 gpm for an hour less 0.6 gpm that flows in meanwhile are 204 gal; the bore of 1 in 50 ft of water adds little.
  test('that is too small is said in full, in the units of the plan', () => {
    const small = {
      ...pumped,
      'house.tank': '50 gal',
      'pump.setting': '100 ft',
      'pump.lowLevelCutOff': '98 ft',
    };
    const { variant, fixes } = foundBy('PR-55', small);
    expect(variant).toBe('peakNotCarried');
    expect(fixes[0]).toMatchObject({
      words: 'Take an open tank of 210 gal, which carries the peak',
      changes: [{ path: 'house.tank', to: '210 gal' }],
    });
    expect(foundBy('PR-55', { ...small, 'house.tank': '210 gal' }).variant).toBe('tankCarries');
    expect(foundBy('PR-55', { ...small, units: 'metric', 'house.tank': '200 L' }).fixes[0]?.words).toContain('800 L');
    expect(foundBy('PR-55', { ...small, 'status.house.tank': undefined }).fixes).toHaveLength(1);
  });

  test('of unknown size is not counted, and the field that would tell is named', () => {
    const unsaid = { ...pumped, 'house.tank': undefined };
    const told = 'The open tank is not counted: “Size of the tank” is not filled in.';
    expect(foundBy('PR-55', unsaid).message).toContain(told);
    expect(foundBy('PR-55', unsaid).message).not.toContain('well and tank');
    expect(foundBy('PR-55', { ...unsaid, 'pump.power': undefined }).message).toContain(told);
    expect(foundBy('PR-55', { ...unsaid, 'pump.power': undefined }).fixes[0]?.words).toMatch(/^Say the size/);
  });
});

describe('what of a rough yield is sure', () => {
  test('is held against the day where the peak is carried either way', () => {
    const { title, message } = foundBy('PR-55');
    expect(title).toBe('The well may give too little for a day');
    expect(message).toMatch(/the 500 gal of the open tank carry 60 min\. A day needs 300 gal, and only 254 gal/);
    expect(message).not.toContain('only with the most');
  });

  test('and so it is without an open tank', () => {
    const { message } = foundBy('PR-55', { 'house.kind': undefined, 'house.demand': '1 gpm' });
    expect(message).toMatch(/gal stored in well and tank carry 60 min\. A day needs 300 gal, and only \d+ gal/);
    expect(message).not.toContain('only with the most');
  });

  test('and against the peak where that is not carried by it', () => {
    const peak = { 'house.kind': undefined, 'house.tank': undefined, 'house.people': 1, 'house.demand': '3.5 gpm' };
    const { numbers, message } = foundBy('PR-55', {
      ...peak,
      'pump.setting': '240 ft',
      'pump.lowLevelCutOff': '238 ft',
    });
    const { daySure, peakSure } = numbers as { daySure?: boolean; peakSure?: boolean };
    expect({ daySure, peakSure }).toEqual({ daySure: true, peakSure: false });
    expect(message).toContain('only with the most do');
  });
});

describe('of the pump is asked', () => {
  const asked = (changes: Readonly<Record<string, unknown>> = {}) => {
    const wanted = wantedOfPump(solve(planOf(changes)));
    return wanted === null ? null : { gpm: toGpm(wanted.flow), fillsTank: wanted.fillsTank };
  };

  // Four people at 75 gal a day in 480 minutes.
  test('the need of a day in eight hours, where an open tank carries the peak', () => {
    const { gpm, fillsTank } = asked() ?? {};
    expect(gpm).toBeCloseTo(300 / 480, 9);
    expect(fillsTank).toBe(true);
  });

  test('the peak, with a pressure tank and an open one that is too small or unknown', () => {
    for (const house of [{ 'house.kind': undefined }, { 'house.tank': '200 gal' }, { 'house.tank': undefined }])
      expect(asked(house)).toEqual({ gpm: expect.closeTo(4, 9), fillsTank: false });
  });

  test('never more than the peak, and nothing where that is unknown', () => {
    expect(asked({ 'house.demand': '0.5 gpm' })?.gpm).toBeCloseTo(0.5, 9);
    expect(asked({ 'house.demand': 'unknown' })).toBeNull();
  });

  test('and a pump that brings it is enough', () => {
    const { holding } = solve(planOf({ 'pump.setting': '300 ft', 'pump.lowLevelCutOff': '298 ft' }));
    const held = holding.find(({ rule }) => rule === 'PR-54');
    expect(held && sayHolding(held, en, show('us')).title).toBe('The pump gives what the open tank needs');
  });

  test('and one that does not is told by what the tank needs', () => {
    const held = foundBy('PR-54', { 'pump.flowLimiter': '0.4 gpm' });
    expect(held.title).toBe('The pump gives less than the open tank needs');
    expect(held.message).toMatch(/it gives 0\.4 gpm\. To fill the open tank in 8 hours a day takes 0\.63 gpm\.$/);
    expect(foundBy('PR-54', { 'house.rise': '400 ft' }).message).toMatch(/lifts nothing into the open tank/);
  });
});

test('where the store of a poor well is drawn down no valve is offered against it', () => {
  const [fix] = foundBy('PR-04').fixes;
  expect(fix?.words).toMatch(/^A well of so little yield cannot avoid it\. .*lessen the harm\.$/);
  expect(fix?.words).not.toContain('valve');
  const strong = foundBy('PR-04', {
    ...pumped,
    'well.yield': '5 gpm',
    'water.pumping': { kind: 'level', level: '260 ft', flow: '5 gpm' },
  });
  expect(strong.fixes[0]?.words).toContain('flow-limiting valve');
});

describe('an open tank has no switch', () => {
  const SWITCH = ['house.cutIn', 'house.cutOut', 'house.precharge', 'house.tankRating', 'house.control'];

  test('and nothing of one is assumed', () => {
    const { assumed, findings } = solve(planOf());
    expect(assumed.map(({ path }) => path).filter((path) => SWITCH.includes(path))).toEqual([]);
    expect(findings.flatMap((each) => each.assumed).filter((path) => SWITCH.includes(path))).toEqual([]);
    expect(solve(planOf({ 'house.kind': undefined })).assumed.map(({ path }) => path)).toEqual(
      expect.arrayContaining(SWITCH),
    );
  });

  test('nor moves a verdict, a figure or a word, in 60 plans made at random', () => {
    const told = (plan: Plan) => {
      const { verdicts, values, findings, holding, facts } = solve(plan);
      const say = show(facts.units);
      return {
        verdicts,
        values,
        found: findings.map((each) => sayFinding(each, en, say)),
        held: holding.map((each) => sayHolding(each, en, say)),
      };
    };
    fc.assert(
      fc.property(anyPlan, (plan) => {
        const open = withValue(withValue(plan, 'house.kind', 'open tank'), 'house.precharge', undefined);
        const at = (cutIn: string, cutOut: string) =>
          told(withValue(withValue(open, 'house.cutIn', cutIn), 'house.cutOut', cutOut));
        const low = at('20 psi', '40 psi');
        expect(low).toEqual(at('50 psi', '70 psi'));
        for (const { message, title } of [...low.found, ...low.held])
          expect(`${title} ${message}`).not.toMatch(/cut-(?:in|out)/);
      }),
      { seed: 44, numRuns: 60 },
    );
  });
});
