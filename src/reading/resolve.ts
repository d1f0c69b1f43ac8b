/** From what the lines say, one by one, to values for a plan: traps, and lines that tell of the same thing. */
import type { Fact } from './labels.ts';
import type { Facts, Found } from './facts.ts';
import type { Quantity } from './quantities.ts';
import type { Aside, Doubt, Note, Reading, WhyNot } from './reading.ts';
import type { Span } from './spans.ts';
import { inReport, type Writer } from './writer.ts';

export interface Resolved {
  readonly readings: readonly Reading[];
  readonly asides: readonly Aside[];
}

/** Higher a casing is hardly told to stand; a larger minus before a depth is a dash [in the report's own length]. */
const HIGHEST_CASING = 6;
/** As an imperial gallon is written. */
const IMPERIAL = /\bi\.?gpm|imp/i;
/** Words of a pump that stays. */
const INSTALLED = /\binstalled\b|\bhangs?\b|\bhung\b|\bpump (?:is|sits)\b/;
/** What was said of another time, or of somebody's plan. */
const NOT_NOW = /\b(?:last owner|previous|old pump|used to|will be|to be (?:set|hung|installed)|pulled)\b/;

/** Two figures that are this near say the same, as a share of the larger. */
const SAME = 0.01;

export function resolve(facts: Facts, units: 'us' | 'metric', saysUnits: boolean): Resolved {
  return new Resolver(facts, inReport(units, saysUnits)).all();
}

class Resolver {
  readonly #facts: Facts;
  readonly #write: Writer;
  readonly #readings: Reading[] = [];
  readonly #asides: Aside[] = [];
  readonly #whole: string;
  /** Lengths in feet and in metres stand in the same report. */
  readonly #mixed: boolean;

  constructor(facts: Facts, write: Writer) {
    this.#facts = facts;
    this.#write = write;
    const units = new Set(facts.marked.flatMap(({ quantities }) => quantities.map(({ unit }) => unit)));
    this.#mixed = units.has('ft') && units.has('m');
    this.#whole = facts.marked.map(({ text }) => text).join('\n');
  }

  all(): Resolved {
    const height = this.#casingHeight();
    this.#datum();
    this.#depth();
    this.#casings(height);
    this.#intake();
    this.#layers();
    this.#zones();
    this.#grout();
    this.#static(height);
    this.#test();
    this.#pump();
    for (const each of this.#of('firstWater')) this.#aside('firstWater', each.piece);
    for (const each of this.#of('artesianFlow')) this.#aside('artesianFlow', each.piece);
    this.#pitless();
    for (const each of this.#of('recommendedRate')) this.#aside('recommendedRate', each.piece);
    return { readings: this.#readings, asides: this.#asides };
  }

  #of(fact: Fact): readonly (Found & { readonly quantity: Quantity })[] {
    return this.#facts.found.filter(
      (each): each is Found & { readonly quantity: Quantity } => each.fact === fact && each.quantity !== null,
    );
  }

  #spans(...subjects: readonly Span['subject'][]): readonly Span[] {
    return this.#facts.spans.filter(({ subject }) => subjects.includes(subject));
  }

  #lines(pieces: readonly number[]): Pick<Aside, 'lines' | 'text'> {
    const all = [...new Set(pieces)].sort((a, b) => a - b).flatMap((piece) => this.#facts.pieces[piece] ?? []);
    return {
      lines: [...new Set(all.flatMap(({ lines }) => lines))],
      text: all.map(({ text }) => text.trim()).join('\n'),
    };
  }

  #read(
    path: string,
    value: Reading['value'],
    pieces: readonly number[],
    { doubt = null, note = null }: { doubt?: Doubt | null; note?: Note | null } = {},
  ): void {
    const own =
      doubt ?? this.#comma(value, pieces) ?? (this.#isGuessed(path, value, pieces) ? { kind: 'unit' as const } : null);
    const imperial =
      typeof value === 'string' &&
      /gpm$/.test(value) &&
      this.#quantities(pieces).some(({ text }) => IMPERIAL.test(text));
    this.#readings.push({
      path,
      value,
      ...this.#lines(pieces),
      doubt: own,
      note: note ?? (imperial ? 'imperial' : null),
    });
  }

  #quantities(pieces: readonly number[]): readonly Quantity[] {
    return pieces.flatMap((piece) => this.#facts.marked[piece]?.quantities ?? []);
  }

  /** No line names a unit, or some name feet and others metres and this one none. */
  #isGuessed(path: string, value: Reading['value'], pieces: readonly number[]): boolean {
    if (this.#write.isGuessed(path)) return true;
    if (!this.#mixed || typeof value !== 'string') return false;
    return this.#quantities(pieces).some(
      ({ unit, kind, value: number }) => kind === 'N' && unit === '' && value.startsWith(`${number} `),
    );
  }

  /** "1,250 m": where people write decimals with a comma too. */
  #comma(value: Reading['value'], pieces: readonly number[]): Doubt | null {
    if (typeof value !== 'string' || !/ (?:m|L\/min|L\/s|m3\/h)$/.test(value)) return null;
    const found = this.#quantities(pieces).find(
      ({ text, value: number }) => /^\d{1,3},\d{3}(?![\d,])/.test(text) && value.startsWith(`${number} `),
    );
    if (found === undefined) return null;
    return { kind: 'comma', other: value.replace(/^\d+/, String(found.value / 1000)) };
  }

  #aside(why: WhyNot, ...pieces: readonly number[]): void {
    this.#asides.push({ why, ...this.#lines(pieces) });
  }

  /** The doubt that lies in how a quantity is written. */
  #doubtOf(quantity: Quantity, to: Quantity | null): Doubt | null {
    if (to !== null) return { kind: 'range', other: this.#write.length(to) };
    if (quantity.less) return { kind: 'less' };
    return null;
  }

  #datum(): void {
    const piece = this.#facts.marked.findIndex(
      ({ text }) =>
        /(?:depths?|measurements?|measured|levels?|footages?)[^«»]{0,40}(?:from|below|are)[^«»]{0,16}(?:top of (?:the )?casing|casing top|t\.?o\.?c\b)/.test(
          text,
        ) && !/«/.test(text),
    );
    if (piece >= 0) this.#read('well.depthsFrom', 'casing top', [piece]);
    const ground = this.#facts.marked.findIndex(
      ({ text }) =>
        /(?:depths?|measurements?|levels?)[^«»]{0,40}(?:from|below)[^«»]{0,16}(?:ground|land surface|grade)/.test(
          text,
        ) && !/«/.test(text),
    );
    if (piece < 0 && ground >= 0) this.#read('well.depthsFrom', 'ground', [ground]);
  }

  /** What was drilled deeper than it was completed is filled again. */
  #depth(): void {
    const all = this.#of('depth').filter(({ subject }) => subject !== 'pump');
    const finished = all.filter(({ name }) => /complet|finish|construct/.test(name));
    const completed = finished.length > 0 ? finished : all;
    const drilled = [...this.#of('drilledDepth'), ...all.filter((each) => !completed.includes(each))];
    const same = completed.length > 0 ? completed : drilled;
    const [taken] = same;
    if (taken !== undefined) {
      const other = same.find((each) => !this.#alike(each.quantity, taken.quantity));
      const deeper =
        completed.length > 0 ? drilled.find((each) => !this.#alike(each.quantity, taken.quantity)) : undefined;
      this.#read('well.depth', this.#write.length(taken.quantity), [taken.piece], {
        doubt:
          other === undefined
            ? this.#doubtOf(taken.quantity, taken.to)
            : { kind: 'two', other: this.#write.length(other.quantity) },
        note: deeper === undefined ? null : 'completed',
      });
      if (deeper !== undefined) this.#aside('drilledDeeper', deeper.piece);
    }
    const [sounded] = this.#of('soundedDepth');
    if (sounded !== undefined) this.#read('well.soundedDepth', this.#write.length(sounded.quantity), [sounded.piece]);
  }

  #alike(a: Quantity, b: Quantity): boolean {
    const [first, second] = [this.#write.metres(a), this.#write.metres(b)];
    return Math.abs(first - second) <= SAME * Math.max(Math.abs(first), Math.abs(second));
  }

  /** How high the casing stands, in words of a plan; null where nobody said. */
  #casingHeight(): { readonly text: string; readonly metres: number; readonly piece: number } | null {
    const [said] = this.#of('casingHeight');
    if (said !== undefined)
      return {
        text: this.#write.size(said.quantity, 'length'),
        metres: this.#write.metres(said.quantity),
        piece: said.piece,
      };
    const [span] = this.#spans('casing').filter(({ from }) => from !== null && this.#isAbove(from));
    if (span?.from == null) return null;
    return {
      text: this.#write.length({ ...span.from, sign: '' }),
      metres: this.#write.metres(span.from),
      piece: span.piece,
    };
  }

  #isAbove(quantity: Quantity): boolean {
    return quantity.value > 0 && (quantity.sign === '+' || (quantity.sign === '-' && quantity.value <= HIGHEST_CASING));
  }

  #casings(height: { readonly text: string; readonly piece: number } | null): void {
    const spans = [...this.#spans('casing', 'liner', 'perforated')].filter(
      ({ subject, size, material }) => subject !== 'perforated' || size !== null || material !== '',
    );
    const plain = spans.filter(({ subject }) => subject !== 'perforated');
    const [size] = this.#of('casingSize');
    const [bottom] = this.#of('casingBottom');
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
    if (plain.length > 1) return this.#casingList(plain, height);
    if (outer.length > 0) return this.#casingList([...outer, ...plain], height);
    const [span] = plain;
    const [inside] = this.#of('casingInside');
    if (span?.size != null)
      this.#read(
        span.inside === true ? 'well.casing.insideDiameter' : 'well.casing.size',
        this.#write.size(span.size),
        [span.piece],
      );
    else if (size !== undefined) this.#read('well.casing.size', this.#write.size(size.quantity), [size.piece]);
    if (inside !== undefined && span?.inside !== true)
      this.#read('well.casing.insideDiameter', this.#write.size(inside.quantity), [inside.piece]);
    this.#casingMaterial(span, size ?? bottom);
    if (span?.to != null) this.#read('well.casing.bottom', this.#write.length(span.to), [span.piece]);
    else if (bottom !== undefined)
      this.#read('well.casing.bottom', this.#write.length(bottom.quantity), [bottom.piece], {
        doubt: /length|total/.test(bottom.name) ? { kind: 'length' } : this.#doubtOf(bottom.quantity, bottom.to),
      });
    if (height !== null) this.#read('well.casing.height', height.text, [height.piece]);
  }

  #casingMaterial(span: Span | undefined, beside: Found | undefined): void {
    const [said] = this.#facts.found.filter(({ fact }) => fact === 'casingMaterial');
    const pieces = [span?.piece, said?.piece, beside?.piece].filter((piece) => piece !== undefined);
    for (const piece of pieces) {
      const material = this.#write.material(this.#facts.marked[piece]?.text ?? '');
      if (material === '') continue;
      this.#read('well.casing.material', material, [piece]);
      break;
    }
    for (const piece of pieces) {
      const wall = this.#write.wall(this.#facts.pieces[piece]?.text ?? '') || (piece === span?.piece ? span.wall : '');
      if (wall === '') continue;
      this.#read('well.casing.schedule', wall, [piece]);
      break;
    }
  }

  /** Outermost first; what hangs inside another has a top. */
  #casingList(spans: readonly Span[], height: { readonly text: string; readonly piece: number } | null): void {
    const width = (span: Span): number => (span.size === null ? 0 : this.#write.metres(span.size));
    // One whose width nobody told keeps its place.
    const sorted = spans.every(({ size }) => size !== null) ? [...spans].sort((a, b) => width(b) - width(a)) : spans;
    const list = sorted.map((span, i) => {
      const top =
        span.from === null || span.from.value === 0 || this.#isAbove(span.from)
          ? undefined
          : this.#write.length(span.from);
      return tidied({
        material: span.material === '' ? undefined : span.material,
        ...(span.size === null
          ? {}
          : { [span.inside === true ? 'insideDiameter' : 'size']: this.#write.size(span.size) }),
        schedule: span.wall === '' ? undefined : span.wall,
        top,
        bottom: span.to === null ? undefined : this.#write.length(span.to),
        height: this.#standsUp(span, i, height),
      });
    });
    this.#read('well.casings', list, [...sorted.map(({ piece }) => piece), ...(height === null ? [] : [height.piece])]);
  }

  /** The casing that is told to stand up; where none is, the outermost. */
  #standsUp(span: Span, i: number, height: { readonly text: string } | null): string | undefined {
    if (height === null) return undefined;
    if (span.from !== null && this.#isAbove(span.from)) return this.#write.length({ ...span.from, sign: '' });
    const told = this.#spans('casing').some(({ from }) => from !== null && this.#isAbove(from));
    return i === 0 && !told ? height.text : undefined;
  }

  #intake(): void {
    const screens = this.#spans('screen', 'perforated').filter(({ to }) => to !== null);
    const holes = this.#spans('hole');
    const whole = this.#facts.marked;
    const word = (pattern: RegExp): number => whole.findIndex(({ text }) => pattern.test(text));
    const open = word(/\bopen (?:rock )?hole\b|\bopen[- ]hole (?:well|completion)\b/);
    const point = word(/\b(?:drive|driven|sand|well)[- ]?point\b/);
    const dug = word(/\b(?:hand )?dug well\b|\bbored well\b|\bwell was dug\b/);
    if (screens.length > 0) {
      this.#read(
        'well.intake.kind',
        point >= 0 ? 'driven point' : 'screen',
        screens.map(({ piece }) => piece),
      );
      this.#read(
        'well.intake.screens',
        screens.map(({ from, to, slot }) =>
          tidied({
            top: from === null ? 'unknown' : this.#write.length(from),
            bottom: to === null ? 'unknown' : this.#write.length(to),
            slot: slot === null ? undefined : this.#slot(slot),
          }),
        ),
        screens.map(({ piece }) => piece),
      );
      return;
    }
    if (open >= 0) this.#read('well.intake.kind', 'open hole', [open]);
    else if (point >= 0) this.#read('well.intake.kind', 'driven point', [point]);
    else if (dug >= 0) this.#read('well.intake.kind', 'dug', [dug]);
    const deepest = [...holes]
      .filter(({ size }) => size !== null)
      .sort((a, b) => this.#write.metres(b.to) - this.#write.metres(a.to))[0];
    const [size] = this.#of('holeSize');
    if (deepest?.size != null) this.#read('well.intake.diameter', this.#write.size(deepest.size), [deepest.piece]);
    else if (size !== undefined) this.#holeSize(size);
  }

  /** Of several sizes on a line the last is the deepest. */
  #holeSize({ quantity, piece }: Found & { readonly quantity: Quantity }): void {
    const sizes = this.#facts.marked[piece]?.quantities.filter(({ kind }) => kind === 'S') ?? [];
    const last = sizes.at(-1) ?? quantity;
    const doubt = this.#alike(last, quantity) ? null : ({ kind: 'two', other: this.#write.size(quantity) } as const);
    this.#read('well.intake.diameter', this.#write.size(last), [piece], { doubt });
  }

  /** A bare 10 or 20 is in thousandths of an inch, as slots are named. */
  #slot(slot: Quantity): string {
    if (slot.unit !== '') return `${slot.value} ${slot.unit}`;
    return `${slot.value >= 1 ? Number((slot.value / 1000).toPrecision(4)) : slot.value} in`;
  }

  #layers(): void {
    const rows = this.#spans('layer').filter(({ material, to }) => /[a-z]{3}/.test(material) && to !== null);
    if (rows.length < 2) return;
    const inside = (row: Span): boolean =>
      rows.some(
        (other) =>
          other !== row &&
          this.#write.metres(other.from) <= this.#write.metres(row.from) &&
          this.#write.metres(row.to) <= this.#write.metres(other.to),
      );
    const nested = rows.filter(inside);
    const sorted = rows
      .filter((row) => !nested.includes(row))
      .sort((a, b) => this.#write.metres(a.to) - this.#write.metres(b.to));
    const gap = sorted.some((row, i) => {
      const above = sorted[i - 1]?.to ?? null;
      const from = this.#write.metres(row.from);
      return Math.abs(from - (above === null ? 0 : this.#write.metres(above))) > 0.31;
    });
    this.#read(
      'well.layers',
      sorted.map(({ material, to }) => ({ material, bottom: to === null ? 'unknown' : this.#write.length(to) })),
      sorted.flatMap(({ piece, wrapped = [] }) => [piece, ...wrapped]),
      { doubt: gap || nested.length > 0 ? { kind: 'gap' } : null },
    );
  }

  #zones(): void {
    const rows = this.#spans('zone').filter(({ from, to }) => from !== null || to !== null);
    const flows = rows.map(({ flow }) => (flow === null ? null : this.#write.flowSi(flow)));
    const total = flows.every((flow) => flow !== null) ? flows.reduce((sum, flow) => sum + flow, 0) : 0;
    const single = this.#facts.marked.flatMap(({ text, quantities }, piece) => {
      if (rows.some((row) => row.piece === piece) || /first|static|recommend/.test(text)) return [];
      if (!/water[- ]bearing|fracture|main (?:water|inflow)|water (?:zone|entry|enters|comes in|found at)/.test(text))
        return [];
      return [...text.matchAll(/«L(\d+)»(?:[^«»]{0,3}«([PF])(\d+)»)?/g)].flatMap(([, index, kind, beside]) => {
        const depth = quantities[Number(index)];
        const other = beside === undefined ? undefined : quantities[Number(beside)];
        if (depth === undefined) return [];
        return [{ depth, piece, share: kind === 'P' ? other : undefined, flow: kind === 'F' ? other : undefined }];
      });
    });
    if (rows.length === 0 && single.length === 0) return;
    const list = [
      ...rows.flatMap(({ from, to }, i) => {
        const depth = from ?? to;
        if (depth === null) return [];
        const share = total > 0 ? `${Math.round((100 * (flows[i] ?? 0)) / total)} %` : undefined;
        return [tidied({ depth: this.#write.length(depth), share })];
      }),
      ...single.map(({ depth, share }) =>
        tidied({ depth: this.#write.length(depth), share: share === undefined ? undefined : `${share.value} %` }),
      ),
    ];
    this.#read(
      'well.inflows',
      list,
      [...rows, ...single].map(({ piece }) => piece),
      { note: total > 0 ? 'shares' : null },
    );
  }

  /** What leads out below frost, where it is told to stand there. */
  #pitless(): void {
    const [said] = this.#of('pitless');
    if (said === undefined) return;
    this.#read('top.kind', 'pitless', [said.piece], { note: 'installed' });
    this.#read('top.depth', this.#write.length(said.quantity), [said.piece], { note: 'installed' });
  }

  #grout(): void {
    const [span] = this.#spans('grout');
    const [said] = this.#of('grout');
    if (span?.to != null) this.#read('well.grout', [{ bottom: this.#write.length(span.to) }], [span.piece]);
    else if (said !== undefined && said.quantity.kind !== 'S')
      this.#read('well.grout', [{ bottom: this.#write.length(said.to ?? said.quantity) }], [said.piece]);
  }

  #static(height: { readonly text: string; readonly metres: number } | null): void {
    const all = this.#of('static').filter(({ subject, words }) => subject !== 'recommended' && !/recover/.test(words));
    const dated = all.map((each) => ({ ...each, day: this.#dayOf(each, all) }));
    const days = dated.filter(({ day }) => day !== null);
    const differ = all.some(({ quantity }) => all.some((each) => !this.#alike(quantity, each.quantity)));
    const latest =
      differ && days.length === all.length ? [...dated].sort((a, b) => (b.day ?? 0) - (a.day ?? 0))[0] : dated[0];
    if (latest === undefined) {
      const flows = this.#facts.marked.findIndex(({ text }) =>
        /(?:static|water level|well)[^«»]{0,24}\bflow(?:s|ing)\b|\bflowing (?:well|artesian)\b|\bartesian\b/.test(text),
      );
      if (flows >= 0) this.#aside('flows', flows);
      return;
    }
    const byDate = differ && days.length === all.length;
    if (byDate) for (const each of dated) if (each !== latest) this.#aside('earlier', each.piece);
    const other = byDate ? undefined : all.find(({ quantity }) => !this.#alike(quantity, latest.quantity));
    const beside = this.#beside(latest);
    const [value, plain] = this.#level(latest, height);
    const doubt = beside === undefined ? plain : ({ kind: 'two', other: this.#write.length(beside) } as const);
    this.#read('water.staticLevel', value, [latest.piece], {
      doubt: other === undefined ? doubt : { kind: 'two', other: this.#write.length(other.quantity) },
      note: byDate ? 'later' : null,
    });
  }

  /** A level, below the ground or above it, from the ground. */
  #level(
    { quantity, to, words, piece }: Found & { readonly quantity: Quantity },
    height: { readonly text: string; readonly metres: number } | null,
  ): readonly [string, Doubt | null] {
    const text = this.#facts.marked[piece]?.text ?? '';
    if (
      /above (?:the )?(?:ground|grade|land|surface)|above g\.?l|\bagl\b|\bags\b/.test(words) ||
      /above (?:the )?(?:ground|grade|land|surface)/.test(words)
    )
      return [`-${this.#write.length({ ...quantity, sign: '' })}`, null];
    if (quantity.sign === '+') {
      const plain = this.#write.length({ ...quantity, sign: '' });
      return [`-${plain}`, { kind: 'plus', other: plain }];
    }
    const fromTop =
      /top of (?:the )?(?:casing|well|it\b)|\bb?toc\b|casing top/.test(words) ||
      /top of (?:the )?(?:casing|it\b)|\bbtoc\b/.test(text.slice(Math.max(0, quantity.at - 4), quantity.at + 40));
    if (fromTop && !this.#readings.some(({ path, value }) => path === 'well.depthsFrom' && value === 'casing top')) {
      if (height === null) return [this.#write.length(quantity), { kind: 'fromCasingTop' }];
      return [
        this.#write.fromMetres(this.#write.metres(quantity) - height.metres, quantity),
        { kind: 'takenOff', height: height.text },
      ];
    }
    return this.#deeper({ quantity: { ...quantity, sign: '' }, to });
  }

  /** Of a range of levels the deeper end: judged at the worst that can be. */
  #deeper({
    quantity,
    to,
  }: {
    readonly quantity: Quantity;
    readonly to: Quantity | null;
  }): readonly [string, Doubt | null] {
    if (to === null) return [this.#write.length(quantity), this.#doubtOf(quantity, null)];
    return [this.#write.length(to), { kind: 'range', other: this.#write.length(quantity) }];
  }

  /** A day on the same piece, or on the one before or after it. */
  #dayOf({ piece, quantity }: Found & { readonly quantity: Quantity }, all: readonly Found[]): number | null {
    const line = this.#facts.marked[piece];
    const several = all.filter((each) => each.piece === piece).length > 1;
    // Of several on a line each has the day right behind it.
    if (several) {
      const behind = /^[^«»]{0,16}«D(\d+)»/.exec(line?.text.slice(quantity.at) ?? '');
      const day = behind === null ? undefined : line?.quantities[Number(behind[1])];
      return day === undefined || Number.isNaN(day.value) ? null : day.value;
    }
    for (const near of [piece, piece + 1, piece - 1]) {
      const day = this.#facts.marked[near]?.quantities.find(({ kind, value }) => kind === 'D' && !Number.isNaN(value));
      if (day !== undefined && (near === piece || /date|measured|^\s*«d/.test(this.#facts.marked[near]?.text ?? '')))
        return day.value;
    }
    return null;
  }

  /** Another level in the same sentence, of which nobody knows when it was. */
  #beside({ piece, quantity }: Found & { readonly quantity: Quantity }): Quantity | undefined {
    const line = this.#facts.marked[piece];
    if (line === undefined || !/\b(?:now|used to|then|later|today|drops?|dropped|rose)\b/.test(line.text))
      return undefined;
    const taken = this.#facts.found.filter((each) => each.piece === piece).map((each) => each.quantity?.text);
    return line.quantities.find(
      (each) => each.kind === 'L' && each.text !== quantity.text && !taken.includes(each.text),
    );
  }

  #test(): void {
    const how = this.#method();
    const level = this.#of('pumpingLevel')[0];
    const drawdown = this.#of('drawdown')[0];
    const rate = this.#of('testRate').filter(
      ({ quantity }) => quantity.kind === 'F' || quantity.unit !== '' || this.#write.saysUnits,
    )[0];
    const said = this.#of('yield').filter(({ subject }) => subject !== 'recommended')[0];
    const hours = this.#of('testHours').filter(({ quantity }) => quantity.kind === 'T' || quantity.unit !== '')[0];
    const flow = rate ?? said;
    const isAir = how?.method === 'air lift';
    const tests = this.#of('testIntake');
    for (const each of tests) this.#aside('testIntake', each.piece);
    const [day] = this.#facts.found.filter(({ fact, quantity }) => fact === 'date' && quantity !== null);
    if (day?.quantity != null) this.#read('well.tested', day.quantity.text, [day.piece]);
    if (isAir && level !== undefined) this.#aside('airLevel', level.piece);
    if (isAir && drawdown !== undefined) this.#aside('airLevel', drawdown.piece);
    const pieces = (...all: readonly (Found | undefined)[]): number[] =>
      all.flatMap((each) => (each === undefined ? [] : [each.piece]));
    if (!isAir && (level !== undefined || drawdown !== undefined)) {
      if (flow !== undefined)
        this.#read('water.pumping.flow', this.#write.flow(flow.quantity), [flow.piece], {
          doubt: this.#flowDoubt(flow),
        });
      if (drawdown !== undefined) {
        this.#read('water.pumping.drawdown', this.#deeper(drawdown)[0], pieces(drawdown), {
          doubt: this.#unlike(drawdown, level),
        });
        if (hours !== undefined) this.#read('water.pumping.after', this.#write.time(hours.quantity), [hours.piece]);
      } else if (level !== undefined) {
        const [value, doubt] = this.#deeper(level);
        this.#read('water.pumping.level', value, [level.piece], { doubt });
        if (hours !== undefined) this.#aside('noPlace', hours.piece);
      }
      if (rate !== undefined && said !== undefined && said.piece !== rate.piece)
        this.#read('well.yield', this.#write.flow(said.quantity), [said.piece], { doubt: this.#flowDoubt(said) });
    } else if (flow !== undefined) {
      this.#read('well.yield', this.#write.flow(flow.quantity), [flow.piece], {
        doubt: this.#flowDoubt(flow),
        note: isAir ? 'airLift' : null,
      });
      if (hours !== undefined) this.#aside('noPlace', hours.piece);
    }
    if (how !== null && flow !== undefined) this.#read('well.yieldFrom', how.method, [how.piece]);
  }

  #flowDoubt({ quantity, to, piece, name }: Found & { readonly quantity: Quantity }): Doubt | null {
    if (to !== null) return { kind: 'range', other: this.#write.flow(to) };
    const others =
      this.#facts.marked[piece]?.quantities.filter(({ kind, value }) => kind === 'F' && value !== quantity.value) ?? [];
    if (name === '' && others[0] !== undefined) return { kind: 'two', other: this.#write.flow(others[0]) };
    return quantity.less ? { kind: 'less' } : null;
  }

  /** Static level and drawdown come to the pumping level. */
  #unlike(
    drawdown: Found & { readonly quantity: Quantity },
    level: (Found & { readonly quantity: Quantity }) | undefined,
  ): Doubt | null {
    const rest = this.#of('static')[0];
    if (level === undefined || rest === undefined) return this.#deeper(drawdown)[1];
    const between = this.#write.metres(level.quantity) - this.#write.metres(rest.quantity);
    const said = this.#write.metres(drawdown.quantity);
    return Math.abs(between - said) <= Math.max(0.31, 0.03 * said)
      ? null
      : { kind: 'unlike', other: this.#write.length(level.quantity) };
  }

  #method(): { readonly method: 'air lift' | 'bailer' | 'pump'; readonly piece: number } | null {
    for (const [piece, { text }] of this.#facts.marked.entries()) {
      // Boxes that were not ticked say what was not done.
      const ticked = text.replace(/(?:\[\s*\]|\(\s*\)|☐)\s*[a-z]+(?:[ -]?lift)?(?: test)?/g, ' ');
      // A question that was answered with no, and a line of the form that stayed empty.
      if (/\?\s*no\b/.test(ticked) || (/\bgal\b|\bg\.?p\.?m/.test(ticked) && !/«F/.test(ticked))) continue;
      const isTest = /test|yield|method|blow|blew|gpm|pumped|bailed|«F/.test(ticked);
      if (!isTest || /drill\w* (?:method|with|by)|method of (?:drilling|construction)|rotary/.test(ticked)) continue;
      if (
        /\bair[- ]?lift|\bairlift|\bair[- ]?test|\bblow(?:n|ing)?\b|\bblew\b|\bwith air\b|\bby air\b|\bair test|\bair\b(?=\s*$|[;,.)\]])|[x✓✔☒]\s*\]?\s*air\b|(?:method|by)\W{0,4}air\b|air compress/.test(
          ticked,
        )
      )
        return { method: 'air lift', piece };
      if (/\bbail(?:er|ed|ing)?\b/.test(ticked)) return { method: 'bailer', piece };
      if (
        /(?:test(?:ed)?|method|by|with|yield)[^«»]{0,24}\b(?:submersible |test )?pump\b|\bpumped\b|\bpump(?:ing)? test\b|\btest[- ]pumped\b|[x✓✔☒]\s*\]?\s*pump\b/.test(
          ticked,
        ) &&
        !/recommend/.test(ticked)
      ) {
        if (/air/.test(this.#whole) && this.#airLater(piece)) continue;
        return { method: 'pump', piece };
      }
    }
    return null;
  }

  /** A heading such as "Pump test" stands over a test that was done with air. */
  #airLater(piece: number): boolean {
    return this.#facts.marked
      .slice(piece + 1)
      .some(({ text }) =>
        /\bair[- ]?lift|\bairlift|\bblown\b|\bblew\b|(?:method|by)\W{0,4}air\b|[x✓✔☒]\s*\]?\s*air\b/.test(
          text.replace(/(?:\[\s*\]|\(\s*\)|☐)\s*air(?:[ -]?lift)?/g, ' '),
        ),
      );
  }

  #pump(): void {
    const settings = this.#of('pumpDepth');
    const forTest = settings.filter(
      ({ subject, piece }) => subject === 'test' || /\btest\b/.test(this.#facts.marked[piece]?.text ?? ''),
    );
    for (const each of forTest) this.#aside('testIntake', each.piece);
    const stood = settings.find((each) => !forTest.includes(each) && each.subject !== 'recommended');
    // Beside advice on where to hang one, a pump that nobody calls installed was the one of the test.
    const advised = this.#of('recommendedDepth').length > 0;
    const isInstalled =
      stood !== undefined && (stood.subject === 'pump' || INSTALLED.test(this.#facts.marked[stood.piece]?.text ?? ''));
    const installed = stood !== undefined && (isInstalled || !advised) ? stood : undefined;
    if (stood !== undefined && installed === undefined) this.#aside('testIntake', stood.piece);
    const recommended =
      this.#of('recommendedDepth')[0] ??
      settings.find(({ subject, piece }) => subject === 'recommended' && !forTest.some((each) => each.piece === piece));
    if (installed !== undefined)
      this.#read('pump.setting', this.#write.length(installed.quantity), [installed.piece], {
        doubt: isInstalled ? this.#doubtOf(installed.quantity, installed.to) : { kind: 'standing' },
        note: 'installed',
      });
    else if (recommended !== undefined)
      this.#read('pump.setting', this.#write.length(recommended.quantity), [recommended.piece], {
        doubt: this.#doubtOf(recommended.quantity, recommended.to),
        note: 'recommended',
      });
    if (installed !== undefined && recommended !== undefined) this.#aside('installedInstead', recommended.piece);
    const power = this.#of('pumpPower').find(
      ({ subject, piece }) =>
        subject !== 'test' &&
        !/\btest\b|compressor|drill rig|recommend/.test(this.#facts.marked[piece]?.text ?? '') &&
        !NOT_NOW.test(this.#facts.marked[piece]?.text ?? ''),
    );
    if (power !== undefined)
      this.#read('pump.power', this.#write.power(power.quantity), [power.piece], {
        note: installed === undefined ? null : 'installed',
      });
  }
}

function tidied(value: Readonly<Record<string, unknown>>): Readonly<Record<string, unknown>> {
  return Object.fromEntries(Object.entries(value).filter(([, each]) => each !== undefined));
}
