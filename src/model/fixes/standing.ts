/** How a plan stands by its verdicts, to tell whether a change makes anything worse. */
import type { Quantity, Solution, Verdict } from '../solution.ts';

export type Judged = Pick<Solution, 'verdicts' | 'findings'>;

/** 0 holds or was not judged, 1 note, 2 warning, 3 danger. What depends stands as its finding does. */
export function standing({ verdicts, findings }: Judged, rule: string): number {
  const verdict = verdicts[rule] ?? 'not judged';
  if (verdict !== 'depends') return STANDING[verdict];
  const told = findings.find((each) => each.together.some((one) => one.rule === rule));
  return told === undefined ? STANDING.note : STANDING[told.severity];
}

const STANDING: Readonly<Record<Exclude<Verdict, 'depends'>, number>> = {
  ok: 0,
  'not judged': 0,
  note: 1,
  warning: 2,
  danger: 3,
};

/** Worse than this is worse: a note more is no harm. */
const WORSE_FROM = 2;

/**
 * Rules that a change makes worse, from warning on, or takes out of sight: judged before, and not any more.
 *
 * @param before  the plan as it is
 * @param after   the same plan changed
 */
export function worsened(before: Judged, after: Judged): string[] {
  return Object.keys(after.verdicts).filter((rule) => {
    const is = standing(after, rule);
    const was = standing(before, rule);
    if (is >= WORSE_FROM && (is > was || (is === was && grows(rule, before, after, hairOf(rule, is))))) return true;
    return after.verdicts[rule] === 'not judged' && was > 0;
  });
}

/** Whether what a rule is short of grows by more than a hair. */
function grows(rule: string, before: Judged, after: Judged, hair: number): boolean {
  const was = shortOf(rule, before);
  const is = shortOf(rule, after);
  if (was === null || is === null || was.quantity !== is.quantity) return false;
  return is.by > hair * was.by && (hair < HAIR || is.by - was.by > is.small);
}

/**
 * A shortfall a quarter larger is one that somebody would notice; a few feet of pipe and wire add a few hundredths. Common
 * practice, no source.
 */
const HAIR = 1.25;

/**
 * What is barely short is soon short of a quarter more. Beside what is asked, a loss of volts or a weight that grows by
 * less than this is the added length, and must not hide what keeps the pump from running dry. Depths and lengths have no
 * such size to be small beside. Common practice, no source.
 */
const SMALL = 0.05;

interface Short {
  readonly quantity: Quantity;
  readonly by: number;
  /** Growth in the same unit that nobody would notice beside what is asked. */
  readonly small: number;
}

/**
 * Where a pump hangs in its water, and whether it lifts that water into the tank: no change may take a danger of these
 * further, since it is depth that costs the pump.
 */
const WATER_AND_DEPTH: ReadonlySet<string> = new Set([
  'PR-01',
  'PR-02',
  'PR-03',
  'PR-04',
  'PR-07',
  'PR-08',
  'PR-46',
  'PR-54',
]);

/** More than nothing, for depths are written in whole steps and a longer pipe rubs a little more. */
const ROUNDING = 1.01;

/** How much what a rule is short of may grow and count as the same; weight and volts follow any length of pipe and wire. */
function hairOf(rule: string, stands: number): number {
  return stands === STANDING.danger && WATER_AND_DEPTH.has(rule) ? ROUNDING : HAIR;
}

function shortOf(rule: string, { findings }: Judged): Short | null {
  const found = findings.find((each) => each.rule === rule);
  if (found === undefined || found.margin === null || found.quantity === null) return null;
  const { quantity, margin, limit } = found;
  return { quantity, by: Math.max(-margin, 0), small: quantity === 'length' ? 0 : SMALL * Math.abs(limit ?? 0) };
}

/** Whether the rule stands better than before. */
export function isBetter(rule: string, before: Judged, after: Judged): boolean {
  return standing(after, rule) < standing(before, rule) && after.verdicts[rule] !== 'not judged';
}
