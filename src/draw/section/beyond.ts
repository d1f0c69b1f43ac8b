/** Levels above or below the section's window: each a small chip at the column's end, with an arrow on to where it is. */
import { drawDots } from '../assumed.ts';
import type { Memory } from '../memory.ts';
import type { Shape } from '../scene.ts';
import { group, path, polygon, rect, text } from '../shapes.ts';
import type { ChipPlace, ChipState } from '../view.ts';
import type { ChipColumn } from './chips.ts';
import type { ChipWords } from './chipWords.ts';
import type { SectionFrame } from './frame.ts';

const TALL = 20;
const GAP = 4;
/** However many there are, they leave this share of the column to what is in the window. */
const MOST_SHARE = 0.55;
/** As the section's own chips where those stop at code and value. */
const COLLAPSE = 2;

export interface BeyondDrawing {
  readonly shapes: readonly Shape[];
  readonly chips: readonly ChipPlace[];
  readonly states: readonly ChipState[];
  /** What is left of the column. */
  readonly column: ChipColumn;
}

export function drawBeyond(
  words: readonly ChipWords[],
  column: ChipColumn,
  frame: SectionFrame,
  { recall }: Memory,
): BeyondDrawing {
  if (words.length === 0) return { shapes: [], chips: [], states: [], column };
  const ordered = [...words].sort((a, b) => a.depth - b.depth || (a.handle < b.handle ? -1 : 1));
  const above = ordered.filter(({ depth }) => depth < frame.topDepth);
  const below = ordered.filter(({ depth }) => depth >= frame.topDepth);
  const pitch = Math.min(TALL + GAP, ((column.bottom - column.top) * MOST_SHARE) / words.length);
  const tall = Math.min(TALL, pitch - 1);
  const places = [
    ...above.map((each, i) => ({ each, on: { beyond: 'above' as const, tall, y: column.top + i * pitch } })),
    ...below.map((each, i) => ({
      each,
      on: { beyond: 'below' as const, tall, y: column.bottom - tall - (below.length - 1 - i) * pitch },
    })),
  ];
  return {
    shapes: [
      group(
        'beyond',
        places.map(({ each, on }) =>
          recall(`beyond/${each.handle}`, [each, on.beyond, on.y, tall, column, frame], () =>
            drawChip(each, on, column, frame),
          ),
        ),
        { fill: frame.ink.ink },
      ),
    ],
    chips: places.map(({ each, on: { beyond, y } }) => ({
      handle: each.handle,
      x: column.x,
      y,
      width: column.width,
      height: tall,
      lineY: beyond === 'above' ? frame.top : frame.bottom,
      beyond,
    })),
    states: places.map(({ each }) => ({ handle: each.handle, offset: 0, collapse: COLLAPSE })),
    column: { ...column, top: column.top + above.length * pitch, bottom: column.bottom - below.length * pitch },
  };
}

interface OnColumn {
  readonly beyond: 'above' | 'below';
  readonly y: number;
  readonly tall: number;
}

function drawChip(words: ChipWords, { beyond, y, tall }: OnColumn, column: ChipColumn, frame: SectionFrame): Shape {
  const { handle, name, short, value, ink, finding, assumed } = words;
  const danger = finding?.severity === 'danger';
  const stroke = danger ? frame.ink.danger : ink;
  const size = Math.min(11.5, tall * 0.6);
  const middle = y + tall / 2;
  const right = column.x + column.width - 9;
  const nameX = column.x + 19;
  const { type } = frame;
  const wide = type.width(value, size, 600);
  const room = right - wide - 6 - nameX;
  return group(handle, [
    rect('body', column.x, y, column.width, tall, {
      rx: tall / 2,
      fill: frame.ink.paper,
      stroke,
      'stroke-width': danger ? 1.8 : 1,
    }),
    arrow(column.x + 11, middle, beyond, stroke),
    text('name', nameX, middle + size * 0.35, type.width(name, size) <= room ? name : type.shorten(short, room, size), {
      size,
    }),
    text('value', right, middle + size * 0.35, value, { size, weight: 600, anchor: 'end' }),
    ...drawDots(assumed ? [{ x: right - wide, y: middle + size * 0.35 + 2, width: wide }] : [], frame.ink.ink2),
  ]);
}

/** Up or down, as a figure of its own: not every face has the sign. */
export function arrow(x: number, y: number, to: 'above' | 'below', fill: string): Shape {
  const sign = to === 'above' ? -1 : 1;
  return path(
    `arrow/${to}`,
    polygon([
      [x - 1, y - sign * 5],
      [x + 1, y - sign * 5],
      [x + 1, y],
      [x + 4, y],
      [x, y + sign * 5],
      [x - 4, y],
      [x - 1, y],
    ]),
    { fill },
  );
}
