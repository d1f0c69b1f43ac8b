/** Marks at the faults that a window shows, and the dashed box round what is in danger. */
import type { PartKind, Severity } from '../../model/solution.ts';
import { drawMark } from '../mark.ts';
import type { Box, Segment } from '../hatch/clip.ts';
import { kindsWith } from '../kinds.ts';
import type { Memory } from '../memory.ts';
import type { Shape } from '../scene.ts';
import { group, rect } from '../shapes.ts';
import type { MarkPlace } from '../view.ts';
import { severityInk } from './callouts.ts';
import type { DetailContext } from './context.ts';
import { isClear, nearestFree } from './leaders.ts';
import type { Placed } from '../well/stage.ts';

export const MARK_PX = 22;

export interface Marked {
  readonly shapes: readonly Shape[];
  readonly marks: readonly MarkPlace[];
}

/** A mark at every fault that this window shows, left of the part; two at one part stand side by side. */
export function drawMarks(
  { solution, frame, placed, pen, box }: DetailContext,
  /** Figures that they keep off. */
  clear: readonly Box[],
  /** Leaders of labels, which they would cut in two. */
  leaders: readonly Segment[],
  { recall, same }: Memory,
): Marked {
  const { left, right, top, bottom } = box;
  const asked = same('marksAsked', askedFor({ solution, placed, pen, box }));
  // Most that moves in a well moves no sign here.
  const stands = recall('marksStand', [asked, placed, clear, leaders, left, right, top, bottom], () =>
    standing(asked, { placed, clear, leaders, box }),
  );
  const marks: MarkPlace[] = [];
  const shapes: Shape[] = [];
  for (const { number, severity, x, y } of stands) {
    marks.push({ number, x, y, size: MARK_PX, view: frame.view });
    shapes.push(
      recall(`mark/${number}`, [severity, x, y, frame.ink], () =>
        drawMark({ number, severity, x, y, size: MARK_PX, ink: frame.ink }),
      ),
    );
  }
  return { shapes, marks };
}

/** A sign and where it would stand if nothing were there. */
interface Asked extends Place {
  readonly number: number;
  readonly severity: Severity;
}

function askedFor({ solution, placed, pen, box }: Pick<DetailContext, 'solution' | 'placed' | 'pen' | 'box'>): Asked[] {
  const edge = MARK_PX / 2 + 2;
  return solution.findings.flatMap((finding, i) => {
    const part = placeOf(placed, finding.part, finding.partKind);
    // A fault with a depth is marked where it is; the rope's or the cable's own run is long.
    if (finding.depth !== null && (finding.depth < pen.top || finding.depth > pen.bottom)) return [];
    if (part === undefined || part.bottom < box.top + 4 || part.top > box.bottom - 4) return [];
    const top = Math.max(part.top, box.top);
    const bottom = Math.min(part.bottom, box.bottom);
    // Under an adapter hangs the pipe, which has signs of its own.
    const middle = part.kind === 'pitlessAdapter' ? top : (top + bottom) / 2;
    const y = Math.min(Math.max(part.signAt ?? middle, box.top + edge), box.bottom - edge);
    const x = Math.max(besides(part, y, pen.x(0)), box.left + edge);
    return [{ number: i + 1, severity: finding.severity, x, y }];
  });
}

/** Each where it is free; those that find no place are left out. */
function standing(
  asked: readonly Asked[],
  { placed, box, ...off }: Pick<Kept, 'clear' | 'leaders'> & Pick<DetailContext, 'placed' | 'box'>,
): Asked[] {
  const bodies = placed.filter(({ kind }) => BODIES.has(kind));
  const lines = placed.filter(({ kind }) => LINES.has(kind));
  const stands: Asked[] = [];
  for (const each of asked) {
    const free = freePlace(each, stands, { ...off, bodies, lines }, box);
    if (free !== null) stands.push({ ...each, ...free });
  }
  return stands;
}

/** What signs keep off. */
interface Kept {
  readonly clear: readonly Box[];
  readonly bodies: readonly Placed[];
  readonly lines: readonly Placed[];
  readonly leaders: readonly Segment[];
}

/** A sign over one of these would seem to be part of it, or to speak of it. */
const BODIES = kindsWith(({ signs }) => signs === 'body');
/** Over one of these it is the lesser evil than far from what it speaks of. */
const LINES = kindsWith(({ signs }) => signs === 'line');

/**
 * As wanted, else a little up or down or left of that, else over or under the others there, else a little to the right;
 * else the same over cable or rope; else farther off. Over the well's parts only where all else is taken, and nowhere in
 * a frame that is full.
 */
function freePlace(
  { x, y }: Place,
  marks: readonly Place[],
  { clear, bodies, lines, leaders }: Kept,
  box: Box,
): Place | null {
  const step = MARK_PX + 2;
  const edge = MARK_PX / 2 + 2;
  const half = MARK_PX / 2;
  const isUntaken: Free = (atX, atY) =>
    marks.every((each) => Math.hypot(each.x - atX, each.y - atY) >= MARK_PX + 1) &&
    clear.every(
      ({ left, right, top, bottom }) =>
        atX + half <= left || atX - half >= right || atY + half <= top || atY - half >= bottom,
    );
  const isOffLeaders: Free = (atX, atY) => isClear(leaders, atX, atY, HALF_SIGN, half);
  const isFree: Free = (atX, atY) => isUntaken(atX, atY) && isOffLeaders(atX, atY);
  const highest = box.top + edge;
  const lowest = box.bottom - edge;
  const lefts: number[] = [];
  for (let at = x; at >= box.left + edge; at -= step) lefts.push(at);
  const rights: number[] = [];
  for (let at = x + step; at <= box.right - edge; at += step) rights.push(at);
  const found = (columns: readonly number[], reach: number, isGood: Free): Place | null => {
    const rows = { from: Math.max(highest, y - reach), to: Math.min(lowest, y + reach), step: ROW_PX };
    for (const column of columns) {
      const row = nearestFree(y, rows, (each) => isGood(column, each));
      if (row !== null) return { x: column, y: row };
    }
    return null;
  };
  const isOffBodies: Free = (atX, atY) =>
    isUntaken(atX, atY) && bodies.every((each) => !isOver(each, atX, atY)) && isOffLeaders(atX, atY);
  const isOffAll: Free = (atX, atY) => lines.every((each) => !isOver(each, atX, atY)) && isOffBodies(atX, atY);
  const near = lefts.slice(0, NEAR_COLUMNS);
  return (
    found(near, NEAR_PX, isOffAll) ??
    found(near, STACKED_PX, isOffAll) ??
    found(rights.slice(0, NEAR_COLUMNS), STACKED_PX, isOffAll) ??
    found(near, STACKED_PX, isOffBodies) ??
    found(lefts, Infinity, isOffAll) ??
    found(rights, Infinity, isOffAll) ??
    found([...lefts, ...rights], Infinity, isFree)
  );
}

type Free = (x: number, y: number) => boolean;

interface Place {
  readonly x: number;
  readonly y: number;
}

/** Does a sign here cover the part? What hangs askew is met where it is at that height. */
function isOver({ left, right, top, bottom, middleAt }: Placed, x: number, y: number): boolean {
  const half = MARK_PX / 2;
  if (y + half <= top || y - half + POINT_PX >= bottom) return false;
  const wide = (right - left) / 2;
  return Math.abs((middleAt?.(y) ?? left + wide) - x) < wide + half - TOUCH_PX;
}

/** So many signs side by side still read as those of the part beside them. */
const NEAR_COLUMNS = 2;
/** Signs have no corners: so far they may seem to reach into a part [px]. */
const TOUCH_PX = 2;
/** And with their tops, which are round or come to a point, so far [px]. */
const POINT_PX = 4;

/** What a sign covers. */
export function signBox({ x, y, size }: MarkPlace): Box {
  return { left: x - HALF_SIGN, right: x + HALF_SIGN, top: y - size / 2, bottom: y + size / 2 };
}

/** Half of the widest sign, a triangle with its edge [px]. */
const HALF_SIGN = MARK_PX * 0.56 + 1;
/** Less than its own height up or down, so that two at one part stand side by side [px]. */
const NEAR_PX = 18;
/** Where there is no room left of the part for all of them, they stand over and under one another: rather than on it [px]. */
const STACKED_PX = 2 * MARK_PX + 4;
/** Places are tried this far from each other [px]. */
const ROW_PX = 2;

/** Left of a part; the pipe's is on its other side, where neither cable nor rope hangs, and a wall's is outside its left half. */
function besides({ kind, left, right, middleAt }: Placed, y: number, axis: number): number {
  const half = (right - left) / 2;
  if (WALLS.has(kind)) return 2 * axis - right - MARK_PX * 0.75;
  const middle = middleAt?.(y) ?? left + half;
  const away = half + MARK_PX * 0.75;
  return kind === 'dropPipe' ? middle + away : middle - away;
}

const WALLS = kindsWith(({ signs }) => signs === 'wall');

function placeOf(placed: readonly Placed[], key: string, kind: PartKind): Placed | undefined {
  return placed.find(({ part }) => part === key) ?? placed.find((each) => each.kind === kind);
}

/** A dashed box round what is in danger. */
export function faultBoxes({ solution, frame, placed, pen }: DetailContext): Shape[] {
  const boxed: Shape[] = [];
  const seen = new Set<string>();
  for (const { part: key, severity, partKind } of solution.findings) {
    if (severity !== 'danger' || seen.has(key)) continue;
    seen.add(key);
    const part = placeOf(placed, key, partKind);
    if (part === undefined || !BOXED.has(part.kind)) continue;
    const top = Math.max(part.top, pen.y(pen.top) + 4) - 5;
    const bottom = Math.min(part.bottom, pen.y(pen.bottom) - 4) + 5;
    if (bottom - top < 8) continue;
    boxed.push(
      rect(key, part.left - 6, top, part.right - part.left + 12, bottom - top, {
        fill: 'none',
        rx: 4,
        stroke: severityInk(severity, frame.ink),
        'stroke-width': 2,
        'stroke-dasharray': '7 4',
      }),
    );
  }
  return boxed.length === 0 ? [] : [group('faults', boxed)];
}
const BOXED = kindsWith(({ boxed }) => boxed === true);
