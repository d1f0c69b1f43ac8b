/** One detail from its window to its shapes: ground, well, rail, dimensions, marks and labels. The sheet crops it to the frame. */
import type { PartKind, Severity, Solution } from '../../model/solution.ts';
import type { Metres } from '../../model/si.ts';
import { drawMark } from '../mark.ts';
import { makePen } from '../parts/pen.ts';
import type { Pen } from '../parts/pen.ts';
import { tonesOf } from '../parts/tones.ts';
import { stroke } from '../parts/outline.ts';
import type { Shape } from '../scene.ts';
import { group, path, rect } from '../shapes.ts';
import type { HitPlace, MarkPlace } from '../view.ts';
import { calloutWidth, drawCallouts, severityInk } from './callouts.ts';
import type { Callout } from './callouts.ts';
import type { DetailFrame, DetailScene } from './contract.ts';
import { drawGround } from './ground.ts';
import { wordsFor } from './partWords.ts';
import { drawRail, RAIL_PX } from './rail.ts';
import { drilledRadius } from './hole.ts';
import { drawWell } from './wellScene.ts';
import type { Placed } from './stage.ts';
import { widthFactor } from './windows.ts';

/** A part that wants a label, and where its leader touches it: shares of its box. */
export interface Wanted {
  readonly key: string;
  readonly across: number;
  readonly down: number;
}

export interface DetailPlan {
  readonly topDepth: Metres;
  readonly bottomDepth: Metres;
  /** Beside the axis, what must have room left and right [m]. */
  readonly roomLeft: Metres;
  readonly roomRight: Metres;
  /** Fixed room besides, for what does not grow with widths [px]. */
  readonly sparePx: number;
  /** One scale both ways. */
  readonly trueProportion: boolean;
  readonly wanted: readonly Wanted[];
  /** Drawn over the well and under the labels. */
  readonly extra?: (context: DetailContext) => {
    readonly shapes: readonly Shape[];
    readonly callouts: readonly Callout[];
  };
}

export interface DetailContext {
  readonly solution: Solution;
  readonly frame: DetailFrame;
  readonly pen: Pen;
  readonly placed: readonly Placed[];
  /** Left edge of the labels [px]. */
  readonly labelsFrom: number;
  readonly severityOf: (key: string) => Severity | undefined;
}

const EDGE_PX = 6;
const LABELS_MOST = 0.47;
/** In a narrow frame the ground behind the labels is left without line work; in a wide one that would look cut off. */
const WIDE_PX = 420;
const LEADER_PX = 22;
export const MARK_PX = 22;

export function drawDetail(solution: Solution, frame: DetailFrame, plan: DetailPlan): DetailScene {
  const { x, y, width, height, ink, units } = frame;
  const topDepth = frame.frozen?.topDepth ?? plan.topDepth;
  const bottomDepth = frame.frozen?.bottomDepth ?? plan.bottomDepth;
  const down = height / (bottomDepth - topDepth);
  const faults = worstByPart(solution);
  const wanted = plan.wanted
    .filter(({ key }) => isWithin(solution, key, topDepth, bottomDepth))
    .map((want) => calloutFor(solution, frame, want, faults));
  const labelWidth = Math.min(calloutWidth(wanted), Math.round(width * LABELS_MOST));
  const labelsRight = x + width - EDGE_PX;
  const labelsFrom = labelsRight - labelWidth;
  const room = labelsFrom - LEADER_PX - (x + RAIL_PX) - plan.sparePx;
  const wide = plan.roomLeft + plan.roomRight;
  const factor = plan.trueProportion
    ? 1
    : (frame.frozen?.widthFactor ?? widthFactor(down, height, room, wide, solution.facts.dropPipe.outsideDiameter));
  const across = down * factor;
  // What is left over goes half to either side.
  const slack = Math.max(0, room + plan.sparePx - wide * across);
  const axis = x + RAIL_PX + plan.roomLeft * across + slack / 2;
  const pen = makePen({ axis, topY: y, top: topDepth, bottom: bottomDepth, across, down, tones: tonesOf[frame.theme] });
  const middleDepth = (topDepth + bottomDepth) / 2;
  const drilled = drilledRadius(solution, Math.max(middleDepth, 0.5));
  const box = { left: x + RAIL_PX, top: y, right: x + width, bottom: y + height };
  const ground = drawGround(solution, pen, ink, {
    box,
    holeLeft: pen.x(-drilled),
    holeRight: pen.x(drilled),
    labelsFrom: plan.trueProportion || width > WIDE_PX ? box.right : labelsFrom - 2,
  });
  const well = drawWell(solution, pen, ink, x + width);
  const placed = [...well.placed, ...frostPlace(solution, pen, box.left, labelsFrom)];
  const context: DetailContext = {
    solution,
    frame,
    pen,
    placed,
    labelsFrom,
    severityOf: (key) => faults.get(key)?.severity,
  };
  const extra = plan.extra?.(context);
  const callouts = [...touching(wanted, placed, box, labelsFrom), ...(extra?.callouts ?? [])];
  const { shapes: markShapes, marks } = drawMarks(context, box);
  const shapes = [
    rect('paper', x, y, width, height, { fill: ink.paper }),
    group('ground', ground),
    group('well', well.shapes, { 'stroke-width': 1.1, 'stroke-linejoin': 'round' }),
    ...(extra?.shapes ?? []),
    ...drawHeld(frame, pen, box),
    ...drawLit(context),
    ...faultBoxes(context),
    drawRail(pen, ink, { x, y, height, units }),
    ...drawCallouts(
      callouts,
      {
        left: labelsFrom,
        right: labelsRight,
        top: y + EDGE_PX,
        bottom: y + height - EDGE_PX,
        elbow: labelsFrom - LEADER_PX + 4,
      },
      ink,
    ),
    group('marks', markShapes),
  ];
  return { topDepth, bottomDepth, widthFactor: factor, k: down, shapes, marks, hits: hitsOf(placed, box, frame) };
}

interface Fault {
  readonly severity: Severity;
  readonly amount: string;
  readonly number: number;
}

/** Findings come worst first, so the first one of a part is its worst. */
function worstByPart({ findings }: Solution): Map<string, Fault> {
  const worst = new Map<string, Fault>();
  findings.forEach(({ part, severity, amount }, i) => {
    if (!worst.has(part)) worst.set(part, { severity, amount, number: i + 1 });
  });
  return worst;
}

const FAULT_WEIGHT: Readonly<Record<Severity, number>> = { danger: 8, warning: 5, note: 3 };

/** A label that waits for its part's place. */
interface Waiting extends Callout {
  readonly want: Wanted;
}

function calloutFor(solution: Solution, frame: DetailFrame, want: Wanted, faults: ReadonlyMap<string, Fault>): Waiting {
  const { key } = want;
  const { name, note, weight, short } = wordsFor(solution, frame.units, key, key.split('/')[0] ?? key);
  const fault = faults.get(key);
  const lit = isLit(solution, frame, key);
  // Written out, not spread: this runs for every label of every frame that is dragged.
  if (fault === undefined)
    return { key, want, x: 0, y: 0, name, short, note, weight, severity: undefined, number: undefined, lit };
  const { severity, number } = fault;
  // A note leaves the label's own figure; what is wrong takes its place.
  const said = severity === 'note' || fault.amount === '' ? note : fault.amount;
  return {
    key,
    want,
    x: 0,
    y: 0,
    name,
    short,
    note: said,
    weight: Math.max(weight, FAULT_WEIGHT[severity]),
    severity,
    number,
    lit,
  };
}

/** `lit` is the key of a part or the number of a finding. */
function isLit({ findings }: Solution, { lit }: DetailFrame, key: string): boolean {
  return lit !== undefined && (lit === key || findings[Number(lit) - 1]?.part === key);
}

/** Could this part show between these depths? What is no part of the string is asked for when all is placed. */
function isWithin({ parts, levels, values, bore }: Solution, key: string, top: Metres, bottom: Metres): boolean {
  const part = parts.find((each) => each.key === key);
  if (part !== undefined) return part.bottom > top && part.top < bottom;
  const level =
    key === 'staticLevel'
      ? levels.static
      : key === 'pumpingLevel'
        ? levels.pumping
        : key === 'frost'
          ? values.frostDepth
          : undefined;
  if (level !== undefined) return level !== null && level > top && level < bottom && (key !== 'frost' || level > 0);
  return key === 'grout' || bore.some((each) => each.kind === key && each.bottom > top && each.top < bottom);
}

/** Labels with the point where their leader touches the part. */
function touching(
  waiting: readonly Waiting[],
  placed: readonly Placed[],
  box: { readonly left: number; readonly top: number; readonly bottom: number },
  labelsFrom: number,
): Callout[] {
  const callouts: Callout[] = [];
  for (const each of waiting) {
    const part = placed.find(({ part: key }) => key === each.key);
    if (part === undefined) continue;
    const top = Math.max(part.top, box.top);
    const bottom = Math.min(part.bottom, box.bottom);
    if (bottom <= top) continue;
    const { across, down } = each.want;
    const x = Math.max(Math.min(part.left + (part.right - part.left) * across, labelsFrom - LEADER_PX), box.left + 4);
    const y = Math.min(Math.max(top + (bottom - top) * down, box.top + 8), box.bottom - 8);
    const { key, name, short, note, weight, severity, number, lit } = each;
    callouts.push({ key, x, y, name, short, note, weight, severity, number, lit });
  }
  return callouts;
}

function frostPlace({ values }: Solution, pen: Pen, left: number, right: number): Placed[] {
  const depth = values.frostDepth;
  if (depth === null || depth <= 0 || depth <= pen.top || depth >= pen.bottom) return [];
  return [
    { part: 'frost', kind: 'frost', left, right: right - LEADER_PX, top: pen.y(depth) - 5, bottom: pen.y(depth) + 5 },
  ];
}

/** A mark at every fault that this window shows, left of the part; two at one part stand side by side. */
function drawMarks(
  { solution, frame, placed, pen }: DetailContext,
  box: { readonly left: number; readonly top: number; readonly right: number; readonly bottom: number },
): { shapes: Shape[]; marks: MarkPlace[] } {
  const marks: MarkPlace[] = [];
  const shapes: Shape[] = [];
  const edge = MARK_PX / 2 + 2;
  solution.findings.forEach((finding, i) => {
    const part = placeOf(placed, finding.part, finding.partKind);
    // A fault with a depth is marked where it is; the rope's or the cable's own run is long.
    if (finding.depth !== null && (finding.depth < pen.top || finding.depth > pen.bottom)) return;
    if (part === undefined || part.bottom < box.top + 4 || part.top > box.bottom - 4) return;
    const top = Math.max(part.top, box.top);
    const bottom = Math.min(part.bottom, box.bottom);
    const y = Math.min(Math.max((top + bottom) / 2, box.top + edge), box.bottom - edge);
    let x = Math.max(part.left - MARK_PX * 0.75, box.left + edge);
    const taken = (): boolean => marks.some((each) => Math.hypot(each.x - x, each.y - y) < MARK_PX + 1);
    while (taken() && x - MARK_PX - 2 > box.left + edge) x -= MARK_PX + 2;
    while (taken() && x < box.right - edge) x += MARK_PX + 2;
    const number = i + 1;
    marks.push({ number, x, y, size: MARK_PX, view: frame.view });
    shapes.push(drawMark({ number, severity: finding.severity, x, y, size: MARK_PX, ink: frame.ink }));
  });
  return { shapes, marks };
}

function placeOf(placed: readonly Placed[], key: string, kind: PartKind): Placed | undefined {
  return placed.find(({ part }) => part === key) ?? placed.find((each) => each.kind === kind);
}

/** A dashed box round what is in danger or warned of. */
function faultBoxes({ solution, frame, placed, pen }: DetailContext): Shape[] {
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
const BOXED: ReadonlySet<PartKind> = new Set([
  'pitlessAdapter',
  'motor',
  'intake',
  'pump',
  'checkValve',
  'torqueArrestor',
  'splice',
  'insertFitting',
  'clamp',
  'seal',
  'cap',
]);

function drawLit({ solution, frame, placed }: DetailContext): Shape[] {
  if (frame.lit === undefined) return [];
  const part = placed.find((each) => isLit(solution, frame, each.part));
  if (part === undefined) return [];
  const { note } = frame.ink;
  return [
    rect('lit', part.left - 3, part.top - 3, part.right - part.left + 6, part.bottom - part.top + 6, {
      fill: note,
      'fill-opacity': 0.14,
      rx: 4,
      stroke: note,
      'stroke-width': 2,
    }),
  ];
}

/** Where the dragged thing started. */
function drawHeld(
  { held, ink }: DetailFrame,
  pen: Pen,
  box: { readonly left: number; readonly right: number },
): Shape[] {
  if (held === undefined || held.start < pen.top || held.start > pen.bottom) return [];
  const y = pen.y(held.start);
  return [
    path('start', stroke(box.left, y, box.right, y), {
      stroke: ink.hair,
      'stroke-width': 1.2,
      'stroke-dasharray': '3 3',
    }),
  ];
}

function hitsOf(
  placed: readonly Placed[],
  box: { readonly left: number; readonly top: number; readonly right: number; readonly bottom: number },
  { view }: DetailFrame,
): HitPlace[] {
  const hits: HitPlace[] = [];
  for (const { part, kind, left, right, top, bottom } of placed) {
    const x = Math.max(left, box.left);
    const y = Math.max(top, box.top);
    const width = Math.min(right, box.right) - x;
    const height = Math.min(bottom, box.bottom) - y;
    if (width > 0 && height > 0) hits.push({ part, kind, x, y, width, height, view });
  }
  return hits;
}
