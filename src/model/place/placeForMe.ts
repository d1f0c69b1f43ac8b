/**
 * "Place it for me": sets what the build leaves to choose to values that meet every rule, says what it changed and why,
 * and where nothing can meet them all names the rules that exclude each other.
 *
 * It owns no limit: the pump and the adapter go to an end of their allowed band, all else follows the rules' own mends.
 */
import { valueAt, withValue } from '../plan/editPlan.ts';
import type { Plan } from '../plan/schema.ts';
import { RULES } from '../rules/list.ts';
import { mayMove, writtenInside } from '../rules/mend.ts';
import { rangesOf } from '../rules/ranges.ts';
import type { Range } from '../rules/rule.ts';
import type { Band, BandSetting, Finding, Solution } from '../solution.ts';
import { solve } from '../solve.ts';
import { show } from '../units.ts';

export interface PlacedChange {
  readonly path: string;
  /** What stood there as typed; undefined where nothing did. */
  readonly from: unknown;
  readonly to: unknown;
  /** The rule that set it; empty where the choice is ours. */
  readonly rule: string;
  /** One plain sentence. */
  readonly why: string;
}

export interface Clash {
  readonly rules: readonly string[];
  readonly words: string;
  readonly whatWouldHaveToChange: string;
}

export interface Placement {
  readonly plan: Plan;
  readonly changes: readonly PlacedChange[];
  /** What stands reported or installed, or waits for a fact that nobody knows. */
  readonly left: readonly { readonly path: string; readonly why: string }[];
  readonly clashes: readonly Clash[];
  /** Findings that no placing mends. */
  readonly remaining: readonly Finding[];
}

const SETTINGS: readonly BandSetting[] = ['top.depth', 'pump.setting'];

/** Each mend may ask for another; more rounds than there are choices would be a circle. */
const MOST_ROUNDS = 24;

export function placeForMe(plan: Plan): Placement {
  const changes = new Map<string, PlacedChange>();
  let placed = plan;
  const set = (path: string, to: unknown, rule: string, why: string): void => {
    const from = changes.has(path) ? changes.get(path)?.from : valueAt(plan, path);
    placed = withValue(placed, path, to);
    if (sameValue(from, to)) changes.delete(path);
    else changes.set(path, { path, from, to, rule, why });
  };
  const left = SETTINGS.flatMap((setting) => settle(setting, solve(placed), set));
  mendAll(() => solve(placed), set);
  const solution = solve(placed);
  return {
    plan: placed,
    changes: [...changes.values()],
    left,
    clashes: solution.bands.flatMap((band) => clashOf(band, solution)),
    remaining: solution.findings,
  };
}

type Setter = (path: string, to: unknown, rule: string, why: string) => void;

/** The adapter as shallow as it may be; the pump too, but in a well that gives less than is asked as deep, for storage. */
function settle(setting: BandSetting, solution: Solution, set: Setter): { path: string; why: string }[] {
  if (setting === 'top.depth' && solution.facts.top.kind !== 'pitless') return [];
  if (!mayMove(solution.facts, setting)) return [{ path: setting, why: 'It stands as reported or installed.' }];
  const range = rangesOf(solution, RULES)[setting];
  if (range === null || !range.known) return [{ path: setting, why: whatIsMissing(setting) }];
  const { firm } = range;
  if (range.ends === null || firm === null) return [];
  const deep = setting === 'pump.setting' && isPoor(solution);
  const text = writtenInside({ solved: solution, facts: solution.facts }, setting, deep ? 'to' : 'from', firm);
  if (text !== valueAt(solution.plan, setting))
    set(setting, text, ruleAt(range, deep), whyThere(setting, range, deep, solution));
  return [];
}

function whatIsMissing(setting: BandSetting): string {
  return setting === 'top.depth' ? 'The frost depth is not known.' : 'The water level is not known.';
}

/** The well gives less than the house asks, or than the pump takes. */
function isPoor({ facts, values }: Solution): boolean {
  const { yield: gives } = facts.well;
  return gives !== null && ((facts.house.demand ?? 0) > gives || (values.operatingFlowAtCutIn ?? 0) > 2 * gives);
}

function ruleAt(range: Range, deep: boolean): string {
  return deep ? range.to.rule : range.from.rule;
}

function whyThere(setting: BandSetting, range: Range, deep: boolean, { facts }: Solution): string {
  const end = (deep ? range.to : range.from).label(show(facts.units));
  if (deep) return `The well gives little: the deepest the rules allow stores most water (${end}).`;
  return setting === 'top.depth'
    ? `As shallow as the rules allow: ${end}.`
    : `The shallowest that every rule allows: ${end}.`;
}

/** Applies the rules' own mends, one at a time, since one may settle another. A mend tried once is not tried again. */
function mendAll(now: () => Solution, set: Setter): void {
  const tried = new Set<string>();
  for (let round = 0; round < MOST_ROUNDS; round++) {
    const next = now().findings.find(
      ({ rule, mend }) => mend !== null && !tried.has(`${rule} ${JSON.stringify(mend)}`),
    );
    if (next === undefined || next.mend === null) return;
    tried.add(`${next.rule} ${JSON.stringify(next.mend)}`);
    for (const { path, to } of next.mend) set(path, to, next.rule, `${next.title}: ${next.amount}.`);
  }
}

function clashOf(band: Band, { facts }: Solution): Clash[] {
  if (band.from !== null || band.clash.length === 0) return [];
  const part = band.setting === 'top.depth' ? 'pitless adapter' : 'pump';
  return [
    {
      rules: band.clash,
      words: `No depth of the ${part} meets both: ${band.fromLabel}, and ${band.toLabel}.`,
      whatWouldHaveToChange:
        band.setting === 'top.depth'
          ? 'An adapter made to stand under water, insulation over the line, or a heated seal on top.'
          : facts.well.intake.kind === 'screen' || facts.well.intake.kind === 'driven point'
            ? 'A smaller pump flow (less drawdown), a shroud round the motor, or a deeper well.'
            : 'A smaller pump flow (less drawdown), a low-level cut-off with storage, or a deeper well.',
    },
  ];
}

function sameValue(a: unknown, b: unknown): boolean {
  return a === b || JSON.stringify(a) === JSON.stringify(b);
}
