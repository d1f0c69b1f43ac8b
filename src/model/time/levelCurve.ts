/** What is told of a well that is pumped: level, flow and cone at any time. */
import type { CubicMetresPerSecond, Metres, Ratio, Seconds, SquareMetresPerSecond } from '../si.ts';
import type { Ground, ToldFor } from './ground.ts';
import type { LowestLevel } from '../figures/lowestLevel.ts';

/** `at lowest`: the water has reached intake or cut-off, and the pump gets no more than the well gives. */
export type Phase = 'pumping' | 'at lowest' | 'recovery';

export interface LevelSample {
  readonly time: Seconds;
  readonly level: Metres;
  readonly phase: Phase;
}

/** Depth of the water in the ground at a distance from the well's axis. */
export interface GroundLevel {
  readonly distance: Metres;
  readonly depth: Metres;
  readonly drawdown: Metres;
}

export interface LevelCurve {
  /** `ground`: by the formulas of flow to a well; `stored water`: by the reported yield and the water in the bore alone. */
  readonly by: 'ground' | 'stored water';
  readonly flow: CubicMetresPerSecond;
  readonly flowWords: string;
  readonly staticLevel: Metres;
  readonly lowest: LowestLevel;
  readonly pumpFor: Seconds | null;
  /**
   * When the water reaches the lowest level; null while it stays above. For the pump's own flow it is the figure
   * `timeToBreakSuction`, and null where that is null.
   */
  readonly breaksSuction: Seconds | null;
  /** How long a run the figures' drawdown tells of; null where the level rests on stored water. */
  readonly toldFor: ToldFor | null;
  /** Where by the figures the well keeps up: when the long-term fit alone, which nobody measured, has it there. */
  readonly fitReaches: Seconds | null;
  /** Before this nothing is claimed. */
  readonly claimedFrom: Seconds;
  readonly assumptions: readonly string[];
  /** Null where the curve rests on stored water alone, as are the next three. */
  readonly transmissivity: SquareMetresPerSecond | null;
  readonly transmissivityRange: Ground['transmissivityRange'];
  readonly storativity: Ratio | null;
  /** When the drawdown that the estimate rests on was measured. */
  readonly testTime: Seconds | null;
  readonly samples: readonly LevelSample[];
  /** Depth of the water in the well at any time since the pump started. */
  readonly levelAt: (time: Seconds) => Metres;
  readonly phaseAt: (time: Seconds) => Phase;
  /** What leaves the well: the pump's flow, what the well gives at the lowest level, or nothing. */
  readonly flowAt: (time: Seconds) => CubicMetresPerSecond;
  /** The cone of depression; null where nothing is known of the ground. */
  readonly coneAt: (time: Seconds, distances: readonly Metres[]) => readonly GroundLevel[] | null;
  /** r0 of the straight-line form [m]: as far as the cone is worth telling. */
  readonly radiusOfInfluenceAt: (time: Seconds) => Metres | null;
}

/** What a curve is asked for. */
export interface CurveSetting {
  readonly flow: CubicMetresPerSecond;
  readonly words: string;
  readonly staticLevel: Metres;
  readonly lowest: LowestLevel;
  readonly pumpFor: Seconds | null;
}
