/** Where the water stands: the later of two days, from the ground, and above it where that is said. */
import type { Found, Told } from '../facts.ts';
import type { Quantity } from '../quantities.ts';
import type { Doubt } from '../reading.ts';
import type { Book } from './book.ts';
import type { Height } from './casings.ts';
import { fromTop } from './fromTop.ts';

export function staticLevel(book: Book, height: Height | null): void {
  const all = book
    .of('static')
    .filter(({ subject, words }) => subject !== 'recommended' && !/recover|(?:when|while|during) pumping/.test(words));
  const dated = all.map((each) => ({ ...each, day: dayOf(book, each, all) }));
  const days = dated.filter(({ day }) => day !== null);
  const differ = all.some(({ quantity }) => all.some((each) => !book.alike(quantity, each.quantity)));
  const latest =
    differ && days.length === all.length ? [...dated].sort((a, b) => (b.day ?? 0) - (a.day ?? 0))[0] : dated[0];
  if (latest === undefined) {
    const flows = book.facts.marked.findIndex(({ text }) =>
      /(?:static|water level|well)[^«»]{0,24}\bflow(?:s|ing)\b|\bflowing (?:well|artesian)\b|\bartesian\b/.test(text),
    );
    if (flows >= 0) book.aside('flows', flows);
    return;
  }
  const byDate = differ && days.length === all.length;
  if (byDate) for (const each of dated) if (each !== latest) book.aside('earlier', each.piece);
  const other = byDate ? undefined : all.find(({ quantity }) => !book.alike(quantity, latest.quantity));
  const beside = levelBeside(book, latest);
  const [value, plain] = level(book, latest, height);
  const doubt = beside === undefined ? plain : ({ kind: 'two', other: book.write.length(beside) } as const);
  book.read('water.staticLevel', value, [latest.piece], {
    doubt: other === undefined ? doubt : { kind: 'two', other: book.write.length(other.quantity) },
    note: byDate ? 'later' : null,
  });
}

/** A level, below the ground or above it, from the ground. */
function level(book: Book, told: Told, height: Height | null): readonly [string, Doubt | null] {
  const { quantity, to, words } = told;
  if (
    /above (?:the )?(?:ground|grade|land|surface)|above g\.?l|\bagl\b|\bags\b/.test(words) ||
    /above (?:the )?(?:ground|grade|land|surface)/.test(words)
  )
    return [`-${book.write.length({ ...quantity, sign: '' })}`, null];
  if (quantity.sign === '+') {
    const plain = book.write.length({ ...quantity, sign: '' });
    return [`-${plain}`, { kind: 'plus', other: plain }];
  }
  const counted = fromTop(book, told, height);
  if (counted !== null) return counted;
  return book.deeper({ quantity: { ...quantity, sign: '' }, to });
}

/** A day on the same piece, or on the one before or after it. */
function dayOf(book: Book, { piece, quantity }: Told, all: readonly Found[]): number | null {
  const line = book.facts.marked[piece];
  const several = all.filter((each) => each.piece === piece).length > 1;
  // Of several on a line each has the day right behind it.
  if (several) {
    const behind = /^[^«»]{0,16}«D(\d+)»/.exec(line?.text.slice(quantity.at) ?? '');
    const day = behind === null ? undefined : line?.quantities[Number(behind[1])];
    return day === undefined || Number.isNaN(day.value) ? null : day.value;
  }
  for (const near of [piece, piece + 1, piece - 1]) {
    const day = book.facts.marked[near]?.quantities.find(({ kind, value }) => kind === 'D' && !Number.isNaN(value));
    if (day !== undefined && (near === piece || /date|measured|^\s*«d/.test(book.facts.marked[near]?.text ?? '')))
      return day.value;
  }
  return null;
}

/** Another level in the same sentence, of which nobody knows when it was. */
function levelBeside(book: Book, { piece, quantity }: Told): Quantity | undefined {
  const line = book.facts.marked[piece];
  if (line === undefined || !/\b(?:now|used to|then|later|today|drops?|dropped|rose)\b/.test(line.text))
    return undefined;
  const taken = book.facts.found.filter((each) => each.piece === piece).map((each) => each.quantity?.text);
  return line.quantities.find((each) => each.kind === 'L' && each.text !== quantity.text && !taken.includes(each.text));
}
