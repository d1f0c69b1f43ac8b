/** The printed page against a ruler: sheet sizes, and the scale that the title block states. */
import { inflateSync } from 'node:zlib';
import { openSample } from './hands.ts';
import { expect, test, type Page } from './onePage.ts';

const paperOf = (page: Page) => page.locator('.paper > svg');

const MM_PER_POINT = 25.4 / 72;

interface Rail {
  /** N of 1:N. */
  readonly scale: number;
  /** Depths named beside the section, and where their figures stand in the drawing's own units. */
  readonly figures: readonly { readonly depth: number; readonly y: number }[];
}

function railOf(page: Page): Promise<Rail> {
  return page.evaluate(() => {
    const texts = [...document.querySelectorAll('.paper svg text')];
    const stated = texts
      .map((text) => /SCALE (?:1 in = \d+ ft \()?1:(\d+)\)? vertical/.exec(text.textContent))
      .find((found) => found !== null);
    const zero = texts.find((text) => text.textContent === '0');
    return {
      scale: Number(stated?.[1]),
      figures: texts
        .filter((text) => text.parentElement === zero?.parentElement)
        .map((text) => ({ depth: Number(text.textContent), y: Number(text.getAttribute('y')) })),
    };
  });
}

interface Sheet {
  /** mm */
  readonly width: number;
  readonly height: number;
  readonly pages: number;
  /** mm on paper of one unit of what is drawn first on the first page. */
  readonly unit: number;
}

/** ISO 32000-1: 7.7.3 page objects (MediaBox, in 1/72 inch), 8.3.4 the operator cm, 7.4.4 Flate. */
function readPdf(pdf: Buffer): Sheet {
  const text = pdf.toString('latin1');
  const box = /\/MediaBox ?\[0 0 ([\d.]+) ([\d.]+)\]/.exec(text);
  if (box === null) throw new Error('readPdf: no size of a page');
  const contents = [...text.matchAll(/stream\r?\n/g)].flatMap(({ index, 0: { length } }) => {
    try {
      return [inflateSync(pdf.subarray(index + length, text.indexOf('endstream', index))).toString('latin1')];
    } catch {
      return [];
    }
  });
  const first = contents.find((content) => / cm\n/.test(content)) ?? '';
  const [outer, inner] = [...first.matchAll(/([\d.]+) 0 0 -?[\d.]+ [\d.-]+ [\d.-]+ cm\n/g)].map(([, size]) =>
    Number(size),
  );
  return {
    width: Number(box[1]) * MM_PER_POINT,
    height: Number(box[2]) * MM_PER_POINT,
    pages: text.match(/\/Type ?\/Page\b/g)?.length ?? 0,
    unit: (outer ?? NaN) * (inner ?? NaN) * MM_PER_POINT,
  };
}

// ANSI/ASME Y14.1 (size A) and ISO 216 (A4): from memory. The international foot: 0.3048 m exactly (1959).
const WELLS = [
  ['Tamarack Ridge cabin', 215.9, 279.4, 304.8],
  ['Slate Hollow homestead', 215.9, 279.4, 304.8],
  ['Heron Flats farmhouse', 210, 297, 1000],
  ['Palo Amargo guest house', 210, 297, 1000],
] as const;

for (const [title, width, height, mmPerUnit] of WELLS) {
  test(`${title} prints on its paper, and a ruler finds the scale that it states`, async ({ page }) => {
    await openSample(page, title);
    await page.emulateMedia({ media: 'print' });
    await expect(paperOf(page)).toBeVisible();
    const { scale, figures } = await railOf(page);
    const sheet = readPdf(await page.pdf({ preferCSSPageSize: true }));
    // The browser cuts pages to whole pixels, of which a millimetre has almost four.
    expect(Math.abs(sheet.width - width)).toBeLessThan(0.25);
    expect(Math.abs(sheet.height - height)).toBeLessThan(0.25);
    expect(sheet.pages).toBeGreaterThanOrEqual(2);
    expect(figures.length).toBeGreaterThanOrEqual(5);
    const [top, bottom] = [figures[0]!, figures.at(-1)!];
    const onPaper = (bottom.y - top.y) * sheet.unit;
    const inTheWell = (bottom.depth - top.depth) * mmPerUnit;
    // A ruler reads half a millimetre.
    expect(Math.abs(onPaper - inTheWell / scale)).toBeLessThan(0.5);
  });
}

test('only the drawing stands on the first page, and what it says begins on the next', async ({ page }) => {
  await openSample(page);
  await page.emulateMedia({ media: 'print' });
  await expect(paperOf(page)).toBeVisible();
  await expect(page.locator('.drawing').getByRole('button')).toHaveCount(0);
  await expect(page.locator('aside')).toHaveCSS('break-before', 'page');
  const drawing = await paperOf(page).boundingBox();
  // The margins leave 190.5 by 254 mm of a letter sheet; CSS Values 4, 6.2: a millimetre is 96/25.4 px.
  expect(drawing!.width).toBeCloseTo((190.5 * 96) / 25.4, 0);
  expect(drawing!.height).toBeCloseTo((254 * 96) / 25.4, 0);
});

test('a dark page prints black on white', async ({ page }) => {
  await page.emulateMedia({ colorScheme: 'dark' });
  await openSample(page);
  await page.emulateMedia({ colorScheme: 'dark', media: 'print' });
  await expect(paperOf(page).locator('rect').first()).toHaveAttribute('fill', '#fff');
});

test('the page has a button that prints', async ({ page }) => {
  await page.addInitScript(() => {
    window.print = () => {
      document.documentElement.dataset['printed'] = 'yes';
    };
  });
  await openSample(page);
  await page.getByRole('button', { name: 'Print', exact: true }).click();
  await expect(page.locator('html')).toHaveAttribute('data-printed', 'yes');
});
