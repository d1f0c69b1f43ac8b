/** What every thing in the section needs to know: where it is, both scales, inks. */
import { feet, show, type Show } from '../../model/units.ts';
import type { Metres } from '../../model/si.ts';
import type { Solution } from '../../model/solution.ts';
import type { Box } from '../hatch/clip.ts';
import type { Memory } from '../memory.ts';
import { depthScale, roundFactor, type DepthScale } from '../scale.ts';
import type { Ink } from '../theme.ts';
import type { DepthWindow, View } from '../view.ts';

export interface SectionFrame extends DepthScale {
  /** Edges of the ground on the sheet [px]. */
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
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
  readonly show: Show;
  readonly held: View['held'];
}

/** What is drilled round a casing beside its own diameter; drawn, because no report tells it. Common practice. */
export const ANNULUS: Metres = 0.038;

/** The section reaches a foot above the casing and 3 % (2 ft at least) below the bottom; a flowing well's head is in it too. */
export function sectionWindow({ facts, levels, parts }: Solution): { topDepth: Metres; bottomDepth: Metres } {
  const highest = Math.min(-facts.well.casingHeight, levels.static ?? 0, levels.staticHighest ?? 0);
  const works = Math.min(0, ...parts.filter((part) => ABOVE_CASING.has(part.kind)).map((part) => part.top));
  const deepest = Math.max(facts.well.bottom, facts.well.depth, facts.pump.setting + facts.pump.intakeToMotorBottom);
  return {
    topDepth: Math.min(highest - feet(1), works - feet(0.5)),
    bottomDepth: deepest + Math.max(feet(2), deepest * 0.03),
  };
}

const ABOVE_CASING: ReadonlySet<string> = new Set(['cap', 'seal', 'tee', 'plug', 'coupling']);

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
  readonly units: View['units'];
  readonly frozen: DepthWindow | undefined;
  readonly held: View['held'];
}

/** The same frame as long as nothing moves it: all that stands in it may then be remembered. */
export function sectionFrame(solution: Solution, place: SectionPlace, { recall }: Memory): SectionFrame {
  const { box, ink, units, frozen, held } = place;
  const { topDepth, bottomDepth } = frozen ?? sectionWindow(solution);
  const widest = widestRadius(solution);
  const from = [box, ink, units, topDepth, bottomDepth, frozen?.widthFactor, widest, held?.handle, held?.start];
  return recall('frame', from, () => makeFrame({ topDepth, bottomDepth }, widest, place));
}

function makeFrame(
  { topDepth, bottomDepth }: Pick<DepthWindow, 'topDepth' | 'bottomDepth'>,
  widest: Metres,
  { box, ink, theme, units, frozen, held }: SectionPlace,
): SectionFrame {
  const { left, right, top, bottom } = box;
  const scale = depthScale(topDepth, bottomDepth, top, bottom);
  const widthFactor = frozen?.widthFactor ?? factorFor(widest, right - left, scale.k);
  const kx = widthFactor * scale.k;
  const axis = Math.round(left + (right - left) * AXIS_SHARE);
  return {
    ...scale,
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
    show: show(units),
    held,
  };
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
