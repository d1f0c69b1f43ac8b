import type { PipeFacts, PipeMaterial } from '../facts.ts';
import type { Metres, Pascals, Seconds } from '../si.ts';
import { CREEP_MODULUS } from '../tables/creep.ts';
import { psi } from '../units.ts';
import { levelAlong, pumpWeight, WATER_WEIGHT } from './hangLoad.ts';
import type { HangingString } from './hangLoad.ts';
import { STANDARD_GRAVITY } from './water.ts';
import { PIPE_MATERIALS, isPipeMaterial } from '../tables/pipeMaterials.ts';

const HOUR: Seconds = 3600;

/** Fifty years under load: what the clearance above the bottom, the cable and the rope must allow for. */
export const FIFTY_YEARS: Seconds = 438_000 * HOUR;

/**
 * Modulus that gives the stretch of a pipe after a time under steady load, at 73 °F.
 *
 * Between the tabulated times it is read on a straight line over the logarithm of time, a choice without a source. Well
 * water is colder and the pipe stiffer, so a stretch from this is on the large side.
 *
 * @param material  a designation code ("PE4710", "PE3608"; "PE 100" as PE4xxx, "PE 80" as PE3xxx, from memory), "PE" for a grade nobody knows (then as PE3xxx),
 *                  "PVC", "galvanized steel" or "stainless steel", which do not creep here
 * @returns         pascals
 * Range            half an hour to fifty years; beyond them the last slope goes on
 * Throws           RangeError for another material, for a time that is not positive, and for one so long that the
 *                  slope would lead to nothing
 * Source           PPI Handbook of Polyethylene Pipe, chapter 3, Table B.1.1
 */
export function apparentModulus(material: string, time: Seconds): Pascals {
  if (!(time > 0 && time < Infinity)) throw new RangeError(`apparentModulus: time is ${time} s, must be positive`);
  const steady = isPipeMaterial(material) ? PIPE_MATERIALS[material].steadyModulus : null;
  if (steady !== null) return psi(steady);
  const grade = creepGrade(material);
  const row = CREEP_MODULUS.findIndex(({ hours }, place) => place > 0 && time <= hours * HOUR);
  const [earlier, later] = CREEP_MODULUS.slice(row < 0 ? -2 : row - 1).slice(0, 2);
  if (earlier === undefined || later === undefined) throw new RangeError('apparentModulus: the table needs two rows');
  const share = Math.log(time / HOUR / earlier.hours) / Math.log(later.hours / earlier.hours);
  const modulus = earlier[grade] + share * (later[grade] - earlier[grade]);
  if (!(modulus > 0))
    throw new RangeError(`apparentModulus: no modulus left after ${time} s; the table ends at 50 years`);
  return psi(modulus);
}

function creepGrade(material: string): 'PE2' | 'PE3' | 'PE4' {
  if (material === 'PE' || material === 'PE 80' || material.startsWith('PE3')) return 'PE3';
  if (material === 'PE 100' || material.startsWith('PE4')) return 'PE4';
  if (material.startsWith('PE2')) return 'PE2';
  throw new RangeError(`apparentModulus: no modulus for "${material}"; use PE4710, PE3608, PVC or a steel`);
}

/**
 * How much longer the drop pipe hangs than it was cut.
 *
 *     δ = 1/(E A_w) ∫ T(x) dx over 0 ≤ x ≤ L,   T(x) the load of `hangLoad` for the string below x
 *
 * T falls in two straight pieces, above and below the outside level h, so the integral is exact:
 *
 *     g (w_p + w_c) L²/2 + P L − γ (A_w + a_c)(L − h)(L + h)/2 + γ A_i h²/2,   P the pump's weight as it hangs
 *
 * @param modulus  E [Pa], from `apparentModulus` for the time under load
 * @returns        metres
 * Range           the pressure inside adds a term with (1 − 2ν), which is left out: small for polyethylene (ν about 0.45)
 * Throws          RangeError as `hangLoad`, and unless modulus and wall area are positive
 * Source          Hooke's law on the load of `hangLoad`
 */
export function pipeStretch(string: HangingString & { readonly modulus: Pascals }): Metres {
  const { length, pipeWallArea, pipeBoreArea, cableArea, modulus } = string;
  if (!(modulus > 0 && pipeWallArea > 0)) {
    throw new RangeError(`pipeStretch: modulus ${modulus} Pa, wall area ${pipeWallArea} m2; both must be positive`);
  }
  const level = levelAlong(string);
  const ownWeight = (STANDARD_GRAVITY * (string.pipeMassPerLength + string.cableMassPerLength) * length ** 2) / 2;
  const pump = pumpWeight(string) * length;
  const buoyancy = (WATER_WEIGHT * (pipeWallArea + cableArea) * (length - level) * (length + level)) / 2;
  const column = string.columnHeld ? (WATER_WEIGHT * pipeBoreArea * level ** 2) / 2 : 0;
  return (ownWeight + pump - buoyancy + column) / (modulus * pipeWallArea);
}

/**
 * Change of length of a free body with temperature.
 *
 *     ΔL = α L ΔT
 *
 * @param coefficient  α [1/K]
 * @param change       ΔT [K], negative for cooling
 * @returns            metres, negative when it gets shorter
 * Throws              RangeError for a negative coefficient or length
 */
export function thermalExpansion({
  coefficient,
  length,
  change,
}: {
  readonly coefficient: number;
  readonly length: Metres;
  readonly change: number;
}): Metres {
  if (!(coefficient >= 0 && length >= 0 && Number.isFinite(coefficient * length * change))) {
    throw new RangeError(
      `thermalExpansion: coefficient ${coefficient} 1/K, length ${length} m, change ${change} K; ` +
        'the first two must not be negative',
    );
  }
  return coefficient * length * change;
}

/**
 * The same for pipe of a known material; coefficients in `pipeMaterials.ts`.
 *
 * Throws  RangeError for a negative length
 */
export function thermalChange({
  material,
  length,
  change,
}: {
  readonly material: PipeMaterial | 'copper';
  readonly length: Metres;
  readonly change: number;
}): Metres {
  return thermalExpansion({ coefficient: lengtheningPerKelvin(material), length, change });
}

/** By the published tables of thermal expansion of piping materials; of copper 9.3e-6 per degree Fahrenheit. 1/K. */
export function lengtheningPerKelvin(material: PipeMaterial | 'copper'): number {
  return 1.8 * (material === 'copper' ? 9.3e-6 : PIPE_MATERIALS[material].lengtheningPerFahrenheit);
}

/**
 * `apparentModulus` of a pipe: by its material, and of one that creeps by its resin. Of pipe whose resin nobody named the
 * softest of the usual ones is taken.
 */
export function modulusOfPipe(pipe: Pick<PipeFacts, 'material' | 'resin'>, time: Seconds): Pascals {
  return apparentModulus(creepName(pipe), time);
}

/** As the table of creep names it. */
export function creepName({ material, resin }: Pick<PipeFacts, 'material' | 'resin'>): string {
  return PIPE_MATERIALS[material].steadyModulus === null ? (resin ?? material) : material;
}
