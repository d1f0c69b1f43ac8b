/** What is wrong with a quantity that could not be read, in words, and what to write instead. */
import type { QuantityFault, ReadingFault } from './parsed.ts';
import { UNITS, fromSi, listUnits, toSi, unitOf } from './table.ts';
import type { QuantityKind } from './table.ts';
import { plainNumber } from './write.ts';

export function sayFault(fault: ReadingFault, kind: QuantityKind): QuantityFault {
  switch (fault.is) {
    case 'withoutUnit':
      return withoutUnit(fault.value, kind);
    case 'unknownUnit':
      return unknownUnit(fault.unit, kind);
    case 'oddInches':
      return oddInches(fault);
    case 'manyThousands':
      return told('with marks between the thousands', `"${joined(fault.large, fault.unit)}"`);
    case 'thousandsOrDecimal': {
      const { large, small, unit } = fault;
      const either = `"${joined(large, unit)}" or "${joined(plainNumber(small), unit)}"`;
      return told('either thousands or a decimal comma', either);
    }
    default:
      return told(PLAIN[fault.is], examples(kind));
  }
}

const PLAIN = {
  empty: 'empty',
  tooLong: 'too long for a quantity',
  twoVoltages: 'two voltages',
  noNumber: 'not a number with a unit',
  notFinite: 'not a finite number',
  tooSmall: 'smaller than anything measured',
  tooLarge: 'larger than anything measured',
} as const;

/** A bare number, with the two units it may have been meant in. */
export function withoutUnit(value: number, kind: QuantityKind): QuantityFault {
  return { ...told('without a unit', inBothUnits(value, kind)), bare: value };
}

/**
 * '"90 ft" or "27.4 m"'; the metric one first when `units` says so: '"90 m" or "295.3 ft"'.
 *
 * @param pair  names of the customary and the metric unit, where they are not the kind's first two
 */
export function inBothUnits(
  value: number,
  kind: QuantityKind,
  units: 'us' | 'metric' = 'us',
  pair: readonly string[] = UNITS[kind].map(({ name }) => name),
): string {
  const [customary, metric] = pair.slice(0, 2).map((name) => unitOf(kind, name));
  if (!customary) return '';
  const first = units === 'metric' && metric && kind !== 'time' ? metric : customary;
  const second = kind === 'time' ? null : first === customary ? metric : customary;
  const start = `"${joined(plainNumber(value), first.name)}"`;
  if (!second) return start;
  // No size of one family is one of the other: it is the same number under another name.
  if (kind === 'gauge') return `${start} or "${joined(plainNumber(value), second.name)}"`;
  const converted = Number(fromSi(toSi(value, first), second).toPrecision(value === 0 ? 1 : 3));
  const rounded = Math.abs(converted) >= 100 ? Math.round(fromSi(toSi(value, first), second)) : converted;
  return `${start} or "${joined(plainNumber(rounded), second.name)}"`;
}

function oddInches({ feet, inches }: { readonly feet: number; readonly inches: number }): QuantityFault {
  const total = feet * 12 + inches;
  const whole = Math.floor(total / 12 + 1e-9);
  const rest = Number((total - whole * 12).toPrecision(6));
  return told(
    Number.isInteger(feet) ? `${plainNumber(inches)} in is a foot or more` : 'inches after a part of a foot',
    Number.isFinite(total) ? `"${rest === 0 ? `${whole} ft` : `${whole} ft ${rest} in`}"` : examples('length'),
  );
}

/**
 * What was meant by the number nobody knows, so it is never shown again with another unit: whoever takes that over has a
 * wrong value that looks read.
 */
function unknownUnit(unitText: string, kind: QuantityKind): QuantityFault {
  const shown = unitText.length > 20 ? `${unitText.slice(0, 20)}…` : unitText;
  const rest = /^[,.\d]/.test(unitText);
  if (rest) return told('not one number with a unit', examples(kind));
  if (kind === 'acidity') return told('with a unit, and a pH has none', examples(kind));
  return told(`with the unit "${shown}", which is not read here (these are: ${listUnits(kind)})`, examples(kind));
}

function told(what: string, write: string): QuantityFault {
  return { ok: false, problem: `${what}; write ${write}`, fault: what, write, bare: null };
}

/** What a quantity of the kind looks like. */
export function examples(kind: QuantityKind): string {
  return EXAMPLES[kind];
}

const EXAMPLES: Readonly<Record<QuantityKind, string>> = {
  length: '"62 ft" or "18.9 m"',
  flow: '"8 gpm" or "30 L/min"',
  pressure: '"60 psi" or "4.1 bar"',
  temperature: '"50 degF" or "10 degC"',
  volume: '"44 gal" or "167 L"',
  time: '"4 h" or "240 min"',
  transmissivity: '"500 ft2/d" or "46 m2/d"',
  mass: '"30 lb" or "13.6 kg"',
  force: '"1125 lbf" or "5000 N"',
  voltage: 'the motor’s own voltage: "115 V" or "230 V"',
  current: '"9.8 A"',
  power: '"1-1/2 hp" or "1.1 kW"',
  gauge: '"12 AWG" or "4 mm2"',
  ratio: '"30 %" or "0.3"',
  acidity: '"7.2", a bare number from 0 to 14',
  concentration: '"100 mg/L"',
  freezingIndex: '"1500 degF d" or "833 degC d"',
  conductivity: '"400 uS/cm"',
};

function joined(number: string, unit: string): string {
  return unit === '' ? number : `${number} ${unit}`;
}
