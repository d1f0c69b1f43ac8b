/** Browser and command line draw the same picture: the one renders SVG itself, the other by a library of its own. */
import { readFile } from 'node:fs/promises';
import { expect, test } from '@playwright/test';
import { PNG } from 'pngjs';
import { agreement } from '../../renderers/agreement.ts';
import { inChromium, inResvg } from '../../renderers/renderers.ts';
import { SHOWN, svgOf } from '../../renderers/table.ts';
import { openSample, savedPicture } from './hands.ts';

/** Rims of letters differ by a third of this; a lost word of the smallest letters by more. */
const SHARE = 0.001;
const DENSEST = 0.04;

for (const name of SHOWN) {
  test(`Chromium and resvg agree on ${name}`, async ({ browser }) => {
    const svg = svgOf(name);
    const [image] = await inChromium(browser, [svg]);
    const { share, densest } = agreement(image!, await inResvg(svg));
    expect(share, 'share of pixels that differ').toBeLessThan(SHARE);
    expect(densest, 'the same where they lie densest').toBeLessThan(DENSEST);
  });
}

test('a lost word, another weight and a frame that does not crop are told from agreement', async ({ browser }) => {
  const svg = svgOf('rock-light');
  const spoilt = [
    svg.replace('>Grout<', '><'),
    svg.replaceAll('font-weight="400"', 'font-weight="600"'),
    svg.replaceAll(' overflow="hidden"', ' overflow="visible"').replace(/<path [^>]*fill-rule="evenodd"\/>/, ''),
  ];
  const whole = await inResvg(svg);
  for (const [i, image] of (await inChromium(browser, spoilt)).entries()) {
    expect(spoilt[i]).not.toBe(svg);
    expect(agreement(image, whole).densest, `spoilt picture ${i + 1}`).toBeGreaterThan(DENSEST);
  }
});

test('a PNG that the page saves is its SVG in the face of the drawing, and in no other', async ({ page, browser }) => {
  await openSample(page);
  const svg = await readFile(await (await savedPicture(page, 'SVG')).path(), 'utf8');
  const saved = PNG.sync.read(await readFile(await (await savedPicture(page, 'PNG')).path()));
  const [shown, withoutFace] = await inChromium(browser, [svg, svg.replace("'Barlow Semi Condensed', ", '')]);
  const { share, densest } = agreement(saved, shown!);
  expect(share, 'share of pixels that differ').toBeLessThan(SHARE);
  expect(densest, 'the same where they lie densest').toBeLessThan(DENSEST);
  expect(agreement(saved, withoutFace!).densest, 'against a face that stands in').toBeGreaterThan(2 * DENSEST);
});
