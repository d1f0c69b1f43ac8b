/**
 * The string as it reads at the section's scale: pipe, cable and rope at their true run, the pump's body, and small
 * parts as symbols. Parts closer together than a symbol merge into one; the detail that shows them names it.
 */
import type { Metres } from '../../model/si.ts';
import type { Facts } from '../../model/facts.ts';
import type { PlacedPart, Solution } from '../../model/solution.ts';
import { stringAxisOf, type StringAxis } from '../parts/stringAxis.ts';
import { Pen } from '../hatch/pen.ts';
import { SMALL, slack, SYMBOL } from '../looks.ts';
import type { Shape } from '../scene.ts';
import { digits, group, path, polyline, rect, roundLine, type Point } from '../shapes.ts';
import type { HitPlace } from '../view.ts';
import { isSeen, within, type SectionFrame } from './frame.ts';
import { drawProbe } from './probe.ts';
import { NECK_FROM, SPOOL_PX } from './topWorks.ts';

export interface StringDrawing {
  readonly shapes: readonly Shape[];
  readonly hits: readonly HitPlace[];
  /** True extents of parts that a symbol stands for: ticks on the rail. */
  readonly trueExtents: readonly { readonly key: string; readonly top: Metres; readonly bottom: Metres }[];
  /** Keys of the small parts that stand clear of one another. */
  readonly clear: readonly string[];
}

export function drawString(solution: Solution, frame: SectionFrame): StringDrawing {
  const run = stringAxisOf(solution);
  const partOf = new Map(solution.parts.map((part) => [part.key, part]));
  const pump = pumpBody(solution, frame);
  const small = smallParts(solution, frame, pump.top);
  const pipe = partOf.get('dropPipe');
  const probe = probeOf(solution, run, pump, frame);
  const shapes: Shape[] = [];
  const rope = partOf.get('rope');
  const cable = partOf.get('cable');
  const beside = besidesPipe(pipe, run, frame);
  if (rope !== undefined) shapes.push(drawRope(rope, run, beside, frame));
  if (cable !== undefined) shapes.push(drawCable(cable, run, beside, pump, frame));
  shapes.push(...probe.wires);
  if (pipe !== undefined) {
    const carrier = carriedBy(pipe, partOf.get('pitlessAdapter'), solution.facts, frame);
    shapes.push(drawPipe(pipe, solution.facts, run, carrier, pump.top, frame));
  }
  shapes.push(
    ...drawTies(solution.parts, run, frame),
    ...small.map((part) => smallSymbol(part, run, beside, frame)),
    pump.shape,
    ...probe.body,
  );
  const hits: HitPlace[] = [
    ...(pipe === undefined ? [] : [hitOf(pipe, 5, frame)]),
    ...small.map((part) => hitOf(part, frame.holeHalf * 0.7, frame)),
    pump.hit,
    ...probe.hits,
  ];
  const trueExtents = pump.symbol ? [{ key: 'pump', top: pump.trueTop, bottom: pump.trueBottom }] : [];
  return { shapes: [group('string', shapes)], hits, trueExtents, clear: small.map(({ key }) => key) };
}

interface ProbeDrawing {
  /** Behind the pipe. */
  readonly wires: readonly Shape[];
  readonly body: readonly Shape[];
  readonly hits: readonly HitPlace[];
}

function probeOf({ parts, facts }: Solution, run: StringAxis, pump: PumpBody, frame: SectionFrame): ProbeDrawing {
  const probe = parts.find(({ kind }) => kind === 'probe');
  if (probe === undefined) return { wires: [], body: [], hits: [] };
  const pipe = parts.find(({ kind }) => kind === 'dropPipe');
  const beside = {
    pipeHalf: pipe === undefined ? 0 : pipeWidth(pipe, frame) / 2,
    pumpHalf: pump.hit.width / 2,
    pumpTop: pump.top,
    pumpBottom: pump.hit.y + pump.hit.height,
  };
  const { shapes, hit } = drawProbe(probe, -facts.well.casingHeight, run, beside, frame);
  return { wires: shapes.slice(0, 1), body: shapes.slice(1), hits: hit === null ? [] : [hit] };
}

/** The stretch of a part that a window leaves; the whole of it where the whole well is shown. */
function inFrame({ top, bottom }: PlacedPart, { cut, topDepth, bottomDepth }: SectionFrame): [Metres, Metres] {
  return [cut.top ? Math.max(top, topDepth) : top, cut.bottom ? Math.min(bottom, bottomDepth) : bottom];
}

/** Sampled finely where the pipe drifts, by its ends where it hangs straight. */
function runPoints(
  offset: (depth: Metres) => Metres,
  top: Metres,
  bottom: Metres,
  straightFrom: Metres,
  frame: SectionFrame,
): Point[] {
  const points: Point[] = [];
  if (bottom <= top) return points;
  const drift = Math.min(bottom, straightFrom);
  if (drift > top) {
    const steps = Math.max(2, Math.min(28, Math.round(((drift - top) * frame.k) / 3)));
    for (let i = 0; i < steps; i++) points.push(at(top + ((drift - top) * i) / steps));
    points.push(at(drift));
  } else points.push(at(top));
  if (bottom > drift) points.push(at(bottom));
  return bent(points);
  function at(depth: Metres): Point {
    return [frame.x(offset(depth)), frame.y(depth)];
  }
}

/** Without the points that lie on the way from the one before to the next: a run hangs straight for most of its length. */
function bent(points: readonly Point[]): Point[] {
  const kept: Point[] = [];
  points.forEach((point, i) => {
    const before = kept[kept.length - 1];
    const after = points[i + 1];
    if (before === undefined || after === undefined) return kept.push(point);
    const off = (point[0] - before[0]) * (after[1] - before[1]) - (point[1] - before[1]) * (after[0] - before[0]);
    const far = Math.abs(off) > 0.05 * Math.hypot(after[0] - before[0], after[1] - before[1]);
    return far ? kept.push(point) : 0;
  });
  return kept;
}

const pipeWidth = ({ radius }: PlacedPart, { kx }: SectionFrame): number => Math.max(6, 2 * radius * kx);

/** Where the pipe turns into a spool that is drawn as a symbol, larger than it is; null where the scale shows the way between. */
function carriedBy(
  pipe: PlacedPart,
  adapter: PlacedPart | undefined,
  { well }: Facts,
  frame: SectionFrame,
): Point | null {
  if (adapter === undefined || !isSeen(frame, pipe.top) || (pipe.top - adapter.bottom) * frame.k >= NECK_FROM)
    return null;
  const wall = frame.x((well.casings[0]?.insideDiameter ?? 0) / 2);
  return [wall - SPOOL_PX + 1, frame.y((adapter.top + adapter.bottom) / 2)];
}

function drawPipe(
  pipe: PlacedPart,
  facts: Facts,
  run: StringAxis,
  carrier: Point | null,
  pumpTop: number,
  frame: SectionFrame,
): Shape {
  const { ink } = frame;
  const width = pipeWidth(pipe, frame);
  const [top, bottom] = inFrame(pipe, frame);
  const points = runPoints((depth) => run.pipe(depth), top, bottom, run.centredFrom, frame);
  const first = points[0];
  if (carrier !== null && first !== undefined && first[0] < carrier[0]) points.unshift(carrier);
  // The last inches of nipple and valve are merged into the pump's symbol: the pipe is drawn down to it.
  if (bottom === pipe.bottom) points.push([frame.x(0), pumpTop]);
  const d = new Pen().through(points).path;
  const tones = facts.dropPipe.material === 'PE' ? ink.pipeBody : ink.metalPipe;
  return group('dropPipe', [
    path('wall', d, roundLine(tones.edge, width)),
    path('body', d, roundLine(tones.mid, Math.max(1, width - 2.4))),
    path('shine', d, roundLine(tones.light, Math.max(1, width * 0.24))),
  ]);
}

/** Cable and rope never nearer to the pipe than could be seen, however wide it is drawn. */
type Beside = (depth: Metres, offset: Metres, over: number) => Metres;

const CABLE_PX = 2;
/** From the pipe's edge to the middle of the cable, and of the rope beyond it [px]. */
const CABLE_OFF = 3;
const ROPE_OFF = 7.5;

function besidesPipe(pipe: PlacedPart | undefined, run: StringAxis, frame: SectionFrame): Beside {
  const half = pipe === undefined ? 0 : pipeWidth(pipe, frame) / 2;
  return (depth, offset, over) => Math.min(offset, run.pipe(depth) - (half + over) / frame.kx);
}

/** Down to the pump, and where this is drawn slimmer than the cable hangs, along it to the motor's head. */
function drawCable(
  cable: PlacedPart,
  run: StringAxis,
  beside: Beside,
  { hit, top: pumpTop, intake }: PumpBody,
  frame: SectionFrame,
): Shape {
  const offset = (depth: Metres) => beside(depth, run.cable(depth), CABLE_OFF);
  const [top, bottom] = inFrame(cable, frame);
  const points = runPoints(offset, top, bottom, run.centredFrom, frame);
  const last = points[points.length - 1];
  if (bottom === cable.bottom && last !== undefined && last[1] <= pumpTop + 1) {
    const side = hit.x - 1;
    if (last[0] < side) {
      points[points.length - 1] = [last[0], last[1] - (side - last[0])];
      points.push([side, pumpTop + 2], [side, intake]);
    } else points.push([last[0], pumpTop + 1]);
  }
  return path('cable', new Pen().through(points).path, roundLine(frame.ink.wire, CABLE_PX));
}

function drawRope(rope: PlacedPart, run: StringAxis, beside: Beside, frame: SectionFrame): Shape {
  const offset = (depth: Metres) => beside(depth, run.rope(depth), ROPE_OFF);
  const d = new Pen().through(runPoints(offset, ...inFrame(rope, frame), run.centredFrom, frame)).path;
  return path('rope', d, { fill: 'none', stroke: frame.ink.rope, 'stroke-width': 1.8, 'stroke-dasharray': '4 1.6' });
}

function drawTies(parts: readonly PlacedPart[], run: StringAxis, frame: SectionFrame): Shape[] {
  const ties = parts.filter((part) => part.kind === 'tie');
  const bands = new Pen();
  let last = Infinity;
  // From the pump up, as they are numbered, so that the ones kept stay while the top moves.
  for (const tie of ties) {
    const middle = (tie.top + tie.bottom) / 2;
    const y = frame.y(middle);
    if (last - y < frame.looks.tieGap) continue;
    last = y;
    if (!isSeen(frame, middle)) continue;
    const x = frame.x(run.pipe(middle));
    const half = Math.max(4, tie.radius * frame.kx) + 1;
    bands.stroke(x - half - 5, y, x + half, y);
  }
  return bands.path === '' ? [] : [path('ties', bands.path, { stroke: frame.ink.tape, 'stroke-width': 2.4 })];
}

interface PumpBody {
  readonly shape: Shape;
  readonly hit: HitPlace;
  /** y where the symbol begins. */
  readonly top: number;
  /** y of the intake. */
  readonly intake: number;
  readonly symbol: boolean;
  readonly trueTop: Metres;
  readonly trueBottom: Metres;
}

/** Pump, intake and motor at true depths, or one symbol in their middle where they would be shorter than it. */
function pumpBody({ parts, facts }: Solution, frame: SectionFrame): PumpBody {
  const trueTop = facts.pump.setting - facts.pump.intakeToDischarge;
  const trueBottom = facts.pump.setting + facts.pump.intakeToMotorBottom;
  const symbol = !frame.looks.pump;
  const middle = frame.y((trueTop + trueBottom) / 2);
  const top = symbol ? middle - SYMBOL / 2 : frame.y(trueTop);
  const bottom = symbol ? middle + SYMBOL / 2 : frame.y(trueBottom);
  const half = Math.max(5, (facts.pump.diameter / 2) * frame.kx);
  const left = frame.axis - half;
  const { ink } = frame;
  const intake = symbol ? middle : frame.y(facts.pump.setting);
  const ring = Math.min(4, Math.max(2, (bottom - top) * 0.12));
  const shroud = parts.find((part) => part.kind === 'shroud');
  const shapes = [
    ...body('pump', left, top, half * 2, intake - ring / 2 - top, ink.pumpBody),
    ...body('motor', left, intake + ring / 2, half * 2, bottom - intake - ring / 2, ink.motorBody),
    rect('intake', left, intake - ring / 2, half * 2, ring, { fill: ink.rubber.dark }),
    rect('outline', left, top, half * 2, bottom - top, {
      rx: 2,
      fill: 'none',
      stroke: ink.pumpBody.edge,
      'stroke-width': 1.2,
      ...(symbol ? { 'stroke-dasharray': '3 2' } : {}),
    }),
  ];
  if (shroud !== undefined && !symbol) {
    const wide = shroud.radius * frame.kx;
    shapes.push(
      path(
        'shroud',
        polyline([
          [frame.axis - wide, frame.y(shroud.bottom)],
          [frame.axis - wide, frame.y(shroud.top)],
          [frame.axis + wide, frame.y(shroud.top)],
          [frame.axis + wide, frame.y(shroud.bottom)],
        ]),
        { fill: 'none', stroke: ink.casing, 'stroke-width': 1.2 },
      ),
    );
  }
  const hit: HitPlace = {
    part: 'pump',
    kind: 'pump',
    x: left,
    y: top,
    width: half * 2,
    height: bottom - top,
    view: 'O',
  };
  return { shape: group('pumpBody', shapes), hit, top, intake, symbol, trueTop, trueBottom };
}

/** A round body as three flat strips: a highlight left of the middle, a shade at the right. */
function body(
  key: string,
  x: number,
  y: number,
  width: number,
  height: number,
  tones: SectionFrame['ink']['pumpBody'],
): Shape[] {
  return [
    rect(`${key}/body`, x, y, width, height, { rx: 2, fill: tones.mid }),
    rect(`${key}/light`, x + width * 0.16, y, width * 0.2, height, { fill: tones.light }),
    rect(`${key}/shade`, x + width * 0.76, y, width * 0.24, height, { fill: tones.dark }),
  ];
}

/** Small parts that stand clear of each other and of the pump, from the pump up; the others are merged into what is below. */
function smallParts({ parts }: Solution, frame: SectionFrame, pumpTop: number): PlacedPart[] {
  const { joints, clear: before } = frame.looks;
  const small = parts
    .filter((part) => SMALL.includes(part.kind) && part.key !== 'coupling/top' && (part.kind !== 'coupling' || joints))
    .sort((a, b) => b.bottom - a.bottom);
  const clear: PlacedPart[] = [];
  let lastMiddle = pumpTop;
  let lastHalf = 0;
  for (const part of small) {
    const half = Math.max(SYMBOL, (part.bottom - part.top) * frame.k) / 2;
    const middle = frame.y((part.top + part.bottom) / 2);
    // What stood clear last may come a little closer before it is merged.
    const least = (lastHalf + half) * slack(before === null ? undefined : before.includes(part.key));
    if (lastMiddle - middle < least) continue;
    if (isSeen(frame, part.bottom) || isSeen(frame, part.top)) clear.push(part);
    lastMiddle = middle;
    lastHalf = half;
  }
  return clear;
}

function smallSymbol(part: PlacedPart, run: StringAxis, beside: Beside, frame: SectionFrame): Shape {
  const depth = (part.top + part.bottom) / 2;
  const y = frame.y(depth);
  const x = frame.x(run.pipe(depth));
  const tall = Math.max(SYMBOL, (part.bottom - part.top) * frame.k);
  const pipe = Math.max(4, 0.021 * frame.kx);
  const { ink } = frame;
  const dashed = frame.looks.toScale.includes(part.kind) ? {} : { 'stroke-dasharray': '3 2' };
  if (part.kind === 'checkValve') {
    const half = Math.max(6, part.radius * frame.kx);
    const arrow: Point[] = [
      [x - 2.6, y + 1.5],
      [x, y - 2.5],
      [x + 2.6, y + 1.5],
    ];
    return group(part.key, [
      rect('body', x - half, y - tall / 2, half * 2, tall, {
        rx: 2,
        fill: ink.brass.mid,
        stroke: ink.brass.edge,
        'stroke-width': 1,
        ...dashed,
      }),
      path('arrow', polyline(arrow), { fill: 'none', stroke: ink.brass.edge, 'stroke-width': 1.6 }),
    ]);
  }
  if (part.kind === 'torqueArrestor' || part.kind === 'guard') {
    const half = part.radius * frame.kx - 1;
    const arms = `M${digits(frame.axis - half)} ${digits(y)}Q${digits(frame.axis - half)} ${digits(y - tall / 2)} ${digits(x)} ${digits(y - tall / 2)}T${digits(frame.axis + half)} ${digits(y)}Q${digits(frame.axis + half)} ${digits(y + tall / 2)} ${digits(x)} ${digits(y + tall / 2)}T${digits(frame.axis - half)} ${digits(y)}Z`;
    return path(part.key, arms, { fill: 'none', stroke: ink.tape, 'stroke-width': part.kind === 'guard' ? 1.4 : 2.2 });
  }
  if (part.kind === 'splice') {
    const cableX = frame.x(beside(depth, run.cable(depth), CABLE_OFF));
    return rect(part.key, cableX - 2.4, y - tall / 2, 4.8, tall, { rx: 2, fill: ink.tape });
  }
  return rect(part.key, x - pipe * 1.4, y - Math.min(tall, 5) / 2, pipe * 2.8, Math.min(tall, 5), {
    fill: ink.steel.mid,
    stroke: ink.steel.edge,
    'stroke-width': 0.8,
  });
}

function hitOf(part: PlacedPart, half: number, frame: SectionFrame): HitPlace {
  const top = within(frame, frame.y(part.top));
  const bottom = within(frame, frame.y(part.bottom));
  const tall = Math.max(SYMBOL, bottom - top);
  const y = bottom - top < SYMBOL ? (top + bottom - SYMBOL) / 2 : top;
  return { part: part.key, kind: part.kind, x: frame.axis - half, y, width: half * 2, height: tall, view: 'O' };
}
