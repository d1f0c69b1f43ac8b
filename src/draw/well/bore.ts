/** Inside the hole: air, and water in it, stretch by stretch at its true bore; and what has filled it up since. */
import type { Metres } from '../../model/si.ts';
import type { BoreStretch } from '../../model/solution.ts';
import { surfaceOf } from '../moment.ts';
import { drawOpenHole } from '../parts/openHole.ts';
import { block } from '../parts/outline.ts';
import type { Pen } from '../parts/pen.ts';
import type { Shape } from '../scene.ts';
import { path, rect } from '../shapes.ts';
import { counter } from './counter.ts';
import { place, within, type Stage } from './stage.ts';

/** How much of the water's own tint is left of water that the pump has drawn down. */
const DRAWN_DOWN = 0.38;

/** What fills the hole: air over the water, water under it, and between them, paler, what stands there at rest. */
export function drawBore(stage: Stage): Shape[] {
  const {
    solution: { bore, levels },
    pen,
    moment,
  } = stage;
  const surface = surfaceOf(levels, moment);
  const name = counter();
  const shapes: Shape[] = [];
  for (const stretch of bore) {
    const key = name(stretch.kind);
    if (!within(stage, stretch.top, stretch.bottom)) continue;
    const level = surface === null ? stretch.bottom : Math.min(stretch.bottom, Math.max(stretch.top, surface));
    shapes.push(
      ...fillStretch(stage, `${key}/air`, stretch, { top: stretch.top, bottom: level, fill: pen.tones.bore }),
    );
    shapes.push(
      ...fillStretch(stage, `${key}/water`, stretch, { top: level, bottom: stretch.bottom, fill: pen.tones.water }),
    );
    const from = Math.max(stretch.top, levels.static ?? level);
    if (from < level && within(stage, from, level))
      shapes.push(drawnDown(pen, key, stretch, { top: from, bottom: level }));
    const { kind, top, bottom } = stretch;
    place(
      stage,
      { key: kind, kind, top, bottom },
      { left: pen.x(stretch.insideRadius), right: pen.x(stretch.outsideRadius) },
    );
  }
  shapes.push(...drawFilledUp(stage));
  return shapes;
}

/** What of a stretch is filled. */
interface Filled {
  readonly top: Metres;
  readonly bottom: Metres;
}

/** As it is drawn [px]: no farther past the frame's edges than a line is wide. */
function onPaper({ top, bottom }: Filled, pen: Pen): { readonly from: number; readonly tall: number } {
  const from = pen.y(Math.max(top, pen.top - 0.1));
  return { from, tall: pen.y(Math.min(bottom, pen.bottom + 0.1)) - from };
}

function fillStretch(
  stage: Stage,
  key: string,
  stretch: BoreStretch,
  { top, bottom, fill }: Filled & { readonly fill: string },
): Shape[] {
  const { solution, pen, ink } = stage;
  const { bore } = solution;
  if (bottom - top < 1e-6 || !within(stage, top, bottom)) return [];
  if (stretch.kind === 'openHole') {
    const last = bottom === stretch.bottom && stretch === bore[bore.length - 1];
    return [
      drawOpenHole(key, pen, {
        radius: stretch.insideRadius,
        top,
        bottom,
        known: stretch.known,
        last,
        fill,
        edge: ink.ground.rock.hatch,
      }),
    ];
  }
  const { from, tall } = onPaper({ top, bottom }, pen);
  return [rect(key, pen.x(-stretch.insideRadius), from, stretch.insideRadius * 2 * pen.across, tall, { fill })];
}

function drawnDown(pen: Pen, key: string, { insideRadius, kind }: BoreStretch, filled: Filled): Shape {
  const { from, tall } = onPaper(filled, pen);
  // An open hole's wall wanders that much.
  const half = insideRadius * pen.across - (kind === 'openHole' ? 2 : 0);
  return rect(`${key}/drawnDown`, pen.x(0) - half, from, 2 * half, tall, {
    fill: pen.tones.water,
    'fill-opacity': DRAWN_DOWN,
  });
}

/** What has come into the hole since it was drilled, where its bottom was sounded. */
function drawFilledUp({ solution: { facts, bore }, pen, ink }: Stage): Shape[] {
  const { bottom, depth } = facts.well;
  const last = bore[bore.length - 1];
  if (last === undefined || depth <= bottom + 0.01 || depth < pen.top || bottom > pen.bottom) return [];
  const half = last.outsideRadius;
  return [
    path('hole/fill', block(pen.x(-half), pen.y(bottom), pen.x(half), pen.y(Math.min(depth, pen.bottom + 0.1))), {
      fill: ink.ground.soil.fill,
      stroke: ink.casing,
      'stroke-width': 1,
      'stroke-dasharray': '3 3',
    }),
  ];
}
