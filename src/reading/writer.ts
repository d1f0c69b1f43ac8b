/** How quantities of a report are written into a plan: in the report's own units. */
import { parseQuantity } from '../model/units.ts';
import type { Quantity } from './quantities.ts';
import { materialIn, wallIn } from './spans.ts';

export interface Writer {
  /** Whether any line names a unit. */
  readonly saysUnits: boolean;
  readonly length: (quantity: Quantity) => string;
  /** @param bare  what a bare number is: a diameter in inches, or a length */
  readonly size: (quantity: Quantity, bare?: 'diameter' | 'length') => string;
  readonly flow: (quantity: Quantity) => string;
  readonly time: (quantity: Quantity) => string;
  readonly power: (quantity: Quantity) => string;
  readonly metres: (quantity: Quantity | null) => number;
  readonly flowSi: (quantity: Quantity) => number;
  readonly fromMetres: (metres: number, like: Quantity) => string;
  readonly material: (text: string) => string;
  readonly wall: (text: string) => string;
  /** Whether the value of that path was written in a unit that no line names. */
  readonly isGuessed: (path: string) => boolean;
}

const LENGTHS = new Set(['ft', 'm', 'in', 'cm', 'mm']);
/** Wider than this in inches is hardly a casing: it was millimetres. */
const WIDEST = 60;

export function inReport(units: 'us' | 'metric', saysUnits: boolean): Writer {
  const long = units === 'us' ? 'ft' : 'm';
  const length = (quantity: Quantity): string => {
    const sign = quantity.sign === '-' ? '-' : '';
    return `${sign}${plain(quantity.value)} ${LENGTHS.has(quantity.unit) ? quantity.unit : long}`;
  };
  const size = (quantity: Quantity, bare: 'diameter' | 'length' = 'diameter'): string => {
    // Pipe is called by its millimetres.
    if (quantity.unit === 'cm' && bare === 'diameter') return `${plain(quantity.value * 10)} mm`;
    if (LENGTHS.has(quantity.unit)) return `${nominal(quantity)} ${quantity.unit}`;
    if (bare === 'length') return length(quantity);
    return `${nominal(quantity)} ${quantity.value > WIDEST ? 'mm' : 'in'}`;
  };
  const metres = (quantity: Quantity | null): number => {
    if (quantity === null) return 0;
    const unit = LENGTHS.has(quantity.unit) ? quantity.unit : quantity.kind === 'N' ? long : 'in';
    const read = parseQuantity(`${plain(quantity.value)} ${unit}`, 'length');
    return read.ok ? read.si : NaN;
  };
  const flow = (quantity: Quantity): string =>
    `${plain(quantity.value)} ${quantity.kind === 'F' || quantity.unit !== '' ? quantity.unit : units === 'us' ? 'gpm' : 'L/min'}`;
  return {
    saysUnits,
    length,
    size,
    flow,
    time: ({ value, unit }) => `${plain(value)} ${unit === '' ? 'h' : unit}`,
    power: (quantity) =>
      `${/\d\/\d/.test(quantity.text) ? nominal(quantity) : plain(quantity.value)} ${quantity.unit === '' ? 'hp' : quantity.unit}`,
    metres,
    flowSi: (quantity) => {
      const read = parseQuantity(flow(quantity), 'flow');
      return read.ok ? read.si : 0;
    },
    fromMetres: (value, like) => {
      const unit = LENGTHS.has(like.unit) ? like.unit : long;
      const one = parseQuantity(`1 ${unit}`, 'length');
      return `${plain(one.ok ? value / one.si : value)} ${unit}`;
    },
    material: materialIn,
    wall: wallIn,
    isGuessed: (path) =>
      !saysUnits &&
      /depth|bottom|Level|drawdown|setting|layers|casings|screens|inflows|grout|height|yield$|flow$|\.level$/i.test(
        path,
      ) &&
      !/depthsFrom/.test(path),
  };
}

function plain(value: number): string {
  return String(Number(value.toFixed(3)));
}

/** "6-5/8", as sizes are named. */
function nominal({ text, value }: Quantity): string {
  const fraction = /(?:(\d+)[\s-]+)?(\d+\/\d+)/.exec(text);
  if (fraction === null) return plain(value);
  return fraction[1] === undefined ? (fraction[2] ?? '') : `${fraction[1]}-${fraction[2]}`;
}
