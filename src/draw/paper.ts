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

/** ANSI/ASME Y14.1, sizes A and B, upright. */
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

/** 1 to 2, 5 and 10 and their tens. ISO 5455:1979, table of recommended reductions; from memory. */
const SCALES = [1, 2, 5, 10, 20, 50, 100, 200, 500, 1000, 2000, 5000];

/** The largest standard scale at which a length still fits. */
export function standardScale(length: Metres, room: number): number {
  const least = (length * 1000) / (room * MM_PER_PX);
  return SCALES.find((scale) => scale >= least - 1e-9) ?? Math.ceil(least / 1000) * 1000;
}

/** px per metre at a scale. */
export function pxPerMetre(scale: number): number {
  return 1000 / scale / MM_PER_PX;
}
