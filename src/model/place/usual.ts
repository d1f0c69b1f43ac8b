/** Distances that a driller hangs a pump by. Common practice, no source. */
import type { Metres } from '../si.ts';
import { feet } from '../units.ts';

export interface Usual {
  /** Water over the intake at the lowest pumping level: with room, at best, and where more is no better. */
  readonly roomUnderWater: Metres;
  readonly underWater: Metres;
  readonly mostUnderWater: Metres;
  /** From the motor's lower end down to the bottom of open rock, and to the top of a screen. */
  readonly offBottom: Metres;
  readonly overScreen: Metres;
  /** Less than this on a deep pump is not worth a move. */
  readonly smallMove: Metres;
  /** What a pump's depth is rounded by. */
  readonly hangStep: Metres;
  /** A trench for an adapter is dug to whole steps. */
  readonly digStep: Metres;
}

const US: Usual = {
  roomUnderWater: feet(20),
  underWater: feet(30),
  mostUnderWater: feet(40),
  offBottom: feet(20),
  overScreen: feet(10),
  smallMove: feet(20),
  hangStep: feet(1),
  digStep: feet(0.5),
};

const METRIC: Usual = {
  roomUnderWater: 6,
  underWater: 9,
  mostUnderWater: 12,
  offBottom: 6,
  overScreen: 3,
  smallMove: 6,
  hangStep: 0.1,
  digStep: 0.1,
};

export function usualIn(units: 'us' | 'metric'): Usual {
  return units === 'us' ? US : METRIC;
}
