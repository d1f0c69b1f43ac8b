/** What part of the well the section shows, where it does not show the whole. */
import { feet } from '../../model/units.ts';
import type { Metres } from '../../model/si.ts';

export interface DepthSpan {
  readonly topDepth: Metres;
  readonly bottomDepth: Metres;
}

/** Nearer than this nothing more is seen: four feet of the well from edge to edge. */
export const LEAST_SPAN: Metres = feet(4);

/** Share of the section's width that the hole may take at true proportion: the rest is for what stands beside it. */
const HOLE_SHARE = 0.62;

/**
 * The shortest stretch that can be shown without drawing the hole narrower than it is.
 *
 * @param widest  widest half of what is drilled [m]
 * @param width   of the section [px]
 * @param height  of the section [px]
 */
export function leastSpan(widest: Metres, width: number, height: number): Metres {
  return Math.max(LEAST_SPAN, (2 * widest * height) / (width * HOLE_SHARE));
}

/** A hundredth of a millimetre: two ends nearer than this are one. */
const SAME: Metres = 1e-5;

/** The span moved into the whole and made no shorter than may be; null where that is the whole itself. */
export function spanWithin(span: DepthSpan, whole: DepthSpan, least: Metres = LEAST_SPAN): DepthSpan | null {
  const room = whole.bottomDepth - whole.topDepth;
  const length = Math.max(least, span.bottomDepth - span.topDepth);
  if (!(length < room - SAME)) return null;
  const middle = (span.topDepth + span.bottomDepth) / 2;
  const topDepth = Math.min(Math.max(middle - length / 2, whole.topDepth), whole.bottomDepth - length);
  return { topDepth, bottomDepth: topDepth + length };
}

/** Where a span leaves something of the whole out. */
export interface Cut {
  readonly top: boolean;
  readonly bottom: boolean;
}

export const UNCUT: Cut = { top: false, bottom: false };

export function cutOf(span: DepthSpan, whole: DepthSpan): Cut {
  return { top: span.topDepth > whole.topDepth + SAME, bottom: span.bottomDepth < whole.bottomDepth - SAME };
}
