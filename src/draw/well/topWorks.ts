/** What closes the well and leads water and wire away. */
import type { Metres } from '../../model/si.ts';
import type { PlacedPart } from '../../model/solution.ts';
import { inches } from '../../model/units.ts';
import { kindsWith } from '../kinds.ts';
import { closedLine } from '../parts/buriedLine.ts';
import { closedCover, closedCoverOn } from '../parts/cap.ts';
import { closedNeck } from '../parts/nipple.ts';
import type { Pen } from '../parts/pen.ts';
import { closedAdapter, CLOSED_SPOOL_PX } from '../parts/pitlessAdapter.ts';
import { closedStandpipe } from '../parts/tee.ts';
import type { Shape } from '../scene.ts';
import { group, type Point } from '../shapes.ts';
import { drawPitlessTop } from './pitlessTop.ts';
import { drawSealTop } from './sealTop.ts';
import { pipeRamp, place, type Stage } from './stage.ts';
import { casingRadii, find } from './wayOut.ts';

export function drawTopWorks(stage: Stage): Shape[] {
  const {
    solution: { parts, facts },
    pen,
  } = stage;
  if (pen.closed !== null) return [group('topWorks', drawClosed(stage))];
  if (!parts.some((part) => TOP.has(part.kind) && part.bottom > pen.top && part.top < pen.bottom)) return [];
  const shapes = facts.top.kind === 'pitless' ? drawPitlessTop(stage) : drawSealTop(stage);
  const away = new Set(
    parts.filter((part) => part.bottom < pen.top - AWAY || part.top > pen.bottom + AWAY).map(({ key }) => key),
  );
  return away.size === 0 ? shapes : shapes.filter(({ key }) => !away.has(key));
}

/** So far past the window's edge nothing of a part reaches into it: a frame crops what it holds, and still writes it. */
const AWAY: Metres = inches(6);

const TOP = kindsWith(({ of, runs }) => of === 'top' && runs !== true);

/** What stands between the spool, or a seal, and the upper end of the pipe is drawn from this height on [px]. */
const NECK_FROM = 2;

function drawClosed(stage: Stage): Shape[] {
  const { solution, pen, axis, ink, right } = stage;
  const { facts } = solution;
  const radii = casingRadii(stage);
  const adapter = find(stage, 'pitlessAdapter');
  const line = find(stage, 'buriedLine');
  const tee = find(stage, 'tee');
  const seal = find(stage, 'seal');
  const cover = find(stage, 'cap') ?? seal;
  const shapes: Shape[] = [];
  if (line !== undefined) {
    const from = adapter === undefined ? pen.x(0) : pen.x(radii.inside) - 2;
    const ramp = pipeRamp((facts.house.line ?? facts.dropPipe).material, pen.tones);
    shapes.push(closedLine(line, pen, { from, to: right, ramp, paper: ink.paper }));
    const y = pen.y((line.top + line.bottom) / 2);
    place(stage, line, { left: from, right: right - 2, top: y - 6, bottom: y + 6 });
  }
  if (adapter !== undefined) {
    shapes.push(closedAdapter(adapter, radii.inside, pen));
    const wall = pen.x(radii.inside);
    const y = pen.y((adapter.top + adapter.bottom) / 2);
    place(stage, adapter, { left: wall - 12, right: wall + 8, top: y - 6, bottom: y + 6 });
  }
  const carrier = adapter ?? seal;
  const pipe = find(stage, 'dropPipe');
  if (carrier !== undefined && pipe !== undefined && hasNeck(pipe, carrier.bottom, pen)) {
    const half = Math.max(2.4, pipe.radius * pen.across * 0.8);
    const neck = { from: pen.y(carrier.bottom) - 2, to: pen.y(pipe.top) + 1, middle: pen.x(axis.pipe(pipe.top)), half };
    shapes.push(closedNeck(neck, pen));
  }
  if (tee !== undefined && seal !== undefined) shapes.push(...closedStandpipe(tee, find(stage, 'plug'), seal, pen));
  if (cover !== undefined) {
    const on = closedCoverOn(cover, radii.top, pen);
    shapes.push(closedCover(cover, on, pen));
    place(stage, cover, { left: pen.x(0) - on.half, right: pen.x(0) + on.half, top: on.top, bottom: on.bottom });
  }
  return shapes;
}

const hasNeck = (pipe: PlacedPart, carrierFoot: Metres, { down }: Pen): boolean =>
  (pipe.top - carrierFoot) * down >= NECK_FROM;

/** Where the pipe turns into a spool that is drawn as a symbol, larger than it is; null where the scale shows the way between. */
export function spoolOver(stage: Stage, pipe: PlacedPart): Point | null {
  const { pen } = stage;
  const adapter = find(stage, 'pitlessAdapter');
  if (adapter === undefined || pipe.top < pen.top || hasNeck(pipe, adapter.bottom, pen)) return null;
  return [pen.x(casingRadii(stage).inside) - CLOSED_SPOOL_PX + 1, pen.y((adapter.top + adapter.bottom) / 2)];
}
