/**
 * `npm run batch-bench [PLANS]`: plans a second and the most memory of a batch, beside one process a plan in the same run.
 * Each plan differs from the one before. What is printed is thrown away.
 */
import { spawn, spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { availableParallelism } from 'node:os';
import { Readable } from 'node:stream';
import { pipeline } from 'node:stream/promises';
import { fileURLToPath } from 'node:url';
import './ensure-packages.mjs';

const root = fileURLToPath(new URL('..', import.meta.url));
const most = Number(process.argv[2] ?? 100_000);
if (spawnSync('npm', ['run', '-s', 'build:cli'], { cwd: root, stdio: ['ignore', 'ignore', 'inherit'] }).status !== 0)
  process.exit(1);

const program = `${root}dist/node/wellcut.js`;
const plan = JSON.parse(readFileSync(`${root}static/samples/tamarack-ridge.json`, 'utf8'));
const planAt = (i) => {
  const setting = `${150 + (i % 500) / 10} ft`;
  return { ...plan, title: `Well ${i}`, pump: { ...plan.pump, setting } };
};

function* lines(count) {
  for (let i = 0; i < count; i += 100) {
    const some = Array.from({ length: Math.min(100, count - i) }, (_, j) => `${JSON.stringify(planAt(i + j))}\n`);
    yield some.join('');
  }
}

/** The kernel's own count of the most that a process held at once [MB]; null where there is no such file. */
function peakOf(pid) {
  try {
    return Number(/VmHWM:\s+(\d+)/.exec(readFileSync(`/proc/${pid}/status`, 'utf8'))?.[1]) / 1024;
  } catch {
    return null;
  }
}

async function batch(count) {
  const begun = performance.now();
  const child = spawn(process.execPath, [program, 'batch'], { stdio: ['pipe', 'pipe', 'inherit'] });
  let peak = null;
  const look = setInterval(() => (peak = peakOf(child.pid) || peak), 100);
  let printed = 0;
  child.stdout.on('data', (piece) => {
    for (const byte of piece) if (byte === 0x0a) printed++;
  });
  const ended = new Promise((resolve) => child.on('close', resolve));
  await pipeline(Readable.from(lines(count)), child.stdin);
  const status = await ended;
  clearInterval(look);
  if (printed !== count || status === null || status > 1)
    throw new Error(`${printed} of ${count} plans came back, exit ${status}`);
  return { rate: count / ((performance.now() - begun) / 1000), peak };
}

const said = ({ rate, peak }) => `${Math.round(rate)} plans/s, peak ${peak === null ? 'unknown' : Math.round(peak)} MB`;
console.log(`${availableParallelism()} cores`);

const alone = 20;
const begun = performance.now();
for (let i = 0; i < alone; i++)
  spawnSync(process.execPath, [program, 'check', '-', '--brief'], { input: JSON.stringify(planAt(i)) });
const rate = alone / ((performance.now() - begun) / 1000);
console.log(`one process a plan: ${rate.toFixed(1)} plans/s, one after the other`);

for (const count of [Math.round(most / 10), most]) {
  const done = await batch(count);
  console.log(`batch of ${count}: ${said(done)}, ${Math.round(done.rate / rate)} times a process a plan`);
}
