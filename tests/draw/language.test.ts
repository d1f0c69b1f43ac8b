import { describe, expect, test } from 'vitest';
import { createDrawer, draw, toSvg, type Scene, type View } from '../../src/draw/index.ts';
import { drawAtHouse, drawAtHouseIn } from '../../src/draw/details/house/atHouse.ts';
import { inFace } from './type/inFace.ts';
import { solve, withValue } from '../../src/model/index.ts';
import { atHouse } from '../../src/words/en/atHouse.ts';
import { short } from '../../src/words/en/short.ts';
import type { AtHouseLanguage, ShortLanguage } from '../../src/words/words.ts';
import { GALLERY, type Picture } from './gallery.ts';
import { flat, SHEET } from './pictures.ts';

const VOWEL = /[aeiouy]/i;
const VOWELS = /[aeiouy]/gi;
const LETTER = /^[A-Za-z]/;
const ACCENTS: Readonly<Record<string, string>> = Object.fromEntries(
  [...'aáeéiíoóuúyýAÁEÉIÍOÓUÚYÝ'.matchAll(/(.)(.)/g)].map(([, plain = '', accent = '']) => [plain, accent]),
);

/** English with an accent on every vowel: about as wide, and a word that was not asked of it has none. */
const ACCENTED: ShortLanguage = inAccents(short) as ShortLanguage;
const IN_ACCENTS = drawAtHouseIn(inAccents(atHouse) as AtHouseLanguage);

function inAccents(words: unknown): unknown {
  if (typeof words === 'string') return accented(words);
  if (typeof words === 'function') return (...numbers: unknown[]) => inAccents(words(...numbers));
  if (Array.isArray(words)) return words.map(inAccents);
  if (typeof words !== 'object' || words === null) return words;
  return Object.fromEntries(Object.entries(words).map(([name, each]) => [name, inAccents(each)]));
}

function accented(words: string): string {
  return VOWEL.test(words) ? words.replace(VOWELS, (vowel) => ACCENTS[vowel] ?? vowel) : words.replace(LETTER, '·$&');
}

/** Units stand behind figures; they are the reader's, whatever the language. */
const FIGURES = /\d[\s\u00A0](in|psi|kPa|L\/min)\b/g;
/** A view's letter is a name, as the details are told apart by it. */
const isView = (words: string): boolean => /^[ABCDO]$/.test(words);
/** What the plan calls its ground is shown as it stands there. */
const OF_THE_PLAN = /layerNames > layer\/\d+ >|^legend > material\/(?!unknown)/;

/** All that is read in a picture, or read out, and none of it the plan's own. */
function saidIn(scene: Scene): string[] {
  const shown = flat(scene.shapes).flatMap(({ path, shape: { text = '', attrs } }) => [
    ...(OF_THE_PLAN.test(path) || isView(text) ? [] : [text]),
    String(attrs['aria-label'] ?? ''),
  ]);
  return [scene.title, scene.describe(), ...shown].filter((words) => words !== '');
}

function notAsked(scene: Scene): string[] {
  return saidIn(scene).filter((words) => VOWEL.test(words.replace(FIGURES, '')) || /^(ft|m)$/.test(words));
}

/** Drawings that say what none of the kept pictures says. */
const OTHERS: readonly Partial<View>[] = [
  { moment: { pumping: true, flow: 0.3 } },
  { moment: { pumping: false } },
  { sheet: 'section', width: 390, height: 420, held: { handle: 'pitlessDepth', start: 1 } },
  { sheet: 'section', width: 700, height: 700, window: { topDepth: -1, bottomDepth: 6 } },
  { sheet: 'pump', width: 400, height: 260, caption: true, imprint: { version: '1' } },
  { sheet: { at: 2 }, width: 700, height: 500, caption: true },
];

/** Its own view, and in turn some of the others. */
function viewsOf(picture: Picture): View[] {
  const turn = GALLERY.indexOf(picture) % 3;
  const others = OTHERS.filter((_, i) => i % 3 === turn);
  return [{}, ...others].map((other) => ({ ...SHEET, ...picture.view, ...other }));
}

test('the face has every accent, so that labels find as much room as in English', () => {
  expect(inFace(Object.values(ACCENTS).join(''))).toBe(true);
});

describe('a picture speaks the language that it is asked for, and no word of another', () => {
  test.each(GALLERY)('$name', (picture) => {
    // A name would be the plan's own.
    const solution = solve(withValue(picture.plan, 'title', ''));
    for (const view of viewsOf(picture)) {
      expect(notAsked(draw(solution, { ...view, words: ACCENTED, atHouse: IN_ACCENTS }))).toEqual([]);
      expect(notAsked(draw(solution, view)).length).toBeGreaterThan(10);
    }
  });
});

describe('a drawer that drew in one language or unit draws anew in another', () => {
  test.each(GALLERY)('$name', (picture) => {
    const solution = solve(picture.plan);
    const drawer = createDrawer();
    for (const view of viewsOf(picture)) {
      for (const other of [
        {},
        { words: ACCENTED, atHouse: IN_ACCENTS },
        { units: 'metric' },
        { units: 'us' },
      ] as const) {
        const asked: View = { atHouse: drawAtHouse, ...view, ...other };
        expect(toSvg(drawer(solution, asked))).toBe(toSvg(draw(solution, asked)));
      }
    }
  });
});
