/** The drawing's face as rules that carry the files themselves: an SVG shown as an image sees no file beside it. */
import regular from '@fontsource/barlow-semi-condensed/files/barlow-semi-condensed-latin-400-normal.woff2?url';
import medium from '@fontsource/barlow-semi-condensed/files/barlow-semi-condensed-latin-500-normal.woff2?url';
import semiBold from '@fontsource/barlow-semi-condensed/files/barlow-semi-condensed-latin-600-normal.woff2?url';

/** By weight: the very files that the page wears. */
const FILES = [
  [400, regular],
  [500, medium],
  [600, semiBold],
] as const;

/** @throws Error when a file cannot be fetched */
export async function embeddedFaces(): Promise<string> {
  const rules = await Promise.all(
    FILES.map(
      async ([weight, file]) =>
        `@font-face{font-family:'Barlow Semi Condensed';font-weight:${weight};src:url(${await dataAddress(file)}) format('woff2')}`,
    ),
  );
  return rules.join('');
}

async function dataAddress(file: string): Promise<string> {
  const answer = await fetch(file);
  if (!answer.ok) throw new Error(`embeddedFaces: ${file} cannot be fetched (${answer.status})`);
  const bytes = new Uint8Array(await answer.arrayBuffer());
  const letters = Array.from(bytes, (byte) => String.fromCharCode(byte)).join('');
  return `data:font/woff2;base64,${btoa(letters)}`;
}
