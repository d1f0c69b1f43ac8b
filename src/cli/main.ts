#!/usr/bin/env node
import { batchCommand } from './batchCommand.ts';
import { checkCommand } from './checkCommand.ts';
import { drawCommand } from './drawCommand.ts';
import { EXIT, Unreadable, Unwritable } from './exits.ts';
import { version } from '../../package.json';
import { COMMANDS, commandHelp, nearest, wholeHelp } from './help.ts';
import { linkCommand } from './linkCommand.ts';
import { partsCommand } from './partsCommand.ts';
import { print } from './print.ts';
import { readCommand } from './readCommand.ts';
import { sheetCommand } from './sheetCommand.ts';
import { stepsCommand } from './stepsCommand.ts';
import { troubleCommand } from './troubleCommand.ts';

type Run = (args: readonly string[]) => number | Promise<number>;

const RUNS: Readonly<Record<string, Run>> = {
  draw: drawCommand,
  check: checkCommand,
  parts: partsCommand,
  steps: stepsCommand,
  trouble: troubleCommand,
  sheet: sheetCommand,
  link: linkCommand,
  read: readCommand,
  batch: batchCommand,
};

const HELP: readonly (string | undefined)[] = ['help', '--help', '-h'];

async function run([command, ...args]: readonly string[]): Promise<number> {
  if (command === undefined) {
    print(wholeHelp());
    return EXIT.unreadable;
  }
  if (command === '--version' || command === 'version') {
    print(`${version}\n`);
    return EXIT.good;
  }
  if (HELP.includes(command)) {
    print(args[0] === undefined ? wholeHelp() : commandHelp(known(args[0])));
    return EXIT.good;
  }
  const name = known(command);
  if (args.some((each) => each === '--help' || each === '-h')) {
    print(commandHelp(name));
    return EXIT.good;
  }
  const { [name]: start } = RUNS;
  if (start === undefined) throw new RangeError(`run: ${name} has a help and nothing to run`);
  try {
    return await start(args);
  } catch (fault) {
    throw unknownOption(fault, name) ?? fault;
  }
}

/** The command, or a fault that says which one was likely meant. */
function known(command: string): string {
  if (Object.hasOwn(COMMANDS, command)) return command;
  const names = Object.keys(COMMANDS);
  const meant = nearest(command, names);
  throw new Unreadable(
    `there is no command "${command}"; ${meant === null ? `use ${names.slice(0, -1).join(', ')} or ${names.at(-1)}` : `did you mean "${meant}"?`}`,
  );
}

function unknownOption(fault: unknown, command: string): Unreadable | null {
  if (!(fault instanceof Error && 'code' in fault && fault.code === 'ERR_PARSE_ARGS_UNKNOWN_OPTION')) return null;
  const typed = /'(-+[^']+)'/.exec(fault.message)?.[1] ?? '';
  const options = Object.keys(COMMANDS[command]?.options ?? {}).map((name) => `--${name}`);
  const meant = nearest(typed, options);
  return new Unreadable(
    `${command} has no option "${typed}"; ${meant === null ? `wellcut help ${command} tells which it has` : `did you mean "${meant}"?`}`,
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
