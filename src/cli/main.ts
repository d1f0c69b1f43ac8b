#!/usr/bin/env node
import { checkCommand } from './checkCommand.ts';
import { drawCommand } from './drawCommand.ts';
import { EXIT, Unreadable, Unwritable } from './exits.ts';
import { linkCommand } from './linkCommand.ts';
import { partsCommand } from './partsCommand.ts';
import { print } from './print.ts';
import { readCommand } from './readCommand.ts';
import { sheetCommand } from './sheetCommand.ts';
import { stepsCommand } from './stepsCommand.ts';
import { troubleCommand } from './troubleCommand.ts';

const HELP = `wellcut draw  PLAN.json [-o out.svg|out.png] [options]
wellcut check PLAN.json [--json] [--choose]
wellcut parts PLAN.json [--joints | --csv | --json] [--by kind|depth] [--new | --replace]
wellcut steps PLAN.json [--json] [--replace]
wellcut trouble PLAN.json [--symptom NAME] [--json]
wellcut sheet PLAN.json [-o sheet.html|sheet.pdf] [--paper letter|a4] [--short] [--replace] [--date …] [--link URL]
wellcut link  PLAN.json [--base URL]
wellcut read  REPORT.txt [-o plan.json] [--why]

"-" is standard input or output. draw writes to standard output without -o.

--view   all (default), section, top, pump, house or at:DEPTH, for example "at:6 ft"
--theme  light, dark, print, contrast (black on white) or contrast-dark (white on black);
         print on paper, otherwise light
--paper  letter, legal, tabloid, a4 or a3: the depths of the section to a standard scale that the title block
         states, when printed at 100 %. --landscape turns the sheet. A PNG of paper has 300 dots an inch
--date   printed in the title block, for example 2026-05-03
--no-signs  leaves the signs of the findings out, and what they colour; the title block still counts them

--choose tells which pump, drop pipe and wire, and which tank, would do in this well, the best first, and why;
         with --json as "choose"

parts lists all that the plan takes: each piece with its size and ends, what is cut to which length, what it has
to fit, then what is used up, spares and tools; --replace leaves out what stands when an old pump is replaced, --new leaves
out nothing. --joints tells every joint from the pump to the tank: both ends, how tight, what hangs on it, what is wrong
with it. It exits 1 where the work is not for an owner.

steps tells the order of the work, step by step; sheet puts drawing, settings, findings, parts, steps with boxes, joints
and cards on one sheet to print; --link and the address of a page print a code for a camera, which opens the plan there.
A PDF is made by a Chromium that is there (CHROMIUM_PATH names one).

link prints the whole well as an address; without --base, what stands behind its "#". Every command takes such a link in
place of a file.

read takes the text of a driller's report, a log or a letter, and prints the plan that it makes: what stands there, and
nothing else. --why prints each value with the line that it came from, what is doubtful, what was not taken and why, what
was not understood, and what is still to ask.

trouble lists what can be the matter with a well in use; with --symptom, for example no-water, it tells what to look at
first, what each look tells, and what this well's own figures say of each cause.

check exits 0 without a danger, 1 with one. Both exit 2 when the plan or the command cannot be read, 3 for a mistake
of ours, 4 when what was made cannot be written.
A planning aid: local code and licensed practice decide.
`;

async function run([command, ...args]: readonly string[]): Promise<number> {
  if (command === 'draw') return drawCommand(args);
  if (command === 'check') return checkCommand(args);
  if (command === 'parts') return partsCommand(args);
  if (command === 'steps') return stepsCommand(args);
  if (command === 'trouble') return troubleCommand(args);
  if (command === 'sheet') return sheetCommand(args);
  if (command === 'link') return linkCommand(args);
  if (command === 'read') return readCommand(args);
  if (command === undefined || command === 'help' || command === '--help' || command === '-h') {
    print(HELP);
    return command === undefined ? EXIT.unreadable : EXIT.good;
  }
  throw new Unreadable(
    `there is no command "${command}"; use draw, check, parts, steps, trouble, sheet, link or read\n\n${HELP}`,
  );
}

function explain(fault: unknown): number {
  const code = fault instanceof Error && 'code' in fault ? String(fault.code) : '';
  if (fault instanceof Unreadable || code.startsWith('ERR_PARSE_ARGS')) {
    process.stderr.write(`${(fault as Error).message}\n`);
    return EXIT.unreadable;
  }
  if (fault instanceof Unwritable) {
    process.stderr.write(`${fault.message}\n`);
    return EXIT.unwritable;
  }
  process.stderr.write(
    `A mistake of ours; the plan is not to blame. Please report it with the plan.\n${fault instanceof Error ? (fault.stack ?? fault.message) : String(fault)}\n`,
  );
  return EXIT.ourFault;
}

// Whoever read the messages has gone: there is nobody left to tell.
process.stderr.on('error', () => undefined);
process.exitCode = await run(process.argv.slice(2)).catch(explain);
