/** A pump that takes more than flows in: how the water falls, and when it is gone. */
import type { CubicMetres, CubicMetresPerSecond, Metres, Seconds, SquareMetres } from '../si.ts';
import type { BoreStretch } from '../solution.ts';
import { requireNotNegative } from './require.ts';

/** What the pump gives with the water at a depth. */
export interface PumpedAtLevel {
  readonly level: Metres;
  readonly flow: CubicMetresPerSecond;
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
  /** From the level at rest to the lowest; between two moments flows go in a straight line with the level. */
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
 * Q was worked out both are taken as straight lines, which makes each piece a logarithm.
 *
 * @param bore          stretches, top down
 * @param pipeDiameter  outside of the drop pipe [m]
 * @param pumped        Q at depths from the level at rest to the lowest level, rising [m³/s]
 * @param inflowAt      q at a drawdown below the level at rest [m³/s]
 * @returns  null where the well keeps up: at the lowest level as much flows in as is pumped, or more
 *
 * Range    quasi-steady: q is the inflow that belongs to the drawdown after some hours; at first the ground gives more
 * Error    that of the straight pieces: under 0.2 % in time with twenty of them
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

  const moments: FallMoment[] = [];
  const pieces: Piece[] = [];
  let [time, volume, pumpedVolume] = [0, 0, 0];
  for (const { level, flow } of withJoints(pumped, bore)) {
    const now = { level, pumpFlow: flow, inflow: inflowAt(level - rest) };
    const before = moments[moments.length - 1];
    if (before !== undefined) {
      const piece = pieceOf(before, now, freeArea(bore, (before.level + level) / 2, pipeDiameter));
      pieces.push(piece);
      time += piece.lasts;
      volume += piece.area * (level - before.level);
      pumpedVolume += piece.lasts * ((before.pumpFlow + flow) / 2);
    }
    moments.push({ time, ...now });
  }
  const end = time;
  const pieceAt = (at: Seconds) => pieces.find(({ from, lasts }) => at < from.time + lasts);
  return {
    time: end,
    volume,
    meanPumpFlow: end > 0 ? pumpedVolume / end : first.flow,
    moments,
    levelAt: (at) => {
      const piece = at >= end ? undefined : pieceAt(at);
      return piece === undefined ? last.level : levelIn(piece, Math.max(at - piece.from.time, 0));
    },
    pumpFlowAt: (at) => {
      const piece = at >= end ? undefined : pieceAt(at);
      if (piece === undefined) return last.flow;
      const { from, to } = piece;
      const share = (levelIn(piece, Math.max(at - from.time, 0)) - from.level) / (to.level - from.level);
      return from.pumpFlow + share * (to.pumpFlow - from.pumpFlow);
    },
  };
}

/** Between two moments: the surplus of the pump goes in a straight line with the level. */
interface Piece {
  readonly from: FallMoment;
  readonly to: Omit<FallMoment, 'time'>;
  readonly area: SquareMetres;
  readonly lasts: Seconds;
}

function pieceOf(from: FallMoment, to: Piece['to'], area: SquareMetres): Piece {
  const surplus = from.pumpFlow - from.inflow;
  const change = to.pumpFlow - to.inflow - surplus;
  const perVolume = Math.abs(change) < LEVEL * surplus ? 1 / surplus : Math.log1p(change / surplus) / change;
  return { from, to, area, lasts: area * (to.level - from.level) * perVolume };
}

/** A change of the surplus by less than this share is none: the logarithm would only lose digits. */
const LEVEL = 1e-9;

function levelIn({ from, to, area }: Piece, since: Seconds): Metres {
  if (!(area > 0)) return to.level;
  const surplus = from.pumpFlow - from.inflow;
  const slope = (to.pumpFlow - to.inflow - surplus) / (to.level - from.level);
  const fallen =
    Math.abs(slope) * (to.level - from.level) < LEVEL * surplus
      ? (surplus * since) / area
      : (surplus * Math.expm1((slope * since) / area)) / slope;
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
        all.push({ level, flow: before.flow + share * (point.flow - before.flow) });
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
