/**
 * Labels along the right edge of a detail: fitted so that none overlap, their leaders level as far as one shared
 * plumb line and slanting from there, so that no two can cross.
 */
import { drawDots, type Under } from '../assumed.ts';
import type { Box } from '../hatch/clip.ts';
import { fitLabels } from '../labels/fit.ts';
import type { Memory } from '../memory.ts';
import type { Shape } from '../scene.ts';
import { NUMBERS, signShapes } from '../mark.ts';
import { group, inked, path, textWith, type Point } from '../shapes.ts';
import type { Ink } from '../theme.ts';
import type { Measure } from '../type/measure.ts';
import type { Severity } from '../../model/solution.ts';
import { roundBlock, straight, strokes } from '../parts/outline.ts';
import { showingOf, type Pieces } from '../pieces.ts';
import type { DetailFrame } from './contract.ts';

export interface Callout {
  /** Key of the part. */
  readonly key: string;
  readonly x: number;
  readonly y: number;
  readonly name: string;
  readonly note: string;
  /** Stands in where the name has no room. */
  readonly short?: string | undefined;
  /** Stands in where the note has no room. */
  readonly brief?: string | undefined;
  /** Larger is stiller, and collapses later. */
  readonly weight: number;
  readonly severity?: Severity | undefined;
  /** Number of the finding in the list. */
  readonly number?: number | undefined;
  readonly lit?: boolean | undefined;
  /** Which of its lines tell what nobody said. */
  readonly assumed?: AssumedLines | undefined;
}

export interface AssumedLines {
  readonly name: boolean;
  readonly note: boolean;
}

export interface Track extends Box {
  /** Where every leader leaves the level [px]. */
  readonly elbow: number;
}

export const NAME_SIZE = 13;
export const NOTE_SIZE = 11.5;
const PAD = 6;
const SIGN_PX = 15;
const TWO_LINES = 31;
const ONE_LINE = 19;
const GAP = 3;
/** Anchors closer than this would lay two leaders on one another. */
const ANCHOR_GAP = 3;

interface Sized {
  readonly callout: Callout;
  readonly lines: 1 | 2;
}

/** Second lines go first, then whole labels, the lightest first, until what is left has room. */
function collapse(callouts: readonly Callout[], room: number): Sized[] {
  const lines = callouts.map(({ note }): 0 | 1 | 2 => (note === '' ? 1 : 2));
  let need = lines.reduce<number>((sum, count) => sum + heightOf(count) + GAP, -GAP);
  if (need > room) {
    const lightest = [...callouts.keys()].sort((a, b) => lighter(callouts[a], callouts[b]));
    for (const i of lightest) {
      if (need <= room) break;
      if (lines[i] !== 2 || callouts[i]?.severity !== undefined) continue;
      lines[i] = 1;
      need -= TWO_LINES - ONE_LINE;
    }
    for (const i of lightest) {
      if (need <= room) break;
      need -= heightOf(lines[i] ?? 1) + GAP;
      lines[i] = 0;
    }
  }
  const kept: Sized[] = [];
  callouts.forEach((callout, i) => {
    const count = lines[i] ?? 0;
    if (count !== 0) kept.push({ callout, lines: count });
  });
  return kept;
}

function heightOf(lines: 0 | 1 | 2): number {
  return lines === 2 ? TWO_LINES : ONE_LINE;
}

function lighter(a: Callout | undefined, b: Callout | undefined): number {
  return (a?.weight ?? 0) - (b?.weight ?? 0) || ((a?.key ?? '') < (b?.key ?? '') ? -1 : 1);
}

/** What labels are written with. */
export type Hand = Pick<DetailFrame, 'words' | 'ink' | 'type'>;

export function drawCallouts({ callouts, laid }: Labels, track: Track, hand: Hand, memory: Memory): Shape[] {
  const { ink } = hand;
  const left =
    laid.length === callouts.length ? [] : callouts.filter((each) => !laid.some(({ callout }) => callout === each));
  const { recall, same } = memory;
  // Where labels stand and how they look: nothing of what they say.
  const places = same(
    'labelPlaces',
    laid.map(({ callout: { key, x, severity, lit }, anchor, top, bottom }) => ({
      key,
      x,
      severity,
      lit,
      anchor,
      top,
      bottom,
    })),
  );
  return [
    recall('callouts/leaders', [places, track, ink], () => drawLeaders(laid, track, ink)),
    recall('callouts/boxes', [places, track, ink], () => drawBoxes(laid, track, ink)),
    drawWords(laid, track, hand, memory),
    ...(left.length === 0 ? [] : [drawMore(left, track, hand)]),
  ];
}

/** What found no room is counted and named, as far as the line goes. */
function drawMore(left: readonly Callout[], track: Track, { words: { partLabels }, ink, type }: Hand): Shape {
  const said = partLabels.more(left.map(({ short, name }) => short ?? name));
  const words = type.shorten(said, track.right - track.left - 2 * PAD, NOTE_SIZE, 400);
  const back = roundBlock(track.left, track.bottom - ONE_LINE, track.right, track.bottom, 4);
  return group('more', [
    path('box', back, { fill: ink.paper, 'fill-opacity': 0.85 }),
    textWith('words', { x: track.left + PAD, y: track.bottom - 5.5, 'font-size': NOTE_SIZE, fill: ink.ink2 }, words),
  ]);
}

/** A label in its place. */
export interface Laid extends Sized {
  /** y of its leader's dot. */
  readonly anchor: number;
  readonly top: number;
  readonly bottom: number;
}

/** All labels, and those that found room where they stand. */
export interface Labels {
  readonly callouts: readonly Callout[];
  readonly laid: readonly Laid[];
}

/** Labels of parts that are left out go with them, once all are laid out: the others stand where they stood. */
export function labelsShown({ callouts, laid }: Labels, pieces: Pieces | undefined, { recall }: Memory): Labels {
  const isThere = ({ key }: Callout): boolean => showingOf(key, pieces) !== 'absent';
  return recall('labelsShown', [callouts, laid, pieces], () => ({
    callouts: callouts.filter(isThere),
    laid: laid.filter(({ callout }) => isThere(callout)),
  }));
}

export function layOut(callouts: readonly Callout[], track: Track): Laid[] {
  const whole = track.bottom - track.top;
  const kept = collapse(callouts, whole);
  // Where some must go, a line is kept for saying so.
  const crowded = kept.length < callouts.length;
  const foot = crowded ? track.bottom - ONE_LINE - GAP : track.bottom;
  const ordered = (crowded ? collapse(callouts, foot - track.top) : kept).sort(
    ({ callout: a }, { callout: b }) => a.y - b.y || (a.key < b.key ? -1 : 1),
  );
  const middles = fitLabels(
    ordered.map(({ callout: { y, weight }, lines }) => ({ anchor: y, height: heightOf(lines), weight })),
    { gap: GAP, lo: track.top, hi: foot },
  );
  let above = -Infinity;
  return ordered.map(({ callout, lines }, i) => {
    const anchor = Math.max(callout.y, above + ANCHOR_GAP);
    above = anchor;
    const middle = middles[i] ?? callout.y;
    const half = heightOf(lines) / 2;
    return { callout, lines, anchor, top: middle - half, bottom: middle + half };
  });
}

/** The leader's points: level to the shared elbow, then straight to the label; level throughout when it nearly is. */
export function leaderPoints({ callout: { x }, anchor, top, bottom }: Laid, track: Track): Point[] {
  const middle = (top + bottom) / 2;
  return Math.abs(middle - anchor) < 3
    ? [
        [x, anchor],
        [track.left, anchor],
      ]
    : [
        [x, anchor],
        [track.elbow, anchor],
        [track.left, middle],
      ];
}

/** All leaders of one ink are one path, and all dots are another: a detail has a dozen. */
function drawLeaders(laid: readonly Laid[], track: Track, ink: Ink): Shape {
  let halos = '';
  let lines = '';
  const faulty: Shape[] = [];
  for (const each of laid) {
    const { key, severity } = each.callout;
    const line = straight(leaderPoints(each, track), false);
    halos += line;
    if (severity === undefined) lines += line;
    else faulty.push(path(`line/${key}`, line, { stroke: severityInk(severity, ink) }));
  }
  const dots = strokes(
    laid.map(({ callout: { x }, anchor }) => [x, anchor]),
    0,
    0,
  );
  return group(
    'leaders',
    [
      path('halos', halos, { stroke: ink.paper, 'stroke-width': 2.8, 'stroke-opacity': 0.6 }),
      path('lines', lines, { stroke: ink.hair }),
      ...faulty,
      path('dots', dots, { stroke: ink.ink, 'stroke-width': 4.8, 'stroke-linecap': 'round' }),
    ],
    { fill: 'none' },
  );
}

function drawBoxes(laid: readonly Laid[], track: Track, ink: Ink): Shape {
  let plain = '';
  const others: Shape[] = [];
  for (const { callout, top, bottom } of laid) {
    const { key, severity, lit } = callout;
    const box = roundBlock(track.left, top, track.right, bottom, 4);
    if (severity === undefined && lit !== true) plain += box;
    else
      others.push(
        path(
          key,
          box,
          inked(
            lit === true ? ink.note : severityInk(severity ?? 'note', ink),
            severity === 'danger' || lit === true ? 2 : 1.4,
          ),
        ),
      );
  }
  return group('boxes', [path('plain', plain, { stroke: ink.rule }), ...others], { fill: ink.paper });
}

function drawWords(laid: readonly Laid[], track: Track, { ink, type }: Hand, { recall, same }: Memory): Shape {
  const x = track.left + PAD;
  const room = track.right - track.left - 2 * PAD;
  const words: Shape[] = [];
  const unders: Under[] = [];
  for (const { callout, lines, top } of laid) {
    const { key, name, short, note, brief, severity, number } = callout;
    const signed = severity !== undefined && number !== undefined;
    const { assumed } = callout;
    const line = nameFor(name, short, signed ? room - SIGN_PX - 4 : room, type);
    words.push(recall(`label/${key}`, [line, x, top], () => textWith(key, { x, y: top + 14 }, line)));
    // The short name tells no figure.
    if (assumed?.name === true && line === name)
      unders.push({ x, y: top + 16.5, width: type.width(line, NAME_SIZE, 600) });
    if (lines === 2) {
      const fill = severity === 'danger' ? ink.danger : ink.ink2;
      const said = noteFor(note, brief, room, type);
      if (assumed?.note === true) unders.push({ x, y: top + 28.5, width: type.width(said, NOTE_SIZE) });
      words.push(
        recall(`label/${key}/note`, [said, x, top, fill], () =>
          textWith(`${key}/note`, { x, y: top + 26.5, 'font-size': NOTE_SIZE, 'font-weight': 400, fill }, said),
        ),
      );
    }
    // The finding's number stands in the label as it does at the fault.
    if (signed) {
      const place = { x: track.right - SIGN_PX / 2 - 4, y: top + 10, size: SIGN_PX };
      words.push(
        recall(`label/${key}/sign`, [number, severity, place.x, place.y, ink], () =>
          // The label's weight is the number's.
          group(`${key}/sign`, signShapes({ number, severity, ...place, ink }), {
            'text-anchor': NUMBERS['text-anchor'],
          }),
        ),
      );
    }
  }
  words.push(...recall('callouts/assumed', [same('callouts/unders', unders), ink], () => drawDots(unders, ink.ink2)));
  return group('labels', words, { 'font-size': NAME_SIZE, 'font-weight': 600, fill: ink.ink });
}

function nameFor(name: string, short: string | undefined, room: number, type: Measure): string {
  const chosen = short !== undefined && type.width(name, NAME_SIZE, 600) > room ? short : name;
  return type.shorten(chosen, room, NAME_SIZE, 600);
}

/** The whole note, else its brief form, else its last part, which carries the relation; a figure is not cut in two. */
function noteFor(note: string, brief: string | undefined, room: number, type: Measure): string {
  if (type.width(note, NOTE_SIZE) <= room) return note;
  if (brief !== undefined) return type.shorten(brief, room, NOTE_SIZE);
  const last = note.slice(note.lastIndexOf(', ') + 1).trimStart();
  return type.shorten(last, room, NOTE_SIZE);
}

export function severityInk(severity: Severity, ink: Ink): string {
  if (severity === 'danger') return ink.danger;
  return severity === 'warning' ? ink.ink : ink.note;
}
