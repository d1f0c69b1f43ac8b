/** The insert fitting: hexagon and collar that show, and the barb that goes into the pipe up to the shoulder. */
import type { PlacedPart } from '../../model/solution.ts';
import type { Metres } from '../../model/si.ts';
import type { Shape } from '../scene.ts';
import { faced, group, inked, path, type Point } from '../shapes.ts';
import { straight, stroke } from './outline.ts';
import type { Pen } from './pen.ts';
import type { Piece } from './piece.ts';
import type { Ramp } from '../theme.ts';
import { turned } from './turned.ts';

export interface InsertFittingPlace {
  /** Depth where the pipe's end meets the shoulder. */
  readonly shoulder: Metres;
  /** The barb points up at the pump, down under the spool. */
  readonly barbUp: boolean;
  readonly pipeInsideRadius: Metres;
  readonly pipeRadius: Metres;
  readonly offset: Metres;
}

/** Teeth of a barb: each rises slowly and falls back at once, so that the pipe slides on and not off. */
function barbProfile(from: number, to: number, half: number): (readonly [number, number])[] {
  const teeth = Math.max(2, Math.min(5, Math.round(Math.abs(to - from) / 5)));
  const profile: (readonly [number, number])[] = [];
  for (let i = 0; i < teeth; i++) {
    const start = from + ((to - from) * i) / teeth;
    const end = from + ((to - from) * (i + 1)) / teeth;
    profile.push([start, half * 1.02], [end, half * 0.74]);
  }
  return profile;
}

/** The barb in two tones: it is seen through the pipe's cut and half covered by clamps. */
export function drawBarb({ from, to, middle: centre, half }: Piece, ramp: Ramp, lying = false): Shape[] {
  const profile = barbProfile(from, to, half);
  const place = (across: number, along: number): Point => (lying ? [along, across] : [across, along]);
  const rim = [
    ...profile.map(([along, out]) => place(centre - out, along)),
    ...[...profile].reverse().map(([along, out]) => place(centre + out, along)),
  ];
  const glint: Point[] = [
    place(centre - half * 0.4, from),
    place(centre - half * 0.4, to),
    place(centre, to),
    place(centre, from),
  ];
  return [
    path('barb', straight(rim), faced(ramp.base, ramp.edge, 0.9)),
    path('barbGlint', straight(glint), { fill: ramp.shine }),
  ];
}

export function drawInsertFitting(part: PlacedPart, pen: Pen, ramp: Ramp, place: InsertFittingPlace): Shape {
  const centre = pen.x(place.offset);
  const bore = place.pipeInsideRadius * pen.across;
  const collar = place.pipeRadius * pen.across;
  const shoulder = pen.y(place.shoulder);
  const tip = pen.y(place.barbUp ? part.top : part.bottom);
  const foot = pen.y(place.barbUp ? part.bottom : part.top);
  const away = Math.sign(foot - shoulder) || 1;
  const showing = Math.abs(foot - shoulder);
  const rim = shoulder + away * showing * 0.22;
  const hexEnd = shoulder + away * showing * 0.72;
  const hex = turned(
    'hexagon',
    {
      centre,
      profile: [
        [shoulder, collar * 1.02],
        [rim, collar * 1.02],
        [rim, collar * 1.22],
        [hexEnd, collar * 1.22],
        [hexEnd, collar * 0.82],
        [foot, collar * 0.82],
      ],
    },
    ramp,
  );
  const corners = path(
    'corners',
    stroke(centre - collar * 0.5, rim, centre - collar * 0.5, hexEnd) +
      stroke(centre + collar * 0.62, rim, centre + collar * 0.62, hexEnd),
    inked(ramp.edge, 0.8),
  );
  return group(part.key, [...drawBarb({ from: shoulder, to: tip, middle: centre, half: bore }, ramp), hex, corners]);
}
