/** Laws of choosing, over plans made at random. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { choosePump, type PumpRow } from '../../../src/model/choose/choosePump.ts';
import { chooseTank } from '../../../src/model/choose/chooseTank.ts';
import { choosing, WITH_THE_PUMP } from '../../../src/model/choose/choosing.ts';
import { CUT_OUT_SPARE, givesLess, LEFT_OVER_INTAKE, RANGE, WANTED_SHARE } from '../../../src/model/choose/fit.ts';
import { levelAtNoFlow, pumpAtLevel, pumpFromLevel } from '../../../src/model/figures/curves.ts';
import { lowestStatic } from '../../../src/model/figures/lowestPumping.ts';
import { provenYield } from '../../../src/model/figures/provenYield.ts';
import { changed } from '../../../src/model/fixes/fixesOf.ts';
import { worsened } from '../../../src/model/fixes/standing.ts';
import { solve, valueAt, type Plan } from '../../../src/model/index.ts';
import { readPlan } from '../../../src/model/plan/readPlan.ts';
import { mayMove } from '../../../src/model/rules/fix.ts';
import { openYield } from '../../../src/model/rules/openFacts.ts';
import { show } from '../../../src/model/units.ts';
import { choose } from '../../../src/words/en/choose.ts';
import { en } from '../../../src/words/en/index.ts';
import { sayPumpRow, sayTankRow, sayWhyChoice } from '../../../src/words/sayChoice.ts';
import { SOUND } from '../../wells/sound.ts';
import { anyBuild } from '../place/anyBuild.ts';
import { lowYield, rock, screened } from './jobs.ts';

const HAIR = 1e-6;

function rowsOf(plan: Plan): readonly PumpRow[] {
  const table = choosePump(plan);
  return table.kind === 'refused' ? [] : table.rows;
}

const sound = SOUND.flatMap(({ plan }) => {
  const read = readPlan(plan);
  return read.ok ? [read.plan] : [];
});

/** Worked out once for all laws: a hundred wells with some four thousand rows. */
const JOBS = [rock, lowYield, screened, ...sound, ...fc.sample(anyBuild, { numRuns: 45, seed: 11 })].map((plan) => ({
  plan,
  rows: rowsOf(plan),
}));
const each = (check: (plan: Plan, rows: readonly PumpRow[]) => void) => {
  for (const { plan, rows } of JOBS) check(plan, rows);
};

test('the wells are of every kind: some refused, some that a pump fits, some that depend, some that none fits', () => {
  const best = JOBS.map(({ rows }) => rows[0]?.does ?? 'refused');
  for (const kind of ['refused', 'yes', 'depends', 'no']) expect(best).toContain(kind);
});

test('a row’s figures are those that solving the chosen plan gives', () => {
  each((plan, rows) => {
    for (const row of rows) {
      const all = changed(
        plan,
        WITH_THE_PUMP.flatMap((part) => row.parts[part]),
      );
      const { facts, lowest, values } = solve(all);
      expect(values).toEqual(row.solution.values);
      const { flow, share, lifts, left, spare } = row.figures;
      expect(lifts).toBe(levelAtNoFlow(facts, { end: 'least', tank: 'cutIn' }));
      if (left !== null && lowest !== null) expect(left).toBeCloseTo(facts.pump.setting - lowest.depth, 9);
      if (share !== null) expect(share).toBeCloseTo((flow ?? 0) / (facts.house.demand ?? 1), 9);
      if (spare !== null && lowest !== null && values.shutOffPressureAtTankLeast !== null) {
        const fallen = lowest.depth - (facts.water.staticLevel ?? 0);
        // 9.80 kPa a metre of cold water.
        expect(spare).toBeCloseTo(values.shutOffPressureAtTankLeast - facts.house.cutOut - fallen * 9804, -4);
      }
      if (row.why.variant === 'fits') {
        const point = pumpFromLevel(facts, { end: 'least', tank: 'cutIn' }, lowestStatic(facts) ?? 0);
        expect(flow).toBe(point?.flow);
      }
      if (row.why.variant === 'fromStore') {
        expect(flow).toBe(pumpAtLevel(facts, { end: 'least', tank: 'cutIn' }, row.figures.level ?? 0)?.flow);
      }
    }
  });
});

test('a row that does the job meets all that is asked, and no rule of pump, pipe or wire warns of it', () => {
  const rules = ['PR-02', 'PR-07', 'PR-18', 'PR-46', 'PR-48', 'PR-49', 'PR-50', 'PR-54', 'PR-59'];
  each((_plan, rows) => {
    for (const { does, why, figures, solution } of rows) {
      if (does !== 'yes') continue;
      const { demand, kind, control } = solution.facts.house;
      // With the last water of a store four fifths, and from the water at rest what is asked of every pump.
      const share = why.variant === 'fromStore' ? 0.8 : WANTED_SHARE;
      expect(figures.flow ?? 0).toBeGreaterThanOrEqual(share * (demand ?? Infinity) * (1 - 1e-3));
      const atRest = pumpAtLevel(solution.facts, { end: 'least', tank: 'cutIn' }, lowestStatic(solution.facts) ?? 0);
      expect(atRest?.flow ?? 0).toBeGreaterThanOrEqual(WANTED_SHARE * (demand ?? Infinity) * (1 - 1e-3));
      if (kind !== 'open tank') expect(figures.spare ?? 0).toBeGreaterThanOrEqual(CUT_OUT_SPARE - 2);
      // From the store it starts with the water high, and works lower in its range as the water falls.
      if (why.variant === 'fits') expect(figures.range ?? 0).toBeGreaterThanOrEqual(RANGE.from - 1e-3);
      if (control !== 'variable speed') expect(figures.range ?? 9).toBeLessThanOrEqual(RANGE.to + 1e-3);
      if (why.variant === 'fits') expect(figures.left ?? 0).toBeGreaterThanOrEqual(LEFT_OVER_INTAKE - 1e-3);
      const warned = solution.findings.filter(({ severity }) => severity !== 'note').map(({ rule }) => rule);
      expect(warned.filter((rule) => rules.includes(rule))).toEqual([]);
      expect(solution.assumed.map(({ path }) => path)).not.toContain('house.demand');
    }
  });
});

test('a row that works is found wrong by no rule that a pump decides, and lacks just what choosing asks for', () => {
  let seen = 0;
  each((_plan, rows) => {
    for (const { does, why, figures, solution } of rows) {
      if (does !== 'works') continue;
      seen++;
      const { demand, cutOut, kind } = solution.facts.house;
      expect(['overRange', 'underRange', 'givesLittle']).toContain(why.variant);
      // 80 % of what is wanted, 1.6 times the rated flow: what the check asks of a pump that hangs.
      expect(figures.flow ?? 0).toBeGreaterThanOrEqual(0.8 * (demand ?? Infinity) * (1 - HAIR));
      if (kind !== 'open tank') expect(figures.spare ?? 0).toBeGreaterThanOrEqual(CUT_OUT_SPARE - 2);
      expect(cutOut).toBeGreaterThan(0);
      for (const rule of ['PR-46', 'PR-54', 'PR-58', 'PR-02', 'PR-07', 'PR-18'])
        expect(['ok', 'note', 'not judged']).toContain(solution.verdicts[rule]);
      expect(solution.verdicts['PR-58']).not.toBe('note');
      expect(solution.assumed.map(({ path }) => path)).not.toContain('house.demand');
    }
  });
  expect(seen).toBeGreaterThan(20);
});

test('a pump that stands is never judged hung elsewhere, and every row says where it would hang instead', () => {
  let moved = 0;
  each((plan, rows) => {
    const { facts } = solve(plan);
    for (const row of rows) {
      const at = row.solution.facts.pump.setting;
      if (!mayMove(facts, 'pump.setting')) {
        expect(row.movedFrom).toBeNull();
        expect(at).toBe(facts.pump.setting);
      }
      if (row.movedFrom === null) continue;
      moved++;
      expect(row.movedFrom).toBeCloseTo(facts.pump.setting, 9);
      expect(at).not.toBeCloseTo(row.movedFrom, 3);
      // The one click hangs it there.
      const { plan: chosen } = choosing(plan, row);
      if (mayMove(facts, 'pump')) expect(solve(chosen).facts.pump.setting).toBe(at);
      const { why } = sayPumpRow(row, { ...en, choose }, show(plan.units ?? 'us'));
      if (row.does !== 'no') expect(why).toContain('Hung at ');
    }
  });
  expect(moved).toBeGreaterThan(10);
});

test('choosing a pump that does the job makes no danger, and nothing worse', () => {
  each((plan, rows) => {
    const before = solve(plan);
    for (const row of rows) {
      if (row.does !== 'yes') continue;
      const { plan: chosen, left } = choosing(plan, row);
      const after = solve(chosen);
      const dangers = (of: typeof after) =>
        of.findings.filter(({ severity }) => severity === 'danger').map(({ rule }) => rule);
      if (left.length > 0) continue;
      expect(dangers(after).filter((rule) => !dangers(before).includes(rule))).toEqual([]);
      expect(worsened(before, after).filter((rule) => after.verdicts[rule] === 'danger')).toEqual([]);
    }
  });
});

test('what was not chosen is not written, and what stands is left and told', () => {
  each((plan, rows) => {
    for (const row of rows) {
      for (const part of WITH_THE_PUMP) {
        const { plan: chosen, changes, left } = choosing(plan, row, [part]);
        expect(changed(plan, changes)).toEqual(chosen);
        for (const { path } of changes) {
          expect(row.parts[part].map((one) => one.path)).toContain(path);
          expect(path).toMatch(/^(?:pump|dropPipe|wire|string)\./);
        }
        for (const path of Object.keys(plan.status ?? {})) expect(valueAt(chosen, path)).toEqual(valueAt(plan, path));
        if (left.length > 0) expect(changes).toEqual([]);
        expect(readPlan(JSON.parse(JSON.stringify(chosen))).ok).toBe(true);
      }
    }
  });
});

test('choosing the same again changes nothing', () => {
  fc.assert(
    fc.property(fc.constantFrom(rock, lowYield, screened), fc.nat({ max: 41 }), (plan, i) => {
      const row = rowsOf(plan)[i];
      if (row === undefined) throw new Error('no row');
      const once = choosing(plan, row).plan;
      const again = rowsOf(once).find(({ isPlans }) => isPlans);
      expect(again?.key).toBe(row.key);
      if (row.does === 'yes' && again !== undefined) expect(choosing(once, again).changes).toEqual([]);
    }),
    { numRuns: 20, seed: 5 },
  );
});

test('those that do come first, then what draws more of an unsure yield, then the smallest power, then the flow nearest', () => {
  const isNear = ({ does, why, figures: { share } }: PumpRow): boolean =>
    does !== 'no' && why.variant !== 'underRange' && share !== null && share >= 1 - HAIR && share <= 1.6 + HAIR;
  const isSure = ({ why }: PumpRow): boolean => ['ifDemand', 'dependsOnDemand', 'unknownLevel'].includes(why.variant);
  // What depends on the level alone stands before what works with all that is wanted, and that before what only may do,
  // and of that last what hardly lifts from its lowest water; what gives more than twice that stands after what works
  // with up to 1.6 times, and after what does the same with no more than that.
  const groupIn = (rows: readonly PumpRow[]) => (row: PumpRow) => {
    const { does, why, figures } = row;
    const near = new Set(rows.filter(isNear).map((each) => each.does));
    const isFar = (figures.share ?? 0) > 2 + HAIR;
    if (does === 'no') return 5;
    if (does === 'depends' && !isSure(row)) return (figures.range ?? 0) >= 0.5 - HAIR ? 3 : 3.5;
    if (does !== 'works') {
      if (isFar && near.has('works')) return 2.5;
      return (does === 'yes' ? 0 : 1) + (isFar && near.has(does) ? 0.5 : 0);
    }
    if (isNear(row)) return 2;
    return why.variant !== 'underRange' && (figures.share ?? 0) >= 1 - HAIR ? 2.7 : 4;
  };
  const sure = ({ does, solution }: PumpRow): number => {
    const open = openYield(solution);
    const gives = provenYield(solution.facts);
    if (does === 'no' || open === null || gives === null) return 0;
    return gives < (solution.facts.house.demand ?? 0) * (1 - HAIR) ? Math.round((10 * open.bad) / open.good) : 0;
  };
  const isStuck = ({ why }: PumpRow): boolean =>
    why.variant === 'finding' && ['PR-17', 'PR-21'].includes(why.numbers.finding.rule);
  each((_plan, rows) => {
    // What does not pass keeps the order that it would have if it did.
    if (rows.some(isStuck)) return;
    const group = groupIn(rows);
    rows.slice(1).forEach((row, i) => {
      const before = rows[i];
      // What rests on an answer keeps the order that it would have with it.
      if (before === undefined || [before, row].some(({ asks }) => asks.length > 0)) return;
      expect(group(before)).toBeLessThanOrEqual(group(row));
      if (group(before) !== group(row)) return;
      expect(sure(before)).toBeGreaterThanOrEqual(sure(row));
      if (sure(before) !== sure(row)) return;
      expect(before.power ?? Infinity).toBeLessThanOrEqual(row.power ?? Infinity);
      const { demand } = row.solution.facts.house;
      if (before.power !== row.power || demand === null) return;
      const far = (each: PumpRow) =>
        each.does !== 'no' && givesLess(each.solution)
          ? -(each.figures.level ?? 0)
          : Math.abs(each.rated - WANTED_SHARE * demand);
      expect(far(before)).toBeLessThanOrEqual(far(row) + HAIR);
    });
  });
});

test('a stronger motor of the same flow never gives less, from the same water at the same depth', () => {
  each((plan, rows) => {
    const { facts } = solve(plan);
    const rest = lowestStatic(facts) ?? 0;
    const byPower = rows
      .filter(({ name }) => name.kind === 'rating')
      .toSorted((a, b) => (a.power ?? 0) - (b.power ?? 0));
    for (const rated of new Set(byPower.map((row) => row.rated))) {
      const flows = byPower
        .filter((row) => row.rated === rated)
        .map((row) => {
          const pump = { ...facts.pump, power: row.power, curve: { kind: 'generic', flow: rated } as const };
          return pumpAtLevel({ ...facts, pump }, { end: 'least', tank: 'cutIn' }, rest)?.flow ?? 0;
        });
      flows.slice(1).forEach((flow, i) => {
        expect(flow).toBeGreaterThanOrEqual((flows[i] ?? 0) - HAIR);
      });
    }
  });
});

test('every row and every tank is said in whole sentences without a rule’s number', () => {
  const sentence = /^[“A-Z\d].*\.$/;
  const foreign = /undefined|null|NaN|Infinity|PR-\d|\bsafe\b/;
  each((plan, rows) => {
    const units = show(plan.units ?? 'us');
    const tanks = chooseTank(plan);
    const said = [
      ...rows.map((row) => sayWhyChoice(row, { ...en, choose }, units)),
      ...(tanks.kind === 'rows' ? tanks.rows.map((row) => sayWhyChoice(row, { ...en, choose }, units)) : []),
    ];
    for (const words of said) {
      expect(words).toMatch(sentence);
      expect(words).not.toMatch(foreign);
    }
    const cells = [
      ...rows.map((row) => sayPumpRow(row, { ...en, choose }, units)),
      ...(tanks.kind === 'rows' ? tanks.rows.map((row) => sayTankRow(row, { ...en, choose }, units)) : []),
    ].flatMap((row) => Object.values(row as unknown as Record<string, string>));
    for (const cell of cells) expect(cell).not.toMatch(foreign);
  });
});

test('a tank that does lets the pump run as long as its rule asks, and the figures are those of the plan with it', () => {
  each((plan) => {
    const table = chooseTank(plan);
    if (table.kind === 'refused') return;
    for (const row of table.rows) {
      const { plan: chosen } = choosing(plan, row);
      const { values, verdicts, facts } = solve(changed(plan, row.changes));
      expect(row.water).toBe(values.tankDrawdown ?? 0);
      if (row.does === 'yes') expect(['ok', 'not judged', 'note']).toContain(verdicts['PR-56']);
      if (row.does === 'yes') expect(worsened(solve(plan), solve(changed(plan, row.changes)))).not.toContain('PR-55');
      expect(row.volume).toBe(facts.house.tank);
      expect(readPlan(JSON.parse(JSON.stringify(chosen))).ok).toBe(true);
    }
    const good = table.rows.filter(({ does }) => does === 'yes').map(({ volume }) => volume);
    expect(good).toEqual(good.toSorted((a, b) => a - b));
  });
});
