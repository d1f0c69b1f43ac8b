/** Under the drawing on the page: what bars and dots mean, and nothing that is not drawn. */
import { expect, test } from 'vitest';
import { render } from 'vitest-browser-svelte';
import DrawingKey from '../../src/app/drawing/DrawingKey.svelte';
import type { Plan } from '../../src/model/plan/schema.ts';
import { solve } from '../../src/model/solve.ts';
import { show } from '../../src/model/units.ts';

const well = (water: unknown): Plan =>
  ({
    format: 'wellcut-plan/1',
    well: { depth: '200 ft', casing: { size: '6 in' }, intake: { kind: 'open hole', diameter: '6 in' } },
    water,
  }) as Plan;

test('a bar of which nobody knows, and dots', async () => {
  const screen = await render(DrawingKey, { solution: solve(well({ staticLevel: '48 ft' })), show: show('us') });
  await expect.element(screen.getByText(/Hatched bar: the intake may hang here/)).toBeVisible();
  await expect.element(screen.getByText(/Dots: assumed/)).toBeVisible();
  await expect.element(screen.getByText(/pumping may draw it anywhere/)).toBeVisible();
});

test('no bar where even the level at rest is unknown', async () => {
  const screen = await render(DrawingKey, { solution: solve(well({ staticLevel: 'unknown' })), show: show('us') });
  await expect.element(screen.getByText(/Dots: assumed/)).toBeVisible();
  expect(screen.container.textContent).not.toContain('bar:');
});

test('a metric reader’s dots stand under metres', async () => {
  const screen = await render(DrawingKey, { solution: solve(well({ staticLevel: '15 m' })), show: show('metric') });
  expect(screen.container.textContent).toContain('0 m Dots: assumed');
  expect(screen.container.textContent).not.toContain('ft');
});
