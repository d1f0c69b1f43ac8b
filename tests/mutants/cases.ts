/** The cases of the rules that the tried file holds, of all rules where it holds none: what rules.test.ts and said.test.ts ask of them. */
import { expect, test } from 'vitest';
import * as family from 'own-family';
import { RULES } from '../../src/model/rules/list.ts';
import { CASES } from '../model/rules/cases.ts';
import kept from '../model/rules/said.json' with { type: 'json' };
import { judgedCase, nameOf } from '../model/rules/said.ts';

const held = new Set<unknown>(Object.values(family as Record<string, unknown>));
const own = RULES.filter((rule) => held.has(rule)).map(({ number }) => number);
const tried = own.length === 0 ? CASES : CASES.filter(({ rule }) => own.includes(rule));

test.each(tried)('$rule, $says: $verdict', (each) => {
  const said = (kept as Readonly<Record<string, readonly string[]>>)[nameOf(each)];
  expect(judgedCase(each)).toEqual({ verdict: each.verdict, said });
});
