/** "pump on" or "pump off" as a word: that the pump runs is never told by colour or movement alone. */
import type { Shape } from '../scene.ts';
import { text } from '../shapes.ts';
import { TYPE, type Ink } from '../theme.ts';
import type { Measure } from '../type/measure.ts';

const SIZE = TYPE.small;
const LINE = 12;

/** As one line or two, whichever there is room for. */
function linesOf(pumping: boolean, width: number, type: Measure): string[] {
  const words = pumping ? 'pump on' : 'pump off';
  return type.width(words, SIZE, 600) <= width ? [words] : words.split(' ');
}

/** Width and height of the words about their middle [px]. */
export function pumpWordSize(pumping: boolean, width: number, type: Measure): readonly [number, number] {
  const lines = linesOf(pumping, width, type);
  let widest = 0;
  for (const each of lines) widest = Math.max(widest, type.width(each, SIZE, 600));
  return [widest, lines.length * LINE + 4];
}

/**
 * @param width  room for it; where one line is too wide, two are taken, and where these are, none
 * @param y      middle of the words
 */
export function drawPumpWord(pumping: boolean, x: number, y: number, width: number, ink: Ink, type: Measure): Shape[] {
  const lines = linesOf(pumping, width, type);
  if (lines.some((each) => type.width(each, SIZE, 600) > width)) return [];
  return lines.map((each, i) => {
    const baseline = y + 4 + (i - (lines.length - 1) / 2) * LINE;
    const word = text(`pumpWord/${i === 0 ? 'first' : 'second'}`, x, baseline, each, {
      size: SIZE,
      weight: 600,
      fill: ink.ink,
      anchor: 'middle',
    });
    return {
      ...word,
      attrs: {
        ...word.attrs,
        stroke: ink.paper,
        'stroke-width': 3,
        'stroke-linejoin': 'round',
        'paint-order': 'stroke',
      },
    };
  });
}
