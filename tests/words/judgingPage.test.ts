import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { ADVICE_NUMBERS } from '../../src/model/rules/advice.ts';
import { judgingIn } from '../../src/model/judging.ts';
import { RULES } from '../../src/model/rules/list.ts';
import { documentNow, pageNow } from './judgingNow.ts';

const KINDS = ['us', 'metric'] as const;
/** Nominal sizes of pipe are called so everywhere; limits are not. */
const CUSTOMARY = /\d (?:in|ft|ft\/s|psi|gal|gpm|lb|hp|°F)\b/;
const METRIC = /\d (?:m|cm|mm|m\/s|kPa|bar|L|L\/min|kg|kW|°C)\b/;

const rulesOf = (units: 'us' | 'metric') => pageNow(units).sections.flatMap(({ rules }) => rules);
const every = (units: 'us' | 'metric') => {
  const { opening, sections } = pageNow(units);
  return [
    ...opening,
    ...sections.flatMap(({ paragraphs, items, rules }) => [
      ...paragraphs,
      ...items.map(({ text }) => text),
      ...rules.flatMap(({ title, asks, why }) => [title, asks, why]),
    ]),
  ];
};

describe.each(RULES)('$number', ({ number }) => {
  test.each(KINDS)('says what it asks in one plain sentence of at most 25 words, %s', (units) => {
    const asks = rulesOf(units).find((rule) => rule.number === number)!.asks;
    expect(asks).toMatch(/^[A-Z].*[^.]\.$/);
    expect(asks.split(/\s+/).length, asks).toBeLessThanOrEqual(25);
    expect(asks).not.toMatch(/undefined|NaN|null|\[object/);
    expect(asks).not.toMatch(units === 'us' ? METRIC : CUSTOMARY);
    expect(asks).not.toMatch(/\.\d{3}|\bPR-|safe\b/);
  });
});

test.each(KINDS)('every rule stands on the page once, in the order of the rules, and then the advice, %s', (units) => {
  expect(rulesOf(units).map(({ number }) => number)).toEqual([...RULES.map(({ number }) => number), ...ADVICE_NUMBERS]);
  for (const { title, source } of rulesOf(units)) expect(title && source).not.toBe('');
});

test.each(KINDS)('nothing on the page is a word of the program, a promise or an unnamed value, %s', (units) => {
  for (const text of every(units)) {
    expect(text).not.toMatch(/undefined|NaN|null|\[object|PR-\d|[a-z]\.[a-z]+[A-Z]|\bsafe\b|guarantee/);
    expect(text).not.toMatch(/[\u2068\u2069]/);
  }
});

test('a reader of metric units reads metric figures', () => {
  // Stamped on pipe and thread: what one asks for in a shop.
  const stamped = /^(?:200 psi|1 in|1-1\/4 in)$/;
  expect(every('metric').filter((text) => !stamped.test(text) && CUSTOMARY.test(text))).toEqual([]);
});

test('the document is the one that the rules and their words give today: else run npm run judging', () => {
  expect(readFileSync(new URL('../../docs/how-wellcut-judges.md', import.meta.url), 'utf8')).toBe(documentNow());
});

test('the document names each figure in both units, and each rule by its number', () => {
  const document = documentNow();
  expect(document).toContain('The motor ends 10 ft (3 m) or more above the bottom.');
  expect(document).toContain('Height of the casing above the ground: 12 in (30 cm)');
  for (const { number } of RULES) expect(document.split(`\n${number}. Source: `)).toHaveLength(2);
  // A sentence that could not be said in both at once would stand there twice.
  expect(document).not.toMatch(/\. \([A-Z]/);
});

test('limits are told as the rules have them: no rule that asks with a figure is told without one', () => {
  for (const { number, asks } of judgingIn('us').rules) {
    const said = rulesOf('us').find((rule) => rule.number === number)!.asks;
    const limits = Object.keys(asks).length;
    expect((said.match(/\d+(?:\.\d+)?(?= )/g) ?? []).length, said).toBeGreaterThanOrEqual(Math.min(limits, 1));
  }
});
