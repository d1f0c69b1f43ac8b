/** What of the page a reader can get at. */
import type { Page } from '@playwright/test';

/** Every control that cannot be scrolled to where it is seen whole and hit. */
export function unreachable(page: Page, within = 'body', least = 20): Promise<string[]> {
  return page.evaluate(
    ([root, few]) => {
      const out: string[] = [];
      const controls = document.querySelectorAll<HTMLElement>(
        `${root} :is(button, summary, select, textarea, input:not([type=file]), a[href])`,
      );
      let seen = 0;
      for (const control of controls) {
        const target = control.closest<HTMLElement>('[data-handle]') ?? control;
        if (!control.checkVisibility({ visibilityProperty: true }) || target.closest('.unseen') !== null) continue;
        seen += 1;
        target.scrollIntoView({ block: 'center', inline: 'nearest', behavior: 'instant' });
        const { left, top, right, bottom } = target.getBoundingClientRect();
        const width = document.documentElement.clientWidth;
        const name = (control.getAttribute('aria-label') ?? control.textContent.trim().slice(0, 40)) || control.tagName;
        const where = `${name}: ${[left, top, right, bottom].map(Math.round).join(' ')}`;
        if (top < 0 || bottom > window.innerHeight || left < 0 || right > width) {
          out.push(`${where}, beyond the window`);
          continue;
        }
        // A link that goes on in the next line is hit in its first.
        const first = target.getClientRects()[0] ?? target.getBoundingClientRect();
        const hit = document.elementFromPoint(first.left + first.width / 2, first.top + first.height / 2);
        if (hit === null || !target.contains(hit))
          out.push(`${where}, under ${hit?.outerHTML.slice(0, 80) ?? 'nothing'}`);
      }
      return seen >= few ? out : [`only ${seen} controls`];
    },
    [within, least] as const,
  );
}
