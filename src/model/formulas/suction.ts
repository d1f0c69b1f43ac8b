/** What the air's weight can hold and push: columns of water, and the pump's inlet. */
import type { Celsius, CubicMetresPerSecond, Metres } from '../si.ts';
import { gpm, inches } from '../units.ts';
import { requireNotNegative, requirePositive } from './require.ts';
import { atmosphericPressure, pressureAsHead, vapourPressure, waterDensity } from './water.ts';

/**
 * Tallest column of water that hangs by the air's pressure alone: a check valve higher than this above the pumping
 * level leaves a gap of vapour below it.
 *
 *     h = (pa - pv) / (rho g)
 *
 * @param altitude     above sea level [m]
 * @param temperature  of the water [degC]
 * @returns  h [m]
 *
 * Throws   RangeError outside the ranges of `atmosphericPressure` and `vapourPressure`
 * Source   hydrostatics
 */
export function columnHeldByAir({
  altitude,
  temperature,
}: {
  readonly altitude: Metres;
  readonly temperature: Celsius;
}): Metres {
  return pressureAsHead(atmosphericPressure(altitude) - vapourPressure(temperature), waterDensity(temperature));
}

/**
 * Net positive suction head at a pump's inlet under water.
 *
 *     NPSH = h + submergence - inlet loss,   h as `columnHeldByAir`
 *
 * @returns  [m]
 *
 * Throws   RangeError as `columnHeldByAir`, or when the inlet loss is negative
 * Source   definition; ANSI/HI 9.6.1
 */
export function netPositiveSuctionHead(input: {
  readonly altitude: Metres;
  readonly temperature: Celsius;
  readonly submergence: Metres;
  readonly inletLoss: Metres;
}): Metres {
  requireNotNegative('netPositiveSuctionHead', 'inlet loss', input.inletLoss);
  return columnHeldByAir(input) + input.submergence - input.inletLoss;
}

/** 0.574 of inches and gallons a minute, in SI [s/m^0.5]. */
export const VORTEX_FACTOR = (0.574 * inches(1) ** 2.5) / gpm(1);

/**
 * Submergence below which a vortex may reach the inlet.
 *
 *     S = D + 0.574 Q / D^1.5      inches and gpm
 *
 * @param inletDiameter  D [m]
 * @param flow           Q [m³/s]
 * @returns  S [m]: in a well far below the 10 to 20 ft of practice, which cover changes of level
 *
 * Throws   RangeError when the flow is negative or the diameter not positive
 * Source   ANSI/HI 9.8, Pump Intake Design, from memory
 */
export function vortexSubmergence(inletDiameter: Metres, flow: CubicMetresPerSecond): Metres {
  requirePositive('vortexSubmergence', 'inlet diameter', inletDiameter);
  requireNotNegative('vortexSubmergence', 'flow', flow);
  return inletDiameter + (VORTEX_FACTOR * flow) / inletDiameter ** 1.5;
}
