/** The well's head in the section: cap or seal, pitless adapter as a symbol, and the line that leaves for the house. */
import type { Metres } from '../../model/si.ts';
import type { PlacedPart, Solution } from '../../model/solution.ts';
import { stringAxisOf } from '../parts/stringAxis.ts';
import type { Shape } from '../scene.ts';
import { group, line, path, polyline, rect } from '../shapes.ts';
import type { HitPlace } from '../view.ts';
import type { SectionFrame } from './frame.ts';
import { housePlace } from './house.ts';

/** How far the adapter's spool reaches into the casing [px]. */
export const SPOOL_PX = 11;
/** What stands between the spool, or a seal, and the upper end of the pipe is drawn from this height on [px]. */
export const NECK_FROM = 2;

export interface TopDrawing {
  readonly shapes: readonly Shape[];
  readonly hits: readonly HitPlace[];
}

/** All of the string that the well's head has to do with. */
export interface TopParts {
  readonly cap: PlacedPart | undefined;
  readonly seal: PlacedPart | undefined;
  readonly adapter: PlacedPart | undefined;
  readonly line: PlacedPart | undefined;
  readonly tee: PlacedPart | undefined;
  readonly plug: PlacedPart | undefined;
  /** Upper end of the pipe: its middle on the sheet, its depth and its radius. */
  readonly pipe: { readonly x: number; readonly top: Metres; readonly radius: Metres } | undefined;
}

export function topPartsOf(solution: Solution, frame: SectionFrame): TopParts {
  const find = (key: string): PlacedPart | undefined => solution.parts.find((part) => part.key === key);
  const pipe = find('dropPipe');
  return {
    cap: find('cap'),
    seal: find('seal'),
    adapter: find('pitlessAdapter'),
    line: find('buriedLine'),
    tee: find('tee'),
    plug: find('plug'),
    pipe:
      pipe === undefined
        ? undefined
        : { x: frame.x(stringAxisOf(solution).pipe(pipe.top)), top: pipe.top, radius: pipe.radius },
  };
}

export function drawTopWorks(solution: Solution, parts: TopParts, frame: SectionFrame): TopDrawing {
  const { adapter, line: buried } = parts;
  const cover = parts.cap ?? parts.seal;
  const shapes: Shape[] = [];
  const hits: HitPlace[] = [];
  if (buried !== undefined) {
    const from = adapter === undefined ? frame.axis : frame.x(casingRadius(solution)) - 2;
    const y = frame.y((buried.top + buried.bottom) / 2);
    const width = Math.max(5, 2 * buried.radius * frame.kx);
    shapes.push(drawLine(solution, from, y, width, frame));
    hits.push({
      part: 'buriedLine',
      kind: 'buriedLine',
      x: from,
      y: y - 6,
      width: Math.max(0, housePlace(y, frame).pipeX - from),
      height: 12,
      view: 'O',
    });
  }
  if (adapter !== undefined) {
    shapes.push(drawAdapter(solution, adapter, frame));
    const x = frame.x(casingRadius(solution));
    hits.push({
      part: 'pitlessAdapter',
      kind: 'pitlessAdapter',
      x: x - 12,
      y: frame.y((adapter.top + adapter.bottom) / 2) - 6,
      width: 20,
      height: 12,
      view: 'O',
    });
  }
  shapes.push(...drawNeck(parts, frame));
  shapes.push(...drawStandpipe(parts, frame));
  if (cover !== undefined) {
    const half = cover.radius * frame.kx + 3;
    const tall = Math.max(7, (cover.bottom - cover.top) * frame.k);
    const bottom = frame.y(-solution.facts.well.casingHeight) + tall * 0.35;
    shapes.push(drawCover(cover, half, bottom, tall, frame));
    hits.push({
      part: cover.key,
      kind: cover.kind,
      x: frame.axis - half,
      y: bottom - tall,
      width: half * 2,
      height: tall,
      view: 'O',
    });
  }
  return { shapes: [group('topWorks', shapes)], hits };
}

function casingRadius({ facts }: Solution): number {
  return (facts.well.casings[0]?.insideDiameter ?? 0) / 2;
}

function drawCover(cover: PlacedPart, half: number, bottom: number, tall: number, { axis, ink }: SectionFrame): Shape {
  return group(cover.key, [
    rect('body', axis - half, bottom - tall, half * 2, tall, {
      rx: 2.5,
      fill: ink.castIron.mid,
      stroke: ink.castIron.edge,
      'stroke-width': 1.2,
    }),
    line('shine', axis - half + 4, bottom - tall + 2.2, axis + half - 4, bottom - tall + 2.2, {
      stroke: ink.castIron.light,
      'stroke-width': 1.4,
    }),
  ]);
}

/** Through the wall: body outside, spool inside; the pipe bends down from it. */
function drawAdapter(solution: Solution, adapter: PlacedPart, frame: SectionFrame): Shape {
  const { ink } = frame;
  const wall = frame.x(casingRadius(solution));
  const tall = Math.max(10, (adapter.bottom - adapter.top) * frame.k);
  const middle = frame.y((adapter.top + adapter.bottom) / 2);
  const dashed = (adapter.bottom - adapter.top) * frame.k < 10 ? { 'stroke-dasharray': '3 2' } : {};
  return group('pitlessAdapter', [
    rect('spool', wall - SPOOL_PX, middle - tall / 2, SPOOL_PX, tall, {
      rx: 2,
      fill: ink.brass.mid,
      stroke: ink.brass.edge,
      'stroke-width': 1,
      ...dashed,
    }),
    rect('body', wall, middle - tall * 0.36, 7, tall * 0.72, {
      rx: 1.5,
      fill: ink.brass.dark,
      stroke: ink.brass.edge,
      'stroke-width': 1,
    }),
  ]);
}

/** Between what carries the string and the upper end of the pipe: fitting or nipple, where the scale shows the gap. */
function drawNeck({ adapter, seal, pipe }: TopParts, frame: SectionFrame): Shape[] {
  const carrier = adapter ?? seal;
  if (carrier === undefined || pipe === undefined || (pipe.top - carrier.bottom) * frame.k < NECK_FROM) return [];
  const { ink } = frame;
  const { x } = pipe;
  const half = Math.max(2.4, pipe.radius * frame.kx * 0.8);
  const top = frame.y(carrier.bottom) - 2;
  return [
    rect('neck', x - half, top, half * 2, frame.y(pipe.top) - top + 1, {
      fill: ink.metalPipe.mid,
      stroke: ink.metalPipe.edge,
      'stroke-width': 1,
    }),
  ];
}

/** Above a seal: pipe, tee and plug stand on the casing. */
function drawStandpipe({ tee, seal, plug }: TopParts, frame: SectionFrame): Shape[] {
  if (tee === undefined || seal === undefined) return [];
  const { ink, axis } = frame;
  const half = Math.max(4, tee.radius * frame.kx);
  const top = frame.y(plug?.top ?? tee.top);
  const base = frame.y(seal.top);
  return [
    rect('standpipe', axis - half * 0.7, Math.min(top, base - 12), half * 1.4, Math.max(12, base - top), {
      fill: ink.metalPipe.mid,
      stroke: ink.metalPipe.edge,
      'stroke-width': 1,
    }),
    rect(
      'tee',
      axis - half,
      frame.y((tee.top + tee.bottom) / 2) - Math.max(4, ((tee.bottom - tee.top) * frame.k) / 2),
      half * 2,
      Math.max(8, (tee.bottom - tee.top) * frame.k),
      { rx: 1.5, fill: ink.metalPipe.light, stroke: ink.metalPipe.edge, 'stroke-width': 1 },
    ),
  ];
}

/** Of its way to the house, where the line is broken. */
const BREAK_SHARE = 0.62;

/** The line to the house: across the ground it is not to scale, so it is broken once. */
function drawLine({ facts }: Solution, from: number, y: number, width: number, frame: SectionFrame): Shape {
  const { ink } = frame;
  const right = housePlace(y, frame).pipeX + 2;
  const tones = (facts.house.line ?? facts.dropPipe).material === 'PE' ? ink.pipeBody : ink.metalPipe;
  const d = polyline([
    [from, y],
    [right, y],
  ]);
  const shapes = [
    path('wall', d, { fill: 'none', stroke: tones.edge, 'stroke-width': width }),
    path('body', d, { fill: 'none', stroke: tones.mid, 'stroke-width': Math.max(1, width - 2.2) }),
    path('shine', d, { fill: 'none', stroke: tones.light, 'stroke-width': Math.max(0.8, width * 0.24) }),
  ];
  const room = right - from;
  if (room > 70) {
    // Clear of the signs, which stand beside the hole.
    const x = from + room * BREAK_SHARE;
    const gap = width / 2 + 3;
    for (const side of [0, 5]) {
      shapes.push(
        path(
          `break/${side === 0 ? 'left' : 'right'}`,
          polyline([
            [x + side - 3, y + gap],
            [x + side - 1, y + 1],
            [x + side + 1, y - 1],
            [x + side + 3, y - gap],
          ]),
          {
            fill: 'none',
            stroke: ink.paper,
            'stroke-width': 2.4,
          },
        ),
      );
    }
  }
  return group('buriedLine', shapes);
}
