/** Text set further apart, pages that run from right to left and names without a gap break nothing. */
import { expect, test, type Page } from './onePage.ts';
import { chip, openChanged } from './hands.ts';
import { unreachable } from './reach.ts';

/** As wide as a page must bear it (WCAG 1.4.12). */
const SPACED = 'line-height: 1.5 X; letter-spacing: 0.12em X; word-spacing: 0.16em X';

const LONG = 'Hinterdemgrossenwaldamlangensee'.repeat(5);

const READERS: Readonly<Record<string, (page: Page) => Promise<void>>> = {
  'as it comes': () => Promise.resolve(),
  'text set apart by the page around it': (page) => wear(page, `body { ${SPACED.replaceAll(' X', '')} }`),
  'text set apart by a reader': (page) =>
    wear(page, `* { ${SPACED.replaceAll(' X', ' !important')} } p { margin-bottom: 2em !important }`),
  'a page from right to left': (page) => page.evaluate(() => document.documentElement.setAttribute('dir', 'rtl')),
};

/** As a reader's own styles: over those of the page, and not asked by its policy. */
async function wear(page: Page, css: string): Promise<void> {
  await page.evaluate((text) => {
    const sheet = new CSSStyleSheet();
    sheet.replaceSync(text);
    document.adoptedStyleSheets = [sheet];
  }, css);
}

/** Words of the drawing that run into each other, or out of it. */
function collisions(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    const out: string[] = [];
    for (const drawing of document.querySelectorAll<SVGSVGElement>('.sheet > svg')) {
      const edge = drawing.getBoundingClientRect();
      const words = [...drawing.querySelectorAll('text')]
        .map((text) => ({ said: text.textContent, box: text.getBoundingClientRect() }))
        .filter(({ said }) => said.trim() !== '');
      for (const [i, { said, box }] of words.entries()) {
        if (box.left < edge.left - 1 || box.right > edge.right + 1) out.push(`${said} runs out of the drawing`);
        for (const other of words.slice(i + 1)) {
          const wide = Math.min(box.right, other.box.right) - Math.max(box.left, other.box.left);
          // Lines of one label stand close: the boxes of their letters are taller than the letters.
          const high = Math.min(box.bottom, other.box.bottom) - Math.max(box.top, other.box.top);
          if (wide > 2 && high > 6) out.push(`${said} runs into ${other.said}`);
        }
      }
    }
    return out;
  });
}

/** Elements of the page whose words are cut, and how far the page scrolls sideways. */
function cut(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    const { scrollWidth, clientWidth } = document.documentElement;
    const out = scrollWidth > clientWidth ? [`the page is ${scrollWidth} px wide`] : [];
    for (const element of document.querySelectorAll<HTMLElement>('main *, header *')) {
      // A field and a table that is too wide scroll by themselves.
      if (element.closest('svg, .unseen, .window, input') !== null || element.clientWidth === 0) continue;
      const { overflowX, overflowY } = getComputedStyle(element);
      const name = `${element.tagName}.${element.className}: ${element.textContent.trim().slice(0, 30)}`;
      if (/hidden|clip/.test(overflowX) && element.scrollWidth > element.clientWidth + 1)
        out.push(`${name}, cut at its side`);
      if (/hidden|clip/.test(overflowY) && element.scrollHeight > element.clientHeight + 1)
        out.push(`${name}, cut below`);
    }
    return out;
  });
}

for (const [reader, wears] of Object.entries(READERS)) {
  test(
    `${reader}: no words run into each other, none are cut, nothing scrolls sideways`,
    { tag: '@both' },
    async ({ page }) => {
      await openChanged(page, {});
      await wears(page);
      await expect.poll(() => collisions(page)).toEqual([]);
      expect(await cut(page)).toEqual([]);
      await chip(page, 'Pump intake').focus();
      await expect(page.getByRole('textbox', { name: /Pump intake/ })).toBeVisible();
      expect(await unreachable(page, '.sheet > .beside', 3)).toEqual([]);
      await page.getByRole('tab', { name: 'The record' }).click();
      await expect(page.getByRole('textbox').first()).toBeVisible();
      expect(await cut(page)).toEqual([]);
      expect(await unreachable(page)).toEqual([]);
      await page.evaluate(() => window.scrollTo(0, 0));
      await page.getByRole('button', { name: /^Wells/ }).click();
      expect(await unreachable(page, 'header', 10)).toEqual([]);
    },
  );
}

test('long names without a gap break nothing', { tag: '@both' }, async ({ page }) => {
  await openChanged(page, {
    title: LONG,
    well: {
      depth: '220 ft',
      casing: { size: '6 in', bottom: '90 ft' },
      intake: { kind: 'open hole' },
      layers: [
        { material: LONG, bottom: '60 ft' },
        { material: 'granite', bottom: '220 ft' },
      ],
    },
  });
  expect(await collisions(page)).toEqual([]);
  for (const tab of ['Findings', 'Figures', 'Pump', 'The record', 'Depths', 'Parts', 'Build', 'Trouble']) {
    await page.getByRole('tab', { name: tab }).click();
    expect(await cut(page), tab).toEqual([]);
  }
  await page.setViewportSize({ width: 390, height: 400 });
  await expect(page.getByRole('heading', { level: 1 })).toBeVisible();
  expect(await cut(page)).toEqual([]);
});
