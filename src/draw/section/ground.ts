/** Layers left and right of the hole: tint, pattern, contact lines, grass on top. */
import { stroke } from '../parts/outline.ts';
import type { Solution } from '../../model/solution.ts';
import { isEmpty, type Box } from '../hatch/clip.ts';
import { hatch, thinnest, type PatternName } from '../hatch/patterns.ts';
import { lookOf, type GroundLook } from '../hatch/materials.ts';
import type { Memory } from '../memory.ts';
import type { Shape } from '../scene.ts';
import { group, inked, line, path, rect } from '../shapes.ts';
import { isTwoTone, LINE, type Ink } from '../theme.ts';
import type { View } from '../view.ts';
import { within, type SectionFrame } from './frame.ts';

/** Ground that someone named, or, below what was reported, ground that nobody did. */
export interface GroundLayer {
  readonly key: string;
  /** Null where nobody said. */
  readonly material: string | null;
  readonly look: GroundLook;
  readonly top: number;
  readonly bottom: number;
}

/** Layers in pixels from the ground to the section's foot; the last one reported is drawn on to the well's bottom only. */
export function groundLayers({ facts }: Solution, frame: SectionFrame): GroundLayer[] {
  const named = facts.well.layers.map((layer, i): GroundLayer => ({
    key: `layer/${i}`,
    material: layer.material,
    look: lookOf(layer.material),
    top: within(frame, frame.y(layer.top)),
    bottom: within(frame, frame.y(layer.bottom)),
  }));
  const last = named[named.length - 1];
  const reported = facts.well.layers[facts.well.layers.length - 1]?.bottom ?? 0;
  // A report ends with the hole: what the last layer was made of goes on for the margin below it.
  if (last !== undefined && reported >= facts.well.depth - 0.01) {
    return [...named.slice(0, -1), { ...last, bottom: frame.bottom }];
  }
  const rest: GroundLayer = {
    key: 'layer/unknown',
    material: null,
    look: lookOf(null),
    top: last?.bottom ?? within(frame, frame.y(0)),
    bottom: frame.bottom,
  };
  return [...named, rest].filter((layer) => layer.bottom > layer.top);
}

export function drawGround(
  solution: Solution,
  layers: readonly GroundLayer[],
  frame: SectionFrame,
  { recall }: Memory,
): Shape[] {
  const hole = holeOf(solution, frame);
  const ground = frame.y(0);
  const tints = layers.map((layer) => tint(layer, frame));
  const lines = layers.map((layer) => {
    const { key, look, top, bottom } = layer;
    const from = [
      look.ground,
      look.pattern,
      top,
      bottom,
      hole.casedTo,
      hole.openHalf,
      hole.casedHalf,
      hole.foot,
      frame,
    ];
    return recall(`${key}/hatch`, from, () => lineWork(layer, hole, frame));
  });
  const contacts = layers.slice(1).map((layer) => contact(layer, frame));
  const { left, right, ink } = frame;
  return [
    group('ground', [...tints, ...lines.filter((each) => each !== null), ...contacts]),
    line('groundSurface', left, ground, right, ground, inked(ink.grass, LINE.ground)),
  ];
}

function tint({ key, look, top, bottom }: GroundLayer, { left, right, ink }: SectionFrame): Shape {
  return rect(`${key}/tint`, left, top, right - left, bottom - top, { fill: ink.ground[look.ground].fill });
}

function lineWork({ key, look, top, bottom }: GroundLayer, hole: Hole, frame: SectionFrame): Shape | null {
  const { left, right, axis, ink, theme } = frame;
  const cased = Math.min(bottom, Math.max(top, hole.casedTo));
  const foot = Math.min(bottom, Math.max(cased, hole.foot));
  const beside = (half: number, from: number, to: number): Box[] => [
    { left, right: axis - half, top: from, bottom: to },
    { left: axis + half, right, top: from, bottom: to },
  ];
  const boxes = [
    ...beside(hole.casedHalf, top, cased),
    ...beside(hole.openHalf, cased, foot),
    ...beside(0, foot, bottom),
  ];
  const shown = boxes.filter((box) => !isEmpty(box));
  return hatchShape(`${key}/hatch`, look, shown, { ink, theme, spread: spreadFor(frame, look.pattern, CLOSE) });
}

/** How close patterns stand. */
export interface Closeness {
  /** A ground of this many square pixels carries them at their own spacing; a larger one spreads them. */
  readonly area: number;
  /** Letters that all line work of the ground takes at most, so that a sheet of gravel is as light to send as one of clay. */
  readonly letters: number;
}

const CLOSE: Closeness = { area: 130_000, letters: 4_500 };

/** How far a pattern is spread so that a large ground has no more strokes than a small one. */
export function spreadFor({ left, right, top, bottom }: Box, pattern: PatternName, close: Closeness): number {
  const area = (right - left) * (bottom - top);
  return Math.max(1, Math.min(2, Math.sqrt(area / close.area)), thinnest(pattern, area, close.letters));
}

/** What the pattern leaves free: casing and annulus down to the casing's foot, the open hole's own width below it, nothing under the hole. */
interface Hole {
  /** px */
  readonly casedHalf: number;
  /** y */
  readonly casedTo: number;
  /** px */
  readonly openHalf: number;
  /** y */
  readonly foot: number;
}

function holeOf({ facts, bore }: Solution, frame: SectionFrame): Hole {
  const last = bore[bore.length - 1];
  const open = last?.kind === 'openHole' ? last : undefined;
  const foot = frame.y(Math.max(facts.well.depth, facts.well.bottom));
  // Round a driven casing the ground was never opened.
  const driven = facts.well.intake.kind === 'driven point';
  const casedHalf = driven ? (bore[0]?.outsideRadius ?? 0) * frame.kx + 3 : frame.holeHalf;
  if (open === undefined) return { casedHalf, casedTo: frame.y(facts.well.depth), openHalf: 0, foot };
  return { casedHalf, casedTo: frame.y(open.top), openHalf: open.outsideRadius * frame.kx + 3, foot };
}

export interface HatchLook {
  readonly ink: Ink;
  readonly theme: View['theme'];
  /** As for `hatch`. */
  readonly spread?: number;
}

/** The pattern of one layer, as one path or two; null where nothing of it fits. */
export function hatchShape(
  key: string,
  { ground, pattern }: GroundLook,
  boxes: readonly Box[],
  { ink, theme, spread = 1 }: HatchLook,
): Shape | null {
  const { d, dashes, solid = '' } = hatch(pattern, boxes, spread);
  if (d === '' && solid === '') return null;
  const attrs = {
    fill: 'none',
    stroke: ink.ground[ground].hatch,
    'stroke-width': LINE.hatch,
    ...(isTwoTone(theme) ? {} : { 'stroke-opacity': theme === 'dark' ? 0.4 : 0.55 }),
  };
  if (dashes === undefined) return path(key, d, attrs);
  if (solid === '') return path(key, d, { ...attrs, 'stroke-dasharray': dashes });
  return group(key, [path('solid', solid, {}), path('dashes', d, { 'stroke-dasharray': dashes })], attrs);
}

function contact({ key, material, top }: GroundLayer, { left, right, ink }: SectionFrame): Shape {
  const unknown = material === null ? { 'stroke-dasharray': '3 3' } : {};
  return path(`${key}/contact`, stroke(left, top, right, top), { stroke: ink.hair, 'stroke-width': 0.8, ...unknown });
}
