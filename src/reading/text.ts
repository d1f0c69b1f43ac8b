/** The text of a report as lines and sentences, with what a copy leaves behind taken out. */

/** A report is a page or two; what is longer is likely more than one well [characters]. */
export const MOST_CHARACTERS = 200_000;
export const MOST_LINES = 4000;

/** Longer lines are broken: nobody types one, and no pattern shall wander along it [characters]. */
const LONGEST = 400;

/** A line, or a sentence that goes over several. */
export interface Piece {
  /** As it stands in the text, cleaned. */
  readonly text: string;
  /** Numbers of the lines that it stands on, from 1. */
  readonly lines: readonly number[];
}

const REPLACED: readonly (readonly [RegExp, string])[] = [
  [/[‘’′´`]/g, "'"],
  [/[“”″]/g, '"'],
  [/''/g, '"'],
  [/[\u00a0\u2000-\u200a\u202f\u3000]/g, ' '],
  [/[\u2010-\u2015\u2212]/g, '-'],
  [/[\u2500-\u257f¦]/g, '|'],
  [/½/g, ' 1/2'],
  [/¼/g, ' 1/4'],
  [/¾/g, ' 3/4'],
  [/⅛/g, ' 1/8'],
  [/⅝/g, ' 5/8'],
  [/³/g, '3'],
  [/\t/g, '    '],
  // eslint-disable-next-line no-control-regex -- they are what is taken out
  [/[\u0000-\u0008\u000b\u000c\u000e-\u001f\u007f\u200b-\u200f\ufeff]/g, ''],
  [/\.{3,}|…+/g, ' : '],
  [/_{2,}/g, ' '],
  // The number of an item on a form: "12. WELL TEST DATA".
  [/^[ ]*\(?\d{1,2}[.)]\s+(?=[A-Z][A-Za-z])/gm, ''],
];

/** @throws RangeError where the text is longer than a report can be */
export function piecesOf(text: string): readonly Piece[] {
  if (text.length > MOST_CHARACTERS)
    throw new RangeError(`piecesOf: ${text.length} characters; a report has ${MOST_CHARACTERS} at most`);
  const clean = REPLACED.reduce((whole, [what, by]) => whole.replace(what, by), text);
  const lines = clean.split(/\r\n|\n|\r/).map((line) => line.trimEnd());
  if (lines.length > MOST_LINES)
    throw new RangeError(`piecesOf: ${lines.length} lines; a report has ${MOST_LINES} at most`);
  const pieces: Piece[] = [];
  for (let i = 0; i < lines.length; i++) {
    const line = lines[i] ?? '';
    if (line.trim() === '') {
      pieces.push({ text: '', lines: [i + 1] });
      continue;
    }
    let end = i;
    // A sentence goes on where its line is full and the next one is no label.
    while (isProse(lines[end] ?? '') && goesOn(lines[end + 1], lines[end] ?? '')) end++;
    if (end === i && !isProse(line)) pieces.push(...broken(line, i + 1));
    else pieces.push(...sentences(lines.slice(i, end + 1), i + 1));
    i = end;
  }
  return pieces;
}

/** Words in a row, and no columns or labels. */
function isProse(line: string): boolean {
  return (
    line.length >= 40 &&
    !/ {3}\S|\||:\s|^\s*[-+]?\d+\s*(?:-|to)\s*\d/.test(line) &&
    line.trim().split(/\s+/).length >= 7
  );
}

/** A line that begins with a capital goes on with a sentence only where the one before is full. */
const FULL = 60;

function goesOn(line: string | undefined, before: string): boolean {
  if (line === undefined || line.trim() === '') return false;
  if (/^\s*[A-Z]/.test(line) && before.trim().length < FULL) return false;
  return isProse(line) || (/^[a-z0-9]/.test(line) && !/ {3}\S|\||:\s/.test(line));
}

/** Sentences of a paragraph, each with the lines that it stands on. */
function sentences(lines: readonly string[], first: number): Piece[] {
  const starts: number[] = [];
  let whole = '';
  for (const line of lines) {
    starts.push(whole.length);
    whole += `${line.trim()} `;
  }
  const lineAt = (at: number): number => first + starts.filter((start) => start <= at).length - 1;
  const pieces: Piece[] = [];
  let from = 0;
  const end = /[.!?;]\s+(?=[A-Z])|$/g;
  for (let found = end.exec(whole); found !== null && from < whole.length; found = end.exec(whole)) {
    const to = found.index + found[0].length;
    const text = whole.slice(from, to).trim();
    if (text !== '') {
      const [start, last] = [lineAt(from), lineAt(Math.max(from, to - 2))];
      const numbers = Array.from({ length: last - start + 1 }, (_, i) => start + i);
      pieces.push(...cut(text).map((part) => ({ text: part, lines: numbers })));
    }
    if (found[0] === '') break;
    from = to;
  }
  return pieces;
}

function broken(line: string, number: number): Piece[] {
  return cut(line).map((text) => ({ text, lines: [number] }));
}

function cut(text: string): string[] {
  if (text.length <= LONGEST) return [text];
  const parts: string[] = [];
  for (let rest = text; rest !== '';) {
    if (rest.length <= LONGEST) {
      parts.push(rest);
      break;
    }
    const space = rest.lastIndexOf(' ', LONGEST);
    const at = space > LONGEST / 2 ? space : LONGEST;
    parts.push(rest.slice(0, at));
    rest = rest.slice(at).trimStart();
  }
  return parts;
}
