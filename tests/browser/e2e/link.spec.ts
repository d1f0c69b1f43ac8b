/** A well in an address: opened as a copy that nobody kept yet, and harmless when it is damaged. */
import { chip, drag, heard, keptHere, openSample } from './hands.ts';
import { expect, test, type Page } from './onePage.ts';
import { linkOf } from '../../../src/link/planLink.ts';
import { SOUND } from '../../wells/sound.ts';

const DUNE = SOUND.find(({ name }) => name === 'Dune Meadow')!;
const LINK = linkOf({ ...(DUNE.plan as object), title: 'Dune Meadow' });

async function copiedLink(page: Page): Promise<string> {
  const opener = page.getByRole('button', { name: /^Save picture/ });
  await opener.click();
  await page.getByRole('button', { name: /^Link / }).click();
  await expect(page.getByRole('status').last()).toContainText('The link is copied');
  return page.evaluate(() => navigator.clipboard.readText());
}

test('a copied link opens the same well elsewhere, unsaved until it is changed', async ({ page, context }) => {
  await context.grantPermissions(['clipboard-read', 'clipboard-write']);
  await openSample(page);
  const before = await heard(page, 'Pump intake');
  const address = await copiedLink(page);
  expect(address.length).toBeLessThan(700);
  const kept = (await keptHere(page)).length;
  await page.goto('/icon.svg');
  await page.goto(address);
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Tamarack Ridge cabin');
  await expect.poll(() => heard(page, 'Pump intake')).toBe(before);
  await expect(page.getByRole('status').last()).toContainText('came in a link');
  expect(new URL(page.url()).hash).toBe('');
  expect((await keptHere(page)).length).toBe(kept);
  await page.reload();
  await expect.poll(() => heard(page, 'Pump intake')).toBe(before);
  await drag(page, 'Pump intake', -20, false);
  await expect.poll(async () => (await keptHere(page)).length).toBe(kept + 1);
});

test('put into the address of an open page, it opens there, and what was on the desk can be gone back to', async ({
  page,
}) => {
  await openSample(page);
  await page.evaluate((link) => (window.location.hash = link), LINK);
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Dune Meadow');
  await expect(chip(page, 'Pump intake')).toBeAttached();
  await page.getByRole('button', { name: 'Undo', exact: true }).click();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Tamarack Ridge cabin');
});

for (const [what, link, said] of [
  ['damaged', `${LINK.slice(0, 60)}x${LINK.slice(62)}`, /a part of it is missing or changed/i],
  ['of a later form', 'w7.AAAA', /made with a newer Wellcut/i],
  [
    'of something else',
    linkOf({ format: 'wellcut-plan/1', well: { depth: 'deep' } }),
    /could not be opened|is not|depth/,
  ],
] as const) {
  test(`a link ${what} says so, and the page goes on`, async ({ page }) => {
    const faults: Error[] = [];
    page.on('pageerror', (fault) => faults.push(fault));
    await page.goto(`/#${link}`);
    await expect(page.getByText(said).first()).toBeVisible();
    await expect(page.getByRole('button', { name: /Tamarack Ridge/ }).first()).toBeVisible();
    expect(faults).toEqual([]);
  });
}
