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

/** Classes in another order, like beside like, since what repeats the line before it takes hardly any room. */
function likeByLike({ names, first }, rows) {
  const apart = (one, other) => rows[first[one]].filter((kern, i) => kern !== rows[first[other]][i]).length;
  const left = first.map((_, name) => name);
  const order = left.splice(0, 1);
  while (left.length > 0) {
    const last = order.at(-1);
    const next = left.reduce((best, name) => (apart(last, name) < apart(last, best) ? name : best));
    order.push(...left.splice(left.indexOf(next), 1));
  }
  return { names: names.map((name) => order.indexOf(name)), first: order.map((name) => first[name]) };
}

function tableOf(font) {
  const width = (words) => font.layout(words).advanceWidth;
  const advances = characters.map(width);
  const pairs = characters.map((left, i) =>
    characters.map((right, j) => Math.round(width(left + right) - advances[i] - advances[j])),
  );
  const before = characters.map((_, j) => pairs.map((row) => row[j]));
  const rows = likeByLike(classesOf(pairs), pairs);
  const columns = likeByLike(classesOf(before), before);
  const kerning = columns.first.map((j) => rows.first.map((i) => pairs[i][j]));
  return { advances, left: rows.names, right: columns.names, kerning };
}

const lines = (numbers) =>
  JSON.stringify(numbers)
    .replace(/(.{1,110},)/g, '$1\n    ')
    .replace(/ +$/gm, '');
/** What is nought is left out. */
const sparse = (row) => `[${row.map((kern) => (kern === 0 ? '' : kern)).join(',')}]`.replace(/,+\]$/, ']');
const tables = weights.map((weight, i) => {
  const { advances, left, right, kerning } = tableOf(fonts[i]);
  return `  ${weight}: {
    advances: ${lines(advances)},
    left: ${lines(left)},
    right: ${lines(right)},
    kerning: [
${kerning.map((row) => `    ${sparse(row)},`).join('\n')}
    ],
  },`;
});

writeFileSync(
  `${root}src/draw/type/advances.ts`,
  `/**
 * Advances and kerning of Barlow Semi Condensed (SIL Open Font License), in thousandths of the font size.
 * Written by scripts/font-table.mjs from the files that the page ships; not edited by hand.
 *
 * A pair's kerning stands in kerning[right[second sign]][left[first sign]]; what is not there is nought. Ligatures count as
 * kerning. Signs that kern alike are one class, and like classes stand side by side.
 */
/* eslint-disable no-sparse-arrays -- written out, the noughts would be most of the table */
export const CHARACTERS =
  ${JSON.stringify(characters.join(''))};

export interface FaceTable {
  readonly advances: readonly number[];
  readonly left: readonly number[];
  readonly right: readonly number[];
  /** By class of the second sign, then of the first. */
  readonly kerning: readonly (readonly (number | undefined)[])[];
}

export const FACES: Readonly<Record<400 | 600, FaceTable>> = {
${tables.join('\n')}
};
`,
);
