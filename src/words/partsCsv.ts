/** The parts list as a file for a spreadsheet: the same bytes from the page and from the command line. */
import { csvLine } from '../files/csv.ts';
import type { PartLine } from '../model/parts/partLine.ts';
import type { Show } from '../model/units.ts';
import type { PartsListWords } from './en/partsList.ts';
import { sayPart, type SaidPart } from './sayParts.ts';

/** A spreadsheet that is opened by a double click takes what does not begin with it for another encoding. */
const BYTE_ORDER_MARK = '\uFEFF';

const COLUMNS: readonly (keyof SaidPart & keyof PartsListWords['heads'])[] = [
  'group',
  'count',
  'name',
  'size',
  'material',
  'cut',
  'buy',
  'depth',
  'note',
  'assumed',
];

export function partsCsv(lines: readonly PartLine[], words: PartsListWords, show: Show): string {
  const head = COLUMNS.map((column) => words.heads[column]);
  const rows = lines.map((line) => {
    const said = sayPart(line, words, show);
    return COLUMNS.map((column) => String(said[column]));
  });
  return BYTE_ORDER_MARK + [head, ...rows].map(csvLine).join('');
}
