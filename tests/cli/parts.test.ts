/** `wellcut parts`, as a person and as a program read it. */
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeEach, describe, expect, test, vi } from 'vitest';
import { partsCommand } from '../../src/cli/partsCommand.ts';
import { standing } from '../../src/cli/standing.ts';
import { solve } from '../../src/model/index.ts';
import { byDepth, partsList } from '../../src/model/parts/partsList.ts';
import { show } from '../../src/model/units.ts';
import { partsListWords } from '../../src/words/en/partsList.ts';
import { partsCsv } from '../../src/words/partsCsv.ts';
import { partsText } from '../../src/words/partsText.ts';
import { planOf, sample, SAMPLES } from '../plans/build.ts';

const printed: string[] = [];
vi.mock('../../src/cli/print.ts', () => ({ print: (text: string) => printed.push(text) }));
beforeEach(() => printed.splice(0));

const folder = mkdtempSync(join(tmpdir(), 'wellcut-parts-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

function parts(plan: unknown, ...options: string[]): { text: string; status: number } {
  const path = join(folder, 'plan.json');
  writeFileSync(path, JSON.stringify(plan));
  const status = partsCommand([path, ...options]);
  return { text: printed.join(''), status };
}

/** RFC 4180, section 2: quoted fields, quotes doubled, lines that end in CR LF. */
function readCsv(text: string): string[][] {
  const rows: string[][] = [[]];
  for (const [, quoted, plain, end] of text.matchAll(/(?:"((?:[^"]|"")*)"|([^",\r\n]*))(,|\r\n)/g)) {
    rows.at(-1)!.push(quoted === undefined ? plain! : quoted.replaceAll('""', '"'));
    if (end === '\r\n') rows.push([]);
  }
  return rows.slice(0, -1);
}

describe('what is sold under another name', () => {
  const tamarack = sample('tamarack-ridge') as { pump: object; dropPipe: object; house: object };

  test('no bushing widens: from a small outlet to a larger pipe goes a coupling with a nipple', () => {
    const wider = {
      ...tamarack,
      pump: { ...tamarack.pump, outlet: '1 in' },
      dropPipe: { material: 'PE', size: '1-1/4 in' },
    };
    const { text } = parts(wider);
    expect(text).toContain('Reducing coupling with nipple, 1 in outer thread (NPT); 1-1/4 in inner thread (NPT)');
    expect(text).not.toContain('Reducing bushing');
    printed.splice(0);
    expect(parts(tamarack).text).not.toContain('Reducing coupling');
  });

  test('a drive has a sensor in the place of the switch', () => {
    const { text } = parts({ ...tamarack, house: { ...tamarack.house, control: 'variable speed' } });
    expect(text).toContain('1 × Pressure sensor');
    expect(text).not.toContain('Pressure switch');
  });
});

describe('as text', () => {
  test('each group has its head, each line how many, what, its ends and its length', () => {
    const { text, status } = parts(sample('tamarack-ridge'));
    expect(status).toBe(0);
    for (const head of ['In the well', 'Line to the house', 'Wires', 'In the house', 'Used up', 'Spares', 'Tools'])
      expect(text).toContain(`\n${head}\n`);
    expect(text).toContain('2 × Insert fitting, barb for 1 in pipe; 1 in outer thread (NPT), stainless steel');
    expect(text).toMatch(/1 × Drop pipe, 1 in, PE; cut to 171 ft 5 in, buy 175 ft/);
    expect(Math.max(...text.split('\n').map((line) => line.length))).toBeLessThanOrEqual(140);
  });
  test('a sentence a line, so that a message breaks none but by itself', () => {
    const lines = parts(sample('tamarack-ridge')).text.split('\n');
    expect(lines).toContain('    For drinking water.');
    expect(lines.filter((line) => line.startsWith(' ') && /[^.]$/.test(line))).toEqual([]);
  });
  test('a metric reader gets no feet and no pounds', () => {
    const { text } = parts({ ...sample('tamarack-ridge'), units: 'metric' });
    expect(text).not.toMatch(/\d ft\b|\d lb\b|\d psi\b|\d gpm\b|\d gal\b/);
  });
  test('by depth it reads from the top down, under one head', () => {
    const { text } = parts(sample('tamarack-ridge'), '--by', 'depth');
    expect(text).not.toContain('\nIn the well\n');
    expect(text.indexOf('Well cap')).toBeLessThan(text.indexOf('Check valve'));
    expect(text).not.toMatch(/ -\d/);
    // What has no depth comes last, under the heads that it has by kind.
    expect(text.indexOf('\nTools\n')).toBeGreaterThan(text.indexOf('\nFrom the top down\n'));
  });
});

test('as values that a spreadsheet opens: a row a line, as many fields in each, and no formula', () => {
  const rows = readCsv(parts(sample('willow-dale'), '--csv').text);
  expect(new Set(rows.map(({ length }) => length)).size).toBe(1);
  expect(rows[0]).toEqual(expect.arrayContaining(['Number', 'Part', 'Length', 'To buy']));
  expect(rows.length).toBeGreaterThan(30);
  for (const field of rows.flat()) expect(field).not.toMatch(/^[=+\-@]/);
});

test('what a shop asks for stands with the size: of a clamp the pipe, of a nipple its threads, of a cable its area', () => {
  const [head = [], ...rows] = readCsv(parts(sample('willow-dale'), '--csv').text);
  const sizes = (name: string): unknown[] =>
    rows.filter((row) => row[head.indexOf('Part')] === name).map((row) => row[head.indexOf('Size and ends')]);
  expect(sizes('Hose clamp, all stainless')).toEqual(['for a pipe of 40 mm outside', 'for a pipe of 40 mm outside']);
  expect(sizes('Rise into the house')).toEqual(['1-1/4 in outer thread']);
  expect(sizes('Submersible pump cable')).toEqual(['4 mm²']);
});

test('a spreadsheet that is opened by a double click reads its letters', () => {
  const { text } = parts(sample('willow-dale'), '--csv');
  // Unicode Standard 16.0, section 23.8: the byte order mark, which tells UTF-8 from other encodings.
  expect(text.codePointAt(0)).toBe(0xfeff);
  expect(text).toContain('’');
});

test.each(SAMPLES)('%s: text and values are those that the page hands out', (name) => {
  for (const [by, work] of [
    ['kind', 'new'],
    ['depth', 'replace'],
  ] as const) {
    const plan = planOf(sample(name));
    const list = partsList(solve(plan), work);
    if (list.kind === 'stop') throw new Error('stopped');
    const lines = by === 'depth' ? byDepth(list.lines) : list.lines;
    const shown = show(plan.units ?? 'us');
    const asked = ['--by', by, ...(work === 'replace' ? ['--replace'] : [])];
    printed.splice(0);
    // Before the list stands how the well stands: a list alone would hide a danger.
    const before = standing(solve(plan)).join('\n');
    const said = partsText({ title: plan.title, lines, by }, partsListWords, shown);
    expect(parts(sample(name), ...asked).text).toBe(`${before}\n${said}`);
    printed.splice(0);
    expect(parts(sample(name), '--csv', ...asked).text).toBe(partsCsv(lines, partsListWords, shown));
  }
});

test('for programs in SI, with the pieces that each line stands for', () => {
  const report = JSON.parse(parts(sample('tamarack-ridge'), '--json').text) as { parts: Record<string, unknown>[] };
  const pipe = report.parts.find(({ what }) => what === 'dropPipe')!;
  // 171 ft 5 in, to the inch, as the text has it.
  expect(pipe['cuts']).toEqual([expect.closeTo((171 + 5 / 12) * 0.3048, 1)]);
  expect(pipe['pieces']).toEqual(['dropPipe']);
});

test('a danger stands before the list', () => {
  const plan = { ...sample('tamarack-ridge'), top: { kind: 'pitless', depth: '3 ft' } };
  const { text } = parts(plan);
  expect(text).toMatch(/^In all .*danger/);
  expect(text.indexOf('Danger: ')).toBeLessThan(text.indexOf('Parts: '));
});

test('in place of an old pump nothing is bought that stands there', () => {
  const { text } = parts(sample('tamarack-ridge'), '--replace');
  expect(text).not.toContain('Line to the house');
  expect(text).toContain('Drop pipe');
});

test('of a flowing well it lists nothing and says who decides', () => {
  const plan = sample('tamarack-ridge');
  const { text, status } = parts({ ...plan, water: { ...(plan['water'] as object), staticLevel: '-2 ft' } });
  expect(text).toMatch(/licensed contractor/);
  expect(status).toBe(1);
});

test('what cannot be asked is refused in a sentence', () => {
  expect(() => parts(sample('tamarack-ridge'), '--csv', '--json')).toThrow('choose one');
  expect(() => parts(sample('tamarack-ridge'), '--by', 'price')).toThrow('use kind or depth');
});

describe('the joints', () => {
  test('from the pump to the tank, each told once, with what is wrong with it', () => {
    const sound = parts(sample('tamarack-ridge'), '--joints').text;
    expect(sound).toContain('1 × Drop pipe, over a 1 in barb, to Insert fitting, barb for 1 in pipe');
    expect(sound.indexOf('Nipple, 1 in outer thread')).toBeLessThan(sound.indexOf('Tank tee, 1 in inner thread'));
    expect(sound).not.toMatch(/^ {4}(?:Danger|Warning)/m);
    printed.splice(0);
    const plan = sample('tamarack-ridge') as { string?: object };
    const one = parts({ ...plan, string: { ...plan.string, clampsPerJoint: 1 } }, '--joints').text;
    expect(one.match(/^ {4}Danger: /gm)).toHaveLength(2);
  });
  test('are in the JSON too', () => {
    const { joints } = JSON.parse(parts(sample('tamarack-ridge'), '--json').text) as { joints: { from: string }[] };
    expect(joints[0]?.from).toBe('Pump, 1-1/4 in inner thread (NPT)');
  });
  test('go with no other form', () => {
    expect(() => parts(sample('tamarack-ridge'), '--joints', '--csv')).toThrow(/choose one of them/);
    expect(() => parts(sample('tamarack-ridge'), '--new', '--replace')).toThrow(/choose one of them/);
  });
});
