import { inflateSync } from 'node:zlib';

const HEADER = 44;
const ENTRY = 20;
const SFNT_HEADER = 12;
const SFNT_ENTRY = 16;

/**
 * A WOFF 1.0 font as the plain font inside it.
 *
 * @throws Error when the file does not carry the WOFF signature
 * Source  W3C Recommendation "WOFF File Format 1.0", sections 3 to 5
 */
export function woffToSfnt(woff: Buffer): Buffer {
  if (woff.toString('latin1', 0, 4) !== 'wOFF')
    throw new Error('woffToSfnt: no WOFF signature at the start of the file');
  const count = woff.readUInt16BE(12);
  const sfnt = Buffer.alloc(woff.readUInt32BE(16));
  const largestPower = 2 ** Math.floor(Math.log2(count));
  woff.copy(sfnt, 0, 4, 8);
  sfnt.writeUInt16BE(count, 4);
  sfnt.writeUInt16BE(largestPower * 16, 6);
  sfnt.writeUInt16BE(Math.log2(largestPower), 8);
  sfnt.writeUInt16BE((count - largestPower) * 16, 10);
  let at = SFNT_HEADER + count * SFNT_ENTRY;
  for (let i = 0; i < count; i++) {
    const entry = HEADER + i * ENTRY;
    const offset = woff.readUInt32BE(entry + 4);
    const packedLength = woff.readUInt32BE(entry + 8);
    const length = woff.readUInt32BE(entry + 12);
    const packed = woff.subarray(offset, offset + packedLength);
    const table = packedLength < length ? inflateSync(packed) : packed;
    const record = SFNT_HEADER + i * SFNT_ENTRY;
    woff.copy(sfnt, record, entry, entry + 4);
    sfnt.writeUInt32BE(woff.readUInt32BE(entry + 16), record + 4);
    sfnt.writeUInt32BE(at, record + 8);
    sfnt.writeUInt32BE(length, record + 12);
    table.copy(sfnt, at);
    at += (length + 3) & ~3;
  }
  return sfnt;
}
