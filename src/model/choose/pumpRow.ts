/** One pump of the table. */
import type { ToldFinding } from '../place/told.ts';
import type { Plan } from '../plan/schema.ts';
import type { Sentence } from '../rules/rule.ts';
import type { CubicMetres, Metres, Volts } from '../si.ts';
import type { Change, Solution } from '../solution.ts';
import type { Ask } from './asks.ts';
import type { Candidate } from './candidates.ts';
import type { Does, PumpFigures, Why } from './fit.ts';
import type { Part } from './outfit.ts';
import type { Told } from './toldOf.ts';

/** Why a row does the job or does not: its own figures, or what a rule finds. */
export type WhyRow = Why | Sentence<'finding', { readonly finding: ToldFinding }>;

/** What nobody said is null. */
export interface Supply {
  readonly voltage: Volts | null;
  readonly wires: number | null;
}

export interface PumpRow extends Candidate {
  readonly does: Does;
  readonly why: WhyRow;
  readonly figures: PumpFigures;
  /** What a rule finds besides that is no reason against this pump: told with it. */
  readonly also: readonly ToldFinding[];
  /** What has to be known before it is bought. */
  readonly asks: readonly Ask[];
  /** What its owner has to know besides. */
  readonly told: readonly Told[];
  /** The supply that the plan says, where this pump needs another; else null. */
  readonly supplyFrom: Supply | null;
  /** What hangs on the hook at rest no team of people holds. */
  readonly needsRig: boolean;
  /** Where the plan hangs the pump, if the row is judged with it hung elsewhere; else null. */
  readonly movedFrom: Metres | null;
  /** The smallest usual tank for it; null where none is large enough, or none is needed. */
  readonly tank: CubicMetres | null;
  /** What choosing it would write, each choice by itself. */
  readonly parts: Readonly<Record<Part, readonly Change[]>>;
  /** The plan with all of that in it, and what it comes to: pipe, wire, depth and weight are read there. */
  readonly plan: Plan;
  readonly solution: Solution;
}

/** Nothing that is asked of it is lacking. */
export function isFit({ does }: Pick<PumpRow, 'does'>): boolean {
  return does === 'yes' || does === 'depends';
}
