/** The well in the section: the hole, what hangs in it, and the works on top. */
import type { Solution } from '../../model/solution.ts';
import { joined } from '../joined.ts';
import type { Memory } from '../memory.ts';
import type { Moment } from '../moment.ts';
import type { Shape } from '../scene.ts';
import { group } from '../shapes.ts';
import type { HitPlace } from '../view.ts';
import { drawAnnulus, drawCasings } from './casing.ts';
import type { SectionFrame } from './frame.ts';
import { drawAir, drawFill, drawHoleWalls, drawUnknownZone, drawWater, waterOf } from './hole.ts';
import { housePlace } from './house.ts';
import { drawInflows } from './inflows.ts';
import { drawNearWell } from './nearWell.ts';
import { drawString, type StringDrawing } from './string.ts';
import { drawTopWorks, type TopParts } from './topWorks.ts';

export interface Body {
  readonly shapes: readonly Shape[];
  readonly hits: readonly HitPlace[];
  readonly trueExtents: StringDrawing['trueExtents'];
  /** Keys of the small parts that stand clear. */
  readonly clear: readonly string[] | null;
}

/** Hole, string and works on top: simplified to the section's scale, or from near as the details draw them. */
export function drawBody(
  solution: Solution,
  topParts: TopParts,
  frame: SectionFrame,
  moment: Moment | undefined,
  memory: Memory,
): Body {
  const { recall } = memory;
  const { facts, parts, bore } = solution;
  if (frame.looks.near) {
    const { line } = topParts;
    const arrives = line === undefined ? 0 : (line.top + line.bottom) / 2;
    // A line under the ground turns up to the house; one above it ends behind the house, short of its far wall.
    const right = arrives > 0 ? housePlace(frame.y(arrives), frame).pipeX + 2 : frame.right - 5;
    const near = drawNearWell(solution, frame, right, memory, moment);
    return { shapes: near.shapes, hits: near.hits, trueExtents: [], clear: null };
  }
  const string = recall('string', [parts, facts.pump, facts.dropPipe, facts.top, facts.well.casings, bore, frame], () =>
    drawString(solution, frame),
  );
  const top = recall('topWorks', [facts.well, facts.house, facts.dropPipe, topParts, frame], () =>
    drawTopWorks(solution, topParts, frame),
  );
  return {
    shapes: [drawWell(solution, frame, moment, memory), ...string.shapes, ...top.shapes],
    hits: [...top.hits, ...string.hits],
    trueExtents: string.trueExtents,
    clear: string.clear,
  };
}

/** The hole and all that lines and fills it. */
function drawWell(solution: Solution, frame: SectionFrame, moment: Moment | undefined, { recall }: Memory): Shape {
  const { facts, levels, bore } = solution;
  const water = waterOf(solution, moment);
  const { level, rest } = water;
  // Only where nobody knows the drawdown does the pump's place say where the water may stand.
  const setting = levels.pumping === null ? facts.pump.setting : null;
  const pieces = [
    recall('annulus', [facts.well, bore, frame], () => drawAnnulus(solution, frame)),
    recall('air', [bore, level, frame], () => drawAir(solution, water, frame)),
    recall('water', [bore, level, rest, frame], () => drawWater(solution, water, frame)),
    recall('unknownZone', [bore, levels, setting, frame], () => drawUnknownZone(solution, frame)),
    recall('fill', [facts.well, bore, frame], () => drawFill(solution, frame)),
    recall('casings', [facts.well, bore, frame], () => drawCasings(solution, frame)),
    recall('holeWalls', [facts.well, bore, frame], () => drawHoleWalls(solution, frame)),
    recall('inflows', [facts.well, bore, frame], () => drawInflows(solution, frame)),
  ];
  return recall('well', pieces, () => group('well', joined(pieces)));
}
