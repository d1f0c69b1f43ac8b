/** What the lines say, and the values that are written out of it, each with its lines and its doubt. */
import type { Fact } from '../labels.ts';
import type { Facts, Told } from '../facts.ts';
import type { Quantity } from '../quantities.ts';
import type { Aside, Doubt, Note, Reading, WhyNot } from '../reading.ts';
import type { Span } from '../spans.ts';
import type { Writer } from '../writer.ts';

/** As an imperial gallon is written. */
const IMPERIAL = /\bi\.?gpm|imp/i;
/** Two figures that are this near say the same, as a share of the larger. */
const SAME = 0.01;

export class Book {
  readonly facts: Facts;
  readonly write: Writer;
  readonly readings: Reading[] = [];
  readonly asides: Aside[] = [];
  /** All of the text, marked. */
  readonly whole: string;
  /** Lengths in feet and in metres stand in the same report. */
  readonly mixed: boolean;

  constructor(facts: Facts, write: Writer) {
    this.facts = facts;
    this.write = write;
    const units = new Set(facts.marked.flatMap(({ quantities }) => quantities.map(({ unit }) => unit)));
    this.mixed = units.has('ft') && units.has('m');
    this.whole = facts.marked.map(({ text }) => text).join('\n');
  }

  of(fact: Fact): readonly Told[] {
    return this.facts.found.filter((each): each is Told => each.fact === fact && each.quantity !== null);
  }

  spans(...subjects: readonly Span['subject'][]): readonly Span[] {
    return this.facts.spans.filter(({ subject }) => subjects.includes(subject));
  }

  lines(pieces: readonly number[]): Pick<Aside, 'lines' | 'text'> {
    const all = [...new Set(pieces)].sort((a, b) => a - b).flatMap((piece) => this.facts.pieces[piece] ?? []);
    return {
      lines: [...new Set(all.flatMap(({ lines }) => lines))],
      text: all.map(({ text }) => text.trim()).join('\n'),
    };
  }

  read(
    path: string,
    value: Reading['value'],
    pieces: readonly number[],
    { doubt = null, note = null }: { doubt?: Doubt | null; note?: Note | null } = {},
  ): void {
    const own =
      doubt ?? this.comma(value, pieces) ?? (this.isGuessed(path, value, pieces) ? { kind: 'unit' as const } : null);
    const imperial =
      typeof value === 'string' &&
      /gpm$/.test(value) &&
      this.quantities(pieces).some(({ text }) => IMPERIAL.test(text));
    this.readings.push({
      path,
      value,
      ...this.lines(pieces),
      doubt: own,
      note: note ?? (imperial ? 'imperial' : null),
    });
  }

  quantities(pieces: readonly number[]): readonly Quantity[] {
    return pieces.flatMap((piece) => this.facts.marked[piece]?.quantities ?? []);
  }

  /** No line names a unit, or some name feet and others metres and this one none. */
  isGuessed(path: string, value: Reading['value'], pieces: readonly number[]): boolean {
    if (this.write.isGuessed(path)) return true;
    if (!this.mixed || typeof value !== 'string') return false;
    return this.quantities(pieces).some(
      ({ unit, kind, value: number }) => kind === 'N' && unit === '' && value.startsWith(`${number} `),
    );
  }

  /** "1,250 m": where people write decimals with a comma too. */
  comma(value: Reading['value'], pieces: readonly number[]): Doubt | null {
    if (typeof value !== 'string' || !/ (?:m|L\/min|L\/s|m3\/h)$/.test(value)) return null;
    const found = this.quantities(pieces).find(
      ({ text, value: number }) => /^\d{1,3},\d{3}(?![\d,])/.test(text) && value.startsWith(`${number} `),
    );
    if (found === undefined) return null;
    return { kind: 'comma', other: value.replace(/^\d+/, String(found.value / 1000)) };
  }

  aside(why: WhyNot, ...pieces: readonly number[]): void {
    this.asides.push({ why, ...this.lines(pieces) });
  }

  /** The doubt that lies in how a quantity is written. */
  doubtOf(quantity: Quantity, to: Quantity | null): Doubt | null {
    if (to !== null) return { kind: 'range', other: this.write.length(to) };
    if (quantity.less) return { kind: 'less' };
    return null;
  }

  alike(a: Quantity, b: Quantity): boolean {
    const [first, second] = [this.write.metres(a), this.write.metres(b)];
    return Math.abs(first - second) <= SAME * Math.max(Math.abs(first), Math.abs(second));
  }

  /** Of a range of levels the deeper end: judged at the worst that can be. */
  deeper({
    quantity,
    to,
  }: {
    readonly quantity: Quantity;
    readonly to: Quantity | null;
  }): readonly [string, Doubt | null] {
    if (to === null) return [this.write.length(quantity), this.doubtOf(quantity, null)];
    return [this.write.length(to), { kind: 'range', other: this.write.length(quantity) }];
  }

  flowDoubt({ quantity, to, piece, name }: Told): Doubt | null {
    if (to !== null) return { kind: 'range', other: this.write.flow(to) };
    const others =
      this.facts.marked[piece]?.quantities.filter(({ kind, value }) => kind === 'F' && value !== quantity.value) ?? [];
    const changed = /\b(?:before|now|original|after)\b/.test(this.facts.marked[piece]?.text ?? '');
    if ((name === '' || changed) && others[0] !== undefined) return { kind: 'two', other: this.write.flow(others[0]) };
    return quantity.less ? { kind: 'less' } : null;
  }
}
