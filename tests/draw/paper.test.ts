import { describe, expect, test } from 'vitest';
import { A3, A4, LEGAL, LETTER, TABLOID, toSvg } from '../../src/draw/index.ts';
import { parseQuantity } from '../../src/model/units.ts';
import { MM_PER_PX, standardScale } from '../../src/draw/paper.ts';
import { planOf, sample, SAMPLES } from '../plans/build.ts';
import { find, flat, picture } from './pictures.ts';

// ISO 216 (A4, A3) and ANSI/ASME Y14.1, sizes A and B, with the office's 8-1/2 by 14 in: from memory.
const PAPERS = [
  ['A4', A4, 210, 297],
  ['A3', A3, 297, 420],
  ['Letter', LETTER, 8.5 * 25.4, 11 * 25.4],
  ['Legal', LEGAL, 8.5 * 25.4, 14 * 25.4],
  ['Tabloid', TABLOID, 11 * 25.4, 17 * 25.4],
] as const;
const READERS = ['us', 'metric'] as const;
const WELLS = SAMPLES.flatMap((name) => READERS.map((units) => [name, units] as const));
// Edges of an engineer's ruler, 10 to 60 ft to an inch and their tens, with 15 and 80 that two of them read; for metric
// readers ISO 5455:1979, recommended reductions 1:2, 1:5, 1:10 and their tens, with usual rulers' steps between: from memory.
const TOLD = {
  us: /^1 in = (1|1\.5|2|3|4|5|6|8|10|15|20|30|40|50|60|80|100|150|200|300) ft \(1:(\d+)\)$/,
  metric: /^1:(10|15|20|25|30|40|50|60|75|100|150|200|250|300|400|500|600|750|1000|1500|2000)$/,
} as const;

describe.each(PAPERS)('on %s', (_, paper, wide, tall) => {
  test('the picture measures what the sheet does', () => {
    const svg = toSvg(picture(planOf(sample('tamarack-ridge')), { theme: 'print', paper }).scene);
    const [, width, height] = /width="([\d.]+)mm" height="([\d.]+)mm"/.exec(svg) ?? [];
    expect(Number(width)).toBeCloseTo(wide, 6);
    expect(Number(height)).toBeCloseTo(tall, 6);
  });

  test.each(WELLS)('%s is drawn to a standard scale that a ruler confirms, %s', (name, units) => {
    const { scene } = picture(planOf(sample(name)), { theme: 'print', paper, caption: true, units });
    const block = flat([find(scene.shapes, 'titleBlock')]).map(({ shape }) => shape.text ?? '');
    const said = /Section: SCALE (.*?) vertical/.exec(block.join(' '))?.[1] ?? '';
    expect(said).toMatch(TOLD[units]);
    const ratio = Number(/1:(\d+)/.exec(said)?.[1]);
    if (units === 'us') expect(ratio).toBe(Number(/= ([\d.]+) ft/.exec(said)?.[1]) * 12);
    const frame = scene.frames.find(({ view }) => view === 'O');
    if (frame === undefined) throw new Error('no section');
    const onPaper = frame.height * MM_PER_PX;
    const inTheWell = (frame.bottomDepth - frame.topDepth) * 1000;
    expect(inTheWell / onPaper).toBeCloseTo(ratio, 6);
    const beside = find(scene.shapes, 'scaleCaption').text ?? '';
    expect(said).toContain(/(1 in = [\d.]+ ft|1:\d+)/.exec(beside)?.[1] ?? 'nothing beside the bar');
  });

  // The length of the bar is read from the file as a ruler meets it: px of the view box on a sheet of so many millimetres.
  test.each(WELLS)(
    'the bar under %s is an inch or two centimetres long and as much of the well as it says, %s',
    (name, units) => {
      const svg = toSvg(picture(planOf(sample(name)), { theme: 'print', paper, caption: true, units }).scene);
      const [, boxWide = ''] = /viewBox="\S+ \S+ (\S+) \S+" width="[\d.]+mm"/.exec(svg) ?? [];
      const half = /<rect x="([\d.]+)" y="[\d.]+" width="([\d.]+)" height="4" [^>]*\/>/.source;
      const [, x = '', , lastX = '', lastWidth = '', words = ''] =
        new RegExp(`${half}${half}<text [^>]*>([^<]*)<`).exec(svg) ?? [];
      const mm = ((Number(lastX) + Number(lastWidth) - Number(x)) * wide) / Number(boxWide);
      expect(Math.abs(mm - (units === 'us' ? 25.4 : 20))).toBeLessThan(0.02);
      const ratio = Number(/SCALE [^<]*?1:(\d+)/.exec(svg)?.[1]);
      const length = parseQuantity(words.replaceAll('\u00a0', ' '), 'length');
      if (!length.ok) throw new Error(`${words}: ${length.problem}`);
      expect(Math.abs((length.si * 1000) / ratio - mm)).toBeLessThan(0.02);
    },
  );

  test.each(WELLS)('%s fills two thirds of the room for its depths or more, %s', (name, units) => {
    const { scene } = picture(planOf(sample(name)), { theme: 'print', paper, caption: true, units });
    const section = scene.frames.find(({ view }) => view === 'O');
    const details = scene.frames.filter(({ view }) => view !== 'O');
    const foot = Math.max(...details.map(({ y, height }) => y + height));
    if (section === undefined) throw new Error('no section');
    expect(section.height / (foot - section.y)).toBeGreaterThanOrEqual(2 / 3);
    expect(section.y + section.height).toBeLessThanOrEqual(foot + 1e-6);
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
  const room = 100 / MM_PER_PX; // 10 cm
  const metric = [0.1, 0.101, 2, 20, 20.1, 24, 31, 100, 499].map((metres) => standardScale(metres, room, 'metric'));
  expect(metric).toEqual([1, 2, 20, 200, 250, 250, 400, 1000, 5000]);
  const inch = 25.4 / MM_PER_PX;
  const us = [10, 10.1, 39, 41, 60.1, 81, 290, 4].map((feet) => standardScale(feet * 0.3048, inch, 'us') / 12);
  expect(us).toEqual([10, 15, 40, 50, 80, 100, 300, 4]);
});

test('a larger sheet takes a larger scale', () => {
  const plan = planOf(sample('tamarack-ridge'));
  const ratioOn = (paper: typeof LETTER, units: 'us' | 'metric'): number => {
    const { scene } = picture(plan, { theme: 'print', paper, caption: true, units });
    return Number(
      /1:(\d+)/.exec(
        flat([find(scene.shapes, 'titleBlock')])
          .map(({ shape }) => shape.text)
          .join(' '),
      )?.[1],
    );
  };
  for (const units of READERS) {
    expect(ratioOn(TABLOID, units)).toBeLessThan(ratioOn(LETTER, units));
    expect(ratioOn(A3, units)).toBeLessThan(ratioOn(A4, units));
    expect(ratioOn(LEGAL, units)).toBeLessThan(ratioOn(LETTER, units));
  }
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
      'SCALE 1 in = ',
      'widths',
      'Checks: ',
      'could not be checked',
    ])
      expect(said).toContain(words);
    for (const words of ['Version 0.1.0', 'Not an engineered drawing']) expect(said).toContain(words);
    expect(said).not.toContain('…');
  },
);
