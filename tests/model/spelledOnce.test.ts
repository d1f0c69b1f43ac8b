/** What is known once is worked out in one file: a second spelling is a second truth, and one day another one. */
import { readdirSync, readFileSync } from 'node:fs';
import { join, relative } from 'node:path';
import { describe, expect, test } from 'vitest';

const SRC = join(import.meta.dirname, '../../src');

const files = readdirSync(SRC, { recursive: true, withFileTypes: true })
  .filter((entry) => entry.isFile() && /\.(ts|svelte)$/.test(entry.name))
  .map((entry) => join(entry.parentPath, entry.name))
  .map((path) => ({ path: relative(SRC, path), text: withoutComments(readFileSync(path, 'utf8')) }));

/** Comments may tell a formula that the code asks for elsewhere. */
function withoutComments(text: string): string {
  return text.replaceAll(/\/\*[\s\S]*?\*\/|\/\/.*$/gm, '');
}

function spelledIn(pattern: RegExp): readonly string[] {
  return files.filter(({ text }) => pattern.test(text)).map(({ path }) => path);
}

describe('is spelled in one file alone', () => {
  test.each([
    ['the depth of the pump’s discharge', /[-+] (?:[\w.]+\.)?intakeToDischarge\b/, ['model/string/pumpDepths.ts']],
    [
      'the depth of the motor’s lower end',
      /[-+] (?:[\w.]+\.)?intakeToMotorBottom\b(?! \/ 2)/,
      ['model/string/pumpDepths.ts'],
    ],
    ['the ring that is drilled round a casing', /\bANNULUS\b.* = /, ['model/annulus.ts']],
    ['where the string hangs from', /top\.depth : -(?:[\w.]+\.)?casingHeight/, ['model/string/topDepths.ts']],
  ])('%s', (_, pattern, where) => {
    expect(spelledIn(pattern)).toEqual(where);
  });
});

/** A factor to SI by its digits. */
const FACTOR =
  /(?<![\d.])(?:0\.3048|0\.0254|4\.448\d*|0\.4535\d*|(?:0\.00)?3\.785\d+|0\.0037854\d*|16\.018\d*|1\.7307\d*|6894\.\d+)/;

describe('a unit is converted in src/model/units alone', () => {
  test('its factor to SI stands nowhere else', () => {
    expect(spelledIn(FACTOR)).toEqual(['model/units/factors.ts']);
  });
  test('and so do the degrees of Fahrenheit', () => {
    expect(spelledIn(/\* 1\.8 \+ 32|- 32\) [*/] /)).toEqual([]);
  });
});
