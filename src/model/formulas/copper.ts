/** Copper by its area and temperature: what the wire table rests on, and what follows from it. */
import type { Amperes, Celsius, Metres, Ratio, SquareMetres, Volts } from '../si.ts';
import { CONDUCTORS, conductorOf } from '../tables/conductors.ts';
import { feet, inches } from '../units.ts';
import { returnFactor } from './wire.ts';

/** Ohm metres of annealed copper at 20 °C. Source: NBS Handbook 100 (1966), 100 % IACS, 0.017241 ohm mm²/m. */
export const COPPER_RESISTIVITY = 1.7241e-8;
/** Per kelvin at 20 °C. Source: NBS Handbook 100 (1966). */
export const COPPER_TEMPERATURE_COEFFICIENT = 0.00393;
/** Extra length of the twisted strands of class B, of the length of the wire. Source: ASTM B8, from memory. */
export const STRANDING_FACTOR = 1.02;

/** Square metres of one circular mil: a circle of a thousandth of an inch. */
export const CIRCULAR_MIL: SquareMetres = (Math.PI / 4) * inches(0.001) ** 2;

/**
 * K of the circular-mil method, in ohm metres: 12.9 ohm circular mils per foot for copper at 75 °C, rounded from
 * resistance times area of NEC Chapter 9 Table 8.
 */
export const CIRCULAR_MIL_COPPER = (12.9 * CIRCULAR_MIL) / feet(1);

/**
 * Resistance of a copper conductor.
 *
 *     R = ρ/A (1 + 0.00393 (T − 20))
 *
 * @param area         A; of a solid conductor `awgArea` gives it
 * @param temperature  T of the copper
 * @returns            ohms per metre; stranded wire has `STRANDING_FACTOR` times as many
 * Throws              RangeError unless the area is positive and the copper has a resistance left
 * Source              NBS Handbook 100 (1966)
 */
export function copperResistance({
  area,
  temperature,
}: {
  readonly area: SquareMetres;
  readonly temperature: Celsius;
}): number {
  const warmth = resistanceRatio(temperature);
  if (!(area > 0 && area < Infinity)) throw new RangeError(`copperResistance: area is ${area} m2, must be positive`);
  return (COPPER_RESISTIVITY / area) * warmth;
}

/** Resistance at a temperature over that at 20 °C [-]. Throws RangeError below −230 °C, where the line has no meaning. */
export function resistanceRatio(temperature: Celsius): Ratio {
  const ratio = 1 + COPPER_TEMPERATURE_COEFFICIENT * (temperature - 20);
  if (!(ratio > 0 && ratio < Infinity)) throw new RangeError(`resistanceRatio: temperature is ${temperature} degC`);
  return ratio;
}

/**
 * How much further a run may go when the copper is cooler than the 75 °C of the table.
 *
 *     R75/R(T) = 1.216/(1 + 0.00393 (T − 20))
 *
 * @returns  [-]; the buried and indoor parts of a run are warmer than the well
 */
export function coolRunFactor(temperature: Celsius): Ratio {
  return resistanceRatio(75) / resistanceRatio(temperature);
}

/**
 * Copper area that keeps a drop: the circular-mil method.
 *
 *     A = m K I L/ΔV
 *
 * @returns  square metres; choose the next size up with `thinnestConductor`
 * Throws    RangeError unless the drop is positive and the others are not negative
 * Source    textbook form of the voltage drop formula; K = 12.9 for copper
 */
export function areaForDrop({
  phase,
  current,
  length,
  drop,
}: {
  readonly phase: 1 | 3;
  readonly current: Amperes;
  readonly length: Metres;
  readonly drop: Volts;
}): SquareMetres {
  if (!(drop > 0 && current >= 0 && length >= 0)) {
    throw new RangeError(
      `areaForDrop: drop ${drop} V, current ${current} A, length ${length} m; the drop must be positive`,
    );
  }
  return (returnFactor(phase) * CIRCULAR_MIL_COPPER * current * length) / drop;
}

/** AWG number of the thinnest tabulated conductor with at least this area; null when none is thick enough. */
export function thinnestConductor(area: SquareMetres): number | null {
  return CONDUCTORS.find((row) => row.areaCircularMils * CIRCULAR_MIL >= area)?.gauge ?? null;
}

/**
 * Ground wire of a circuit whose power wires are thicker than ampacity asks: it grows in the same proportion.
 *
 *     A_ground = A_ground,least · A_installed/A_least
 *
 * @param least      thinnest gauge that the current asks for
 * @param installed  gauge put in
 * @param ground     ground wire that belongs to the thinnest gauge
 * @returns          AWG number; null when 2 AWG is too thin
 * Source            NFPA 70 (NEC), 250.122(B), from memory; areas Chapter 9 Table 8
 */
export function groundingGauge({
  least,
  installed,
  ground,
}: {
  readonly least: number;
  readonly installed: number;
  readonly ground: number;
}): number | null {
  const ratio = conductorOf(installed).areaCircularMils / conductorOf(least).areaCircularMils;
  // A hair less, so that rounding does not ask for the next size when the areas are equal.
  return thinnestConductor(conductorOf(ground).areaCircularMils * ratio * CIRCULAR_MIL * (1 - 1e-9));
}

/**
 * Least insulation resistance of a motor and its cable in service.
 *
 *     R = 1 megohm + 1 megohm per kilovolt
 *
 * @returns  ohms. A floor for old work: new cable and motor read far more
 * Source    IEEE 43 (1974)
 */
export function insulationResistanceFloor(voltage: Volts): number {
  if (!(voltage >= 0 && voltage < Infinity)) throw new RangeError(`insulationResistanceFloor: voltage is ${voltage} V`);
  return 1e6 * (1 + voltage / 1000);
}
