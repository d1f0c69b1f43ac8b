/** Where water enters: screens, an open hole, a point. */
import type { Told } from '../facts.ts';
import type { Quantity } from '../quantities.ts';
import type { Book } from './book.ts';
import { tidied } from './tidied.ts';

export function intake(book: Book): void {
  const screens = book.spans('screen', 'perforated').filter(({ to }) => to !== null);
  const holes = book.spans('hole');
  const whole = book.facts.marked;
  const word = (pattern: RegExp): number => whole.findIndex(({ text }) => pattern.test(text));
  const open = word(/\bopen (?:rock )?hole\b|\bopen[- ]hole (?:well|completion)\b/);
  const point = word(/\b(?:drive|driven|sand|well)[- ]?point\b/);
  const dug = word(/\b(?:hand )?dug well\b|\bbored well\b|\bwell was dug\b/);
  if (screens.length > 0) {
    book.read(
      'well.intake.kind',
      point >= 0 ? 'driven point' : 'screen',
      screens.map(({ piece }) => piece),
    );
    book.read(
      'well.intake.screens',
      screens.map(({ from, to, slot }) =>
        tidied({
          top: from === null ? 'unknown' : book.write.length(from),
          bottom: to === null ? 'unknown' : book.write.length(to),
          slot: slot === null ? undefined : sayWidth(slot),
        }),
      ),
      screens.map(({ piece }) => piece),
    );
    return;
  }
  if (open >= 0) book.read('well.intake.kind', 'open hole', [open]);
  else if (point >= 0) book.read('well.intake.kind', 'driven point', [point]);
  else if (dug >= 0) book.read('well.intake.kind', 'dug', [dug]);
  const deepest = [...holes]
    .filter(({ size }) => size !== null)
    .sort((a, b) => book.write.metres(b.to) - book.write.metres(a.to))[0];
  const [size] = book.of('holeSize');
  if (deepest?.size != null) book.read('well.intake.diameter', book.write.size(deepest.size), [deepest.piece]);
  else if (size !== undefined) holeSize(book, size);
}

/** Of several sizes on a line the last is the deepest. */
function holeSize(book: Book, { quantity, piece }: Told): void {
  const sizes = book.facts.marked[piece]?.quantities.filter(({ kind }) => kind === 'S') ?? [];
  const last = sizes.at(-1) ?? quantity;
  const doubt = book.alike(last, quantity) ? null : ({ kind: 'two', other: book.write.size(quantity) } as const);
  book.read('well.intake.diameter', book.write.size(last), [piece], { doubt });
}

/** A bare 10 or 20 is in thousandths of an inch, as slots are named. */
function sayWidth(slot: Quantity): string {
  if (slot.unit !== '') return `${slot.value} ${slot.unit}`;
  return `${slot.value >= 1 ? Number((slot.value / 1000).toPrecision(4)) : slot.value} in`;
}
