import { expect, test } from 'vitest';
import { draw, toSvg } from '../../src/draw/index.ts';
import type { View } from '../../src/draw/index.ts';
import { solve } from '../../src/model/index.ts';
import { show } from '../../src/model/units.ts';
import { short } from '../../src/words/en/short.ts';
import { sayShort } from '../../src/words/sayJudgement.ts';
import { GALLERY } from './gallery.ts';

/** A picture travels by mail and stands in a page beside others: section, details, legend and all. */
const MOST_BYTES = 60_000;

// What these hold is "unchanged since it was looked at"; the geometry is tested on its own, part by part.
test.each(GALLERY)('$name is unchanged since it was looked at: $why', async ({ name, plan, view }) => {
  const whole: View = { sheet: 'all', width: 1040, height: 920, units: 'us', theme: 'light', ...view };
  const solution = solve(plan);
  const findings = solution.findings.map((finding) => {
    const { title, amount } = sayShort(finding, short, show(whole.units));
    return `${finding.severity} ${finding.rule} ${title} (${amount})`;
  });
  // One shape a line, so that a change can be read.
  const svg = toSvg(draw(solution, whole)).replaceAll('><', '>\n<');
  expect(new TextEncoder().encode(svg).length).toBeLessThan(MOST_BYTES);
  await expect(`${svg}\n`).toMatchFileSnapshot(`gallery/${name}.svg`);
  await expect(`${findings.join('\n')}\n`).toMatchFileSnapshot(`gallery/${name}.findings.txt`);
});

test('every kept picture has a name and a reason of its own', () => {
  expect(new Set(GALLERY.map(({ name }) => name)).size).toBe(GALLERY.length);
  expect(new Set(GALLERY.map(({ why }) => why)).size).toBe(GALLERY.length);
});
