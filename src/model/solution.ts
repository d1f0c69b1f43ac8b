/** What `solve` answers: levels, the placed string, figures, findings. SI throughout; every number is finite. */
import type { Assumed, Facts } from './facts.ts';
import type { MissingFact } from './rules/missing.ts';
import type { CubicMetresPerSecond, Metres } from './si.ts';
import type { Plan } from './plan/schema.ts';

/** The names of the figures, one each; `null` when a fact it needs is unknown. */
export type ValueName =
  | 'demandFlow'
  | 'specificCapacity'
  | 'drawdown'
  | 'pumpingWaterLevel'
  | 'pumpingWaterLevelDry'
  | 'lowestPumpingWaterLevel'
  | 'submergenceDry'
  | 'intakeDepth'
  | 'pumpDischargeDepth'
  | 'motorBottomDepth'
  | 'submergence'
  | 'clearanceToBottom'
  | 'lift'
  | 'rise'
  | 'pressureHead'
  | 'frictionDropPipe'
  | 'frictionLine'
  | 'frictionFittings'
  | 'totalDynamicHead'
  | 'frictionDropPipeHazenWilliams'
  | 'frictionLineHazenWilliams'
  | 'operatingFlowAtCutOut'
  | 'operatingHeadAtCutOut'
  | 'operatingFlowAtCutIn'
  | 'operatingHeadAtCutIn'
  | 'operatingFlowAtCutInMost'
  | 'operatingHeadAtCutInMost'
  | 'shutOffPressureAtPump'
  | 'shutOffPressureAtTank'
  | 'shutOffPressureAtTankLeast'
  | 'velocityDropPipe'
  | 'velocityPastMotor'
  | 'dropPipeCutLength'
  | 'dropPipeToCut'
  | 'liftPipeLength'
  | 'wireLength'
  | 'ropeLength'
  | 'voltageDropRunning'
  | 'hangLoadLowering'
  | 'hangLoadAtRest'
  | 'hangLoadPumping'
  | 'hangLoadDry'
  | 'frostDepth'
  | 'pitlessBelowFrost'
  | 'wellVolume'
  | 'chlorineDose'
  | 'tankDrawdown'
  | 'usableStorage'
  | 'timeToBreakSuction';

export type Values = Readonly<Record<ValueName, number | null>>;

export type PartKind =
  | 'motor'
  | 'intake'
  | 'pump'
  | 'cableGuardStrip'
  | 'shroud'
  | 'nipple'
  | 'checkValve'
  | 'flowLimiter'
  | 'insertFitting'
  | 'clamp'
  | 'dropPipe'
  | 'torqueArrestor'
  | 'splice'
  | 'capSplice'
  | 'probe'
  | 'tie'
  | 'guard'
  | 'cable'
  | 'rope'
  | 'pitlessAdapter'
  | 'cap'
  | 'conduit'
  | 'bond'
  | 'seal'
  | 'coupling'
  | 'tee'
  | 'plug'
  | 'union'
  | 'tap'
  | 'support'
  | 'buriedLine'
  | 'riser'
  | 'tankTee'
  | 'reliefValve'
  | 'reliefPipe'
  | 'gauge'
  | 'switch'
  | 'drain'
  | 'shutOff'
  | 'tank'
  | 'float'
  | 'disconnect'
  | 'controlBox'
  | 'drive'
  | 'casing'
  | 'screen'
  | 'openHole'
  | 'grout'
  | 'well'
  | 'frost'
  | 'staticLevel'
  | 'pumpingLevel';

/** One thing of the string or the top, at its true place. */
export interface PlacedPart {
  /** Stable word: "checkValve", "checkValve/2", "insertFitting/top", "clamp/pump/1". */
  readonly key: string;
  readonly kind: PartKind;
  /** Depths of its ends; top < bottom. */
  readonly top: Metres;
  readonly bottom: Metres;
  /** Outside radius, or half its width; 0 for what is not round the axis. */
  readonly radius: Metres;
  /** Inside radius where it is hollow. */
  readonly insideRadius?: Metres;
  /** Of what stands in the house: from the middle of the line that comes up there to its own, positive away from the well. */
  readonly across?: Metres;
}

/** A stretch of the bore, from the top down, without gaps from the casing top to the bottom. */
export interface BoreStretch {
  readonly kind: 'casing' | 'screen' | 'openHole';
  readonly top: Metres;
  readonly bottom: Metres;
  readonly insideRadius: Metres;
  /** Equal to insideRadius in open hole. */
  readonly outsideRadius: Metres;
  /** Index in facts.well.casings, where it is one. */
  readonly casing?: number;
  /** False where the plan does not say what lines the hole: drawn dashed. */
  readonly known: boolean;
}

export interface Levels {
  readonly static: Metres | null;
  readonly staticHighest: Metres | null;
  readonly staticLowest: Metres | null;
  /** While pumping the demand, from the static level. */
  readonly pumping: Metres | null;
  readonly pumpingDry: Metres | null;
}

/** Depth of the water in the ground beside the well while the demand is pumped; distances rise. */
export interface ConePoint {
  readonly distance: Metres;
  readonly depth: Metres;
}

export interface CurvePoint {
  readonly flow: CubicMetresPerSecond;
  readonly head: Metres;
}

/** Where a pump works in its well. */
export interface PumpInWell extends CurvePoint {
  /** Where the water stands meanwhile: never below the lowest level to which the pump can draw it. */
  readonly waterLevel: Metres;
  /** The well cannot keep up: flow and head are those that are left with the water at that lowest level. */
  readonly outpumped: boolean;
}

/**
 * `demandAlone`: that the pump takes no more than the house wants, since nobody can tell what it takes. `beyondTest`: that
 * the well gives as its test foretells, far past the flow that was pumped.
 */
export type Taken = 'demandAlone' | 'beyondTest';

/** How deep the water falls at the worst that the plan knows of, and what sets that depth. */
export interface LowestPumping {
  readonly depth: Metres;
  /**
   * The level of today or of the dry season while pumping, or where the fall ends: at the
   * intake, at a cut-off above it, or above both where even the stronger pump lifts no water from any deeper.
   */
  readonly by: 'level' | 'dryLevel' | 'intake' | 'cutOff' | 'lift';
  /** What nobody said and is taken to be so; null where the level rests on what was said. */
  readonly taken: Taken | null;
}

/** Operating points from the level at rest; a generic pump is a band, and the first two lie on its weaker end. */
export interface Curves {
  readonly generic: boolean;
  readonly atCutOut: PumpInWell | null;
  readonly atCutIn: PumpInWell | null;
  /** On the stronger end of the band. */
  readonly atCutInMost: PumpInWell | null;
  /** Deepest water that the stronger end still lifts into the tank at cut-in, with no flow left; null while unknown. */
  readonly liftsFromMost: Metres | null;
  /** The stronger end takes more from the water at rest than the well is said to give; null while unknown. */
  readonly outrunsYield: boolean | null;
}

export interface SampledCurves {
  /** The weaker end of the band; empty while nobody knows which pump it is. */
  readonly pump: readonly CurvePoint[];
  /** The stronger end; empty where it is the same curve. */
  readonly pumpMost: readonly CurvePoint[];
  /** What well and pipes ask for, tank at cut-out; empty when it cannot be known. */
  readonly system: readonly CurvePoint[];
}

/** Everything but the judgement: what the rules read. */
export interface Solved {
  readonly plan: Plan;
  readonly facts: Facts;
  readonly assumed: readonly Assumed[];
  readonly unknown: readonly string[];
  readonly notUsed: readonly string[];
  readonly values: Values;
  readonly levels: Levels;
  readonly bore: readonly BoreStretch[];
  readonly parts: readonly PlacedPart[];
  /** Null where nothing is known of the drawdown. */
  readonly cone: readonly ConePoint[] | null;
  readonly curves: Curves;
  /** Null where the level at rest or the fall from it is unknown. */
  readonly lowest: LowestPumping | null;
}

/** What a figure of a finding measures, in SI. */
export type Quantity = 'length' | 'flow' | 'pressure' | 'velocity' | 'force' | 'ratio' | 'count' | 'current' | 'time';

export type Severity = 'danger' | 'warning' | 'note';
/** `depends`: at one end of what a fact can be that nobody said it holds, at the other it does not. */
export type Verdict = 'ok' | 'depends' | Severity | 'not judged';

/** One change of a plan: the path and what to write there. */
export interface Change {
  readonly path: string;
  readonly to: unknown;
}

export interface Finding {
  /** "PR-19" */
  readonly rule: string;
  readonly severity: Severity;
  /** Key of the part on the drawing. */
  readonly part: string;
  readonly partKind: PartKind;
  /** Where the mark stands. */
  readonly depth: Metres | null;
  /** SI, in the unit of `quantity`. */
  readonly measured: number | null;
  readonly limit: number | null;
  /** Negative when broken. */
  readonly margin: number | null;
  readonly quantity: Quantity | null;
  /** Which of the rule's sentences fits, and the numbers that it is said with. */
  readonly variant: string;
  readonly numbers: object;
  /** Where it turns on a fact that nobody said: the field that takes it, and the value at which the first rule turns, SI. */
  readonly turn: Turn | null;
  /** The rules that turn on that fact, told together. */
  readonly together: readonly Turning[];
  /** Broken whatever a fact is that nobody said, and from some value of it on worse than this. */
  readonly worse: WorseFrom | null;
  /** Choices it rests on that nobody made: paths of the plan. */
  readonly assumed: readonly string[];
}

export interface Turn {
  readonly field: string;
  readonly at: number;
}

/** From which value of an open fact on something is as bad as this. */
export interface WorseFrom extends Turn {
  readonly fact: OpenFact;
  readonly severity: Severity;
}

/** Facts that nobody said and that physics holds between two ends. */
export type OpenFact = 'pumpingLevel' | 'yield' | 'frostDepth' | 'protrusion' | 'cutOffDepth';

/** One rule that holds on one side of a value and not on the other. */
export interface Turning {
  readonly rule: string;
  readonly variant: string;
  readonly numbers: object;
  readonly turn: Turn;
  /** How bad it is on the bad side. */
  readonly bad: Severity;
  /** Where it is broken on both sides: from where on it is worse. */
  readonly worse: WorseFrom | null;
}

/** A rule that was judged and holds. */
export interface Holding {
  readonly rule: string;
  readonly variant: string;
  readonly numbers: object;
  /** Choices it rests on that nobody made: paths of the plan. It holds if they are as assumed. */
  readonly assumed: readonly string[];
  /** Facts that nobody said, for want of which something is taken to be so: paths of the plan. */
  readonly unsaid: readonly string[];
  /** What is taken to be so; null where nothing is unsaid. */
  readonly taken: Taken | null;
}

/** A rule that cannot be judged from this plan. */
export interface NotJudged {
  readonly rule: string;
  /** What nobody told, and the fields of the plan that would decide it. */
  readonly fact: MissingFact;
  readonly fields: readonly string[];
  readonly numbers: object;
}

export type BandSetting = 'pump.setting' | 'top.depth';

/** Where a part may go so that no rule that limits it is danger or warning; ends are rounded inward. */
export interface Band {
  readonly setting: BandSetting;
  /** `unknown`: nobody knows how far the water falls, so that no depth in it can be called right. */
  readonly kind: 'allowed' | 'unknown';
  /** Null when no stretch meets every rule; then `clash` names the rules that exclude each other. */
  readonly from: Metres | null;
  readonly to: Metres | null;
  readonly fromEnd: BandEnd;
  readonly toEnd: BandEnd;
  readonly clash: readonly string[];
}

/** Where no rule ends a band, but the thing itself. */
export type OwnEnd =
  | 'underWellTop'
  | 'pumpingLevelUnknown'
  | 'underStaticLevel'
  | 'motorOnBottom'
  | 'atGround'
  | 'asDeepAsOneDigs'
  | 'endOfCasing'
  | 'aboveLiner'
  | 'abovePump';

/** What ends a band: a rule's limit, said by its variant and numbers, or the thing itself. */
export interface EndName {
  readonly rule: string | null;
  readonly variant: string;
  readonly numbers: object;
}

export interface BandEnd extends EndName {
  /** Choices that its rule rests on and nobody made: paths of the plan. */
  readonly assumed: readonly string[];
}

/** A rule that no plan can decide. */
export interface Advice {
  readonly rule: string;
}

export interface Solution extends Solved {
  /** Dangers first, then warnings, then notes; a finding's number in the list is its index + 1. */
  readonly findings: readonly Finding[];
  /** Notes on how the work is done that stand back behind other findings. */
  readonly atWork: readonly Finding[];
  readonly holding: readonly Holding[];
  /** Every rule number. */
  readonly verdicts: Readonly<Record<string, Verdict>>;
  /** Rules that cannot be judged from this plan, with what is missing. */
  readonly notJudged: readonly NotJudged[];
  readonly bands: readonly Band[];
  readonly advice: readonly Advice[];
}
