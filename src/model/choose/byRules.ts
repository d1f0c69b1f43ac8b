/** What the rules find in the rows, beside what their own figures say. */
import { provenYield } from '../figures/provenYield.ts';
import { wantedOfPump } from '../figures/wantedOfPump.ts';
import { statusAt } from '../rules/fix.ts';
import { meets } from '../rules/grace.ts';
import type { Finding, Solution } from '../solution.ts';
import { givesLess, MOST_FROM_STORE } from './fit.ts';
import { isFit, type PumpRow, type WhyRow } from './pumpRow.ts';
import type { ToldFinding } from '../place/told.ts';

/** What pump, pipe and wire decide whatever else the plan says. */
const DECIDED_HERE: ReadonlySet<string> = new Set([
  'PR-02',
  'PR-07',
  'PR-18',
  'PR-46',
  'PR-48',
  'PR-49',
  'PR-50',
  'PR-54',
  'PR-59',
]);
const TOO_NARROW = 'PR-47';
/** The tank is chosen after the pump, unless it stands. */
const TANK = 'PR-56';

/** The rows with what the rules find in them, which no figure of their own says, and what a smaller pump does as well. */
export function judged(rows: readonly PumpRow[]): PumpRow[] {
  const fit = rows.filter(isFit);
  const able = fit.length > 0 ? fit : rows.filter(({ does }) => does === 'works');
  // What every able pump breaks no choice of a pump avoids.
  const common = new Set(brokenIn(able[0]).filter((rule) => able.every((row) => brokenIn(row).includes(rule))));
  return withoutFarOver(rows.map((row) => byRules(row, common)));
}

function byRules(row: PumpRow, common: ReadonlySet<string>): PumpRow {
  if (row.does === 'no') return row;
  const broken = avoidable(row, common);
  const sure = broken.find(({ turn }) => turn === null);
  const [first] = broken;
  // Of a pump that would work what it lacks is no reason; one that is too strong breaks most else by that.
  if (row.does === 'works' && first !== undefined)
    return { ...row, does: 'no', why: row.why.variant === 'overRange' ? row.why : told(sure ?? first) };
  if (row.does === 'works') return row;
  if (sure !== undefined) return { ...row, does: 'no', why: told(sure) };
  return first === undefined || row.does === 'depends' ? row : { ...row, does: 'depends', why: told(first) };
}

/** Nobody knows how far the water falls. */
const OPEN_WELL: ReadonlySet<string> = new Set(['dependsOnLevel', 'unknownLevel']);

/**
 * In a well that gives less than the house wants, or of which nobody knows how far it falls, a pump named for far more
 * than that where a smaller one serves.
 */
function withoutFarOver(rows: readonly PumpRow[]): PumpRow[] {
  const [smallest] = rows.filter(({ does }) => does !== 'no').toSorted((one, other) => one.rated - other.rated);
  if (smallest === undefined) return [...rows];
  return rows.map((row) => {
    if (row.does === 'no' || row.isPlans || !(row.rated > smallest.rated)) return row;
    const { facts } = row.solution;
    const want = wantedOfPump(row.solution);
    const gives = provenYield(facts);
    if (want === null || meets(MOST_FROM_STORE * want.flow - row.rated, 'flow')) return row;
    const isOpen = row.does === 'depends' && OPEN_WELL.has(row.why.variant);
    if (!isOpen && !givesLess(row.solution)) return row;
    const { flow: house, fillsTank } = want;
    return {
      ...row,
      does: 'no',
      why: { variant: 'farOver', numbers: { rated: row.rated, gives: isOpen ? null : gives, house, fillsTank } },
    };
  });
}

function brokenIn(row: PumpRow | undefined): string[] {
  return (row?.solution.findings ?? []).filter(({ severity }) => severity !== 'note').map(({ rule }) => rule);
}

function avoidable({ solution }: PumpRow, common: ReadonlySet<string>): Finding[] {
  return solution.findings.filter((finding) => {
    const { rule, severity, partKind } = finding;
    if (severity === 'note' || PASSING.has(rule) || followsDepth(rule, solution)) return false;
    if (rule === TANK) return statusAt(solution.facts, 'house.tank') !== 'to choose' && !common.has(rule);
    if (rule === TOO_NARROW) return partKind === 'dropPipe';
    return DECIDED_HERE.has(rule) || finding.together.some((one) => DECIDED_HERE.has(one.rule)) || !common.has(rule);
  });
}

/** Hands and hoist decide on no pump. */
const ON_THE_HOOK = 'PR-51';
/** What comes of using the store of a well that gives less than the house wants, and of no pump. */
const INFLOW_UNCOVERED = 'PR-04';

/** What a depth brings with it that the water asked for: told, and no reason for another pump. */
export function followsDepth(rule: string, solution: Solution): boolean {
  return rule === ON_THE_HOOK || (rule === INFLOW_UNCOVERED && givesLess(solution));
}

/**
 * A larger tank answers short runs, which is chosen beside the pump; a relief valve or another line what the pump can put
 * on the one that lies there.
 */
const ALSO_TOLD: ReadonlySet<string> = new Set(['PR-56', 'PR-61']);

/** The weight stands in a column of its own. */
export function alsoTold(solution: Solution): ToldFinding[] {
  return solution.findings
    .filter(({ rule, severity }) => severity !== 'note' && rule !== ON_THE_HOOK)
    .filter(({ rule }) => ALSO_TOLD.has(rule) || followsDepth(rule, solution))
    .map(({ rule, variant, numbers }) => ({ rule, variant, numbers }));
}

/** Whether the pump gets down at all: past the adapter, and through the casing. The worse is told. */
const PASSING: ReadonlySet<string> = new Set(['PR-21', 'PR-17']);

export const isPassing = (rule: string): boolean => PASSING.has(rule);

/** What keeps a pump from passing; null where nothing does, or nobody said what would tell. */
function stuckAt({ findings }: Solution): Finding | null {
  const stuck = findings.filter(({ rule, severity }) => PASSING.has(rule) && severity !== 'note');
  return stuck.find(({ severity }) => severity === 'danger') ?? stuck[0] ?? null;
}

/**
 * Every row that does not pass says so, whatever else it does: what is no pump for all of them is one for none. They stay
 * in their order, after what passes.
 *
 * @param rows  in order
 */
export function passing(rows: readonly PumpRow[]): PumpRow[] {
  const stuck = new Set<string>();
  const judged = rows.map((row) => {
    const finding = row.does === 'no' ? null : stuckAt(row.solution);
    if (finding === null) return row;
    stuck.add(row.key);
    return { ...row, does: passes(finding), why: told(finding) };
  });
  const rank = ({ key, does }: PumpRow): number => {
    if (!stuck.has(key)) return does === 'no' ? 3 : 0;
    return does === 'depends' ? 1 : 2;
  };
  return judged.toSorted((one, other) => rank(one) - rank(other));
}

/** Tight, or as wide as such pumps usually are: a slimmer one, or a bore measured once more, may pass. */
function passes({ severity, turn, assumed }: Finding): 'depends' | 'no' {
  const isSure = severity === 'danger' && turn === null && !assumed.includes('pump.diameter');
  return isSure ? 'no' : 'depends';
}

function told({ rule, variant, numbers }: Finding): WhyRow {
  return { variant: 'finding', numbers: { finding: { rule, variant, numbers } } };
}
