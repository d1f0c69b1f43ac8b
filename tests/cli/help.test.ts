/** What the command line says of itself is what it does. */
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { COMMANDS, commandHelp, nearest, wholeHelp } from '../../src/cli/help.ts';

/** The names in the options that a command takes, from its own file. */
function optionsOf(command: string): string[] {
  const source = readFileSync(new URL(`../../src/cli/${command}Command.ts`, import.meta.url), 'utf8');
  const block = /options: \{([\s\S]*?)\n? {0,4}\},?\n {2}\}\);/.exec(source)?.[1] ?? '';
  return [...block.matchAll(/(?:^|[\s,{])'?([a-z][a-z-]*)'?: \{ type/g)].map(([, name = '']) => name).sort();
}

describe.each(Object.keys(COMMANDS))('%s', (command) => {
  test('its help tells every option that it takes, and no other', () => {
    const options = optionsOf(command);
    expect(options.length).toBeGreaterThan(0);
    expect(Object.keys(COMMANDS[command]?.options ?? {}).sort()).toEqual(options);
    for (const name of options) expect(commandHelp(command)).toContain(`--${name}`);
  });

  test('its example uses it, its usage names no option that it has not, and no line is wider than a screen', () => {
    const help = COMMANDS[command]!;
    expect(help.example).toMatch(new RegExp(`^wellcut ${command} `));
    for (const [name] of help.usage.matchAll(/(?<=--)[a-z-]+/g)) expect(Object.keys(help.options)).toContain(name);
    for (const [name] of help.example.matchAll(/(?<=--)[a-z-]+/g)) expect(Object.keys(help.options)).toContain(name);
    for (const line of commandHelp(command).split('\n').slice(1)) expect(line.length).toBeLessThanOrEqual(104);
    expect(wholeHelp()).toContain(`wellcut ${command} `);
  });
});

test('a slip of the finger is answered with what was likely meant, and nonsense is not', () => {
  expect(nearest('darw', Object.keys(COMMANDS))).toBe('draw');
  expect(nearest('--paprika', ['--paper', '--view'])).toBeNull();
  expect(nearest('--papr', ['--paper', '--view'])).toBe('--paper');
  expect(nearest('x', Object.keys(COMMANDS))).toBeNull();
});
