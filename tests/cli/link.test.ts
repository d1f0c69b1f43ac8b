/** `wellcut link`, and a link in place of a file. */
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeEach, expect, test, vi } from 'vitest';
import { linkCommand } from '../../src/cli/linkCommand.ts';
import { readInput } from '../../src/cli/readInput.ts';
import { linkOf } from '../../src/link/planLink.ts';
import { planOf, sample } from '../plans/build.ts';

const printed: string[] = [];
vi.mock('../../src/cli/print.ts', () => ({ print: (text: string) => printed.push(text) }));
beforeEach(() => printed.splice(0));

const folder = mkdtempSync(join(tmpdir(), 'wellcut-link-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));
const PLAN = planOf(sample('slate-hollow'));
const file = join(folder, 'plan.json');
writeFileSync(file, JSON.stringify(PLAN));

test('it prints the address that opens the plan, the same as the page makes', () => {
  expect(linkCommand([file, '--base', 'https://wells.example/draw'])).toBe(0);
  expect(printed.join('')).toBe(`https://wells.example/draw#${linkOf(PLAN)}\n`);
});
test('what it prints is read in place of a file, whole or from its "#" on', () => {
  for (const link of [`https://wells.example/#${linkOf(PLAN)}`, `#${linkOf(PLAN)}`, linkOf(PLAN)])
    expect(readInput(link)).toEqual(PLAN);
});
test('a damaged link, and an address that no page has, are refused in words', () => {
  expect(() => readInput(`#${linkOf(PLAN).slice(0, -4)}`)).toThrow('a part of it is missing or changed');
  expect(() => readInput('w9.AAAA')).toThrow('newer');
  expect(() => linkCommand([file, '--base', 'ftp://wells.example'])).toThrow('is no address of a page');
  expect(() => linkCommand([])).toThrow('link needs one plan');
});
test('a file of such a name is a file', () => {
  const odd = join(folder, 'w1.json');
  writeFileSync(odd, JSON.stringify(PLAN));
  expect(readInput(odd)).toEqual(PLAN);
});
