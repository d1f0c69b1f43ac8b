/** A fracture that gives water: a jagged gap that gapes at the hole and closes outwards, with hair cracks off it. */
import type { Shape } from '../scene.ts';
import { faced, group, path, type Point } from '../shapes.ts';
import { straight } from './outline.ts';

export interface FracturePlace {
  /** Walls of the hole at the fracture [px]. */
  readonly left: number;
  readonly right: number;
  readonly y: number;
  /** How far it can be followed into the rock [px]. */
  readonly long: number;
  /** How far it gapes at the wall [px]. */
  readonly gape: number;
  readonly water: string;
  readonly edge: string;
  readonly crack: string;
  /** Nobody said how much it gives. */
  readonly dashed: boolean;
}

/** Its course, from the wall outwards, in shares of its length; water comes down to the hole. */
const COURSE: readonly Point[] = [
  [0, 0],
  [0.13, -0.07],
  [0.24, 0.01],
  [0.42, -0.12],
  [0.55, -0.05],
  [0.74, -0.16],
  [1, -0.11],
];

/** Round the gap, along its upper lip outwards and back along the lower one; how far each is from the course, in shares of how far it gapes. */
const LIPS: readonly (readonly [out: number, rise: number, apart: number])[] = [
  ...COURSE.map(([out, rise]) => [out, rise, -openingAt(out)] as const),
  ...COURSE.slice(0, -1)
    .reverse()
    .map(([out, rise]) => [out, rise, openingAt(out)] as const),
];

/** It closes outwards: half of what is left of it. */
function openingAt(out: number): number {
  return 0.5 * (1 - out) ** 0.7;
}

/** Hair cracks: two that leave the gap at its bends, one beside it. */
const HAIR: readonly (readonly Point[])[] = [
  [
    [0.24, 0.01],
    [0.36, 0.12],
    [0.46, 0.1],
    [0.62, 0.2],
  ],
  [
    [0.42, -0.12],
    [0.54, -0.26],
    [0.68, -0.25],
  ],
  [
    [0, 0.16],
    [0.09, 0.21],
    [0.2, 0.17],
  ],
];

export function drawFracture(key: string, place: FracturePlace): Shape {
  const sides = [-1, 1] as const;
  return group(key, [
    path('hair', sides.map((side) => hair(place, side)).join(''), faced('none', place.crack, 0.9)),
    path('gap', sides.map((side) => gap(place, side)).join(''), {
      fill: place.water,
      stroke: place.edge,
      'stroke-width': 1.1,
      ...(place.dashed ? { 'stroke-dasharray': '4 3' } : {}),
    }),
  ]);
}

const wall = ({ left, right }: FracturePlace, side: 1 | -1): number => (side < 0 ? left : right);

function gap(place: FracturePlace, side: 1 | -1): string {
  const { y, long, gape } = place;
  const from = wall(place, side);
  return straight(
    LIPS.map(([out, rise, apart]): Point => [from + side * out * long, y + rise * long + apart * gape]),
    false,
  );
}

function hair(place: FracturePlace, side: 1 | -1): string {
  const { y, long } = place;
  const from = wall(place, side);
  return HAIR.map((crack) =>
    straight(
      crack.map(([out, down]): Point => [from + side * out * long, y + down * long]),
      false,
    ),
  ).join('');
}
