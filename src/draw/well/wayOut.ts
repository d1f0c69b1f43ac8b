/** What both kinds of top share: the line to the house, the conduit in its trench, the bond, and the casing they stand on. */
import type { Metres } from '../../model/si.ts';
import type { PartKind, PlacedPart } from '../../model/solution.ts';
import { drawBond } from '../parts/bond.ts';
import { drawBuriedLine } from '../parts/buriedLine.ts';
import { conduitWidth, drawConduit } from '../parts/conduit.ts';
import type { Shape } from '../scene.ts';
import { isBuriedOnBarbs } from '../../model/tables/pipeMaterials.ts';
import { pipeWall, place, type Stage } from './stage.ts';

export const find = ({ solution }: Stage, kind: PartKind): PlacedPart | undefined =>
  solution.parts.find((part) => part.kind === kind);

export interface Radii {
  readonly inside: Metres;
  readonly outside: Metres;
  readonly top: Metres;
}

export function casingRadii({ solution: { facts } }: Stage): Radii {
  const casing = facts.well.casings[0];
  return {
    inside: (casing?.insideDiameter ?? 0.15) / 2,
    outside: (casing?.outsideDiameter ?? 0.16) / 2,
    top: -facts.well.casingHeight,
  };
}

export interface WayOut {
  /** Where the conduit leaves cap or seal [px]. */
  readonly from: readonly [x: number, y: number];
  /** It stands up from a seal. */
  readonly up: boolean;
  /** Top of the line in the same trench [px]; infinite where there is none. */
  readonly lineTop: number;
  /** Nothing stands further out above the ground than this. */
  readonly reach: Metres;
  /** Left of this no part of its plumb run stands [px]. */
  readonly clear: number;
}

/** @param from  where its fitting is screwed in [px] */
export function drawLine(stage: Stage, line: PlacedPart, from: number, beddingFrom: number | null): Shape {
  const {
    solution: { facts },
    pen,
    right,
  } = stage;
  const pipe = facts.house.line ?? facts.dropPipe;
  return drawBuriedLine(line, pen, {
    from,
    to: right,
    wall: pipeWall(pipe.material, pen.tones),
    fitting: isBuriedOnBarbs(pipe) ? pen.tones.steel : null,
    clamps: Math.min(4, Math.max(1, facts.string.clampsPerJoint)),
    beddingFrom,
    shareOfBore: pipe.insideDiameter / pipe.outsideDiameter,
  });
}

/** The conduit runs in the same trench, just above the line. */
export function drawWayOut(stage: Stage, conduit: PlacedPart, way: WayOut): Shape {
  const { pen, right } = stage;
  const { from, up, lineTop, reach, clear } = way;
  const wide = conduitWidth(conduit, pen);
  const plumb = Math.max(pen.x(reach) + 4, pen.x(casingRadii(stage).outside) + 4, clear) + wide * 0.5;
  const deepest = pen.y(conduit.bottom);
  // Bedded over the line, never inside it.
  const trench =
    Number.isFinite(lineTop) && Math.abs(deepest - lineTop) < wide * 2
      ? Math.min(deepest, lineTop - wide / 2 - 7)
      : deepest;
  place(stage, conduit, { left: plumb - wide / 2, right: plumb + wide / 2, top: from[1], bottom: trench });
  return drawConduit(conduit, pen, { from, up, plumb, trench, to: right });
}

export function drawBondOf(stage: Stage, radii: Radii, capBottom: Metres): Shape[] {
  const bond = find(stage, 'bond');
  if (bond === undefined || bond.bottom < stage.pen.top || bond.top > stage.pen.bottom) return [];
  place(stage, bond, { left: stage.pen.x(-radii.outside) - 8, right: stage.pen.x(-radii.outside) });
  return [drawBond(bond, stage.pen, radii.outside, capBottom)];
}
