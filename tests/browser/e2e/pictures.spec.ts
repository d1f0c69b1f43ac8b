/** The drawing as a file for a screen or for paper. */
import { readFile } from 'node:fs/promises';
import { expect, test, type Page } from './onePage.ts';
import { PNG } from 'pngjs';
import { openSample, savedPicture } from './hands.ts';

/** PNG (third edition), 5.3: length, type, data and checksum, chunk after chunk behind the signature of eight bytes. */
function chunksOf(png: Buffer): Map<string, Buffer> {
  const chunks = new Map<string, Buffer>();
  for (let at = 8; at < png.length; at += 12 + png.readUInt32BE(at))
    chunks.set(png.toString('latin1', at + 4, at + 8), png.subarray(at + 8, at + 8 + png.readUInt32BE(at)));
  return chunks;
}

async function savedPng(page: Page): Promise<Buffer> {
  return readFile(await (await savedPicture(page, 'PNG')).path());
}

test('a PNG has two pixels to a px of the SVG, says so, and is not blank', async ({ page }) => {
  await openSample(page);
  const svg = await readFile(await (await savedPicture(page, 'SVG')).path(), 'utf8');
  const [, width, height] = /^<svg [^>]*\bwidth="(\d+)" height="(\d+)"/.exec(svg) ?? [];
  const png = await savedPng(page);
  // The reader holds every chunk to its checksum.
  const image = PNG.sync.read(png);
  expect([image.width, image.height]).toEqual([Number(width) * 2, Number(height) * 2]);
  const chunks = chunksOf(png);
  // 5.6: behind the header, before the image; 11.3.4.3: pixels in a metre, along x and y, unit 1.
  expect([...chunks.keys()].indexOf('pHYs')).toBe(1);
  const size = chunks.get('pHYs');
  // CSS Values and Units 4, section 6.2: 96 px to the inch of 25.4 mm.
  const perMetre = Math.round((2 * 96) / 0.0254);
  expect([size?.readUInt32BE(0), size?.readUInt32BE(4), size?.readUInt8(8)]).toEqual([perMetre, perMetre, 1]);
  const inked = image.data.filter((value, i) => i % 4 === 0 && value < 96).length / (image.width * image.height);
  expect(inked).toBeGreaterThan(0.01);
  expect(inked).toBeLessThan(0.5);
});

test('a picture is named after the well and its paper', { tag: '@both' }, async ({ page }) => {
  await openSample(page);
  expect((await savedPicture(page, 'PNG')).suggestedFilename()).toBe('tamarack-ridge-cabin.png');
  expect((await savedPicture(page, 'Letter')).suggestedFilename()).toBe('tamarack-ridge-cabin-letter.svg');
});

// ANSI/ASME Y14.1 (size A) and ISO 216 (A4): from memory. The international foot: 0.3048 m exactly (1959).
for (const [title, paper, width, height, mmPerUnit] of [
  ['Tamarack Ridge cabin', 'Letter', 215.9, 279.4, 304.8],
  ['Heron Flats farmhouse', 'A4', 210, 297, 1000],
] as const) {
  test(`${title} is laid out for ${paper} in millimetres, to the scale that it states`, async ({ page }) => {
    await openSample(page, title);
    const svg = await readFile(await (await savedPicture(page, paper)).path(), 'utf8');
    // A page of its own: the program's forbids to make elements of text.
    const reader = await page.context().newPage();
    const sheet = await reader.evaluate((text) => {
      const root = new DOMParser().parseFromString(text, 'image/svg+xml').documentElement;
      const texts = [...root.querySelectorAll('text')];
      const zero = texts.find((each) => each.textContent === '0');
      return {
        width: root.getAttribute('width'),
        height: root.getAttribute('height'),
        units: Number(root.getAttribute('viewBox')?.split(' ')[2]),
        words: texts.map((each) => each.textContent).join(' '),
        rail: texts
          .filter((each) => each.parentElement === zero?.parentElement)
          .map((each) => ({ depth: Number(each.textContent), y: Number(each.getAttribute('y')) })),
      };
    }, svg);
    expect([sheet.width, sheet.height]).toEqual([`${width}mm`, `${height}mm`]);
    const scale = Number(/SCALE (?:1 in = \d+ ft \()?1:(\d+)\)? vertical/.exec(sheet.words)?.[1]);
    const [top, bottom] = [sheet.rail[0]!, sheet.rail.at(-1)!];
    const onPaper = ((bottom.y - top.y) * width) / sheet.units;
    // A ruler reads half a millimetre.
    expect(Math.abs(onPaper - ((bottom.depth - top.depth) * mmPerUnit) / scale)).toBeLessThan(0.5);
  });
}

test('keys alone save a picture, and Escape closes what they opened', { tag: '@both' }, async ({ page }) => {
  await openSample(page);
  const opener = page.getByRole('button', { name: /^Save picture/ });
  const menu = page.getByRole('button', { name: /^Save(?:: Save)? and print/ });
  const within = !(await opener.isVisible());
  if (within) await menu.press('Enter');
  await opener.press('Enter');
  await page.keyboard.press('Tab');
  await expect(page.getByRole('button', { name: /^SVG / })).toBeFocused();
  await page.keyboard.press('Escape');
  await expect(opener).toBeFocused();
  await expect(opener).toHaveAttribute('aria-expanded', 'false');
  await page.keyboard.press('Enter');
  await page.keyboard.press('Tab');
  const [download] = await Promise.all([page.waitForEvent('download'), page.keyboard.press('Enter')]);
  expect(download.suggestedFilename()).toBe('tamarack-ridge-cabin.svg');
  await expect(opener).toBeFocused();
  if (!within) return;
  await page.keyboard.press('Escape');
  await expect(menu).toBeFocused();
});

test('where the face cannot be fetched, no PNG in a wrong one is saved, and the menu says so', async ({ page }) => {
  await openSample(page);
  // A page that is open already wears its faces; what is fetched from now on fails.
  await page.evaluate(() => {
    window.fetch = () => Promise.resolve(new Response(null, { status: 503 }));
  });
  const opener = page.getByRole('button', { name: /^Save picture/ });
  if (!(await opener.isVisible())) await page.getByRole('button', { name: /^Wells/ }).click();
  await opener.click();
  await page.getByRole('button', { name: /^PNG / }).click();
  await expect(page.getByText('This browser could not make that picture.')).toBeVisible();
  await expect(page.getByRole('button', { name: /^SVG / })).toBeVisible();
});

test('the install sheet is one press away, and opens without a network and without a script', async ({ page }) => {
  await openSample(page);
  const opener = page.getByRole('button', { name: /^Save picture/ });
  if (!(await opener.isVisible())) await page.getByRole('button', { name: /^Wells/ }).click();
  await opener.click();
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: /^Install sheet/ }).click(),
  ]);
  expect(download.suggestedFilename()).toBe('tamarack-ridge-cabin-install-sheet.html');
  const html = await readFile(await download.path(), 'utf8');
  expect(html).toContain('<title>Tamarack Ridge cabin: install sheet</title>');
  for (const head of ['Settings', 'Parts and lengths to cut', 'Order of the work', 'Tape card', 'First start'])
    expect(html).toContain(`<h2>${head}</h2>`);
  expect(html).not.toMatch(/<script|https?:\/\/(?!www\.w3\.org)/);
});
