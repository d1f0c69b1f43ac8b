/** `wellcut batch`, run as a process from what the build makes; and how a table becomes plans. */
import { spawn, spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'vite';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { cellsOf, columnsOf, planOfRow } from '../../src/cli/batch/csvPlan.ts';
import { recordsOf } from '../../src/cli/batch/recordsOf.ts';
import { MOST_BYTES } from '../../src/files/textOfPlan.ts';
import { solve } from '../../src/model/index.ts';
import { planOf, sample } from '../plans/build.ts';

const root = fileURLToPath(new URL('../..', import.meta.url));
const folder = mkdtempSync(join(tmpdir(), 'wellcut-batch-'));
const built = join(root, 'dist/node-test-batch');
const program = join(built, 'wellcut.js');

beforeAll(async () => {
  await build({ root, configFile: join(root, 'vite.cli.config.ts'), logLevel: 'error', build: { outDir: built } });
}, 60_000);
afterAll(() => [folder, built].forEach((each) => rmSync(each, { recursive: true, force: true })));

const batch = (args: string[], input: string | Buffer) =>
  spawnSync(process.execPath, [program, 'batch', ...args], { input, encoding: 'utf8', maxBuffer: 1e9 });
const sound = sample('tamarack-ridge');
const dangerous = { ...sound, top: { kind: 'pitless', depth: '3 ft' } };
const lines = (...plans: unknown[]) => plans.map((each) => `${JSON.stringify(each)}\n`).join('');
const resultsOf = (printed: string) =>
  printed
    .trimEnd()
    .split('\n')
    .map((each) => JSON.parse(each) as Record<string, unknown>);

describe('batch', () => {
  test('a plan a line in, a line out, with what the library finds of it', () => {
    const { status, stdout, stderr } = batch([], lines(sound, dangerous));
    expect([status, stderr]).toEqual([1, '']);
    const expected = [sound, dangerous].map((each, i) => {
      const { findings, values, facts, notJudged } = solve(planOf(each));
      const of = (severity: string) => findings.filter((one) => one.severity === severity).map(({ rule }) => rule);
      const [danger, warning, note] = ['danger', 'warning', 'note'].map(of);
      return { line: i + 1, title: facts.title, danger, warning, note, notChecked: notJudged.length, values };
    });
    expect(resultsOf(stdout)).toEqual(JSON.parse(JSON.stringify(expected)));
    expect(batch([], lines(sound)).status).toBe(0);
  });

  test('keeps the order over many parcels and threads', () => {
    const plans = Array.from({ length: 1000 }, (_, i) => ({ ...sound, title: `Well ${i + 1}` }));
    const results = resultsOf(batch(['--jobs', '3'], lines(...plans)).stdout);
    expect(results.map(({ line, title }) => [line, title])).toEqual(plans.map(({ title }, i) => [i + 1, title]));
  });

  test('a line that is no plan is told with its number and passed over; an empty one is none', () => {
    const notUtf8 = Buffer.from([0xff, 0x0a]);
    const input = [Buffer.from(`${lines(sound)}{"format"\n\n`), notUtf8, Buffer.from(lines(dangerous))];
    const { status, stdout, stderr } = batch([], Buffer.concat(input));
    expect(status).toBe(2);
    expect(resultsOf(stdout).map(({ line, problems }) => [line, problems !== undefined])).toEqual([
      [1, false],
      [2, true],
      [4, true],
      [5, false],
    ]);
    expect(stderr.match(/^line \d+(?=: )/gm)).toEqual(['line 2', 'line 4']);
  });

  test('--draw puts a picture for each plan, the same as draw makes, and leaves nothing else', () => {
    const pictures = join(folder, 'new/pictures');
    const { stdout } = batch(['--draw', pictures], `${lines(sound)}none\n${lines(dangerous)}`);
    expect(readdirSync(pictures).sort()).toEqual(['1.svg', '3.svg']);
    expect(resultsOf(stdout).map(({ picture }) => picture)).toEqual(['1.svg', undefined, '3.svg']);
    const alone = spawnSync(process.execPath, [program, 'draw', '-'], { input: lines(sound), encoding: 'utf8' });
    expect(readFileSync(join(pictures, '1.svg'), 'utf8')).toBe(alone.stdout);
  });

  test('pictures that have nowhere to go stop it before any work, without a trace', () => {
    const file = join(folder, 'a-file');
    writeFileSync(file, '');
    const { status, stdout, stderr } = batch(['--draw', file], lines(sound));
    expect([status, stdout]).toEqual([4, '']);
    expect(stderr).toMatch(/^.*a-file cannot hold pictures: .+\n$/);
  });

  test('whoever writes one line and waits is answered, before the input ends', async () => {
    const child = spawn(process.execPath, [program, 'batch', '--jobs', '2'], { stdio: ['pipe', 'pipe', 'ignore'] });
    const ended = new Promise((resolve) => child.on('close', resolve));
    for (const title of ['first', 'second']) {
      const answer = new Promise<string>((resolve) => child.stdout.once('data', (piece) => resolve(String(piece))));
      child.stdin.write(lines({ ...sound, title }));
      expect(JSON.parse(await answer)).toMatchObject({ title });
    }
    child.stdin.end();
    expect(await ended).toBe(0);
  });

  test('ends without a trace when the reader hangs up', () => {
    const many = lines(...Array.from({ length: 2000 }, () => sound));
    const { stdout, stderr } = spawnSync(
      'bash',
      ['-c', '"$0" "$1" batch | head -n 1 >/dev/null; echo "${PIPESTATUS[0]}"', process.execPath, program],
      { input: many, encoding: 'utf8' },
    );
    expect(stdout).toBe('4\n');
    expect(stderr).toBe('standard output cannot be written: its reader has gone\n');
  });

  test.each([
    ['--jobs', '0'],
    ['--jobs', 'two'],
    ['--jobs', '999'],
  ])('%s %s is refused', (...args) => {
    const { status, stderr } = batch(args, '');
    expect(status).toBe(2);
    expect(stderr).toContain('use a whole number from 1 to 256');
  });

  test('nothing in, nothing out', () => {
    const { status, stdout } = batch([], '');
    expect([status, stdout]).toEqual([0, '']);
  });
});

const HEADING =
  'title,site.frostDepth (in),well.depth (ft),well.casing.material,well.casing.size (in),well.casing.bottom (ft),well.intake.kind,well.intake.diameter (in),well.layers.0.material,well.layers.0.bottom (ft),water.staticLevel (ft)';
const ROW = '"Elm, ""upper"" well",48,220,steel,6,90,open hole,6,clay,28,62';
const AS_PLAN = {
  format: 'wellcut-plan/1',
  title: 'Elm, "upper" well',
  site: { frostDepth: '48 in' },
  well: {
    depth: '220 ft',
    casing: { material: 'steel', size: '6 in', bottom: '90 ft' },
    intake: { kind: 'open hole', diameter: '6 in' },
    layers: [{ material: 'clay', bottom: '28 ft' }],
  },
  water: { staticLevel: '62 ft' },
};

describe('a table', () => {
  test('its heading gives fields and units, and an empty cell says nothing', () => {
    const columns = columnsOf(HEADING);
    expect(planOfRow(columns, ROW)).toEqual({ json: AS_PLAN });
    const { site, well, water } = AS_PLAN;
    expect(planOfRow(columns, ROW.replace(/^".*?",/, ','))).toEqual({
      json: { format: 'wellcut-plan/1', site, well, water },
    });
  });

  test('gives what the same plans give as JSON', () => {
    const fromTable = batch(['--csv'], `${HEADING}\r\n${ROW}\r\n`);
    const fromJson = batch([], lines(AS_PLAN));
    expect([fromTable.status, fromTable.stderr]).toEqual([fromJson.status, '']);
    expect(resultsOf(fromTable.stdout)).toEqual(resultsOf(fromJson.stdout).map((each) => ({ ...each, line: 2 })));
  });

  test('a cell may say its own unit; a bare number without one, a unit that does not fit, and a row of another length are refused', () => {
    const { status, stdout } = batch(['--csv'], `${HEADING}\n${ROW.replace(',220,', ',67 m,')}\n${ROW},1\n`);
    expect(status).toBe(2);
    const [metres, long] = resultsOf(stdout);
    expect(metres).not.toHaveProperty('problems');
    expect(long).toEqual({ line: 3, problems: ['the row has 12 cells and the heading 11'] });
    const unfit = batch(['--csv'], `${HEADING.replace('site.frostDepth (in)', 'pump.phase (ft)')}\n${ROW}\n`);
    expect(unfit.stderr).toContain('"48 ft"');
    const bare = batch(['--csv'], `${HEADING.replace('well.depth (ft)', 'well.depth')}\n${ROW}\n`);
    expect(bare.status).toBe(2);
    expect(bare.stderr).toMatch(/^line 2: well\.depth/);
  });

  test('a heading that is no field is refused before any row, with what was likely meant', () => {
    expect(() => columnsOf('title,well.dept (ft)')).toThrow('did you mean "well.depth"');
    expect(() => columnsOf('title,__proto__.depth')).toThrow('is no field of a plan');
    expect(() => columnsOf('well.depth (ft),well.depth (m)')).toThrow('"well.depth" twice');
    const { status, stdout } = batch(['--csv'], `title,depth of it\n${ROW}\n`);
    expect([status, stdout]).toEqual([2, '']);
  });

  // RFC 4180, section 2: its own examples of rules 5 and 7; a quoted comma (rule 6) and empty cells at either end.
  test.each([
    ['"aaa","bbb","ccc"', ['aaa', 'bbb', 'ccc']],
    ['"aaa","b""bb","ccc"', ['aaa', 'b"bb', 'ccc']],
    ['a,"b,c",d', ['a', 'b,c', 'd']],
    [',a,,', ['', 'a', '', '']],
  ])('cells of %s', (row, cells) => expect(cellsOf(row)).toEqual(cells));
});

describe('lines of a stream', () => {
  async function* cut(text: Buffer, size: number) {
    for (let i = 0; i < text.length; i += size) yield await Promise.resolve(text.subarray(i, i + size));
  }
  async function all(text: Buffer, size: number, quoted = false) {
    const found = [];
    for await (const some of recordsOf(cut(text, size), { quoted })) found.push(...some);
    return found;
  }

  test.each([1, 2, 3, 7, 1000])('are the same whether they come in pieces of %i bytes or at once', async (size) => {
    expect(await all(Buffer.from('für\r\n\n  \nb – c\nlast'), size)).toEqual([
      { line: 1, text: 'für' },
      { line: 4, text: 'b – c' },
      { line: 5, text: 'last' },
    ]);
    expect(await all(Buffer.from('a,"b\nc"\nd,e\n"f'), size, true)).toEqual([
      { line: 1, text: 'a,"b\nc"' },
      { line: 3, text: 'd,e' },
      { line: 4, problem: 'a quotation mark is opened here and never closed' },
    ]);
  });

  test('one that is longer than any plan is a fault of its own, and the next is read', async () => {
    const found = await all(Buffer.concat([Buffer.alloc(MOST_BYTES + 10, 'x'), Buffer.from('\nb\n')]), 65_536);
    expect(found).toEqual([
      { line: 1, problem: expect.stringContaining('long') },
      { line: 2, text: 'b' },
    ]);
  });
});
