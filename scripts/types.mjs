/** `npm run build:types [-- FOLDER]`: the types of the library, as a reader's compiler finds them beside its code. */
import { spawnSync } from 'node:child_process';
import { readFileSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import './ensure-packages.mjs';

const root = fileURLToPath(new URL('..', import.meta.url));
const to = resolve(root, process.argv[2] ?? 'dist/types');
rmSync(to, { recursive: true, force: true });
const { status } = spawnSync('npx', ['--no', '--', 'tsc', '-p', 'tsconfig.lib.json', '--outDir', to], {
  cwd: root,
  stdio: 'inherit',
  shell: process.platform === 'win32',
});
if (status !== 0) process.exit(status ?? 1);

// Types name the file that runs: there is no .ts in what is handed out.
for (const name of readdirSync(to, { recursive: true, encoding: 'utf8' })) {
  if (!name.endsWith('.d.ts')) continue;
  const path = join(to, name);
  writeFileSync(path, readFileSync(path, 'utf8').replace(/((?:from|import\() ?')(\.[^']*)\.ts(?=')/g, '$1$2.js'));
}
