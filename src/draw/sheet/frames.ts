/** The details' borders, headings, and the dotted links that tell where in the section they stand. */
import type { Metres } from '../../model/si.ts';
import { feet, type Show } from '../../model/units.ts';
import type { ShortLanguage } from '../../words/words.ts';
import type { Shape } from '../scene.ts';
import { group, path, polyline, rect, text } from '../shapes.ts';
import { LINE, type Ink } from '../theme.ts';
import type { Measure } from '../type/measure.ts';
import { hold } from '../type/width.ts';
import type { FramePlace } from '../view.ts';

/** As it is said: to the hundredth. */
export function saidFactor(factor: number): number {
  return Math.round(factor * 100) / 100;
}

export function drawFrame(frame: FramePlace, { sheet }: ShortLanguage, ink: Ink, type: Measure): Shape {
  const { view, x, y, width, height, widthFactor } = frame;
  const name = view === 'O' ? '' : sheet.details[view];
  const nameX = x + type.width(view, 16, 600) + 10;
  const room = x + width - nameX - type.width(name, 16, 600) - 12;
  const words = scaleWays(saidFactor(widthFactor), sheet).find((each) => type.width(each, 12) <= room);
  return group(`frame/${view}`, [
    rect('border', x, y, width, height, { rx: 3, fill: 'none', stroke: ink.hair, 'stroke-width': 1.2 }),
    text('letter', x, y - 14, view, { size: 16, weight: 600, fill: ink.ink }),
    text('name', nameX, y - 14, name, { size: 16, weight: 600, fill: ink.ink }),
    ...(words === undefined
      ? []
      : [text('scale', x + width, y - 14, words, { size: 12, fill: ink.ink2, anchor: 'end' })]),
  ]);
}

/** Said wherever widths are drawn larger than depths: at length, and where that has no room. */
function scaleWays(factor: number, { trueProportion, widths }: ShortLanguage['sheet']): readonly string[] {
  return [factor === 1 ? trueProportion : widths({ factor }), `×${factor}`];
}

/** From the section's edge to a detail's two left corners. */
export function drawLink(frame: FramePlace, fromX: number, fromTop: number, fromBottom: number, ink: Ink): Shape {
  const dotted = { fill: 'none', stroke: ink.hair, 'stroke-width': LINE.narrow, 'stroke-dasharray': '1.5 4' };
  return group(`link/${frame.view}`, [
    path(
      'top',
      polyline([
        [fromX, fromTop],
        [frame.x, frame.y],
      ]),
      dotted,
    ),
    path(
      'bottom',
      polyline([
        [fromX, fromBottom],
        [frame.x, frame.y + frame.height],
      ]),
      dotted,
    ),
  ]);
}

/** A ratio holds on paper only, and only while nobody copies it at another size: a bar holds always. */
export function drawScaleBar(place: FramePlace, show: Show, ink: Ink): Shape {
  const { x, y, height } = place;
  const { length, right } = scaleBar(place, show);
  const foot = y + height + 15;
  return group('scaleBar', [
    rect('first', x, foot - 3, (right - x) / 2, 4, { fill: ink.ink, stroke: ink.ink, 'stroke-width': 0.8 }),
    rect('second', (x + right) / 2, foot - 3, (right - x) / 2, 4, {
      fill: ink.paper,
      stroke: ink.ink,
      'stroke-width': 0.8,
    }),
    text('words', right + 6, foot + 2, hold(show.depth(length)), { size: 11, fill: ink.ink2 }),
  ]);
}

/** Length of the bar and where it ends. */
function scaleBar(
  { x, width, height, topDepth, bottomDepth }: FramePlace,
  { units }: Show,
): { length: Metres; right: number } {
  const perMetre = height / (bottomDepth - topDepth);
  const unit = units === 'us' ? feet(1) : 1;
  const length = BARS.map((each) => each * unit).find((each) => each * perMetre >= width * 0.12) ?? unit;
  return { length, right: x + length * perMetre };
}

/** What there is room for beside the scale bar: the ratio in full, the ratio, or the widths alone. */
export function scaleCaption(
  place: FramePlace,
  scale: number | null,
  { sheet }: ShortLanguage,
  show: Show,
  type: Measure,
): string {
  const factor = saidFactor(place.widthFactor);
  if (scale === null) return sheet.widthsAlone({ factor });
  const { length, right } = scaleBar(place, show);
  const room = place.x + place.width - (right + 6 + type.width(hold(show.depth(length)), 11) + 8);
  const ways = [sheet.scaleAndWidths({ scale, factor }), sheet.ratioAndWidths({ scale, factor }), `1:${scale}`];
  return ways.find((each) => type.width(each, 12) <= room) ?? '';
}

const BARS = [1, 2, 5, 10, 20, 50, 100, 200, 500];

/** "widths ×25" under the section; on paper with its scale. */
export function drawScaleCaption(words: string, right: number, y: number, ink: Ink): Shape {
  return text('scaleCaption', right, y, words, { size: 12, fill: ink.ink2, anchor: 'end' });
}
