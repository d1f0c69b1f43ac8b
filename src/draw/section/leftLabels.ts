/** Left of the hole: where the pump may hang, with both ends of the band named, and the names of the layers. */
import type { Metres } from '../../model/si.ts';
import type { Band, EndName, Solution } from '../../model/solution.ts';
import { sayEnd } from '../../words/sayEnd.ts';
import { fitLabels } from '../labels/fit.ts';
import { drawDots, isEndAssumed, type Under } from '../assumed.ts';
import { overlap, type Box } from '../hatch/clip.ts';
import { joined } from '../joined.ts';
import type { Memory } from '../memory.ts';
import type { Shape } from '../scene.ts';
import { faced, group, inked, line, path, polyline, rect, text, type Place } from '../shapes.ts';
import { isTwoTone } from '../theme.ts';
import { pxText } from '../tenths.ts';
import type { Measure } from '../type/measure.ts';
import { hold } from '../type/width.ts';
import { isSeen, within, type SectionFrame } from './frame.ts';
import type { GroundLayer } from './ground.ts';

const BAR = 6;
const LINE_HEIGHT = 13;
/** Shorter than this, a band's ends cannot be told apart here: detail A names them [px]. */
const NAMED_FROM = 26;

interface EndLabel {
  readonly key: string;
  readonly y: number;
  readonly lines: readonly string[];
  readonly width: number;
  readonly height: number;
  readonly anchor: number;
  /** Nobody knows whether the stretch is right. */
  readonly open: boolean;
  /** Of the depth, where it rests on what nobody said; else 0 [px]. */
  readonly dotted: number;
}

export interface LeftDrawing {
  readonly shapes: readonly Shape[];
  readonly boxes: readonly Box[];
}

/** The ends stay where they are while the pump moves along its band. */
export function drawBands(solution: Solution, frame: SectionFrame, { recall }: Memory): LeftDrawing {
  const { ends, boxes } = recall('bandEnds', [solution.bands, solution.assumed, frame], () =>
    bandEnds(solution, frame),
  );
  const bars = spansOf(solution.bands, frame).map((span) => bandBar(span, solution, frame));
  return { shapes: bars.length === 0 ? [] : [group('bands', [...bars, ...ends])], boxes };
}

function barPlace({ axis, holeHalf }: SectionFrame): number {
  return axis - holeHalf - 15;
}

interface Span {
  readonly band: Band;
  readonly from: number;
  readonly to: number;
}

function spansOf(bands: readonly Band[], frame: SectionFrame): Span[] {
  const spans: Span[] = [];
  for (const band of bands) {
    const { from, to } = band;
    if (from === null || to === null || !isShown(band, frame) || isOutside(from, to, frame)) continue;
    spans.push({ band, from: within(frame, frame.y(from)), to: within(frame, frame.y(to)) });
  }
  return spans;
}

/** The words of the ends, and all the room that bars and words take. */
function bandEnds(solution: Solution, frame: SectionFrame): { ends: readonly Shape[]; boxes: readonly Box[] } {
  const bar = barPlace(frame);
  const spans = spansOf(solution.bands, frame);
  const boxes: Box[] = spans.map(({ from, to }) => ({ left: bar - 7, right: bar + 7, top: from, bottom: to }));
  const ordered = joined(
    spans.map((span) => (span.to - span.from >= NAMED_FROM ? endLabels(span, solution, frame) : [])),
  ).sort((a, b) => a.anchor - b.anchor);
  const middles = fitLabels(
    ordered.map(({ anchor, height }) => ({ anchor, height, weight: 1 })),
    { gap: 3, lo: frame.top + 2, hi: frame.bottom - 2 },
  );
  const ends = ordered.map((label, i) => {
    const middle = middles[i] ?? label.anchor;
    boxes.push({
      left: bar - 13 - label.width,
      right: bar - 6,
      top: middle - label.height / 2,
      bottom: middle + label.height / 2,
    });
    return drawEnd(label, middle, bar, frame);
  });
  const unders = joined(
    ordered.map((label, i) => (label.dotted > 0 ? [underDepth(label, middles[i] ?? label.anchor, bar)] : [])),
  );
  return { ends: [...ends, ...drawDots(unders, frame.ink.ink2)], boxes };
}

/** The depth stands at the right end of the label's first line. */
function underDepth({ height, dotted }: EndLabel, middle: number, bar: number): Under {
  return { x: bar - 11 - dotted, y: middle - height / 2 + 13.5, width: dotted };
}

/** The adapter's band is read in detail A; the section shows it only while the adapter is moved here. */
function isShown({ setting }: Band, { held }: SectionFrame): boolean {
  return setting === 'pump.setting' ? held?.handle !== 'pitlessDepth' : held?.handle === 'pitlessDepth';
}

/** All of it beyond the window. */
function isOutside(from: Metres, to: Metres, { cut, topDepth, bottomDepth }: SectionFrame): boolean {
  return (cut.top && to <= topDepth) || (cut.bottom && from >= bottomDepth);
}

function bandBar({ band, from, to }: Span, { facts }: Solution, frame: SectionFrame): Shape {
  const { ink } = frame;
  const x = barPlace(frame);
  const twoTone = isTwoTone(frame.theme);
  const known = band.kind === 'allowed';
  const children = [
    rect('bar', x - BAR / 2, from, BAR, Math.max(2, to - from), {
      rx: 2.5,
      fill: !known ? ink.paper : twoTone ? ink.tones.steel.shadow : ink.allowed,
      stroke: twoTone || !known ? ink.ink2 : ink.paper,
      'stroke-width': 1,
    }),
    ...(known ? [] : [hatching(x, from, Math.max(2, to - from), ink.ink2)]),
  ];
  const now =
    band.setting === 'pump.setting' ? facts.pump.setting : facts.top.kind === 'pitless' ? facts.top.depth : null;
  if (now !== null) {
    const y = within(frame, frame.y(now));
    const end = y < from ? from : y > to ? to : null;
    if (end !== null) children.push(line('away', x, end, x, y, inked(ink.ink, 1, '2 3')));
    if (isSeen(frame, now)) children.push(line('now', x - 7, y, x + 7, y, inked(ink.ink, 2)));
  }
  const { words, show } = frame;
  const ends = { from: sayEnd(band.fromEnd, words, show), to: sayEnd(band.toEnd, words, show) };
  const said = known ? words.section.allowed(ends) : words.section.nobodyKnows(ends);
  return group(band.setting, children, { role: 'img', 'aria-label': said });
}

/** Slanting lines over a stretch of which nobody knows whether it is right. */
function hatching(x: number, from: number, height: number, ink: string): Shape {
  const half = BAR / 2;
  let d = '';
  for (let y = from + BAR; y < from + height; y += BAR)
    d += `M${pxText(x - half)} ${pxText(y)}L${pxText(x + half)} ${pxText(y - BAR)}`;
  return path('hatching', d, { stroke: ink, 'stroke-width': 1, fill: 'none' });
}

function endLabels({ band, from, to }: Span, solution: Solution, frame: SectionFrame): EndLabel[] {
  const { type, words, show, unbroken } = frame;
  const room = barPlace(frame) - 13 - frame.left - 6;
  const depth = (metres: Metres) =>
    band.setting === 'top.depth' && metres < 3.7 ? unbroken.small(metres) : unbroken.depth(metres);
  const [first, last] = [band.from ?? 0, band.to ?? 0];
  const inWords = { from: words.section.from(depth(first)), to: words.section.to(depth(last)) };
  // Both ends with their words or both without: one of each would look like two kinds of thing.
  const hasRoom = Math.max(...Object.values(inWords).map((each) => type.width(each, 12, 600))) <= room;
  const end = (side: 'from' | 'to', y: number, metres: Metres, name: EndName): EndLabel[] => {
    const value = hasRoom ? inWords[side] : depth(metres);
    if (type.width(value, 12, 600) > room) return [];
    const reason = room < 58 ? [] : reasonLines(sayEnd(name, words, show), room, type);
    const lines = [value, ...reason];
    const height = lines.length * LINE_HEIGHT + 3;
    const width = Math.max(type.width(value, 12, 600), ...reason.map((each) => type.width(each, 11)));
    const inward = side === 'from' ? 1 : -1;
    const key = `${band.setting}/${side}`;
    const open = band.kind === 'unknown';
    const dotted = isEndAssumed(solution, band, side) ? type.width(depth(metres), 12, 600) : 0;
    return [{ key, y, lines, width, height, anchor: y + inward * (height / 2 - 8), open, dotted }];
  };
  // Where the window cuts the band, it does not end.
  return [
    ...(isSeen(frame, first) ? end('from', from, first, band.fromEnd) : []),
    ...(isSeen(frame, last) ? end('to', to, last, band.toEnd) : []),
  ];
}

/** A figure and what it counts stay on one line: "12 AWG". */
function reasonLines(why: string, room: number, type: Measure): string[] {
  const words = type.width(why, 11) <= room ? why : why.replace(/\d [%A-Za-z]+/g, hold);
  return type.wrap(words, room, 11, 2);
}

function drawEnd(label: EndLabel, middle: number, bar: number, frame: SectionFrame): Shape {
  const { ink } = frame;
  const tone = label.open ? ink.ink2 : ink.allowed;
  const right = bar - 11;
  const top = middle - label.height / 2;
  const tickY = Math.min(middle + label.height / 2 - 5, Math.max(top + 8, label.y));
  return group(label.key, [
    path(
      'tick',
      polyline([
        [right + 1, tickY],
        [bar - 4, label.y],
        [bar, label.y],
      ]),
      faced('none', tone, 1.4),
    ),
    rect('paper', right - label.width - 3, top, label.width + 5, label.height, {
      rx: 2,
      fill: ink.paper,
      'fill-opacity': 0.86,
    }),
    ...label.lines.map((words, i) =>
      text(`line/${i === 0 ? 'value' : i === 1 ? 'why' : 'more'}`, right, top + 11 + i * LINE_HEIGHT, words, {
        size: i === 0 ? 12 : 11,
        fill: i === 0 ? tone : ink.ink2,
        anchor: 'end',
        ...(i === 0 ? { weight: 600 as const } : {}),
      }),
    ),
  ]);
}

/** The dashes of the level in the ground, far from the well; half of what they take [px]. */
const DASHES = 2;

/** What names keep off besides what stands beside the hole. */
export interface InGround {
  /** [px] */
  readonly frostFoot: number;
  /** Where the water stands in the ground far from the well: a name would cut its dashes lengthwise. */
  readonly restLevel: Metres | null;
}

/** A name stands in its own layer, at the first height that is free; a layer too thin for it goes without. */
export function drawLayerNames(
  layers: readonly GroundLayer[],
  taken: readonly Box[],
  { frostFoot, restLevel }: InGround,
  frame: SectionFrame,
): Shape[] {
  const shapes: Shape[] = [];
  const rest = restLevel === null ? null : frame.y(restLevel);
  const kept =
    rest === null
      ? taken
      : [{ left: frame.left, right: frame.axis, top: rest - DASHES, bottom: rest + DASHES }, ...taken];
  const x = frame.left + 7;
  const room = frame.axis - frame.holeHalf - 6 - x;
  for (const layer of layers) {
    const size = layer.bottom - layer.top < 19 ? 11 : 12;
    const name = layer.material === null ? frame.words.section.notReported : sentence(layer.material);
    const lines = linesFor(name, { room, size, thickness: layer.bottom - layer.top }, frame.type);
    const width = Math.max(...lines.map((each) => frame.type.width(each, size)));
    const height = lines.length * (size + 1) + 3;
    const stands = { x, width, height };
    const y = freeHeight(layer, stands, kept, frostFoot) ?? freeHeight(layer, stands, taken, frostFoot);
    if (y === null) continue;
    const { fill } = frame.ink.ground[layer.look.ground];
    shapes.push(
      group(layer.key, [
        rect('paper', x - 3, y, width + 7, height, { rx: 2, fill }),
        ...lines.map((each, i) =>
          text(i === 0 ? 'name' : 'name/more', x, y + size - 0.5 + i * (size + 1), each, {
            size,
          }),
        ),
      ]),
    );
  }
  return shapes.length === 0 ? [] : [group('layerNames', shapes, { fill: frame.ink.ink })];
}

/** What a layer leaves for its name [px]. */
interface NameRoom {
  readonly room: number;
  readonly size: number;
  readonly thickness: number;
}

/** Two lines where the layer is thick enough and whole words fit; else the same with words cut as drillers cut them; else what fits on one. */
function linesFor(name: string, at: NameRoom, type: Measure): string[] {
  const { room, size } = at;
  if (type.width(name, size) <= room) return [name];
  return (
    wholeLines(name, at, type) ?? wholeLines(inBrief(name, at, type), at, type) ?? [type.shorten(name, room, size)]
  );
}

function wholeLines(name: string, { room, size, thickness }: NameRoom, type: Measure): string[] | null {
  const lines = type.wrap(name, room, size);
  const whole = lines.length <= 2 && lines.every((each) => type.width(each, size) <= room);
  return whole && (lines.length === 1 || thickness >= 2 * size + 12) ? lines : null;
}

/** "Weath. granite", "Sand, gravel": as a log in a narrow column has them. */
function inBrief(name: string, { room, size }: NameRoom, type: Measure): string {
  const words = name.replace(/ (and|with) /g, ', ').split(' ');
  return words.map((word) => (type.width(word, size) <= room ? word : word.replace(LONG_WORD, '$1.'))).join(' ');
}

/** The beginning of a longer word, to the consonant before a vowel. */
const LONG_WORD = /^([A-Za-z]{3,5}?[^aeiouy\W])(?=[aeiouy])[a-z]{3,}/;

function freeHeight(
  layer: GroundLayer,
  { x, width, height }: Pick<Place, 'x' | 'width' | 'height'>,
  taken: readonly Box[],
  frostFoot: number,
): number | null {
  const starts = [Math.max(layer.top, frostFoot) + 3, layer.top + 1.5, ...taken.map((box) => box.bottom + 2)];
  const fits = (y: number) => {
    const box = { left: x - 3, right: x + width + 4, top: y, bottom: y + height };
    return y >= layer.top + 1 && y + height <= layer.bottom - 1 && taken.every((each) => !overlap(each, box));
  };
  return starts.find(fits) ?? null;
}

function sentence(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}
