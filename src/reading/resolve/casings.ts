/** Casing, liners, and how high they stand. */
import type { Found } from '../facts.ts';
import type { Quantity } from '../quantities.ts';
import type { Span } from '../spans.ts';
import type { Book } from './book.ts';
import { tidied } from './tidied.ts';

/** Higher a casing is hardly told to stand; a larger minus before a depth is a dash [in the report's own length]. */
const HIGHEST_CASING = 6;

export interface Height {
  /** As a plan writes it. */
  readonly text: string;
  readonly metres: number;
  readonly piece: number;
}

/** How high the casing stands, in words of a plan; null where nobody said. */
export function casingHeight(book: Book): Height | null {
  const [said] = book.of('casingHeight');
  if (said !== undefined)
    return {
      text: book.write.size(said.quantity, 'length'),
      metres: book.write.metres(said.quantity),
      piece: said.piece,
    };
  const [span] = book.spans('casing').filter(({ from }) => from !== null && isAbove(from));
  if (span?.from == null) return null;
  return {
    text: book.write.length({ ...span.from, sign: '' }),
    metres: book.write.metres(span.from),
    piece: span.piece,
  };
}

function isAbove(quantity: Quantity): boolean {
  return quantity.value > 0 && (quantity.sign === '+' || (quantity.sign === '-' && quantity.value <= HIGHEST_CASING));
}

export function casings(book: Book, height: Height | null): void {
  const spans = [...book.spans('casing', 'liner', 'perforated')].filter(
    ({ subject, size, material }) => subject !== 'perforated' || size !== null || material !== '',
  );
  const plain = spans.filter(({ subject }) => subject !== 'perforated');
  const [size] = book.of('casingSize');
  const [bottom] = book.of('casingBottom');
  const first = plain[0];
  // A liner hangs in a casing, also where a label alone tells of that.
  const outer =
    first?.subject === 'liner'
      ? [
          {
            ...first,
            subject: 'casing' as const,
            from: null,
            to: bottom?.quantity ?? null,
            size: size?.quantity ?? null,
            material: '',
            wall: '',
            inside: false,
            piece: bottom?.piece ?? size?.piece ?? first.piece,
          },
        ]
      : [];
  if (plain.length > 1) return casingList(book, plain, height);
  if (outer.length > 0) return casingList(book, [...outer, ...plain], height);
  const [span] = plain;
  const [inside] = book.of('casingInside');
  if (span?.size != null)
    book.read(span.inside === true ? 'well.casing.insideDiameter' : 'well.casing.size', book.write.size(span.size), [
      span.piece,
    ]);
  else if (size !== undefined) book.read('well.casing.size', book.write.size(size.quantity), [size.piece]);
  if (inside !== undefined && span?.inside !== true)
    book.read('well.casing.insideDiameter', book.write.size(inside.quantity), [inside.piece]);
  casingMaterial(book, span, size ?? bottom);
  if (span?.to != null) book.read('well.casing.bottom', book.write.length(span.to), [span.piece]);
  else if (bottom !== undefined)
    book.read('well.casing.bottom', book.write.length(bottom.quantity), [bottom.piece], {
      doubt: /length|total/.test(bottom.name) ? { kind: 'length' } : book.doubtOf(bottom.quantity, bottom.to),
    });
  if (height !== null) book.read('well.casing.height', height.text, [height.piece]);
}

function casingMaterial(book: Book, span: Span | undefined, beside: Found | undefined): void {
  const [said] = book.facts.found.filter(({ fact }) => fact === 'casingMaterial');
  const pieces = [span?.piece, said?.piece, beside?.piece].filter((piece) => piece !== undefined);
  for (const piece of pieces) {
    const material = book.write.material(book.facts.marked[piece]?.text ?? '');
    if (material === '') continue;
    book.read('well.casing.material', material, [piece]);
    break;
  }
  for (const piece of pieces) {
    const wall = book.write.wall(book.facts.pieces[piece]?.text ?? '') || (piece === span?.piece ? span.wall : '');
    if (wall === '') continue;
    book.read('well.casing.schedule', wall, [piece]);
    break;
  }
}

/** Outermost first; what hangs inside another has a top. */
function casingList(book: Book, spans: readonly Span[], height: Height | null): void {
  const width = (span: Span): number => (span.size === null ? 0 : book.write.metres(span.size));
  // One whose width nobody told keeps its place.
  const sorted = spans.every(({ size }) => size !== null) ? [...spans].sort((a, b) => width(b) - width(a)) : spans;
  const list = sorted.map((span, i) => {
    const top =
      span.from === null || span.from.value === 0 || isAbove(span.from) ? undefined : book.write.length(span.from);
    return tidied({
      material: span.material === '' ? undefined : span.material,
      ...(span.size === null ? {} : { [span.inside === true ? 'insideDiameter' : 'size']: book.write.size(span.size) }),
      schedule: span.wall === '' ? undefined : span.wall,
      top,
      bottom: span.to === null ? undefined : book.write.length(span.to),
      height: standsUp(book, span, i, height),
    });
  });
  book.read('well.casings', list, [...sorted.map(({ piece }) => piece), ...(height === null ? [] : [height.piece])]);
}

/** The casing that is told to stand up; where none is, the outermost. */
function standsUp(book: Book, span: Span, i: number, height: Height | null): string | undefined {
  if (height === null) return undefined;
  if (span.from !== null && isAbove(span.from)) return book.write.length({ ...span.from, sign: '' });
  const told = book.spans('casing').some(({ from }) => from !== null && isAbove(from));
  return i === 0 && !told ? height.text : undefined;
}
