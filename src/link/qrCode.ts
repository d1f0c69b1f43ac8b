/**
 * An address as a code for a camera, as SVG: dark on light with its quiet zone, a quarter of it may be soiled.
 *
 * Source  ISO/IEC 18004: error correction level M, a quiet zone of four modules
 */
import { encode } from 'uqr';

const QUIET = 4;

/** @returns  an svg element without a size of its own; null for more than a code of this kind can hold */
export function qrCode(text: string, label: string): string | null {
  let data: readonly (readonly boolean[])[];
  try {
    ({ data } = encode(text, { ecc: 'M', border: 0 }));
  } catch {
    return null;
  }
  const size = data.length + 2 * QUIET;
  const dark = data.flatMap((row, y) =>
    row.flatMap((isDark, x) => (isDark ? [`M${x + QUIET} ${y + QUIET}h1v1h-1z`] : [])),
  );
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${size} ${size}" role="img" aria-label="${escaped(label)}" shape-rendering="crispEdges"><path d="M0 0h${size}v${size}h-${size}z" fill="#fff"/><path d="${dark.join('')}" fill="#000"/></svg>`;
}

function escaped(text: string): string {
  return text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('"', '&quot;');
}
