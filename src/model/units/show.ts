/** Figures for the reader, rounded to what they are worth. What a person types is kept elsewhere, as typed. */
import type {
  Amperes,
  Celsius,
  CubicMetres,
  CubicMetresPerSecond,
  Kilograms,
  Metres,
  MetresPerSecond,
  Newtons,
  Pascals,
  Ratio,
  Seconds,
  Volts,
  Watts,
} from '../si.ts';
import {
  toFahrenheit,
  toFeet,
  toGallons,
  toGpm,
  toHorsepower,
  toInches,
  toKilogramsForce,
  toPoundsForce,
  toPoundsMass,
  toPsi,
} from './convert.ts';
import { decimals } from './decimals.ts';
import { BAR, DAY, HOUR, MINUTE } from './factors.ts';

export interface Show {
  readonly units: 'us' | 'metric';
  /** Along a pipe or a wire: "172 ft 6 in", "52.6 m". */
  readonly length: (length: Metres) => string;
  /** Below ground: "62 ft", "18.9 m". */
  readonly depth: (depth: Metres) => string;
  /** A height or gap of a hand or two: "18 in", "46 cm"; from a metre on in metres, "1.22 m". */
  readonly small: (length: Metres) => string;
  /** A diameter: "1.05 in", "26.6 mm". */
  readonly bore: (diameter: Metres) => string;
  readonly flow: (flow: CubicMetresPerSecond) => string;
  /** "60 psi", "4.1 bar" */
  readonly pressure: (pressure: Pascals) => string;
  /** A height of water: "278 ft", "84.7 m". */
  readonly head: (head: Metres) => string;
  readonly velocity: (velocity: MetresPerSecond) => string;
  /** Of slow water, where the hundredths count. */
  readonly slow: (velocity: MetresPerSecond) => string;
  readonly force: (force: Newtons) => string;
  /** What hangs on a hook or a rope, as a scale in the hook reads it: "72 lb", "33 kg". */
  readonly hook: (load: Newtons) => string;
  readonly mass: (mass: Kilograms) => string;
  readonly volume: (volume: CubicMetres) => string;
  readonly temperature: (temperature: Celsius) => string;
  readonly percent: (ratio: Ratio) => string;
  readonly time: (time: Seconds) => string;
  readonly voltage: (voltage: Volts) => string;
  readonly current: (current: Amperes) => string;
  readonly power: (power: Watts) => string;
}

export function show(units: 'us' | 'metric'): Show {
  return units === 'us' ? CUSTOMARY : METRIC;
}

const EITHER = {
  percent: (ratio: Ratio) => `${decimals(ratio * 100, 1)} %`,
  time: spokenTime,
  voltage: (voltage: Volts) => `${decimals(voltage, 0)} V`,
  current: (current: Amperes) => `${decimals(current, 1)} A`,
};

const CUSTOMARY: Show = {
  ...EITHER,
  units: 'us',
  length: feetAndInches,
  depth: (depth) => `${decimals(toFeet(depth), 1)} ft`,
  small: (length) => `${decimals(toInches(length), 1)} in`,
  bore: (diameter) => `${decimals(toInches(diameter), 2)} in`,
  flow: (flow) => `${threeFigures(toGpm(flow))} gpm`,
  pressure: (pressure) => `${decimals(toPsi(pressure), 0)} psi`,
  head: (head) => `${decimals(toFeet(head), 1)} ft`,
  velocity: (velocity) => `${decimals(toFeet(velocity), 1)} ft/s`,
  slow: (velocity) => `${decimals(toFeet(velocity), 2)} ft/s`,
  force: (force) => `${decimals(toPoundsForce(force), 0)} lb`,
  hook: (load) => `${decimals(toPoundsForce(load), 0)} lb`,
  mass: (mass) => `${wholeFromTen(toPoundsMass(mass))} lb`,
  volume: gallonsOrOunces,
  temperature: (temperature) => `${decimals(toFahrenheit(temperature), 0)} °F`,
  power: (power) => `${decimals(toHorsepower(power), 2)} hp`,
};

const METRIC: Show = {
  ...EITHER,
  units: 'metric',
  length: (length) => `${decimals(length, Math.abs(length) < 1 ? 2 : 1)} m`,
  depth: (depth) => `${decimals(depth, Math.abs(depth) < SHALLOW ? 2 : 1)} m`,
  small: handsOrMetres,
  bore: (diameter) => `${decimals(diameter * 1000, 1)} mm`,
  flow: (flow) => `${wholeFromTen(flow * 1000 * MINUTE)} L/min`,
  pressure: bars,
  head: (head) => `${decimals(head, 1)} m`,
  velocity: (velocity) => `${decimals(velocity, 2)} m/s`,
  slow: (velocity) => `${decimals(velocity, 2)} m/s`,
  force: (force) => `${decimals(force, 0)} N`,
  hook: (load) => `${wholeFromTen(toKilogramsForce(load))} kg`,
  mass: (mass) => `${wholeFromTen(mass)} kg`,
  volume: litresOrMillilitres,
  temperature: (temperature) => `${decimals(temperature, 0)} °C`,
  power: (power) => `${decimals(power / 1000, 2)} kW`,
};

/** m; a depth above this is dug by hand, and its centimetres count. */
const SHALLOW = 2;

/** Centimetres up to a metre, then metres to the centimetre: the same adapter is never 122 cm here and 1.2 m there. */
function handsOrMetres(length: Metres): string {
  return Math.abs(length) < 0.995 ? `${wholeFromTen(length * 100)} cm` : `${decimals(length, 2)} m`;
}

/** As a kitchen measures what is less than half a gallon; 128 US fluid ounces are a gallon (NIST Handbook 44, Appendix C). */
function gallonsOrOunces(volume: CubicMetres): string {
  const gallons = toGallons(volume);
  const little = gallons > 0 && gallons < HALF;
  return little ? `${decimals(gallons * 128, gallons * 128 < 9.95 ? 1 : 0)} fl oz` : `${wholeFromTen(gallons)} gal`;
}

function litresOrMillilitres(volume: CubicMetres): string {
  const litres = volume * 1000;
  return litres > 0 && litres < HALF ? `${decimals(litres * 1000, 0)} mL` : `${wholeFromTen(litres)} L`;
}

const HALF = 0.495;

/** To a hundredth of a bar, which a dial still shows; from ten bar on to a tenth, as pipe is stamped. */
function bars(pressure: Pascals): string {
  const bar = pressure / BAR;
  return `${decimals(bar, Math.abs(bar) < 9.95 ? 2 : 1)} bar`;
}

/** To the inch: "172 ft 6 in", "172 ft", "8 in". Rounding the inches first keeps "12 in" from standing after feet. */
function feetAndInches(length: Metres): string {
  const total = Math.round(Math.abs(toInches(length)));
  const sign = length < 0 && total > 0 ? '-' : '';
  const feet = Math.floor(total / 12);
  const inches = total - feet * 12;
  return sign + (feet === 0 ? `${inches} in` : inches === 0 ? `${feet} ft` : `${feet} ft ${inches} in`);
}

/** Seconds up to two minutes, minutes up to two hours, hours with minutes up to two days, then days. */
function spokenTime(time: Seconds): string {
  if (Math.abs(time) < 2 * MINUTE) return `${decimals(time, 0)} s`;
  if (Math.abs(time) < 2 * HOUR) return `${decimals(time / MINUTE, 0)} min`;
  if (Math.abs(time) >= 2 * DAY) return `${decimals(time / DAY, 1)} d`;
  const minutes = Math.round(time / MINUTE);
  const hours = Math.trunc(minutes / 60);
  const rest = Math.abs(minutes - hours * 60);
  return rest === 0 ? `${hours} h` : `${hours} h ${rest} min`;
}

function wholeFromTen(value: number): string {
  return decimals(value, Math.abs(value) < 9.95 ? 1 : 0);
}

/** A well that gives under a gallon a minute is told to the hundredth. */
function threeFigures(value: number): string {
  const size = Math.abs(value);
  return decimals(value, size < 0.995 ? 2 : size < 99.95 ? 1 : 0);
}
