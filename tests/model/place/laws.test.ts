/** Laws of placing, over plans made at random: any well, any of its parts installed, any cut-off, depths from any datum. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  solve,
  valueAt,
  withValue,
  type Plan,
  type Severity,
  type Solution,
  type Verdict,
} from '../../../src/model/index.ts';
import { placeForMe } from '../../../src/model/place/placeForMe.ts';
import { readPlan } from '../../../src/model/plan/readPlan.ts';
import { show } from '../../../src/model/units.ts';
import { en } from '../../../src/words/en/index.ts';
import { sayClash, sayNotPlaced, sayWhyLeft, sayWhyPlaced } from '../../../src/words/sayPlacement.ts';
import { anyPlan } from '../../plans/anyPlan.ts';
import { SAMPLES, planOf, sample } from '../../plans/build.ts';

const STANDING = ['pump.setting', 'top.depth', 'string', 'string.checkValves', 'wire.size', 'dropPipe', 'pump'];

const anyBuild: fc.Arbitrary<Plan> = fc
  .record({
    plan: anyPlan,
    standing: fc.subarray(STANDING, { maxLength: 2 }),
    word: fc.constantFrom('installed' as const, 'reported' as const),
    cutOff: fc.constantFrom(undefined, true, '60 ft', '150 ft'),
    height: fc.constantFrom('ground' as const, 'casing top' as const),
    ties: fc.constantFrom(undefined, '2 ft', '30 ft'),
    clamps: fc.constantFrom(undefined, 1),
    arrow: fc.constantFrom('up' as const, 'down' as const),
  })
  .map(({ plan, standing, word, cutOff, height, ties, clamps, arrow }) => {
    const status = Object.fromEntries(standing.map((path) => [path, word]));
    return (
      [
        ['well.depthsFrom', height],
        ['pump.lowLevelCutOff', cutOff],
        ['string.ties', ties],
        ['string.clampsPerJoint', clamps],
        ['string.arrow', arrow],
        ['status', standing.length === 0 ? undefined : status],
      ] as const
    ).reduce((made, [path, value]) => withValue(made, path, value), plan);
  })
  .filter((plan) => readPlan(JSON.parse(JSON.stringify(plan))).ok);

/** In the plan's own units. */
const read = (plan: Plan) => show(plan.units ?? 'us');

const RUNS = { numRuns: 250, seed: 3 };
const RANK: Readonly<Record<Verdict, number>> = { ok: 0, 'not judged': 0, note: 1, warning: 2, danger: 3 };

test('a placed plan can be read, and placing it again changes nothing', () => {
  fc.assert(
    fc.property(anyBuild, (plan) => {
      const once = placeForMe(plan);
      expect(readPlan(JSON.parse(JSON.stringify(once.plan))).ok).toBe(true);
      const twice = placeForMe(once.plan);
      expect(twice.changes).toEqual([]);
      expect(twice.plan).toEqual(once.plan);
    }),
    RUNS,
  );
});

test('nothing is left that a rule could fix', () => {
  fc.assert(
    fc.property(anyBuild, (plan) => {
      for (const { rule, notPlaced } of placeForMe(plan).remaining) {
        expect(`${rule} ${JSON.stringify(notPlaced.fix?.changes ?? null)}`).toBe(`${rule} null`);
        expect(sayNotPlaced(rule, notPlaced, en, read(plan))).toMatch(/\.$/);
      }
    }),
    RUNS,
  );
});

const counted = ({ findings }: Solution, severity: Severity) =>
  findings.filter((each) => each.severity === severity && !ANSWERED_BY_EQUIPMENT.includes(each.rule)).length;

/** What a shroud, a stronger rope or a hoist answers: no reason to hang the pump where it stores less water. */
const ANSWERED_BY_EQUIPMENT = ['PR-05', 'PR-16', 'PR-51'];

test('no plan has more dangers after, nor as many and more warnings that no equipment answers', () => {
  fc.assert(
    fc.property(anyBuild, (plan) => {
      const before = solve(plan);
      const after = solve(placeForMe(plan).plan);
      const dangers = counted(after, 'danger') - counted(before, 'danger');
      expect(dangers).toBeLessThanOrEqual(0);
      if (dangers === 0) expect(counted(after, 'warning')).toBeLessThanOrEqual(counted(before, 'warning'));
    }),
    RUNS,
  );
});

test('a rule that stands worse as a danger or a warning has bettered another', () => {
  fc.assert(
    fc.property(anyBuild, (plan) => {
      const before = solve(plan).verdicts;
      const after = solve(placeForMe(plan).plan).verdicts;
      const changed = (sign: 1 | -1) =>
        Object.keys(after).filter((rule) => {
          if (ANSWERED_BY_EQUIPMENT.includes(rule)) return false;
          const [was, is] = [RANK[before[rule] ?? 'ok'], RANK[after[rule] ?? 'ok']];
          return Math.max(was, is) >= RANK.warning && Math.sign(is - was) === sign;
        });
      const [worse, better] = [changed(1), changed(-1)];
      expect(better.length, JSON.stringify(worse)).toBeGreaterThanOrEqual(Math.min(worse.length, 1));
    }),
    RUNS,
  );
});

test('what stands is not touched, nor the well, its water, its site', () => {
  fc.assert(
    fc.property(anyBuild, (plan) => {
      const { changes, plan: placed, left } = placeForMe(plan);
      for (const path of Object.keys(plan.status ?? {})) expect(valueAt(placed, path)).toEqual(valueAt(plan, path));
      for (const { path, from, to, why } of changes) {
        expect(path).not.toMatch(/^(?:site|well|water|status)\b/);
        expect(from).toEqual(valueAt(plan, path));
        expect(to).toEqual(valueAt(placed, path));
        expect(sayWhyPlaced(why, en, read(plan))).toMatch(/^[A-Z\d].*\.$/);
        expect(left.map((each) => each.path)).not.toContain(path);
      }
      for (const { why } of left) expect(sayWhyLeft(why, en, read(plan))).toMatch(/^[A-Z\d].*\.$/);
      const rebuilt = changes.reduce((made, { path, to }) => withValue(made, path, to), plan);
      expect(rebuilt).toEqual(placed);
    }),
    RUNS,
  );
});

test('two rules that exclude each other are both broken or out of reach, and the words name what would have to change', () => {
  fc.assert(
    fc.property(anyBuild, (plan) => {
      for (const clash of placeForMe(plan).clashes) {
        const { words, wayOut } = sayClash(clash, en, read(plan));
        expect(clash.rules.length).toBeGreaterThan(0);
        expect(`${words} ${wayOut}`).not.toMatch(/undefined|null|NaN|\bsafe\b|will not freeze/);
        expect(wayOut).toMatch(/^[A-Z].*\.$/);
      }
    }),
    RUNS,
  );
});

test.each(SAMPLES)('%s: what is placed is placed', (name) => {
  const placed = placeForMe(planOf(sample(name)));
  expect(placeForMe(placed.plan).changes).toEqual([]);
  expect(placed.remaining.filter(({ severity }) => severity === 'danger')).toEqual([]);
});
