/** A report that is being typed, as far as it can be drawn. */
import type { Plan } from '../../model/plan/schema.ts';
import { createSolver } from '../../model/solve.ts';
import type { Solution } from '../../model/solution.ts';
import { judge } from '../../model/rules/index.ts';
import { blankReport } from './reportDraft.ts';
import { planFromReport } from './reportPlan.ts';
import type { Report, ReportField } from './report.ts';

export interface SoFar {
  readonly plan: Plan;
  /** Lines that the drawing leaves out until they can be read. */
  readonly leftOut: readonly (ReportField | 'also')[];
}

/** Lines that may stay empty and are asked for once, when the well is drawn. */
const ASKED = ['testDrawdown', 'testFlow'];

/** Null while there is no depth. Lines that cannot be read yet are left out; what they say stands in none of the figures. */
export function planSoFar(report: Report): SoFar | null {
  const blank = blankReport(report.units);
  const leftOut: (ReportField | 'also')[] = [];
  let tried = report;
  for (;;) {
    const reading = planFromReport(tried, ASKED);
    if (reading.ok) return { plan: reading.plan, leftOut };
    const fields = Object.keys(reading.problems) as (ReportField | 'also')[];
    // What can be read in no other way makes no drawing: the depth alone, or the same line again.
    if (fields.includes('depth') || fields.every((field) => leftOut.includes(field))) return null;
    leftOut.push(...fields.filter((field) => !leftOut.includes(field)));
    tried = { ...tried, ...Object.fromEntries(fields.map((field) => [field, blank[field]])) };
    if (fields.some((field) => field === 'testDrawdown' || field === 'pumpingLevel'))
      tried = { ...tried, test: 'unknown' };
  }
}

/** Solves one plan after another, and remembers what did not change. */
export function solverSoFar(): (plan: Plan) => Solution {
  const solver = createSolver();
  return (plan) => {
    const placed = solver.place(plan);
    return { ...placed, ...judge(placed) };
  };
}
