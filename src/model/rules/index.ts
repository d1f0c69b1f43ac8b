/** Judges a solved plan by every rule: what is wrong, what holds, what cannot be judged, and where parts may go. */
import type { Band, Finding, Holding, Severity, Solution, Solved, Verdict } from '../solution.ts';
import { show as showIn } from '../units.ts';
import { ADVICE, adviceFor } from './advice.ts';
import { RULES } from './list.ts';
import { bandOf, rangesOf } from './ranges.ts';
import type { Breaks, Given, Rule } from './rule.ts';
import { placed } from './say.ts';

export type Judgement = Pick<Solution, 'findings' | 'holding' | 'verdicts' | 'notJudged' | 'bands' | 'advice'>;

export function judge(solved: Solved): Judgement {
  const { facts, values } = solved;
  const show = showIn(facts.units);
  const ranges = rangesOf(solved, RULES);
  const given: Given = { solved, facts, values, show, ranges };
  const found: Record<Severity, Finding[]> = { danger: [], warning: [], note: [] };
  const holding: Holding[] = [];
  const notJudged: Judgement['notJudged'][number][] = [];
  const verdicts: Record<string, Verdict> = { ...NOT_JUDGED };
  for (const rule of RULES) {
    const outcome = rule.judge(given);
    if (outcome.kind === 'holds') {
      verdicts[rule.number] = 'ok';
      holding.push({
        rule: rule.number,
        title: outcome.title ?? rule.holds,
        message: outcome.message,
        amount: outcome.amount,
      });
    } else if (outcome.kind === 'breaks') {
      verdicts[rule.number] = outcome.severity;
      found[outcome.severity].push(findingOf(rule, outcome, solved));
    } else if (outcome.kind === 'missing') {
      notJudged.push({ rule: rule.number, title: whether(rule.holds), missing: outcome.missing });
    }
  }
  const bands: Band[] = [];
  for (const range of [ranges['pump.setting'], ranges['top.depth']]) {
    if (range !== null && range.known) bands.push(bandOf(range, show));
  }
  return {
    findings: [...found.danger, ...found.warning, ...found.note],
    holding,
    verdicts,
    notJudged,
    bands,
    advice: adviceFor(facts),
  };
}

/** "The pump passes the casing" as what nobody can tell yet: "Whether the pump passes the casing". */
function whether(title: string): string {
  return `Whether ${title.charAt(0).toLowerCase()}${title.slice(1)}`;
}

/** Every rule number in order, as a plan that says nothing would be judged. */
const NOT_JUDGED: Readonly<Record<string, Verdict>> = Object.fromEntries(
  [...RULES.map(({ number }) => number), ...ADVICE.map(({ rule }) => rule)]
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
    title: outcome.title ?? rule.broken,
    amount: outcome.amount,
    message: outcome.message,
    why: rule.why,
    source: rule.source,
    caution: outcome.caution ?? rule.caution,
    mend: outcome.mend.changes,
    mendLabel: outcome.mend.label,
  };
}
