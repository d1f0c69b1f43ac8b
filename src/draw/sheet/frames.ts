/** The details' borders, headings, and the dotted links that tell where in the section they stand. */
import type { Show } from '../../model/units.ts';
import type { ShortLanguage } from '../../words/words.ts';
import { BAR_MM, MM_PER_PX } from '../paper.ts';
import { stroke } from '../parts/outline.ts';
import type { Shape } from '../scene.ts';
import { faced, group, path, rect, text } from '../shapes.ts';
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
  const ways = view === 'D' ? [sheet.fromFloor, sheet.trueProportion] : scaleWays(saidFactor(widthFactor), sheet);
  const words = ways.find((each) => type.width(each, 12) <= room);
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

/** Where a link leaves the section [px]. */
export interface LinkFrom {
  readonly x: number;
  readonly top: number;
  readonly bottom: number;
}

/** From the section's edge to a detail's two left corners. */
export function drawLink(frame: FramePlace, { x, top, bottom }: LinkFrom, ink: Ink): Shape {
  const dotted = { fill: 'none', stroke: ink.hair, 'stroke-width': LINE.narrow, 'stroke-dasharray': '1.5 4' };
  return group(`link/${frame.view}`, [
    path('top', stroke(x, top, frame.x, frame.y), dotted),
    path('bottom', stroke(x, bottom, frame.x, frame.y + frame.height), dotted),
  ]);
}

/** A ratio holds on paper only, and only while nobody copies it at another size: a bar holds always. */
export function drawScaleBar({ x, y, height }: FramePlace, scale: number, show: Show, ink: Ink): Shape {
  const half = barPx(show) / 2;
  const foot = y + height + 15;
  return group('scaleBar', [
    rect('first', x, foot - 3, half, 4, faced(ink.ink, ink.ink, 0.8)),
    rect('second', x + half, foot - 3, half, 4, faced(ink.paper, ink.ink, 0.8)),
    text('words', x + 2 * half + 6, foot + 2, barWords(scale, show), { size: 11, fill: ink.ink2 }),
  ]);
}

function barPx({ units }: Show): number {
  return BAR_MM[units] / MM_PER_PX;
}

function barWords(scale: number, show: Show): string {
  return hold(show.depth((scale * BAR_MM[show.units]) / 1000));
}

/** What a caption is written with. */
interface Hand {
  readonly words: ShortLanguage;
  readonly show: Show;
  readonly type: Measure;
}

/** What there is room for beside the scale bar: the ratio in full, the ratio, or the widths alone. */
export function scaleCaption(place: FramePlace, scale: number | null, hand: Hand): string {
  const { show, type } = hand;
  const { sheet } = hand.words;
  const factor = saidFactor(place.widthFactor);
  if (scale === null) return sheet.widthsAlone({ factor });
  const room = place.width - (barPx(show) + 6 + type.width(barWords(scale, show), 11) + 8);
  const said = sheet.scale({ scale }, show);
  const ways = [
    sheet.scaleAndWidths({ scale: said.long, factor }),
    sheet.ratioAndWidths({ scale: said.long, factor }),
    said.long,
    sheet.ratioAndWidths({ scale: said.short, factor }),
    said.short,
  ];
  return ways.find((each) => type.width(each, 12) <= room) ?? '';
}

/** "widths ×25" under the section; on paper with its scale. */
export function drawScaleCaption(words: string, right: number, y: number, ink: Ink): Shape {
  return text('scaleCaption', right, y, words, { size: 12, fill: ink.ink2, anchor: 'end' });
}
