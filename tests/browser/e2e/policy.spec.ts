/** The built page does all its work under a strict Content-Security-Policy, and asks nothing of anybody else. */
import { expect, test, type Page } from './onePage.ts';
import { openSample, savedPicture } from './hands.ts';

interface Watched {
  readonly violations: string[];
  readonly requests: string[];
}

/** Violations as the page hears them (Content Security Policy Level 3, section 5.2), and every request. */
async function watched(page: Page): Promise<Watched> {
  const seen: Watched = { violations: [], requests: [] };
  await page.exposeFunction('tellViolation', (said: string) => seen.violations.push(said));
  await page.addInitScript(() => {
    document.addEventListener('securitypolicyviolation', ({ effectiveDirective, blockedURI, sample }) => {
      (window as unknown as { tellViolation(said: string): void }).tellViolation(
        `${effectiveDirective} ${blockedURI} ${sample}`,
      );
    });
  });
  page.on('request', (request) => seen.requests.push(request.url()));
  return seen;
}

const own = (page: Page) => new URL(page.url()).origin;

test('the policy forbids whatever is not the page’s own', async ({ page }) => {
  await page.goto('/');
  const policy = await page.locator('meta[http-equiv="Content-Security-Policy"]').getAttribute('content');
  expect(policy).toContain("default-src 'none'");
  expect(policy).toContain("require-trusted-types-for 'script'");
  expect(policy).not.toMatch(/unsafe|\*|https?:/);
});

test('and the browser holds to it', async ({ page }) => {
  const seen = await watched(page);
  await page.goto('/');
  const madeOfText = await page.evaluate(() => {
    try {
      document.createElement('div').innerHTML = '<b>x</b>';
      return true;
    } catch {
      return false;
    }
  });
  expect(madeOfText).toBe(false);
  // A script in line, as one that got in would stand there.
  await page.evaluate(() => {
    const script = document.createElement('script');
    script.append('document.title = "run"');
    document.head.append(script);
  });
  expect(await page.title()).not.toBe('run');
  await page.evaluate(() => {
    const style = document.createElement('style');
    style.textContent = 'body { display: none }';
    document.head.append(style);
  });
  await expect(page.locator('body')).toBeVisible();
  await expect.poll(() => seen.violations.length).toBeGreaterThan(0);
});

test('every part of the page works under it, and no request leaves', async ({ page }) => {
  const seen = await watched(page);
  await openSample(page);
  for (const name of ['Figures', 'Pump', 'The record', 'Depths', 'Parts', 'Build', 'Trouble', 'Findings']) {
    await page.getByRole('tab', { name }).click();
    await expect(page.getByRole('tabpanel')).not.toBeEmpty();
  }
  for (const kind of ['SVG', 'PNG', 'Letter'] as const) {
    const download = await savedPicture(page, kind);
    expect(await download.failure()).toBeNull();
  }
  expect((await page.pdf()).length).toBeGreaterThan(10_000);
  await page.getByRole('slider', { name: 'Pump intake', exact: true }).first().focus();
  await page.keyboard.press('ArrowDown');
  await page.keyboard.press('Control+z');
  await page.waitForLoadState('networkidle');
  expect(seen.violations).toEqual([]);
  const outside = seen.requests.filter((url) => !url.startsWith(own(page)) && !/^(?:data|blob):/.test(url));
  expect(outside).toEqual([]);
});
