/**
 * Every sheet that there is, the house among them. A page that shows the well alone makes do with a drawer without the
 * house, which it fetches when it is asked for: so it stands apart.
 */
import type { Solution } from '../model/solution.ts';
import { drawAtHouse } from './details/house/atHouse.ts';
import { drawSheet } from './draw.ts';
import type { Scene } from './view.ts';
import { wholeView, type AskedView } from './wholeView.ts';

/** Whatever the view leaves out is as most want it; what cannot be drawn throws a RangeError. */
export function draw(solution: Solution, view?: AskedView): Scene {
  return drawSheet(solution, { atHouse: drawAtHouse, ...wholeView(solution, view) });
}
