/**
 * Line work for what the ground is made of, in the idea of geologic map symbols (dots for sand, rings for gravel,
 * bricks for limestone, dashes for clay and shale): our own drawing, which the legend explains.
 *
 * Every pattern hangs on one grid of the sheet, so that dragging a contact uncovers more of it and moves none of it.
 */
import { boxHeight, holds, isEmpty, type Box } from './clip.ts';
import { Pen } from './pen.ts';

export type PatternName =
  | 'soil'
  | 'clay'
  | 'silt'
  | 'sandyClay'
  | 'fineSand'
  | 'sand'
  | 'coarseSand'
  | 'gravel'
  | 'sandAndGravel'
  | 'till'
  | 'conglomerate'
  | 'sandstone'
  | 'limestone'
  | 'dolomite'
  | 'shale'
  | 'weatheredShale'
  | 'granite'
  | 'basalt'
  | 'schist'
  | 'weatheredRock'
  | 'rock'
  | 'unknown';

export interface Hatch {
  /** Path text, clipped to the boxes; empty where nothing fits. */
  readonly d: string;
  /** Rows of dashes or dots are one stroke a row, cut by the dash array. */
  readonly dashes?: string;
  /** What is drawn beside dashes without being cut by them. */
  readonly solid?: string;
}

/**
 * @param boxes   what is filled: usually the ground left and right of the hole
 * @param spread  1 on a small sheet; a large one spaces its symbols wider and stays as light
 */
export function hatch(pattern: PatternName, boxes: readonly Box[], spread = 1): Hatch {
  const { draw, dashes, solid } = PATTERNS[pattern];
  const d = drawnBy(draw, boxes, spread);
  if (dashes === undefined) return { d };
  const cut = { d, dashes: typeof dashes === 'string' ? dashes : dashes(spread) };
  return solid === undefined ? cut : { ...cut, solid: drawnBy(solid, boxes, spread) };
}

function drawnBy(draw: Draw, boxes: readonly Box[], spread: number): string {
  const pen = new Pen();
  for (const box of boxes) if (!isEmpty(box)) draw(pen, box, spread);
  return pen.path;
}

/**
 * How far symbols are spread so that a ground of this many square pixels takes no more letters to write than `most`: a
 * stone takes thirty, a dash of a row none. Dragging a contact moves no symbol by it.
 */
export function thinnest(pattern: PatternName, area: number, most: number): number {
  return Math.sqrt(((LETTERS[pattern] ?? 0) * area) / most);
}

/** Letters that a square pixel takes where nothing is spread, of what is drawn one by one. */
const LETTERS: Readonly<Partial<Record<PatternName, number>>> = {
  soil: 0.066,
  gravel: 0.063,
  sandAndGravel: 0.055,
  till: 0.032,
  conglomerate: 0.085,
  dolomite: 0.055,
  granite: 0.023,
  basalt: 0.029,
  schist: 0.059,
  weatheredRock: 0.043,
  rock: 0.022,
};

type Draw = (pen: Pen, box: Box, spread: number) => void;

interface Pattern {
  readonly draw: Draw;
  readonly dashes?: string | ((spread: number) => string);
  readonly solid?: Draw;
}

const PATTERNS: Readonly<Record<PatternName, Pattern>> = {
  soil: { draw: cells([18, 11], [3, 2], (pen, x, y, luck) => pen.stroke(x, y, x + 1 + Math.round(luck * 2), y + 1.5)) },
  clay: { draw: dashRows(9, 20), dashes: '8 12' },
  silt: { draw: dashRows(8, 20), dashes: '4 3 4 9' },
  sandyClay: { draw: dashRows(9, 22), dashes: '8 6 1 7' },
  fineSand: { draw: dashRows(6, 6), dashes: '.8 5.2' },
  sand: { draw: dashRows(7, 9), dashes: '1 8' },
  coarseSand: { draw: dashRows(9, 9), dashes: '1.8 7.2' },
  gravel: { draw: cells([26, 15], [5, 3], pebble) },
  sandAndGravel: { draw: cells([31, 16], [8, 5], pebbleAndGrains) },
  till: { draw: cells([26, 14], [6, 4], stonesInClay) },
  conglomerate: { draw: beddedPebbles },
  sandstone: { draw: dashRows(7, 14), dashes: '1 13', solid: beds(28) },
  limestone: { draw: joints(11, 26), dashes: (spread) => `${courseOf(11, spread)}`, solid: courses(11) },
  dolomite: { draw: bricks(11, 26, 4) },
  shale: { draw: dashRows(6, 17), dashes: '13 4' },
  weatheredShale: { draw: dashRows(6, 31), dashes: '13 4 5 9' },
  granite: { draw: cells([29, 19], [3, 3], cross) },
  basalt: { draw: cells([25, 18], [3, 3], wedge) },
  schist: { draw: cells([26, 11], [8, 2], (pen, x, y) => pen.wave(x - 8, y, 8, 4)) },
  weatheredRock: { draw: cells([26, 16], [5, 4], brokenStone) },
  rock: { draw: cells([24, 17], [4, 4], splinter) },
  unknown: { draw: cells([66, 44], [4, 6], questionMark) },
};

/** A number between 0 and 1 that belongs to a place on the grid: the same place always gives the same one. */
function luckAt(column: number, row: number): number {
  let h = Math.imul(column, 0x27d4eb2f) ^ Math.imul(row, 0x165667b1);
  h = Math.imul(h ^ (h >>> 15), 0x2c1b3c6d);
  h = Math.imul(h ^ (h >>> 12), 0x297a2d39);
  return ((h ^ (h >>> 15)) >>> 0) / 4294967296;
}

/** Rows of the grid inside a box; a layer too thin for one gets a row along its middle. */
function rowsIn(box: Box, spacing: number, margin: number): number[] {
  const rows: number[] = [];
  for (let row = Math.ceil((box.top + margin) / spacing); row * spacing <= box.bottom - margin; row++) rows.push(row);
  return rows.length > 0 || boxHeight(box) < 3 ? rows : [(box.top + box.bottom) / 2 / spacing];
}

type Symbol = (pen: Pen, x: number, y: number, luck: number) => unknown;

type Size = readonly [width: number, height: number];

/**
 * One symbol a cell, shaken a little so that it does not look woven; one that would cross the edge is left out.
 *
 * @param cell    where nothing is spread
 * @param symbol  half of what a symbol takes, and how it is drawn
 */
function cells([closeWidth, closeHeight]: Size, [halfWidth, halfHeight]: Size, symbol: Symbol): Draw {
  return (pen, box, spread) => {
    const width = Math.round(closeWidth * spread);
    const height = Math.round(closeHeight * spread);
    for (const row of rowsIn(box, height, halfHeight)) {
      const shift = Math.round(row) % 2 === 0 ? 0 : width / 2;
      for (let column = Math.floor((box.left - shift) / width); column * width + shift < box.right; column++) {
        const luck = luckAt(column, Math.round(row));
        const x = Math.round(column * width + shift + luck * (width - 2 * halfWidth));
        const y = row * height;
        if (holds(box, x, y, halfWidth, halfHeight)) symbol(pen, x, y, luck);
      }
    }
  };
}

/**
 * Strokes along the box that a dash array cuts, there and back, since the way to the next row is then short to write;
 * each row starts elsewhere in its period.
 */
function dashRows(close: number, period: number): Draw {
  return (pen, box, spread) => {
    const spacing = Math.round(close * spread);
    const left = Math.ceil(box.left + 3);
    const right = Math.floor(box.right - 3);
    for (const row of rowsIn(box, spacing, 1.5)) {
      const start = Math.round(luckAt(7, Math.round(row)) * (period - 1));
      if (right - left <= start) continue;
      const y = row * spacing;
      if (Math.round(row) % 2 === 0) pen.stroke(left + start, y, right, y);
      else pen.stroke(right - start, y, left, y);
    }
  };
}

/** Courses of bricks whose upright joints lean. */
function bricks(closeCourse: number, closeLength: number, lean: number): Draw {
  return (pen, box, spread) => {
    const course = courseOf(closeCourse, spread);
    const length = brickOf(closeLength, spread);
    courses(closeCourse)(pen, box, spread);
    for (let row = Math.floor(box.top / course); row * course < box.bottom; row++) {
      const y = row * course;
      const from = Math.max(y, box.top);
      const to = Math.min(y + course, box.bottom);
      const slant = (at: number) => Math.round(lean * (1 - (at - y) / course));
      const shift = row % 2 === 0 ? 0 : length / 2;
      for (let x = Math.ceil((box.left - shift) / length) * length + shift; x + lean < box.right; x += length) {
        if (x > box.left) pen.stroke(x + slant(from), from, x + slant(to), to);
      }
    }
  };
}

function courseOf(close: number, spread: number): number {
  return Math.round(close * spread);
}

function brickOf(close: number, spread: number): number {
  return 2 * Math.round((close * spread) / 2);
}

/** The level lines between courses, there and back: the way to the next is then short to write. */
function courses(close: number): Draw {
  return (pen, box, spread) => {
    const course = courseOf(close, spread);
    for (let row = Math.floor(box.top / course); row * course < box.bottom; row++) {
      const y = row * course;
      if (y <= box.top + 0.5) continue;
      if (row % 2 === 0) pen.stroke(box.left, y, box.right, y);
      else pen.stroke(box.right, y, box.left, y);
    }
  };
}

/** Upright joints of bricks, one stroke down the box that dashes of a course cut: each column in every other course. */
function joints(closeCourse: number, closeLength: number): Draw {
  return (pen, box, spread) => {
    const course = courseOf(closeCourse, spread);
    const half = brickOf(closeLength, spread) / 2;
    const first = Math.floor(box.top / course);
    for (let column = Math.ceil(box.left / half); column * half < box.right; column++) {
      const x = column * half;
      if (x <= box.left) continue;
      let row = (column - first) % 2 === 0 ? first : first + 1;
      // What is left of a joint over the box's edge is shorter than a dash.
      if (row * course < box.top) {
        pen.stroke(x, box.top, x, Math.min((row + 1) * course, box.bottom));
        row += 2;
      }
      if (row * course < box.bottom) pen.stroke(x, row * course, x, box.bottom);
    }
  };
}

/** Level lines between beds. */
function beds(close: number): Draw {
  return (pen, box, spread) => {
    const bed = Math.round(close * spread);
    for (const row of rowsIn(box, bed, 2)) pen.stroke(box.left, row * bed, box.right, row * bed);
  };
}

function beddedPebbles(pen: Pen, box: Box, spread: number): void {
  beds(30)(pen, box, spread);
  const bed = Math.round(30 * spread);
  cells([22, 10], [5, 3], (stones, x, y, luck) => (Math.abs(y % bed) < 4 ? undefined : pebble(stones, x, y, luck)))(
    pen,
    box,
    spread,
  );
}

function pebble(pen: Pen, x: number, y: number, luck: number): void {
  pen.pebble(x, y, 3 + Math.floor(luck * 2.99), luck > 0.45 ? 3 : 2);
}

function pebbleAndGrains(pen: Pen, x: number, y: number, luck: number): void {
  pen.pebble(x, y, 3 + Math.floor(luck * 1.99), luck > 0.5 ? 3 : 2);
  if (luck > 0.4) pen.stamp(luck > 0.7 ? x - 6 : x + 6, y + 5, 'h1', 1, 0);
}

function stonesInClay(pen: Pen, x: number, y: number, luck: number): void {
  if (luck > 0.4) pen.stamp(x - 6, y, 'h9', 9, 0);
  else pen.stamp(x - 3, y + 2, 'l3-5 4 4-7 1', 0, 0);
}

function cross(pen: Pen, x: number, y: number, luck: number): void {
  if (luck > 0.3) pen.stamp(x - 2, y, 'h4m-2-2v4', 2, 2);
  else pen.stamp(x - 2, y + 1, 'l4-2', 4, -2);
}

/** A block with a crack beside it: rock that the weather has opened. */
function brokenStone(pen: Pen, x: number, y: number, luck: number): void {
  if (luck < 0.4) pen.stamp(x - 4, y + 2, 'l3-5 5 2-2 5-6-2', 0, 0);
  else if (luck < 0.7) pen.stamp(x - 2, y, 'h4m-2-2v4', 2, 2);
  else pen.stamp(x - 4, y - 2, 'l3 3 2-2 3 3', 8, 4);
}

function wedge(pen: Pen, x: number, y: number): void {
  pen.stamp(x - 2, y - 2, 'l2 4 2-4', 4, 0);
}

function splinter(pen: Pen, x: number, y: number, luck: number): void {
  if (luck < 0.3) pen.stamp(x - 3, y - 2, 'l6 4', 6, 4);
  else if (luck < 0.6) pen.stamp(x - 3, y, 'h6', 6, 0);
  else pen.stamp(x - 3, y + 2, 'l6-4', 6, -4);
}

function questionMark(pen: Pen, x: number, y: number): void {
  pen.stamp(x - 2, y - 2, 'l1-2 3 1-1 2-1 1v1m0 2v.8', 2, 5.8);
}
