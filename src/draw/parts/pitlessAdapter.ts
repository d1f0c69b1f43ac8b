/**
 * The pitless adapter in section, as its two halves: the body, fixed through a hole in the casing wall, and the sliding
 * half, which hangs by its tongue in the body's slot and lifts straight out. The string's weight swings the sliding half's
 * foot towards the wall, onto its seal ring.
 */
import type { PlacedPart } from '../../model/solution.ts';
import type { Metres } from '../../model/si.ts';
import type { Box } from '../hatch/clip.ts';
import type { Shape } from '../scene.ts';
import { group, inked, rect, type Point } from '../shapes.ts';
import { DASH, onPaper } from './closed.ts';
import type { Pen } from './pen.ts';
import { drawPitlessBody, drawPitlessNut } from './pitlessBody.ts';
import { measuresOf, type PitlessPlace } from './pitlessMeasures.ts';
import { drawSlidingHalf } from './pitlessSlidingHalf.ts';

/** Right rim of the threaded end outside, where the fitting of the line is screwed in [px]. */
export function outletEnd(part: PlacedPart, pen: Pen, place: PitlessPlace): number {
  return measuresOf(part, pen, place).end;
}

/** Right face of the nut [px]: what passes it outside leaves a wrench the room to go round. */
export function nutFace(part: PlacedPart, pen: Pen, place: PitlessPlace): number {
  return measuresOf(part, pen, place).nutRight;
}

/** Where a label points at either half [px]. */
export function pitlessSpots(
  part: PlacedPart,
  pen: Pen,
  place: PitlessPlace,
): { readonly body: Point; readonly slidingHalf: Point } {
  const m = measuresOf(part, pen, place);
  return {
    body: [(m.plate + m.back) / 2, m.up(-12.5)],
    slidingHalf: [m.centre, (m.shoulder + m.waterTop) / 2],
  };
}

/** What it takes of the sheet, from the rim of its lift thread down [px]. */
export function pitlessBox(part: PlacedPart, pen: Pen, place: PitlessPlace): Box {
  const m = measuresOf(part, pen, place);
  return { left: m.centre - m.half, top: m.shoulder - m.thread, right: m.end, bottom: Math.max(m.bottom, m.up(-16)) };
}

export function drawPitlessAdapter(part: PlacedPart, pen: Pen, place: PitlessPlace): Shape {
  const m = measuresOf(part, pen, place);
  // One edge for all its metal, written once.
  const edge = inked(pen.tones.brass.edge, 0.9);
  return group(part.key, [...drawPitlessBody(m, pen), ...drawSlidingHalf(m, pen), ...drawPitlessNut(m, pen)], edge);
}

/** From afar, how far its sliding half reaches into the casing [px]. */
export const CLOSED_SPOOL_PX = 11;
const CLOSED_BODY_PX = 7;

/** From afar: body outside, sliding half inside; the pipe bends down from it. */
export function closedAdapter(part: PlacedPart, casingInsideRadius: Metres, pen: Pen): Shape {
  const { brass } = pen.tones;
  const wall = pen.x(casingInsideRadius);
  const { middle, tall } = onPaper(part, pen);
  const edge = inked(brass.edge, 1);
  return group(part.key, [
    rect('spool', wall - CLOSED_SPOOL_PX, middle - tall / 2, CLOSED_SPOOL_PX, tall, {
      rx: 2,
      fill: brass.base,
      ...edge,
      ...(tall > (part.bottom - part.top) * pen.down ? DASH : {}),
    }),
    rect('body', wall, middle - tall * 0.36, CLOSED_BODY_PX, tall * 0.72, { rx: 1.5, fill: brass.shadow, ...edge }),
  ]);
}
