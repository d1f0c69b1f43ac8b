/**
 * What is said of a case of a rule, as one reads it: the verdict, the sentence with its numbers, what is offered against
 * it and the band that the rule ends. `npm run said` keeps it for every case.
 */
import { judge } from '../../../src/model/rules/index.ts';
import type { Metres } from '../../../src/model/si.ts';
import type { Finding } from '../../../src/model/solution.ts';
import { show, toFeet } from '../../../src/model/units.ts';
import { en } from '../../../src/words/en/index.ts';
import { sayFinding, sayFix, sayHolding, sayTurning } from '../../../src/words/sayJudgement.ts';
import type { RuleCase } from './cases.ts';
import { changed, fixesFor, solvedPlan } from './fixture.ts';

const us = show('us');
/** A last bit is no figure. */
const round = (value: number) => (Math.abs(value) < 1e-12 ? 0 : Number(value.toPrecision(5)));
const feetAt = (depth: Metres) => `${round(toFeet(depth))} ft`;

export function nameOf({ rule, says, verdict }: RuleCase): string {
  return `${rule}, ${says}: ${verdict}`;
}

export function saidOfCase(each: RuleCase): readonly string[] {
  return judgedCase(each).said;
}

/** The same beside its verdict, of one judgement. */
export function judgedCase({ rule, changes, values, verdict }: RuleCase) {
  const solved = solvedPlan(changed(changes), values);
  const judgement = judge(solved);
  const { findings, holding, notJudged, bands, verdicts } = judgement;
  const solution = { ...solved, ...judgement };
  const lines: string[] = [];
  for (const finding of findings) {
    if (finding.rule === rule) {
      const { title, amount, message } = sayFinding(finding, en, us);
      lines.push(`${title} (${amount}). ${message}`, figures(finding));
      if (finding.worse !== null) lines.push(`worse from ${JSON.stringify(finding.worse)}`);
      for (const fix of fixesFor(finding, solution)) {
        const does = (fix.changes ?? []).map(({ path, to }) => `${path} = ${JSON.stringify(to)}`);
        lines.push(`- ${sayFix(rule, fix, en, us)}${does.length === 0 ? '' : ` [${does.join(', ')}]`}`);
      }
    }
    for (const turning of finding.together) {
      if (turning.rule === rule && verdict === 'depends')
        lines.push(`${sayTurning(turning, en, us)} (${turning.bad}; ${turning.turn.field})`);
    }
  }
  for (const held of holding) {
    if (held.rule !== rule) continue;
    const { title, amount, message } = sayHolding(held, en, us);
    lines.push(`${title} (${amount}). ${message}`);
  }
  for (const { rule: unjudged, fact, fields } of notJudged)
    if (unjudged === rule) lines.push(`not judged for want of ${fact}: ${fields.join(', ')}`);
  for (const { setting, from, fromEnd, to, toEnd } of bands) {
    if (from !== null && fromEnd.rule === rule) lines.push(`${setting} from ${feetAt(from)}, ${fromEnd.variant}`);
    if (to !== null && toEnd.rule === rule) lines.push(`${setting} to ${feetAt(to)}, ${toEnd.variant}`);
  }
  return { verdict: verdicts[rule], said: lines };
}

function figures({ severity, part, depth, measured, limit, margin, quantity }: Finding): string {
  const of = (value: number | null) => (value === null ? '-' : String(round(value)));
  const at = depth === null ? '' : ` at ${feetAt(depth)}`;
  return `${severity} on ${part}${at}; ${of(measured)} against ${of(limit)}, ${of(margin)} over (${quantity ?? 'no figure'})`;
}
