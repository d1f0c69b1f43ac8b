import type { Amperes, Kilograms, Ratio, Volts, Watts } from '../si.ts';
import { horsepower, poundsMass } from '../units.ts';

/**
 * Motors as the code tabulates them: horsepower, amperes.
 *
 * Sources  NFPA 70 (NEC), Table 430.248 (single phase) and 430.250 (three phase): full-load currents.
 *          NFPA 70 (NEC), Table 430.251(A) and (B), 2008 edition: locked-rotor currents, three phase for design B, C, D.
 * Submersible motors often draw more than this at their service factor, which `runningCurrent` counts in.
 */
interface MotorRow {
  readonly horsepower: number;
  /** By column voltage. */
  readonly fullLoad: Readonly<Record<number, number>>;
  readonly lockedRotor: Readonly<Record<number, number>>;
}

const SINGLE_PHASE: readonly MotorRow[] = [
  { horsepower: 0.5, fullLoad: { 115: 9.8, 208: 5.4, 230: 4.9 }, lockedRotor: { 115: 58.8, 208: 32.5, 230: 29.4 } },
  { horsepower: 0.75, fullLoad: { 115: 13.8, 208: 7.6, 230: 6.9 }, lockedRotor: { 115: 82.8, 208: 45.8, 230: 41.4 } },
  { horsepower: 1, fullLoad: { 115: 16, 208: 8.8, 230: 8 }, lockedRotor: { 115: 96, 208: 53, 230: 48 } },
  { horsepower: 1.5, fullLoad: { 115: 20, 208: 11, 230: 10 }, lockedRotor: { 115: 120, 208: 66, 230: 60 } },
  { horsepower: 2, fullLoad: { 115: 24, 208: 13.2, 230: 12 }, lockedRotor: { 115: 144, 208: 80, 230: 72 } },
  { horsepower: 3, fullLoad: { 115: 34, 208: 18.7, 230: 17 }, lockedRotor: { 115: 204, 208: 113, 230: 102 } },
  { horsepower: 5, fullLoad: { 115: 56, 208: 30.8, 230: 28 }, lockedRotor: { 115: 336, 208: 186, 230: 168 } },
];

const THREE_PHASE: readonly MotorRow[] = [
  { horsepower: 0.5, fullLoad: { 208: 2.4, 230: 2.2, 460: 1.1 }, lockedRotor: { 208: 22.1, 230: 20, 460: 10 } },
  { horsepower: 0.75, fullLoad: { 208: 3.5, 230: 3.2, 460: 1.6 }, lockedRotor: { 208: 27.6, 230: 25, 460: 12.5 } },
  { horsepower: 1, fullLoad: { 208: 4.6, 230: 4.2, 460: 2.1 }, lockedRotor: { 208: 33, 230: 30, 460: 15 } },
  { horsepower: 1.5, fullLoad: { 208: 6.6, 230: 6, 460: 3 }, lockedRotor: { 208: 44, 230: 40, 460: 20 } },
  { horsepower: 2, fullLoad: { 208: 7.5, 230: 6.8, 460: 3.4 }, lockedRotor: { 208: 55, 230: 50, 460: 25 } },
  { horsepower: 3, fullLoad: { 208: 10.6, 230: 9.6, 460: 4.8 }, lockedRotor: { 208: 71, 230: 64, 460: 32 } },
  { horsepower: 5, fullLoad: { 208: 16.7, 230: 15.2, 460: 7.6 }, lockedRotor: { 208: 102, 230: 92, 460: 46 } },
];

/**
 * Three-phase motors of 50 Hz countries at 400 V: rated power [kW], full-load current [A].
 *
 * Source  IEC 60947-4-1, Table G.1, from memory
 */
const THREE_PHASE_400_V: readonly (readonly [kilowatts: number, fullLoad: Amperes])[] = [
  [0.37, 1.1],
  [0.55, 1.5],
  [0.75, 1.9],
  [1.1, 2.7],
  [1.5, 3.6],
  [2.2, 4.9],
  [3, 6.5],
  [4, 8.5],
];

/**
 * Pump and motor together for 4-inch wells, pounds. Common practice, no source; real ones differ by 30 %,
 * and the weight on the pump's sheet overrules these.
 */
const PUMP_MASS_POUNDS: readonly number[] = [30, 32, 38, 46, 55, 75, 110];

/** Tabulated ratings, smallest first. */
export const RATED_POWERS: readonly Watts[] = SINGLE_PHASE.map((row) => horsepower(row.horsepower));

/**
 * Service factors of 60 Hz submersible motors by rating, as their nameplates usually give them: what they may carry
 * beyond the rated power without end. Common practice, no source; from memory.
 */
const SERVICE_FACTORS_60_HZ: readonly Ratio[] = [1.6, 1.5, 1.4, 1.3, 1.25, 1.15, 1.15];
/** Of 3 hp and more. */
const SERVICE_FACTOR_OF_LARGE_MOTORS: Ratio = 1.15;

/**
 * What submersible motors draw at their service factor, single phase at 230 V, by rating [A]. Common practice, no
 * source; from memory.
 */
const SERVICE_CURRENTS_230_V: readonly Amperes[] = [6, 8, 10.4, 11.5, 13.2, 17, 27.5];

/**
 * Share by which a power may exceed a rating and still count as that rating: metric names of the same motors are
 * rounded (0.75 kW is 1.006 hp, 1.5 kW is 2.012 hp).
 */
const RATING_ROUNDING = 0.02;

export interface MotorSupply {
  /** Rated shaft power. */
  readonly power: Watts;
  readonly phase: 1 | 3;
  readonly voltage: Volts;
  /** Of the supply [Hz], where it is known: motors of 50 Hz have no service factor to be loaded to. */
  readonly frequency?: 50 | 60 | null;
}

/**
 * Full-load current by the code table, of the nearest rating at or above the power.
 *
 * @returns  amperes; null above the largest rating here (5 hp; 4 kW at 380 to 415 V) and for a voltage the table does not
 *           cover
 * Source    NFPA 70 (NEC), Tables 430.248 and 430.250; three phases at 380 to 415 V: IEC 60947-4-1, Table G.1, from memory
 */
export function motorCurrent({ power, phase, voltage }: MotorSupply): Amperes | null {
  if (phase === 3 && voltage >= 380 && voltage <= 415) {
    const listed = THREE_PHASE_400_V.find(([kilowatts]) => power <= kilowatts * 1000 * (1 + RATING_ROUNDING));
    return listed?.[1] ?? null;
  }
  return tabulated(power, phase, voltage)?.fullLoad ?? null;
}

/**
 * Current that a motor is taken to draw while it runs, where no nameplate tells it: submersible motors are loaded to
 * their service factor, so the larger of the code table and the usual current there.
 *
 * @returns  amperes; null as for `motorCurrent`
 *
 * Range     usual currents stand for 230 V single phase, and doubled for 115 V; at 208 V, in three phases and at 50 Hz the
 *           code table alone answers
 * Source    NFPA 70 (NEC), Tables 430.248 and 430.250; currents at the service factor: common practice, from memory
 */
export function runningCurrent({ power, phase, voltage, frequency }: MotorSupply): Amperes | null {
  const tabled = motorCurrent({ power, phase, voltage });
  if (frequency === 50) return tabled;
  const at230 = phase === 1 ? SERVICE_CURRENTS_230_V[ratingIndex(power)] : undefined;
  const column = columnVoltage(voltage);
  if (tabled === null || at230 === undefined) return tabled;
  if (column === 230) return Math.max(tabled, at230);
  return column === 115 ? Math.max(tabled, 2 * at230) : tabled;
}

/**
 * Load that a submersible motor may carry without end, by its rated power.
 *
 * @param power      rated shaft power [W]
 * @param frequency  of the supply [Hz]
 * @returns  [-]; 1 at 50 Hz
 *
 * Range     4 in motors of households
 * Throws    RangeError when the power is not positive
 * Source    nameplate values, common practice, from memory
 */
export function serviceFactor(power: Watts, frequency: 50 | 60): Ratio {
  const index = ratingIndex(power);
  return frequency === 50 ? 1 : (SERVICE_FACTORS_60_HZ[index] ?? SERVICE_FACTOR_OF_LARGE_MOTORS);
}

/** The tabulated rating that a power stands for, the nearest at or above [W]; null above the largest here (5 hp). */
export function ratingOf(power: Watts): Watts | null {
  return RATED_POWERS[ratingIndex(power)] ?? null;
}

/**
 * Current of a motor that does not turn yet, by the code table.
 *
 * @returns  amperes; null as for `motorCurrent`
 * Source    NFPA 70 (NEC), 2008, Table 430.251(A) and (B)
 */
export function lockedRotorCurrent({ power, phase, voltage }: MotorSupply): Amperes | null {
  return tabulated(power, phase, voltage)?.lockedRotor ?? null;
}

/**
 * Mass of pump and motor together by rated power, generic 4-inch range.
 *
 * @returns  kilograms; null above the largest rating here (5 hp)
 * Source    common practice, no source; within 30 %
 */
export function pumpMass(power: Watts): Kilograms | null {
  const pounds = PUMP_MASS_POUNDS[ratingIndex(power)];
  return pounds === undefined ? null : poundsMass(pounds);
}

function tabulated(power: Watts, phase: 1 | 3, voltage: Volts): { fullLoad: Amperes; lockedRotor: Amperes } | null {
  const row = (phase === 1 ? SINGLE_PHASE : THREE_PHASE)[ratingIndex(power)];
  const column = columnVoltage(voltage);
  if (row === undefined || column === null) return null;
  const fullLoad = row.fullLoad[column];
  const lockedRotor = row.lockedRotor[column];
  return fullLoad === undefined || lockedRotor === undefined ? null : { fullLoad, lockedRotor };
}

/** Index of the nearest rating at or above; the number of ratings where there is none. */
function ratingIndex(power: Watts): number {
  if (!(power > 0 && power < Infinity)) throw new RangeError(`motors: power is ${power} W, must be positive`);
  let index = 0;
  for (const rating of RATED_POWERS) {
    if (power <= rating * (1 + RATING_ROUNDING)) return index;
    index += 1;
  }
  return index;
}

/** The tables hold for 110 to 120, 220 to 240 and 440 to 480 V (notes of Tables 430.248 and 430.250). */
function columnVoltage(voltage: Volts): number | null {
  if (voltage >= 110 && voltage <= 120) return 115;
  if (voltage === 208) return 208;
  if (voltage >= 220 && voltage <= 240) return 230;
  if (voltage >= 440 && voltage <= 480) return 460;
  return null;
}

/**
 * Code letters of a nameplate: kilovolt-amperes per horsepower with the rotor locked, from and to.
 *
 * Source  NFPA 70 (NEC), Table 430.7(B)
 */
export const CODE_LETTERS: Readonly<Record<string, { readonly from: number; readonly to: number }>> = {
  F: { from: 5.0, to: 5.59 },
  G: { from: 5.6, to: 6.29 },
  H: { from: 6.3, to: 7.09 },
  J: { from: 7.1, to: 7.99 },
  K: { from: 8.0, to: 8.99 },
  L: { from: 9.0, to: 9.99 },
  M: { from: 10.0, to: 11.19 },
  N: { from: 11.2, to: 12.49 },
};
