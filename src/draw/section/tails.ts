/** From what a chip reads to the ground's edge, where its leader takes over: levels have their own lines, the rest thin ones. */
import type { Memory } from '../memory.ts';
import type { Shape } from '../scene.ts';
import { group, inked, line } from '../shapes.ts';
import type { ChipWords } from './chipWords.ts';
import type { SectionFrame } from './frame.ts';

const OWN_LINE: ReadonlySet<string> = new Set(['staticLevel', 'pumpingLevel', 'frostDepth']);

/** @param lineEnds  x where the buried line turns up to the house: beyond it the adapter's depth needs a line */
export function drawTails(
  words: readonly ChipWords[],
  lineEnds: number,
  frame: SectionFrame,
  { recall }: Memory,
): Shape[] {
  const starts: Readonly<Record<string, number>> = { pumpSetting: frame.axis + 6, pitlessDepth: lineEnds };
  const tails = words
    .filter(({ handle, known }) => known && !OWN_LINE.has(handle))
    .map(({ handle, depth, ink, finding }) => {
      const y = frame.y(depth);
      const from = starts[handle] ?? frame.axis + frame.holeHalf - 4;
      const stroke = finding?.severity === 'danger' ? frame.ink.danger : ink;
      return recall(`tail/${handle}`, [from, y, stroke, frame], () =>
        line(handle, from, y, frame.right, y, inked(stroke, handle === 'pumpSetting' ? 1.4 : 0.9)),
      );
    });
  return tails.length === 0 ? [] : [recall('tails', tails, () => group('tails', tails))];
}
