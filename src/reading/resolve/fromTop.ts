/** A depth that was counted from the top of the casing, where the others count from the ground. */
import type { Told } from '../facts.ts';
import type { Doubt } from '../reading.ts';
import type { Book } from './book.ts';
import type { Height } from './casings.ts';

/** Null where it counts as all others do. */
export function fromTop(
  book: Book,
  { quantity, words, piece }: Told,
  height: Height | null,
): readonly [value: string, doubt: Doubt] | null {
  const text = book.facts.marked[piece]?.text ?? '';
  const said =
    /top of (?:the )?(?:casing|well|it\b)|\bb?toc\b|casing top/.test(words) ||
    /top of (?:the )?(?:casing|it\b)|\bbtoc\b/.test(text.slice(Math.max(0, quantity.at - 4), quantity.at + 40));
  if (!said || book.readings.some(({ path, value }) => path === 'well.depthsFrom' && value === 'casing top'))
    return null;
  if (height === null) return [book.write.length(quantity), { kind: 'fromCasingTop' }];
  return [
    book.write.fromMetres(book.write.metres(quantity) - height.metres, quantity),
    { kind: 'takenOff', height: height.text },
  ];
}
