/** The flow-limiting valve on the pump's outlet: its right half cut to the rubber ring that narrows as the pressure grows. */
import type { PlacedPart } from '../../model/solution.ts';
import type { Shape } from '../scene.ts';
import { faced, group, path } from '../shapes.ts';
import { block, straight } from './outline.ts';
import type { Pen } from './pen.ts';
import { turned } from './turned.ts';

export function drawFlowLimiter(part: PlacedPart, pen: Pen): Shape {
  const { brass, brassCut, water, rubber } = pen.tones;
  const centre = pen.x(0);
  const half = part.radius * pen.across;
  const top = pen.y(part.top);
  const tall = pen.y(part.bottom) - top;
  const at = (share: number): number => top + tall * share;
  const bore = half * 0.56;
  return group(part.key, [
    turned(
      'body',
      {
        centre,
        profile: [
          [top, half * 0.9],
          [at(0.14), half],
          [at(0.86), half],
          [at(1), half * 0.9],
        ],
        few: true,
      },
      brass,
    ),
    path('wall', block(centre, top, centre + half * 0.96, at(1)), faced(brassCut.fill, brassCut.ink, 0.9)),
    path('way', block(centre, top, centre + bore, at(1)), { fill: water }),
    path(
      'ring',
      straight([
        [centre + bore + half * 0.16, at(0.3)],
        [centre + half * 0.24, at(0.38)],
        [centre + half * 0.24, at(0.62)],
        [centre + bore + half * 0.16, at(0.7)],
      ]),
      faced(rubber.base, rubber.edge, 0.7),
    ),
  ]);
}
