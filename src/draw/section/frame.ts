/** What every thing in the section needs to know: where it is, both scales, inks. */
import { feet, show, type Show } from '../../model/units.ts';
import type { Metres } from '../../model/si.ts';
import type { Solution } from '../../model/solution.ts';
import type { ShortLanguage } from '../../words/words.ts';
import type { Box } from '../hatch/clip.ts';
import { kindsWith } from '../kinds.ts';
import { sectionLooks, type SectionLooks } from '../looks.ts';
import type { Memory } from '../memory.ts';
import { makePen, type Pen } from '../parts/pen.ts';
import { depthScale, roundFactor, type DepthScale } from '../scale.ts';
import { THEMES, type Ink } from '../theme.ts';
import { measureWith, type Measure } from '../type/measure.ts';
import { unbroken } from '../type/unbroken.ts';
import type { DepthWindow, View } from '../view.ts';
import { cutOf, leastSpan, spanWithin, UNCUT, type Cut, type DepthSpan } from './window.ts';
import { ANNULUS } from '../../model/annulus.ts';
import { motorBottomDepth, pumpHeight } from '../../model/string/pumpDepths.ts';

/** The box is the ground on the sheet [px]. */
export interface SectionFrame extends DepthScale, Box {
  /** x of the well's middle [px]. */
  readonly axis: number;
  /** Horizontal px per metre: one factor for bore, pipe and pump alike. */
  readonly kx: number;
  readonly widthFactor: number;
  readonly x: (radius: Metres) => number;
  /** Half width of everything drilled, annulus included [px]. */
  readonly holeHalf: number;
  readonly ink: Ink;
  readonly theme: View['theme'];
  readonly type: Measure;
  readonly words: ShortLanguage;
  readonly show: Show;
  /** Figures that no line parts from their unit. */
  readonly unbroken: Show;
  readonly held: View['held'];
  readonly looks: SectionLooks;
  /** What the well is drawn with. */
  readonly pen: Pen;
  /** Where the window leaves part of the well out. */
  readonly cut: Cut;
}

/** From the highest that is drawn of the well to the deepest: a flowing well's head and a pump hung too deep are part of it. */
export function drawnDepths({ facts, levels, parts }: Solution): {
  readonly highest: Metres;
  readonly deepest: Metres;
} {
  const highest = Math.min(-facts.well.casingHeight, levels.static ?? 0, levels.staticHighest ?? 0);
  const works = Math.min(0, ...parts.filter((part) => ABOVE_CASING.has(part.kind)).map((part) => part.top));
  return {
    highest: Math.min(highest - feet(1), works - feet(0.5)),
    deepest: Math.max(facts.well.bottom, facts.well.depth, motorBottomDepth(facts.pump)),
  };
}

/** The section reaches a foot above the casing and 3 % (2 ft at least) below the bottom. */
export function sectionWindow(solution: Solution): DepthSpan {
  const { highest, deepest } = drawnDepths(solution);
  return { topDepth: highest, bottomDepth: deepest + Math.max(feet(2), deepest * 0.03) };
}

const ABOVE_CASING = kindsWith(({ onTop }) => onTop === true);

/** Widest half of what is drilled [m], annulus included. */
export function widestRadius({ facts, bore }: Pick<Solution, 'facts' | 'bore'>): Metres {
  return Math.max(
    ...bore.map((stretch) => stretch.outsideRadius),
    ...facts.well.casings.map((casing) => casing.outsideDiameter / 2 + ANNULUS),
  );
}

export interface SectionPlace {
  readonly box: Box;
  readonly ink: Ink;
  readonly theme: View['theme'];
  readonly spare: number;
  readonly units: View['units'];
  readonly words: ShortLanguage;
  readonly frozen: DepthWindow | undefined;
  /** The part of the well that is asked for; the whole where it is left out. */
  readonly window: DepthSpan | undefined;
  /** As the section was shown last. */
  readonly looks: SectionLooks | undefined;
  readonly held: View['held'];
}

/** The same frame as long as nothing moves it: all that stands in it may then be remembered. */
export function sectionFrame(solution: Solution, place: SectionPlace, { recall, same }: Memory): SectionFrame {
  const { box, ink, spare, units, words, frozen, held } = place;
  const whole = sectionWindow(solution);
  const widest = widestRadius(solution);
  const part = partShown(whole, widest, place);
  const span = frozen ?? part ?? whole;
  const { topDepth, bottomDepth } = span;
  const cut = part === null ? UNCUT : cutOf(span, whole);
  const isCut = cut.top || cut.bottom;
  const k = (box.bottom - box.top) / (bottomDepth - topDepth);
  const fitting = factorFor(widest, box.right - box.left, k);
  // In a window the hole keeps its width on the sheet as long as it is drawn no narrower than it is.
  const widthFactor = frozen?.widthFactor ?? (isCut ? Math.max(1, fitting) : fitting);
  const pumpTall = pumpHeight(solution.facts.pump);
  const looks = same('looks', sectionLooks(solution.parts, pumpTall, { k, widthFactor, isCut }, place.looks));
  const extent = [topDepth, bottomDepth, cut.top, cut.bottom, widthFactor, widest, looks];
  return recall('frame', [box, ink, spare, units, words, ...extent, held?.handle, held?.start], () =>
    makeFrame({ topDepth, bottomDepth, widthFactor, widest }, { cut, looks }, place),
  );
}

/** Null where the whole well is shown. */
function partShown(whole: DepthSpan, widest: Metres, { box, window }: SectionPlace): DepthSpan | null {
  if (window === undefined) return null;
  return spanWithin(window, whole, leastSpan(widest, box.right - box.left, box.bottom - box.top));
}

/** What a window of the section may be: some of the whole, and no shorter than the least [m]. */
export interface WindowRoom {
  readonly whole: DepthSpan;
  readonly least: Metres;
}

/** @param size  of the section on the sheet [px] */
export function windowRoom(
  solution: Solution,
  { width, height }: { readonly width: number; readonly height: number },
): WindowRoom {
  return { whole: sectionWindow(solution), least: leastSpan(widestRadius(solution), width, height) };
}

interface Extent extends DepthWindow {
  /** Widest half of what is drilled. */
  readonly widest: Metres;
}

function makeFrame(
  { topDepth, bottomDepth, widthFactor, widest }: Extent,
  { cut, looks }: Pick<SectionFrame, 'cut' | 'looks'>,
  { box, ink, theme, spare, units, words, held }: SectionPlace,
): SectionFrame {
  const { left, right, top, bottom } = box;
  const scale = depthScale(topDepth, bottomDepth, top, bottom);
  const kx = widthFactor * scale.k;
  const axis = Math.round(left + (right - left) * AXIS_SHARE);
  return withPen({
    k: scale.k,
    topDepth,
    bottomDepth,
    y: scale.y,
    depthAt: scale.depthAt,
    left,
    right,
    top,
    bottom,
    axis,
    kx,
    widthFactor,
    x: (radius) => axis + radius * kx,
    holeHalf: widest * kx,
    ink,
    theme,
    type: measureWith(spare),
    words,
    show: show(units),
    unbroken: unbroken(units),
    held,
    looks,
    cut,
  });
}

function withPen(frame: Omit<SectionFrame, 'pen'>): SectionFrame {
  const { axis, top, topDepth, bottomDepth, kx, k, theme, looks } = frame;
  const scales = { axis, topY: top, top: topDepth, bottom: bottomDepth, across: kx, down: k };
  return {
    ...frame,
    pen: makePen({ ...scales, tones: THEMES[theme].tones, looks, closed: looks.near ? null : looks }),
  };
}

/** Further than any sign reaches that stands at a depth [px]. */
const OVER = 24;

/**
 * The frame for all that is cropped at the window's cut edges: it goes on past them, so that nothing seems to end
 * there. Depths stay where they are.
 */
export function pastEdges(frame: SectionFrame): SectionFrame {
  const { cut, depthAt } = frame;
  const top = cut.top ? frame.top - OVER : frame.top;
  const bottom = cut.bottom ? frame.bottom + OVER : frame.bottom;
  return withPen({ ...frame, top, bottom, topDepth: depthAt(top), bottomDepth: depthAt(bottom) });
}

/** Not beyond an edge at which the window cuts the well. */
export function isSeen({ cut, topDepth, bottomDepth }: SectionFrame, depth: Metres): boolean {
  return !(cut.top && depth < topDepth) && !(cut.bottom && depth > bottomDepth);
}

/** The well stands a little right of the middle: layer names and the allowed band stand left of it. */
const AXIS_SHARE = 0.52;

/** The hole takes about a fifth of the ground's width, 44 to 84 px, and never over 45 % of it. */
function factorFor(widest: Metres, width: number, k: number): number {
  const wanted = Math.min(84, Math.max(44, width * 0.21));
  const fitting = wanted / 2 / widest / k;
  const largest = (width * 0.45) / 2 / widest / k;
  return roundFactor(Math.min(Math.max(fitting, 1), largest));
}

/** A depth turned to y, kept inside the section. */
export function within(frame: SectionFrame, y: number): number {
  return Math.min(frame.bottom, Math.max(frame.top, y));
}
