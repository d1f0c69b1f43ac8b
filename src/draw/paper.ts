/** Sheets of paper: how large the drawing is on it, and which standard scale its depths are drawn to. */
import type { Metres } from '../model/si.ts';
import type { Box } from './hatch/clip.ts';

export interface Paper {
  /** mm */
  readonly width: number;
  readonly height: number;
  /** On all four sides, kept clear: printers cannot reach the edge. Default 12.7 mm (half an inch). */
  readonly margin?: number;
}

/** ANSI/ASME Y14.1, sizes A and B, upright; between them the office's long sheet, 8-1/2 by 14 in. */
export const LETTER: Paper = { width: 215.9, height: 279.4 };
export const LEGAL: Paper = { width: 215.9, height: 355.6 };
export const TABLOID: Paper = { width: 279.4, height: 431.8 };

/** ISO 216, upright. */
export const A4: Paper = { width: 210, height: 297 };
export const A3: Paper = { width: 297, height: 420 };

/** The same sheet lying on its side. */
export function landscape(paper: Paper): Paper {
  return { ...paper, width: paper.height, height: paper.width };
}

const MARGIN = 12.7;

/** One px of the drawing on paper [mm]: its smallest letters, of 11 px, come out at 7.5 points. */
export const MM_PER_PX = (7.5 * 25.4) / 72 / 11;

/** What the margins leave [px]. */
export function drawable({ width, height, margin = MARGIN }: Paper): {
  readonly width: number;
  readonly height: number;
} {
  return { width: (width - 2 * margin) / MM_PER_PX, height: (height - 2 * margin) / MM_PER_PX };
}

/** The whole sheet of paper in the drawing's px, whose origin is inside the margins. */
export function sheetBox({ width, height, margin = MARGIN }: Paper): Box {
  const edge = -margin / MM_PER_PX;
  return { left: edge, top: edge, right: edge + width / MM_PER_PX, bottom: edge + height / MM_PER_PX };
}

/** What a scale is chosen and told in. */
type Units = 'us' | 'metric';

/**
 * Steps between a scale and the tenfold one.
 *
 * Metric, 1 to so many: ISO 5455:1979 recommends 1, 2 and 5, and the steps between them stand on usual rulers. In feet to
 * an inch: the six edges of an engineer's ruler; 15 is read in halves on its edge of 30, 80 in twos on that of 40. From
 * memory. No step is more than half as large again as the one before it, from 1 in = 2 ft on: a sheet is filled by two thirds.
 */
const STEPS: Readonly<Record<Units, readonly number[]>> = {
  metric: [1, 1.5, 2, 2.5, 3, 4, 5, 6, 7.5],
  us: [1, 1.5, 2, 3, 4, 5, 6, 8],
};
/** Inches in a foot: 1 in = 40 ft is 1:480. */
const UNIT: Readonly<Record<Units, number>> = { metric: 1, us: 12 };

/** The largest of the steps at which a length still fits: depths are drawn 1 to so many. */
export function standardScale(length: Metres, room: number, units: Units): number {
  const least = (length * 1000) / (room * MM_PER_PX) / UNIT[units];
  let tens = 10 ** Math.max(0, Math.floor(Math.log10(least)));
  for (;;) {
    for (const step of STEPS[units]) {
      const scale = step * tens;
      if (scale >= least - 1e-9 && Number.isInteger(scale)) return scale * UNIT[units];
    }
    tens *= 10;
  }
}

/** What a bar on paper measures [mm], so that a ruler tells whether it was printed as large as it says. */
export const BAR_MM: Readonly<Record<Units, number>> = { metric: 20, us: 25.4 };

/** px per metre at a scale. */
export function pxPerMetre(scale: number): number {
  return 1000 / scale / MM_PER_PX;
}
