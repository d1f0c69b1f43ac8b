/** Judges a solved plan by every rule: what is wrong, what holds, what cannot be judged, and where parts may go. */
import type { Band, Finding, Holding, NotJudged, Severity, Solution, Solved, Verdict } from '../solution.ts';
import { ADVICE_NUMBERS, adviceFor } from './advice.ts';
import { DECIDED_BY } from './missing.ts';
import { placed } from './placed.ts';
import { RULES } from './list.ts';
import { bandOf, rangesOf } from './ranges.ts';
import type { Breaks, Fix, Given, Rule } from './rule.ts';

export type Judgement = Pick<Solution, 'findings' | 'holding' | 'verdicts' | 'notJudged' | 'bands' | 'advice'>;

export function judge(solved: Solved): Judgement {
  const given = givenBy(solved);
  const found: Record<Severity, Finding[]> = { danger: [], warning: [], note: [] };
  const holding: Holding[] = [];
  const notJudged: NotJudged[] = [];
  const verdicts: Record<string, Verdict> = { ...NOT_JUDGED };
  for (const rule of RULES) {
    const outcome = rule.judge(given);
    if (outcome.kind === 'holds') {
      verdicts[rule.number] = 'ok';
      holding.push({ rule: rule.number, variant: outcome.variant, numbers: outcome.numbers });
    } else if (outcome.kind === 'breaks') {
      verdicts[rule.number] = outcome.severity;
      found[outcome.severity].push(findingOf(rule, outcome, solved));
    } else if (outcome.kind === 'missing') {
      const { fact, numbers } = outcome;
      notJudged.push({ rule: rule.number, fact, numbers, fields: DECIDED_BY[fact] });
    }
  }
  const bands: Band[] = [];
  for (const range of [given.ranges['pump.setting'], given.ranges['top.depth']]) {
    if (range !== null && range.known) bands.push(bandOf(range));
  }
  return {
    findings: [...found.danger, ...found.warning, ...found.note],
    holding,
    verdicts,
    notJudged,
    bands,
    advice: adviceFor(solved.facts),
  };
}

export function givenBy(solved: Solved): Given {
  const { facts, values } = solved;
  return { solved, facts, values, ranges: rangesOf(solved, RULES) };
}

/** What the rule of a finding offers against it, in its order and not tried. */
export function candidatesFor({ rule }: Pick<Finding, 'rule'>, given: Given): readonly Fix[] {
  const found = RULES.find(({ number }) => number === rule);
  const outcome = found?.judge(given);
  return found === undefined || outcome?.kind !== 'breaks' ? [] : found.fixes(given, outcome);
}

/** Every rule number in order, as a plan that says nothing would be judged. */
const NOT_JUDGED: Readonly<Record<string, Verdict>> = Object.fromEntries(
  [...RULES.map(({ number }) => number), ...ADVICE_NUMBERS]
    .sort()
    .map((number) => [number, 'not judged' as const]),
);

function findingOf(rule: Rule, outcome: Breaks, solved: Solved): Finding {
  const partKind = outcome.partKind ?? rule.part;
  return {
    rule: rule.number,
    severity: outcome.severity,
    part: outcome.part ?? placed(solved, partKind)?.key ?? partKind,
    partKind,
    depth: outcome.depth,
    measured: outcome.measured,
    limit: outcome.limit,
    margin: outcome.margin,
    quantity: outcome.quantity,
    variant: outcome.variant,
    numbers: outcome.numbers,
  };
}
