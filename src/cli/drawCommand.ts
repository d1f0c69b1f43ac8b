import { parseArgs } from 'node:util';
import { draw, toSvg, type View } from '../draw/index.ts';
import { solve } from '../model/index.ts';
import { parseQuantity } from '../model/units.ts';
import { EXIT, Unreadable } from './exits.ts';
import { readInput } from './readInput.ts';
import { writeOutput } from './writeOutput.ts';

const THEMES = ['light', 'dark', 'print'] as const;
const SHEETS = {
  all: { width: 1040, height: 1000 },
  section: { width: 640, height: 1000 },
  top: { width: 560, height: 640 },
  pump: { width: 560, height: 640 },
  at: { width: 560, height: 640 },
} as const;

/** `wellcut draw PLAN.json [-o out.svg|out.png] [--view …] [--theme …] [--date …]`: exits 0 even with dangers. */
export async function drawCommand(args: readonly string[]): Promise<number> {
  const { values, positionals } = parseArgs({
    args: [...args],
    allowPositionals: true,
    options: {
      output: { type: 'string', short: 'o', default: '-' },
      view: { type: 'string', default: 'all' },
      theme: { type: 'string', default: 'light' },
      date: { type: 'string' },
    },
  });
  const path = positionals[0];
  if (path === undefined || positionals.length > 1)
    throw new Unreadable('draw needs one plan: wellcut draw PLAN.json -o out.svg');
  const plan = readInput(path);
  const dated = values.date === undefined ? plan : { ...plan, date: values.date };
  const view = viewOf(values.view, values.theme, dated.units ?? 'us');
  const svg = toSvg(draw(solve(dated), view));
  if (values.output.toLowerCase().endsWith('.png')) {
    const { toPng } = await import('./png.ts');
    writeOutput(values.output, await toPng(svg));
  } else {
    writeOutput(values.output, `${svg}\n`);
  }
  return EXIT.good;
}

function viewOf(sheet: string, theme: string, units: 'us' | 'metric'): View {
  const chosen = THEMES.find((each) => each === theme);
  if (!chosen) throw new Unreadable(`--theme is "${theme}"; use ${THEMES.join(', ')}`);
  const common = { theme: chosen, units, caption: true };
  if (sheet === 'all' || sheet === 'section' || sheet === 'top' || sheet === 'pump')
    return { ...common, sheet, ...SHEETS[sheet] };
  if (sheet.startsWith('at:')) {
    const depth = parseQuantity(sheet.slice(3), 'length');
    if (depth.ok) return { ...common, sheet: { at: depth.si }, ...SHEETS.at };
    throw new Unreadable(`--view is "${sheet}": ${depth.problem}`);
  }
  throw new Unreadable(`--view is "${sheet}"; use all, section, top, pump or at:DEPTH, for example "at:62 ft"`);
}
