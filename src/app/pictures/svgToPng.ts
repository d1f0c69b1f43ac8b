/** An exported SVG as a PNG, drawn by the browser itself, in the face that the drawing was laid out for. */
import { embeddedFaces } from './embeddedFaces.ts';
import { withResolution } from './pngResolution.ts';

/** Pixels to a px of the drawing. */
const ZOOM = 2;
/** CSS Values and Units 4, section 6.2: an inch is 96 px. */
const PX_PER_METRE = 96 / 0.0254;

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

/** A copy for this one purpose: larger, and with its face inside, which a saved drawing never has. */
async function asImage(svg: string): Promise<string> {
  const copy = new DOMParser().parseFromString(svg, 'image/svg+xml');
  const root = copy.documentElement;
  for (const side of ['width', 'height']) root.setAttribute(side, String(Number(root.getAttribute(side)) * ZOOM));
  const style = copy.createElementNS('http://www.w3.org/2000/svg', 'style');
  style.textContent = await embeddedFaces();
  root.prepend(style);
  return `data:image/svg+xml,${encodeURIComponent(new XMLSerializer().serializeToString(copy))}`;
}
