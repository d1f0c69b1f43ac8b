/**
 * The units a plan may be written in, with their factors to SI.
 *
 * SI value = (number - offset) * factor / divisor. Two numbers and not one, because a gallon a minute or a degree
 * Fahrenheit has no finite decimal factor, and a quotient of exact numbers is rounded once only.
 */
import {
  FOOT,
  INCH,
  GALLON,
  POUND,
  POUND_FORCE,
  KILOGRAM_FORCE,
  HORSEPOWER,
  MINUTE,
  HOUR,
  DAY,
  SQUARE_INCH,
  BAR,
} from './factors.ts';

export type QuantityKind =
  | 'length'
  | 'flow'
  | 'pressure'
  | 'temperature'
  | 'volume'
  | 'time'
  | 'transmissivity'
  | 'mass'
  | 'force'
  | 'voltage'
  | 'current'
  | 'power'
  | 'gauge'
  | 'ratio'
  | 'acidity'
  | 'concentration'
  | 'freezingIndex'
  | 'conductivity';

/** The unit whose number is not a multiple of the gauge. */
const SQUARE_MILLIMETRES = 'mm2';

export interface Unit {
  /** As we write it: "gpm". */
  readonly name: string;
  readonly factor: number;
  readonly divisor: number;
  readonly offset: number;
  /** Other ways people write it, in small letters. */
  readonly aliases: readonly string[];
}

/** Units of each kind, the customary one first and the metric one second wherever there are both. */
export const UNITS: Readonly<Record<QuantityKind, readonly Unit[]>> = {
  length: [
    unit('ft', FOOT, ['feet', 'foot', "'"]),
    unit('m', 1, ['metre', 'metres', 'meter', 'meters']),
    unit('in', INCH, ['inch', 'inches', '"', "''"]),
    unit('cm', 0.01),
    unit('mm', 0.001),
  ],
  flow: [
    unit('gpm', GALLON, ['gal/min', 'usgpm'], MINUTE),
    unit('L/min', 0.001, ['lpm'], MINUTE),
    unit('L/s', 0.001, ['lps']),
    unit('m3/h', 1, ['m3/hr'], HOUR),
    unit('m3/d', 1, ['m3/day'], DAY),
    unit('gph', GALLON, ['gal/h', 'gal/hr', 'usgph'], HOUR),
    unit('L/h', 0.001, ['l/hr', 'lph'], HOUR),
  ],
  pressure: [unit('psi', POUND_FORCE, [], SQUARE_INCH), unit('bar', BAR), unit('kPa', 1000)],
  temperature: [unit('degF', 1, ['f', 'deg f'], 1.8, 32), unit('degC', 1, ['c', 'deg c'])],
  volume: [unit('gal', GALLON, ['gallon', 'gallons']), unit('L', 0.001, ['litre', 'litres', 'liter', 'liters'])],
  time: [
    unit('h', HOUR, ['hr', 'hrs', 'hour', 'hours']),
    unit('min', MINUTE, ['minute', 'minutes']),
    unit('s', 1, ['sec', 'second', 'seconds']),
    unit('d', DAY, ['day', 'days']),
  ],
  transmissivity: [
    unit('ft2/d', FOOT * FOOT, ['ft2/day'], DAY),
    unit('m2/d', 1, ['m2/day'], DAY),
    unit('gpd/ft', GALLON, ['gal/d/ft'], DAY * FOOT),
  ],
  mass: [unit('lb', POUND, ['lbs', 'pound', 'pounds']), unit('kg', 1)],
  // A breaking strength printed in "lb" is in pounds-force: a mass would make no sense there.
  force: [
    unit('lbf', POUND_FORCE, ['lb', 'lbs', 'pound', 'pounds']),
    unit('N', 1),
    unit('kN', 1000),
    unit('kgf', KILOGRAM_FORCE, ['kg']),
  ],
  voltage: [unit('V', 1, ['volt', 'volts'])],
  current: [unit('A', 1, ['amp', 'amps'])],
  power: [unit('hp', HORSEPOWER), unit('kW', 1000), unit('W', 1, ['watt', 'watts'])],
  // Of mm2 the number is an area, and the gauge follows from it: `gaugeOfArea`.
  gauge: [unit('AWG', 1, ['ga', 'gauge']), unit(SQUARE_MILLIMETRES, 1, ['mm²', 'sq mm', 'sqmm', 'mm^2'])],
  ratio: [unit('%', 1, ['percent'], 100), unit('', 1)],
  // The pH: it has no unit, and a percentage of it makes no sense.
  acidity: [unit('', 1)],
  concentration: [unit('mg/L', 0.001, ['ppm'])],
  freezingIndex: [
    unit('degF d', 1, ['degf days', 'degf day', 'f d', 'f days'], 1.8),
    unit('degC d', 1, ['degc days', 'degc day', 'c d', 'c days']),
  ],
  conductivity: [unit('uS/cm', 1, [], 1e4), unit('mS/cm', 0.1), unit('mS/m', 0.001)],
};

/** By kind, every spelling as typed and in small letters. */
export const SPELLINGS: Readonly<Record<QuantityKind, ReadonlyMap<string, Unit>>> = Object.fromEntries(
  Object.entries(UNITS).map(([kind, units]) => [
    kind,
    new Map(units.flatMap((one) => [one.name, one.name.toLowerCase(), ...one.aliases].map((name) => [name, one]))),
  ]),
) as Record<QuantityKind, Map<string, Unit>>;

export function unitOf(kind: QuantityKind, name: string): Unit {
  const found = SPELLINGS[kind].get(name);
  if (!found) throw new RangeError(`unitOf: no unit "${name}" of ${kind}; use ${listUnits(kind)}`);
  return found;
}

/** "ft, m, in, cm, mm" */
export function listUnits(kind: QuantityKind): string {
  return UNITS[kind].map((one) => one.name || 'a bare number').join(', ');
}

export function toSi(value: number, { name, factor, divisor, offset }: Unit): number {
  if (name === SQUARE_MILLIMETRES) return gaugeOfArea(value);
  return ((value - offset) * factor) / divisor;
}

export function fromSi(si: number, { name, factor, divisor, offset }: Unit): number {
  if (name === SQUARE_MILLIMETRES) return areaOfGauge(si);
  return (si * divisor) / factor + offset;
}

function unit(name: string, factor: number, aliases: readonly string[] = [], divisor = 1, offset = 0): Unit {
  return { name, factor, divisor, offset, aliases };
}

/**
 * The gauge rule with whole numbers let go: n = 36 - 39 log92(d / 0.127 mm), of a solid conductor of that area in mm2.
 * Source: ASTM B258. So one range of sizes holds for both families.
 */
function gaugeOfArea(squareMillimetres: number): number {
  return 36 - (39 * Math.log(Math.sqrt((4 / Math.PI) * squareMillimetres) / 0.127)) / Math.log(92);
}

/** mm2 of a solid conductor of that gauge, to twelve digits: what was typed in mm2 comes back as it was. */
export function areaOfGauge(gauge: number): number {
  const diameter = 0.127 * 92 ** ((36 - gauge) / 39);
  return Number(((Math.PI / 4) * diameter * diameter).toPrecision(12));
}
