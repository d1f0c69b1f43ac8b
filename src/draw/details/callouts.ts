/**
 * Labels along the right edge of a detail: fitted so that none overlap, their leaders level as far as one shared
 * plumb line and slanting from there, so that no two can cross.
 */
import { fitLabels } from '../labels/fit.ts';
import type { Shape } from '../scene.ts';
import { circle, group, path, rect, text } from '../shapes.ts';
import type { Ink } from '../theme.ts';
import { shorten, textWidth } from '../type/width.ts';
import type { Severity } from '../../model/solution.ts';
import { stroke, straight } from '../parts/outline.ts';

export interface Callout {
  /** Key of the part. */
  readonly key: string;
  readonly x: number;
  readonly y: number;
  readonly name: string;
  readonly note: string;
  /** DR-23: larger is stiller, and collapses later. */
  readonly weight: number;
  readonly severity?: Severity;
  readonly lit?: boolean;
}

export interface Track {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
  /** Where every leader leaves the level [px]. */
  readonly elbow: number;
}

export const NAME_SIZE = 13;
export const NOTE_SIZE = 11.5;
const PAD = 6;
const TWO_LINES = 31;
const ONE_LINE = 19;
const GAP = 3;
/** Anchors closer than this would lay two leaders on one another. */
const ANCHOR_GAP = 3;

/** Width that the longest line asks for. */
export function calloutWidth(callouts: readonly Callout[]): number {
  const widest = callouts.reduce((most, { name, note }) => Math.max(most, textWidth(name, NAME_SIZE, 600), textWidth(note, NOTE_SIZE)), 0);
  return Math.ceil(widest + 2 * PAD);
}

interface Sized extends Callout {
  readonly lines: 1 | 2;
}

/** Second lines go first, then whole labels, the lightest first, until what is left has room. */
function collapse(callouts: readonly Callout[], room: number): Sized[] {
  let kept: Sized[] = callouts.map((each) => ({ ...each, lines: each.note === '' ? 1 : 2 }));
  const need = (): number => kept.reduce((sum, { lines }) => sum + (lines === 2 ? TWO_LINES : ONE_LINE) + GAP, -GAP);
  const byWeight = [...callouts].sort((a, b) => a.weight - b.weight || (a.key < b.key ? -1 : 1));
  for (const { key } of byWeight) {
    if (need() <= room) return kept;
    kept = kept.map((each) => (each.key === key && each.severity === undefined ? { ...each, lines: 1 } : each));
  }
  for (const { key } of byWeight) {
    if (need() <= room) return kept;
    kept = kept.filter((each) => each.key !== key);
  }
  return kept;
}

export function drawCallouts(callouts: readonly Callout[], track: Track, ink: Ink): Shape[] {
  const ordered = collapse(callouts, track.bottom - track.top).sort((a, b) => a.y - b.y || (a.key < b.key ? -1 : 1));
  const middles = fitLabels(
    ordered.map(({ y, weight, lines }) => ({ anchor: y, height: lines === 2 ? TWO_LINES : ONE_LINE, weight })), GAP, track.top, track.bottom);
  let above = -Infinity;
  const leaders: Shape[] = [];
  const boxes: Shape[] = [];
  ordered.forEach((callout, i) => {
    const y = Math.max(callout.y, above + ANCHOR_GAP);
    above = y;
    const middle = middles[i] ?? callout.y;
    leaders.push(drawLeader(callout, y, middle, track, ink));
    boxes.push(drawBox(callout, middle, track, ink));
  });
  return [group('leaders', leaders), group('labels', boxes)];
}

function drawLeader({ key, x, severity }: Sized, y: number, middle: number, track: Track, ink: Ink): Shape {
  const colour = severity === undefined ? ink.hair : severityInk(severity, ink);
  const level = Math.abs(middle - y) < 3;
  const d = level ? stroke(x, y, track.left, y) : straight([[x, y], [track.elbow, y], [track.left, middle]], false);
  return group(key, [
    path('halo', d, { fill: 'none', stroke: ink.paper, 'stroke-width': 2.6, 'stroke-opacity': 0.6 }),
    path('line', d, { fill: 'none', stroke: colour, 'stroke-width': 1 }),
    circle('dot', x, y, 2.3, { fill: ink.ink, stroke: ink.paper, 'stroke-width': 0.8 }),
  ]);
}

function drawBox(callout: Sized, middle: number, track: Track, ink: Ink): Shape {
  const { key, name, note, lines, severity, lit } = callout;
  const tall = lines === 2 ? TWO_LINES : ONE_LINE;
  const top = middle - tall / 2;
  const room = track.right - track.left - 2 * PAD;
  const edge = severity === undefined ? ink.rule : severityInk(severity, ink);
  return group(key, [
    rect('box', track.left, top, track.right - track.left, tall, {
      fill: ink.paper, rx: 4, stroke: lit === true ? ink.note : edge, 'stroke-width': severity === undefined && lit !== true ? 1 : 2,
    }),
    text('name', track.left + PAD, top + 14, shorten(name, room, NAME_SIZE, 600), { size: NAME_SIZE, weight: 600, fill: ink.ink }),
    ...(lines === 2 ? [text('note', track.left + PAD, top + 26.5, shorten(note, room, NOTE_SIZE), {
      size: NOTE_SIZE, fill: severity === 'danger' ? ink.danger : ink.ink2,
    })] : []),
  ]);
}

export function severityInk(severity: Severity, ink: Ink): string {
  if (severity === 'danger') return ink.danger;
  return severity === 'warning' ? ink.ink : ink.note;
}
