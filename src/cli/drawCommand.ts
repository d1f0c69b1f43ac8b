import { parseArgs } from 'node:util';
import { draw, SPARE_ELSEWHERE, toSvg } from '../draw/index.ts';
import { solve } from '../model/index.ts';
import { askedView } from './askedView.ts';
import { EXIT, Unreadable } from './exits.ts';
import { readInput } from './readInput.ts';
import { writeOutput } from './writeOutput.ts';

/** `wellcut draw PLAN.json [-o out.svg|out.png] [--view …] [--theme …] [--paper …] …`: exits 0 even with dangers. */
export async function drawCommand(args: readonly string[]): Promise<number> {
  const { values, positionals } = parseArgs({
    args: [...args],
    allowPositionals: true,
    options: {
      output: { type: 'string', short: 'o', default: '-' },
      view: { type: 'string', default: 'all' },
      theme: { type: 'string' },
      paper: { type: 'string' },
      landscape: { type: 'boolean', default: false },
      date: { type: 'string' },
    },
  });
  const path = positionals[0];
  if (path === undefined || positionals.length > 1)
    throw new Unreadable('draw needs one plan: wellcut draw PLAN.json -o out.svg');
  const { output, view, theme, paper, landscape, date } = values;
  const plan = readInput(path);
  const dated = date === undefined ? plan : { ...plan, date };
  const asked = askedView({ view, theme, paper, landscape }, dated.units ?? 'us');
  const solution = solve(dated);
  if (output.toLowerCase().endsWith('.png')) {
    const svg = toSvg(draw(solution, asked));
    const { toPng } = await import('./png.ts');
    writeOutput(output, await toPng(svg, paper === undefined ? 'screen' : 'paper'));
  } else {
    // Who opens the file may not have the face.
    writeOutput(output, `${toSvg(draw(solution, { ...asked, spare: SPARE_ELSEWHERE }))}\n`);
  }
  return EXIT.good;
}
