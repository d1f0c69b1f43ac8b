/**
 * `npm run kill`: kills the browser in the middle of edits forty times and looks what is left. Takes another number of
 * trials and another seed: `npm run kill -- 200 7`.
 */
import { spawnSync } from 'node:child_process';

const [trials = '40', seed] = process.argv.slice(2);
const { status } = spawnSync(
  'npx',
  [
    '--no',
    '--',
    'playwright',
    'test',
    'tests/browser/e2e/killed.spec.ts',
    '--project',
    'desktop',
    '--reporter',
    'list',
  ],
  {
    cwd: new URL('..', import.meta.url),
    stdio: 'inherit',
    env: { ...process.env, KILL_TRIALS: trials, ...(seed === undefined ? {} : { KILL_SEED: seed }) },
    shell: process.platform === 'win32',
  },
);
process.exit(status ?? 1);
