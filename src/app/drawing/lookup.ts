/** What lies under a point of a drawing: chips, level lines, marks, parts. All in px of the scene. */
import type { ChipPlace, FramePlace, HitPlace, MarkPlace, Scene } from '../../draw/view.ts';
import type { Handle } from '../../model/handles.ts';
import type { Metres } from '../../model/si.ts';

export interface Rectangle {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** Least height of what is dragged, for a mouse and for a finger. */
export const TARGET = { fine: 24, coarse: 44 } as const;

/** Half the band in which a level line can be taken with a fine pointer. */
const LINE_REACH = 6;

/** A mark is clicked within this radius, so that the target is at least 24 px wide. */
const MARK_REACH = 13;

/** The box that answers to the pointer: the chip as drawn, made tall enough to hit. */
export function targetOf(chip: ChipPlace, coarse: boolean): Rectangle {
  const height = Math.max(chip.height, coarse ? TARGET.coarse : TARGET.fine);
  return { x: chip.x, y: chip.y + (chip.height - height) / 2, width: chip.width, height };
}

/** Where tall targets overlap, the chip whose middle is nearest wins; ties go to the one used last. */
export function chipAt(scene: Scene, x: number, y: number, coarse: boolean, last: string | null): ChipPlace | null {
  let best: ChipPlace | null = null;
  let nearest = Infinity;
  for (const chip of scene.chips) {
    if (!inside(targetOf(chip, coarse), x, y)) continue;
    const distance = Math.abs(chip.y + chip.height / 2 - y);
    if (distance < nearest || (distance === nearest && chip.handle === last)) {
      best = chip;
      nearest = distance;
    }
  }
  return best;
}

export function frameAt(scene: Scene, x: number, y: number): FramePlace | null {
  // The lens lies over the section, so what was added last is on top.
  return scene.frames.findLast((frame) => inside(frame, x, y)) ?? null;
}

export function metresPerPixel({ topDepth, bottomDepth, height }: FramePlace): Metres {
  return (bottomDepth - topDepth) / height;
}

export function depthAt(frame: FramePlace, y: number): Metres {
  return frame.topDepth + (y - frame.y) * metresPerPixel(frame);
}

/** The level whose line passes within reach of the point. */
export function lineAt(
  scene: Scene,
  handles: readonly Handle[],
  x: number,
  y: number,
  last: string | null,
): { handle: Handle; frame: FramePlace } | null {
  const frame = frameAt(scene, x, y);
  // What stands in the house is at no depth of the well.
  if (frame === null || frame.view === 'D') return null;
  const scale = metresPerPixel(frame);
  let best: Handle | null = null;
  let nearest = LINE_REACH;
  for (const handle of handles) {
    if (!handle.known || handle.locked !== null) continue;
    const distance = Math.abs(frame.y + (handle.depth - frame.topDepth) / scale - y);
    if (distance < nearest || (distance === nearest && handle.id === last)) {
      best = handle;
      nearest = distance;
    }
  }
  return best === null ? null : { handle: best, frame };
}

/** px left of the section in which its depths are written. */
const RAIL = 60;

/** The rail of depths: a click there places the chosen level. */
export function isOnRail(scene: Scene, x: number): boolean {
  const section = scene.frames.find(({ view }) => view === 'O') ?? scene.frames[0];
  return section !== undefined && x < section.x && x > section.x - RAIL;
}

export function markAt(scene: Scene, x: number, y: number): MarkPlace | null {
  return scene.marks.find((mark) => Math.hypot(mark.x - x, mark.y - y) <= Math.max(MARK_REACH, mark.size / 2)) ?? null;
}

/** Slack round a part: a rope is a few pixels wide, and a finger is not. */
const PART_REACH = { fine: 3, coarse: 12 } as const;

/** The smallest part there: a clamp lies on a pipe that lies in a casing. Where none is, the nearest within reach. */
export function partAt(scene: Scene, x: number, y: number, coarse: boolean): HitPlace | null {
  const under = scene.hits.filter((hit) => inside(hit, x, y));
  if (under.length > 0) return under.reduce((best, hit) => (areaOf(hit) < areaOf(best) ? hit : best));
  let nearest: HitPlace | null = null;
  let reach: number = PART_REACH[coarse ? 'coarse' : 'fine'];
  for (const hit of scene.hits) {
    const distance = distanceTo(hit, x, y);
    if (distance < reach) {
      nearest = hit;
      reach = distance;
    }
  }
  return nearest;
}

function areaOf({ width, height }: Rectangle): number {
  return width * height;
}

function distanceTo(box: Rectangle, x: number, y: number): number {
  const outX = Math.max(box.x - x, 0, x - box.x - box.width);
  const outY = Math.max(box.y - y, 0, y - box.y - box.height);
  return Math.hypot(outX, outY);
}

function inside(box: Rectangle, x: number, y: number): boolean {
  return x >= box.x && x <= box.x + box.width && y >= box.y && y <= box.y + box.height;
}
