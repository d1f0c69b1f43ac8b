/** The library as somebody has it who installs it: code and types by the package's own entries, and nothing of Node in them. */
import { spawnSync } from 'node:child_process';
import { cpSync, mkdirSync, mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'vite';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { draw, toSvg } from '../../src/draw/index.ts';
import { solve } from '../../src/model/index.ts';
import { planOf, sample } from '../plans/build.ts';

const root = fileURLToPath(new URL('../..', import.meta.url));
const folder = mkdtempSync(join(tmpdir(), 'wellcut-library-'));
const installed = join(folder, 'node_modules/wellcut');

const run = (program: string, args: string[]) =>
  spawnSync(process.execPath, [program, ...args], { cwd: folder, encoding: 'utf8' });
const tsc = (files: readonly string[]) =>
  run(join(root, 'node_modules/typescript/bin/tsc'), [
    ...[
      '--noEmit',
      '--strict',
      '--target',
      'es2023',
      '--module',
      'nodenext',
      '--skipLibCheck',
      'false',
      '--pretty',
      'false',
    ],
    ...files,
  ]).stdout;
/** Writes a file of the reader's own and returns its name. */
const own = (name: string, text: string) => {
  writeFileSync(join(folder, name), text);
  return name;
};

beforeAll(async () => {
  mkdirSync(installed, { recursive: true });
  cpSync(join(root, 'package.json'), join(installed, 'package.json'));
  symlinkSync(join(root, 'node_modules/zod'), join(folder, 'node_modules/zod'));
  await build({
    root,
    configFile: join(root, 'vite.cli.config.ts'),
    logLevel: 'error',
    build: { outDir: join(installed, 'dist/node'), emptyOutDir: true },
  });
  const types = run(join(root, 'scripts/types.mjs'), [join(installed, 'dist/types')]);
  expect(types.status, types.stderr + types.stdout).toBe(0);
}, 120_000);
afterAll(() => rmSync(folder, { recursive: true, force: true }));

test('five words lead from a plan to a picture, the same as the page draws', () => {
  const file = own(
    'picture.mjs',
    `import { readFileSync } from 'node:fs';
     import { draw, explain, readPlanText, solve, toSvg } from 'wellcut';
     const reading = readPlanText(readFileSync(process.argv[2], 'utf8'));
     const solution = solve(reading.plan);
     if (explain(solution, 'drawdown').worked === null) throw new Error('the drawdown is not explained');
     process.stdout.write(toSvg(draw(solution)));`,
  );
  const { stdout, stderr } = run(file, [join(root, 'static/samples/tamarack-ridge.json')]);
  expect(stderr).toBe('');
  expect(stdout).toBe(toSvg(draw(solve(planOf(sample('tamarack-ridge'))))));
});

test('its types say what goes in and what comes out', () => {
  const sound = own(
    'sound.mts',
    `import { draw, LETTER, readPlan, sayFinding, solve, THEMES, toSvg } from 'wellcut';
     import { en, show, type Finding, type Ink, type Paper, type Plan, type Problem, type Solution } from 'wellcut';
     import { choosePump, headroomOf, type PumpTable } from 'wellcut/choosing';
     export function picture(json: unknown): string | readonly Problem[] {
       const reading = readPlan(json);
       if (!reading.ok) return reading.problems;
       const plan: Plan = reading.plan;
       const solution: Solution = solve(plan);
       const first: Finding | undefined = solution.findings[0];
       if (first) return sayFinding(first, en, show('us')).message;
       const paper: Paper = LETTER;
       const ink: Ink = THEMES.dark;
       const pumps: PumpTable = choosePump(plan);
       return toSvg(draw(solution, { theme: 'dark', paper })) + ink.paper + pumps.kind + headroomOf(plan, solution);
     }`,
  );
  const wrong = own(
    'wrong.mts',
    `import { draw, type Solution } from 'wellcut';\ndraw({} as Solution, { theme: 'pink' });`,
  );
  const faults = tsc([sound, wrong])
    .split('\n')
    .filter((line) => /^\S/.test(line));
  expect(faults).toEqual([expect.stringMatching(/^wrong\.mts\(2,24\): .*"pink"/)]);
});

test('nothing of Node is in it: it runs in a page or a worker too', () => {
  const seen = new Set<string>();
  const follow = (path: string) => {
    if (seen.has(path)) return;
    seen.add(path);
    const imported = /^(?:import|export) [^;]*?from "([^"]+)"|\bimport\(\s*"([^"]+)"/gm;
    for (const [, still, late] of readFileSync(path, 'utf8').matchAll(imported)) {
      const name = (still ?? late)!;
      expect(name, path).toMatch(/^\.{1,2}\//);
      follow(resolve(dirname(path), name));
    }
  };
  follow(join(installed, 'dist/node/lib.js'));
  follow(join(installed, 'dist/node/choosing.js'));
  expect(seen.size).toBeGreaterThan(2);
});
