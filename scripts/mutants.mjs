/**
 * `npm run mutants -- formulas` (or `rules/tank`, `draw/parts`, several at once; `limits` beside them
 * moves just the limits, `page` alone writes just the page):
 * changes the files of a part in a thousand small ways, one at a time, looks whether the part's unit tests notice, and
 * writes docs/mutants.md anew.
 */
import { spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import './ensure-packages.mjs';
import { mutantsPage } from './mutants/page.mjs';
import { moveLimits } from './mutants/limits.mjs';
import { FAMILIES, partOf } from './mutants/parts.mjs';
import { scoresIn } from './mutants/scores.mjs';

const root = fileURLToPath(new URL('..', import.meta.url));
const SCORES = `${root}tests/mutants/scores.json`;
const readJson = (path) => JSON.parse(readFileSync(path, 'utf8'));

const WORDS = ['page', 'limits'];
const names = process.argv.slice(2).filter((name) => !WORDS.includes(name));
const limitsAlone = process.argv.includes('limits');
const unknown = names.filter((name) => partOf(name) === null);
if (process.argv.length < 3 || unknown.length > 0) {
  console.error(
    `${unknown.length > 0 ? `No part is called ${unknown.join(', ')}. ` : ''}Name ${FAMILIES.join(', ')}, or a file or folder of one, as in rules/tank.`,
  );
  process.exit(1);
}

mkdirSync(`${root}reports/mutants`, { recursive: true });
for (const name of names) {
  const part = partOf(name);
  if (limitsAlone) {
    keep({}, await moveLimits(part, part.files));
    continue;
  }
  const at = `reports/mutants/${name.replace(/[^\w-]+/g, '-')}`;
  rmSync(`${root}${at}.json`, { force: true });
  writeFileSync(`${root}${at}.settings.json`, JSON.stringify(settingsOf(part, at), null, 2));
  const { status } = spawnSync('npx', ['--no', '--', 'stryker', 'run', `${at}.settings.json`], {
    cwd: root,
    stdio: 'inherit',
    shell: process.platform === 'win32',
  });
  if (status !== 0) process.exit(status ?? 1);
  // A file of types alone has nothing to change, and is tried all the same.
  const nothing = Object.fromEntries(part.files.map((file) => [file, { killed: 0, timedOut: 0, alive: [] }]));
  const found = { ...nothing, ...(existsSync(`${root}${at}.json`) ? scoresIn(readJson(`${root}${at}.json`)) : {}) };
  keep(found, await moveLimits(part, Object.keys(found)));
}
writeFileSync(`${root}docs/mutants.md`, mutantsPage(readJson(SCORES)));
process.exit(0);

/** What was tried takes the place of what was known of the same files. */
function keep(found, limits) {
  const scores = { ...readJson(SCORES) };
  for (const [file, score] of Object.entries(found)) scores[file] = { ...scores[file], ...score };
  for (const [file, score] of Object.entries(limits)) scores[file] = { ...scores[file], limits: score };
  const sorted = Object.fromEntries(Object.entries(scores).sort(([one], [other]) => (one < other ? -1 : 1)));
  writeFileSync(SCORES, `${JSON.stringify(sorted, null, 1)}\n`);
}

function settingsOf({ mutate, tests, own }, at) {
  return {
    testRunner: 'part',
    plugins: [`${root}scripts/mutants/runner.mjs`],
    part: { tests, own },
    mutate,
    // Texts are keys, ids and messages for programmers: a wrong one does not compile, or is no logic.
    mutator: { excludedMutations: ['StringLiteral'] },
    coverageAnalysis: 'perTest',
    // Limits are constants of their file: each is tried, against all tests of the part.
    ignoreStatic: false,
    concurrency: 1,
    timeoutMS: 10_000,
    timeoutFactor: 1.2,
    warnings: { slow: false },
    reporters: ['json', 'progress-append-only'],
    jsonReporter: { fileName: `${at}.json` },
    tempDirName: 'reports/mutants/sandbox',
    ignorePatterns: ['/dist', '/reports', '/static/pictures', '/test-results', '/tests/browser'],
  };
}
