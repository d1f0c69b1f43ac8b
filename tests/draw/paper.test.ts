import { describe, expect, test } from 'vitest';
import { A4, LETTER, toSvg } from '../../src/draw/index.ts';
import { MM_PER_PX, standardScale } from '../../src/draw/paper.ts';
import { planOf, sample, SAMPLES } from '../plans/build.ts';
import { find, flat, number, picture } from './pictures.ts';

// ISO 216 (A4) and ANSI/ASME Y14.1, size A (8.5 by 11 in): from memory.
const PAPERS = [
  ['A4', A4, 210, 297],
  ['Letter', LETTER, 8.5 * 25.4, 11 * 25.4],
] as const;
// ISO 5455:1979, recommended reductions 1:2, 1:5, 1:10 and their tens: from memory.
const RECOMMENDED = /^1:(1|2|5)0*$/;

describe.each(PAPERS)('on %s', (_, paper, wide, tall) => {
  test('the picture measures what the sheet does', () => {
    const svg = toSvg(picture(planOf(sample('tamarack-ridge')), { theme: 'print', paper }).scene);
    const [, width, height] = /width="([\d.]+)mm" height="([\d.]+)mm"/.exec(svg) ?? [];
    expect(Number(width)).toBeCloseTo(wide, 6);
    expect(Number(height)).toBeCloseTo(tall, 6);
  });

  test.each(SAMPLES)('%s is drawn to a standard scale that a ruler confirms', (name) => {
    const { scene } = picture(planOf(sample(name)), { theme: 'print', paper, caption: true });
    const words = find(scene.shapes, 'scaleCaption').text ?? '';
    const ratio = /SCALE (1:\d+) vertical/.exec(words)?.[1] ?? '';
    expect(ratio).toMatch(RECOMMENDED);
    const frame = scene.frames.find(({ view }) => view === 'O');
    if (frame === undefined) throw new Error('no section');
    const onPaper = frame.height * MM_PER_PX;
    const inTheWell = (frame.bottomDepth - frame.topDepth) * 1000;
    expect(inTheWell / onPaper).toBeCloseTo(Number(ratio.slice(2)), 6);
    const block = flat([find(scene.shapes, 'titleBlock')]).map(({ shape }) => shape.text ?? '');
    expect(block.join(' ')).toContain(`SCALE ${ratio} vertical`);
  });

  test('the bar under the section is as long as it says', () => {
    const { scene } = picture(planOf(sample('tamarack-ridge')), { theme: 'print', paper });
    const frame = scene.frames.find(({ view }) => view === 'O');
    const bar = find(scene.shapes, 'scaleBar');
    const feet = Number(/(\d+)/.exec(find(bar.children ?? [], 'words').text ?? '')?.[1]);
    const long = number(find(bar.children ?? [], 'first'), 'width') * 2;
    if (frame === undefined) throw new Error('no section');
    expect(long / (frame.height / (frame.bottomDepth - frame.topDepth))).toBeCloseTo(feet * 0.3048, 6);
  });

  test.each(SAMPLES)('%s stays inside the margins and its smallest letters are 7.5 points', (name) => {
    const { scene } = picture(planOf(sample(name)), { theme: 'print', paper, caption: true });
    const sizes = flat(scene.shapes).flatMap(({ shape }) => {
      const size = shape.attrs['font-size'];
      // The number in a sign is bound to the sign's size.
      return shape.tag === 'text' && shape.key !== 'number' && typeof size === 'number' ? [size] : [];
    });
    expect(Math.min(...sizes) * MM_PER_PX * (72 / 25.4)).toBeGreaterThanOrEqual(7.5 - 1e-9);
    for (const { x, y, width, height } of scene.frames) {
      expect(x).toBeGreaterThanOrEqual(0);
      expect(y).toBeGreaterThanOrEqual(0);
      expect((x + width) * MM_PER_PX).toBeLessThanOrEqual(wide - 25.4 + 1e-9);
      expect((y + height) * MM_PER_PX).toBeLessThanOrEqual(tall - 25.4 + 1e-9);
    }
  });
});

test('the largest standard scale that fits is taken', () => {
  const room = 100 / MM_PER_PX;
  expect([0.1, 0.101, 2, 20, 20.1, 100, 499].map((metres) => standardScale(metres, room))).toEqual([
    1, 2, 20, 200, 500, 1000, 5000,
  ]);
});

// What a title block of a drawing must tell, whatever the well: common practice, no source.
test.each(SAMPLES.flatMap((name) => [LETTER, A4].map((paper) => [name, paper] as const)))(
  'the title block of %s says date, datum, scale, checks, version and what the drawing is not',
  (name, paper) => {
    const imprint = { date: '2026-05-03', version: '0.1.0' };
    const { scene } = picture(planOf(sample(name)), { theme: 'print', paper, caption: true, imprint });
    const said = flat([find(scene.shapes, 'titleBlock')])
      .map(({ shape }) => shape.text ?? '')
      .join(' ');
    for (const words of [
      '2026-05-03',
      'from the ground surface',
      'SCALE 1:',
      'widths',
      'Checks: ',
      'could not be checked',
    ])
      expect(said).toContain(words);
    for (const words of ['Version 0.1.0', 'Not an engineered drawing']) expect(said).toContain(words);
    expect(said).not.toContain('…');
  },
);
