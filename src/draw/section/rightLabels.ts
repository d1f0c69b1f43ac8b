/** Right of the hole: where water enters, the drawdown as a dimension, and the numbered findings on the spot. */
import type { Metres } from '../../model/si.ts';
import type { Finding, Severity, Solution } from '../../model/solution.ts';
import type { Note } from '../../words/labels.ts';
import { fitLabels } from '../labels/fit.ts';
import { drawMark, NUMBERS } from '../mark.ts';
import type { Memory } from '../memory.ts';
import type { Shape } from '../scene.ts';
import { group, inked, line, path, polygon, polyline, rect, text } from '../shapes.ts';
import type { Measure } from '../type/measure.ts';
import type { MarkPlace } from '../view.ts';
import { isSeen, within, type SectionFrame } from './frame.ts';

export const MARK_SIZE = 18;
/** Middles of the two lanes, from the drilled wall [px]. */
export const MARK_LANE = 15;
const DIMENSION_LANE = 34;
const WORDS_HEIGHT = 15;

interface Label {
  readonly key: string;
  readonly y: number;
  readonly words: Note;
  readonly fill: string;
  /** At the ground's edge, not beside the hole. */
  readonly atEdge?: true;
  readonly weight: number;
}

/** A label as it is drawn. */
interface Fitted extends Omit<Label, 'words'> {
  readonly words: string;
}

/** With all its words, the short ones, or none: whatever the room takes. */
function fitting(label: Label, room: number, type: Measure): Fitted | null {
  const { long, short } = label.words;
  const words = [long, short].find((each) => type.width(each, 11.5) <= room);
  return words === undefined ? null : { ...label, words };
}

/** Inflows and dimensions; their words keep clear of each other and of every level line. */
export function drawRightLabels(
  solution: Solution,
  lines: readonly Metres[],
  frame: SectionFrame,
  { recall, same }: Memory,
): Shape[] {
  const dimension = drawdownWords(solution, frame);
  // Without a dimension its lane is free, and words begin beside the marks.
  const lane = drawdownSpan(solution, frame) === null ? MARK_LANE + MARK_SIZE / 2 + 4 : DIMENSION_LANE + 7;
  const x = frame.axis + frame.holeHalf + lane;
  const room = frame.right - 5 - x;
  const inflows = inflowWords(solution, frame);
  const words = [
    ...inflows,
    ...probeWords(solution, frame),
    ...(dimension === null ? [] : [dimension]),
    ...distanceWords(solution, frame),
  ]
    .filter(({ y }) => isSeen(frame, frame.depthAt(y)))
    .map((each) => fitting(each, room, frame.type))
    .filter((each) => each !== null);
  const { levels } = solution;
  const shapes = [...recall('drawdown', [levels, frame], () => drawdownDimension(solution, frame))];
  const items = [
    ...words.map((each) => ({
      words: each as Fitted | null,
      anchor: each.y,
      height: WORDS_HEIGHT,
      weight: each.weight,
    })),
    ...lines.map((depth) => ({ words: null as Fitted | null, anchor: frame.y(depth), height: 4, weight: 1e6 })),
  ].sort((a, b) => a.anchor - b.anchor);
  const first = Math.min(frame.y(0) + 4, ...words.map((each) => each.y - WORDS_HEIGHT / 2));
  const highest = frame.cut.top ? Math.max(frame.top + 2, first) : first;
  const middles = fitLabels(items, { gap: 1, lo: highest, hi: frame.bottom - 2 });
  items.forEach((item, i) => {
    if (item.words === null) return;
    const each = same(`words/${item.words.key}`, item.words);
    const middle = middles[i] ?? item.anchor;
    shapes.push(recall(`label/${each.key}`, [each, x, middle, frame], () => wordsShape(each, x, middle, frame)));
  });
  return shapes.length === 0 ? [] : [group('rightLabels', shapes)];
}

function wordsShape(
  { key, words, fill, atEdge }: Fitted,
  beside: number,
  middle: number,
  { ink, right, type }: SectionFrame,
): Shape {
  const x = atEdge === true ? right - 8 - type.width(words, 11.5) : beside;
  return group(key, [
    rect('paper', x - 3, middle - WORDS_HEIGHT / 2, type.width(words, 11.5) + 6, WORDS_HEIGHT, {
      rx: 2,
      fill: ink.paper,
      'fill-opacity': 0.86,
    }),
    text('words', x, middle + 4, words, { size: 11.5, fill }),
  ]);
}

function inflowWords({ facts }: Solution, frame: SectionFrame): Label[] {
  return (facts.well.inflows ?? []).map(({ depth, share }, i) => ({
    key: `inflow/${i}/words`,
    y: frame.y(depth) + 2,
    words: frame.words.section.inflow({ share }, frame.unbroken),
    fill: frame.ink.static,
    weight: 1,
  }));
}

/** Of the dry-run protection: where the pump is stopped. */
function probeWords({ parts }: Solution, frame: SectionFrame): Label[] {
  const probe = parts.find(({ kind }) => kind === 'probe');
  if (probe === undefined) return [];
  return [
    {
      key: 'probe/words',
      y: frame.y(probe.bottom),
      words: frame.words.section.probe({ depth: probe.bottom }, frame.unbroken),
      fill: frame.ink.ink2,
      weight: 2,
    },
  ];
}

/** A dimension shorter than this says nothing that the chips do not [px]. */
const LEAST_DIMENSION = 30;

function drawdownSpan({ levels }: Solution, frame: SectionFrame): [number, number] | null {
  if (levels.static === null || levels.pumping === null) return null;
  const from = within(frame, frame.y(levels.static));
  const to = within(frame, frame.y(levels.pumping));
  return to - from >= LEAST_DIMENSION ? [from, to] : null;
}

function drawdownWords(solution: Solution, frame: SectionFrame): Label | null {
  const span = drawdownSpan(solution, frame);
  const { drawdown } = solution.values;
  if (span === null || drawdown === null) return null;
  return {
    key: 'drawdown/words',
    y: (span[0] + span[1]) / 2,
    words: frame.words.section.drawdown({ drawdown }, frame.unbroken),
    fill: frame.ink.ink2,
    weight: 1,
  };
}

/** How far the house is: across the ground nothing else could tell. */
function distanceWords({ facts, parts }: Solution, frame: SectionFrame): Label[] {
  const buried = parts.find((part) => part.key === 'buriedLine');
  const { distance } = facts.house;
  if (buried === undefined || distance === null) return [];
  const line = frame.y((buried.top + buried.bottom) / 2) + Math.max(5, 2 * buried.radius * frame.kx) / 2;
  // Under the ground even where the line is not: above it stand house and chips' leaders.
  const foot = Math.max(line, frame.y(0) + 6);
  return [
    {
      key: 'distance',
      y: foot + 2 + WORDS_HEIGHT / 2,
      words: frame.words.section.toHouse({ distance }, frame.unbroken),
      fill: frame.ink.ink2,
      atEdge: true,
      weight: 20,
    },
  ];
}

function arrowHead(x: number, y: number, sign: 1 | -1): string {
  return polygon([
    [x, y],
    [x - 3, y + sign * 7],
    [x + 3, y + sign * 7],
  ]);
}

function drawdownDimension(solution: Solution, frame: SectionFrame): Shape[] {
  const { levels } = solution;
  const span = drawdownSpan(solution, frame);
  if (span === null) return [];
  const x = frame.axis + frame.holeHalf + DIMENSION_LANE;
  const [from, to] = span;
  const { hair } = frame.ink;
  // An arrow only where the dimension ends in the window.
  const ends = [
    ...(isSeen(frame, levels.static ?? 0) ? [arrowHead(x, from + 1, 1)] : []),
    ...(isSeen(frame, levels.pumping ?? 0) ? [arrowHead(x, to - 1, -1)] : []),
  ];
  return [
    group('drawdown', [
      line('line', x, from + 2, x, to - 2, inked(hair, 1)),
      path('arrows', ends.join(''), { fill: hair }),
    ]),
  ];
}

/** Between two marks [px]. */
const MARK_GAP = 2;
/** Smaller, and nobody could read its number [px]. */
const LEAST_MARK = 12;

/** The worst so many, where a low sheet has no room for all; the list and the details have the others. */
function worst<Known extends { readonly finding: Finding }>(known: readonly Known[], most: number): Known[] {
  return [...known].sort((a, b) => WEIGHT[b.finding.severity] - WEIGHT[a.finding.severity]).slice(0, most);
}

/** In a crowd the worst stays nearest to its place. */
const WEIGHT: Readonly<Record<Severity, number>> = { danger: 8, warning: 3, note: 1 };

/** Out of the wall, along it, and across to the sign: the ties of a crowd fall together into one comb. */
function elbow(wall: number, anchor: number, x: number, y: number): string {
  return polyline([
    [wall, anchor],
    [wall + 3, anchor],
    [wall + 3, y],
    [x, y],
  ]);
}

export interface MarkDrawing {
  readonly shapes: readonly Shape[];
  readonly marks: readonly MarkPlace[];
}

/** Each finding's sign stands at its depth beside the hole; signs that would touch step apart, tied to their place. */
export function drawMarks(findings: readonly Finding[], frame: SectionFrame, { recall }: Memory): MarkDrawing {
  const known: { number: number; finding: Finding; anchor: number }[] = [];
  findings.forEach((finding, i) => {
    if (finding.depth !== null) known.push({ number: i + 1, finding, anchor: within(frame, frame.y(finding.depth)) });
  });
  const room = frame.bottom - frame.top - 4 + MARK_GAP;
  const size = Math.max(LEAST_MARK, Math.min(MARK_SIZE, room / known.length - MARK_GAP));
  const placed = worst(known, Math.floor(room / (size + MARK_GAP) + 1e-9)).sort(
    (a, b) => a.anchor - b.anchor || a.number - b.number,
  );
  const middles = fitLabels(
    placed.map(({ anchor, finding }) => ({ anchor, height: size, weight: WEIGHT[finding.severity] })),
    { gap: MARK_GAP, lo: frame.top + 2, hi: frame.bottom - 2 },
  );
  // From near the hole may reach across: the marks then stand over it, and keep off the chips' leaders.
  const x = Math.min(frame.axis + frame.holeHalf + MARK_LANE, frame.right - size / 2 - 2);
  const shapes: Shape[] = [];
  const marks: MarkPlace[] = [];
  placed.forEach(({ number, finding, anchor }, i) => {
    const y = middles[i] ?? anchor;
    if (Math.abs(y - anchor) > 4) {
      shapes.push(
        recall(`tie/${number}`, [anchor, y, frame], () =>
          path(`tie/${number}`, elbow(frame.axis + frame.holeHalf, anchor, x, y), {
            fill: 'none',
            stroke: frame.ink.hair,
          }),
        ),
      );
    }
    const { severity } = finding;
    shapes.push(
      recall(`mark/${number}`, [severity, y, size, frame], () =>
        drawMark({ number, severity, x, y, size, ink: frame.ink }),
      ),
    );
    marks.push({ number, x, y, size, view: 'O' });
  });
  return { shapes: shapes.length === 0 ? [] : [group('marks', shapes, NUMBERS)], marks };
}
