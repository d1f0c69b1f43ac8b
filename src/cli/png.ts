import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { Unreadable, Unwritable } from './exits.ts';
import { whyNot } from './whyNot.ts';
import { woffToSfnt } from './woff.ts';

const WEIGHTS = [400, 500, 600];

/** Pixels to a unit of the drawing: two on a screen; on paper 300 to the inch, of which a CSS inch has 96. */
const ZOOM = { screen: 2, paper: 300 / 96 } as const;

/**
 * The drawing as a PNG at two pixels a unit, or at 300 dots an inch of paper, with the very font files that the page
 * ships. Needs the optional package @resvg/resvg-js; says so when it is not there.
 */
export async function toPng(svg: string, medium: keyof typeof ZOOM): Promise<Uint8Array> {
  const { Resvg } = await import('@resvg/resvg-js').catch(() => {
    throw new Unreadable(
      'PNG needs the package @resvg/resvg-js (npm install @resvg/resvg-js); SVG needs nothing: -o out.svg',
    );
  });
  // The renderer takes fonts as files only, and reads no compressed ones.
  const folder = folderForFonts();
  try {
    const fontFiles = WEIGHTS.map((weight) => {
      const file = join(folder, `${weight}.ttf`);
      writeFileSync(file, woffToSfnt(readFileSync(fontFile(weight))));
      return file;
    });
    const renderer = new Resvg(namingFaces(svg), {
      fitTo: { mode: 'zoom', value: ZOOM[medium] },
      font: { fontFiles, loadSystemFonts: false, defaultFontFamily: 'Barlow Semi Condensed' },
    });
    return renderer.render().asPng();
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

function folderForFonts(): string {
  try {
    return mkdtempSync(join(tmpdir(), 'wellcut-fonts-'));
  } catch (fault) {
    throw new Unwritable(
      `PNG needs a folder for temporary files, and ${tmpdir()} cannot be written: ${whyNot(fault)}; set TMPDIR to another, or write SVG`,
    );
  }
}

/** The shipped files carry their weight in the family's name, which browsers need not know and this renderer must. */
function namingFaces(svg: string): string {
  return svg
    .replaceAll('font-weight="400"', 'font-family="Barlow Semi Condensed" font-weight="400"')
    .replaceAll('font-weight="500"', 'font-family="Barlow Semi Condensed Medium" font-weight="500"')
    .replaceAll('font-weight="600"', 'font-family="Barlow Semi Condensed SemiBold" font-weight="600"');
}

function fontFile(weight: number): string {
  return createRequire(import.meta.url).resolve(
    `@fontsource/barlow-semi-condensed/files/barlow-semi-condensed-latin-${weight}-normal.woff`,
  );
}
