/** Everything that can be pressed is large enough to be hit, and whoever goes by Tab sees where they are. */
import { expect, test, type Page } from './onePage.ts';
import { chip, openFaulty, openSample } from './hands.ts';

/** px that a finger needs. */
const FINGER = 44;
/** px between the middles of two small ones, where they stand in a sentence. */
const APART = 24;

interface Small {
  readonly name: string;
  readonly width: number;
  readonly height: number;
}

/** Controls that are seen and too small for a finger. What stands in a line of words is as tall as those. */
async function smallOnes(page: Page): Promise<Small[]> {
  return page.evaluate(
    ([finger, apart]) => {
      const all = [
        ...document.querySelectorAll<HTMLElement>(
          'a[href], button, input:not([type=file]), select, textarea, summary, [role=tab], [tabindex="0"]',
        ),
      ].filter((each) => {
        const { width, height } = each.getBoundingClientRect();
        return width > 0 && height > 0 && each.checkVisibility() && !(each as HTMLButtonElement).disabled;
      });
      // A box is hit by its label too, and a level by the chip round it.
      const boxOf = (each: HTMLElement): DOMRect => {
        if (getComputedStyle(each).display === 'inline') return each.getClientRects()[0]!;
        const label = each.matches('[type=checkbox], [type=radio]') ? each.closest('label') : null;
        return (label ?? each.closest<HTMLElement>('[data-handle]') ?? each).getBoundingClientRect();
      };
      const inSentence = (each: HTMLElement): boolean => {
        if (!each.matches('a[href]') || getComputedStyle(each).display !== 'inline') return false;
        const words = each.closest('p, li')?.textContent ?? '';
        return words.trim().length > (each.textContent ?? '').trim().length + 1;
      };
      const middle = ({ left, top, width, height }: DOMRect) => [left + width / 2, top + height / 2] as const;
      const boxes = all.map((each) => boxOf(each));
      return all.flatMap((each, i) => {
        const box = boxes[i]!;
        const name = `${each.tagName.toLowerCase()} "${(each.getAttribute('aria-label') ?? each.textContent ?? '').trim().slice(0, 50)}"`;
        const small = { name, width: Math.round(box.width), height: Math.round(box.height) };
        // A hair off in single precision.
        const short = box.height < finger! - 0.01 || box.width < finger! - 0.01;
        if (!short) return [];
        if (!inSentence(each)) return [small];
        const [x, y] = middle(box);
        const crowded = boxes.some((other, k) => {
          const [left, top] = middle(other);
          return k !== i && all[k] !== each && Math.hypot(left - x, top - y) < apart!;
        });
        return crowded ? [{ ...small, name: `${small.name}, crowded` }] : [];
      });
    },
    [FINGER, APART],
  );
}

test.describe('for a finger', { tag: '@phone' }, () => {
  test('everything on the empty page can be hit', async ({ page }) => {
    await page.goto('/');
    await expect(page.getByRole('heading', { level: 1 })).toBeVisible();
    expect.soft(await smallOnes(page)).toEqual([]);
    await page.getByRole('button', { name: 'Type in the report' }).click();
    expect.soft(await smallOnes(page)).toEqual([]);
  });

  test('everything on the desk can be hit, tables and opened lists included', async ({ page }) => {
    await openFaulty(page);
    for (const tab of ['Findings', 'Figures', 'Pump', 'The record', 'Depths', 'Parts', 'Build', 'Trouble']) {
      await page.getByRole('tab', { name: tab }).click();
      await page.waitForLoadState('networkidle');
      for (const closed of await page.locator('aside details:not([open]) > summary').all())
        if (await closed.isVisible()) await closed.click();
      expect.soft(await smallOnes(page), tab).toEqual([]);
    }
  });

  test('and so it is in the menu, beside a level, and over time', async ({ page }) => {
    await openSample(page);
    await chip(page, 'Pump intake').focus();
    expect.soft(await smallOnes(page)).toEqual([]);
    await page.getByRole('button', { name: /^Wells/ }).click();
    expect.soft(await smallOnes(page)).toEqual([]);
    await page.keyboard.press('Escape');
    await page.getByRole('tab', { name: 'Pump' }).click();
    await page.getByRole('button', { name: /^Yes/ }).first().click();
    await page.getByRole('button', { name: 'Compare every column' }).click();
    expect.soft(await smallOnes(page)).toEqual([]);
  });
});

interface Step {
  readonly what: string;
  readonly fault: string;
}

/** Where the focus is now, and what is wrong with seeing it; null where Tab has left the page. */
async function focused(page: Page): Promise<Step | null> {
  return page.evaluate(() => {
    const own = document.activeElement;
    if (!(own instanceof HTMLElement) || own === document.body) return null;
    const what = `${own.tagName.toLowerCase()} "${(own.getAttribute('aria-label') ?? own.textContent ?? '').trim().slice(0, 40)}"`;
    const at = own.closest<HTMLElement>('[data-handle]') ?? own;
    // Words that go over two lines are looked at in their first.
    const { left, right, top, bottom } = at.getClientRects()[0] ?? at.getBoundingClientRect();
    const [x0, x1] = [Math.max(left, 0), Math.min(right, innerWidth)];
    const [y0, y1] = [Math.max(top, 0), Math.min(bottom, innerHeight)];
    if (x1 - x0 < 1 || y1 - y0 < 1) return { what, fault: 'outside the window' };
    // Looked at in five places: one that shows in none of them is hidden, in some of them covered.
    const inset = (from: number, to: number) => [from + 1.5, (from + to) / 2, to - 1.5];
    const [l, cx, r] = inset(x0, x1);
    const [t, cy, b] = inset(y0, y1);
    const seen = [
      [cx!, cy!],
      [cx!, t!],
      [cx!, b!],
      [l!, cy!],
      [r!, cy!],
    ].filter(([x, y]) => {
      const hit = document.elementFromPoint(x!, y!);
      return hit !== null && (at.contains(hit) || hit.contains(at));
    }).length;
    // Of a level the ring is round its label, which is drawn in what stands for it.
    const looks = [getComputedStyle(own), getComputedStyle(at), getComputedStyle(at, '::after')];
    const outlined = looks.some(
      ({ outlineStyle, outlineWidth, boxShadow }) =>
        (outlineStyle !== 'none' && parseFloat(outlineWidth) >= 2) || boxShadow !== 'none',
    );
    if (!outlined) return { what, fault: 'no outline' };
    if (bottom - top > innerHeight) return { what, fault: '' };
    if (y0 > top + 1 || y1 < bottom - 1) return { what, fault: 'cut by the window' };
    return { what, fault: seen === 5 ? '' : `covered: ${5 - seen} of 5 places` };
  });
}

for (const [width, height] of [
  [1440, 1000],
  [1024, 768],
  [390, 844],
] as const) {
  test.describe(`${width} px wide`, () => {
    test.use({ viewport: { width, height } });
    for (const tab of ['Findings', 'Pump', 'The record', 'Depths', 'Parts', 'Build', 'Trouble']) {
      test(`whoever goes by Tab through the desk sees where they are: ${tab}`, async ({ page }) => {
        test.slow();
        await openFaulty(page);
        await page.getByRole('tab', { name: tab }).click();
        await page.waitForLoadState('networkidle');
        // From the end of the page on, so that each way leads through all of it.
        await page.locator(':is(a[href], button, input, select, textarea, summary):visible').last().focus();
        while ((await focused(page)) !== null) await page.keyboard.press('Tab');
        for (const way of ['Tab', 'Shift+Tab'] as const) {
          const faults: Step[] = [];
          let steps = 0;
          for (; steps < 400; steps++) {
            await page.keyboard.press(way);
            const step = await focused(page);
            if (step === null) break;
            if (step.fault !== '') faults.push(step);
          }
          expect.soft(steps, way).toBeGreaterThan(30);
          expect.soft(faults, way).toEqual([]);
        }
      });
    }
  });
}
