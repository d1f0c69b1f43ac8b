/** Single numbers in customary units to SI and back, for constants and for words. */
import type { CubicMetres, CubicMetresPerSecond, Kilograms, Metres, Newtons, Pascals, Watts } from '../si.ts';
import { FOOT, GALLON, HORSEPOWER, INCH, KILOGRAM_FORCE, MINUTE, POUND, POUND_FORCE, SQUARE_INCH } from './table.ts';

export const feet = (count: number): Metres => count * FOOT;
export const inches = (count: number): Metres => count * INCH;
export const gpm = (count: number): CubicMetresPerSecond => (count * GALLON) / MINUTE;
export const psi = (count: number): Pascals => (count * POUND_FORCE) / SQUARE_INCH;
export const gallons = (count: number): CubicMetres => count * GALLON;
export const poundsForce = (count: number): Newtons => count * POUND_FORCE;
export const poundsMass = (count: number): Kilograms => count * POUND;
export const horsepower = (count: number): Watts => count * HORSEPOWER;

export const toFeet = (length: Metres): number => length / FOOT;
export const toInches = (length: Metres): number => length / INCH;
export const toGpm = (flow: CubicMetresPerSecond): number => (flow * MINUTE) / GALLON;
export const toPsi = (pressure: Pascals): number => (pressure * SQUARE_INCH) / POUND_FORCE;
export const toGallons = (volume: CubicMetres): number => volume / GALLON;
export const toPoundsForce = (force: Newtons): number => force / POUND_FORCE;
export const toKilogramsForce = (force: Newtons): number => force / KILOGRAM_FORCE;
export const toPoundsMass = (mass: Kilograms): number => mass / POUND;
export const toHorsepower = (power: Watts): number => power / HORSEPOWER;
