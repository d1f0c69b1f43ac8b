/** The hole in a frame, cut open: what fills the ring round the casing, air and water, walls, inflows. */
import type { Metres } from '../../model/si.ts';
import type { Solution } from '../../model/solution.ts';
import { surfaceOf, type Moment } from '../moment.ts';
import type { Pen } from '../parts/pen.ts';
import type { Shape } from '../scene.ts';
import { drawAnnulus } from './annulus.ts';
import { drawBore } from './bore.ts';
import { drawInflows } from './inflows.ts';
import type { Stage } from './stage.ts';
import { drawUnknownZone } from './unknownZone.ts';
import { drawWalls } from './walls.ts';

/** Farther than this past the frame's edge, no height of the water changes what is drawn in it. */
const PAST_EDGE: Metres = 0.5;

/** One value for all heights of the water above the frame, and one for all below it. */
function surfaceBy(surface: Metres | null, { top, bottom }: Pen): Metres | null {
  return surface === null ? null : Math.min(Math.max(surface, top - PAST_EDGE), bottom + PAST_EDGE);
}

/** Back to front; what each is drawn from besides the casings, the bore and the pen: water that falls elsewhere is nothing to it. */
export const HOLE: readonly {
  readonly name: string;
  readonly draw: (stage: Stage) => Shape[];
  readonly from: (solution: Solution, moment: Moment | undefined, pen: Pen) => readonly unknown[];
}[] = [
  { name: 'annulus', draw: drawAnnulus, from: () => [] },
  {
    name: 'bore',
    draw: drawBore,
    from: ({ levels }, moment, pen) => [surfaceBy(surfaceOf(levels, moment), pen), surfaceBy(levels.static, pen)],
  },
  { name: 'inflows', draw: drawInflows, from: () => [] },
  // Only where nobody knows the drawdown does the pump's place say where the water may stand.
  {
    name: 'unknownZone',
    draw: drawUnknownZone,
    from: ({ levels, facts }) => (levels.pumping === null ? [levels.static, facts.pump.setting] : []),
  },
  { name: 'walls', draw: drawWalls, from: () => [] },
];
