/** The sample wells, solved, with single fields changed; and a frame to draw them in. */
import { readFileSync } from 'node:fs';
import { withValue } from '../../../src/model/plan/editPlan.ts';
import { readPlanText } from '../../../src/model/plan/readPlan.ts';
import { solve } from '../../../src/model/solve.ts';
import type { Solution } from '../../../src/model/solution.ts';
import type { DetailFrame } from '../../../src/draw/details/contract.ts';
import { THEMES } from '../../../src/draw/theme.ts';
import { measureWith } from '../../../src/draw/type/measure.ts';
import { short } from '../../../src/words/en/short.ts';

export const WELLS = ['tamarack-ridge', 'heron-flats', 'willow-dale', 'palo-amargo', 'slate-hollow'] as const;
export type Well = (typeof WELLS)[number];

export function well(name: Well, changes: Readonly<Record<string, unknown>> = {}): Solution {
  const reading = readPlanText(readFileSync(new URL(`../../../static/samples/${name}.json`, import.meta.url), 'utf8'));
  if (!reading.ok) throw new Error(`${name}: ${JSON.stringify(reading.problems)}`);
  const plan = Object.entries(changes).reduce(
    (changed, [path, value]) => withValue(changed, path, value),
    reading.plan,
  );
  return solve(plan);
}

export function frame(view: 'A' | 'B' | 'C' | 'D', changes: Partial<DetailFrame> = {}): DetailFrame {
  return {
    view,
    x: 640,
    y: 72,
    width: 345,
    height: 400,
    units: 'us',
    words: short,
    theme: 'light',
    ink: THEMES.light,
    type: measureWith(1),
    ...changes,
  };
}

/** Pixel of a depth in a drawn detail. */
export const yIn =
  ({ y }: DetailFrame, scene: { readonly topDepth: number; readonly k: number }) =>
  (depth: number): number =>
    y + (depth - scene.topDepth) * scene.k;
