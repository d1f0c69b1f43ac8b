/** What a caller asks of a drawing, made whole: what is left out has a default, and what nobody could draw is refused. */
import type { Metres } from '../model/si.ts';
import type { Solution } from '../model/solution.ts';
import { show } from '../model/units.ts';
import { type Paper, drawable } from './paper.ts';
import { drawnDepths } from './section/frame.ts';
import { THEMES } from './theme.ts';
import type { DepthSpan, Sheet, View } from './view.ts';

/** What may be left out of a view: all of it. */
export type AskedView = { readonly [Name in keyof View]?: View[Name] | undefined };

/** px of a picture whose size nobody names: as large as is read at ease on a screen. */
const SIZES = {
  all: { width: 1040, height: 1000 },
  section: { width: 640, height: 1000 },
  top: { width: 560, height: 640 },
  pump: { width: 560, height: 640 },
  house: { width: 600, height: 760 },
  at: { width: 560, height: 640 },
} as const;

/** px: more than any sheet, roll or wall of screens has; what is larger takes more than some seconds. */
const MOST_PX = 100_000;
/** mm: longer than any roll is cut. */
const MOST_MM = 5_000;
/** No face comes near to this many times the width of the shipped one. */
const MOST_SPARE = 10;

/** @throws RangeError that says what cannot be drawn, and what can */
export function wholeView(solution: Solution, asked: AskedView = {}): View {
  const { sheet = 'all', units = 'us', theme = 'light', ...rest } = withoutGaps(asked);
  oneOf('units', units, ['us', 'metric']);
  oneOf('theme', theme, Object.keys(THEMES));
  const usual = SIZES[checkedSheet(sheet, solution, units)];
  const view: View = { ...usual, ...rest, sheet, units, theme };
  if (view.paper === undefined) {
    between('width', view.width, [1, MOST_PX], `a number of px; without one it is ${usual.width}`);
    between('height', view.height, [1, MOST_PX], `a number of px; without one it is ${usual.height}`);
  } else checkPaper(view.paper);
  if (view.spare !== undefined) between('spare', view.spare, [0.1, MOST_SPARE], 'a factor; without one it is 1');
  if (view.window !== undefined) checkSpan('window', view.window);
  if (view.lens !== undefined) checkSpan('lens', view.lens);
  if (view.held !== undefined) finite('held.start', view.held.start, 'a depth in metres');
  for (const [name, value] of Object.entries(view.moment ?? {}))
    if (typeof value !== 'boolean') finite(`moment.${name}`, value, 'a number');
  return view;
}

/** A key without a value asks for nothing. */
function withoutGaps(asked: AskedView): Partial<View> {
  return Object.fromEntries(Object.entries(asked).filter(([, value]) => value !== undefined));
}

const NAMED: readonly unknown[] = ['all', 'section', 'top', 'pump', 'house'];

function checkedSheet(sheet: unknown, solution: Solution, units: View['units']): keyof typeof SIZES {
  if (NAMED.includes(sheet)) return sheet as Exclude<Sheet, object>;
  if (typeof sheet !== 'object' || sheet === null || !('at' in sheet))
    refuse('sheet', sheet, 'use "all", "section", "top", "pump", "house", or { at: a depth in metres }');
  finite('sheet.at', sheet.at, 'a depth in metres below the ground');
  const out = outsideWell(solution, sheet.at);
  if (out === null) return 'at';
  const { depth } = show(units);
  const bounds = `use a depth from ${metres(out.from)} to ${metres(out.to)}`;
  const where =
    out.side === 'below'
      ? `below the well, which ends at ${metres(out.to)} (${depth(out.to)})`
      : `above all of the well, whose drawing begins at ${metres(out.from)} (${depth(out.from)})`;
  throw new RangeError(`draw: view.sheet.at is ${metres(sheet.at)} (${depth(sheet.at)}), ${where}; ${bounds}`);
}

/** Where a close-up would show bare ground or the sky alone, and which depths it can stand at; null where it shows some of the well. */
export function outsideWell(
  solution: Solution,
  at: Metres,
): { readonly side: 'above' | 'below'; readonly from: Metres; readonly to: Metres } | null {
  const { highest: from, deepest: to } = drawnDepths(solution);
  if (at < from) return { side: 'above', from, to };
  return at > to ? { side: 'below', from, to } : null;
}

function checkPaper(paper: Paper): void {
  for (const name of ['width', 'height'] as const)
    between(`paper.${name}`, paper[name], [1, MOST_MM], 'a number of millimetres');
  if (paper.margin !== undefined) between('paper.margin', paper.margin, [0, MOST_MM], 'a number of millimetres');
  const { width, height } = drawable(paper);
  if (width <= 0 || height <= 0) refuse('paper.margin', paper.margin, 'which leaves no room; make the sheet larger');
}

function checkSpan(name: string, span: DepthSpan): void {
  finite(`${name}.topDepth`, span.topDepth, 'a depth in metres');
  finite(`${name}.bottomDepth`, span.bottomDepth, 'a depth in metres');
  if (span.topDepth > span.bottomDepth)
    refuse(`${name}.bottomDepth`, span.bottomDepth, `it may not be above ${name}.topDepth, ${span.topDepth}`);
}

function oneOf(name: string, value: unknown, known: readonly string[]): void {
  if (typeof value !== 'string' || !known.includes(value))
    refuse(name, value, `use ${known.map((each) => `"${each}"`).join(', ')}`);
}

function finite(name: string, value: unknown, what: string): asserts value is number {
  if (typeof value !== 'number' || !Number.isFinite(value)) refuse(name, value, `it must be ${what}`);
}

function between(name: string, value: unknown, [least, most]: readonly [number, number], what: string): void {
  if (typeof value !== 'number' || !(value >= least && value <= most))
    refuse(name, value, `it must be from ${least} to ${most}, ${what}`);
}

function refuse(name: string, value: unknown, mend: string): never {
  const met =
    typeof value === 'string' ? `"${value.slice(0, 40)}"` : typeof value === 'object' ? kindOf(value) : String(value);
  throw new RangeError(`draw: view.${name} is ${met}; ${mend}`);
}

function kindOf(value: object | null): string {
  return value === null ? 'null' : Array.isArray(value) ? 'a list' : `{ ${Object.keys(value).slice(0, 5).join(', ')} }`;
}

function metres(depth: Metres): string {
  return `${Math.round(depth * 100) / 100} m`;
}
