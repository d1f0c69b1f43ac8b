/** Laws of placing, over plans made at random: any well, any of its parts installed, any cut-off, depths from any datum. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { solve, valueAt, withValue, type Finding, type Plan } from '../../../src/model/index.ts';
import { levelAtNoFlow } from '../../../src/model/figures/curves.ts';
import { lowestLevel } from '../../../src/model/figures/lowestLevel.ts';
import { lowestStatic } from '../../../src/model/figures/lowestPumping.ts';
import { worsened } from '../../../src/model/fixes/standing.ts';
import { setDepths as setAnew } from '../../../src/model/place/setDepths.ts';
import { readPlan } from '../../../src/model/plan/readPlan.ts';
import { feet, inches, show } from '../../../src/model/units.ts';
import { en } from '../../../src/words/en/index.ts';
import { sayClash, sayNotPlaced, sayWhyLeft, sayWhyPlaced } from '../../../src/words/sayPlacement.ts';
import { SAMPLES, planOf, sample } from '../../plans/build.ts';
import { anyBuild } from './anyBuild.ts';

/** In the plan's own units. */
const read = (plan: Plan) => show(plan.units ?? 'us');

/** Every law looks at the same two hundred, and each is placed once for all of them. */
const PLANS: readonly Plan[] = fc.sample(anyBuild, { numRuns: 200, seed: 3 });

function each(check: (plan: Plan) => void): void {
  for (const plan of PLANS) {
    try {
      check(plan);
    } catch (fault) {
      throw new Error(`Of ${JSON.stringify(plan)}: ${String(fault)}`, { cause: fault });
    }
  }
}

const placings = new WeakMap<Plan, ReturnType<typeof setAnew>>();
function setDepths(plan: Plan): ReturnType<typeof setAnew> {
  const known = placings.get(plan) ?? setAnew(plan);
  placings.set(plan, known);
  return known;
}
const moved = (plan: Plan, path: string) => setDepths(plan).changes.some((change) => change.path === path);

test('a placed plan can be read, and placing it again changes nothing', () => {
  each((plan) => {
    const once = setDepths(plan);
    expect(readPlan(JSON.parse(JSON.stringify(once.plan))).ok).toBe(true);
    expect(setDepths(once.plan).changes).toEqual([]);
  });
});

/** Hands and hoist follow the depth: a pump is not left dry since its string is heavy. */
const ON_THE_HOOK = 'PR-51';

test('nothing stands worse than before from a warning on, and nothing wrong goes out of sight', () => {
  each((plan) => {
    const { plan: placed, changes } = setDepths(plan);
    const before = solve(plan);
    const after = solve(placed);
    const isWarned = ({ severity, rule, together }: Finding, wanted: string) =>
      severity !== 'note' && (rule === wanted || together.some((one) => one.rule === wanted));
    const worse = worsened(before, after).filter((rule) => {
      if (rule === ON_THE_HOOK) return false;
      if (after.verdicts[rule] !== 'not judged') return true;
      // A rule that has nothing to say any more hides nothing, nor does one that was fixed first.
      const missing = after.notJudged.some((one) => one.rule === rule);
      const fixed = changes.some((change) => change.rule === rule);
      return missing && !fixed && before.findings.some((finding) => isWarned(finding, rule));
    });
    expect(worse).toEqual([]);
  });
});

test('no pump is hung where it does not lift with the water drawn down', () => {
  each((plan) => {
    const { plan: placed, changes } = setDepths(plan);
    if (!changes.some(({ path }) => path === 'pump.setting')) return;
    const { facts, lowest } = solve(placed);
    const lifts = levelAtNoFlow(facts, { end: 'least', tank: 'cutIn' });
    if (lifts !== null) expect(lowest?.depth ?? lowestLevel(facts).depth).toBeLessThanOrEqual(lifts + 1e-3);
  });
});

test('a pump that was hung is under water at rest and off the bottom', () => {
  each((plan) => {
    const { plan: placed, changes } = setDepths(plan);
    if (!changes.some(({ path }) => path === 'pump.setting')) return;
    const { facts } = solve(placed);
    const motor = facts.pump.setting + facts.pump.intakeToMotorBottom;
    expect(facts.pump.setting - (lowestStatic(facts) ?? NaN)).toBeGreaterThan(0);
    if (facts.well.intake.screens.length === 0) expect(facts.well.bottom - motor).toBeGreaterThan(feet(10) - 1e-3);
  });
});

test('an adapter that was set is below the frost, in the outer casing alone, and not deeper than one digs', () => {
  each((plan) => {
    const { plan: placed, changes } = setDepths(plan);
    if (!changes.some(({ path }) => path === 'top.depth')) return;
    const { facts, values, levels } = solve(placed);
    if (facts.top.kind !== 'pitless') throw new Error('no adapter');
    const { depth } = facts.top;
    const frost = values.frostDepth ?? NaN;
    if (frost > 0) expect(depth).toBeGreaterThanOrEqual(frost + facts.site.frostMargin - 1e-3);
    // 30 cm in a metric plan.
    expect(depth).toBeGreaterThanOrEqual(Math.min(inches(12), 0.3) - 1e-3);
    expect(depth).toBeLessThanOrEqual(feet(12) + 1e-3);
    for (const { top } of facts.well.casings.slice(1)) expect(depth).toBeLessThan(top);
    if (facts.top.submergedUse !== true) expect(depth).toBeLessThan(levels.static ?? NaN);
  });
});

test('in a well that flows, that is dry, or whose level nobody knows nothing is placed', () => {
  each((plan) => {
    const { facts, levels } = solve(plan);
    const rest = lowestStatic(facts);
    const highest = Math.min(levels.static ?? Infinity, levels.staticHighest ?? Infinity);
    if (rest !== null && highest > 0 && rest < facts.well.bottom) return;
    const { plan: placed, changes, left } = setDepths(plan);
    expect(placed).toEqual(plan);
    expect(changes).toEqual([]);
    expect(left.map(({ path }) => path)).toContain('pump.setting');
  });
});

test('what stands is not touched, nor the well, its water, its site', () => {
  each((plan) => {
    const { changes, plan: placed, left } = setDepths(plan);
    for (const path of Object.keys(plan.status ?? {})) expect(valueAt(placed, path)).toEqual(valueAt(plan, path));
    for (const { path, from, to } of changes) {
      expect(path).not.toMatch(/^(?:site|well|water|status)\b/);
      expect(from).toEqual(valueAt(plan, path));
      expect(to).toEqual(valueAt(placed, path));
      expect(left.map((one) => one.path)).not.toContain(path);
    }
    const rebuilt = changes.reduce((made, { path, to }) => withValue(made, path, to), plan);
    expect(rebuilt).toEqual(placed);
  });
});

test('every reason is a sentence without a rule’s number', () => {
  const sentence = /^[A-Z\d].*\.$/;
  const foreign = /undefined|null|NaN|Infinity|PR-\d|\bsafe\b|will not freeze/;
  each((plan) => {
    const { changes, left, clashes, remaining } = setDepths(plan);
    const said = [
      ...changes.map(({ why }) => sayWhyPlaced(why, en, read(plan))),
      ...left.map(({ why }) => sayWhyLeft(why, en, read(plan))),
      ...clashes.flatMap((clash) =>
        Object.values(sayClash(clash, en, read(plan)) as unknown as Record<string, string>),
      ),
    ];
    for (const words of said) {
      expect(words).toMatch(sentence);
      expect(words).not.toMatch(foreign);
    }
    for (const { rule, notPlaced } of remaining)
      expect(sayNotPlaced(rule, notPlaced, en, read(plan))).not.toMatch(foreign);
  });
});

test('wire and pipe, hands and hoist are never the reason of a depth', () => {
  each((plan) => {
    for (const { path, rule } of setDepths(plan).changes) {
      if (path === 'pump.setting') expect(['PR-49', 'PR-50', 'PR-51']).not.toContain(rule);
    }
  });
});

test('an adapter that is deep enough is never brought up to dig less', () => {
  each((plan) => {
    const { facts, verdicts } = solve(plan);
    const { top, well } = facts;
    if (top.kind !== 'pitless' || well.casings.length > 1) return;
    const holds = ['PR-19', 'PR-20', 'PR-64'].every((rule) =>
      ['ok', 'note', 'not judged'].includes(verdicts[rule] ?? ''),
    );
    const abovePump = top.depth < facts.pump.setting - facts.pump.intakeToDischarge - feet(1);
    const inCasing = top.depth < (well.casings[0]?.bottom ?? Infinity);
    if (holds && abovePump && inCasing && valueAt(plan, 'top.depth') !== undefined)
      expect(moved(plan, 'top.depth')).toBe(false);
  });
});

test.each(SAMPLES)('%s: what is placed is placed', (name) => {
  const placed = setDepths(planOf(sample(name)));
  expect(setDepths(placed.plan).changes).toEqual([]);
  expect(placed.remaining.filter(({ severity }) => severity === 'danger')).toEqual([]);
});
