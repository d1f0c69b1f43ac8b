/** Every conversion between text, customary units and SI. Nothing else in the program converts. */
export {
  bars,
  btuPerHourFootFahrenheit,
  fahrenheit,
  feet,
  gallons,
  gpm,
  horsepower,
  inches,
  poundsForce,
  poundsMass,
  poundsPerCubicFoot,
  psi,
} from './units/convert.ts';
export {
  toBars,
  toFahrenheit,
  toFeet,
  toGallons,
  toGpm,
  toHorsepower,
  toInches,
  toKilogramsForce,
  toPoundsForce,
  toPoundsMass,
  toPoundsPerCubicFoot,
  toPsi,
} from './units/convert.ts';
export { decimals } from './units/decimals.ts';
export { examples, inBothUnits, withoutUnit } from './units/faults.ts';
export { either, isForeign } from './units/kin.ts';
export { parseQuantity, readQuantity } from './units/parse.ts';
export type { ParsedQuantity, QuantityFault } from './units/parsed.ts';
export { show } from './units/show.ts';
export type { Show } from './units/show.ts';
export { areaOfGauge as squareMillimetres, UNITS, listUnits } from './units/table.ts';
export type { QuantityKind } from './units/table.ts';
export { wireName } from './units/wire.ts';
export { plainNumber, writeQuantity } from './units/write.ts';
