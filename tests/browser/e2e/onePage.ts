/**
 * `test` for the page as a reader has it. A browser needs three times as long to open a page in a new tab as in one that
 * had it before: the tests of a worker share one, and each finds it as new, nothing kept and nothing of the last one set.
 * What cannot be taken back from a tab ends it: the next test gets another.
 */
import { test as base, type BrowserContext, type Page } from '@playwright/test';

export { expect } from '@playwright/test';
export type { BrowserContext, CDPSession, Download, Locator, Page } from '@playwright/test';

/** What is not taken back by hand; after one of these a tab is not used again. */
const LASTING = ['addInitScript', 'exposeFunction', 'exposeBinding', 'route', 'on', 'once'] as const;
const LASTING_OF_ALL = [...LASTING, 'setOffline', 'grantPermissions', 'newPage', 'setExtraHTTPHeaders'] as const;

interface Tab {
  /** What the device is: another one has another tab. */
  readonly device: string;
  readonly context: BrowserContext;
  readonly page: Page;
  spoilt: boolean;
}

/** Notes when one of these is called. */
function watch<T extends object>(target: T, names: readonly (keyof T)[], noted: () => void): void {
  for (const name of names) {
    const own = target[name] as (...given: unknown[]) => unknown;
    Object.assign(target, {
      [name]: (...given: unknown[]) => {
        noted();
        return own.apply(target, given);
      },
    });
  }
}

async function open(device: string, context: BrowserContext): Promise<Tab> {
  const page = await context.newPage();
  const tab: Tab = { device, context, page, spoilt: false };
  const spoil = (): void => void (tab.spoilt = true);
  watch(page, LASTING, spoil);
  watch(context, LASTING_OF_ALL, spoil);
  return tab;
}

/** As a tab that was never used: nowhere, nothing kept, nothing pressed, in the light, at its size. */
async function renew({ page, context }: Tab, size: Page['viewportSize'] extends () => infer S ? S : never) {
  // Beside the page, which might still be writing.
  await page.goto('/icon.svg');
  await page.evaluate(() => window.sessionStorage.clear());
  const session = await context.newCDPSession(page);
  const origin = new URL(page.url()).origin;
  await session.send('Storage.clearDataForOrigin', { origin, storageTypes: 'all' });
  await session.detach();
  await page.mouse.up();
  await page.mouse.move(-1, -1);
  await page.emulateMedia({
    media: null,
    colorScheme: 'light',
    reducedMotion: 'no-preference',
    forcedColors: 'none',
    contrast: 'no-preference',
  });
  if (size !== null) await page.setViewportSize(size);
}

export const test = base.extend<object, { tabs: { last: Tab | null } }>({
  tabs: [
    // Playwright reads from the braces what a fixture needs.
    // eslint-disable-next-line no-empty-pattern
    async ({}, use) => {
      const tabs: { last: Tab | null } = { last: null };
      await use(tabs);
      await tabs.last?.context.close();
    },
    { scope: 'worker' },
  ],
  context: async (
    { tabs, browser, viewport, hasTouch, isMobile, deviceScaleFactor, serviceWorkers, colorScheme },
    use,
    info,
  ) => {
    const device = JSON.stringify([viewport, hasTouch, isMobile, deviceScaleFactor, serviceWorkers, colorScheme]);
    const { last } = tabs;
    if (last?.device !== device || last.spoilt) {
      tabs.last = null;
      await last?.context.close();
      // It takes over what the device is from the project.
      tabs.last = await open(device, await browser.newContext());
    } else await renew(last, viewport);
    const tab = tabs.last;
    if (tab === null) throw new Error('context: no tab');
    await use(tab.context);
    tab.spoilt ||= info.status !== info.expectedStatus || tab.page.isClosed() || tab.context.pages().length > 1;
  },
  page: async ({ tabs, context }, use) => {
    await use(tabs.last?.page ?? (await context.newPage()));
  },
});
