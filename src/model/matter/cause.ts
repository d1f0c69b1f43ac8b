/** One cause of a trouble, and what the plan says of it. */
import type { Finding, Holding, PartKind, Solution } from '../solution.ts';
import type { Units } from '../headroom/told.ts';
import type { Own } from './own.ts';
import type { SymptomId } from './symptom.ts';

export type CauseId =
  | 'power'
  | 'switch'
  | 'float'
  | 'dryRunStop'
  | 'drive'
  | 'afterTank'
  | 'controlBox'
  | 'waterLow'
  | 'outpumped'
  | 'cable'
  | 'motor'
  | 'jammed'
  | 'adapterLeak'
  | 'sealLeak'
  | 'brokenPipe'
  | 'valveDown'
  | 'switchLow'
  | 'tooMuchAsked'
  | 'narrowPipe'
  | 'houseLeak'
  | 'lineLeak'
  | 'rotation'
  | 'wornPump'
  | 'wireThin'
  | 'wireHot'
  | 'supplyFit'
  | 'cooling'
  | 'terminal'
  | 'gas'
  | 'checkValve'
  | 'secondValve'
  | 'precharge'
  | 'waterlogged'
  | 'tankSmall'
  | 'switchGap'
  | 'cutOutHigh'
  | 'fastValve'
  | 'twist'
  | 'nearBottom'
  | 'inScreen'
  | 'screenFast'
  | 'brokenWall'
  | 'newWork'
  | 'otherLoad'
  | 'surfaceWater'
  | 'nearWaste'
  | 'corrosion'
  | 'bacteria'
  | 'frostAtTop'
  | 'frostInLine'
  | 'frostInHouse';

/** What can hurt while it is looked at or put right. */
export type MatterCaution =
  | 'live'
  | 'fire'
  | 'pulling'
  | 'digging'
  | 'pressure'
  | 'gas'
  | 'chlorine'
  | 'drinking'
  | 'dryRun'
  | 'flame'
  | 'backspin';

/**
 * `likely`: something is found in the plan that does this, or solving it shows it. `unlikely`: what was said of the well
 * speaks against it. `open`: the plan does not tell.
 */
export type Likelihood = 'likely' | 'open' | 'unlikely';

export interface Cause {
  readonly id: CauseId;
  readonly likelihood: Likelihood;
  /** Of the place where it is looked for. */
  readonly kind: PartKind;
  /** Keys of the drawn parts there; never empty. */
  readonly parts: readonly string[];
  readonly says: readonly Own[];
  /** What is found in the plan and makes it likely. */
  readonly found: readonly Finding[];
  /** What was judged by said facts alone, and speaks against it. */
  readonly against: readonly Holding[];
  /** Fields of the plan that nobody filled in and that would tell: paths. */
  readonly deciding: readonly string[];
  /** Choices that nobody made and that what is said rests on: paths. */
  readonly assumed: readonly string[];
  readonly cautions: readonly MatterCaution[];
}

/** What the whole list is told under. */
export type WellCaution = 'flowing' | 'inPit';

export interface Trouble {
  readonly symptom: SymptomId;
  readonly wellCautions: readonly WellCaution[];
  /** In the order in which they are looked at. */
  readonly causes: readonly Cause[];
}

export interface Asked {
  readonly solution: Solution;
  readonly symptom: SymptomId;
  /** The reader's, whose round values are tried. */
  readonly units: Units;
}

/** A rule that makes a cause likely where it is broken; with variants, only where it is broken so. */
export interface RuleBroken {
  readonly rule: string;
  readonly variants?: readonly string[];
}

/** What a cause comes to in this well. */
export interface Looked {
  /** Where it is looked for: of these kinds the first that the well has. */
  readonly at: readonly PartKind[];
  readonly says?: readonly Own[];
  readonly likelyBy?: readonly RuleBroken[];
  /** Rules that speak against it where they hold by what was said alone. */
  readonly unlikelyBy?: readonly string[];
  /** Solving the plan shows it. */
  readonly shown?: boolean;
  /** Something that was said rules it out. */
  readonly ruledOut?: boolean;
  /** Fields that would tell, said or not. */
  readonly decidedBy?: readonly string[];
  /** Choices that what is said rests on, made or not. */
  readonly rests?: readonly string[];
}

/** Null: this well has nothing of the kind. */
export type Judge = (asked: Asked) => Looked | null;

export const broken = (rule: string, ...variants: readonly string[]): RuleBroken =>
  variants.length === 0 ? { rule } : { rule, variants };
