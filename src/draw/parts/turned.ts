/** A body turned about its axis, shaded with flat strips: pipes, pumps, fittings, caps. */
import type { Attributes, Shape } from '../scene.ts';
import { group, path, type Point } from '../shapes.ts';
import { straight } from './outline.ts';
import type { Ramp } from '../theme.ts';
import type { Piece } from './piece.ts';

/** Half width at a distance along the axis, in pixels. */
export type Profile = readonly (readonly [along: number, half: number])[];

interface Strip {
  readonly key: string;
  readonly tone: keyof Ramp;
  /** Edges as parts of the half width, -1 to 1. */
  readonly from: number;
  readonly to: number;
}

/** Light from the upper left: the shine lies left of the middle, the deepest shadow at the right rim. */
const FULL: readonly Strip[] = [
  { key: 'shade', tone: 'shade', from: -0.9, to: 0.86 },
  { key: 'base', tone: 'base', from: -0.74, to: 0.58 },
  { key: 'light', tone: 'light', from: -0.56, to: 0.12 },
  { key: 'shine', tone: 'shine', from: -0.4, to: -0.14 },
];
/** A slim part has no room for four steps. */
const SLIM: readonly Strip[] = [
  { key: 'base', tone: 'base', from: -0.78, to: 0.52 },
  { key: 'shine', tone: 'shine', from: -0.5, to: -0.1 },
];
const SLIM_WIDTH = 20;

/** A body on paper. */
export interface Turned {
  /** Where its axis is [px]: an x, or of a lying body a y. */
  readonly centre: number;
  /** Along its axis: down, or of a lying body to the right. */
  readonly profile: Profile;
  readonly lying?: boolean;
  /** Three tones do, whatever the width: half of it is cut open anyway. */
  readonly few?: boolean;
  /** Of its outline, besides what its ramp says. */
  readonly attrs?: Attributes;
}

/** The strip between two fractions of a profile as one closed path. */
function strip({ profile, centre, lying = false }: Turned, from: number, to: number): string {
  const count = profile.length;
  const points = new Array<Point>(2 * count);
  for (let i = 0; i < count; i++) {
    const [along, half] = profile[i] ?? [0, 0];
    const there = centre + half * from;
    const back = centre + half * to;
    points[i] = lying ? [along, there] : [there, along];
    points[2 * count - 1 - i] = lying ? [along, back] : [back, along];
  }
  return straight(points);
}

export function turned(key: string, body: Turned, ramp: Ramp): Shape {
  const widest = body.profile.reduce((most, [, half]) => Math.max(most, half), 0) * 2;
  const slim = body.few === true || widest < SLIM_WIDTH;
  const shapes = [
    path('outline', strip(body, -1, 1), {
      fill: slim ? ramp.shade : ramp.shadow,
      stroke: ramp.edge,
      ...body.attrs,
    }),
  ];
  for (const { key: name, tone, from, to } of slim ? SLIM : FULL) {
    shapes.push(path(name, strip(body, from, to), { fill: ramp[tone] }));
  }
  return group(key, shapes);
}

/** A plain cylinder standing between two levels. */
export function cylinder(key: string, { middle, half, from, to }: Piece, ramp: Ramp): Shape {
  const profile: Profile = [
    [from, half],
    [to, half],
  ];
  return turned(key, { centre: middle, profile }, ramp);
}
