/** The inside of the hole: air, and water in it while the pump runs, stretch by stretch at its true bore. */
import type { Metres } from '../../model/si.ts';
import type { BoreStretch, Solution } from '../../model/solution.ts';
import { mayFallAnywhere } from '../anyFall.ts';
import { Pen } from '../hatch/pen.ts';
import { surfaceOf, type Moment } from '../moment.ts';
import type { Shape } from '../scene.ts';
import { group, path, polygon, polyline, type Point } from '../shapes.ts';
import { within, type SectionFrame } from './frame.ts';
import { roughWall } from './rough.ts';

/** How much of the water's own tint is left of water that the pump has drawn down. */
export const DRAWN_DOWN = 0.38;

/** How far an open hole's wall wanders [px]. */
const SWAY = 1.6;

/** Both walls of a stretch between two heights, from the top down. */
function walls(stretch: BoreStretch, frame: SectionFrame, from: number, to: number): [Point[], Point[]] {
  const left = tenth(frame.x(-stretch.insideRadius));
  const right = tenth(frame.x(stretch.insideRadius));
  if (stretch.kind !== 'openHole')
    return [
      [
        [left, from],
        [left, to],
      ],
      [
        [right, from],
        [right, to],
      ],
    ];
  return [roughWall(left, from, to, SWAY, 1), roughWall(right, from, to, SWAY, 2)];
}

function tenth(px: number): number {
  return Math.round(px * 10) / 10;
}

/** What a stretch encloses between two depths; null where they do not meet. */
function inside(stretch: BoreStretch, frame: SectionFrame, top: Metres, bottom: Metres): Point[] | null {
  const from = within(frame, frame.y(Math.max(stretch.top, top)));
  const to = within(frame, frame.y(Math.min(stretch.bottom, bottom)));
  if (!(to > from)) return null;
  const [left, right] = walls(stretch, frame, from, to);
  return [...left, ...right.reverse()];
}

/** Path text round all that the bore encloses between two depths. */
function enclosed(bore: readonly BoreStretch[], frame: SectionFrame, top: Metres, bottom: Metres): string {
  const pen = new Pen();
  for (const stretch of bore) {
    const points = inside(stretch, frame, top, bottom);
    if (points !== null) pen.through(points).close();
  }
  return pen.path;
}

export function drawAir({ bore }: Solution, { level }: Water, frame: SectionFrame): Shape[] {
  return [path('air', enclosed(bore, frame, -Infinity, level ?? Infinity), { fill: frame.ink.air })];
}

export interface Water {
  /** Where it stands: as a rule its level while the pump runs, else at rest; null when neither is known. */
  readonly level: Metres | null;
  /** Level at rest, above the other: the water between the two is gone while pumping. */
  readonly rest: Metres | null;
}

export function waterOf({ levels }: Solution, moment?: Moment): Water {
  return { level: surfaceOf(levels, moment), rest: levels.static };
}

export function drawWater({ bore }: Solution, { level, rest }: Water, frame: SectionFrame): Shape[] {
  if (level === null) return [];
  const { ink } = frame;
  const between = (top: Metres, bottom: Metres) => enclosed(bore, frame, top, bottom);
  const shapes = [path('water/standing', between(level, Infinity), { fill: ink.water })];
  if (rest !== null && rest < level) {
    shapes.push(path('water/drawnDown', between(rest, level), { fill: ink.water, 'fill-opacity': DRAWN_DOWN }));
  }
  return shapes.filter((shape) => shape.d !== '');
}

/** Where nobody knows how far the water falls. */
export function drawUnknownZone(solution: Solution, frame: SectionFrame): Shape[] {
  const { facts, levels, bore } = solution;
  const still = levels.static;
  if (still === null || !mayFallAnywhere(solution)) return [];
  const lines: string[] = [];
  for (const stretch of bore) {
    const from = within(frame, frame.y(Math.max(stretch.top, still)));
    const to = within(frame, frame.y(Math.min(stretch.bottom, facts.pump.setting)));
    const half = stretch.insideRadius * frame.kx - 3;
    const first = Math.ceil(from / 10) * 10;
    for (let y = first; y + 8 < to; y += 10)
      lines.push(
        polyline([
          [frame.axis - half, y + 8],
          [frame.axis + half, y],
        ]),
      );
  }
  return [
    path('water/unknown', lines.join(''), {
      fill: 'none',
      stroke: frame.ink.pumping,
      'stroke-width': 0.8,
      'stroke-dasharray': '3 3',
    }),
  ];
}

/** Walls of open hole, and the bottom: cut rock shows as a firm edge. */
export function drawHoleWalls({ bore, facts }: Solution, frame: SectionFrame): Shape[] {
  const edges = new Pen();
  for (const stretch of bore) {
    if (stretch.kind !== 'openHole') continue;
    const from = within(frame, frame.y(stretch.top));
    const to = within(frame, frame.y(stretch.bottom));
    const [left, right] = walls(stretch, frame, from, to);
    edges.through(left).through(right);
  }
  const last = bore[bore.length - 1];
  const half = (last?.outsideRadius ?? 0) * frame.kx;
  const floor = frame.y(facts.well.bottom);
  const bottom = path(
    'hole/bottom',
    polyline([
      [frame.axis - half, floor],
      [frame.axis + half, floor],
    ]),
    {
      stroke: frame.ink.casing,
      'stroke-width': 2,
      'stroke-linecap': 'round',
    },
  );
  const known = bore.every((stretch) => stretch.kind !== 'openHole' || stretch.known);
  const sides = path('hole/walls', edges.path, {
    fill: 'none',
    stroke: frame.ink.casing,
    'stroke-width': 1.2,
    'stroke-linejoin': 'round',
    ...(known ? {} : { 'stroke-dasharray': '4 3' }),
  });
  return [group('hole', edges.path !== '' ? [sides, bottom] : [bottom])];
}

/** What has filled the hole since it was drilled, where it was sounded. */
export function drawFill({ facts, bore }: Solution, frame: SectionFrame): Shape[] {
  const { bottom, depth } = facts.well;
  const last = bore[bore.length - 1];
  if (last === undefined || depth <= bottom + 0.01) return [];
  const left = frame.x(-last.outsideRadius);
  const right = frame.x(last.outsideRadius);
  const d = polygon([
    [left, frame.y(bottom)],
    [right, frame.y(bottom)],
    [right, frame.y(depth)],
    [left, frame.y(depth)],
  ]);
  return [
    path('hole/fill', d, {
      fill: frame.ink.ground.soil.fill,
      stroke: frame.ink.casing,
      'stroke-width': 1,
      'stroke-dasharray': '3 3',
    }),
  ];
}
