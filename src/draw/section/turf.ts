/** Grass, roots and snow on the section's ground, from its left edge to the house. */
import type { Solution } from '../../model/solution.ts';
import { drawTurf, FAR } from '../parts/turf.ts';
import type { Shape } from '../scene.ts';
import { within, type SectionFrame } from './frame.ts';
import { housePlace } from './house.ts';

/** As deep as roots are drawn [px]: on a frost line that runs higher they would read as one mark with it. */
const ROOTS_PX = 10;

/** @param frozen  the ground is frozen today, if only a little */
export function drawSectionTurf({ facts, values, parts }: Solution, frame: SectionFrame, frozen = true): Shape[] {
  const { left, right, axis, kx, holeHalf, ink } = frame;
  const casing = ((facts.well.casings[0]?.outsideDiameter ?? 0) / 2) * kx;
  const drilled = facts.well.intake.kind === 'driven point' ? casing : holeHalf;
  const line = parts.find((part) => part.key === 'buriedLine');
  const arrives = within(frame, frame.y(line === undefined ? 0 : (line.top + line.bottom) / 2));
  const end = line === undefined ? right : Math.min(right, housePlace(arrives, frame).left);
  return [
    drawTurf(ink, FAR, {
      grown: [
        [left, axis - drilled],
        [axis + drilled, end],
      ],
      snowed:
        frozen && (values.frostDepth ?? 0) > 0
          ? [
              [left, axis - casing],
              [axis + casing, end],
            ]
          : [],
      y: frame.y(0),
      rootless: (values.frostDepth ?? 0) > 0 && (values.frostDepth ?? 0) * frame.k < ROOTS_PX,
    }),
  ];
}
