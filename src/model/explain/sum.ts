/** A formula written once in symbols, and the same text with the numbers put in. */
import { OPERAND_DIGITS, partText, resultText, significant } from './numberText.ts';
import { measureOf } from './measure.ts';
import type { MeasureName, UnitSystem } from './measure.ts';

/** A symbol with what it stands for. */
export interface Term {
  readonly symbol: string;
  readonly meaning: string;
  /** SI; null where nobody knows. */
  readonly value: number | null;
  readonly as: MeasureName;
}

export const term = (symbol: string, meaning: string, value: number | null, as: MeasureName): Term => ({
  symbol,
  meaning,
  value,
  as,
});

/**
 * One step: `left = right`, the left being a symbol that the step finds, or an expression that the right must equal
 * (for a root that was searched for).
 */
export interface Step {
  readonly left: string;
  readonly right: string;
  readonly value: number | null;
  readonly as: MeasureName;
}

export const step = (left: string, right: string, value: number | null, as: MeasureName): Step => ({
  left,
  right,
  value,
  as,
});

const WORD = /\p{L}[\p{L}\p{Nd}_′]*/gu;
/** Nothing but symbols added and taken away. */
const SUM = /^[\p{L}\p{Nd}_′ ]+(?:[+−][\p{L}\p{Nd}_′ ]+)+$/u;
const RAISED = /^[²³⁴^]/u;

/**
 * Replaces each symbol by its number with unit.
 *
 * @param decimals  of numbers that are only added and taken away; null: the digits count
 */
export function putIn(
  expression: string,
  terms: ReadonlyMap<string, Term>,
  units: UnitSystem,
  decimals: number | null = null,
): string {
  return expression.replace(WORD, (symbol, at: number) => {
    const found = terms.get(symbol);
    if (found === undefined) return symbol;
    if (found.value === null) return 'not known';
    const { text, compound, ratio } = quantity(found.value, found.as, units, decimals);
    const before = expression.slice(0, at).trimEnd().slice(-1);
    const raised = RAISED.test(expression.slice(at + symbol.length));
    // "÷ 0.5 ft/s" would read as two divisions, "(−3)" after a sign as one number too few, "10 ft²" as an area.
    const apart =
      raised ||
      ((before === '/' || before === '√') && (compound || ratio)) ||
      (compound && before !== '' && before !== '(');
    return apart ? `(${text})` : text;
  });
}

interface Quantity {
  readonly text: string;
  /** Its number is more than one word: "1.4 × 10⁻⁵", "−3". */
  readonly compound: boolean;
  /** Its unit is a quotient or a product: "ft/s". */
  readonly ratio: boolean;
}

/** A number with its unit as it stands in a sum, with so many decimals, or with all the digits that count. */
function quantity(value: number, as: MeasureName, units: UnitSystem, decimals: number | null): Quantity {
  const { name, from } = measureOf(as, units).sum;
  const number = decimals === null ? significant(from(value), OPERAND_DIGITS) : partText(from(value), decimals);
  return {
    text: withUnit(number, name),
    compound: number.includes('×') || number.startsWith('−'),
    ratio: /[/·]/.test(name),
  };
}

/**
 * "H = 96 ft + 10 ft = 106 ft", or both sides of an equation whose root was searched for.
 *
 * @param told  of the last step: the measure in which the figure itself is told
 */
export function workStep(
  { left, right, value, as }: Step,
  terms: ReadonlyMap<string, Term>,
  units: UnitSystem,
  told: MeasureName | null,
): string {
  const { sum } = measureOf(as, units);
  const read = measureOf(told ?? as, units).read;
  // The reader's unit may be a finer one, which the sum is then worth.
  const decimals = !SUM.test(right) ? null : sum.name === read.name ? sum.decimals : sum.decimals + 2;
  const put = putIn(right, terms, units, decimals);
  if (!isSymbol(left)) {
    const both = value === null ? 'not known' : quantity(value, as, units, null).text;
    return `${putIn(left, terms, units)} = ${both}, and ${put} = ${both}`;
  }
  const found =
    value === null
      ? 'not known'
      : told !== null && sum.name === read.name
        ? withUnit(resultText(sum.from(value), read.decimals), sum.name)
        : // What is turned into another unit keeps its digits.
          quantity(value, as, units, told === null ? decimals : null).text;
  return put === found ? `${left} = ${found}` : `${left} = ${put} = ${found}`;
}

export const withUnit = (number: string, unit: string): string => (unit === '' ? number : `${number} ${unit}`);

/** "H = z + r, with z = h_s + s": the last step first, the others as what it rests on. */
export function formulaOf(steps: readonly Step[]): string {
  const written = steps.map(({ left, right }) => `${left} = ${right}`);
  const last = written[written.length - 1] ?? '';
  const others = written.slice(0, -1);
  return others.length === 0 ? last : `${last}, with ${others.join(', ')}`;
}

function isSymbol(text: string): boolean {
  const [only] = text.match(WORD) ?? [];
  return only === text;
}
