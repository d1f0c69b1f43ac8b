import { expect, test } from 'vitest';
import { SPARE_ELSEWHERE } from '../../../src/draw/index.ts';
import { measureWith } from '../../../src/draw/type/measure.ts';
import { textWidth, type Weight } from '../../../src/draw/type/width.ts';
import { GALLERY } from '../gallery.ts';
import { flat, picture } from '../pictures.ts';
import { helveticaWidth } from './helvetica.ts';

test('without spare width, words are measured in the shipped face', () => {
  const type = measureWith(1);
  const words = 'Static water level, pump off: 111 ft';
  expect(type.width(words, 12, 600)).toBe(textWidth(words, 12, 600));
});

test('lines and shortened words keep to the room when they come out wider', () => {
  const type = measureWith(1.25);
  const words = 'falls to the pump in a dry season when all is drawn';
  for (const line of type.wrap(words, 90, 12)) expect(textWidth(line, 12) * 1.25).toBeLessThanOrEqual(90);
  expect(textWidth(type.shorten(words, 90, 12), 12) * 1.25).toBeLessThanOrEqual(90);
  expect(type.width('111', 12)).toBe(type.width('000', 12));
});

// Adobe Core 14 Font Metrics: the widths of Helvetica, to which the usual plain faces are cut.
test('a face with the widths of Helvetica has room for the words of every kept picture', () => {
  const type = measureWith(SPARE_ELSEWHERE);
  const texts = GALLERY.flatMap(({ plan, view }) =>
    flat(picture(plan, view).scene.shapes).filter(({ shape }) => shape.tag === 'text'),
  );
  const wide = texts.flatMap(({ shape: { text = '' }, size, weight }) => {
    const width = helveticaWidth(text, size, weight);
    return width === undefined ? [] : [{ text, over: width - type.width(text, size, weight as Weight) }];
  });
  expect(wide.length).toBeGreaterThan(0.99 * texts.length);
  // Words have 3 px to the edge of their patch and more to each other; the widest are capitals by themselves ("AWG").
  expect(wide.filter(({ over }) => over > 2.5)).toEqual([]);
});
