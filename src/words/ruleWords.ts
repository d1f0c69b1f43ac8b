/** What a language must say of a family of rules: every variant of every rule, with just the numbers that it is told. */
import type { FixList } from '../model/fixes/list.ts';
import type { SharedFix } from '../model/rules/fix.ts';
import type { Breaks, Depends, Holds, Rule } from '../model/rules/rule.ts';
import type { Show } from '../model/units.ts';

/** A sentence, or a part of one, from its numbers in the reader's units. */
export type Saying<Numbers> = (numbers: Numbers, show: Show) => string;

/** Where a limit comes from: its own quantities in the reader's units. */
export type Source = string | ((show: Show) => string);

export function saySource(source: Source, show: Show): string {
  return typeof source === 'string' ? source : source(show);
}

/** What a drawing says of a finding: few words. */
export interface Short {
  /** By how much, in the reader's units: "12 in too high". Short enough for a phone's column. */
  readonly amount: string;
  /** Where the rule's own title does not say it. */
  readonly title?: string;
}

type AnyRule = Rule<string, never, never, never> | Rule;
type Parts<R> = R extends Rule<infer Number, infer Out, infer Lim, infer Asked> ? [Number, Out, Lim, Asked] : never;
type NumberOf<R> = Parts<R>[0];
type Judged<R> = Extract<Parts<R>[1], Holds | Breaks | Depends>;
type Broken<R> = Extract<Parts<R>[1], Breaks | Depends>;
type Held<R> = Extract<Parts<R>[1], Holds>;
type LimitOf<R> = Parts<R>[2];
type Asked<R> = Parts<R>[3];
type FixOf<R> = NumberOf<R> extends keyof FixList ? ReturnType<FixList[NumberOf<R>]>[number] : never;
type OwnFix<R> = Exclude<FixOf<R>, { readonly variant: SharedFix['variant'] }>;
/** The numbers of a variant, wherever it stands. */
type NumbersOf<All, Variant> = All extends { readonly variant: infer Any; readonly numbers: infer Said }
  ? Variant extends Any
    ? Said
    : never
  : never;
type VariantOf<All> = All extends { readonly variant: infer Variant extends string } ? Variant : never;

/** Titles and amounts of what is wrong, and ends of bands: all that a drawing needs. */
export interface ShortRule<R> {
  /** Title when it is broken: "The pitless adapter is in the frost zone". */
  readonly broken: string;
  readonly says: {
    readonly [V in VariantOf<Broken<R>>]: (numbers: NumbersOf<Broken<R>, V>, show: Show) => Short;
  };
  /** The end's reason on the drawing: "10 ft under the dry level". */
  readonly limits: { readonly [V in VariantOf<LimitOf<R>>]: Saying<NumbersOf<LimitOf<R>, V>> };
}

/** Titles and amounts of what holds, reasons, sources, cautions, whole sentences, and the words of buttons. */
export interface LongRule<R> {
  /** Title when it holds: "The pitless adapter is below the frost". */
  readonly holds: string;
  readonly held: {
    readonly [V in VariantOf<Held<R>>]: (numbers: NumbersOf<Held<R>, V>, show: Show) => Short;
  };
  /** What it asks, with its limits, as it stands where it holds: one sentence, 25 words at most. */
  readonly asks: Saying<Asked<R>>;
  /** The printed limit with its section, or "common practice, no source"; a function where it names a quantity. */
  readonly source: Source;
  /** Why it matters, one sentence that a first-timer understands. */
  readonly why: string;
  /** The usual caution where the work can hurt someone. */
  readonly caution?: string;
  /** One calm sentence with the numbers, twenty words at most. */
  readonly messages: { readonly [V in VariantOf<Judged<R>>]: Saying<NumbersOf<Judged<R>, V>> };
  /** A button's words without a full stop, or a whole sentence for what is no button. */
  readonly fixes: { readonly [V in VariantOf<OwnFix<R>>]: Saying<NumbersOf<OwnFix<R>, V>> };
}

export type ShortWords<Family extends readonly AnyRule[]> = {
  readonly [R in Family[number] as NumberOf<R>]: ShortRule<R>;
};

export type LongWords<Family extends readonly AnyRule[]> = {
  readonly [R in Family[number] as NumberOf<R>]: LongRule<R>;
};
