/** The arithmetic of zooming and panning: from one window of depths to the next. Null stands for the whole well. */
import { spanWithin, type DepthSpan, type WindowRoom } from '../../draw/index.ts';
import type { Metres } from '../../model/si.ts';

function lengthOf({ topDepth, bottomDepth }: DepthSpan): Metres {
  return bottomDepth - topDepth;
}

/** What is shown: the window as far as the well has it, else all of it. */
export function shownOf(window: DepthSpan | null, { whole, least }: WindowRoom): DepthSpan {
  return (window === null ? null : spanWithin(window, whole, least)) ?? whole;
}

/**
 * A depth keeps its place on the sheet while what is round it grows or shrinks, as far as the well goes.
 *
 * @param times  over 1 shows less of the well, larger
 */
export function zoomedAbout(
  window: DepthSpan | null,
  depth: Metres,
  times: number,
  room: WindowRoom,
): DepthSpan | null {
  const shown = shownOf(window, room);
  const length = Math.max(room.least, lengthOf(shown) / times);
  const share = (depth - shown.topDepth) / lengthOf(shown);
  const topDepth = depth - share * length;
  return spanWithin({ topDepth, bottomDepth: topDepth + length }, room.whole, room.least);
}

/** Deeper by so much, or as far as the well goes; the same window where it cannot move. */
export function pannedBy(window: DepthSpan | null, by: Metres, room: WindowRoom): DepthSpan | null {
  if (window === null) return null;
  const shown = shownOf(window, room);
  const { whole } = room;
  const moved = Math.min(Math.max(by, whole.topDepth - shown.topDepth), whole.bottomDepth - shown.bottomDepth);
  return { topDepth: shown.topDepth + moved, bottomDepth: shown.bottomDepth + moved };
}

/** As much of the well, with the depth in the middle or as near to it as the well's ends allow. */
export function broughtTo(window: DepthSpan | null, depth: Metres, room: WindowRoom): DepthSpan | null {
  const shown = shownOf(window, room);
  return pannedBy(window, depth - (shown.topDepth + shown.bottomDepth) / 2, room);
}

/** Two fingers: how far apart they are says how large, and what was between them stays between them. */
export function pinched(
  start: { readonly window: DepthSpan | null; readonly depth: Metres; readonly apart: number },
  now: { readonly share: number; readonly apart: number },
  room: WindowRoom,
): DepthSpan | null {
  const length = Math.max(room.least, (lengthOf(shownOf(start.window, room)) * start.apart) / Math.max(1, now.apart));
  const topDepth = start.depth - now.share * length;
  return spanWithin({ topDepth, bottomDepth: topDepth + length }, room.whole, room.least);
}
