/** Water in a pipe where it is colder than freezing: how long it lasts, and what flow holds it. */
import type { Celsius, CubicMetresPerSecond, Metres, Ratio, Seconds } from '../si.ts';
import { WATER_DENSITY } from './hangLoad.ts';
import { HEAT_OF_FUSION } from './soilHeat.ts';

/** Heat that warms water by a kelvin, J/(m³ K): 62.4 lb/ft³ and 1 Btu/(lb °F), the round figures of the trade. */
const WATER_HEAT = WATER_DENSITY * 4186.8;

export interface StandingPipe {
  readonly insideDiameter: Metres;
  /** Thermal resistance from the water to the surroundings, of one metre of pipe [m K/W]. */
  readonly resistance: number;
  /** Below freezing. */
  readonly surround: Celsius;
}

/**
 * Time until standing water has cooled to freezing.
 *
 *     t = ρ c A R ln((T₀ − T_s)/(0 − T_s))
 *
 * @param start  T₀, at or above freezing
 * @returns      seconds
 * Throws        RangeError unless the surroundings are below freezing and the start is not
 * Source        lumped heat balance: the water is taken as of one temperature, the pipe's own heat left out
 */
export function timeToFreezing({
  insideDiameter,
  resistance,
  surround,
  start,
}: StandingPipe & {
  readonly start: Celsius;
}): Seconds {
  requirePipe('timeToFreezing', insideDiameter, resistance, surround);
  if (!(start >= 0 && start < Infinity))
    throw new RangeError(`timeToFreezing: start is ${start} degC, must not be below freezing`);
  return WATER_HEAT * boreArea(insideDiameter) * resistance * Math.log((start - surround) / -surround);
}

/**
 * Time from there until it is frozen through.
 *
 *     t = ρ L A R/(0 − T_s)
 *
 * @returns  seconds; a plug that stops the flow forms earlier
 * Throws    RangeError unless the surroundings are below freezing
 * Source    lumped heat balance
 */
export function timeToFreezeThrough({ insideDiameter, resistance, surround }: StandingPipe): Seconds {
  requirePipe('timeToFreezeThrough', insideDiameter, resistance, surround);
  return (WATER_DENSITY * HEAT_OF_FUSION * boreArea(insideDiameter) * resistance) / -surround;
}

/**
 * Flow that carries enough heat to hold a line above freezing.
 *
 *     Q = q L/(ρ c ΔT),   printed as q L/(500 ΔT) gpm
 *
 * @param heatLoss  q, of one metre [W/m]
 * @param length    L
 * @param cooling   ΔT that the water may lose on the way [K]
 * @returns         cubic metres per second
 * Throws           RangeError unless the cooling is positive and the others are not negative
 * Source           heat balance
 */
export function trickleFlow({
  heatLoss,
  length,
  cooling,
}: {
  readonly heatLoss: number;
  readonly length: Metres;
  readonly cooling: number;
}): CubicMetresPerSecond {
  if (!(heatLoss >= 0 && length >= 0 && cooling > 0)) {
    throw new RangeError(
      `trickleFlow: heat loss ${heatLoss} W/m, length ${length} m, cooling ${cooling} K; ` +
        'the last must be positive, the others must not be negative',
    );
  }
  return (heatLoss * length) / (WATER_HEAT * cooling);
}

/** Share by which water grows as it freezes: what bursts pipes between two plugs. From memory. */
export const FREEZING_EXPANSION: Ratio = 0.09;

const boreArea = (diameter: Metres): number => (Math.PI / 4) * diameter * diameter;

function requirePipe(name: string, insideDiameter: Metres, resistance: number, surround: Celsius): void {
  if (!(insideDiameter > 0 && resistance > 0 && surround < 0 && surround > -Infinity)) {
    throw new RangeError(
      `${name}: bore ${insideDiameter} m, resistance ${resistance} m K/W, surroundings ${surround} degC; ` +
        'the first two must be positive, the last below freezing',
    );
  }
}
