import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { haveBrowser } from './browser.mjs';

/** Finds a Chromium for the browser tests, or installs one; says what to install when it cannot. */
const run = (command, args) => spawnSync(command, args, { stdio: 'inherit', timeout: 300_000 }).status === 0;

if (!haveBrowser()) {
  const debianRoot = process.getuid?.() === 0 && existsSync('/etc/debian_version') && existsSync('/usr/bin/apt-get');
  const ways = [
    () => run('npx', ['--no', 'playwright', 'install', 'chromium']),
    () =>
      debianRoot &&
      run('apt-get', ['update', '-q']) &&
      run('apt-get', ['install', '-y', '-q', '--no-install-recommends', 'chromium']),
  ];
  if (debianRoot) ways.reverse();
  if (!ways.some((way) => way() && haveBrowser())) {
    console.error(
      'No Chromium for the browser tests. Set CHROMIUM_PATH to one, or run "npx playwright install chromium".',
    );
    process.exit(1);
  }
}
