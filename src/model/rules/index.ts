/** Judges a solved plan by every rule: what is wrong, what holds, what cannot be judged, and where parts may go. */
import type { Band, Finding, Holding, NotJudged, Severity, Solution, Solved, Verdict } from '../solution.ts';
import { ADVICE_NUMBERS, adviceFor } from './advice.ts';
import { assumedPaths, comparesAssumed, holdsOn, restsOn } from './assumed.ts';
import { restsOnFar } from './farEnds.ts';
import { givenOf } from './given.ts';
import { isFlowing } from './highestStatic.ts';
import { placed } from './placed.ts';
import { quiet } from './quiet.ts';
import { toldTogether, type Depending } from './together.ts';
import { RULES } from './list.ts';
import { takenFor } from './takenFor.ts';
import { bandOf, rangesOf } from './ranges.ts';
import type { Breaks, Given, Holds, Range, Rule } from './rule.ts';

export type Judgement = Pick<
  Solution,
  'findings' | 'atWork' | 'holding' | 'verdicts' | 'notJudged' | 'bands' | 'advice'
>;

export function judge(solved: Solved): Judgement {
  const { findings, atWork, holding, verdicts, notJudged, bands, advice } = judgeAsAsked(solved);
  return { findings, atWork, holding, verdicts, notJudged, bands, advice };
}

/** The same of a plan that is only tried out: what is not asked for is not found. Not to be spread. */
export function judgeAsAsked(solved: Solved): Judgement {
  return judgeBy(RULES, solved);
}

/** What some of the rules find, as if there were no others: for who asks after one part of a plan only. */
export function findingsBy(numbers: ReadonlySet<string>, solved: Solved): readonly Finding[] {
  const some = RULES.filter(({ number }) => numbers.has(number));
  return judgeBy(some, solved).findings;
}

/** How one rule judges it: the same as among all the others. */
export function verdictBy(rule: string, solved: Solved): Verdict {
  const one = RULES.filter(({ number }) => number === rule);
  return judgeBy(one, solved).verdicts[rule] ?? 'not judged';
}

function judgeBy(rules: readonly Rule[], solved: Solved): Judgement {
  const given = givenBy(solved);
  const assumed = assumedPaths(solved);
  const findings: Finding[] = [];
  const turning: Depending[] = [];
  const held: { readonly rule: Rule; readonly outcome: Holds }[] = [];
  const notJudged: NotJudged[] = [];
  const verdicts: Record<string, Verdict> = { ...NOT_JUDGED };
  for (const rule of rules) {
    const outcome = rule.judge(given);
    // What nobody chose is not held against what nobody chose; a fact that is missing is missed all the same.
    if (outcome.kind !== 'missing' && comparesAssumed(rule, assumed)) continue;
    switch (outcome.kind) {
      case 'holds':
        verdicts[rule.number] = 'ok';
        held.push({ rule, outcome });
        break;
      case 'breaks':
        verdicts[rule.number] = outcome.severity;
        findings.push(findingOf(rule, outcome, solved, restsOn(rule, assumed)));
        break;
      case 'depends':
        verdicts[rule.number] = 'depends';
        turning.push({ rule, outcome });
        break;
      case 'missing': {
        const { fact, numbers, fields } = outcome;
        notJudged.push({ rule: rule.number, fact, numbers, fields });
        break;
      }
      case 'doesNotApply':
        break;
    }
  }
  const told = toldTogether(turning, findings, given, assumed);
  for (const finding of told) if (verdicts[finding.rule] !== 'depends') verdicts[finding.rule] = finding.severity;
  return new Judged(quiet(inOrder(told)), verdicts, notJudged, {
    holding: () => held.map(({ rule, outcome }) => holdingOf(rule, outcome, given, assumed)),
    bands: () => bandsOf(given, verdicts),
    advice: () => adviceFor(solved),
  });
}

interface Later {
  readonly holding: () => readonly Holding[];
  readonly bands: () => readonly Band[];
  readonly advice: () => Judgement['advice'];
}

/** Who only tries a plan out asks for neither what holds nor the bands, and they cost as much as the verdicts. */
class Judged implements Judgement {
  readonly findings: Judgement['findings'];
  readonly atWork: Judgement['atWork'];
  readonly verdicts: Judgement['verdicts'];
  readonly notJudged: Judgement['notJudged'];
  readonly #later: Later;
  #holding: Judgement['holding'] | null = null;
  #bands: Judgement['bands'] | null = null;
  #advice: Judgement['advice'] | null = null;

  constructor(
    { findings, atWork }: Pick<Judgement, 'findings' | 'atWork'>,
    verdicts: Judgement['verdicts'],
    notJudged: Judgement['notJudged'],
    later: Later,
  ) {
    this.findings = findings;
    this.atWork = atWork;
    this.verdicts = verdicts;
    this.notJudged = notJudged;
    this.#later = later;
  }

  get holding(): Judgement['holding'] {
    this.#holding ??= this.#later.holding();
    return this.#holding;
  }

  get bands(): Judgement['bands'] {
    this.#bands ??= this.#later.bands();
    return this.#bands;
  }

  get advice(): Judgement['advice'] {
    this.#advice ??= this.#later.advice();
    return this.#advice;
  }
}

function holdingOf(rule: Rule, { variant, numbers }: Holds, given: Given, assumed: ReadonlySet<string>): Holding {
  const rests = [...holdsOn(rule, variant, assumed), ...restsOnFar(rule, given, assumed)];
  return { rule: rule.number, variant, numbers, assumed: rests, ...takenFor(rule, given) };
}

function bandsOf({ solved, ranges }: Given, verdicts: Readonly<Record<string, Verdict>>): readonly Band[] {
  const { 'pump.setting': pump, 'top.depth': top } = ranges;
  // Where even the level at rest is unknown there is nothing to draw, and no depth is right in a well that flows by itself.
  if (isFlowing(solved)) return [];
  const bands: Band[] = [];
  const assumed = assumedPaths(solved);
  if (solved.levels.static !== null) {
    const band = bandOf(pump, assumed);
    bands.push(liftsNowhere(verdicts, pump) ? noBand(band) : band);
  }
  if (top?.known === true) bands.push(bandOf(top, assumed));
  return bands;
}

const LIFT = 'PR-46';

/** The pump does not fill the tank with the water at its lowest, and no depth of it would change that. */
function liftsNowhere(verdicts: Readonly<Record<string, Verdict>>, { heeded }: Range): boolean {
  return verdicts[LIFT] === 'danger' && !heeded.includes(LIFT);
}

function noBand(band: Band): Band {
  return { ...band, from: null, to: null, clash: [LIFT] };
}

const SEVERITIES: readonly Severity[] = ['danger', 'warning', 'note'];
const PLACE = new Map(RULES.map(({ number }, index) => [number as string, index]));

/** Dangers first; within a severity the most important rule first. */
function inOrder(findings: readonly Finding[]): Finding[] {
  const place = ({ severity, rule }: Finding) => SEVERITIES.indexOf(severity) * RULES.length + (PLACE.get(rule) ?? 0);
  return findings.toSorted((one, other) => place(one) - place(other));
}

export function givenBy(solved: Solved): Given {
  return givenOf(solved, () => rangesOf(solved, RULES));
}

/** Every rule number in order, as a plan that says nothing would be judged. */
const NOT_JUDGED: Readonly<Record<string, Verdict>> = Object.fromEntries(
  [...RULES.map(({ number }) => number), ...ADVICE_NUMBERS].sort().map((number) => [number, 'not judged' as const]),
);

function findingOf(rule: Rule, outcome: Breaks, solved: Solved, assumed: readonly string[]): Finding {
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
    turn: null,
    together: [],
    worse: outcome.worse ?? null,
    assumed,
  };
}
