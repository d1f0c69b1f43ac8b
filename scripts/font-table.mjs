/**
 * Writes src/draw/type/advances.ts: advances and kerning pairs of the drawing's face, read from the files that the
 * page ships, so that a browser and Node lay labels out alike.
 *
 *     node scripts/font-table.mjs
 */
import { writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import * as fontkit from 'fontkit';

const root = fileURLToPath(new URL('..', import.meta.url));
const weights = [400, 600];
const file = (weight) =>
  `${root}node_modules/@fontsource/barlow-semi-condensed/files/barlow-semi-condensed-latin-${weight}-normal.woff`;

const combining = (code) => code >= 0x300 && code < 0x370;
const unused = (code) =>
  code < 0x20 || code === 0xad || code > 0xfff0 || '¢£¤¥¦§¨©ª¬®¯¸ºʻʼˆ˚˜‚„‹›⁄€™'.includes(String.fromCodePoint(code));
const fonts = weights.map((weight) => fontkit.openSync(file(weight)));
const characters = fonts[0].characterSet
  .filter((code) => !combining(code) && !unused(code))
  .map((code) => String.fromCodePoint(code));

/** Equal rows share a letter: a class table is a tenth of the pairs it stands for. */
function classesOf(rows) {
  const seen = new Map();
  const names = rows.map((row) => {
    const word = row.join(',');
    if (!seen.has(word)) seen.set(word, seen.size);
    return seen.get(word);
  });
  return { names, first: [...new Set(names)].map((name) => names.indexOf(name)) };
}

function tableOf(font) {
  const width = (words) => font.layout(words).advanceWidth;
  const advances = characters.map(width);
  const pairs = characters.map((left, i) =>
    characters.map((right, j) => Math.round(width(left + right) - advances[i] - advances[j])),
  );
  const rows = classesOf(pairs);
  const columns = classesOf(characters.map((_, j) => pairs.map((row) => row[j])));
  const kerning = rows.first.map((i) =>
    columns.first.flatMap((j, column) => (pairs[i][j] === 0 ? [] : [column, pairs[i][j]])),
  );
  return { advances, left: rows.names, right: columns.names, kerning };
}

const lines = (numbers) =>
  JSON.stringify(numbers)
    .replace(/(.{1,110},)/g, '$1\n    ')
    .replace(/ +$/gm, '');
const tables = weights.map((weight, i) => {
  const { advances, left, right, kerning } = tableOf(fonts[i]);
  return `  ${weight}: {
    advances: ${lines(advances)},
    left: ${lines(left)},
    right: ${lines(right)},
    kerning: [
${kerning.map((row) => `    ${JSON.stringify(row)},`).join('\n')}
    ],
  },`;
});

writeFileSync(
  `${root}src/draw/type/advances.ts`,
  `/**
 * Advances and kerning of Barlow Semi Condensed (SIL Open Font License), in thousandths of the font size.
 * Written by scripts/font-table.mjs from the files that the page ships; not edited by hand.
 *
 * A pair's kerning stands in kerning[left[first sign]], behind right[second sign]; what is not there is nought. Ligatures
 * count as kerning.
 */
export const CHARACTERS =
  ${JSON.stringify(characters.join(''))};

export interface FaceTable {
  readonly advances: readonly number[];
  readonly left: readonly number[];
  readonly right: readonly number[];
  /** By class of the first sign: classes of the second one and kerning, by turns. */
  readonly kerning: readonly (readonly number[])[];
}

export const FACES: Readonly<Record<400 | 600, FaceTable>> = {
${tables.join('\n')}
};
`,
);
