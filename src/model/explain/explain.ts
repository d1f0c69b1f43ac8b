/**
 * Opens the figures of a solution: formula, numbers, result, range, source. Nothing here is worked out while a plan is
 * solved; whoever shows a figure asks for its explanation then.
 */
import type { Solution, Solved, ValueName } from '../solution.ts';
import { contextOf } from './context.ts';
import type { Context } from './context.ts';
import type { Draft } from './draft.ts';
import { EXPLAINERS } from './explainers.ts';
import type { ExplainedSymbol, Explanation } from './explanation.ts';
import { measureOf } from './measure.ts';
import type { UnitSystem } from './measure.ts';
import { resultText, significant } from './numberText.ts';
import { formulaOf, withUnit, workStep } from './sum.ts';
import type { Term } from './sum.ts';

export type { ExplainedRange, ExplainedSymbol, Explanation, Missing } from './explanation.ts';

/** @param units  those of the plan where none are asked for */
export function explain(solution: Solution | Solved, name: ValueName, units?: UnitSystem): Explanation {
  return written(name, contextOf(solution, units ?? solution.facts.units));
}

/** Every figure of the solution, in the order of its table. */
export function explainAll(solution: Solution | Solved, units?: UnitSystem): readonly Explanation[] {
  const context = contextOf(solution, units ?? solution.facts.units);
  return (Object.keys(EXPLAINERS) as ValueName[]).map((name) => written(name, context));
}

function written(name: ValueName, context: Context): Explanation {
  const draft = EXPLAINERS[name](context);
  const value = context.values[name];
  return {
    name,
    title: draft.title,
    symbol: draft.symbol,
    formula: draft.formula ?? formulaOf(draft.steps),
    symbols: draft.terms.map((each) => symbolOf(each, context.units)),
    worked: value === null ? null : workedOf(draft, value, context.units),
    result: value === null ? null : readText(draft, value, context.units),
    range: draft.range,
    source: draft.source,
    notes: draft.notes ?? [],
    unknown: value === null ? draft.missing.filter((each) => each !== null) : [],
  };
}

function symbolOf({ symbol, meaning, value, as }: Term, units: UnitSystem): ExplainedSymbol {
  const { read } = measureOf(as, units);
  return {
    symbol,
    meaning,
    value: value === null ? 'not known' : significant(read.from(value), 6),
    unit: read.name,
  };
}

function workedOf({ terms, steps, as }: Draft, value: number, units: UnitSystem): string {
  const known = new Map(terms.map((each) => [each.symbol, each]));
  const lines = steps.map((each, i) => workStep(each, known, units, i === steps.length - 1 ? as : null));
  const last = steps[steps.length - 1];
  const { read } = measureOf(as, units);
  const converted = last !== undefined && measureOf(last.as, units).sum.name !== read.name;
  return lines.join('; ') + (converted ? ` = ${withUnit(resultText(read.from(value), read.decimals), read.name)}` : '');
}

function readText({ as }: Draft, value: number, units: UnitSystem): string {
  const { read } = measureOf(as, units);
  return withUnit(resultText(read.from(value), read.decimals), read.name);
}
