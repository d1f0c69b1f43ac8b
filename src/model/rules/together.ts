/** One missing fact, one finding: the rules that turn on it are told together. */
import type { Finding, Severity, Turning } from '../solution.ts';
import { levelAtNoFlow } from '../figures/curves.ts';
import { restsOn } from './assumed.ts';
import { isGuarded } from './cutOff.ts';
import { DECIDED_TOGETHER, openPumpingLevel } from './openFacts.ts';
import type { Measurement, Open } from './openFacts.ts';
import { placed } from './placed.ts';
import type { Depends, Given, Rule } from './rule.ts';
import { suspensionDepth } from '../string/topDepths.ts';

export interface Depending {
  readonly rule: Rule;
  readonly outcome: Depends;
}

/** The rule whose finding stands for a measurement that nobody made, where there is one. */
const ENTRY: Readonly<Partial<Record<Measurement, string>>> = { pumpingTest: 'PR-53' };

/** The findings with one entry for each fact that rules turn on. */
export function toldTogether(
  depending: readonly Depending[],
  findings: readonly Finding[],
  given: Given,
  assumed: ReadonlySet<string>,
): Finding[] {
  const groups = new Map<Measurement, Depending[]>();
  const untested = findings.some(({ rule }) => rule === ENTRY.pumpingTest);
  for (const each of depending) {
    const own = DECIDED_TOGETHER[each.outcome.open.fact];
    // Where a probe hangs would not matter if the level were known to stay above it.
    const measurement = own === 'cutOffDepth' && untested ? 'pumpingTest' : own;
    groups.set(measurement, [...(groups.get(measurement) ?? []), each]);
  }
  let told = [...findings];
  for (const [measurement, group] of groups) {
    const standing = told.find(({ rule }) => rule === ENTRY[measurement]);
    const entry = entryOf(group, standing, severityOf(measurement, group, given), given, assumed);
    told = [...told.filter((each) => each !== standing), entry];
  }
  return told;
}

function entryOf(
  group: readonly Depending[],
  standing: Finding | undefined,
  severity: Severity,
  given: Given,
  assumed: ReadonlySet<string>,
): Finding {
  const first = soonest(group);
  const together = group.map(turningOf);
  const turn = turningOf(first).turn;
  const rests = [...new Set(group.flatMap(({ rule }) => restsOn(rule, assumed)))];
  if (standing !== undefined) return { ...standing, severity, turn, together, assumed: rests };
  const { rule, outcome } = first;
  return {
    rule: rule.number,
    severity,
    part: placed(given.solved, rule.part)?.key ?? rule.part,
    partKind: rule.part,
    depth: depthOf(outcome.open, given),
    measured: null,
    limit: null,
    margin: null,
    quantity: null,
    variant: outcome.variant,
    numbers: outcome.numbers,
    turn,
    together,
    worse: null,
    assumed: rests,
  };
}

/** The rule that turns first as things get worse. */
function soonest(group: readonly Depending[]): Depending {
  const share = ({ outcome: { open, turn } }: Depending) =>
    open.bad === open.good ? 0 : (turn - open.good) / (open.bad - open.good);
  return group.reduce((first, each) => (share(each) < share(first) ? each : first));
}

function turningOf({ rule, outcome }: Depending): Turning {
  const { variant, numbers, open, turn, worst, worse = null } = outcome;
  return { rule: rule.number, variant, numbers, turn: { field: open.field, at: turn }, bad: worst.severity, worse };
}

/** Where the build answers the bad end already it is a note, else as bad as a warning. */
function severityOf(measurement: Measurement, group: readonly Depending[], given: Given): Severity {
  if (group.every(({ outcome }) => outcome.worst.severity === 'note')) return 'note';
  if (measurement === 'cutOffDepth') return 'note';
  return measurement === 'pumpingTest' && isAnswered(given) ? 'note' : 'warning';
}

/** Guarded against running dry, and still lifting with the water as low as it can get. */
function isAnswered({ solved }: Given): boolean {
  if (!isGuarded(solved)) return false;
  const open = openPumpingLevel(solved);
  const lifts = levelAtNoFlow(solved.facts, { end: 'least', tank: 'cutIn' });
  return open === null || lifts === null || open.bad <= lifts;
}

function depthOf({ fact }: Open, { solved, facts }: Given): number | null {
  if (fact === 'pumpingLevel' || fact === 'yield') return solved.levels.static;
  if (fact === 'cutOffDepth') return facts.pump.setting;
  return suspensionDepth(facts);
}
