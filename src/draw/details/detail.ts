/** One detail from its window to its shapes: ground, well, rail, dimensions, marks and labels. The sheet crops it to the frame. */
import type { Metres } from '../../model/si.ts';
import type { Solution } from '../../model/solution.ts';
import { stroke } from '../parts/outline.ts';
import type { Pen } from '../parts/pen.ts';
import type { Box, Segment } from '../hatch/clip.ts';
import { partLooks } from '../looks.ts';
import type { Memory } from '../memory.ts';
import type { Shape } from '../scene.ts';
import { isTwoTone } from '../theme.ts';
import { group, inked, path } from '../shapes.ts';
import type { Callout } from './callouts.ts';
import type { DetailContext } from './context.ts';
import type { DetailFrame, DetailScene } from './contract.ts';
import { drawDetailFlow } from './flow.ts';
import { drawGround } from './ground.ts';
import { drilledRadius } from '../well/annulus.ts';
import { drawWell } from '../well/drawWell.ts';
import type { Placed } from '../well/stage.ts';
import { drawWaterLevels, levelIn } from './levels.ts';
import { factorIn, LEADER_PX, layOutFrame, type Room } from './layout.ts';
import { drawMarks, signBox } from './marks.ts';
import { layLabels, sceneOf } from './over.ts';
import { calloutFor, isWithin, touching, worstByPart, type Wanted } from './wanted.ts';

export interface DetailPlan extends Room {
  readonly topDepth: Metres;
  readonly bottomDepth: Metres;
  readonly wanted: readonly Wanted[];
  /** Labels of what is no part. */
  readonly notes?: (context: DetailContext) => readonly Callout[];
  /** Drawn over the well and under the labels; its figures keep off their leaders. */
  readonly extra?: (context: DetailContext, leaders: readonly Segment[]) => readonly Shape[];
}

/** In a narrow frame the ground behind the labels is left without line work; in a wide one that would look cut off. */
const WIDE_PX = 620;

/** How far a fracture can be followed into the rock [px]. */
const fractures = (): number => 54;

export function drawDetail(solution: Solution, frame: DetailFrame, plan: DetailPlan, memory: Memory): DetailScene {
  const { x, y, width, height, ink, type } = frame;
  const { recall, same } = memory;
  const { facts, values, bore } = solution;
  const topDepth = frame.frozen?.topDepth ?? plan.topDepth;
  const bottomDepth = frame.frozen?.bottomDepth ?? plan.bottomDepth;
  const { roomLeft, roomRight, sparePx, leftPx = 0, trueProportion } = plan;
  const down = height / (bottomDepth - topDepth);
  const factor = factorIn(frame, down, facts.dropPipe.outsideDiameter, plan);
  const room = [roomLeft, roomRight, sparePx, leftPx, trueProportion, factor];
  const looks = same('looks', partLooks(solution.parts, down, frame.looks));
  const layout = recall('layout', [x, y, width, height, frame.theme, type, topDepth, bottomDepth, looks, ...room], () =>
    layOutFrame(frame, { topDepth, bottomDepth, widthFactor: factor }, looks, plan),
  );
  const { pen, box, track } = layout;
  const drilled = drilledRadius(solution, Math.max((topDepth + bottomDepth) / 2, 0.5));
  const frost = values.frostDepth !== null && values.frostDepth > topDepth ? values.frostDepth : null;
  const frostShare = frame.moment?.frostShare ?? 1;
  const thawShare = frame.moment?.thawShare ?? 0;
  const ground = recall('ground', [facts.well, bore, frost, frostShare, thawShare, layout, ink], () =>
    group(
      'ground',
      drawGround(solution, pen, ink, {
        box,
        holeLeft: pen.x(-drilled),
        holeRight: pen.x(drilled),
        labelsFrom: trueProportion || width > WIDE_PX ? box.right : track.left - 2,
        bold: isTwoTone(frame.theme),
        frostShare,
        thawShare,
      }),
    ),
  );
  const well = drawWell(solution, { pen, ink, right: box.right, fractures }, memory, frame.moment);
  const { levels } = solution;
  const water = recall('waterLevels', [bore, levelIn(levels.static, pen), levelIn(levels.pumping, pen), pen, ink], () =>
    drawWaterLevels(solution, pen, ink),
  );
  const placed = same('placed', [...well.placed, ...water.placed, ...frostPlace(solution, pen, box.left, track.left)]);
  const context: DetailContext = {
    solution,
    frame,
    pen,
    window: box,
    box: { left: box.left + leftPx, top: box.top, right: track.left - 2, bottom: box.bottom },
    placed,
    faults: worstByPart(solution),
  };
  const waiting = plan.wanted
    .filter(({ key }) => isWithin(solution, key, topDepth, bottomDepth))
    .map((want) => calloutFor(want, context))
    .filter((each) => each !== null);
  const callouts = same('calloutValues', [
    ...touching(waiting, placed, box, track.left - LEADER_PX),
    ...(plan.notes?.(context) ?? []),
  ]);
  const { told, leaders } = layLabels(callouts, layout, frame, memory);
  const extra = same('extra', plan.extra?.(context, leaders) ?? []);
  const patches = recall('patches', [extra], () => patchesOf(extra));
  const marked = drawMarks(context, patches, leaders, memory);
  const drawn = [
    ground,
    recall('wellGroup', [well, water], () =>
      group('well', [...well.shapes, ...water.shapes], { 'stroke-width': 1.1, 'stroke-linejoin': 'round' }),
    ),
    ...drawDetailFlow(context, leaders, () => [...patches, ...marked.marks.map(signBox)], memory),
    ...extra,
    ...drawHeld(frame, pen, box),
  ];
  return sceneOf(context, { layout, told, marked, looks, widthFactor: factor }, drawn, memory);
}

/** Where the figures of dimensions stand. */
function patchesOf(shapes: readonly Shape[]): Box[] {
  return shapes.flatMap(({ key, attrs, children }) => {
    if (key !== 'patch') return patchesOf(children ?? []);
    const [left, top] = [Number(attrs['x']), Number(attrs['y'])];
    return [{ left, top, right: left + Number(attrs['width']), bottom: top + Number(attrs['height']) }];
  });
}

/** Where the dragged thing started. */
function drawHeld({ held, ink }: DetailFrame, pen: Pen, box: Box): Shape[] {
  if (held === undefined || held.start < pen.top || held.start > pen.bottom) return [];
  const y = pen.y(held.start);
  return [path('start', stroke(box.left, y, box.right, y), inked(ink.hair, 1.2, '3 3'))];
}

function frostPlace({ values }: Solution, pen: Pen, left: number, right: number): Placed[] {
  const depth = values.frostDepth;
  if (depth === null || depth <= 0 || depth <= pen.top || depth >= pen.bottom) return [];
  return [
    { part: 'frost', kind: 'frost', left, right: right - LEADER_PX, top: pen.y(depth) - 5, bottom: pen.y(depth) + 5 },
  ];
}
