/** What lines the hole and what fills round it: casings in one another, grout, screen, riser and sump. */
import type { CasingFacts } from '../../model/facts.ts';
import type { Metres } from '../../model/si.ts';
import type { BoreStretch, Solution } from '../../model/solution.ts';
import type { Shape } from '../scene.ts';
import { group, line, path, polygon, polyline, rect, type Point } from '../shapes.ts';
import { ANNULUS, within, type SectionFrame } from './frame.ts';

/** A wall thinner than this cannot be told from a line [px]. */
const LEAST_WALL = 2.4;

export function drawAnnulus({ facts }: Solution, frame: SectionFrame): Shape[] {
  const outer = facts.well.casings[0];
  if (outer === undefined || facts.well.intake.kind === 'driven point') return [];
  const { groutBottom, bottom, intake } = facts.well;
  const foot = outer.bottom ?? intake.screens[0]?.top ?? bottom;
  const inner = (outer.outsideDiameter / 2) * frame.kx;
  const outside = inner + ANNULUS * frame.kx;
  const { ink } = frame;
  const ring = (key: string, top: Metres, end: Metres, attrs: Record<string, string | number>) =>
    [-1, 1].map((side) => {
      const y = within(frame, frame.y(top));
      const x = side < 0 ? frame.axis - outside : frame.axis + inner;
      return rect(
        `${key}/${side < 0 ? 'left' : 'right'}`,
        x,
        y,
        outside - inner,
        within(frame, frame.y(end)) - y,
        attrs,
      );
    });
  const shapes: Shape[] = [];
  if (groutBottom === null) {
    shapes.push(
      ...ring('annulus/unknown', 0, foot, {
        fill: ink.paper,
        'fill-opacity': 0.35,
        stroke: ink.hair,
        'stroke-width': 0.8,
        'stroke-dasharray': '3 3',
      }),
    );
  } else {
    const cemented = Math.min(groutBottom, foot);
    shapes.push(...ring('grout', 0, cemented, { fill: ink.grout, stroke: ink.hair, 'stroke-width': 0.6 }));
    if (cemented < foot)
      shapes.push(
        ...ring('annulus', cemented, foot, {
          fill: ink.gravelPack,
          stroke: ink.hair,
          'stroke-width': 0.6,
          'stroke-dasharray': '2 2',
        }),
      );
  }
  return [group('annulus', shapes)];
}

export function drawCasings(solution: Solution, frame: SectionFrame): Shape[] {
  const { casings, intake, bottom } = solution.facts.well;
  const ends = casings.map((casing) => casing.bottom ?? intake.screens[0]?.top ?? bottom);
  const shapes = casings.flatMap((casing, i) => [
    ...pipeWalls(
      `casing/${i}`,
      casing.top,
      ends[i] ?? bottom,
      {
        inside: casing.insideDiameter / 2,
        outside: casing.outsideDiameter / 2,
        known: casing.bottom !== null,
        plastic: isPlastic(casing),
      },
      frame,
    ),
    ...shoe(casing, i, frame),
  ]);
  return [group('casing', [...shapes, ...liningBelow(solution, ends, frame)])];
}

function isPlastic({ material }: CasingFacts): boolean {
  return material === 'PVC';
}

interface Pipe {
  readonly inside: Metres;
  readonly outside: Metres;
  readonly known: boolean;
  readonly plastic: boolean;
}

/** Two cut walls. Steel is filled; plastic is open; what nobody reported is dashed. */
function pipeWalls(key: string, top: Metres, bottom: Metres, pipe: Pipe, frame: SectionFrame): Shape[] {
  const from = within(frame, frame.y(top));
  const to = within(frame, frame.y(bottom));
  const wall = Math.max(LEAST_WALL, (pipe.outside - pipe.inside) * frame.kx);
  const { ink } = frame;
  const look = !pipe.known
    ? { fill: ink.paper, stroke: ink.casing, 'stroke-width': 1, 'stroke-dasharray': '4 3' }
    : pipe.plastic
      ? { fill: ink.paper, stroke: ink.casing, 'stroke-width': 1.1 }
      : { fill: ink.casing };
  return [-1, 1].map((side) => {
    const inner = frame.axis + side * pipe.inside * frame.kx;
    return rect(`${key}/${side < 0 ? 'left' : 'right'}`, side < 0 ? inner - wall : inner, from, wall, to - from, look);
  });
}

/** The hardened ring under driven steel. */
function shoe(casing: CasingFacts, index: number, frame: SectionFrame): Shape[] {
  if (casing.material !== 'steel' || casing.bottom === null || casing.top > 0) return [];
  const y = within(frame, frame.y(casing.bottom));
  const wall = Math.max(LEAST_WALL, ((casing.outsideDiameter - casing.insideDiameter) / 2) * frame.kx);
  return [-1, 1].map((side) => {
    const inner = frame.axis + side * (casing.insideDiameter / 2) * frame.kx;
    const outer = inner + side * (wall + 2.2);
    const points: Point[] = [
      [outer, y - 7],
      [outer, y],
      [inner, y + 1.5],
      [inner, y - 7],
    ];
    return path(`casing/${index}/shoe/${side < 0 ? 'left' : 'right'}`, polygon(points), { fill: frame.ink.casing });
  });
}

/** Screens with their slots and pack, and the blank pipe between and below them. */
function liningBelow({ bore, facts }: Solution, ends: readonly Metres[], frame: SectionFrame): Shape[] {
  const plastic = facts.well.casings.some(isPlastic);
  return bore.flatMap((stretch, i) => {
    if (stretch.kind === 'screen') return screen(stretch, `screen/${i}`, frame);
    const covered = facts.well.casings.some(
      (casing, j) => casing.top <= stretch.top && (ends[j] ?? 0) >= stretch.bottom,
    );
    if (stretch.kind === 'openHole' || covered) return [];
    return pipeWalls(
      `riser/${i}`,
      stretch.top,
      stretch.bottom,
      {
        inside: stretch.insideRadius,
        outside: stretch.outsideRadius,
        known: stretch.known,
        plastic,
      },
      frame,
    );
  });
}

function screen(stretch: BoreStretch, key: string, frame: SectionFrame): Shape[] {
  const from = within(frame, frame.y(stretch.top));
  const to = within(frame, frame.y(stretch.bottom));
  const wall = Math.max(4, (stretch.outsideRadius - stretch.insideRadius) * frame.kx);
  const pack = Math.max(6, frame.holeHalf - stretch.outsideRadius * frame.kx);
  const { ink } = frame;
  return [-1, 1].flatMap((side) => {
    const name = side < 0 ? 'left' : 'right';
    const inner = frame.axis + side * stretch.insideRadius * frame.kx;
    const middle = inner + (side * wall) / 2;
    const outer = inner + side * wall;
    const packX = side < 0 ? outer - pack : outer;
    return [
      rect(`${key}/pack/${name}`, packX, from, pack, to - from, { fill: ink.gravelPack }),
      path(
        `${key}/grains/${name}`,
        polyline([
          [packX + pack * 0.3, from + 2],
          [packX + pack * 0.3, to],
        ]) +
          polyline([
            [packX + pack * 0.72, from + 4.5],
            [packX + pack * 0.72, to],
          ]),
        {
          fill: 'none',
          stroke: ink.ground.gravel.hatch,
          'stroke-width': 1.5,
          'stroke-dasharray': '1.5 3.5',
        },
      ),
      line(`${key}/slots/${name}`, middle, from, middle, to, {
        stroke: ink.casing,
        'stroke-width': wall,
        'stroke-dasharray': '1.6 1.8',
      }),
      line(`${key}/edge/${name}`, outer, from, outer, to, { stroke: ink.casing, 'stroke-width': 1 }),
    ];
  });
}
