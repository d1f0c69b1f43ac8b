/** What placing tells, as names and numbers for the words of a language. */
import type { MissingFact } from '../rules/missing.ts';
import type { Fix, Numbers, Sentence } from '../rules/rule.ts';
import type { BandSetting, EndName, Finding } from '../solution.ts';
import type { Metres } from '../si.ts';

/** A finding as the words need it. */
export type ToldFinding = Pick<Finding, 'rule' | 'variant' | 'numbers'>;

/** What would stand worse in a place; `hidden`: is wrong now, and could not be judged there. */
export interface Wrong {
  readonly finding: ToldFinding;
  readonly hidden: boolean;
}

/** What no click moves. */
export type Stands = 'reported' | 'measured' | 'installed';

/** What the pump was measured from. */
export type HungFrom =
  | { readonly by: 'water' | 'screen' | 'bottom' }
  /** The pump lifts from no deeper water than this. */
  | { readonly by: 'lift'; readonly lifts: Metres }
  /** Dry-run protection that stands stops the pump there. */
  | { readonly by: 'probe'; readonly probe: Metres }
  /** All that the rules together let it, in a well whose water it draws down on purpose. */
  | { readonly by: 'deepest' }
  /** Deeper that would stand worse. */
  | { readonly by: 'worse'; readonly wrong: Wrong }
  /** Another limit. */
  | { readonly by: 'end'; readonly end: EndName };

/** How far the water falls: known, or not the question since the pump hangs for the water that stands in the well. */
export type Fall = 'known' | 'unknown' | 'givesLess' | 'pumpTakesMore';

/** Where a pump ended up, from all that it could be measured from. */
export interface Hung {
  /** Water over the intake at the lowest pumping level; null where that is not known. */
  readonly under: Metres | null;
  /** The same with the water at rest. */
  readonly underRest: Metres;
  /** From the motor's lower end down to the bottom, and to the screen where there is one. */
  readonly offBottom: Metres;
  readonly overScreen: Metres | null;
}

/** Why a field was set. */
export type WhyPlaced =
  | Sentence<'finding', { readonly finding: ToldFinding }>
  | Sentence<'hung', { readonly from: HungFrom; readonly fall: Fall; readonly hung: Hung }>
  | Sentence<'probeOverIntake', { readonly above: Metres }>
  | Sentence<'protectedByCurrent', Nothing>
  | Sentence<
      'belowFrost',
      {
        /** How far below. */
        readonly below: Metres;
        readonly frost: Metres;
        /** Nobody entered the frost. */
        readonly estimated: boolean;
        /** What it stood beyond. */
        readonly beyond: AdapterEnd | null;
      }
    >
  | Sentence<'covered', { readonly cover: Metres; readonly beyond: AdapterEnd | null }>;

type Nothing = Readonly<Record<never, never>>;

/** Why a field stays as it is. */
export type WhyLeft =
  | Sentence<'stands', { readonly status: Stands }>
  /** It stands, and a finding would move it. */
  | Sentence<'standsAgainst', { readonly status: Stands; readonly finding: ToldFinding }>
  | Sentence<'nobodySaid', { readonly fact: MissingFact; readonly numbers: Numbers }>
  /** The well flows, or has no water: nothing is placed in it. */
  | Sentence<'flowing', Nothing>
  | Sentence<'dry', { readonly rest: Metres; readonly bottom: Metres }>
  /** It holds already, with room. */
  | Sentence<'hangsWell', { readonly fall: Fall; readonly hung: Hung }>
  | Sentence<'underProbe', { readonly probe: Metres }>
  | Sentence<'deepEnough', { readonly below: Metres; readonly frost: Metres }>
  /** The pump as chosen gets no water up from where it would have to hang. */
  | Sentence<'cannotLift', { readonly from: Metres; readonly lifts: Metres }>
  /** No place is deep enough under the water, and not too deep for what ends it. */
  | Sentence<
      'noRoomForPump',
      {
        readonly least: Metres;
        readonly atRest: boolean;
        readonly deepest: Metres;
        readonly end: EndName;
        readonly wayOut: WayOut;
      }
    >
  /** No place for the adapter between frost and what ends it. */
  | Sentence<'noRoomForAdapter', { readonly least: Metres; readonly by: AdapterEnd }>
  /** Where it would go, that would stand worse. */
  | Sentence<'worseThere', { readonly to: Metres; readonly wrong: Wrong }>;

export type AdapterEnd = 'digging' | 'casing' | 'liner' | 'pump' | 'water';

/** Why no placing helps a finding: what stands in the way, and what is to be done instead. */
export interface NotPlaced {
  readonly status: Stands | null;
  readonly fix: Fix | null;
}

/** What would have to change where no depth meets every rule. */
export type WayOut =
  | 'adapterUnderWater'
  | 'adapterInLiner'
  | 'heatedTop'
  | 'deeperPump'
  | 'lessDrawdown'
  | 'blankBelowScreen'
  | 'slimmerPump'
  | 'strongerPump'
  | 'onlyStrongerPump'
  | 'deeperWell'
  | 'onlyDeeperWell';

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
