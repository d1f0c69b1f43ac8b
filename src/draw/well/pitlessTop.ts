/** A top with a pitless adapter: adapter and line, cap, conduit, and the cable's spare loop under the cap. */
import type { Metres } from '../../model/si.ts';
import { isFlowing } from '../../model/rules/highestStatic.ts';
import type { PlacedPart } from '../../model/solution.ts';
import { inches } from '../../model/units.ts';
import { lineOnPaper } from '../parts/buriedLine.ts';
import { drawCap } from '../parts/cap.ts';
import { tenth } from '../parts/outline.ts';
import { nextTenths, pxText } from '../tenths.ts';
import { drawPitlessAdapter, nutFace, outletEnd, pitlessBox, pitlessSpots } from '../parts/pitlessAdapter.ts';
import type { PitlessPlace } from '../parts/pitlessMeasures.ts';
import { drawSplice } from '../parts/splice.ts';
import type { Shape } from '../scene.ts';
import { group, inked, path, rect } from '../shapes.ts';
import { ANNULUS } from '../../model/annulus.ts';
import { place, placeRound, SLIDING_HALF, type Stage } from './stage.ts';
import { casingRadii, drawBondOf, drawLine, drawWayOut, find, type Radii } from './wayOut.ts';

/** The cable's plumb run begins this far under the casing top; above it hangs the spare loop. */
const LOOP: Metres = inches(14);
/** From the nut's face outwards: a wrench is about this thick. Common practice, no source. */
export const WRENCH: Metres = inches(1.5);

export function drawPitlessTop(stage: Stage): Shape[] {
  const { pen, right } = stage;
  const radii = casingRadii(stage);
  const adapter = find(stage, 'pitlessAdapter');
  const line = find(stage, 'buriedLine');
  const cap = find(stage, 'cap');
  const shapes: Shape[] = [];
  const at = line === undefined || adapter === undefined ? null : placeIn(stage, adapter, line, radii);
  if (
    adapter !== undefined &&
    line !== undefined &&
    at !== null &&
    adapter.top - 0.3 < pen.bottom &&
    adapter.bottom + 0.3 > pen.top
  ) {
    const { outletTop, outletBottom } = at;
    const end = outletEnd(adapter, pen, at);
    shapes.push(drawRestoredGrout(stage, radii.outside, outletTop, outletBottom));
    shapes.push(drawLine(stage, line, end, Math.max(end, pen.x(radii.outside + ANNULUS))));
    shapes.push(drawPitlessAdapter(adapter, pen, at));
    const spots = pitlessSpots(adapter, pen, at);
    place(stage, adapter, {
      ...pitlessBox(adapter, pen, at),
      spots: { [adapter.key]: spots.body, [SLIDING_HALF]: spots.slidingHalf },
    });
    place(stage, line, { left: end, right, top: outletTop, bottom: outletBottom });
  }
  // The nut is tightened from outside: nothing passes it within the reach of a wrench, wherever the window is.
  const clear = adapter === undefined || at === null ? -Infinity : nutFace(adapter, pen, at) + WRENCH * pen.across;
  if (cap !== undefined) shapes.push(...drawCapAndWay(stage, cap, radii, clear));
  shapes.push(...drawBondOf(stage, radii, cap?.bottom ?? radii.top));
  return shapes;
}

function placeIn(
  { solution: { facts }, pen, axis }: Stage,
  adapter: PlacedPart,
  line: PlacedPart,
  radii: Radii,
): PitlessPlace {
  const { top, bottom } = lineOnPaper(line, pen);
  return {
    offset: axis.pipe(adapter.bottom),
    pipeRadius: facts.dropPipe.outsideDiameter / 2,
    pipeBore: facts.dropPipe.insideDiameter / 2,
    casingInsideRadius: radii.inside,
    casingOutsideRadius: radii.outside,
    outletTop: top,
    outletBottom: bottom,
  };
}

/** Cap, conduit out of it and loop under it; what hangs out of a cap over the window's edge is drawn all the same. */
function drawCapAndWay(stage: Stage, cap: PlacedPart, radii: Radii, clear: number): Shape[] {
  const { pen } = stage;
  const line = find(stage, 'buriedLine');
  const conduit = find(stage, 'conduit');
  const exit: readonly [number, number] = [
    pen.x(cap.radius) - 2,
    pen.y(cap.top) + (cap.bottom - cap.top) * pen.down * 0.45,
  ];
  const shapes: Shape[] = [];
  if (conduit !== undefined && conduit.top < pen.bottom && conduit.bottom > pen.top) {
    shapes.push(
      drawWayOut(stage, conduit, {
        from: exit,
        up: false,
        lineTop: line === undefined ? Infinity : lineOnPaper(line, pen).top,
        reach: cap.radius,
        clear,
      }),
    );
  }
  if (cap.bottom > pen.top && cap.top < pen.bottom) {
    const vented = !isFlowing(stage.solution);
    shapes.push(drawCap(cap, pen, { casingTop: radii.top, casingOutsideRadius: radii.outside, vented }));
    placeRound(stage, cap, cap.radius);
  }
  if (radii.top + LOOP > pen.top && cap.top < pen.bottom) shapes.push(drawSpareLoop(stage, radii, exit));
  return shapes;
}

/** Grout cut away for the adapter's hole and put back round it. */
function drawRestoredGrout({ solution, pen }: Stage, outside: Metres, top: number, bottom: number): Shape {
  if (solution.facts.well.groutBottom === null) return group('restoredGrout', []);
  const wall = pen.x(outside);
  return group('restoredGrout', [
    rect('patch', wall, top - 26, ANNULUS * pen.across, bottom - top + 52, {
      fill: pen.tones.grout.fill,
      stroke: pen.tones.grout.ink,
      'stroke-width': 1,
      'stroke-dasharray': '3 2',
    }),
  ]);
}

const LINES = { fill: 'none' } as const;

/** Cable to spare, coiled under the cap, so that the pump can be drawn far enough to work on the top joint. */
function drawSpareLoop(stage: Stage, radii: Radii, exit: readonly [number, number]): Shape {
  const { solution, pen, axis } = stage;
  const cable = solution.parts.find((part) => part.kind === 'cable');
  if (cable === undefined) return group('spareLoop', []);
  const start = radii.top + LOOP;
  const left = pen.x(axis.cable(start));
  const wide = pen.x(radii.inside * 0.72) - left;
  const y = (below: number): number => pen.y(radii.top) + below * LOOP * pen.down;
  const x = (share: number): number => left + wide * share;
  const splice = solution.parts.find((part) => part.kind === 'capSplice');
  // In steps from point to point: the loop is written twice, for its glint.
  const step = (...steps: readonly number[]): string => steps.map((px) => nextTenths(Math.round(px * 10))).join('');
  const [near, far] = [x(0.42) - left, x(0.84) - x(0.42)];
  const low = pen.y(splice?.bottom ?? radii.top + LOOP / 2);
  const down =
    `M${pxText(left)}${step(y(1.02))}v${pxText(y(0.6) - y(1.02))}c0${step(y(0.02) - y(0.6), near, y(0.02) - y(0.6), near, y(0.5) - y(0.6))}` +
    `s${pxText(far)}${step(y(1.15) - y(0.5), far, low - y(0.5))}`;
  const from = pen.y(splice?.top ?? radii.top + LOOP / 2);
  const rise = exit[1] - from;
  const out = `M${pxText(x(0.84))}${step(from + 2.4)}v-2.4c0${step(rise, x(0.9) - x(0.84), rise, exit[0] - x(0.84), rise)}`;
  const thick = Math.max(2.6, cable.radius * 2 * pen.across);
  const shapes = [
    path('jacket', down, inked(pen.tones.cable, tenth(thick))),
    path('glint', down, inked(pen.tones.cableShine, tenth(thick * 0.26))),
  ];
  // From the splice on it is the cable to the house.
  const toHouse = path('houseCable', out, inked(pen.tones.tape, tenth(thick)));
  if (splice === undefined) return group('spareLoop', [...shapes, toHouse], LINES);
  const offset = (x(0.84) - pen.x(0)) / pen.across;
  const conductors = solution.facts.pump.wires + 1;
  const reach = Math.max(6, cable.radius * 2 * pen.across);
  place(stage, splice, { left: x(0.84) - reach, right: x(0.84) + reach });
  const joint = drawSplice(splice, pen, { offset, cableRadius: cable.radius, conductors, bare: true });
  return group('spareLoop', [...shapes, joint, toHouse], LINES);
}
