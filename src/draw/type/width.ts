/** Width of text, from the font's own table: never measured on a page. */
import { CHARACTERS, FACES, type FaceTable } from './advances.ts';

export type Weight = 400 | 600;

/** By code point, -1 where the face has nothing; a list, because a label is looked up sign by sign. */
const PLACE: readonly number[] = placesOf(CHARACTERS);

function placesOf(characters: string): number[] {
  const codes = [...characters].map((sign) => sign.codePointAt(0) ?? 0);
  const places = new Array<number>(Math.max(...codes) + 1).fill(-1);
  codes.forEach((code, i) => (places[code] = i));
  return places;
}

/** Of every class of signs behind every other, without gaps: looked up as often. */
const KERNING: Readonly<Record<Weight, readonly (readonly number[])[]>> = {
  400: kerningOf(FACES[400]),
  600: kerningOf(FACES[600]),
};

function kerningOf({ left, kerning }: FaceTable): number[][] {
  const length = Math.max(...left) + 1;
  return kerning.map((row) => Array.from({ length }, (_, i) => row[i] ?? 0));
}

/** A sign that the table lacks is taken as wide as a broad capital, so that a label is rather too wide than too narrow. */
const UNKNOWN_ADVANCE = 700;

/**
 * Width of one line of text in px.
 *
 * @param size  font size [px]
 * Error  under 0.1 % against the font's own layout; a ligature of three ("ffl") up to 0.07 of the size too narrow
 */
export function textWidth(words: string, size: number, weight: Weight = 400): number {
  const { advances, left, right } = FACES[weight];
  const kerning = KERNING[weight];
  let sum = 0;
  let before = -1;
  for (let i = 0; i < words.length; i++) {
    const code = words.codePointAt(i) ?? 0;
    if (code > 0xffff) i++;
    const place = PLACE[code] ?? -1;
    sum += place < 0 ? UNKNOWN_ADVANCE : (advances[place] ?? UNKNOWN_ADVANCE);
    if (before >= 0 && place >= 0) sum += kerning[right[place] ?? 0]?.[left[before] ?? 0] ?? 0;
    before = place;
  }
  return (sum * size) / 1000;
}

/** "62 ft" with a no-break space between figure and unit. */
export function hold(quantity: string): string {
  const at = quantity.indexOf(' ');
  return at < 0 ? quantity : `${quantity.slice(0, at)}\u00A0${hold(quantity.slice(at + 1))}`;
}
