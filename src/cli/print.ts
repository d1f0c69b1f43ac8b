import { writeSync } from 'node:fs';
import { Unwritable } from './exits.ts';
import { whyNot } from './whyNot.ts';

const STANDARD_OUTPUT = 1;
/** Between tries at a pipe whose reader is slow [ms]. */
const WAIT = 5;

/** Writes to standard output, all of it before it returns. Throws Unwritable where the reader has gone or the disk is full. */
export function print(content: string | Uint8Array): void {
  let rest = typeof content === 'string' ? Buffer.from(content) : content;
  while (rest.length > 0) {
    try {
      rest = rest.subarray(writeSync(STANDARD_OUTPUT, rest));
    } catch (fault) {
      if (!isBusy(fault)) throw new Unwritable(`standard output cannot be written: ${whyNot(fault)}`);
      Atomics.wait(new Int32Array(new SharedArrayBuffer(4)), 0, 0, WAIT);
    }
  }
}

function isBusy(fault: unknown): boolean {
  return fault instanceof Error && 'code' in fault && fault.code === 'EAGAIN';
}
