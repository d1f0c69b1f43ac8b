/** The chips right of the section: each reads a level and is the handle that drags it. */
import type { Note } from '../../words/labels.ts';
import { drawDots, type Under } from '../assumed.ts';
import { joined } from '../joined.ts';
import { collapseLabels, labelAt, type LabelLadder } from '../labels/collapse.ts';
import { fitLabels, type Margin } from '../labels/fit.ts';
import { orderLabels } from '../labels/order.ts';
import type { Memory } from '../memory.ts';
import type { Shape } from '../scene.ts';
import { circle, digits, faced, group, inked, path, polyline, rect, text } from '../shapes.ts';
import type { Measure } from '../type/measure.ts';
import type { ChipPlace, ChipState } from '../view.ts';
import type { ChipWords } from './chipWords.ts';
import { within, type SectionFrame } from './frame.ts';

/** Heights of a chip at the ladder's steps without its notes [px]. */
const TALL = [26, 26, 20, 16] as const;
const NOTE_LINE = 14;
const NOTE_SIZE = 11.5;
const GAP = 5;
/** A balloon or a chip without its name would hide what is in danger: those stop at code and value. */
const READABLE_STEP = 2;
/** Where even balloons have no room, the least important ones are counted in one line. */
const HIDDEN = TALL.length;
const MORE_LINE = 16;

export interface ChipColumn {
  readonly x: number;
  readonly width: number;
  readonly top: number;
  readonly bottom: number;
}

export interface ChipDrawing {
  readonly shapes: readonly Shape[];
  readonly chips: readonly ChipPlace[];
  readonly states: readonly ChipState[];
}

interface Placed {
  readonly words: ChipWords;
  readonly step: number;
  /** y of the chip's own middle, notes not counted. */
  readonly middle: number;
  readonly lineY: number;
}

interface Shown extends Placed {
  /** No other level is near its own. */
  readonly alone: boolean;
}

/** A straight leader is off its level by up to LEVEL_WITH; the next level's leader must not be in that. */
function isAlone(chip: Placed, all: readonly Placed[]): boolean {
  return all.every((other) => other === chip || Math.abs(other.lineY - chip.lineY) >= 2 * LEVEL_WITH);
}

/** As good as level with its line [px]. */
const LEVEL_WITH = 3;

/** What the chips say; and how they stood, while a pointer is down. */
export interface ChipsAsked {
  readonly words: readonly ChipWords[];
  readonly before: readonly ChipState[] | undefined;
}

export function drawChips(
  asked: ChipsAsked,
  column: ChipColumn,
  frame: SectionFrame,
  { recall, same }: Memory,
): ChipDrawing {
  const all = placeChips(asked, column, frame);
  const shown = all.filter(({ step }) => step !== HIDDEN);
  const placed = shown.map((chip): Shown => {
    const { words: own, step, middle, lineY } = chip;
    return { words: own, step, middle, lineY, alone: isAlone(chip, shown) };
  });
  const hidden = all.filter(({ step }) => step === HIDDEN).map((chip) => chip.words);
  const unders = joined(
    placed.map((chip) => [
      ...(chip.words.assumed ? [underValue(chip, column, frame)] : []),
      ...underNotes(chip, column, frame),
    ]),
  );
  const valuesOf = ({ words: each, step, middle, lineY, alone }: Shown) => [
    each,
    step,
    middle,
    lineY,
    alone,
    column,
    frame,
  ];
  return {
    shapes: [
      group(
        'leaders',
        joined(
          placed.map((chip) =>
            recall(`leader/${chip.words.handle}`, valuesOf(chip), () => leader(chip, column, frame)),
          ),
        ),
        { fill: 'none', 'stroke-width': 1.3, 'stroke-linejoin': 'round' },
      ),
      group(
        'chips',
        placed.map((chip) => recall(`chip/${chip.words.handle}`, valuesOf(chip), () => drawChip(chip, column, frame))),
        { fill: frame.ink.ink },
      ),
      ...recall('chips/assumed', [same('chips/unders', unders), frame.ink], () => drawDots(unders, frame.ink.ink2)),
      ...(hidden.length === 0 ? [] : [drawMore(hidden, column, frame)]),
    ],
    chips: placed.map(({ words: { handle }, step, middle, lineY }) => {
      const height = tallAt(step);
      return { handle, x: column.x, y: middle - height / 2, width: column.width, height, lineY };
    }),
    states: all.map(({ words: { handle }, step, middle, lineY }) => ({
      handle,
      offset: middle - lineY,
      collapse: step,
    })),
  };
}

function tallAt(step: number): number {
  return TALL[step] ?? TALL[0];
}

function placeChips({ words, before: stood }: ChipsAsked, column: ChipColumn, frame: SectionFrame): Placed[] {
  const { held } = frame;
  const track: Margin = { gap: GAP, lo: column.top, hi: column.bottom };
  const before = new Map(stood?.map((chip) => [chip.handle, chip]));
  const anchored = words.map((each) => {
    const lineY = within(frame, frame.y(each.depth));
    const offset = held?.handle === each.handle ? (before.get(each.handle)?.offset ?? 0) : 0;
    return { words: each, handle: each.handle, lineY, anchor: lineY + offset };
  });
  const ordered = orderLabels(
    anchored,
    stood?.map((chip) => chip.handle),
  );
  const ladders = ordered.map(({ words: each, anchor }) => ladderOf(each, anchor));
  const steps =
    stood === undefined
      ? hideSome(ladders, collapseLabels(ladders, track), column)
      : ordered.map(({ handle }) => before.get(handle)?.collapse ?? 1);
  const shown: { handle: string; ladder: LabelLadder; step: number }[] = [];
  ordered.forEach(({ handle }, i) => {
    const ladder = ladders[i];
    const step = steps[i] ?? 0;
    if (ladder !== undefined && step !== HIDDEN) shown.push({ handle, ladder, step });
  });
  const pinned = held === undefined ? -1 : shown.findIndex(({ handle }) => handle === held.handle);
  const blocks = fitLabels(
    shown.map(({ ladder, step }) => labelAt(ladder, step)),
    shown.length < ordered.length ? { ...track, hi: column.bottom - MORE_LINE } : track,
    pinned,
  );
  const middles = new Map(shown.map(({ handle }, i) => [handle, blocks[i]]));
  return ordered.map(({ words: each, lineY, handle }, i) => {
    const step = steps[i] ?? 0;
    return { words: each, step, lineY, middle: (middles.get(handle) ?? lineY) - notesHeight(each, step) / 2 };
  });
}

/** Steps with the least important labels hidden, until the others and the line that counts them have room. */
function hideSome(ladders: readonly LabelLadder[], steps: readonly number[], { top, bottom }: ChipColumn): number[] {
  const kept = [...steps];
  const need = (): number =>
    ladders.reduce(
      (sum, ladder, i) => (kept[i] === HIDDEN ? sum : sum + labelAt(ladder, kept[i] ?? 0).height + GAP),
      0,
    );
  if (need() - GAP <= bottom - top) return kept;
  const order = ladders
    .map((_, i) => i)
    .sort((a, b) => (ladders[a]?.priority ?? 0) - (ladders[b]?.priority ?? 0) || b - a);
  for (const i of order) {
    if (need() - GAP <= bottom - top - MORE_LINE) break;
    // What is in danger is never hidden.
    if ((ladders[i]?.lastStep ?? 0) > READABLE_STEP) kept[i] = HIDDEN;
  }
  return kept;
}

/** "3 more, 198–204 ft" */
function drawMore(
  hidden: readonly ChipWords[],
  column: ChipColumn,
  { ink, type, words: { chips } }: SectionFrame,
): Shape {
  const known = hidden.filter((each) => each.known).sort((a, b) => a.depth - b.depth);
  const first = known[0]?.value ?? chips.notKnown;
  const last = known[known.length - 1]?.value ?? chips.notKnown;
  const unit = / .*$/.exec(last.replace(/\u00A0/g, ' '))?.[0] ?? '';
  const from = first.replace(/\u00A0/g, ' ');
  const start = unit !== '' && from.endsWith(unit) ? from.slice(0, -unit.length) : first;
  const words = chips.more({ count: hidden.length, range: first === last ? last : `${start}–${last}` });
  return text('more', column.x + 8, column.bottom - 4, type.shorten(words, column.width - 8, NOTE_SIZE), {
    size: NOTE_SIZE,
    fill: ink.ink2,
  });
}

function notesHeight({ notes }: ChipWords, step: number): number {
  return step === 0 ? notes.length * NOTE_LINE : 0;
}

/** The level points at the chip's own middle, so a block with notes hangs lower by half of them. */
function ladderOf(words: ChipWords, anchor: number): LabelLadder {
  const heights = TALL.map((tall, step) => tall + notesHeight(words, step));
  return {
    anchors: TALL.map((_, step) => anchor + notesHeight(words, step) / 2),
    heights,
    weight: words.weight,
    priority: words.priority,
    lastStep: words.finding?.severity === 'danger' ? READABLE_STEP : heights.length - 1,
  };
}

/** Stub, slant, stub; straight when the chip stands as good as level with its line, and no other is near. */
function leader({ words, middle, lineY, alone }: Shown, column: ChipColumn, frame: SectionFrame): Shape[] {
  if (!words.known) return [];
  const from = frame.right;
  const to = column.x;
  const points: [number, number][] =
    Math.abs(middle - lineY) < LEVEL_WITH && (alone || middle === lineY)
      ? [
          [from, lineY],
          [to, middle],
        ]
      : [
          [from, lineY],
          [from + 3, lineY],
          [to - 4, middle],
          [to, middle],
        ];
  return [path(words.handle, polyline(points), { stroke: strokeOf(words, frame) })];
}

function strokeOf({ ink, finding }: ChipWords, frame: SectionFrame): string {
  return finding?.severity === 'danger' ? frame.ink.danger : ink;
}

/** Where a chip's value stands: on its right, in a balloon behind the dot. */
function underValue({ words, step, middle }: Placed, column: ChipColumn, { type }: SectionFrame): Under {
  const size = step === 3 ? BALLOON_SIZE : sizeAt(step, column);
  const width = type.width(words.value, size, 600);
  const x = step === 3 ? column.x + BALLOON_TEXT : column.x + column.width - VALUE_INSET - width;
  const baseline = middle + (step === 3 ? 4 : size * 0.35);
  return { x, y: baseline + 2.5, width };
}

/** Under the figures that notes begin with; one that no longer begins with it, for want of room, has none. */
function underNotes({ words, step, middle }: Placed, column: ChipColumn, { type }: SectionFrame): Under[] {
  if (step !== 0) return [];
  const below = middle + tallAt(step) / 2;
  return joined(
    words.notes.map((note, i) => {
      const figure = FIGURE.exec(noteFor(note, column.width - 14, type))?.[0];
      if (note.assumed !== true || figure === undefined) return [];
      const y = below + 11.5 + i * NOTE_LINE + 2.5;
      return [{ x: column.x + 12, y, width: type.width(figure, NOTE_SIZE) }];
    }),
  );
}

/** With its unit, which no line parts from it. */
const FIGURE = /^[\d.,]+\u00A0\S+/;

function sizeAt(step: number, column: ChipColumn): number {
  return step === 2 ? 11.5 : column.width < 125 ? 12 : 13;
}

/** From a chip's right end to its value [px]. */
const VALUE_INSET = 10;
/** From the column's left edge to the value of a balloon [px]. */
const BALLOON_TEXT = 20;
const BALLOON_SIZE = 11;

function drawChip(chip: Placed, column: ChipColumn, frame: SectionFrame): Shape {
  const { words, step, middle } = chip;
  if (step === 3) return balloon(chip, column, frame);
  const tall = tallAt(step);
  const size = sizeAt(step, column);
  const { ink, type } = frame;
  const stroke = strokeOf(words, frame);
  const top = middle - tall / 2;
  const right = column.x + column.width - VALUE_INSET;
  const valueWidth = type.width(words.value, size, 600);
  // Paper offers nothing to take hold of.
  const movable = frame.theme !== 'print';
  const nameX = column.x + (movable ? 21 : 12);
  const room = right - valueWidth - 6 - nameX;
  const danger = words.finding?.severity === 'danger';
  const shapes: Shape[] = [
    rect('body', column.x, top, column.width, tall, {
      rx: tall / 2,
      fill: ink.paper,
      stroke,
      'stroke-width': danger ? 2 : 1.5,
      ...(words.known ? {} : { 'stroke-dasharray': '3 3' }),
    }),
    ...(!movable ? [] : words.locked ? [lock(column.x + 13, middle, stroke)] : [grip(column.x + 9, middle, stroke)]),
    text('name', nameX, middle + size * 0.35, nameFor(words, room, size, type), { size }),
    text('value', right, middle + size * 0.35, words.value, { size, weight: 600, anchor: 'end' }),
  ];
  if (step === 0) shapes.push(...drawNotes(words, column, top + tall, frame));
  return group(words.handle, shapes);
}

/** Under the chip; a first note that says what is wrong is in the ink of it. */
function drawNotes(
  { notes, finding }: ChipWords,
  column: ChipColumn,
  below: number,
  { ink, type }: SectionFrame,
): Shape[] {
  return notes.map((note, i) => {
    const fault = i === 0 ? finding?.severity : undefined;
    const fill = fault === 'danger' ? ink.danger : fault === 'warning' ? ink.ink : ink.ink2;
    const words = noteFor(note, column.width - 14, type);
    const style = { size: NOTE_SIZE, fill, ...(fault === 'danger' ? { weight: 600 as const } : {}) };
    return text(`note/${i === 0 ? 'first' : 'second'}`, column.x + 12, below + 11.5 + i * NOTE_LINE, words, style);
  });
}

/** The full name where there is room, the short one where there is not. */
function nameFor({ name, short }: ChipWords, room: number, size: number, type: Measure): string {
  return type.width(name, size) <= room ? name : type.shorten(short, room, size);
}

function noteFor({ long, short }: Note, room: number, type: Measure): string {
  return type.width(long, NOTE_SIZE) <= room ? long : type.shorten(short, room, NOTE_SIZE);
}

/** Three short bars: something to take hold of. */
function grip(x: number, y: number, stroke: string): Shape {
  const bars = [-3.5, 0, 3.5].map((dy) => `M${digits(x)} ${digits(y + dy)}h8`).join('');
  return path('grip', bars, inked(stroke, 1.3));
}

/** A padlock where a level cannot be dragged. */
function lock(x: number, y: number, stroke: string): Shape {
  const d = `M${digits(x - 3.5)} ${digits(y - 0.5)}h7v5h-7zM${digits(x - 2)} ${digits(y - 0.5)}v-2a2 2 0 0 1 4 0v2`;
  return path('lock', d, faced('none', stroke, 1.2));
}

function balloon({ words, middle }: Placed, column: ChipColumn, frame: SectionFrame): Shape {
  const stroke = strokeOf(words, frame);
  return group(words.handle, [
    circle('body', column.x + 8, middle, 7, faced(frame.ink.paper, stroke, 1.4)),
    text('value', column.x + BALLOON_TEXT, middle + 4, words.value, {
      size: BALLOON_SIZE,
      weight: 600,
      fill: frame.ink.ink,
    }),
  ]);
}
