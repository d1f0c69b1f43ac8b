import type { CubicMetresPerSecond, Metres } from '../si.ts';

/** What every pump's curve can say, wherever it comes from. */
export interface PumpCurve {
  /** Head at no flow. */
  readonly shutOffHead: Metres;
  /** Flow at no head. */
  readonly runOutFlow: CubicMetresPerSecond;
  /** Falls all the way from no flow to `runOutFlow`, and below zero beyond it. */
  readonly headAt: (flow: CubicMetresPerSecond) => Metres;
}
