/** Reads the text of a driller's report, log or letter. Nothing is read that does not stand there. */
import { factsIn } from './facts.ts';
import type { LeftLine, ReadReport } from './reading.ts';
import { resolve } from './resolve.ts';
import { piecesOf } from './text.ts';

/**
 * @param text  as it was copied: lines, tables, sentences, in feet or metres
 * @throws RangeError where it is longer than a report can be
 */
export function readReport(text: string): ReadReport {
  const pieces = piecesOf(text);
  const facts = factsIn(pieces);
  const units = facts.marked.flatMap(({ quantities }) => quantities.map(({ unit }) => unit));
  const heads = facts.marked.map(({ text: line }) => line).join('\n');
  const metric =
    count(units, ['m', 'L/min', 'L/s', 'm3/h', 'm3/d']) +
    heads.split(/\((?:m|metres|meters)\)|\bin metres\b/).length -
    1;
  const us =
    count(units, ['ft', 'gpm', 'gph']) + heads.split(/\((?:ft\.?|feet|in feet)\)|\bin feet\b|\bfeet\b/).length - 1;
  const own = metric > us ? 'metric' : 'us';
  const { readings, asides } = resolve(facts, own, metric + us > 0);
  // What the depths count from, and how the yield was found, may be all that a line says.
  const whole = readings.filter(({ path }) => path === 'well.depthsFrom' || path === 'well.yieldFrom');
  const isRead = (piece: number): boolean =>
    whole.some(({ lines }) => lines.some((line) => pieces[piece]?.lines.includes(line) === true));
  const left: LeftLine[] = facts.left
    .filter((piece) => !isRead(piece))
    .map((piece) => ({
      lines: pieces[piece]?.lines ?? [],
      text: pieces[piece]?.text.trim() ?? '',
    }));
  return { units: own, readings, asides, left };
}

function count(units: readonly string[], wanted: readonly string[]): number {
  return units.filter((unit) => wanted.includes(unit)).length;
}
