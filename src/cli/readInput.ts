import { closeSync, existsSync, openSync, readSync } from 'node:fs';
import { MOST_BYTES, textOfPlan } from '../files/textOfPlan.ts';
import { isLink } from '../link/isLink.ts';
import { readLink } from '../link/planLink.ts';
import { readPlanText, sayProblem, type Plan } from '../model/index.ts';
import { Unreadable } from './exits.ts';
import { whyNot } from './whyNot.ts';

/** The plan in a file, in a link or its fragment, or on standard input for "-". Throws Unreadable with every fault, a line each. */
export function readInput(path: string): Plan {
  const name = path === '-' ? 'standard input' : path;
  const fragment = /#?w\d+\.[\w-]*$/.exec(path)?.[0];
  if (fragment !== undefined && isLink(fragment) && !existsSync(path)) return readLinked(fragment);
  const text = textOfPlan(readBytes(path, name));
  const reading = text.ok ? readPlanText(text.text) : { ok: false as const, problems: [text.problem], more: 0 };
  if (reading.ok) return reading.plan;
  const lines = reading.problems.map((problem) => `  ${sayProblem(problem)}`);
  if (reading.more > 0) lines.push(`  and ${reading.more} more`);
  throw new Unreadable([`${name} is not a plan yet:`, ...lines].join('\n'));
}

/** The text in a file, or on standard input for "-". Throws Unreadable where there is none. */
export function readText(path: string): string {
  const name = path === '-' ? 'standard input' : path;
  const text = textOfPlan(readBytes(path, name));
  if (text.ok) return text.text;
  throw new Unreadable(
    `${name} cannot be read as text: ${text.problem.problem}. Of a photo or a PDF take the text out first`,
  );
}

const FAULTS = {
  none: 'there is no well in it',
  newer: 'it was made by a newer wellcut',
  damaged: 'a part of it is missing or changed; copy all of it',
  tooLong: 'it is longer than any well',
} as const;

function readLinked(fragment: string): Plan {
  const read = readLink(fragment);
  if (!read.ok) throw new Unreadable(`the link cannot be opened: ${FAULTS[read.why]}`);
  const reading = readPlanText(read.text);
  if (reading.ok) return reading.plan;
  throw new Unreadable(
    ['the link is not a plan yet:', ...reading.problems.map((each) => `  ${sayProblem(each)}`)].join('\n'),
  );
}

const STANDARD_INPUT = 0;

/** No further than a plan can reach: a device never ends. */
function readBytes(path: string, name: string): Uint8Array {
  const pieces: Uint8Array[] = [];
  let length = 0;
  try {
    const file = path === '-' ? STANDARD_INPUT : openSync(path, 'r');
    try {
      for (;;) {
        const piece = new Uint8Array(65_536);
        const read = readPiece(file, piece);
        if (read === 0) break;
        pieces.push(piece.subarray(0, read));
        length += read;
        if (length > MOST_BYTES) break;
      }
    } finally {
      if (file !== STANDARD_INPUT) closeSync(file);
    }
  } catch (fault) {
    throw new Unreadable(`${name} cannot be read: ${whyNot(fault)}`);
  }
  return Buffer.concat(pieces);
}

function readPiece(file: number, piece: Uint8Array): number {
  for (;;) {
    try {
      return readSync(file, piece);
    } catch (fault) {
      const code = fault instanceof Error && 'code' in fault ? fault.code : '';
      if (code === 'EOF') return 0;
      if (code !== 'EAGAIN') throw fault;
      Atomics.wait(new Int32Array(new SharedArrayBuffer(4)), 0, 0, 5);
    }
  }
}
