/** What the drawing of a well in a frame works with, and the note it keeps of where every part came to stand. */
import type { PipeMaterial } from '../../model/facts.ts';
import type { Metres } from '../../model/si.ts';
import type { PartKind, PlacedPart, Solution } from '../../model/solution.ts';
import { PIPE_MATERIALS, type PipeMaterialRow } from '../../model/tables/pipeMaterials.ts';
import type { Box } from '../hatch/clip.ts';
import type { Cut, Ink, Ramp, Tones } from '../theme.ts';
import type { Moment } from '../moment.ts';
import type { Pen } from '../parts/pen.ts';
import type { StringAxis } from '../parts/stringAxis.ts';
import type { Point } from '../shapes.ts';

/** Where a part came to stand on paper. */
export interface Placed extends Box {
  readonly part: string;
  readonly kind: PartKind;
  /** Its middle at a height [px], where it does not hang plumb. */
  readonly middleAt?: (y: number) => number;
  /** Where labels touch it [px], by key, where no share of its box would: those of its own pieces besides its own. */
  readonly spots?: Readonly<Record<string, Point>>;
  /** Height of what is wrong with it [px], where that is not its middle. */
  readonly signAt?: number;
}

/** The half of a pitless adapter that comes out with the string: no part of its own, but named by a label of its own. */
export const SLIDING_HALF = 'pitlessAdapter/slidingHalf';

export interface Stage {
  readonly solution: Solution;
  readonly pen: Pen;
  readonly ink: Ink;
  readonly axis: StringAxis;
  /** Where line and conduit end [px]. */
  readonly right: number;
  /** How far a fracture can be followed into the rock, beside a hole of that half width [px]. */
  readonly fractures: (half: number) => number;
  readonly placed: Placed[];
  readonly moment: Moment | undefined;
}

export const within = ({ pen }: Stage, top: Metres, bottom: Metres): boolean => bottom > pen.top && top < pen.bottom;

/** Notes where a part stands, for labels, marks and the pointer: at its own depths unless it says others [px]. */
export function place(
  { placed, pen }: Stage,
  part: Pick<PlacedPart, 'key' | 'kind' | 'top' | 'bottom'>,
  on: Pick<Placed, 'left' | 'right' | 'spots'> & Partial<Pick<Placed, 'top' | 'bottom'>>,
): void {
  placed.push({ part: part.key, kind: part.kind, top: pen.y(part.top), bottom: pen.y(part.bottom), ...on });
}

/** The same of what reaches as far to both sides of the axis. */
export function placeRound(stage: Stage, part: PlacedPart, radius: Metres): void {
  place(stage, part, { left: stage.pen.x(-radius), right: stage.pen.x(radius) });
}

export function pipeWall(material: PipeMaterial, tones: Tones): Cut {
  return tones[WALLS[PIPE_MATERIALS[material].looks]];
}

const WALLS = {
  'black plastic': 'pipeWall',
  'pale plastic': 'plasticWall',
  metal: 'metalWall',
} as const satisfies Readonly<Record<PipeMaterialRow['looks'], keyof Tones>>;

export function isBlackPlastic(material: PipeMaterial): boolean {
  return PIPE_MATERIALS[material].looks === 'black plastic';
}

/** Of a pipe that is not cut open. */
export function pipeRamp(material: PipeMaterial, tones: Tones): Ramp {
  return isBlackPlastic(material) ? tones.pipe : tones.steel;
}
