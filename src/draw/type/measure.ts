/** How wide words may come out: in the shipped face, or in the wider one that stands in where it is not there. */
import { textWidth, type Weight } from './width.ts';

/** For one drawing. */
export interface Measure {
  /** The factor it was made with. */
  readonly spare: number;
  readonly width: (words: string, size: number, weight?: Weight) => number;
  /**
   * Lines of at most `width` px, broken at spaces only: a figure and its unit hold together by a no-break space.
   * A word wider than the line stands alone. With `most`, what is left over ends in an ellipsis.
   */
  readonly wrap: (words: string, width: number, size: number, most?: number) => string[];
  /** Words cut to a width, with an ellipsis where something is missing. */
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

function measureBy(spare: number, widthOf: typeof textWidth): Measure {
  const shorten = (words: string, width: number, size: number, weight?: Weight): string => {
    if (widthOf(words, size, weight) <= width) return words;
    const signs = [...words];
    while (signs.length > 1 && widthOf(`${signs.join('').trimEnd()}…`, size, weight) > width) signs.pop();
    return `${signs.join('').trimEnd()}…`;
  };
  const wrap = (words: string, width: number, size: number, most = Infinity): string[] => {
    // Most words stand in one line.
    if (widthOf(words, size) <= width && words.trim() === words && !words.includes('  '))
      return words === '' ? [] : [words];
    const lines: string[] = [];
    let current = '';
    for (const word of words.split(' ').filter((part) => part !== '')) {
      const longer = current === '' ? word : `${current} ${word}`;
      if (current === '' || widthOf(longer, size) <= width) {
        current = longer;
        continue;
      }
      lines.push(current);
      current = word;
    }
    if (current !== '') lines.push(current);
    if (lines.length <= most) return lines;
    return [...lines.slice(0, most - 1), shorten(lines.slice(most - 1).join(' '), width, size)];
  };
  return { spare, width: widthOf, wrap, shorten };
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
