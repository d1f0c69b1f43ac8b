/** Single numbers in customary units to SI and back, for constants and for words. */
import type { Celsius, CubicMetres, CubicMetresPerSecond, Kilograms, Metres, Newtons, Pascals, Watts } from '../si.ts';
import {
  BAR,
  BTU_PER_HOUR_FOOT_FAHRENHEIT,
  FAHRENHEIT_DEGREES,
  FAHRENHEIT_ICE,
  FOOT,
  GALLON,
  HORSEPOWER,
  INCH,
  KILOGRAM_FORCE,
  MINUTE,
  POUND,
  POUND_FORCE,
  SQUARE_INCH,
} from './factors.ts';

export const feet = (count: number): Metres => count * FOOT;
export const inches = (count: number): Metres => count * INCH;
export const gpm = (count: number): CubicMetresPerSecond => (count * GALLON) / MINUTE;
export const psi = (count: number): Pascals => (count * POUND_FORCE) / SQUARE_INCH;
export const bars = (count: number): Pascals => count * BAR;
export const fahrenheit = (degrees: number): Celsius => (degrees - FAHRENHEIT_ICE) / FAHRENHEIT_DEGREES;
/** kg/m³ */
export const poundsPerCubicFoot = (count: number): number => (count * POUND) / FOOT ** 3;
/** W/(m K), of Btu/(h ft °F) */
export const btuPerHourFootFahrenheit = (count: number): number => count * BTU_PER_HOUR_FOOT_FAHRENHEIT;
export const gallons = (count: number): CubicMetres => count * GALLON;
export const poundsForce = (count: number): Newtons => count * POUND_FORCE;
export const poundsMass = (count: number): Kilograms => count * POUND;
export const horsepower = (count: number): Watts => count * HORSEPOWER;

export const toFeet = (length: Metres): number => length / FOOT;
export const toInches = (length: Metres): number => length / INCH;
export const toGpm = (flow: CubicMetresPerSecond): number => (flow * MINUTE) / GALLON;
export const toPsi = (pressure: Pascals): number => (pressure * SQUARE_INCH) / POUND_FORCE;
export const toBars = (pressure: Pascals): number => pressure / BAR;
export const toFahrenheit = (temperature: Celsius): number => temperature * FAHRENHEIT_DEGREES + FAHRENHEIT_ICE;
export const toPoundsPerCubicFoot = (density: number): number => (density * FOOT ** 3) / POUND;
export const toGallons = (volume: CubicMetres): number => volume / GALLON;
export const toPoundsForce = (force: Newtons): number => force / POUND_FORCE;
export const toKilogramsForce = (force: Newtons): number => force / KILOGRAM_FORCE;
export const toPoundsMass = (mass: Kilograms): number => mass / POUND;
export const toHorsepower = (power: Watts): number => power / HORSEPOWER;
