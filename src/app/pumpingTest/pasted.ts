/** Two columns copied from a spreadsheet or a text. */
import { numberIn } from './readings.ts';

export interface Pasted {
  readonly pairs: readonly { readonly time: string; readonly drawdown: string }[];
  /** Lines that do not hold two numbers, such as the heading. */
  readonly skipped: number;
}

/** @returns  the pairs, or null where the text is for one cell alone */
export function pastedPairs(text: string): Pasted | null {
  const lines = text.split(/\r?\n/).filter((line) => line.trim() !== '');
  if (lines.length < 2 && !text.includes('\t')) return null;
  const pairs = lines.flatMap((line) => {
    // A tab or a semicolon parts columns; a comma may be decimal, so it parts only where nothing else does.
    const cells = line.trim().split(/\s*[\t;]\s*|,\s+|\s+/);
    const [time = '', drawdown = ''] = cells.length > 1 ? cells : line.trim().split(',');
    return numberIn(time) !== null && numberIn(drawdown) !== null ? [{ time, drawdown }] : [];
  });
  return pairs.length === 0 ? null : { pairs, skipped: lines.length - pairs.length };
}
