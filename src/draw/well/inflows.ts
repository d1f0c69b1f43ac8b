/** Where water enters the hole: fractures in its open rock, wider the more they give. */
import { drawFracture } from '../parts/fracture.ts';
import type { Shape } from '../scene.ts';
import type { Stage } from './stage.ts';

/** Cracks that give water, from the hole outwards on both sides. */
export function drawInflows({ solution: { facts, bore }, pen, ink, placed, fractures }: Stage): Shape[] {
  const shapes: Shape[] = [];
  (facts.well.inflows ?? []).forEach(({ depth, share }, i) => {
    const stretch = bore.find((each) => each.bottom >= depth);
    if (stretch === undefined || depth < pen.top || depth > pen.bottom) return;
    const y = pen.y(depth);
    const wall = stretch.insideRadius - 1 / pen.across;
    const key = `inflow/${i + 1}`;
    shapes.push(
      drawFracture(key, {
        left: pen.x(-wall),
        right: pen.x(wall),
        y,
        long: fractures(stretch.outsideRadius * pen.across),
        gape: (pen.closed === null ? 4 : 3) + (pen.closed === null ? 5 : 4) * (share ?? 0.2),
        water: pen.tones.water,
        edge: pen.tones.waterEdge,
        crack: ink.ground.rock.hatch,
        dashed: share === null,
      }),
    );
    placed.push({ part: key, kind: 'openHole', left: pen.x(wall), right: pen.x(wall) + 40, top: y - 5, bottom: y + 5 });
  });
  return shapes;
}
