/** How deep the well is, and what its depths count from. */
import type { Book } from './book.ts';
import type { Height } from './casings.ts';
import { fromTop } from './fromTop.ts';

export function datum(book: Book): void {
  const piece = book.facts.marked.findIndex(
    ({ text }) =>
      /(?:depths?|measurements?|measured|levels?|footages?)[^«»]{0,40}(?:from|below|are)[^«»]{0,16}(?:top of (?:the )?casing|casing top|t\.?o\.?c\b)/.test(
        text,
      ) && !/«/.test(text),
  );
  if (piece >= 0) book.read('well.depthsFrom', 'casing top', [piece]);
  const ground = book.facts.marked.findIndex(
    ({ text }) =>
      /(?:depths?|measurements?|levels?)[^«»]{0,40}(?:from|below)[^«»]{0,16}(?:ground|land surface|grade)/.test(text) &&
      !/«/.test(text),
  );
  if (piece < 0 && ground >= 0) book.read('well.depthsFrom', 'ground', [ground]);
}

/** What was drilled deeper than it was completed is filled again. */
export function depth(book: Book, height: Height | null): void {
  const all = book
    .of('depth')
    .filter(({ subject, name }) => subject !== 'pump' || /well|total|complet|finish/.test(name));
  const finished = all.filter(({ name }) => /complet|finish|construct/.test(name));
  const completed = finished.length > 0 ? finished : all;
  const drilled = [...book.of('drilledDepth'), ...all.filter((each) => !completed.includes(each))];
  const same = completed.length > 0 ? completed : drilled;
  const [taken] = same;
  if (taken !== undefined) {
    const other = same.find((each) => !book.alike(each.quantity, taken.quantity));
    const deeper =
      completed.length > 0 ? drilled.find((each) => !book.alike(each.quantity, taken.quantity)) : undefined;
    const counted = fromTop(book, taken, height);
    book.read('well.depth', counted?.[0] ?? book.write.length(taken.quantity), [taken.piece], {
      doubt:
        other === undefined
          ? (counted?.[1] ?? book.doubtOf(taken.quantity, taken.to))
          : { kind: 'two', other: book.write.length(other.quantity) },
      note: deeper === undefined ? null : 'completed',
    });
    if (deeper !== undefined) book.aside('drilledDeeper', deeper.piece);
  }
  const [sounded] = book.of('soundedDepth');
  if (sounded !== undefined) book.read('well.soundedDepth', book.write.length(sounded.quantity), [sounded.piece]);
}
