/**
 * A plan in the fragment of an address: "#w1." and, in the letters of an address, three bytes that tell damage and the plan's
 * text, compressed against a text that plans are like. What stands behind "#" is sent to nobody.
 *
 * Sources  compression: RFC 1951; letters: RFC 4648, section 5; check: CRC-24 of RFC 4880, section 6.1
 */
import { deflateSync, Inflate } from 'fflate';
import { MOST_CHARACTERS } from '../model/plan/limits.ts';
import { DICTIONARY_1 } from './dictionary1.ts';

const FORM = 1;
const HEAD = `w${FORM}.`;
const dictionary = new TextEncoder().encode(DICTIONARY_1);

/** More letters than any plan makes. */
export const LONGEST_LINK = 100_000;
/** Compressed bytes that are taken at a time: each swells to a thousand at most, and then it is looked whether it is enough. */
const STRIDE = 64;

export type LinkReading =
  | { readonly ok: true; readonly text: string }
  /** `none`: no link of a well at all. */
  | { readonly ok: false; readonly why: 'none' | 'newer' | 'damaged' | 'tooLong' };

/** @returns  "w1.…", to be put behind the "#" of the page's address; the same for the same plan everywhere */
export function linkOf(plan: object): string {
  const bytes = new TextEncoder().encode(JSON.stringify(plan));
  const packed = deflateSync(bytes, { level: 9, mem: 8, dictionary });
  const whole = new Uint8Array(3 + packed.length);
  whole.set(checkOf(bytes));
  whole.set(packed, 3);
  return HEAD + lettersOf(whole);
}

/** @param fragment  with or without its "#" */
export function readLink(fragment: string): LinkReading {
  const [, form, letters = ''] = /^#?w(\d+)\.([\s\S]*)$/.exec(fragment) ?? [];
  if (form === undefined) return { ok: false, why: 'none' };
  if (Number(form) > FORM) return { ok: false, why: 'newer' };
  if (letters.length > LONGEST_LINK) return { ok: false, why: 'tooLong' };
  const whole = bytesOf(letters);
  if (Number(form) !== FORM || whole === null || whole.length < 4) return { ok: false, why: 'damaged' };
  const bytes = unpacked(whole.subarray(3));
  if (bytes === 'tooLong') return { ok: false, why: 'tooLong' };
  if (bytes === null || checkOf(bytes).some((byte, i) => byte !== whole[i])) return { ok: false, why: 'damaged' };
  return { ok: true, text: new TextDecoder().decode(bytes) };
}

/** No more is unpacked than a plan may be long, whatever it says of itself. */
function unpacked(packed: Uint8Array): Uint8Array | 'tooLong' | null {
  const chunks: Uint8Array[] = [];
  let length = 0;
  let ended = false;
  const inflate = new Inflate({ dictionary }, (chunk, final) => {
    chunks.push(chunk);
    length += chunk.length;
    ended = final;
  });
  try {
    for (let at = 0; at < packed.length; at += STRIDE) {
      const next = packed.subarray(at, at + STRIDE);
      inflate.push(next, at + STRIDE >= packed.length);
      if (length > MOST_CHARACTERS) return 'tooLong';
    }
  } catch {
    return null;
  }
  if (!ended) return null;
  const all = new Uint8Array(length);
  let at = 0;
  for (const chunk of chunks) {
    all.set(chunk, at);
    at += chunk.length;
  }
  return all;
}

function checkOf(bytes: Uint8Array): Uint8Array {
  let crc = 0xb704ce;
  for (const byte of bytes) {
    crc ^= byte << 16;
    for (let bit = 0; bit < 8; bit++) {
      crc <<= 1;
      if ((crc & 0x1000000) !== 0) crc ^= 0x1864cfb;
    }
  }
  return Uint8Array.of((crc >> 16) & 255, (crc >> 8) & 255, crc & 255);
}

const LETTERS = 'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_';

function lettersOf(bytes: Uint8Array): string {
  let text = '';
  for (let at = 0; at < bytes.length; at += 3) {
    const [a = 0, b = 0, c = 0] = bytes.subarray(at, at + 3);
    const four = [a >> 2, ((a & 3) << 4) | (b >> 4), ((b & 15) << 2) | (c >> 6), c & 63];
    for (const value of four.slice(0, Math.min(bytes.length - at, 3) + 1)) text += LETTERS.charAt(value);
  }
  return text;
}

/** Null for a sign that is none of the letters, or a length that no bytes make. */
function bytesOf(text: string): Uint8Array | null {
  if (!/^[\w-]*$/.test(text) || text.length % 4 === 1) return null;
  const bytes = new Uint8Array(Math.floor((text.length * 3) / 4));
  let [value, bits, at] = [0, 0, 0];
  for (const letter of text) {
    value = ((value << 6) | LETTERS.indexOf(letter)) & 0xfff;
    bits += 6;
    if (bits < 8) continue;
    bits -= 8;
    bytes[at++] = (value >> bits) & 255;
  }
  return bytes;
}
