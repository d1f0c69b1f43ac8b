import type { Kilograms, Metres, Newtons, Ratio, SquareMetres } from '../si.ts';
import { feet, poundsMass } from '../units.ts';
import { STANDARD_GRAVITY } from './water.ts';

/** Fresh water as weights are figured with: 62.4 pounds per cubic foot, in kilograms per cubic metre. */
export const WATER_DENSITY = poundsMass(62.4) / feet(1) ** 3;

/** Newtons per cubic metre of it: γ of the formulas. */
export const WATER_WEIGHT = WATER_DENSITY * STANDARD_GRAVITY;

/**
 * Share of the weight of pump and motor that the water bears: a sealed 3.75 in by 12 in motor displaces 4.8 lb and
 * weighs about 20 lb, the pump end is flooded.
 */
export const PUMP_BUOYANCY: Ratio = 0.2;

/** Everything that hangs in the well, from the pitless adapter or the seal down. */
export interface HangingString {
  /** From the suspension to the pump's discharge. */
  readonly length: Metres;
  /** kg/m of dry pipe */
  readonly pipeMassPerLength: number;
  readonly pipeWallArea: SquareMetres;
  readonly pipeBoreArea: SquareMetres;
  /** kg/m, ground wire included */
  readonly cableMassPerLength: number;
  /** Water the cable displaces, per metre. */
  readonly cableArea: SquareMetres;
  readonly pumpMass: Kilograms;
  readonly pumpBuoyancy: Ratio;
  /** Level outside the pipe, below the suspension; the formula itself takes it between 0 and `length`. */
  readonly waterDepth: Metres;
  /** Whether a check valve holds the water inside the pipe up to the suspension. */
  readonly columnHeld: boolean;
}

/**
 * Load on the suspension from everything that hangs in the well.
 *
 *     T = g (w_p + w_c) L + g m (1 − b) − γ (A_w + a_c)(L − h) + γ A_i h   [last term only where the column is held]
 *
 * w_p, w_c mass of pipe and cable per metre, L length, m mass of pump and motor, b its buoyancy, A_w wall and A_i bore
 * area of the pipe, a_c area of the cable, h depth of the water outside below the suspension, γ = 62.4 lb/ft³.
 * Water inside the pipe below the outside level weighs nothing net: only the column above that level counts.
 *
 * h is taken between 0 (water at or above the suspension) and L (water at or below the pump); from h = L on the pump
 * hangs in air and b no longer counts. Pressure inside the pipe pulls on its wall, not on the suspension.
 *
 * @returns  newtons
 * Range     pump off or running (then h is the pumping level); no rope, valves, clamps
 * Throws    RangeError for a negative or unknown length, mass or area
 * Source    Archimedes' principle on the string with the water it holds
 */
export function hangLoad(string: HangingString): Newtons {
  const { length, pipeWallArea, pipeBoreArea, cableArea } = string;
  const level = levelAlong(string);
  const dryWeight = STANDARD_GRAVITY * (string.pipeMassPerLength + string.cableMassPerLength) * length;
  const buoyancy = WATER_WEIGHT * (pipeWallArea + cableArea) * (length - level);
  const column = string.columnHeld ? WATER_WEIGHT * pipeBoreArea * level : 0;
  return dryWeight + pumpWeight(string) - buoyancy + column;
}

/**
 * Load while the string is pulled, with part of it out of the well and drained: the formula of `hangLoad` for what
 * is still below the suspension.
 *
 * @param remaining  length still in the well; the outside level stays where it is
 */
export function pullLoad(string: HangingString, remaining: Metres): Newtons {
  return hangLoad({ ...string, length: remaining });
}

/** Weight of pump and motor as it hangs: less its buoyancy while it stands in water. Newtons. */
export function pumpWeight({ pumpMass, pumpBuoyancy, waterDepth, length }: HangingString): Newtons {
  return STANDARD_GRAVITY * pumpMass * (waterDepth >= length ? 1 : 1 - pumpBuoyancy);
}

/** h of the formula: the outside level as a length along the string. Throws on figures without a meaning. */
export function levelAlong({
  length,
  pipeMassPerLength,
  pipeWallArea,
  pipeBoreArea,
  cableMassPerLength,
  cableArea,
  pumpMass,
  pumpBuoyancy,
  waterDepth,
}: HangingString): Metres {
  const known =
    length >= 0 &&
    pipeMassPerLength >= 0 &&
    pipeWallArea >= 0 &&
    pipeBoreArea >= 0 &&
    cableMassPerLength >= 0 &&
    cableArea >= 0 &&
    pumpMass >= 0 &&
    pumpBuoyancy >= 0 &&
    pumpBuoyancy <= 1;
  if (!known || !(length < Infinity) || Number.isNaN(waterDepth)) {
    throw new RangeError(
      `hangLoad: length ${length} m, pump ${pumpMass} kg with buoyancy ${pumpBuoyancy}, ` +
        `water ${waterDepth} m; lengths, masses and areas must not be negative, the level must be known`,
    );
  }
  return Math.min(Math.max(waterDepth, 0), length);
}
