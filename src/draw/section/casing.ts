/** What lines the hole and what fills round it: casings in one another, grout, screen, riser and sump. */
import type { CasingFacts } from '../../model/facts.ts';
import type { Metres } from '../../model/si.ts';
import type { BoreStretch, Solution } from '../../model/solution.ts';
import { entryArrows } from '../parts/entries.ts';
import { PACK_OVER_SCREEN } from '../parts/grout.ts';
import { block, stroke } from '../parts/outline.ts';
import { joined } from '../joined.ts';
import type { Shape } from '../scene.ts';
import { group, path, polygon, rect, tenth, type Point } from '../shapes.ts';
import { ANNULUS, within, type SectionFrame } from './frame.ts';

/** A wall thinner than this cannot be told from a line [px]. */
const LEAST_WALL = 2.4;

/** A pack narrower than this could not show its grains [px]. */
const LEAST_PACK = 6;

export function drawAnnulus(solution: Solution, frame: SectionFrame): Shape[] {
  const { facts, bore } = solution;
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
    const packTop = packTopOf(bore, cemented) ?? foot;
    if (cemented < Math.min(foot, packTop))
      shapes.push(
        ...ring('annulus', cemented, Math.min(foot, packTop), {
          fill: ink.gravelPack,
          stroke: ink.hair,
          'stroke-width': 0.6,
          'stroke-dasharray': '2 2',
        }),
      );
  }
  if (intake.kind === 'screen') shapes.push(...gravelPack(solution, outside, frame));
  return [group('annulus', shapes)];
}

function packTopOf(bore: readonly BoreStretch[], cemented: Metres): Metres | undefined {
  const screen = bore.find((stretch) => stretch.kind === 'screen');
  return screen === undefined ? undefined : Math.max(screen.top - PACK_OVER_SCREEN, cemented);
}

/** Sorted gravel from over the first screen down to the well's bottom; casing and screens are drawn over it. */
function gravelPack({ facts, bore }: Solution, outside: number, frame: SectionFrame): Shape[] {
  const top = packTopOf(bore, facts.well.groutBottom ?? -Infinity);
  if (top === undefined) return [];
  const from = within(frame, frame.y(top));
  const to = within(frame, frame.y(facts.well.bottom));
  if (to - from < 1) return [];
  const lining = bore.filter(({ bottom }) => bottom > top).map(({ outsideRadius }) => outsideRadius * frame.kx);
  const inner = Math.min(...lining);
  const widest = Math.min(outside - LEAST_PACK, Math.max(...lining) + 1);
  const { axis, ink } = frame;
  const column = (share: number, top: number): string => {
    const off = widest + (outside - widest) * share;
    return stroke(axis - off, top, axis - off, to) + stroke(axis + off, top, axis + off, to);
  };
  return [
    path('pack', block(axis - outside, from, axis - inner, to) + block(axis + inner, from, axis + outside, to), {
      fill: ink.gravelPack,
    }),
    path('grains', column(0.3, from + 2) + column(0.75, from + 4.5), {
      stroke: ink.ground.gravel.hatch,
      'stroke-width': 1.5,
      'stroke-dasharray': '1.5 3.5',
    }),
  ];
}

export function drawCasings(solution: Solution, frame: SectionFrame): Shape[] {
  const { casings, intake, bottom } = solution.facts.well;
  const ends = casings.map((casing) => casing.bottom ?? intake.screens[0]?.top ?? bottom);
  const shapes = casings.map((casing, i) => [
    ...pipeWalls(
      `casing/${i}`,
      casing.top,
      ends[i] ?? bottom,
      {
        inside: casing.insideDiameter / 2,
        outside: casing.outsideDiameter / 2,
        known: casing.bottom !== null,
        material: casing.material,
      },
      frame,
    ),
    ...shoe(casing, i, frame),
  ]);
  return [group('casing', joined([...shapes, liningBelow(solution, ends, frame)]))];
}

interface Pipe {
  readonly inside: Metres;
  readonly outside: Metres;
  readonly known: boolean;
  readonly material: CasingFacts['material'];
}

/** Two cut walls. Steel is filled; plastic is open; concrete is grey; what nobody reported is dashed. */
function pipeWalls(key: string, top: Metres, bottom: Metres, pipe: Pipe, frame: SectionFrame): Shape[] {
  const from = within(frame, frame.y(top));
  const to = within(frame, frame.y(bottom));
  const wall = Math.max(LEAST_WALL, (pipe.outside - pipe.inside) * frame.kx);
  const { ink } = frame;
  const look = !pipe.known
    ? { fill: ink.paper, stroke: ink.casing, 'stroke-width': 1, 'stroke-dasharray': '4 3' }
    : pipe.material === 'steel'
      ? { fill: ink.casing }
      : { fill: pipe.material === 'concrete' ? ink.grout : ink.paper, stroke: ink.casing, 'stroke-width': 1.1 };
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
  const material = facts.well.casings.some((casing) => casing.material === 'PVC') ? 'PVC' : 'steel';
  const driven = facts.well.intake.kind === 'driven point';
  const lining = bore.map((stretch, i) => {
    if (stretch.kind === 'screen') return screen(stretch, `screen/${i}`, driven, frame);
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
        material,
      },
      frame,
    );
  });
  return joined(driven ? [...lining, [drivePoint(bore, facts.well.bottom, frame)]] : lining);
}

/** The hardened tip that opened the way. */
function drivePoint(bore: readonly BoreStretch[], bottom: Metres, frame: SectionFrame): Shape {
  const y = within(frame, frame.y(bottom));
  const half = (bore[bore.length - 1]?.outsideRadius ?? 0) * frame.kx + 1;
  const tip: Point[] = [
    [frame.axis - half, y],
    [frame.axis + half, y],
    [frame.axis, within(frame, y + Math.min(22, half * 1.6))],
  ];
  return path('drivePoint', polygon(tip), { fill: frame.ink.casing });
}

function screen(stretch: BoreStretch, key: string, driven: boolean, frame: SectionFrame): Shape[] {
  const from = within(frame, frame.y(stretch.top));
  const to = within(frame, frame.y(stretch.bottom));
  if (to - from < 1) return [];
  const wall = Math.max(4, (stretch.outsideRadius - stretch.insideRadius) * frame.kx);
  const inner = stretch.insideRadius * frame.kx;
  const outer = inner + wall;
  const outside = driven ? outer : Math.max(outer, frame.holeHalf);
  const { axis, ink } = frame;
  /** The same upright stroke on both sides of the axis. */
  const both = (out: number, top: number): string =>
    stroke(axis - out, top, axis - out, to) + stroke(axis + out, top, axis + out, to);
  return [
    path(`${key}/slots`, both(inner + wall / 2, from), {
      stroke: ink.casing,
      'stroke-width': tenth(wall),
      'stroke-dasharray': '1.6 1.8',
    }),
    path(`${key}/edge`, both(outer, from), { stroke: ink.casing }),
    path(`${key}/entry`, entryArrows(axis, outside, from, to), {
      fill: 'none',
      stroke: ink.waterEdge,
      'stroke-width': 1.3,
    }),
  ];
}
