import { statSync, type Stats } from 'node:fs';
import { parseArgs } from 'node:util';
import { draw, SPARE_ELSEWHERE, toSvg } from '../draw/index.ts';
import { solve } from '../model/index.ts';
import { askedView, checkInWell } from './askedView.ts';
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
      'no-signs': { type: 'boolean', default: false },
      date: { type: 'string' },
      alt: { type: 'boolean', default: false },
    },
  });
  const path = positionals[0];
  if (path === undefined || positionals.length > 1)
    throw new Unreadable('draw needs one plan: wellcut draw PLAN.json -o out.svg');
  const { output, view, theme, paper, landscape, date } = values;
  const plan = readInput(path);
  if (!values.alt) checkTarget(output, path);
  const dated = date === undefined ? plan : { ...plan, date };
  const units = dated.units ?? 'us';
  const asked = askedView({ view, theme, paper, landscape, signs: !values['no-signs'] }, units);
  const solution = solve(dated);
  checkInWell(asked, view, solution, units);
  if (values.alt) {
    const { title, describe } = draw(solution, asked);
    writeOutput(output, `${title}\n${describe()}\n`);
    return EXIT.good;
  }
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

/** A drawing over its own plan, or under a name that promises something else, is a slip of the fingers. */
function checkTarget(output: string, path: string): void {
  if (output === '-') return;
  const ending = /\.(\w{1,5})$/.exec(output)?.[1]?.toLowerCase();
  if (ending !== undefined && ending !== 'svg' && ending !== 'png')
    throw new Unreadable(`${output} ends in .${ending}: draw writes SVG or PNG, so end it in .svg or .png`);
  const [from, to] = [path, output].map(statusOf);
  if (path !== '-' && from?.isFile() === true && to?.dev === from.dev && to.ino === from.ino)
    throw new Unreadable(`${output} is the plan itself, and is left as it was: name another file`);
}

/** Undefined also for a name that leads nowhere: whoever writes to it tells why. */
function statusOf(path: string): Stats | undefined {
  try {
    return statSync(path, { throwIfNoEntry: false });
  } catch (fault) {
    if (fault instanceof Error && 'code' in fault) return undefined;
    throw fault;
  }
}
