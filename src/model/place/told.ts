/** What placing tells, as names and numbers for the words of a language. */
import type { MissingFact } from '../rules/missing.ts';
import type { Fix, Numbers, Sentence } from '../rules/rule.ts';
import type { BandSetting, EndName, Finding } from '../solution.ts';
import type { Metres } from '../si.ts';

/** A finding as the words need it. */
export type ToldFinding = Pick<Finding, 'rule' | 'variant' | 'numbers'>;

/** What no click moves. */
export type Stands = 'reported' | 'installed';

/** Why a field was set. */
export type WhyPlaced =
  | Sentence<'finding', { readonly finding: ToldFinding }>
  | Sentence<'deepest' | 'leastToDig' | 'leastToLift', { readonly end: EndName }>
  | Sentence<'probeOverIntake', Readonly<Record<never, never>>>;

/** Why a field stays as it is. */
export type WhyLeft =
  | Sentence<'stands', { readonly status: Stands }>
  /** It stands, and a finding would move it. */
  | Sentence<'standsAgainst', { readonly status: Stands; readonly finding: ToldFinding }>
  | Sentence<'nobodySaid', { readonly fact: MissingFact; readonly numbers: Numbers }>;

/** Why no placing helps a finding: what stands in the way, and what is to be done instead. */
export interface NotPlaced {
  readonly status: Stands | null;
  readonly fix: Fix | null;
}

/** What would have to change where no depth meets every rule. */
export type WayOut =
  'adapterUnderWater' | 'deeperPump' | 'lessDrawdown' | 'blankBelowScreen' | 'slimmerPump' | 'deeperWell';

/** Where no depth meets every rule: which exclude each other, by how much, and what would have to change. */
export interface Clash {
  readonly setting: BandSetting;
  readonly rules: readonly string[];
  readonly from: EndName;
  readonly to: EndName;
  /** By how much the two miss each other. */
  readonly apart: Metres;
  readonly wayOut: WayOut;
}
