/** The line that leaves a seal above the ground: union and sample tap beside the tee, and what it rests on. */
import type { PlacedPart } from '../../model/solution.ts';
import { inches } from '../../model/units.ts';
import { lineOnPaper } from '../parts/buriedLine.ts';
import { drawLineSupport } from '../parts/lineSupport.ts';
import { drawTap } from '../parts/tap.ts';
import { branchEnd } from '../parts/tee.ts';
import { drawUnion } from '../parts/union.ts';
import type { Shape } from '../scene.ts';
import { place, type Stage } from './stage.ts';
import { drawLine, find } from './wayOut.ts';

/** Lengths along the line. Common practice, no source. */
const UNION = inches(2);
const TAP_TEE = inches(1.4);
/** Between the conduit, which goes down beside the casing, and the foot of the support [px]. */
const CLEAR_PX = 4;

export function drawSealLine(stage: Stage, line: PlacedPart, tee: PlacedPart): Shape[] {
  const { pen, right, placed } = stage;
  const { top, bottom } = lineOnPaper(line, pen);
  const middle = (top + bottom) / 2;
  const half = (bottom - top) / 2;
  const union = find(stage, 'union');
  const tap = find(stage, 'tap');
  const support = find(stage, 'support');
  const shapes: Shape[] = [];
  let at = branchEnd(tee, pen);
  const over: Shape[] = [];
  if (union !== undefined) {
    const to = at + Math.max(11, UNION * pen.across);
    over.push(drawUnion(union.key, { from: at, to, middle, half }, pen.tones.steel));
    place(stage, union, { left: at, right: to, top: middle - half * 1.5, bottom: middle + half * 1.5 });
    at = to;
  }
  if (tap !== undefined) {
    const to = at + Math.max(8, TAP_TEE * pen.across);
    over.push(drawTap(tap, pen, { from: at, to, middle, half }));
    place(stage, tap, { left: at, right: to, top: pen.y(tap.top), bottom });
    at = to;
  }
  if (support !== undefined) {
    const conduit = placed.find(({ kind }) => kind === 'conduit');
    const foot = Math.max(8, support.radius * pen.across * 1.5);
    const x = Math.max(at, conduit === undefined ? at : conduit.right + CLEAR_PX + foot);
    shapes.push(drawLineSupport(support, pen, x, bottom));
    place(stage, support, { left: x - foot, right: x + foot, top: bottom, bottom: pen.y(support.bottom) });
  }
  place(stage, line, { left: at, right, top, bottom });
  return [...shapes, drawLine(stage, line, at, null), ...over];
}
