/** Under an exported drawing: the legend of what is on the sheet, and the title block. */
import type { Metres } from '../../model/si.ts';
import type { Band, Severity, Solution } from '../../model/solution.ts';
import { show } from '../../model/units.ts';
import type { Note } from '../../words/labels.ts';
import { mayFallAnywhere } from '../anyFall.ts';
import { marksAssumed } from '../assumed.ts';
import { lookOf } from '../hatch/materials.ts';
import { hatch, type Hatch, type PatternName } from '../hatch/patterns.ts';
import type { Box } from '../hatch/clip.ts';
import { NUMBERS, signShapes } from '../mark.ts';
import type { Shape } from '../scene.ts';
import { hatchShape } from '../section/ground.ts';
import { digits, group, inked, line, rect, text, textWith, type Point } from '../shapes.ts';
import { THEMES, type Ink } from '../theme.ts';
import type { Measure } from '../type/measure.ts';
import type { FramePlace, MarkPlace, View, WordedView } from '../view.ts';
import { saidFactor } from './frames.ts';
import { titleOf } from './heading.ts';
import { SIZE, SWATCH, swatchOf, type LegendKey } from './swatches.ts';

const ROW = 18;

interface Entry {
  readonly key: string;
  readonly words: Note;
  readonly swatch: (x: number, y: number) => Shape[];
}

/** What stands on the sheet over the caption. */
interface OnSheet {
  readonly frames: readonly FramePlace[];
  readonly marks: readonly Pick<MarkPlace, 'number'>[];
  /** Of depths in the section; null on a screen. */
  readonly scale: number | null;
}

/** What a sheet is written with. */
export interface Hand {
  readonly view: WordedView;
  readonly ink: Ink;
  readonly type: Measure;
}

export function drawCaption(solution: Solution, hand: Hand, box: Box, sheet: OnSheet): Shape[] {
  const { view, ink, type } = hand;
  const lines = blockLines(solution, view, sheet);
  const { legend, block } = share(box, lines, type);
  return [
    line('caption/rule', box.left, box.top + 2, box.right, box.top + 2, inked(ink.hair, 1)),
    drawLegend(entriesOf(solution, view, sheet), legend, hand),
    drawTitleBlock(titleOf(solution, view.words), lines, block, hand),
  ];
}

/** Room of legend and title block together, from the rule above them to the foot [px]. */
export function captionHeight(solution: Solution, { view, type }: Hand, width: number): number {
  // Before the sheet is laid out nobody knows its windows and signs: room is kept for all that they may show.
  const frames = framesOf(view).map((name) => ({ ...WIDEST, view: name }));
  const marks = view.marks === false ? [] : solution.findings.map((_, i) => ({ number: i + 1 }));
  const sheet: OnSheet = { frames, marks, scale: view.paper === undefined ? null : WIDE_SCALE };
  const entries = entriesOf(solution, view, sheet).length;
  const lines = blockLines(solution, view, sheet);
  const whole = { left: 0, right: width, top: 0, bottom: Infinity };
  const { legend, block } = share(whole, lines, type);
  const rows = Math.ceil(entries / columnsIn(legend, type));
  const legendHeight = rows * ROW + 10;
  const blockHeight = blockTall(lines, block.right - block.left, type);
  const wanted = isStacked(whole) ? legendHeight + blockHeight : Math.max(legendHeight, blockHeight);
  return Math.max(blockHeight, LEAST_HEIGHT, Math.min(wanted, view.height * MOST_SHARE));
}

const LEAST_HEIGHT = 110;
/** Of the sheet; what the legend then lacks is counted. */
const MOST_SHARE = 0.36;

/** 1 to as many as takes the most room to say. */
const WIDE_SCALE = 12_000;

const WIDEST: FramePlace = {
  view: 'O',
  x: 0,
  y: 0,
  width: 0,
  height: 0,
  topDepth: -Infinity,
  bottomDepth: Infinity,
  widthFactor: 88.88,
};

function framesOf({ sheet }: View): FramePlace['view'][] {
  if (sheet === 'all') return ['O', 'A', 'B'];
  return [typeof sheet === 'object' ? 'C' : SHOWS[sheet]];
}

const SHOWS = { section: 'O', top: 'A', pump: 'B', house: 'D' } as const;

/** Narrower than this, the title block stands under the legend and not beside it [px]. */
const BESIDE_FROM = 480;

function isStacked({ left, right }: Box): boolean {
  return right - left < BESIDE_FROM;
}

function share(box: Box, words: BlockWords, type: Measure): { legend: Box; block: Box } {
  if (!isStacked(box)) {
    const blockWidth = Math.min(300, (box.right - box.left) * 0.42);
    return {
      legend: { ...box, right: box.right - blockWidth - 20 },
      block: { ...box, left: box.right - blockWidth },
    };
  }
  const foot = box.bottom - blockTall(words, box.right - box.left, type);
  return { legend: { ...box, bottom: foot }, block: { ...box, top: foot } };
}

/** A legend's column is no narrower than this, for words in the shipped face [px]. */
const COLUMN = 118;

function columnsIn({ left, right }: Box, { spare }: Measure): number {
  return Math.max(1, Math.floor((right - left) / (SWATCH + 14 + (COLUMN - SWATCH - 14) * spare)));
}

/** Thin edge of a swatch [px]. */
const EDGE = 0.7;

const LEVELS: ReadonlySet<string> = new Set<LegendKey>(['static', 'pumping']);

/** Column by column; what finds no room is counted in the last place. */
function drawLegend(entries: readonly Entry[], box: Box, { view, ink, type }: Hand): Shape {
  const { caption } = view.words;
  const rows = Math.max(1, Math.floor((box.bottom - box.top - 10) / ROW));
  const columns = Math.max(1, Math.min(Math.ceil(entries.length / rows), columnsIn(box, type)));
  const width = (box.right - box.left) / columns;
  const room = width - SWATCH - 14;
  const shown = entries.length <= rows * columns ? entries : entries.slice(0, rows * columns - 1);
  const at = (i: number) => ({
    x: box.left + Math.floor(i / rows) * width,
    y: box.top + 10 + (i % rows) * ROW,
  });
  const wordsAt = (i: number, words: string): Shape => {
    const { x, y } = at(i);
    const said = type.shorten(words, room, SIZE);
    return textWith('words', { x: x + SWATCH + 6, y: y + 10.5 }, said);
  };
  // Both levels in full or both short: one of each would look like two kinds of thing.
  const isLong = ({ words }: Entry): boolean => type.width(words.long, SIZE) > room;
  const levelsShort = shown.some((entry) => LEVELS.has(entry.key) && isLong(entry));
  const shapes = shown.map((entry, i) => {
    const { x, y } = at(i);
    const short = isLong(entry) || (levelsShort && LEVELS.has(entry.key));
    const said = short ? entry.words.short : entry.words.long;
    return group(entry.key, [...entry.swatch(x, y), wordsAt(i, said)]);
  });
  const left = entries.length - shown.length;
  const more = (): Shape => group('more', [wordsAt(shown.length, caption.more({ count: left }))]);
  return group('legend', left === 0 ? shapes : [...shapes, more()], {
    role: 'group',
    'aria-label': caption.legendTitle,
    'font-size': SIZE,
    fill: ink.ink2,
    'stroke-width': EDGE,
  });
}

function entriesOf(
  solution: Solution,
  { words, theme }: WordedView,
  { frames, marks }: Pick<OnSheet, 'frames' | 'marks'>,
): Entry[] {
  const { legend, groundNotReported, signs } = words.caption;
  const ink = THEMES[theme];
  const { facts, levels, values, bands, cone, bore } = solution;
  const symbols = frames.some((frame) => frame.view === 'O');
  const house = frames.some((frame) => frame.view === 'D');
  /** Nothing is explained that no frame shows. */
  const shown = (top: Metres | null, bottom = top): boolean =>
    top !== null &&
    bottom !== null &&
    frames.some((frame) => frame.view !== 'D' && top <= frame.bottomDepth && bottom >= frame.topDepth);
  /** The adapter's own is shown only while the adapter is moved. */
  const hasBand = (kind: Band['kind']): boolean =>
    bands.some((band) => band.setting === 'pump.setting' && band.from !== null && band.kind === kind);
  const { groutBottom } = facts.well;
  const rows: readonly (readonly [LegendKey, boolean])[] = [
    ['static', shown(levels.static)],
    ['pumping', shown(levels.pumping)],
    ['anyFall', symbols && mayFallAnywhere(solution)],
    ['cone', symbols && cone !== null],
    ['frost', (values.frostDepth ?? 0) > 0 && shown(values.frostDepth)],
    ['band', symbols && hasBand('allowed')],
    ['openBand', symbols && hasBand('unknown')],
    ['grout', groutBottom !== null && shown(0, groutBottom)],
    ['pack', bore.some(({ kind, top, bottom }) => kind === 'screen' && shown(top, bottom))],
    ['symbol', symbols],
    ['unknown', (symbols || !house) && drawsUnknown(solution)],
    ['assumed', house || marksAssumed(solution)],
  ];
  return [
    ...signsOn(solution, marks).map(({ severity, number }): Entry => ({
      key: `sign/${severity}`,
      words: signs[severity],
      swatch: (x, y) => [
        group('mark', signShapes({ number, severity, x: x + SWATCH / 2, y: y + 7, size: KEY_SIGN, ink }), NUMBERS),
      ],
    })),
    ...(house && frames.length === 1 ? [] : materials(solution, shown)).map((material): Entry => ({
      key: `material/${material ?? 'unknown'}`,
      words: asNamed(material ?? groundNotReported),
      swatch: (x, y) => materialSwatch(material, [x, y], theme),
    })),
    ...rows.flatMap(([key, isThere]): Entry[] =>
      isThere ? [{ key, words: legend[key], swatch: swatchOf(key, ink) }] : [],
    ),
  ];
}

/** Each kind of sign that is on the sheet, the worst first, with the first number that it bears there. */
function signsOn(
  { findings }: Solution,
  marks: OnSheet['marks'],
): { readonly severity: Severity; readonly number: number }[] {
  return SEVERITIES.flatMap((severity) => {
    const numbers = marks.map(({ number }) => number).filter((number) => findings[number - 1]?.severity === severity);
    return numbers.length === 0 ? [] : [{ severity, number: Math.min(...numbers) }];
  });
}

const SEVERITIES: readonly Severity[] = ['danger', 'warning', 'note'];
/** A sign in its row of the legend [px]. */
const KEY_SIGN = 16;

/** A level, the frost, or how wide and how deep the hole is lined. */
function drawsUnknown({ levels, values, bore }: Solution): boolean {
  return (
    levels.static === null || levels.pumping === null || values.frostDepth === null || bore.some(({ known }) => !known)
  );
}

/** Null where nobody reported any. */
function materials({ facts }: Solution, shown: (top: Metres, bottom: Metres) => boolean): (string | null)[] {
  const { layers } = facts.well;
  if (layers.length === 0) return [null];
  return [...new Set(layers.filter(({ top, bottom }) => shown(top, bottom)).map(({ material }) => material))];
}

/** Of a few pieces of the grid the one where the pattern has most to show. */
function fullestPiece(pattern: PatternName): Box {
  const pieces = PIECES.map(([left, top]): Box => ({ left, right: left + SWATCH, top, bottom: top + 14 }));
  const shown = pieces.map((piece) => strokesIn(hatch(pattern, [piece])));
  return pieces[shown.indexOf(Math.max(...shown))] ?? { left: 0, right: SWATCH, top: 0, bottom: 14 };
}

/** How much is drawn: by the length of the rows where a dash array cuts them, else by the length of the text. */
function strokesIn({ d, dashes, solid = '' }: Hatch): number {
  if (dashes === undefined) return d.length;
  return [...(d + solid).matchAll(/[hv]([\d.]+)/g)].reduce((sum, [, length]) => sum + Number(length), 0);
}

const PIECES: readonly Point[] = [0, 5, 10, 15, 20, 25, 35, 45, 55, 65, 75, 95, 115].flatMap((top) =>
  [0, 9, 18].map((left): Point => [left, top]),
);

function asNamed(material: string): Note {
  return { long: material, short: material };
}

function materialSwatch(material: string | null, [x, y]: Point, theme: View['theme']): Shape[] {
  const ink = THEMES[theme];
  const look = lookOf(material);
  const piece = fullestPiece(look.pattern);
  const pattern = hatchShape('hatch', look, [piece], { ink, theme });
  return [
    rect('tint', x, y, SWATCH, 14, { fill: ink.ground[look.ground].fill, stroke: ink.hair }),
    ...(pattern === null
      ? []
      : [group('pattern', [pattern], { transform: `translate(${digits(x - piece.left)} ${digits(y - piece.top)})` })]),
  ];
}

const LINE = 14;
/** From the block's top to its first line, with the title between. */
const FIRST_LINE = 34;

/** What stands under the name in the title block. */
interface BlockWords {
  /** Where the well is, as typed; empty where nobody said, and on no sheet of paper. */
  readonly place: string;
  readonly said: readonly string[];
}

/** A place is a line or two, and may be typed as long as a page: what is beyond is left out, and no word runs off the sheet. */
const PLACE_LINES = 2;
/** More signs than two lines hold of the narrowest. */
const PLACE_SIGNS = 400;

function wrapped({ place, said }: BlockWords, width: number, type: Measure): string[] {
  return [
    ...type.wrap(place.slice(0, PLACE_SIGNS), width, SIZE, PLACE_LINES).map((each) => type.shorten(each, width, SIZE)),
    ...said.flatMap((each) => type.wrap(each, width, SIZE)),
  ];
}

function blockTall(words: BlockWords, width: number, type: Measure): number {
  return FIRST_LINE + (wrapped(words, width, type).length - 1) * LINE + 6;
}

function drawTitleBlock(name: string, words: BlockWords, box: Box, { ink, type }: Hand): Shape {
  const width = box.right - box.left;
  const title = text('title', box.left, box.top + 19, type.shorten(name, width, 13, 600), {
    size: 13,
    weight: 600,
    fill: ink.ink,
  });
  const lines = wrapped(words, width, type).map((each, i) =>
    textWith(`line/${i}`, { x: box.left, y: box.top + FIRST_LINE + i * LINE }, each),
  );
  return group('titleBlock', [title, ...lines], { 'font-size': SIZE, fill: ink.ink2 });
}

function blockLines(
  { facts, findings, notJudged }: Solution,
  view: WordedView,
  { frames, scale }: OnSheet,
): BlockWords {
  const { caption, sheet } = view.words;
  const { date, version } = view.imprint ?? {};
  const count = (severity: Severity): number => findings.filter((finding) => finding.severity === severity).length;
  const said = [
    caption.depths({ date: date ?? facts.date }, show(view.units)),
    ...(frames.every(({ view: name }) => name === 'D')
      ? []
      : [
          caption.scales({
            scale: scale === null ? null : sheet.scale({ scale }, show(view.units)).long,
            factors: frames
              .filter(({ view: name }) => name !== 'D')
              .map(({ view: name, widthFactor }) => ({ view: name, factor: saidFactor(widthFactor) })),
          }),
        ]),
    caption.checks({
      danger: count('danger'),
      warning: count('warning'),
      note: count('note'),
      notJudged: notJudged.length,
      signs: view.marks !== false,
    }),
    caption.notEngineered({ version: version ?? null }),
  ];
  // A picture without a sheet goes into guides and letters: where somebody's well is stays out of it.
  return { place: view.paper === undefined ? '' : facts.place, said };
}
