/** A pumping test as typed in, and what is found in it. */
import type { CubicMetresPerSecond, Metres, Ratio, Seconds } from '../si.ts';

/** Drawdown below the level at rest, a time after the pump was started. */
export interface TestReading {
  readonly time: Seconds;
  readonly drawdown: Metres;
}

/** Drawdown left, a time after the pump was stopped. */
export interface RecoveryReading {
  readonly sinceStop: Seconds;
  readonly drawdown: Metres;
}

export interface PumpingTest {
  /** Constant while it was pumped. */
  readonly flow: CubicMetresPerSecond;
  readonly measuredIn: 'observation well' | 'pumped well';
  /** From the pumped well's axis; for the pumped well itself half its hole. */
  readonly radius: Metres;
  readonly readings: readonly TestReading[];
  /** How long it was pumped; needed where there are readings of the recovery. */
  readonly pumpedFor?: Seconds;
  readonly recovery?: readonly RecoveryReading[];
  /** Half the bore where the level moves: leaves out what only emptied the bore. For the pumped well. */
  readonly casingRadius?: Metres;
  /** Which times the straight line goes through; default: those for which it holds. */
  readonly lineThrough?: { readonly from: Seconds; readonly to: Seconds };
}

/** A figure with its standard error and the interval that holds the truth 95 times in a hundred if the formula is right. */
export interface Estimate {
  readonly value: number;
  readonly standardError: number;
  readonly low: number;
  readonly high: number;
}

/** A reading against the fitted curve. */
export interface Residual {
  /** Since the pump was started. */
  readonly time: Seconds;
  readonly phase: 'pumping' | 'recovery';
  readonly measured: Metres;
  readonly computed: Metres;
  /** Measured less computed. */
  readonly difference: Metres;
  /** Not in the fit: the bore's own water, or the first moments. */
  readonly leftOut: boolean;
}

export interface TheisFit {
  /** m²/s */
  readonly transmissivity: Estimate;
  readonly storativity: Estimate;
  /** Between ln T and ln S [-]: near -1 or 1 the two are hardly told apart. */
  readonly correlation: number;
  /** Root of the mean square of the differences. */
  readonly rootMeanSquare: Metres;
  readonly residuals: readonly Residual[];
  /** u = r² S/(4 T t) of the first and the last reading in the fit. */
  readonly argumentRange: { readonly first: Ratio; readonly last: Ratio };
}

export interface FittedTest {
  readonly theis: TheisFit;
  /** Null with `lineReason` where too few readings lie in its range. */
  readonly straightLine: StraightLine | null;
  readonly lineReason: string | null;
  /** Residual drawdown against log t/t'; null where no recovery was typed in or it does not fit. */
  readonly recoveryLine: RecoveryLine | null;
  /** What must hold for these figures to mean anything. */
  readonly assumptions: readonly string[];
  /** What in these readings speaks against them. */
  readonly doubts: readonly string[];
}

/** Drawdown on log time. */
export interface StraightLine {
  readonly transmissivity: Estimate;
  readonly storativity: Ratio;
  readonly slopePerCycle: Metres;
  /** Where the line has no drawdown. */
  readonly zeroTime: Seconds;
  /** The times it goes through. */
  readonly from: Seconds;
  readonly to: Seconds;
  readonly used: number;
}

/** Residual drawdown on log t/t'. */
export interface RecoveryLine {
  readonly transmissivity: Estimate;
  /** Per log cycle of t/t'. */
  readonly slopePerCycle: Metres;
  /** t/t' where the line meets no drawdown: 1 where the ground gives back what it gave. */
  readonly meetsZeroAt: number;
  readonly used: number;
}
