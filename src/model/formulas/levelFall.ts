/** A pump that takes more than flows in: how the water falls, and when it is gone. */
import type { CubicMetres, CubicMetresPerSecond, Metres, Seconds, SquareMetres } from '../si.ts';
import type { BoreStretch } from '../solution.ts';
import { requireNotNegative } from './require.ts';

/** What the pump gives with the water at a depth. */
export interface PumpedAtLevel {
  readonly level: Metres;
  readonly flow: CubicMetresPerSecond;
  /** Pump or inflow goes on by another law from here down: no curve is laid across. */
  readonly bend?: boolean;
}

export interface FallMoment {
  readonly time: Seconds;
  readonly level: Metres;
  readonly pumpFlow: CubicMetresPerSecond;
  readonly inflow: CubicMetresPerSecond;
}

export interface LevelFall {
  /** Until the water stands at the lowest level. */
  readonly time: Seconds;
  /** Water that stood between the two levels. */
  readonly volume: CubicMetres;
  /** What the pump gives on average over `time`. */
  readonly meanPumpFlow: CubicMetresPerSecond;
  /** From the level at rest to the lowest. */
  readonly moments: readonly FallMoment[];
  /** At a time since the start; the lowest level from `time` on. */
  readonly levelAt: (time: Seconds) => Metres;
  /** What the pump takes at a time before `time`. */
  readonly pumpFlowAt: (time: Seconds) => CubicMetresPerSecond;
}

/**
 * Fall of the water in a bore that is pumped faster than it fills, from rest to the lowest level.
 *
 *     A(z) dz/dt = Q(z) - q(z - z0),   t = integral of A / (Q - q) dz from z0 to the lowest level
 *
 * A of the bore less the drop pipe, stretch by stretch; Q falls as the water does, q rises. Between two depths at which
 * Q was worked out Q - q is a straight line, which makes each piece a logarithm, and then a parabola laid through the
 * next depths too, whose bulge is counted to the first order. Nothing is laid across a bend.
 *
 * @param bore          stretches, top down
 * @param pipeDiameter  outside of the drop pipe [m]
 * @param pumped        Q at depths from the level at rest to the lowest level, rising [m³/s]; where the inflow or the
 *                      pump turns, as at a flow-limiting valve, that depth is one of them, and a bend
 * @param inflowAt      q at a drawdown below the level at rest [m³/s]
 * @returns  null where the well keeps up: at the lowest level as much flows in as is pumped, or more
 *
 * Range    quasi-steady: q is the inflow that belongs to the drawdown after some hours; at first the ground gives more
 * Error    none where Q and q are straight lines between bends; else under 0.01 % in time with twenty pieces, against
 *          small steps in time
 * Throws   RangeError when fewer than two depths are given, they do not rise, or the diameter is negative
 * Source   balance of volumes; a level Q gives V/(Q - q)
 */
export function levelFall(input: {
  readonly bore: readonly Pick<BoreStretch, 'top' | 'bottom' | 'insideRadius'>[];
  readonly pipeDiameter: Metres;
  readonly pumped: readonly PumpedAtLevel[];
  readonly inflowAt: (drawdown: Metres) => CubicMetresPerSecond;
}): LevelFall | null {
  const { bore, pipeDiameter, pumped, inflowAt } = input;
  requireNotNegative('levelFall', 'drop pipe diameter', pipeDiameter);
  const [first, last] = [pumped[0], pumped[pumped.length - 1]];
  if (first === undefined || last === undefined || !(last.level > first.level))
    throw new RangeError('levelFall: needs the pump’s flow at two depths or more, rising');
  const rest = first.level;
  if (!(last.flow > inflowAt(last.level - rest))) return null;

  const points = withJoints(pumped, bore).map(({ level, flow, bend }) => {
    const inflow = inflowAt(level - rest);
    return { level, pumpFlow: flow, inflow, surplus: flow - inflow, bend: bend === true };
  });
  const moments: FallMoment[] = [{ time: 0, level: rest, pumpFlow: first.flow, inflow: inflowAt(0) }];
  const pieces: Piece[] = [];
  let [time, volume, pumpedVolume] = [0, 0, 0];
  for (let i = 1; i < points.length; i++) {
    const [from, to] = [points[i - 1], points[i]] as [Point, Point];
    const area = freeArea(bore, (from.level + to.level) / 2, pipeDiameter);
    const piece = pieceOf(time, from, to, { area, bulge: bulgeAt(points, i) });
    pieces.push(piece);
    time += piece.lasts;
    volume += area * (to.level - from.level);
    pumpedVolume += pumpedIn(piece);
    moments.push({ time, level: to.level, pumpFlow: to.pumpFlow, inflow: to.inflow });
  }
  const end = time;
  const pieceAt = (at: Seconds) => pieces.find(({ begins, lasts }) => at < begins + lasts);
  return {
    time: end,
    volume,
    meanPumpFlow: end > 0 ? pumpedVolume / end : first.flow,
    moments,
    levelAt: (at) => {
      const piece = at >= end ? undefined : pieceAt(at);
      return piece === undefined ? last.level : levelIn(piece, Math.max(at - piece.begins, 0));
    },
    pumpFlowAt: (at) => {
      const piece = at >= end ? undefined : pieceAt(at);
      if (piece === undefined) return last.flow;
      const { from, to } = piece;
      const share = (levelIn(piece, Math.max(at - piece.begins, 0)) - from.level) / (to.level - from.level);
      return from.pumpFlow + share * (to.pumpFlow - from.pumpFlow);
    },
  };
}

/** What is known with the water at a depth. */
interface Point {
  readonly level: Metres;
  readonly pumpFlow: CubicMetresPerSecond;
  readonly inflow: CubicMetresPerSecond;
  readonly surplus: CubicMetresPerSecond;
  readonly bend: boolean;
}

/** Between two points. */
interface Piece {
  readonly begins: Seconds;
  readonly from: Point;
  readonly to: Point;
  readonly area: SquareMetres;
  readonly lasts: Seconds;
  /** `lasts` over what the straight line alone gives. */
  readonly stretched: number;
}

function pieceOf(
  begins: Seconds,
  from: Point,
  to: Point,
  { area, bulge }: { readonly area: SquareMetres; readonly bulge: number },
): Piece {
  const { surplus } = from;
  const high = to.level - from.level;
  const change = to.surplus - surplus;
  const perVolume = Math.abs(change) < LEVEL * surplus ? 1 / surplus : Math.log1p(change / surplus) / change;
  // 1/(line - b x(1 - x)) is 1/line + b x(1 - x)/line² in the first order, x the share of the way down.
  const more = (bulge * high * high * bulgeShare(change / surplus)) / (surplus * surplus);
  const stretched = Math.max(1 + more / perVolume, 0.5);
  return { begins, from, to, area, lasts: area * high * perVolume * stretched, stretched };
}

/** A change of the surplus by less than this share is none: the logarithm would only lose digits. */
const LEVEL = 1e-9;

/** Integral of x (1 - x) / (1 + r x)² over x from 0 to 1. */
function bulgeShare(r: number): number {
  // The closed form loses its digits as r goes to nothing.
  if (Math.abs(r) < 0.02) return 1 / 6 - r / 6 + (3 * r * r) / 20;
  return ((r + 2) * Math.log1p(r) - 2 * r) / (r * r * r);
}

/** Half the second derivative of the surplus by depth, over the piece that ends at a point: the mean of both sides. */
function bulgeAt(points: readonly Point[], end: number): number {
  const before = bendAt(points, end - 1);
  const after = bendAt(points, end);
  return before === null ? (after ?? 0) : after === null ? before : (before + after) / 2;
}

/** The same at a point, from it and its two neighbours; null at either end and at a bend. */
function bendAt(points: readonly Point[], i: number): number | null {
  const [left, here, right] = [points[i - 1], points[i], points[i + 1]];
  if (left === undefined || here === undefined || right === undefined || here.bend) return null;
  const above = (here.surplus - left.surplus) / (here.level - left.level);
  const below = (right.surplus - here.surplus) / (right.level - here.level);
  return (below - above) / (right.level - left.level);
}

/** Water that is pumped while it lasts: both flows go along with the surplus, whose sum over the time is the volume. */
function pumpedIn({ from, to, area, lasts }: Piece): CubicMetres {
  const change = to.surplus - from.surplus;
  if (Math.abs(change) < LEVEL * from.surplus) return (lasts * (from.pumpFlow + to.pumpFlow)) / 2;
  const drawn = area * (to.level - from.level) - from.surplus * lasts;
  return from.pumpFlow * lasts + ((to.pumpFlow - from.pumpFlow) / change) * drawn;
}

function levelIn({ from, to, area, stretched }: Piece, since: Seconds): Metres {
  if (!(area > 0)) return to.level;
  const { surplus } = from;
  const slope = (to.surplus - surplus) / (to.level - from.level);
  const fallen =
    Math.abs(slope) * (to.level - from.level) < LEVEL * surplus
      ? (surplus * since) / (area * stretched)
      : (surplus * Math.expm1((slope * since) / (area * stretched))) / slope;
  return Math.min(from.level + fallen, to.level);
}

/** The depths given, with those between them at which the bore changes. */
function withJoints(
  pumped: readonly PumpedAtLevel[],
  bore: readonly Pick<BoreStretch, 'top' | 'bottom'>[],
): readonly PumpedAtLevel[] {
  const joints = bore.flatMap(({ top, bottom }) => [top, bottom]);
  const all: PumpedAtLevel[] = [];
  for (const point of pumped) {
    const before = all[all.length - 1];
    if (before !== undefined) {
      if (point.level === before.level) continue;
      if (point.level < before.level) throw new RangeError('levelFall: the depths do not rise');
      const between = joints.filter((depth) => depth > before.level && depth < point.level).sort((a, b) => a - b);
      for (const level of new Set(between)) {
        const share = (level - before.level) / (point.level - before.level);
        all.push({ level, flow: before.flow + share * (point.flow - before.flow), bend: true });
      }
    }
    all.push(point);
  }
  return all;
}

/** Of the water surface at a depth; nothing where there is no bore or the pipe fills it. */
function freeArea(
  bore: readonly Pick<BoreStretch, 'top' | 'bottom' | 'insideRadius'>[],
  depth: Metres,
  pipeDiameter: Metres,
): SquareMetres {
  const stretch = bore.find(({ top, bottom }) => top <= depth && depth <= bottom);
  return stretch ? Math.max(Math.PI * (stretch.insideRadius ** 2 - pipeDiameter ** 2 / 4), 0) : 0;
}
