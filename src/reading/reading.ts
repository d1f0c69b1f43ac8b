/** What a report was read as: values for a plan, each with the lines that it came from. */

/** Why a value is to be looked at before it is believed. */
export type Doubt =
  /** Another line says something else. */
  | { readonly kind: 'two'; readonly other: string }
  /** The line says "less than" or "more than". */
  | { readonly kind: 'less' | 'more' }
  | { readonly kind: 'range'; readonly other: string }
  /** A plus before a level: below or above the ground. */
  | { readonly kind: 'plus'; readonly other: string }
  /** It counts from the casing's top, of which nobody said how high it stands. */
  | { readonly kind: 'fromCasingTop' }
  /** It counted from the casing's top, and its height was taken off. */
  | { readonly kind: 'takenOff'; readonly height: string }
  /** A length of casing, of which some stands over the ground. */
  | { readonly kind: 'length' }
  /** No line of the report names this unit. */
  | { readonly kind: 'unit' }
  /** Layers do not join, or lie over one another. */
  | { readonly kind: 'gap' }
  /** Thousands, or a decimal comma. */
  | { readonly kind: 'comma'; readonly other: string }
  /** A pump stood there: for the test, or to this day. */
  | { readonly kind: 'standing' }
  /** Two figures of the test do not fit each other. */
  | { readonly kind: 'unlike'; readonly other: string };

/** What was done so that the reader understands the value. */
export type Note = 'imperial' | 'later' | 'completed' | 'recommended' | 'installed' | 'shares' | 'airLift';

export interface Reading {
  /** Of the plan: "well.depth". */
  readonly path: string;
  /** As a plan writes it. */
  readonly value: string | readonly Readonly<Record<string, unknown>>[];
  /** Numbers of the lines, from 1. */
  readonly lines: readonly number[];
  /** What stands on them. */
  readonly text: string;
  readonly doubt: Doubt | null;
  readonly note: Note | null;
}

/** Why something that was understood is no value. */
export type WhyNot =
  /** What is called a pumping level is where the drill stem stood. */
  | 'airLevel'
  | 'recommendedRate'
  | 'firstWater'
  | 'testIntake'
  | 'drilledDeeper'
  | 'earlier'
  | 'installedInstead'
  | 'flows'
  | 'artesianFlow'
  /** A plan has no place for it. */
  | 'noPlace';

export interface Aside {
  readonly why: WhyNot;
  readonly lines: readonly number[];
  readonly text: string;
}

export interface LeftLine {
  readonly lines: readonly number[];
  readonly text: string;
}

export interface ReadReport {
  readonly units: 'us' | 'metric';
  readonly readings: readonly Reading[];
  /** Understood, and not taken. */
  readonly asides: readonly Aside[];
  /** Not understood. */
  readonly left: readonly LeftLine[];
}
