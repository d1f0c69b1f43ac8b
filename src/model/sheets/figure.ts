/** Makes figures of a sheet: text at once, the account when it is asked for. */
import type { Context } from '../explain/context.ts';
import { explain } from '../explain/explain.ts';
import type { ExplainedRange, Missing } from '../explain/explanation.ts';
import { measureOf } from '../explain/measure.ts';
import type { MeasureName } from '../explain/measure.ts';
import { resultText, significant } from '../explain/numberText.ts';
import { formulaOf, withUnit, workStep } from '../explain/sum.ts';
import type { Step, Term } from '../explain/sum.ts';
import type { ValueName } from '../solution.ts';
import type { SheetExplanation, SheetFigure } from './sheet.ts';

export interface FigureHead {
  readonly key: string;
  readonly title: string;
  readonly symbol: string;
  /** SI */
  readonly value: number | null;
  /** Measure that the value is read in. */
  readonly as: MeasureName;
  /** Instead of the number in its measure: "about 12 stages". */
  readonly text?: (value: number) => string;
  /** Asked for only where the value is null. */
  readonly missing: readonly (Missing | null)[];
}

export interface FigureAccount {
  readonly terms: readonly Term[];
  /** In the order one works through them; the last gives the figure. */
  readonly steps: readonly Step[];
  /** In words, where symbols alone would not be understood. */
  readonly formula?: string;
  readonly range: ExplainedRange;
  readonly source: string;
  readonly notes?: readonly string[];
}

const NO_MEANING: Missing = { path: null, words: 'a case in which the formula has a meaning' };

export function figure(context: Context, head: FigureHead, account: () => FigureAccount): SheetFigure {
  const { key, title, value } = head;
  const lacking = value === null ? missingOf(head.missing) : [];
  return {
    key,
    title,
    value,
    text: value === null ? 'not known' : readText(context, head, value),
    unknown: lacking.map(({ words }) => words),
    explanation: () => opened(context, head, lacking, account()),
  };
}

/** A figure that the solution already holds. */
export function solved(context: Context, name: ValueName): SheetFigure {
  const explanation = explain(context.solution, name, context.units);
  return {
    key: name,
    title: explanation.title,
    value: context.values[name],
    text: explanation.result ?? 'not known',
    unknown: explanation.unknown.map(({ words }) => words),
    explanation: () => explanation,
  };
}

export const solvedAll = (context: Context, ...names: readonly ValueName[]): SheetFigure[] =>
  names.map((name) => solved(context, name));

function missingOf(asked: readonly (Missing | null)[]): readonly Missing[] {
  const missing = asked.filter((each) => each !== null);
  return missing.length > 0 ? missing : [NO_MEANING];
}

function opened(
  context: Context,
  head: FigureHead,
  unknown: readonly Missing[],
  { terms, steps, formula, range, source, notes = [] }: FigureAccount,
): SheetExplanation {
  const { units } = context;
  const { key, title, symbol, value } = head;
  const known = new Map(terms.map((each) => [each.symbol, each]));
  return {
    name: key,
    title,
    symbol,
    formula: formula ?? formulaOf(steps),
    symbols: terms.map(({ symbol: name, meaning, value: said, as }) => {
      const { read } = measureOf(as, units);
      const written = said === null ? 'not known' : significant(read.from(said), 6);
      return { symbol: name, meaning, value: written, unit: read.name };
    }),
    worked:
      value === null
        ? null
        : steps
            .map((each, i) => workStep(each, known, units, i === steps.length - 1 ? toldIn(head, each) : null))
            .join('; ') + converted(context, head, steps),
    result: value === null ? null : readText(context, head, value),
    range,
    source,
    notes,
    unknown,
  };
}

/** A figure with a text of its own ends its sum in the sum's unit. */
function toldIn({ as, text }: FigureHead, last: Step): MeasureName {
  return text === undefined ? as : last.as;
}

/** What the last step gives, once more in the unit the reader knows. */
function converted({ units }: Context, head: FigureHead, steps: readonly Step[]): string {
  const last = steps[steps.length - 1];
  if (last === undefined || head.value === null || head.text !== undefined) return '';
  const { sum } = measureOf(last.as, units);
  const { read } = measureOf(head.as, units);
  return sum.name === read.name ? '' : ` = ${resultText(read.from(head.value), read.decimals)} ${read.name}`;
}

function readText({ units }: Context, { as, text }: FigureHead, value: number): string {
  if (text !== undefined) return text(value);
  const { read } = measureOf(as, units);
  const number = resultText(read.from(value), read.decimals);
  return withUnit(number, read.name);
}
