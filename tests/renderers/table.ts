/** The kept pictures that every renderer draws, and the page that says how far they agree. */
import type { Browser } from '@playwright/test';
import { toSvg } from '../../src/draw/index.ts';
import { GALLERY } from '../draw/gallery.ts';
import { picture } from '../draw/pictures.ts';
import { agreement, type Agreement } from './agreement.ts';
import { inChromium, inLibrsvg, inResvg, librsvgVersion, type Image, type Renderer } from './renderers.ts';

/** Together they hold every kind of sheet, all themes, nested viewports, dashes, hatching and text in three weights. */
export const SHOWN = [
  'rock-light',
  'rock-dark',
  'rock-print',
  'contrast',
  'letter',
  'seal-print',
  'screened-phone',
  'seal-on-top',
  'thousand-feet',
  'driven-point',
  'detail-top',
  'detail-pump',
  'lens-adapter',
  'lens-joint',
] as const;

const PAIRS: readonly (readonly [Renderer, Renderer])[] = [
  ['Chromium', 'resvg'],
  ['Chromium', 'librsvg'],
  ['resvg', 'librsvg'],
];

export interface Row {
  readonly name: string;
  readonly why: string;
  /** In the order of the pairs; null where a renderer is not there. */
  readonly pairs: readonly (Agreement | null)[];
}

export function svgOf(name: string): string {
  const kept = GALLERY.find((each) => each.name === name);
  if (kept === undefined) throw new RangeError(`svgOf: there is no kept picture "${name}"`);
  return toSvg(picture(kept.plan, kept.view).scene);
}

export async function everyRow(browser: Browser): Promise<Row[]> {
  const svgs = SHOWN.map(svgOf);
  const byChromium = await inChromium(browser, svgs);
  const rows: Row[] = [];
  for (const [i, name] of SHOWN.entries()) {
    const svg = svgs[i] ?? '';
    const images: Readonly<Record<Renderer, Image | null>> = {
      Chromium: byChromium[i] ?? null,
      resvg: await inResvg(svg),
      librsvg: inLibrsvg(svg),
    };
    const pairs = PAIRS.map(([one, other]) => {
      const [a, b] = [images[one], images[other]];
      return a === null || b === null ? null : agreement(a, b);
    });
    rows.push({ name, why: GALLERY.find((each) => each.name === name)?.why ?? '', pairs });
  }
  return rows;
}

const percent = (share: number): string => `${(share * 100).toFixed(3)} %`;
const words = (pair: Agreement | null): string =>
  pair === null ? 'not there' : `${percent(pair.share)} (${Math.round(pair.densest * 100)} %)`;

export function rowsText(rows: readonly Row[]): string {
  const heads = ['picture', ...PAIRS.map((pair) => pair.join(' – '))];
  const lines = rows.map(({ name, pairs }) => [name, ...pairs.map(words)]);
  return [heads, ...lines]
    .map((cells) =>
      cells
        .map((cell) => cell.padEnd(22))
        .join('')
        .trimEnd(),
    )
    .join('\n');
}

export function rowsPage(rows: readonly Row[], versions: Readonly<Record<Renderer, string>>): string {
  const table = [
    ['picture', 'what it shows', ...PAIRS.map((pair) => pair.join(' – '))],
    ['---', '---', ...PAIRS.map(() => '--:')],
    ...rows.map(({ name, why, pairs }) => [name, why, ...pairs.map(words)]),
  ];
  return `# The same picture in several renderers

\`npm run renderers\` wrote this page. It draws kept pictures in Chromium ${versions.Chromium}, resvg ${versions.resvg} and librsvg ${versions.librsvg} at two
pixels a unit, with the font that the page ships, and compares them two by two. A figure is the share of pixels that differ
beyond antialiasing (by more than a fifth of the distance from black to white); in brackets the same share within the square
of 48 by 48 pixels where they lie densest.

${table.map((cells) => `| ${cells.join(' | ')} |`).join('\n')}

What differs is the rim of letters and of thin slanted lines. The tests hold Chromium and resvg to this for every picture
above. Paper is shown by a letter sheet, which measures whole pixels; A4 does not, and each renderer rounds its size in its own
way, so that everything on it lies up to half a pixel elsewhere.

What the comparison found, and what was mended:

- The PNG of the command line drew the small second lines of labels semibold, since resvg knows each weight of the font as a
  family of its own. The family is now named wherever the weight changes.
- The drawing takes what all of them take: presentation attributes, baselines by number and never by keyword, words without
  letter spacing, halos as shapes of their own, and a nested viewport where something is cropped.

## In a word processor

Exported drawings, a light one and one on letter paper, opened in an office word processor and printed from it to PDF. Lines,
dashes, tints, hatching, signs and places agree. Two things differ:

- It does not crop at a nested viewport: casing and hole of a detail ran on over its frame and over the next one. The paper
  round the details is therefore drawn once more over what sticks out, which changes nothing elsewhere.
- Where the font Barlow Semi Condensed is not installed, another stands in. A saved SVG asks for narrow ones first and has
  room for one as wide as Arial. The word processor took neither but a wider one still: figures and values stay clear,
  the longest names in bold run over their boxes' edge. Install the font, which is free, or put the PNG into the document.
`;
}

export function librsvgWords(): string {
  return librsvgVersion() ?? '(not on this machine)';
}
