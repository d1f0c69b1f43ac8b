/** `wellcut read`: the text of a report as a plan. */
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeEach, expect, test, vi } from 'vitest';
import { readCommand } from '../../src/cli/readCommand.ts';
import { readPlan } from '../../src/model/plan/readPlan.ts';

const printed: string[] = [];
vi.mock('../../src/cli/print.ts', () => ({ print: (text: string) => printed.push(text) }));
const warned: string[] = [];
vi.spyOn(process.stderr, 'write').mockImplementation((text) => warned.push(String(text)) > 0);
beforeEach(() => {
  printed.splice(0);
  warned.splice(0);
});

const folder = mkdtempSync(join(tmpdir(), 'wellcut-read-'));
afterAll(() => {
  rmSync(folder, { recursive: true, force: true });
  vi.restoreAllMocks();
});
function report(text: string | Uint8Array): string {
  const path = join(folder, 'report.txt');
  writeFileSync(path, text);
  return path;
}

const REPORT = `Well depth: 350 ft
Casing: 6 in steel 0 to 41 ft
Yield less than 3 gpm by air lift
Static level 60-75 ft
Pumping level 340 ft
SWL adequate
`;

test('a report becomes a plan, and says on the side that something in it is doubtful', () => {
  expect(readCommand([report(REPORT)])).toBe(0);
  const plan: unknown = JSON.parse(printed.join(''));
  expect(readPlan(plan)).toMatchObject({ ok: true, plan: { well: { depth: '350 ft' } } });
  expect(plan).not.toHaveProperty('house');
  expect(plan).not.toHaveProperty('well.yield');
  expect(warned).toEqual(['One value is in doubt and left out: --why tells which.\n']);
});

test('why: each value with its line, what was not taken, what was not understood, what is still to ask', () => {
  expect(readCommand([report(REPORT), '--why'])).toBe(0);
  const text = printed.join('');
  expect(text).toContain('Depth of the well: 350 ft  (line 1)\n    | Well depth: 350 ft\n');
  expect(text).toMatch(
    /Static level: 75 ft {2}\(line 4\)\n {4}\| Static level 60-75 ft\n {4}\? The report gives a range/,
  );
  expect(text).toMatch(/Read, and not taken:\n {2}With air the level is where the drill stem stood/);
  expect(text).toMatch(/Not understood:\n {2}line 6\n {4}\| SWL adequate/);
  expect(text).toMatch(/Still to ask:\n(?: {2}- .+\?.*\n)+$/);
});

test('into a file', () => {
  const out = join(folder, 'plan.json');
  expect(readCommand([report(REPORT), '-o', out])).toBe(0);
  expect(printed).toEqual([]);
  expect(JSON.parse(readFileSync(out, 'utf8'))).toHaveProperty('well.depth', '350 ft');
});

test('a report without a depth is printed as far as it goes, and says what is missing', () => {
  expect(readCommand([report('Static level: 40 ft\n')])).toBe(2);
  expect(JSON.parse(printed.join(''))).toHaveProperty('water.staticLevel', '40 ft');
  expect(warned.join('')).toMatch(/no whole plan yet[\s\S]*depth/i);
});

test('what is too long, no text, or not there is refused in a line', () => {
  expect(() => readCommand([report('depth 100 ft\n'.repeat(20_000))])).toThrow('longer than a report can be');
  // PNG (third edition), 5.2: the signature of eight bytes.
  expect(() => readCommand([report(Buffer.from('89504e470d0a1a0aff', 'hex'))])).toThrow('take the text out first');
  expect(() => readCommand([])).toThrow('read needs one report');
});

test('what no plan can take is left out of it, and told', () => {
  expect(readCommand([report('Well depth 200 ft\nCasing: 77 in steel 0 to 41 ft\n')])).toBe(0);
  expect(JSON.parse(printed.join(''))).not.toHaveProperty('well.casing.size');
  expect(warned.join('')).toMatch(/^Size of the casing is left out of the plan: /m);
});
