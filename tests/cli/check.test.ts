/** `wellcut check` of one plan and of many. */
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeEach, expect, test, vi } from 'vitest';
import { checkCommand, reportOf } from '../../src/cli/checkCommand.ts';
import { solve } from '../../src/model/index.ts';
import { planOf, sample } from '../plans/build.ts';

const printed: string[] = [];
vi.mock('../../src/cli/print.ts', () => ({ print: (text: string) => printed.push(text) }));
const warned: string[] = [];
vi.spyOn(process.stderr, 'write').mockImplementation((text) => warned.push(String(text)) > 0);
beforeEach(() => {
  printed.splice(0);
  warned.splice(0);
});
const folder = mkdtempSync(join(tmpdir(), 'wellcut-check-'));
afterAll(() => {
  rmSync(folder, { recursive: true, force: true });
  vi.restoreAllMocks();
});
function file(name: string, plan: unknown): string {
  const path = join(folder, name);
  writeFileSync(path, JSON.stringify(plan));
  return path;
}
const sound = file('sound.json', sample('tamarack-ridge'));
const bad = file('bad.json', { ...sample('tamarack-ridge'), top: { kind: 'pitless', depth: '3 ft' } });
const none = file('none.json', { format: 'wellcut-plan/1' });

test('a line a plan, the worst of them first, and the exit is that of the worst plan', () => {
  expect(checkCommand([sound, bad, '--brief'])).toBe(1);
  const [first = '', second = '', ...more] = printed.join('').trimEnd().split('\n');
  expect(more).toEqual([]);
  expect(first).toMatch(/sound\.json: 1 note.*; .+ \(.+\) \[PR-\d+\]$/);
  expect(second).toMatch(/bad\.json: \d+ dangers?.*; .+\[PR-\d+\]$/);
  printed.splice(0);
  expect(checkCommand([sound, '--brief'])).toBe(0);
});

test('a plan that cannot be read is told, and the others are checked all the same', () => {
  expect(checkCommand([none, sound, '--brief'])).toBe(2);
  expect(printed.join('')).toMatch(/sound\.json: /);
  expect(warned.join('')).toMatch(/none\.json is not a plan yet/);
});

test('for programs each plan is a line that holds the report of one', () => {
  checkCommand([sound, bad, '--json']);
  const lines = printed.join('').trimEnd().split('\n');
  expect(lines).toHaveLength(2);
  const { file: path, ...report } = JSON.parse(lines[0] ?? '') as { file: string };
  expect(path).toBe(sound);
  expect(report).toEqual(JSON.parse(JSON.stringify(reportOf(solve(planOf(sample('tamarack-ridge')))))));
});

test('one plan is told as before, and several with their names over them', () => {
  checkCommand([sound]);
  const alone = printed.join('');
  expect(alone).not.toContain('==');
  printed.splice(0);
  checkCommand([sound, bad]);
  expect(printed.join('')).toContain(`== ${sound}\n${alone}`);
});

test('what cannot go together is refused', () => {
  expect(() => checkCommand([sound, '--brief', '--json'])).toThrow('--brief and --json: choose one of them');
  expect(() => checkCommand([])).toThrow('check needs a plan');
});
