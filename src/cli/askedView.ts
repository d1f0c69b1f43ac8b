/** The view that the options of `draw` ask for. */
import { A3, A4, landscape, LETTER, TABLOID, type Paper, type View } from '../draw/index.ts';
import { parseQuantity } from '../model/units.ts';
import { Unreadable } from './exits.ts';

const THEMES = ['light', 'dark', 'print', 'contrast', 'contrast-dark'] as const;
const PAPERS: Readonly<Record<string, Paper>> = { letter: LETTER, tabloid: TABLOID, a4: A4, a3: A3 };
const SHEETS = {
  all: { width: 1040, height: 1000 },
  section: { width: 640, height: 1000 },
  top: { width: 560, height: 640 },
  pump: { width: 560, height: 640 },
  at: { width: 560, height: 640 },
} as const;

export interface AskedView {
  readonly view: string;
  /** Left out: print on paper, else light. */
  readonly theme: string | undefined;
  readonly paper: string | undefined;
  readonly landscape: boolean;
}

export function askedView(asked: AskedView, units: 'us' | 'metric'): View {
  const paper = paperOf(asked);
  const theme = themeOf(asked.theme ?? (paper === undefined ? 'light' : 'print'));
  return { ...sheetOf(asked.view), theme, units, caption: true, ...(paper === undefined ? {} : { paper }) };
}

function themeOf(name: string): View['theme'] {
  const theme = THEMES.find((each) => each === name);
  if (theme === undefined) throw new Unreadable(`--theme is "${name}"; use ${THEMES.join(', ')}`);
  return theme;
}

function paperOf({ paper: name, landscape: turned }: AskedView): Paper | undefined {
  if (name === undefined) {
    if (turned) throw new Unreadable('--landscape turns a sheet of paper; say which, for example --paper letter');
    return undefined;
  }
  const paper = Object.hasOwn(PAPERS, name.toLowerCase()) ? PAPERS[name.toLowerCase()] : undefined;
  if (paper === undefined) throw new Unreadable(`--paper is "${name}"; use ${Object.keys(PAPERS).join(', ')}`);
  return turned ? landscape(paper) : paper;
}

function sheetOf(sheet: string): Pick<View, 'sheet' | 'width' | 'height'> {
  if (sheet === 'all' || sheet === 'section' || sheet === 'top' || sheet === 'pump') return { sheet, ...SHEETS[sheet] };
  if (!sheet.startsWith('at:'))
    throw new Unreadable(`--view is "${sheet}"; use all, section, top, pump or at:DEPTH, for example "at:62 ft"`);
  const depth = parseQuantity(sheet.slice(3), 'length');
  if (!depth.ok) throw new Unreadable(`--view is "${sheet}": ${depth.problem}`);
  return { sheet: { at: depth.si }, ...SHEETS.at };
}
