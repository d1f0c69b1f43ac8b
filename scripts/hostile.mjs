/**
 * `npm run hostile [COUNT]`: reads that many broken plans in one process, a million unless told, solves what can be
 * read, and prints how long the slowest took. Leaves with 1 where one fails or takes over half a second.
 */
import { readFileSync, readdirSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import './ensure-packages.mjs';

const { runnerImport } = await import('vite');

const root = fileURLToPath(new URL('..', import.meta.url));
const load = async (file) =>
  (await runnerImport(`${root}${file}`, { configFile: false, root, logLevel: 'error' })).module;
const { hostile, seeded } = await load('tests/plans/hostile.ts');
const { readPlanText, sayProblem, solve } = await load('src/model/index.ts');

const count = Number(process.argv[2] ?? 1_000_000);
const folder = `${root}static/samples/`;
const plans = readdirSync(folder).map((name) => JSON.stringify(JSON.parse(readFileSync(folder + name, 'utf8'))));
const random = seeded(Number(process.argv[3] ?? 1));
const LONGEST = 500;

/** Reads and solves it once more, and takes the shortest: a machine that paused is no fault of the text [ms]. */
function again(text) {
  const tries = [1, 2, 3].map(() => {
    const begun = performance.now();
    const reading = readPlanText(text);
    if (reading.ok) solve(reading.plan);
    return performance.now() - begun;
  });
  return Math.min(...tries);
}

let slowest = { took: 0, text: '' };
let [read, refused, failed] = [0, 0, 0];
for (let i = 0; i < count; i++) {
  const text = hostile(plans, random);
  const begun = performance.now();
  try {
    const reading = readPlanText(text);
    if (reading.ok) {
      solve(reading.plan);
      read++;
    } else {
      reading.problems.forEach(sayProblem);
      refused++;
    }
  } catch (fault) {
    failed++;
    if (failed <= 5) console.error(`failed on ${text.slice(0, 2000)}\n${fault.stack}`);
  }
  const once = performance.now() - begun;
  const took = once > LONGEST ? again(text) : once;
  if (took > slowest.took) slowest = { took, text };
}
console.log(`${count} texts: ${read} read and solved, ${refused} refused, ${failed} failed`);
console.log(`the slowest took ${slowest.took.toFixed(0)} ms, of ${slowest.text.length} characters`);
process.exit(failed === 0 && slowest.took < LONGEST ? 0 : 1);
