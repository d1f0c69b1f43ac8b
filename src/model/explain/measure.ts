/**
 * Units of a sum. Within one sum lengths, times and forces are in one unit each (feet, seconds, pounds; or metres,
 * seconds, newtons), so that the numbers can be keyed in as they stand; beside it stands the unit the reader uses.
 */
import {
  feet,
  gpm,
  inches,
  poundsForce,
  toFeet,
  toGallons,
  toGpm,
  toHorsepower,
  toInches,
  toKilogramsForce,
  toPoundsForce,
  toPsi,
} from '../units.ts';

export type UnitSystem = 'us' | 'metric';

export interface UnitOfSum {
  readonly name: string;
  readonly from: (si: number) => number;
  /** Decimals that a result in this unit is worth. */
  readonly decimals: number;
}

export interface Measure {
  /** In the sum. */
  readonly sum: UnitOfSum;
  /** Beside it, as the reader knows it. */
  readonly read: UnitOfSum;
}

const unit = (name: string, from: (si: number) => number, decimals: number): UnitOfSum => ({ name, from, decimals });
const same = (sum: UnitOfSum): Measure => ({ sum, read: sum });
const times = (factor: number) => (si: number) => si * factor;
const plain = same(unit('', (n) => n, 6));

const CUBIC_FOOT = feet(1) ** 3;
const SQUARE_FOOT = feet(1) ** 2;
const FOOT_POUND = feet(1) * poundsForce(1);
const poundsPerSquareFoot = (pascals: number) => toPsi(pascals) * 144;

const feetUnit = unit('ft', toFeet, 2);
const cubicFeetPerSecond = unit('ft³/s', times(1 / CUBIC_FOOT), 6);
const gallonsPerMinute = unit('gpm', toGpm, 2);
const psiUnit = unit('psi', toPsi, 2);
const footSquaredPerSecond = unit('ft²/s', times(1 / SQUARE_FOOT), 9);

const US = {
  number: plain,
  length: same(feetUnit),
  bore: { sum: feetUnit, read: unit('in', toInches, 3) },
  small: { sum: feetUnit, read: unit('in', toInches, 2) },
  roughness: { sum: feetUnit, read: unit('in', toInches, 7) },
  flow: { sum: cubicFeetPerSecond, read: gallonsPerMinute },
  readFlow: same(gallonsPerMinute),
  velocity: same(unit('ft/s', toFeet, 3)),
  pressure: { sum: unit('lb/ft²', poundsPerSquareFoot, 1), read: psiUnit },
  readPressure: same(psiUnit),
  weightPerVolume: same(unit('lb/ft³', times(CUBIC_FOOT / poundsForce(1)), 3)),
  weightPerLength: same(unit('lb/ft', times(feet(1) / poundsForce(1)), 4)),
  area: { sum: unit('ft²', times(1 / SQUARE_FOOT), 6), read: unit('in²', times(144 / SQUARE_FOOT), 4) },
  force: same(unit('lb', toPoundsForce, 1)),
  modulus: { sum: unit('lb/ft²', poundsPerSquareFoot, 0), read: unit('psi', toPsi, 0) },
  viscosity: same(footSquaredPerSecond),
  volume: { sum: unit('ft³', times(1 / CUBIC_FOOT), 3), read: unit('gal', toGallons, 2) },
  readVolume: same(unit('gal', toGallons, 3)),
  minutes: same(unit('min', times(1 / 60), 1)),
  seconds: { sum: unit('s', (n) => n, 0), read: unit('h', times(1 / 3600), 2) },
  transmissivity: { sum: footSquaredPerSecond, read: unit('ft²/d', times(86400 / SQUARE_FOOT), 2) },
  capacity: same(unit('gpm/ft', (si) => toGpm(si) * feet(1), 4)),
  aquiferLoss: same(unit('ft/gpm', (si) => toFeet(si) * gpm(1), 5)),
  wellLoss: same(unit('ft/gpm²', (si) => toFeet(si) * gpm(1) ** 2, 7)),
  cubicLoss: same(unit('ft/gpm³', (si) => toFeet(si) * gpm(1) ** 3, 9)),
  power: { sum: unit('ft·lb/s', times(1 / FOOT_POUND), 1), read: unit('hp', toHorsepower, 3) },
  ohmsPerLength: same(unit('Ω/ft', times(feet(1)), 7)),
  gravity: same(unit('ft/s²', toFeet, 3)),
  hazenWilliams: same(unit('s^1.852/ft^0.685', times(feet(1) ** 0.685), 3)),
} as const;

const metre = unit('m', (n) => n, 3);
const cubicMetresPerSecond = unit('m³/s', (n) => n, 8);
const litresPerMinute = unit('L/min', times(60000), 1);
const bars = unit('bar', times(1e-5), 3);
const pascals = unit('Pa', (n) => n, 0);
const squareMetresPerSecond = unit('m²/s', (n) => n, 9);
const perLitreAMinute = 1 / 60000;

const METRIC: Record<keyof typeof US, Measure> = {
  number: plain,
  length: same(metre),
  bore: { sum: metre, read: unit('mm', times(1000), 2) },
  small: { sum: metre, read: unit('cm', times(100), 1) },
  roughness: { sum: metre, read: unit('mm', times(1000), 5) },
  flow: { sum: cubicMetresPerSecond, read: litresPerMinute },
  readFlow: same(litresPerMinute),
  velocity: same(unit('m/s', (n) => n, 4)),
  pressure: { sum: pascals, read: bars },
  readPressure: same(bars),
  weightPerVolume: same(unit('N/m³', (n) => n, 1)),
  weightPerLength: same(unit('N/m', (n) => n, 4)),
  area: { sum: unit('m²', (n) => n, 8), read: unit('mm²', times(1e6), 1) },
  force: { sum: unit('N', (n) => n, 0), read: unit('kg', toKilogramsForce, 1) },
  modulus: { sum: pascals, read: unit('MPa', times(1e-6), 1) },
  viscosity: same(squareMetresPerSecond),
  volume: { sum: unit('m³', (n) => n, 5), read: unit('L', times(1000), 1) },
  readVolume: same(unit('L', times(1000), 2)),
  minutes: same(unit('min', times(1 / 60), 1)),
  seconds: { sum: unit('s', (n) => n, 0), read: unit('h', times(1 / 3600), 2) },
  transmissivity: { sum: squareMetresPerSecond, read: unit('m²/d', times(86400), 2) },
  capacity: same(unit('L/min/m', times(60000), 3)),
  aquiferLoss: same(unit('m/(L/min)', times(perLitreAMinute), 6)),
  wellLoss: same(unit('m/(L/min)²', times(perLitreAMinute ** 2), 9)),
  cubicLoss: same(unit('m/(L/min)³', times(perLitreAMinute ** 3), 12)),
  power: { sum: unit('W', (n) => n, 1), read: unit('kW', times(0.001), 3) },
  ohmsPerLength: same(unit('Ω/m', (n) => n, 7)),
  gravity: same(unit('m/s²', (n) => n, 5)),
  hazenWilliams: same(unit('s^1.852/m^0.685', (n) => n, 3)),
};

const ALIKE = {
  percent: same(unit('%', times(100), 2)),
  volts: same(unit('V', (n) => n, 2)),
  amperes: same(unit('A', (n) => n, 2)),
  milligramsPerLitre: same(unit('mg/L', times(1000), 1)),
  /** The manuals of frost mix units; here the sum stands in SI whatever the reader's units. */
  kelvinDays: same(unit('K·d', (n) => n, 0)),
  conductivity: same(unit('W/(m·K)', (n) => n, 3)),
  latentHeat: same(unit('J/m³', (n) => n, 0)),
  secondsPerDay: same(unit('s/d', (n) => n, 0)),
  metres: same(unit('m', (n) => n, 3)),
  /** Of formulas whose factor belongs to inches and gallons a minute. */
  inches: same(unit('in', toInches, 2)),
  gallonsPerMinute: same(gallonsPerMinute),
  vortexFactor: same(unit('in^2.5/gpm', times(gpm(1) / inches(1) ** 2.5), 3)),
} as const;

/** The same formulas for those who read neither: millimetres and litres a minute. */
const METRIC_TWINS = {
  inches: same(unit('mm', times(1000), 1)),
  gallonsPerMinute: same(litresPerMinute),
  vortexFactor: same(unit('mm^2.5/(L/min)', times(0.001 / 60 / 0.001 ** 2.5), 1)),
} as const;

export type MeasureName = keyof typeof US | keyof typeof ALIKE;

const BY_SYSTEM: Readonly<Record<UnitSystem, Readonly<Record<MeasureName, Measure>>>> = {
  us: { ...US, ...ALIKE },
  metric: { ...METRIC, ...ALIKE, ...METRIC_TWINS },
};

export function measureOf(name: MeasureName, units: UnitSystem): Measure {
  return BY_SYSTEM[units][name];
}
