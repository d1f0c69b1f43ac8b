import { existsSync } from 'node:fs';
import { chromium } from '@playwright/test';

const SYSTEM = ['/usr/bin/chromium', '/usr/bin/chromium-browser', '/usr/bin/google-chrome'];

/** Every name but this machine fails to resolve: no test may lean on the network. */
const OFFLINE = ['--host-resolver-rules=MAP * ~NOTFOUND, EXCLUDE localhost, EXCLUDE 127.0.0.1'];

/** The browser named by CHROMIUM_PATH, else Playwright's own (undefined), else the system's. */
export function chromiumPath() {
  if (process.env.CHROMIUM_PATH) return process.env.CHROMIUM_PATH;
  if (existsSync(chromium.executablePath())) return undefined;
  return SYSTEM.find((path) => existsSync(path));
}

export function launchOptions() {
  const executablePath = chromiumPath();
  return { args: OFFLINE, ...(executablePath ? { executablePath } : {}) };
}

export function haveBrowser() {
  return existsSync(chromiumPath() ?? chromium.executablePath());
}
