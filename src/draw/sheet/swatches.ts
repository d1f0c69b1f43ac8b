/** What each row of the legend shows beside its words, drawn as it stands on the sheet. */
import type { ShortLanguage } from '../../words/words.ts';
import { drawDots } from '../assumed.ts';
import { stroke } from '../parts/outline.ts';
import type { Shape } from '../scene.ts';
import { faced, inked, line, path, polygon, rect, text } from '../shapes.ts';
import { isTwoTone, THEMES, type Ink } from '../theme.ts';
import type { View } from '../view.ts';

/** What is explained beside the materials. */
export type LegendKey = keyof ShortLanguage['caption']['legend'];

/** Width of a swatch, and of the letters beside it [px]. */
export const SWATCH = 30;
export const SIZE = 11;

type Swatch = (x: number, y: number, ink: Ink) => Shape[];

const lined =
  (name: 'pumping' | 'frost', dash: string): Swatch =>
  (x, y, ink) => [line('line', x, y + 7, x + SWATCH, y + 7, inked(ink[name], 1.8, dash))];

const level =
  (name: 'static' | 'pumping', filled: boolean): Swatch =>
  (x, y, ink) => {
    const triangle = polygon([
      [x + 15, y + 12],
      [x + 9.5, y + 2.5],
      [x + 20.5, y + 2.5],
    ]);
    return [path('sign', triangle, faced(filled ? ink[name] : ink.paper, ink[name], 1.3))];
  };

const bold = (ink: Ink) => ({ size: SIZE, weight: 600, fill: ink.ink, anchor: 'middle' }) as const;

const SWATCHES: Readonly<Record<LegendKey, Swatch>> = {
  static: level('static', false),
  pumping: level('pumping', true),
  // Water with the strokes that cross it where nobody knows how far it falls.
  anyFall: (x, y, ink) => [
    rect('water', x, y + 1, SWATCH, 12, { fill: ink.tones.water, stroke: ink.hair }),
    path(
      'strokes',
      [6, 12].map((foot) => stroke(x + 4, y + foot, x + SWATCH - 4, y + foot - 4)).join(''),
      inked(ink.pumping, 0.8, '3 3'),
    ),
  ],
  cone: lined('pumping', '5 3.5'),
  frost: lined('frost', '9 3 1.6 3'),
  // A bar, so that it is not taken for a filling of the same grey.
  band: (x, y, ink) => {
    const look = TWO_TONES.has(ink) ? faced(ink.tones.steel.shadow, ink.ink, 1) : { fill: ink.allowed };
    return [rect('bar', x + SWATCH / 2 - 3, y - 1, 6, 16, { rx: 2.5, ...look })];
  },
  // The same, hatched.
  openBand: (left, top, ink) => {
    const [x, y] = [left + SWATCH / 2, top - 1];
    const slants = [6, 11, 16].map((foot) => stroke(x - 3, y + foot, x + 3, y + foot - 6)).join('');
    return [
      rect('bar', x - 3, y, 6, 16, { rx: 2.5, ...faced(ink.paper, ink.ink2, 1) }),
      path('hatching', slants, inked(ink.ink2, 1)),
    ];
  },
  grout: (x, y, ink) => [rect('fill', x, y + 1, SWATCH, 12, { fill: ink.tones.grout.fill, stroke: ink.hair })],
  // Two rows of grains, as the section draws them beside a screen.
  pack: (x, y, ink) => [
    rect('fill', x, y + 1, SWATCH, 12, { fill: ink.tones.gravel.fill, stroke: ink.hair }),
    path(
      'grains',
      stroke(x + 3, y + 5, x + SWATCH - 1, y + 5) + stroke(x + 5, y + 9.5, x + SWATCH - 1, y + 9.5),
      inked(ink.ground.gravel.hatch, 1.5, '1.5 3.5'),
    ),
  ],
  symbol: (x, y, ink) => [rect('box', x + 7, y + 2, 16, 10, { rx: 2, fill: 'none', ...inked(ink.ink2, 1, '3 2') })],
  unknown: (x, y, ink) => [
    rect('chip', x + 1, y + 1, SWATCH - 2, 12, { rx: 6, fill: 'none', ...inked(ink.ink2, 1, '3 3') }),
    text('sign', x + SWATCH / 2, y + 10.5, '?', bold(ink)),
  ],
  assumed: (x, y, ink) => [
    text('figure', x + SWATCH / 2, y + 9.5, '12', bold(ink)),
    ...drawDots([{ x: x + SWATCH / 2 - 7, y: y + 12, width: 14 }], ink.ink2),
  ],
};

/** Inks of themes that fill no band with a colour. */
const TWO_TONES: ReadonlySet<Ink> = new Set(
  (Object.keys(THEMES) as View['theme'][]).filter(isTwoTone).map((theme) => THEMES[theme]),
);

export function swatchOf(key: LegendKey, ink: Ink): (x: number, y: number) => Shape[] {
  return (x, y) => SWATCHES[key](x, y, ink);
}
