/**
 * What a rule is: its number, how it judges, and what it allows of the parts that can be dragged. What would fix it stands
 * in `src/model/fixes`, so that who judges alone does not carry it.
 *
 * A rule speaks no language. It answers with a variant ("runsDry") and its numbers by name, in SI; `src/words` says them
 * in the reader's language and units. Variant and numbers are part of the rule's type, so that a language that lacks
 * one of them does not compile.
 */
import type { Facts } from '../facts.ts';
import type { Metres } from '../si.ts';
import type {
  BandSetting,
  Change,
  EndName,
  PartKind,
  Quantity,
  Severity,
  Solved,
  Values,
  WorseFrom,
} from '../solution.ts';
import { DECIDED_BY } from './missing.ts';
import type { MissingFact } from './missing.ts';
import type { Open } from './openFacts.ts';

export type { WorseFrom } from '../solution.ts';

/** Numbers in SI, and names as the plan has them, for the words. */
export type Numbers = object;

export interface Rule<
  Number extends string = string,
  Out extends Outcome = Outcome,
  Lim extends Limit = Limit,
  Asked extends Numbers = Numbers,
> {
  /** "PR-19": as told to others, in findings and verdicts. */
  readonly number: Number;
  /** What it looks at. */
  readonly part: PartKind;
  /**
   * Choices of the build that its verdict may rest on: where nobody made them, the verdict says so. Facts of the well, its
   * water and its site are not among them.
   *
   * A test changes every choice of a plan in turn and fails for a verdict that moves with one that is not named here.
   */
  readonly restsOn: readonly string[];
  /**
   * Where a verdict that holds rests on less than the rule may, by variant: what was measured is not made doubtful by what
   * the pump does with it.
   */
  readonly holdsOn: Readonly<Record<string, readonly string[] | undefined>>;
  /**
   * What would only help where it were otherwise, so that what holds does not rest on it: on 50 Hz a pump pushes and draws
   * less, and thinner air presses less into a tank.
   */
  readonly onlyHelps: readonly string[];
  /**
   * What it holds against each other, in groups: where nobody said any of a group, it has nothing to say. A top that nobody
   * chose is a group of its own.
   */
  readonly compares: readonly (readonly string[])[];
  /**
   * Its limits by name, in SI, from the constants that it judges by: what it asks is told with them. A limit that each
   * country rounds for itself stands under both.
   */
  readonly asks: Asked;
  readonly judge: (given: Given) => Out;
  /** What it allows of the settings that can be dragged, from the same constants as the judgement. */
  readonly limits: (solved: Solved) => readonly Lim[];
}

/** What the rules read, put together once for all of them. */
export interface Given {
  readonly solved: Solved;
  readonly facts: Facts;
  readonly values: Values;
  readonly ranges: Ranges;
}

export type Outcome = Holds | Breaks | Depends | Missing | typeof doesNotApply;

export interface Measure {
  readonly measured: number | null;
  readonly limit: number | null;
  /** Negative when broken. */
  readonly margin: number | null;
  readonly quantity: Quantity | null;
}

/** Which of a rule's sentences fits, and the numbers that it is said with. */
export interface Sentence<Variant extends string = string, Said extends Numbers = Numbers> {
  readonly variant: Variant;
  readonly numbers: Said;
}

export interface Holds<Variant extends string = string, Said extends Numbers = Numbers> extends Sentence<
  Variant,
  Said
> {
  readonly kind: 'holds';
  /** What is left to the limit, where a rule is judged at both ends of an open fact. */
  readonly margin?: number;
}

export interface Breaks<Variant extends string = string, Said extends Numbers = Numbers>
  extends Sentence<Variant, Said>, Measure {
  readonly kind: 'breaks';
  readonly severity: Severity;
  /** Where the mark stands. */
  readonly depth: Metres | null;
  /** Key of the part, where it is not the rule's own. */
  readonly part?: string;
  readonly partKind?: PartKind;
  /** Broken whatever an open fact is, and from some value of it on worse than this. */
  readonly worse?: WorseFrom;
}

/** At one end of what an open fact can be the rule holds, at the other it does not. */
export interface Depends<Variant extends string = string, Said extends Numbers = Numbers> extends Sentence<
  Variant,
  Said
> {
  readonly kind: 'depends';
  readonly open: Open;
  /** The value of the open fact at which the verdict turns, SI. */
  readonly turn: number;
  /** How it breaks at the bad end. */
  readonly worst: Breaks;
  /** Where it breaks at both: from where on it is worse than at the good end. */
  readonly worse?: WorseFrom;
}

/** A change of the plan that may fix a finding, or words in its place. */
export interface Fix<Variant extends string = string, Said extends Numbers = Numbers> extends Sentence<Variant, Said> {
  /** Null where there is nothing to click. */
  readonly changes: readonly Change[] | null;
}

/** The rule cannot be judged; `fact` is what nobody told, `fields` what would tell it. */
export interface Missing {
  readonly kind: 'missing';
  readonly fact: MissingFact;
  readonly numbers: Numbers;
  readonly fields: readonly string[];
}

/** The thing that the rule looks at is not there: no screen, no seal, an open tank. */
export const doesNotApply = { kind: 'doesNotApply' } as const;

/** From where to where a rule lets a dragged part go. The variant names the end on the drawing: "10 ft under the dry level". */
export interface Limit<Variant extends string = string, Said extends Numbers = Numbers> extends Sentence<
  Variant,
  Said
> {
  readonly setting: BandSetting;
  readonly from?: Metres;
  readonly to?: Metres;
  /** True where another choice fixes it too (thicker wire, a shroud): then it never empties the band. */
  readonly givesWay?: boolean;
  /** Where that other choice stands in the plan: "wire.size". A hoist or a shroud stands nowhere. */
  readonly answeredBy?: string;
}

export interface Range {
  readonly setting: BandSetting;
  /** Ends where every rule that counts is met; null when they exclude each other. Rounded inward. */
  readonly ends: { readonly from: Metres; readonly to: Metres } | null;
  /** The same, not rounded, without the limits that give way: where a fix may lead, since those have fixes of their own. */
  readonly firm: { readonly from: Metres; readonly to: Metres } | null;
  readonly from: End;
  readonly to: End;
  /** Rules whose limits the ends respect. */
  readonly heeded: readonly string[];
  /** False where an unknown level leaves one end open: then nothing is drawn, though a fix may still use it. */
  readonly known: boolean;
}

export interface End {
  readonly depth: Metres;
  readonly name: EndName;
  /** The rule that ends it; null where the thing itself does. */
  readonly by: Rule | null;
}

export interface Ranges {
  readonly 'pump.setting': Range;
  /** Null for a seal on top. */
  readonly 'top.depth': Range | null;
}

/** Lists are inferred whole, since a function may return lists of different limits. */
interface RuleParts<Number extends string, Out extends Outcome, Limits extends readonly Limit[], Asked extends Numbers>
  extends
    Pick<Rule<Number, Out>, 'number' | 'part' | 'restsOn' | 'judge'>,
    Partial<Pick<Rule, 'holdsOn' | 'onlyHelps' | 'compares'>> {
  readonly asks?: Asked;
  readonly limits?: (solved: Solved) => Limits;
}

export function defineRule<
  const Number extends string,
  Out extends Outcome,
  Limits extends readonly Limit[] = readonly never[],
  Asked extends Numbers = Numbers,
>(rule: RuleParts<Number, Out, Limits, Asked>): Rule<Number, Out, Limits[number], Asked> {
  return {
    asks: NOTHING as Asked,
    holdsOn: {},
    onlyHelps: NONE,
    compares: [],
    limits: () => [],
    ...rule,
  };
}

/** What a rule without limits asks with. */
const NOTHING: Numbers = {};
const NONE: readonly string[] = [];

/** @param fields  of the plan, where they are others than usual */
export function missing(
  fact: MissingFact,
  numbers: Numbers = {},
  fields: readonly string[] = DECIDED_BY[fact],
): Missing {
  return { kind: 'missing', fact, numbers, fields };
}

export function holds<const Variant extends string, const Said extends Numbers>(
  variant: Variant,
  numbers: Said,
  margin?: number,
): Holds<Variant, Said> {
  return margin === undefined ? { kind: 'holds', variant, numbers } : { kind: 'holds', variant, numbers, margin };
}

/** @param at  where its mark stands, and what was measured where it was */
export function breaks<const Variant extends string, const Said extends Numbers>(
  variant: Variant,
  severity: Severity,
  numbers: Said,
  at: Pick<Breaks, 'depth' | 'part' | 'partKind'> & Partial<Measure>,
): Breaks<Variant, Said> {
  return {
    kind: 'breaks',
    variant,
    severity,
    numbers,
    measured: null,
    limit: null,
    margin: null,
    quantity: null,
    ...at,
  };
}

/** @param to  from or to where, and whether another choice answers it */
export function limit<const Variant extends string, const Said extends Numbers>(
  setting: BandSetting,
  to: Pick<Limit, 'from' | 'to' | 'givesWay' | 'answeredBy'>,
  variant: Variant,
  numbers: Said,
): Limit<Variant, Said> {
  return { setting, ...to, variant, numbers };
}
