import type { CubicMetresPerSecond, Metres } from '../si.ts';

/** What every pump's curve can say, wherever it comes from. */
export interface PumpCurve {
  /** Head at no flow. */
  readonly shutOffHead: Metres;
  /** Flow at no head. */
  readonly runOutFlow: CubicMetresPerSecond;
  /** The largest flow that the pump is held to give, where that is less than `runOutFlow`; nothing flows beyond it. */
  readonly endFlow?: CubicMetresPerSecond;
  /** Falls all the way from no flow to `runOutFlow`, and below zero beyond it. */
  readonly headAt: (flow: CubicMetresPerSecond) => Metres;
}
