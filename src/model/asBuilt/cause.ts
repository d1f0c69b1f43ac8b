/** What a reading that is not as expected may come of, with this well's own figures. */
import type { CubicMetresPerSecond, Metres, Pascals, Ratio, SquareMetresPerSecond, Volts } from '../si.ts';

export type Cause =
  /** The pump gives this flow with the water, while it runs, from the one level to the other. */
  | { readonly id: 'waterLower'; readonly from: Metres; readonly to: Metres }
  /** The water was measured higher than it would have to stand. */
  | { readonly id: 'notTheWater'; readonly needed: Metres; readonly measured: Metres }
  /** Even with the water at its intake it would give so much. */
  | { readonly id: 'notEvenAtIntake'; readonly gives: CubicMetresPerSecond }
  | { readonly id: 'wayOut' }
  | { readonly id: 'otherPump' }
  | { readonly id: 'gaugeLow' }
  | { readonly id: 'lowVoltage'; readonly volts: Volts; readonly plate: Volts }
  | { readonly id: 'wrongBox' }
  | { readonly id: 'sandOrRub' }
  | { readonly id: 'drawsAir'; readonly intake: Metres }
  | { readonly id: 'turnsBackward' }
  | { readonly id: 'cable'; readonly drop: Ratio | null }
  | { readonly id: 'supply' }
  /** What is left of the water over the intake at rest. */
  | { readonly id: 'levelFell'; readonly over: Metres }
  | { readonly id: 'levelRose' }
  /** Flow a metre of drawdown, as measured and as planned. */
  | { readonly id: 'givesLess'; readonly now: SquareMetresPerSecond; readonly planned: SquareMetresPerSecond | null }
  | { readonly id: 'drawnDown' }
  | { readonly id: 'nearIntake'; readonly over: Metres }
  | { readonly id: 'setAir'; readonly to: Pascals }
  | { readonly id: 'airOverCutIn'; readonly cutIn: Pascals }
  | { readonly id: 'setSwitch'; readonly to: Pascals }
  /** The pump stops at no more than it starts at. */
  | { readonly id: 'readAgain' }
  | { readonly id: 'smallTank' };
