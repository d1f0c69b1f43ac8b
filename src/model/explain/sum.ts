/** A formula written once in symbols, and the same text with the numbers put in. */
import { OPERAND_DIGITS, significant } from './numberText.ts';
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
const RAISED = /^[²³⁴^]/u;

/** Replaces each symbol by its number with unit. */
export function putIn(expression: string, terms: ReadonlyMap<string, Term>, units: UnitSystem): string {
  return expression.replace(WORD, (symbol, at: number) => {
    const found = terms.get(symbol);
    if (found === undefined) return symbol;
    if (found.value === null) return 'unknown';
    const { text, compound, ratio } = quantity(found.value, found.as, units);
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

/** A number with its unit as it stands in a sum. */
export function quantity(value: number, as: MeasureName, units: UnitSystem): Quantity {
  const { name, from } = measureOf(as, units).sum;
  const number = significant(from(value), OPERAND_DIGITS);
  return {
    text: name === '' ? number : `${number} ${name}`,
    compound: number.includes('×') || number.startsWith('−'),
    ratio: /[/·]/.test(name),
  };
}

/** "H = 96 ft + 10 ft = 106 ft", or both sides of an equation whose root was searched for. */
export function workStep(
  { left, right, value, as }: Step,
  terms: ReadonlyMap<string, Term>,
  units: UnitSystem,
): string {
  const found = value === null ? 'unknown' : quantity(value, as, units).text;
  const put = putIn(right, terms, units);
  if (isSymbol(left)) return put === found ? `${left} = ${found}` : `${left} = ${put} = ${found}`;
  return `${putIn(left, terms, units)} = ${found}, and ${put} = ${found}`;
}

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
