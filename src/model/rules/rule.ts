/** What a rule is: its number, its words, its source, how it judges, and what it allows of the parts that can be dragged. */
import type { Facts } from '../facts.ts';
import type { Metres } from '../si.ts';
import type { BandSetting, Change, PartKind, Severity, Solved, Values } from '../solution.ts';
import type { Show } from '../units.ts';
import type { Quantity } from './grace.ts';

export interface Rule {
  /** "PR-19": as told to others, in findings and verdicts. */
  readonly number: string;
  /** What it looks at. */
  readonly part: PartKind;
  /** Title when it is broken: "The pitless adapter is in the frost zone". */
  readonly broken: string;
  /** Title when it holds: "The pitless adapter is below the frost". */
  readonly holds: string;
  /** The printed limit with its section, or "common practice, no source". */
  readonly source: string;
  /** Why it matters, one sentence that a first-timer understands. */
  readonly why: string;
  /** The usual caution where the work can hurt someone; empty where it cannot. */
  readonly caution: string;
  readonly judge: (given: Given) => Outcome;
  /** What it allows of the settings that can be dragged, from the same constants as the judgement. */
  readonly limits: (solved: Solved) => readonly Limit[];
}

/** What the rules read, put together once for all of them. */
export interface Given {
  readonly solved: Solved;
  readonly facts: Facts;
  readonly values: Values;
  readonly show: Show;
  readonly ranges: Ranges;
}

export type Outcome = Holds | Breaks | Missing | typeof doesNotApply;

export interface Measure {
  readonly measured: number | null;
  readonly limit: number | null;
  /** Negative when broken. */
  readonly margin: number | null;
  readonly quantity: Quantity | null;
}

export interface Words {
  /** "12 in too high", "18 in to spare". */
  readonly amount: string;
  /** One calm sentence with the numbers, twenty words at most. */
  readonly message: string;
  /** Where the rule's own title does not say it. */
  readonly title?: string;
}

export interface Holds extends Words {
  readonly kind: 'holds';
}

export interface Breaks extends Words, Measure {
  readonly kind: 'breaks';
  readonly severity: Severity;
  /** Where the mark stands. */
  readonly depth: Metres | null;
  /** Key of the part, where it is not the rule's own. */
  readonly part?: string;
  readonly partKind?: PartKind;
  readonly caution?: string;
  readonly mend: Mend;
}

export interface Mend {
  readonly changes: readonly Change[] | null;
  /** The button's words, or what to do when there is no button. */
  readonly label: string;
}

/** The rule cannot be judged; `missing` says what nobody told. */
export interface Missing {
  readonly kind: 'missing';
  readonly missing: string;
}

/** The thing that the rule looks at is not there: no screen, no seal, an open tank. */
export const doesNotApply = { kind: 'doesNotApply' } as const;

/** From where to where a rule lets a dragged part go. */
export interface Limit {
  readonly setting: BandSetting;
  readonly from?: Metres;
  readonly to?: Metres;
  /** The end's reason on the drawing: "10 ft under the dry level". */
  readonly label: (show: Show) => string;
  /** True where another choice mends it too (thicker wire, a hoist): then it never empties the band. */
  readonly givesWay?: boolean;
  /** Where that other choice stands in the plan: "wire.size". A hoist or a shroud stands nowhere. */
  readonly answeredBy?: string;
}

export interface Range {
  readonly setting: BandSetting;
  /** Ends where every rule that counts is met; null when they exclude each other. Rounded inward. */
  readonly ends: { readonly from: Metres; readonly to: Metres } | null;
  /** The same, not rounded, without the limits that give way: where a mend may lead, since those have mends of their own. */
  readonly firm: { readonly from: Metres; readonly to: Metres } | null;
  readonly from: End;
  readonly to: End;
  /** Rules whose limits the ends respect. */
  readonly heeded: readonly string[];
  /** False where an unknown level leaves one end open: then nothing is drawn, though a mend may still use it. */
  readonly known: boolean;
}

export interface End {
  readonly depth: Metres;
  /** Empty where the thing itself ends, and no rule. */
  readonly rule: string;
  readonly label: (show: Show) => string;
}

export interface Ranges {
  readonly 'pump.setting': Range;
  /** Null for a seal on top. */
  readonly 'top.depth': Range | null;
}

const NO_LIMITS: readonly Limit[] = [];

export function defineRule(rule: Omit<Rule, 'limits' | 'caution'> & Partial<Pick<Rule, 'limits' | 'caution'>>): Rule {
  return { caution: '', limits: () => NO_LIMITS, ...rule };
}

export function missing(what: string): Missing {
  return { kind: 'missing', missing: what };
}

export function holds(amount: string, message: string, title?: string): Holds {
  return title === undefined ? { kind: 'holds', amount, message } : { kind: 'holds', amount, message, title };
}

export function breaks(found: Omit<Breaks, 'kind' | keyof Measure> & Partial<Measure>): Breaks {
  return { kind: 'breaks', measured: null, limit: null, margin: null, quantity: null, ...found };
}
