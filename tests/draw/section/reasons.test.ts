import { expect, test } from 'vitest';
import type { Shape } from '../../../src/draw/scene.ts';
import { planOf, sample } from '../../plans/build.ts';
import { picture } from '../pictures.ts';

/** Lines of each text block, top to bottom. */
function blocks(shapes: readonly Shape[]): string[][] {
  return shapes.flatMap(({ children = [] }) => {
    const lines = children.filter(({ key }) => key.startsWith('line/')).map(({ text }) => text ?? '');
    return [...(lines.length > 1 ? [lines] : []), ...blocks(children)];
  });
}

// A figure is not parted from its unit: SI Brochure, 9th edition, section 5.4.3, and good typesetting of any other unit.
test('no reason at the end of a band breaks between a figure and its unit', () => {
  const plan = planOf(sample('tamarack-ridge'));
  let broken = 0;
  for (let width = 320; width <= 1100; width += 4) {
    for (const units of ['us', 'metric'] as const) {
      const { shapes } = picture(plan, { sheet: width < 600 ? 'section' : 'all', width, height: 900, units }).scene;
      for (const lines of blocks(shapes)) {
        broken += lines.length > 2 ? 1 : 0;
        for (const line of lines.slice(0, -1)) expect(line, `${width} px: ${lines.join(' / ')}`).not.toMatch(/ \d+$/);
      }
    }
  }
  expect(broken, 'reasons on two lines').toBeGreaterThan(10);
});
