/** How wide words may come out: in the shipped face, or in the wider one that stands in where it is not there. */
import { shorten, textWidth, wrap, type Weight } from './width.ts';

/** The functions of width.ts, for one drawing. */
export interface Measure {
  /** The factor it was made with. */
  readonly spare: number;
  readonly width: (words: string, size: number, weight?: Weight) => number;
  readonly wrap: (words: string, width: number, size: number, weight?: Weight, most?: number) => string[];
  readonly shorten: (words: string, width: number, size: number, weight?: Weight) => string;
}

/** @param spare  how much wider than in the shipped face words may come out, as a factor; 1 for that face itself */
export function measureWith(spare: number): Measure {
  return spare === 1
    ? SHIPPED
    : measureBy(spare, (words, size, weight) => textWidth(evenFigures(words), size, weight) * spare);
}

/** Figures of most faces are all as wide as a nought; the shipped one has a narrow "1". */
function evenFigures(words: string): string {
  return words.replaceAll('1', '0');
}

function measureBy(spare: number, width: typeof textWidth): Measure {
  return {
    spare,
    width,
    wrap: (words, room, size, weight = 400, most = Infinity) => wrap(words, room, size, weight, most, width),
    shorten: (words, room, size, weight = 400) => shorten(words, room, size, weight, width),
  };
}

const SHIPPED = measureBy(1, textWidth);

/**
 * Room for the words of a drawing that is opened elsewhere, where the shipped face may be missing.
 *
 * The words of all kept pictures, laid out in a face with the widths of Arial, come out 1.16 (semibold 1.19) times as
 * wide as they are measured here, at most 1.265; in one with the widths of Arial Narrow 0.95 to 1.04. Measured with
 * Nimbus Sans, which has those widths. DejaVu Sans, 1.33 and semibold 1.45, is wider than any room we could leave.
 */
export const SPARE_ELSEWHERE = 1.27;
