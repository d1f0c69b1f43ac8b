/** How far two images of one drawing agree. */
import pixelmatch from 'pixelmatch';
import type { Image } from './renderers.ts';

export interface Agreement {
  /** Pixels that differ beyond antialiasing, as a share of all. */
  readonly share: number;
  /** The same within the square where they lie densest, as a share of that square: a lost label shows here. */
  readonly densest: number;
}

/** Distance of two colours that counts as a difference, where 1 is black against white. */
const THRESHOLD = 0.2;
/** Side of the square [px]: two lines of the drawing's small letters. */
const SQUARE = 48;

/** @throws RangeError when one image is larger than the other by more than a rounded pixel */
export function agreement(one: Image, other: Image): Agreement {
  const width = Math.min(one.width, other.width);
  const height = Math.min(one.height, other.height);
  if (Math.max(one.width, other.width) - width > 1 || Math.max(one.height, other.height) - height > 1)
    throw new RangeError(
      `agreement: ${one.width} by ${one.height} px against ${other.width} by ${other.height}; one is not the same sheet`,
    );
  const a = cropped(one, width, height);
  const b = cropped(other, width, height);
  const count = (options: { windowSize?: number }): number =>
    pixelmatch(a, b, null, width, height, { threshold: THRESHOLD, ...options });
  return { share: count({}) / (width * height), densest: count({ windowSize: SQUARE }) / SQUARE ** 2 };
}

function cropped(image: Image, width: number, height: number): Uint8Array {
  if (image.width === width) return image.data.subarray(0, width * height * 4);
  const rows = new Uint8Array(width * height * 4);
  for (let y = 0; y < height; y++)
    rows.set(image.data.subarray(y * image.width * 4, (y * image.width + width) * 4), y * width * 4);
  return rows;
}
