/** The shipped font as the renderers want it: files of plain TrueType, and what fontconfig must know of them. */
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import { woffToSfnt } from '../../src/cli/woff.ts';

const FAMILY = 'Barlow Semi Condensed';
const WEIGHTS = [400, 500, 600] as const;

/** One rule of CSS for each weight, with the font in it: a page without a server finds nothing else. */
export function fontFaces(): string {
  return WEIGHTS.map((weight) => {
    const data = readFileSync(shipped(weight, 'woff2')).toString('base64');
    return `@font-face{font-family:'${FAMILY}';font-weight:${weight};src:url(data:font/woff2;base64,${data})}`;
  }).join('');
}

/**
 * Writes the font and a configuration of fontconfig that knows no other font.
 * The files carry their weight in the family's name; the configuration takes it out again.
 */
export function writeFontconfig(folder: string): string {
  const fonts = join(folder, 'fonts');
  mkdirSync(fonts, { recursive: true });
  for (const weight of WEIGHTS)
    writeFileSync(join(fonts, `${weight}.ttf`), woffToSfnt(readFileSync(shipped(weight, 'woff'))));
  const one = (named: string): string =>
    `<match target="scan"><test name="family"><string>${FAMILY} ${named}</string></test>` +
    `<edit name="family" mode="assign"><string>${FAMILY}</string></edit></match>`;
  const file = join(folder, 'fonts.conf');
  writeFileSync(
    file,
    `<?xml version="1.0"?><!DOCTYPE fontconfig SYSTEM "fonts.dtd"><fontconfig><dir>${fonts}</dir>` +
      `<cachedir>${join(folder, 'cache')}</cachedir>${one('Medium')}${one('SemiBold')}</fontconfig>`,
  );
  return file;
}

function shipped(weight: number, kind: 'woff' | 'woff2'): string {
  return createRequire(import.meta.url).resolve(
    `@fontsource/barlow-semi-condensed/files/barlow-semi-condensed-latin-${weight}-normal.${kind}`,
  );
}
