/** The ways that water takes: from the pump up the pipe and out along the line, and from the ground into the hole. */
import type { Metres } from '../../model/si.ts';
import type { Solution } from '../../model/solution.ts';
import { kindsWith } from '../kinds.ts';
import type { Point } from '../shapes.ts';
import type { FlowWay } from './flowMarks.ts';
import { stringAxisOf, type StringAxis } from './stringAxis.ts';

/** Where depths and distances from the bore's axis are on paper. */
export interface WayPlace {
  x(offset: Metres): number;
  y(depth: Metres): number;
  /** Pixels for a metre across and of depth. */
  readonly across: number;
  readonly down: number;
  /** Depths at the upper and lower edge. */
  readonly top: Metres;
  readonly bottom: Metres;
}

export interface Outlet {
  /** Middle of the line to the house. */
  readonly y: number;
  /** The bend out of the pipe ends here, and the line's own bore begins there [px]. */
  readonly bendTo: number;
  readonly from: number;
  readonly to: number;
}

/** Bodies round the pipe that nothing is seen through, or that have something to show themselves. */
const OPAQUE = kindsWith(({ hidesBore }) => hidesBore === true);

const LEAST_HALF = 1.9;
const MOST_HALF = 5;
/** From mark to mark, in halves of a mark. */
const PITCH = 6;
/** From point to point where the pipe drifts [px]. */
const STEP = 8;

/**
 * From the pump to the house.
 *
 * @param least  a body that is shorter is drawn this tall [px]
 */
export function waysUp(solution: Solution, place: WayPlace, outlet: Outlet | null, least = 0): FlowWay[] {
  const { parts, facts } = solution;
  const axis = stringAxisOf(solution);
  const pipe = parts.find(({ kind }) => kind === 'dropPipe');
  if (pipe === undefined) return [];
  const half = halfIn(facts.dropPipe.insideDiameter / 2, place);
  const low = Math.min(pipe.bottom, place.bottom);
  const high = Math.max(pipe.top, place.top);
  const at = (depth: Metres): Point => [place.x(axis.pipe(depth)), place.y(depth)];
  const way = (course: Point[]): FlowWay => ({ course, half, pitch: PITCH * half });
  const ways = open(low, high, blockersOf(parts, place, least)).map(([from, to]) =>
    way(upwards(from, to, axis, place).map(at)),
  );
  if (outlet === null) return ways;
  const { y, bendTo, from, to } = outlet;
  const [x] = at(pipe.top);
  if (pipe.top >= place.top && pipe.top <= place.bottom) {
    ways.push(way([at(pipe.top), [x, y], [bendTo, y], ...(from <= bendTo ? [[to, y] as const] : [])]));
  }
  if (from > bendTo) {
    ways.push(
      way([
        [from, y],
        [to, y],
      ]),
    );
  }
  return ways;
}

/** Wings well inside the bore, and neither a speck nor a sign. */
function halfIn(radius: Metres, { across }: WayPlace): number {
  return Math.min(MOST_HALF, Math.max(LEAST_HALF, radius * across * 0.62));
}

type Stretch = readonly [from: Metres, to: Metres];

/** Upper and lower end of all that hides the bore. */
function blockersOf(parts: Solution['parts'], { down }: WayPlace, least: number): Stretch[] {
  return parts
    .filter(({ kind }) => OPAQUE.has(kind))
    .map(({ top, bottom }): Stretch => {
      const more = Math.max(0, least / down - (bottom - top)) / 2;
      return [top - more, bottom + more];
    });
}

/** What is left of the way from `low` up to `high`, from the lower end of each piece to its upper one. */
function open(low: Metres, high: Metres, blockers: readonly Stretch[]): Stretch[] {
  const pieces: Stretch[] = [];
  let from = low;
  for (const [top, bottom] of [...blockers].sort((a, b) => b[1] - a[1])) {
    if (top >= from || bottom <= high) continue;
    if (bottom < from) pieces.push([from, bottom]);
    from = top;
  }
  if (from > high) pieces.push([from, high]);
  return pieces;
}

/** Depths of the points of a piece: its ends where it hangs plumb, and closely where it drifts. */
function upwards(from: Metres, to: Metres, { centredFrom }: StringAxis, { down }: WayPlace): Metres[] {
  if (to >= centredFrom) return [from, to];
  const bend = Math.min(from, centredFrom);
  const steps = Math.max(1, Math.min(40, Math.ceil(((bend - to) * down) / STEP)));
  const drifting = Array.from({ length: steps + 1 }, (_, i) => bend + ((to - bend) * i) / steps);
  return from > bend ? [from, ...drifting] : drifting;
}

/** How far out the ground's water is shown to come from [px]. */
const REACH = 24;
/** From arrow to arrow along a screen [px]. */
const ALONG_SCREEN = 30;

/**
 * Into the hole, from both sides: at each fracture that was reported, and all along a screen.
 *
 * @param half  of a mark [px]
 */
export function waysIn({ facts, bore }: Solution, place: WayPlace, half: number): FlowWay[] {
  const beside = (radius: Metres, depth: Metres): FlowWay[] =>
    ([-1, 1] as const).map((side) => {
      const wall = place.x(side * radius) + side * 2;
      return {
        course: [
          [wall + side * REACH, place.y(depth)],
          [wall - side * half, place.y(depth)],
        ],
        half,
        pitch: half * 3.4,
      };
    });
  const fractures = (facts.well.inflows ?? []).flatMap(({ depth }) => {
    const stretch = bore.find((each) => each.bottom >= depth);
    return stretch === undefined || depth < place.top || depth > place.bottom
      ? []
      : beside(stretch.outsideRadius, depth);
  });
  const screens = bore
    .filter(({ kind, top, bottom }) => kind === 'screen' && bottom > place.top && top < place.bottom)
    .flatMap((stretch) => {
      const tall = (stretch.bottom - stretch.top) * place.down;
      const count = Math.max(1, Math.floor(tall / ALONG_SCREEN));
      return Array.from({ length: count }, (_, i) =>
        beside(stretch.outsideRadius, stretch.top + ((i + 0.5) / count) * (stretch.bottom - stretch.top)),
      ).flat();
    });
  return [...fractures, ...screens];
}
