/**
 * Advances of the printable ASCII signs, by code from 32 to 126, in thousandths of the size: those of Arial, Liberation
 * Sans and Nimbus Sans as well, which were all cut to these widths.
 *
 * Source  Adobe Core 14 Font Metrics, Helvetica.afm and Helvetica-Bold.afm, column WX
 */
const REGULAR = [
  278, 278, 355, 556, 556, 889, 667, 191, 333, 333, 389, 584, 278, 333, 278, 278, 556, 556, 556, 556, 556, 556, 556,
  556, 556, 556, 278, 278, 584, 584, 584, 556, 1015, 667, 667, 722, 722, 667, 611, 778, 722, 278, 500, 667, 556, 833,
  722, 778, 667, 778, 722, 667, 611, 722, 667, 944, 667, 667, 611, 278, 278, 278, 469, 556, 333, 556, 556, 500, 556,
  556, 278, 556, 556, 222, 222, 500, 222, 833, 556, 556, 556, 556, 333, 500, 278, 556, 500, 722, 500, 500, 500, 334,
  260, 334, 584,
];
const BOLD = [
  278, 333, 474, 556, 556, 889, 722, 238, 333, 333, 389, 584, 278, 333, 278, 278, 556, 556, 556, 556, 556, 556, 556,
  556, 556, 556, 333, 333, 584, 584, 584, 611, 975, 722, 722, 722, 722, 667, 611, 778, 722, 278, 556, 722, 611, 833,
  722, 778, 667, 778, 722, 667, 611, 722, 667, 944, 667, 667, 611, 333, 278, 333, 584, 556, 333, 556, 611, 556, 611,
  556, 333, 611, 611, 278, 278, 556, 278, 889, 611, 611, 611, 611, 389, 556, 333, 611, 556, 778, 556, 556, 500, 389,
  280, 389, 584,
];

/** Others that the drawing uses: no-break space, multiplication and minus sign, middle dot, dashes, quote, ellipsis. */
const OTHERS: Readonly<Record<string, number>> = {
  '\u00A0': 278,
  '×': 584,
  '\u2212': 584,
  '·': 278,
  '–': 556,
  '’': 222,
  '…': 1000,
};

/** Width of one line [px]; semibold is set in bold where a face has no semibold. Undefined for other signs. */
export function helveticaWidth(words: string, size: number, weight: number): number | undefined {
  const table = weight === 600 ? BOLD : REGULAR;
  let sum = 0;
  for (const sign of words) {
    const advance = table[(sign.codePointAt(0) ?? 0) - 32] ?? OTHERS[sign];
    if (advance === undefined) return undefined;
    sum += advance;
  }
  return (sum * size) / 1000;
}
