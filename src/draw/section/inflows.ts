/** Where water enters the hole: fractures in its open rock, wider the more they give. */
import type { Solution } from '../../model/solution.ts';
import { drawFracture } from '../parts/fracture.ts';
import type { Shape } from '../scene.ts';
import type { SectionFrame } from './frame.ts';

/** From the drilled wall: short of the words that name it [px]. */
const REACH = 32;

export function drawInflows({ facts, bore }: Solution, frame: SectionFrame): Shape[] {
  const { ink, axis, kx, holeHalf, right } = frame;
  return (facts.well.inflows ?? []).map(({ depth, share }, i) => {
    const stretch = bore.find((each) => each.bottom >= depth) ?? bore[bore.length - 1];
    const half = (stretch?.outsideRadius ?? 0) * kx;
    return drawFracture(`inflow/${i}`, {
      // The mouth lies over the line of the wall, so that it is open.
      left: axis - half + 1,
      right: axis + half - 1,
      y: frame.y(depth),
      long: Math.max(0, Math.min(REACH + holeHalf - half, right - axis - half - 6)),
      gape: 3 + 4 * (share ?? 0.2),
      water: ink.water,
      edge: ink.waterEdge,
      crack: ink.ground.rock.hatch,
      dashed: share === null,
    });
  });
}
