/** The command line, run as a process from what the build makes. */
import { spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, readFileSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'vite';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { draw, SPARE_ELSEWHERE, THEMES, toSvg } from '../../src/draw/index.ts';
import { solve } from '../../src/model/index.ts';
import { SAMPLES, planOf, sample } from '../plans/build.ts';
import { SOUND } from '../wells/sound.ts';

const root = fileURLToPath(new URL('../..', import.meta.url));
const folder = mkdtempSync(join(tmpdir(), 'wellcut-test-'));
// Beside the real build, so that a run of the tests never pulls it away under a server.
const program = join(root, 'dist/node-test/wellcut.js');

beforeAll(async () => {
  await build({
    root,
    configFile: join(root, 'vite.cli.config.ts'),
    logLevel: 'error',
    build: { outDir: 'dist/node-test' },
  });
}, 60_000);
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const wellcut = (args: string[], input?: string) =>
  spawnSync(process.execPath, [program, ...args], { encoding: 'utf8', ...(input === undefined ? {} : { input }) });
const samplePath = (name: string) => join(root, 'static/samples', `${name}.json`);
const planFile = (name: string, plan: unknown) => {
  const path = join(folder, `${name}.json`);
  writeFileSync(path, typeof plan === 'string' ? plan : JSON.stringify(plan));
  return path;
};
const dangerous = { ...sample('tamarack-ridge'), top: { kind: 'pitless', depth: '3 ft' } };

describe('draw', () => {
  test.each(SAMPLES)('prints the very bytes that the library draws of %s', (name) => {
    const { status, stdout } = wellcut(['draw', samplePath(name)]);
    const plan = planOf(sample(name));
    const scene = draw(solve(plan), {
      sheet: 'all',
      width: 1040,
      height: 1000,
      units: plan.units ?? 'us',
      theme: 'light',
      caption: true,
      spare: SPARE_ELSEWHERE,
    });
    expect(status).toBe(0);
    expect(stdout).toBe(`${toSvg(scene)}\n`);
  });
  test('tells in words what it would draw, and the picture says the same', () => {
    const path = samplePath('tamarack-ridge');
    const { status, stdout } = wellcut(['draw', path, '--alt']);
    const [title = '', words = ''] = stdout.split('\n');
    expect([status, title]).toEqual([0, 'Tamarack Ridge cabin']);
    expect(words).toMatch(/^Section through the well\. 6 in steel casing to 90 ft/);
    expect(wellcut(['draw', path]).stdout).toContain(`<desc>${words}</desc>`);
  });
  test('exits 0 even with dangers, and the same plan gives the same bytes from standard input', () => {
    const path = planFile('dangerous', dangerous);
    const fromFile = wellcut(['draw', path, '--theme', 'print']);
    const piped = wellcut(['draw', '-', '--theme', 'print'], readFileSync(path, 'utf8'));
    expect([fromFile.status, piped.status]).toEqual([0, 0]);
    expect(piped.stdout).toBe(fromFile.stdout);
  });
  test.each(['section', 'top', 'pump', 'house', 'at:6 ft'])('draws the view %s alone', (view) => {
    const { status, stdout } = wellcut(['draw', samplePath('tamarack-ridge'), '--view', view]);
    expect(status).toBe(0);
    expect(stdout).toMatch(/^<svg /);
  });
  test('writes a PNG with the signature of PNG (W3C, Portable Network Graphics, 5.2)', () => {
    const out = join(folder, 'well.png');
    expect(wellcut(['draw', samplePath('tamarack-ridge'), '-o', out]).status).toBe(0);
    expect([...readFileSync(out).subarray(0, 8)]).toEqual([137, 80, 78, 71, 13, 10, 26, 10]);
  });
  test.each(['light', 'dark', 'print', 'contrast', 'contrast-dark'] as const)('draws the %s theme', (theme) => {
    const { stdout } = wellcut(['draw', samplePath('tamarack-ridge'), '--theme', theme]);
    expect(stdout).toContain(`fill="${THEMES[theme].paper}"`);
    expect(stdout).toContain(`fill="${THEMES[theme].ink}"`);
  });
  // ANSI/ASME Y14.1 (sizes A and B) and ISO 216: from memory.
  test.each([
    ['letter', 8.5 * 25.4, 11 * 25.4],
    ['legal', 8.5 * 25.4, 14 * 25.4],
    ['tabloid', 11 * 25.4, 17 * 25.4],
    ['a4', 210, 297],
    ['A3', 297, 420],
  ])(
    'a sheet of %s paper measures what its standard says, lying on its side the other way round',
    (paper, wide, tall) => {
      const upright = wellcut(['draw', samplePath('slate-hollow'), '--paper', paper]).stdout;
      const lying = wellcut(['draw', samplePath('slate-hollow'), '--paper', paper, '--landscape']).stdout;
      expect(upright).toContain(` width="${Number(wide.toFixed(2))}mm" height="${Number(tall.toFixed(2))}mm"`);
      expect(lying).toContain(` width="${Number(tall.toFixed(2))}mm" height="${Number(wide.toFixed(2))}mm"`);
      for (const svg of [upright, lying]) expect(svg).toMatch(/SCALE 1 in = \d+ ft \(1:\d+\) vertical/);
      expect(upright).toContain(`fill="${THEMES.print.tones.water}"`);
    },
  );
  test('a PNG of paper has 300 dots an inch (its size: W3C, Portable Network Graphics, 11.2.1)', () => {
    const out = join(folder, 'paper.png');
    expect(wellcut(['draw', samplePath('tamarack-ridge'), '--paper', 'letter', '-o', out]).status).toBe(0);
    const png = readFileSync(out);
    expect([png.readUInt32BE(16), png.readUInt32BE(20)]).toEqual([2550, 3300]);
  });
  test('a close-up below the well or above it is refused with how deep the well is, in the plan’s units', () => {
    const below = wellcut(['draw', samplePath('tamarack-ridge'), '--view', 'at:900ft']);
    expect(below.status).toBe(2);
    expect(below.stderr).toBe('--view is "at:900ft", and the well ends at 220 ft: use a depth of at most 220 ft\n');
    expect(below.stdout).toBe('');
    const above = wellcut(['draw', samplePath('heron-flats'), '--view', 'at:-9 m']);
    expect(above.status).toBe(2);
    expect(above.stderr).toMatch(/^--view is "at:-9 m", above all of the well: use a depth from .* to [\d.]+ m\n$/);
  });
  test('--no-signs leaves the signs out, and says so under the picture', () => {
    const path = planFile('signs', dangerous);
    const bare = wellcut(['draw', path, '--no-signs']);
    expect(bare.status).toBe(0);
    expect(bare.stdout).toContain('Checks (signs left out): ');
    expect(bare.stdout).not.toContain(THEMES.light.danger);
    expect(wellcut(['draw', path]).stdout).toContain(THEMES.light.danger);
  });
  test('a date is printed only when it is given', () => {
    const path = samplePath('heron-flats');
    expect(wellcut(['draw', path, '--date', '1987-06-05']).stdout).toContain('1987-06-05');
    expect(wellcut(['draw', path]).stdout).not.toContain('1987-06-05');
  });
  test('leaves no file behind when the plan cannot be read', () => {
    const out = join(folder, 'never.svg');
    expect(wellcut(['draw', planFile('broken', '{'), '-o', out]).status).toBe(2);
    expect(existsSync(out)).toBe(false);
    expect(readdirSync(folder).filter((name) => name.endsWith('.part'))).toEqual([]);
  });
});

describe('check', () => {
  test('exits 0 without a danger and 1 with one', () => {
    expect(wellcut(['check', planFile('sound', SOUND[0]?.plan)]).status).toBe(0);
    const { status, stdout } = wellcut(['check', planFile('dangerous', dangerous)]);
    expect(status).toBe(1);
    expect(stdout).toMatch(/^1 {2}Danger: .*\[PR-19\]/m);
  });
  test('tells head, flows, levels, lengths, weight, volume and dose before the findings, in the plan’s units', () => {
    const { stdout } = wellcut(['check', planFile('dangerous', dangerous)]);
    const [figures] = stdout.split('\n1  ');
    for (const line of [
      /^Static level {2,}62 ft$/m,
      /^Pumping level at 8 gpm {2,}[\d.]+ ft$/m,
      /^Lowest pumping level {2,}[\d.]+ ft$/m,
      /^Head the pump works against at 8 gpm and cut-out {2,}[\d.]+ ft$/m,
      /^Flow at cut-in, weaker pump of its rating {2,}[\d.]+ gpm$/m,
      /^Flow at cut-in, stronger pump of its rating {2,}[\d.]+ gpm$/m,
      /^Flow at cut-out, weaker pump of its rating {2,}[\d.]+ gpm$/m,
      /^Drop pipe to cut {2,}\d+ ft( \d+ in)?$/m,
      /^Drop pipe, hanging length {2,}\d+ ft( \d+ in)?$/m,
      /^Weight on the hook at rest {2,}\d+ lb$/m,
      /^Water in the well {2,}\d+ gal$/m,
      /^Chlorine product of 5\.25 % {2,}[\d.]+ (?:gal|fl oz)$/m,
    ])
      expect(figures).toMatch(line);
    const metric = wellcut(['check', samplePath('heron-flats')]).stdout;
    expect(metric).toMatch(/^Static level {2,}[\d.]+ m$/m);
    expect(metric).toMatch(/^Weight on the hook at rest {2,}\d+ kg$/m);
    expect(metric).toMatch(/^Water in the well {2,}\d+ L$/m);
  });
  test('says what is not known, what could not be checked for want of which field, and what is assumed', () => {
    const bare = {
      format: 'wellcut-plan/1',
      well: { depth: '200 ft', casing: {}, intake: { kind: 'open hole' } },
      water: { staticLevel: 'unknown' },
    };
    const { stdout } = wellcut(['check', planFile('bare', bare)]);
    expect(stdout).toMatch(/^Static level {2,}not known$/m);
    expect(stdout).toMatch(
      /^Could not check, for want of:\n {3}.*static water level \(water\.staticLevel\)\n {6}Not checked: whether /m,
    );
    expect(stdout).toMatch(/^Assumed:$/m);
    expect(stdout).toMatch(/Peak flow needed: 8 gpm \(house\.demand\)/);
    // What is not known stands before what is OK.
    expect(stdout.indexOf('Could not check')).toBeLessThan(stdout.search(/^(?:OK if what is assumed|Checked, OK)/m));
  });
  test('tells how far each may go after the findings, and what nobody said as such', () => {
    const { stdout } = wellcut(['check', planFile('dangerous', dangerous)]);
    expect(stdout).toMatch(
      /^How far may it go: .*\n {3}Water at rest, 62 ft\n {6}(?:Warning|Danger): The water at rest falls more than [\d.]+ ft further: /m,
    );
    // The adapter is in the frost: no way is left for that.
    expect(stdout).toMatch(/^ {3}Frost, \d+ in\n {6}Danger: Already now: the pitless adapter is in the frost zone\.$/m);
    expect(stdout.search(/^1 {2}Danger/m)).toBeLessThan(stdout.indexOf('How far may it go'));
    const dry = { ...dangerous, water: { staticLevel: 'unknown' } };
    expect(wellcut(['check', planFile('level-unknown', dry)]).stdout).toMatch(
      /^ {3}Water at rest\n {6}Not known: nobody said where the water stands at rest\.$/m,
    );
  });
  test('--json gives values, assumed, unknown, a verdict for every rule, and findings', () => {
    const report = JSON.parse(wellcut(['check', planFile('dangerous', dangerous), '--json']).stdout) as {
      verdicts: Record<string, string>;
      findings: { rule: string; margin: number; fix: string; mend: unknown }[];
      arithmetic: { name: string; formula: string; worked: string; source: string }[];
      values: Record<string, number | null>;
    };
    expect(Object.keys(report)).toEqual([
      'values',
      'assumed',
      'unknown',
      'verdicts',
      'findings',
      'headroom',
      'asBuilt',
      'arithmetic',
    ]);
    expect(Object.keys(report.verdicts)).toContain('PR-19');
    const frost = report.findings.find((finding) => finding.rule === 'PR-19')!;
    expect(Object.keys(frost)).toEqual([
      'rule',
      'severity',
      'part',
      'depth',
      'measured',
      'limit',
      'margin',
      'message',
      'source',
      'turn',
      'together',
      'worse',
      'assumed',
      'fix',
      'mend',
    ]);
    expect(report.arithmetic.map(({ name }) => name).sort()).toEqual(Object.keys(report.values).sort());
    for (const { formula, source } of report.arithmetic) expect(formula.length * source.length).toBeGreaterThan(0);
    expect(frost.margin).toBeLessThan(0);
    expect(frost.mend).toEqual([{ path: 'top.depth', to: expect.any(String) }]);
    expect(frost.fix).toMatch(/^Lower to [\d.]+ (?:ft|in)$/);
  });
});

describe('what cannot be read ends with 2 and says what to write', () => {
  test.each([
    ['a file that is not there', ['check', join(folder, 'nowhere.json')], /nowhere\.json cannot be read/],
    ['no plan', ['draw'], /draw needs one plan/],
    ['an unknown command', ['paint', 'x.json'], /no command "paint"/],
    ['an unknown option', ['check', 'x.json', '--colour'], /--colour/],
    [
      'an unknown theme',
      ['draw', samplePath('tamarack-ridge'), '--theme', 'sepia'],
      /light, dark, print, contrast, contrast-dark/,
    ],
    [
      'an unknown paper',
      ['draw', samplePath('tamarack-ridge'), '--paper', 'b5'],
      /--paper is "b5"; use letter, legal, tabl/,
    ],
    ['a turned sheet of no size', ['draw', samplePath('tamarack-ridge'), '--landscape'], /--paper letter/],
    [
      'an unknown view',
      ['draw', samplePath('tamarack-ridge'), '--view', 'side'],
      /all, section, top, pump, house or at:DEPTH/,
    ],
    ['a depth without a unit', ['draw', samplePath('tamarack-ridge'), '--view', 'at:62'], /62/],
  ])('%s', (_, args, words) => {
    const { status, stderr, stdout } = wellcut(args);
    expect(status).toBe(2);
    expect(stderr).toMatch(words);
    expect(stdout).toBe('');
  });
  test('every fault of a plan is told at once, each with its path', () => {
    const plan = { ...sample('tamarack-ridge'), wel: {}, wire: { size: '12' }, pump: { setting: 180, curve: {} } };
    const { status, stderr } = wellcut(['check', planFile('faulty', plan)]);
    expect(status).toBe(2);
    for (const words of ['"wel"', 'wire.size', 'pump.setting', 'pump.curve']) expect(stderr).toContain(words);
  });
});

describe('check --choose', () => {
  test('prints both tables, the best first, and exits as check does', () => {
    const { status, stdout } = wellcut(['check', samplePath('tamarack-ridge'), '--choose']);
    expect(status).toBe(0);
    expect(stdout).toMatch(/^Which pump\n[^]*\nYes: 10 gpm, 1 hp \(now in the plan\)/);
    expect(stdout).toMatch(/\nWhich tank\n/);
    expect(stdout).not.toMatch(/undefined|NaN/);
    const danger = wellcut(['check', planFile('choose-danger', dangerous), '--choose']);
    expect(danger.status).toBe(1);
    // It exits so for what stands in the plan, which the tables do not tell.
    expect(danger.stdout).toMatch(
      /\nThe plan as it is: in all \d dangers?[^\n]*\. Check it without --choose to read them\.\n/,
    );
  });
  test('with --json as choose, and says why there is nothing to choose', () => {
    const flowing = planFile('choose-flowing', {
      ...sample('tamarack-ridge'),
      water: { staticLevel: '-2 ft' },
    });
    const { stdout } = wellcut(['check', flowing, '--choose', '--json']);
    const { choose } = JSON.parse(stdout) as { choose: { pumps: { refused: string; rows: unknown[] } } };
    expect(choose.pumps.rows).toEqual([]);
    expect(choose.pumps.refused).toMatch(/contractor/);
    expect(JSON.parse(wellcut(['check', flowing, '--json']).stdout)).not.toHaveProperty('choose');
  });
});
