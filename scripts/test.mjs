/**
 * `npm test`: installs what is missing, browser included, and runs everything in the order in which a fault is cheapest
 * to find. Stops at the first step that fails and says which: what runs beside it comes to its end, and nothing more begins.
 */
import { spawn } from 'node:child_process';
import { mkdirSync, readFileSync, rmSync } from 'node:fs';
import './ensure-packages.mjs';

// Not before the packages are there: it imports one of them.
await import('./ensure-browser.mjs');

const root = new URL('..', import.meta.url);
rmSync(new URL('reports', root), { recursive: true, force: true });
mkdirSync(new URL('reports', root), { recursive: true });

const npx = (...words) => ['npx', ['--no', '--', ...words]];
const npm = (script) => ['npm', ['run', '-s', script]];

/**
 * One after the other; of the first, which use a processor each, two rows side by side. The tests use all of them: side by
 * side each would wait for the other.
 */
const stages = [
  [
    [
      ['lint', ...npx('eslint', '.')],
      ['types', ...npm('check')],
    ],
    [
      ['format', ...npx('prettier', '--check', '.')],
      ['direction of imports', ...npx('depcruise', 'src')],
      ['build', ...npm('build')],
      ['size', ...npm('size')],
    ],
  ],
  [
    [
      [
        'model, drawing and page',
        ...npx(
          'vitest',
          'run',
          '--maxWorkers=100%',
          '--reporter=default',
          '--reporter=json',
          '--outputFile.json=reports/unit.json',
        ),
      ],
      ['page in the browser', ...npx('playwright', 'test')],
    ],
  ],
];

/** Runs a step and says how it went. What it writes comes as it is written, or in one piece amid what another writes. */
function run([name, command, args], apart) {
  const begun = Date.now();
  if (!apart) console.log(`\n== ${name}`);
  return new Promise((done) => {
    const step = spawn(command, args, {
      cwd: root,
      stdio: ['inherit', apart ? 'pipe' : 'inherit', apart ? 'pipe' : 'inherit'],
      // The page that was built is the page that is tried.
      env: { ...process.env, FORCE_COLOR: '0', PAGE_IS_BUILT: '1' },
      shell: process.platform === 'win32',
    });
    const written = [];
    step.stdout?.on('data', (part) => written.push(part));
    step.stderr?.on('data', (part) => written.push(part));
    step.on('error', (fault) => written.push(Buffer.from(`${fault.message}\n`)));
    step.on('close', (status) => {
      if (apart) process.stdout.write(`\n== ${name}\n${Buffer.concat(written).toString()}`);
      console.log(`== ${name}: ${status === 0 ? 'good' : 'FAILED'}, ${Math.round((Date.now() - begun) / 1000)} s`);
      done(status === 0);
    });
  });
}

let failed = null;
for (const rows of stages) {
  await Promise.all(
    rows.map(async (steps, row) => {
      for (const step of steps) {
        if (failed !== null) return;
        if (!(await run(step, row < rows.length - 1))) failed ??= step[0];
      }
    }),
  );
  if (failed !== null) break;
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
