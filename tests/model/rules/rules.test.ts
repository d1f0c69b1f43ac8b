import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { ADVICE_NUMBERS } from '../../../src/model/rules/advice.ts';
import { judge } from '../../../src/model/rules/index.ts';
import { lackingIn } from '../../../src/model/rules/lacking.ts';
import { RULES } from '../../../src/model/rules/list.ts';
import type { Solution } from '../../../src/model/solution.ts';
import { solve } from '../../../src/model/solve.ts';
import { show as showIn } from '../../../src/model/units.ts';
import { en } from '../../../src/words/en/index.ts';
import {
  sayAdvice,
  sayFinding,
  sayFix,
  sayHolding,
  sayLacking,
  sayMeasure,
  sayTurning,
} from '../../../src/words/sayJudgement.ts';
import type { Source } from '../../../src/words/ruleWords.ts';
import { anyPlan } from '../../plans/anyPlan.ts';
import { changed, fixesFor, judged, solvedPlan, verdictOf } from './fixture.ts';
import { CASES } from './cases.ts';

const words = (text: string) => text.split(/\s+/).filter((word) => word !== '').length;

/** Source, reason and caution by rule. */
const LONG: Readonly<
  Record<string, { readonly source: Source; readonly why: string; readonly caution?: string } | undefined>
> = en.long.rules;

describe.each(RULES)('$number', (rule) => {
  const own = CASES.filter((each) => each.rule === rule.number);

  test('names its source and says why in at most twenty words', () => {
    const { source, why } = LONG[rule.number]!;
    expect(source).not.toBe('');
    expect(why).toMatch(/^[A-Z].*\.$/);
    expect(words(why)).toBeLessThanOrEqual(20);
  });

  test('has a plan that breaks it and one in which it holds', () => {
    expect(
      own.some(({ verdict }) => verdict !== 'ok' && verdict !== 'not judged'),
      `${rule.number} is never broken`,
    ).toBe(true);
    expect(
      own.some(({ verdict }) => verdict === 'ok'),
      `${rule.number} never holds`,
    ).toBe(true);
  });

  test.each(own)('$says: $verdict', ({ changes, values, verdict }) => {
    expect(verdictOf(rule.number, changes, values)).toBe(verdict);
  });
});

test('every case is of a rule that wells are judged by', () => {
  const numbers = new Set(RULES.map(({ number }) => number));
  expect(CASES.filter(({ rule }) => !numbers.has(rule))).toEqual([]);
});

test('the sound plan has nothing but its weight against it', () => {
  expect(judged({}).findings.map(({ rule, severity }) => `${severity} ${rule}`)).toEqual(['note PR-51']);
});

test('every number from 1 on has a verdict, and none twice', () => {
  const numbers = [...RULES.map(({ number }) => number), ...ADVICE_NUMBERS];
  expect(new Set(numbers).size).toBe(numbers.length);
  expect(Object.keys(judged({}).verdicts)).toEqual(
    Array.from(numbers, (_, index) => `PR-${String(index + 1).padStart(2, '0')}`),
  );
});

test('advice is shown with its source and judged by nobody', () => {
  const { advice, verdicts } = judged({ 'well.casing.material': 'steel' });
  expect(advice.map(({ rule }) => rule)).toEqual(ADVICE_NUMBERS);
  for (const advised of advice) {
    expect(verdicts[advised.rule]).toBe('not judged');
    const { title, text, source } = sayAdvice(advised, en, showIn('us'));
    expect(title && text && source).not.toBe('');
  }
});

/** What is said must be complete, short and calm. */
function expectPlainWords(solution: Solution): void {
  const { facts, findings, holding } = solution;
  const show = showIn(facts.units);
  for (const said of [
    ...findings.map((finding) => sayFinding(finding, en, show)),
    ...holding.map((held) => sayHolding(held, en, show)),
  ]) {
    expect(words(said.title), said.title).toBeLessThanOrEqual(20);
    expect(words(said.message), said.message).toBeLessThanOrEqual(20);
    expect(words(said.amount), said.amount).toBeLessThanOrEqual(6);
    expect(said.message).toMatch(/^[A-Z\d].*\.$/);
    expect(said.title).toMatch(/^[A-Z]/);
    expect(`${said.title} ${said.amount} ${said.message}`).not.toMatch(UNFIT);
  }
  for (const finding of findings) {
    const fixes = fixesFor(finding, solution);
    expect(fixes.length, `${finding.rule} ${finding.variant} offers nothing`).toBeGreaterThan(0);
    for (const fix of fixes) {
      // A button has no full stop, words in its place do.
      const said = sayFix(finding.rule, fix, en, show);
      expect(said).toMatch(fix.changes === null ? /^[A-Z].*\.$/ : /^[A-Z].*[^.]$/);
      expect(said).not.toMatch(UNFIT);
    }
    for (const figure of [finding.depth, finding.measured, finding.limit, finding.margin])
      expect(Number.isFinite(figure ?? 0)).toBe(true);
    // A margin is negative when its limit is broken.
    expect(finding.margin ?? 0, finding.rule).toBeLessThanOrEqual(1e-3);
  }
  for (const lacking of lackingIn(solution)) {
    const { missing, unchecked } = sayLacking(lacking, en, showIn('us'));
    expect(lacking.field).not.toBe('');
    expect(unchecked).toMatch(/^whether /);
    expect(missing).not.toBe('');
    expect(`${missing} ${unchecked}`).not.toMatch(UNFIT);
  }
  for (const { turn, together } of findings) {
    if (turn !== null) expect(sayMeasure(turn, en), turn.field).toMatch(/^[A-Z].*[^.]$/);
    for (const turning of together) {
      const sentence = sayTurning(turning, en, show);
      expect(sentence).toMatch(/^[A-Z\d].*\.$/);
      expect(sentence).not.toMatch(UNFIT);
      expect(words(sentence), sentence).toBeLessThanOrEqual(20);
    }
  }
}

/** A hole in a sentence, a bare negative, or a promise that nobody can keep. */
const UNFIT = /undefined|null|NaN|Infinity|\bsafe\b|will not freeze|(?<![\d.])-\d/;

describe.each(['us', 'metric'] as const)('what is said in %s units', (units) => {
  test.each(CASES)('$rule, $says', ({ rule, changes, values }) => {
    const solved = solvedPlan(changed({ ...changes, units }), values);
    const solution = { ...solved, ...judge(solved) };
    expectPlainWords(solution);
    const all = [...solution.findings, ...solution.holding, ...solution.notJudged];
    expect(all.filter((each) => each.rule === rule).length).toBeLessThanOrEqual(1);
  });
});

test('what is said of 300 plans made at random is complete, short and calm', () => {
  fc.assert(
    fc.property(anyPlan, (plan) => expectPlainWords(solve(plan))),
    { seed: 24, numRuns: 300 },
  );
});

/** What the drawing knows besides the parts of the string. */
const PLACES = ['casing', 'screen', 'openHole', 'grout', 'well', 'frost', 'staticLevel', 'pumpingLevel'];

/** A finding stands on something that is drawn, and its mark where that is. */
function expectOnTheDrawing({ parts, findings }: Pick<Solution, 'parts' | 'findings'>): void {
  const kinds = new Map(parts.map(({ key, kind }) => [key, kind]));
  for (const { rule, part, partKind } of findings) {
    if (!PLACES.includes(part)) expect(`${rule} ${part}: ${kinds.get(part)}`).toBe(`${rule} ${part}: ${partKind}`);
  }
}

describe('a finding points at a part that is there', () => {
  test.each(CASES)('$rule, $says', ({ changes, values }) => {
    const solved = solvedPlan(changed(changes), values);
    expectOnTheDrawing({ parts: solved.parts, findings: judge(solved).findings });
  });

  test('in 300 plans made at random', () => {
    fc.assert(
      fc.property(anyPlan, (plan) => expectOnTheDrawing(solve(plan))),
      { seed: 25, numRuns: 300 },
    );
  });
});

test('dangers come first, then warnings, then notes', () => {
  const { findings } = judged({
    'pump.setting': '196 ft',
    'top.depth': '30 in',
    'string.ties': '30 ft',
    'string.guards': '80 ft',
  });
  const severities = findings.map(({ severity }) => severity);
  expect(severities).toEqual([...severities].sort((one, other) => 'dwn'.indexOf(one[0]!) - 'dwn'.indexOf(other[0]!)));
  expect(new Set(severities)).toEqual(new Set(['danger', 'warning', 'note']));
});

test('work that can hurt someone carries its caution', () => {
  for (const { number } of RULES.filter(({ part }) =>
    ['cable', 'splice', 'tie', 'rope', 'tank', 'staticLevel'].includes(part),
  )) {
    expect(LONG[number]?.caution ?? '', number).not.toBe('');
  }
});
