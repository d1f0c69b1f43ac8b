/**
 * `npm test`: installs what is missing, browser included, and runs everything in the order in which a fault is cheapest
 * to find. Stops at the first step that fails and says which.
 */
import { spawnSync } from 'node:child_process';
import { mkdirSync, readFileSync, rmSync } from 'node:fs';
import './ensure-packages.mjs';

// Not before the packages are there: it imports one of them.
await import('./ensure-browser.mjs');

const root = new URL('..', import.meta.url);
rmSync(new URL('reports', root), { recursive: true, force: true });
mkdirSync(new URL('reports', root), { recursive: true });

const steps = [
  ['lint', 'npx', ['--no', '--', 'eslint', '.']],
  ['format', 'npx', ['--no', '--', 'prettier', '--check', '.']],
  ['direction of imports', 'npx', ['--no', '--', 'depcruise', 'src']],
  ['types', 'npm', ['run', '-s', 'check']],
  ['build', 'npm', ['run', '-s', 'build']],
  ['size', 'npx', ['--no', '--', 'size-limit']],
  [
    'model, drawing and page',
    'npx',
    ['--no', '--', 'vitest', 'run', '--reporter=default', '--reporter=json', '--outputFile.json=reports/unit.json'],
  ],
  ['page in the browser', 'npx', ['--no', '--', 'playwright', 'test']],
];

let failed = null;
for (const [name, command, args] of steps) {
  const begun = Date.now();
  console.log(`\n== ${name}`);
  const { status } = spawnSync(command, args, {
    cwd: root,
    stdio: 'inherit',
    env: { ...process.env, FORCE_COLOR: '0' },
    shell: process.platform === 'win32',
  });
  console.log(`== ${name}: ${status === 0 ? 'good' : 'FAILED'}, ${Math.round((Date.now() - begun) / 1000)} s`);
  if (status !== 0) {
    failed = name;
    break;
  }
}

const report = (file) => {
  try {
    return JSON.parse(readFileSync(new URL(`reports/${file}`, root), 'utf8'));
  } catch {
    return null;
  }
};
const unit = report('unit.json');
const page = report('e2e.json')?.stats;
const passed = (unit?.numPassedTests ?? 0) + (page?.expected ?? 0);
const broken = (unit?.numFailedTests ?? 0) + (page?.unexpected ?? 0) + (page?.flaky ?? 0);
const skipped = (unit?.numPendingTests ?? 0) + (page?.skipped ?? 0);

if (failed) console.log(`\nStopped at: ${failed}`);
console.log(
  `\n${passed} passed, ${broken + (failed && broken === 0 ? 1 : 0)} failed${skipped ? `, ${skipped} skipped` : ''}`,
);
process.exit(failed ? 1 : 0);
