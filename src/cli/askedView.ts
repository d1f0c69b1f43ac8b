/** The view that the options of `draw` ask for. */
import {
  A3,
  A4,
  landscape,
  LEGAL,
  LETTER,
  outsideWell,
  TABLOID,
  type AskedView,
  type Paper,
  type View,
} from '../draw/index.ts';
import type { Solution } from '../model/solution.ts';
import { parseQuantity, show } from '../model/units.ts';
import { Unreadable } from './exits.ts';

const THEMES = ['light', 'dark', 'print', 'contrast', 'contrast-dark'] as const;
const PAPERS: Readonly<Record<string, Paper>> = { letter: LETTER, legal: LEGAL, tabloid: TABLOID, a4: A4, a3: A3 };
export interface Options {
  readonly view: string;
  /** Left out: print on paper, else light. */
  readonly theme: string | undefined;
  readonly paper: string | undefined;
  readonly landscape: boolean;
  /** Of the findings. */
  readonly signs: boolean;
}

export function askedView(asked: Options, units: View['units']): AskedView {
  const paper = paperOf(asked);
  const theme = themeOf(asked.theme ?? (paper === undefined ? 'light' : 'print'));
  return { sheet: sheetOf(asked.view), theme, units, caption: true, marks: asked.signs, paper };
}

function themeOf(name: string): View['theme'] {
  const theme = THEMES.find((each) => each === name);
  if (theme === undefined) throw new Unreadable(`--theme is "${name}"; use ${THEMES.join(', ')}`);
  return theme;
}

function paperOf({ paper: name, landscape: turned }: Options): Paper | undefined {
  if (name === undefined) {
    if (turned) throw new Unreadable('--landscape turns a sheet of paper; say which, for example --paper letter');
    return undefined;
  }
  const paper = Object.hasOwn(PAPERS, name.toLowerCase()) ? PAPERS[name.toLowerCase()] : undefined;
  if (paper === undefined) throw new Unreadable(`--paper is "${name}"; use ${Object.keys(PAPERS).join(', ')}`);
  return turned ? landscape(paper) : paper;
}

function sheetOf(sheet: string): View['sheet'] {
  if (sheet === 'all' || sheet === 'section' || sheet === 'top' || sheet === 'pump' || sheet === 'house') return sheet;
  if (!sheet.startsWith('at:'))
    throw new Unreadable(
      `--view is "${sheet}"; use all, section, top, pump, house or at:DEPTH, for example "at:62 ft"`,
    );
  const depth = parseQuantity(sheet.slice(3), 'length');
  if (!depth.ok) throw new Unreadable(`--view is "${sheet}": ${depth.problem}`);
  return { at: depth.si };
}

/** A close-up of bare ground shows nothing that anybody asked for. */
export function checkInWell({ sheet }: AskedView, typed: string, solution: Solution, units: View['units']): void {
  const out = typeof sheet === 'object' ? outsideWell(solution, sheet.at) : null;
  if (out === null) return;
  const { depth } = show(units);
  const [from, to] = [depth(out.from), depth(out.to)];
  throw new Unreadable(
    out.side === 'below'
      ? `--view is "${typed}", and the well ends at ${to}: use a depth of at most ${to}`
      : `--view is "${typed}", above all of the well: use a depth from ${from} to ${to}`,
  );
}
