/** An exported SVG as a PNG, drawn by the browser itself, in the face that the drawing was laid out for. */
import { embeddedFaces } from './embeddedFaces.ts';
import { withResolution } from './pngResolution.ts';
import { inches } from '../../model/units.ts';

/** Pixels to a px of the drawing. */
const ZOOM = 2;
/** CSS Values and Units 4, section 6.2: an inch is 96 px. */
const PX_PER_METRE = 96 / inches(1);

/** @throws Error when the browser cannot draw it, or refuses a canvas of this size */
export async function svgToPng(svg: string): Promise<Uint8Array<ArrayBuffer>> {
  const image = new Image();
  image.src = await asImage(svg);
  await image.decode();
  const canvas = document.createElement('canvas');
  canvas.width = image.naturalWidth;
  canvas.height = image.naturalHeight;
  const pen = canvas.getContext('2d');
  if (pen === null) throw new Error('svgToPng: the browser gives no canvas to draw on');
  pen.drawImage(image, 0, 0);
  const drawn = await new Promise<Blob | null>((resolve) => canvas.toBlob(resolve, 'image/png'));
  if (drawn === null) throw new Error(`svgToPng: no PNG of ${canvas.width} by ${canvas.height} px`);
  return withResolution(new Uint8Array(await drawn.arrayBuffer()), ZOOM * PX_PER_METRE);
}

/**
 * A copy for this one purpose: larger, and with its face inside, which a saved drawing never has. Put together as text,
 * since a page may be forbidden to make elements of text.
 */
async function asImage(svg: string): Promise<string> {
  const end = svg.indexOf('>') + 1;
  const root = svg
    .slice(0, end)
    .replace(/ (width|height)="([\d.]+)"/g, (_, side: string, length: string) => ` ${side}="${Number(length) * ZOOM}"`);
  const style = `<style>${await embeddedFaces()}</style>`;
  return `data:image/svg+xml,${encodeURIComponent(root + style + svg.slice(end))}`;
}
