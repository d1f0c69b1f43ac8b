/** Lines of a stream, cut without holding more of it than one line and what was read last. */
import { MOST_BYTES, textOfPlan } from '../../files/textOfPlan.ts';
import { sayProblem } from '../../model/index.ts';

/** A plan as text, or why there is none; `line` counts from 1 and is that of its beginning. */
export type BatchRecord =
  { readonly line: number; readonly text: string } | { readonly line: number; readonly problem: string };

const NEWLINE = 0x0a;
const QUOTE = 0x22;

/**
 * All that can be told of what was read so far, piece by piece, so that whoever writes a line and waits is answered.
 *
 * @param quoted  a line break between quotation marks does not end a record (RFC 4180, section 2, rule 6)
 */
export async function* recordsOf(
  pieces: AsyncIterable<Uint8Array>,
  { quoted }: { readonly quoted: boolean },
): AsyncGenerator<readonly BatchRecord[]> {
  const held = new Held();
  let line = 1;
  let begun = 1;
  let open = false;
  for await (const piece of pieces) {
    const found: BatchRecord[] = [];
    let from = 0;
    for (let i = 0; i < piece.length; i++) {
      const byte = piece[i];
      if (quoted && byte === QUOTE) open = !open;
      if (byte !== NEWLINE) continue;
      line++;
      if (open) continue;
      held.add(piece.subarray(from, i));
      from = i + 1;
      found.push(...held.take(begun));
      begun = line;
    }
    held.add(piece.subarray(from));
    if (found.length > 0) yield found;
  }
  if (open) yield [{ line: begun, problem: 'a quotation mark is opened here and never closed' }];
  else yield held.take(begun);
}

/** What was read of a record; no further than a plan can reach. */
class Held {
  #pieces: Uint8Array[] = [];
  #length = 0;

  add(piece: Uint8Array): void {
    const room = MOST_BYTES + 1 - this.#length;
    if (room <= 0 || piece.length === 0) return;
    // A copy: the rest of what was read is not held for the sake of a line.
    this.#pieces.push(Uint8Array.from(piece.subarray(0, room)));
    this.#length += Math.min(room, piece.length);
  }

  /** Nothing of a line that says nothing. */
  take(line: number): BatchRecord[] {
    const reading = textOfPlan(Buffer.concat(this.#pieces));
    this.#pieces = [];
    this.#length = 0;
    if (!reading.ok) return [{ line, problem: sayProblem(reading.problem) }];
    const text = reading.text.replace(/\r$/, '');
    return text.trim() === '' ? [] : [{ line, text }];
  }
}
