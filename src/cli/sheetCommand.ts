import { parseArgs } from 'node:util';
import { LETTER, A4 } from '../draw/index.ts';
import { solve } from '../model/index.ts';
import { installSheetHtml } from '../sheet/installSheet.ts';
import { linkOf } from '../link/planLink.ts';
import { EXIT, Unreadable } from './exits.ts';
import { addressAt } from './linkCommand.ts';
import { readInput } from './readInput.ts';
import { toPdf } from './pdf.ts';
import { writeOutput } from './writeOutput.ts';

/** `wellcut sheet PLAN.json [-o sheet.html|sheet.pdf] [--paper letter|a4] [--short] [--replace] [--date …] [--link URL]` */
export function sheetCommand(args: readonly string[]): number {
  const { values, positionals } = parseArgs({
    args: [...args],
    allowPositionals: true,
    options: {
      output: { type: 'string', short: 'o', default: '-' },
      paper: { type: 'string' },
      short: { type: 'boolean', default: false },
      replace: { type: 'boolean', default: false },
      date: { type: 'string' },
      link: { type: 'string' },
    },
  });
  const path = positionals[0];
  if (path === undefined || positionals.length > 1)
    throw new Unreadable('sheet needs one plan: wellcut sheet PLAN.json -o sheet.html');
  const { output, paper, short, replace, date, link } = values;
  const plan = readInput(path);
  const ending = /\.(\w{1,5})$/.exec(output)?.[1]?.toLowerCase();
  if (output !== '-' && ending !== 'html' && ending !== 'htm' && ending !== 'pdf')
    throw new Unreadable(`${output}: sheet writes HTML or PDF, so end it in .html or .pdf`);
  const html = installSheetHtml(solve(plan), {
    paper: paperNamed(paper ?? (plan.units === 'metric' ? 'a4' : 'letter')),
    short,
    ...(replace ? { kind: 'replace' } : {}),
    ...(date === undefined ? {} : { date }),
    ...(link === undefined ? {} : { link: addressAt(link, linkOf(plan)) }),
  });
  writeOutput(output, ending === 'pdf' ? toPdf(html) : html);
  return EXIT.good;
}

function paperNamed(name: string) {
  const paper = { letter: LETTER, a4: A4 }[name.toLowerCase()];
  if (paper === undefined) throw new Unreadable(`--paper is "${name}"; use letter or a4`);
  return paper;
}
