import { parseArgs } from 'node:util';
import { solve } from '../model/index.ts';
import { show } from '../model/units.ts';
import { orderOfWork } from '../model/work/orderOfWork.ts';
import { work as words } from '../words/en/work.ts';
import { installSheet } from '../words/en/installSheet.ts';
import { sayStep, sayStop } from '../words/sayWork.ts';
import { EXIT, Unreadable } from './exits.ts';
import { print } from './print.ts';
import { readInput } from './readInput.ts';
import { wrapped } from './wrapped.ts';

import { standing } from './standing.ts';

/** `wellcut steps PLAN.json [--json] [--replace]`: the order of the work. */
export function stepsCommand(args: readonly string[]): number {
  const { values, positionals } = parseArgs({
    args: [...args],
    allowPositionals: true,
    options: { json: { type: 'boolean', default: false }, replace: { type: 'boolean', default: false } },
  });
  const path = positionals[0];
  if (path === undefined || positionals.length > 1)
    throw new Unreadable('steps needs one plan: wellcut steps PLAN.json');
  const solution = solve(readInput(path));
  const done = orderOfWork(solution, values.replace ? 'replace' : undefined);
  if (done.kind === 'stop') {
    const said = sayStop(done, words);
    print(values.json ? `${JSON.stringify({ ...done, message: said.join(' ') }, null, 2)}\n` : `${said.join('\n')}\n`);
    return EXIT.danger;
  }
  const shown = show(solution.facts.units);
  const said = done.steps.map((step) => sayStep(step, words, shown));
  if (values.json) {
    const steps = done.steps.map((step, i) => ({ ...step, words: said[i] }));
    print(`${JSON.stringify({ kind: done.kind, there: done.there, steps }, null, 2)}\n`);
    return EXIT.good;
  }
  const { why, check, mistake } = installSheet.columns;
  const lines = said.flatMap((step, i) => [
    ...(step.phase === said[i - 1]?.phase ? [] : ['', step.phase, '']),
    `${String(i + 1).padStart(3)}  ${step.title}`,
    ...step.cautions.flatMap((each) => wrapped(`! ${each}`, 100, '       ')),
    ...step.does.flatMap((each) => wrapped(each, 100, '       ')),
    ...step.onTheHook.flatMap((each) => wrapped(each, 100, '       ')),
    ...wrapped(step.assumed, 100, '       '),
    ...wrapped(`${why}: ${step.why}`, 100, '       '),
    ...(step.check.length === 0 ? [] : wrapped(`${check}: ${step.check.join(' ')}`, 100, '       ')),
    ...wrapped(`${mistake}: ${step.mistake}`, 100, '       '),
    '',
  ]);
  print(`${[...standing(solution), ...lines.slice(1), ...wrapped(installSheet.caution, 100, '')].join('\n')}\n`);
  return EXIT.good;
}
