/** A plan's text from the bytes of a file. */
import { MOST_CHARACTERS, tooLong } from '../model/plan/limits.ts';
import type { Problem } from '../model/plan/problem.ts';

export type TextReading =
  { readonly ok: true; readonly text: string } | { readonly ok: false; readonly problem: Problem };

/** A character takes four bytes at most: what is longer is no plan in any encoding. */
export const MOST_BYTES = 4 * MOST_CHARACTERS;

/** UTF-8, or UTF-16 that says so with its first two bytes; anything else is named and refused. */
export function textOfPlan(bytes: Uint8Array): TextReading {
  const long = tooLong(bytes.length > MOST_BYTES ? Infinity : 0);
  if (long !== null) return { ok: false, problem: long };
  const [first, second] = bytes;
  const encoding =
    first === 0xff && second === 0xfe ? 'utf-16le' : first === 0xfe && second === 0xff ? 'utf-16be' : 'utf-8';
  try {
    return { ok: true, text: new TextDecoder(encoding, { fatal: true }).decode(bytes) };
  } catch (fault) {
    if (!(fault instanceof TypeError || fault instanceof RangeError)) throw fault;
    return { ok: false, problem: wrongEncoding(encoding === 'utf-8' ? 'UTF-8' : 'UTF-16') };
  }
}

function wrongEncoding(expected: string): Problem {
  return {
    path: '',
    read: '',
    problem: `the file is not text in ${expected}`,
    write: 'it may be a picture or an archive, or was saved in another encoding: save it as UTF-8',
    kind: 'text',
  };
}
