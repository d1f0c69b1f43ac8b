/** "pump on" or "pump off": that the pump runs is never told by colour or movement alone. */
import type { ShortLanguage } from '../../words/words.ts';
import type { Shape } from '../scene.ts';
import { text, type Place } from '../shapes.ts';
import { TYPE, type Ink } from '../theme.ts';
import type { Measure } from '../type/measure.ts';

const SIZE = TYPE.small;
const LINE = 12;

/** What is said of the pump while it runs, or while it rests. */
export function pumpWord({ section }: ShortLanguage, pumping: boolean): string {
  return pumping ? section.pumpOn : section.pumpOff;
}

/** As one line, or where that has no room one word a line. */
function linesOf(words: string, width: number, type: Measure): string[] {
  return type.width(words, SIZE, 600) <= width ? [words] : words.split(' ');
}

/** Width and height of the words about their middle [px]. */
export function pumpWordSize(words: string, width: number, type: Measure): readonly [number, number] {
  const lines = linesOf(words, width, type);
  let widest = 0;
  for (const each of lines) widest = Math.max(widest, type.width(each, SIZE, 600));
  return [widest, lines.length * LINE + 4];
}

/**
 * At the middle of the words. Where one line is wider than their room, one word a line is taken, and where these are too
 * wide, none.
 */
export function drawPumpWord(words: string, { x, y, width }: Omit<Place, 'height'>, ink: Ink, type: Measure): Shape[] {
  const lines = linesOf(words, width, type);
  if (lines.some((each) => type.width(each, SIZE, 600) > width)) return [];
  return lines.map((each, i) => {
    const baseline = y + 4 + (i - (lines.length - 1) / 2) * LINE;
    const word = text(`pumpWord/${PLACES[i] ?? each}`, x, baseline, each, {
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

const PLACES: readonly string[] = ['first', 'second', 'third', 'fourth'];
