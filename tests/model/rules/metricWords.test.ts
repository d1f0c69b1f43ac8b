/** Readers of metric units read metric units: in what is found, what holds, what may be done, and in advice. */
import { expect, test } from 'vitest';
import { ADVICE_NUMBERS } from '../../../src/model/rules/advice.ts';
import { judge } from '../../../src/model/rules/index.ts';
import { show } from '../../../src/model/units.ts';
import { en } from '../../../src/words/en/index.ts';
import { sayAdvice, sayFinding, sayFix, sayHolding } from '../../../src/words/sayJudgement.ts';
import { CASES } from './cases.ts';
import { changed, fixesFor, solvedPlan } from './fixture.ts';

const CUSTOMARY = /\d (?:in|ft|psi|gal|gpm|lb|hp|°F)\b/;
/** Pipe is called by its nominal size everywhere. */
const withoutSizes = (text: string) => text.replace(/\b(?:\d-)?\d(?:\/\d)? in(?= pipe| [A-Za-z]+ \d+ pipe|,|\.)/g, '');

test.each(ADVICE_NUMBERS)('%s advises in metres and centimetres', (rule) => {
  expect(sayAdvice({ rule }, en, show('metric')).text).not.toMatch(CUSTOMARY);
});

const RULES_OF_PARTS = /PR-(?:17|18|19|20|21|23|24|26|40|43|47|48|52|56|57|59|60|61|62|63|64)/;

test.each(CASES.filter(({ rule }) => RULES_OF_PARTS.test(rule)))('$rule, $says', ({ rule, changes, values }) => {
  const solved = solvedPlan(changed(changes), values);
  const { findings, holding } = judge(solved);
  const metric = show('metric');
  const said: string[] = [];
  for (const finding of findings.filter((each) => each.rule === rule)) {
    const { title, amount, message } = sayFinding(finding, en, metric);
    said.push(title, amount, message, ...fixesFor(finding, solved).map((fix) => sayFix(rule, fix, en, metric)));
  }
  for (const held of holding.filter((each) => each.rule === rule)) {
    const { title, amount, message } = sayHolding(held, en, metric);
    said.push(title, amount, message);
  }
  for (const text of said) expect(withoutSizes(text), text).not.toMatch(CUSTOMARY);
});
