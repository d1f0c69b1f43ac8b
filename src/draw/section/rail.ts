/** The depth rail: ticks in the reader's units, the true extent of what a symbol stands for, brackets of the details. */
import type { Metres } from '../../model/si.ts';
import { depthTicks } from '../scale.ts';
import type { Shape } from '../scene.ts';
import { digits, group, line, path, polyline, rect, text } from '../shapes.ts';
import { LINE } from '../theme.ts';
import type { FramePlace } from '../view.ts';
import { within, type SectionFrame } from './frame.ts';

export function drawRail(frame: SectionFrame): Shape {
  const { left, top, bottom, ink, show } = frame;
  const ticks = depthTicks(frame, show.units, 54).filter(({ depth }) => depth > -0.01);
  const strokes = ticks
    .map(({ depth, words }) => `M${digits(left)} ${digits(frame.y(depth))}h${words === '' ? -4 : -7}`)
    .join('');
  const figures = ticks
    .filter(({ words }) => words !== '')
    .map(({ depth, words }): Shape => ({
      key: words,
      tag: 'text',
      attrs: { x: left - 11, y: frame.y(depth) + 4, 'font-size': 12 },
      text: words,
    }));
  const unit = text('unit', left - 11, frame.y(0) - 13, show.units === 'us' ? 'ft' : 'm', {
    size: 12,
    fill: ink.ink2,
    anchor: 'end',
  });
  return group('rail', [
    line('rail/line', left, top, left, bottom, { stroke: ink.ink2, 'stroke-width': LINE.narrow }),
    path('rail/ticks', strokes, { stroke: ink.ink2, 'stroke-width': LINE.narrow }),
    unit,
    group('figures', figures, { fill: ink.ink2, 'text-anchor': 'end' }),
  ]);
}

/** Where a symbol is drawn larger than its part, the rail shows the part's own length. */
export function drawTrueExtents(
  extents: readonly { key: string; top: Metres; bottom: Metres }[],
  frame: SectionFrame,
): Shape[] {
  return extents.map(({ key, top, bottom }) => {
    const y = frame.y(top);
    return rect(`extent/${key}`, frame.left - 2, y, 4, Math.max(1.5, frame.y(bottom) - y), { fill: frame.ink.pump });
  });
}

/** Letters and brackets for what the details show. */
export function drawBrackets(details: readonly FramePlace[], frame: SectionFrame, besideRail: number): Shape[] {
  const { ink } = frame;
  let lastEnd = -Infinity;
  return details.map(({ view, topDepth, bottomDepth }) => {
    const x = frame.y(topDepth) < lastEnd + 4 ? besideRail - 11 : besideRail;
    lastEnd = frame.y(bottomDepth);
    const from = within(frame, frame.y(topDepth));
    const to = within(frame, frame.y(bottomDepth));
    const middle = (from + to) / 2;
    const half = Math.max(6, (to - from) / 2);
    return group(`bracket/${view}`, [
      path(
        'bracket',
        polyline([
          [x + 5, middle - half],
          [x, middle - half],
          [x, middle + half],
          [x + 5, middle + half],
        ]),
        { fill: 'none', stroke: ink.hair, 'stroke-width': LINE.narrow },
      ),
      text('letter', x - 3, Math.min(middle + 4.5, middle - half + 12), view, {
        size: 13,
        weight: 600,
        fill: ink.ink,
        anchor: 'end',
      }),
    ]);
  });
}
