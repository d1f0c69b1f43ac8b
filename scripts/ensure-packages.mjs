import { spawnSync } from 'node:child_process';
import { existsSync, readFileSync, statSync } from 'node:fs';

/**
 * Installs what package-lock.json names when it is not there, or when the lock has changed since.
 * Uses Node alone, so that `npm start` and `npm test` work straight after a clone.
 */
const root = new URL('..', import.meta.url);
const lock = new URL('package-lock.json', root);
const installed = new URL('node_modules/.package-lock.json', root);

const versions = (file) =>
  Object.entries(JSON.parse(readFileSync(file, 'utf8')).packages ?? {})
    .filter(([path, entry]) => path && !entry.optional)
    .map(([path, entry]) => `${path}@${entry.version}`);

function upToDate() {
  if (!existsSync(installed)) return false;
  if (statSync(installed).mtimeMs >= statSync(lock).mtimeMs) return true;
  const have = new Set(versions(installed));
  return versions(lock).every((name) => have.has(name));
}

if (!upToDate()) {
  console.log('Installing packages …');
  const { status } = spawnSync('npm', ['ci', '--no-audit', '--no-fund'], {
    cwd: root,
    stdio: 'inherit',
    shell: process.platform === 'win32',
  });
  if (status !== 0) {
    console.error('npm ci failed; the lines above say why. It needs the npm registry the first time.');
    process.exit(status ?? 1);
  }
}
