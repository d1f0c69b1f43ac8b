/** The resolution of a PNG, which tells a word processor or a printer how large the picture is meant to be. */

/** Signature and header chunk: PNG (third edition), 5.2 and 11.2.1. */
const HEAD = 8 + 25;
/** Unit specifier of 11.3.4.3: the figures count pixels in a metre. */
const PER_METRE = 1;

/**
 * The same picture with a pHYs chunk behind its header, where 5.6 allows it.
 *
 * @param png       without a pHYs chunk of its own, as a canvas writes it
 * @param perMetre  pixels in a metre, rounded to whole ones
 */
export function withResolution(png: Uint8Array, perMetre: number): Uint8Array<ArrayBuffer> {
  const chunk = physicalSize(Math.round(perMetre));
  const whole = new Uint8Array(png.length + chunk.length);
  whole.set(png.subarray(0, HEAD));
  whole.set(chunk, HEAD);
  whole.set(png.subarray(HEAD), HEAD + chunk.length);
  return whole;
}

/** 11.3.4.3: length, type, pixels in a unit along x and y, the unit, checksum of all but the length. */
function physicalSize(perMetre: number): Uint8Array {
  const chunk = new Uint8Array(4 + 4 + 9 + 4);
  const view = new DataView(chunk.buffer);
  view.setUint32(0, 9);
  chunk.set(new TextEncoder().encode('pHYs'), 4);
  view.setUint32(8, perMetre);
  view.setUint32(12, perMetre);
  view.setUint8(16, PER_METRE);
  view.setUint32(17, checksum(chunk.subarray(4, 17)));
  return chunk;
}

/** 5.5: the CRC of ISO 3309, polynomial 0x04C11DB7 with its bits in reverse. */
function checksum(bytes: Uint8Array): number {
  let crc = 0xffffffff;
  for (const byte of bytes) {
    crc ^= byte;
    for (let bit = 0; bit < 8; bit++) crc = crc & 1 ? (crc >>> 1) ^ 0xedb88320 : crc >>> 1;
  }
  return (crc ^ 0xffffffff) >>> 0;
}
