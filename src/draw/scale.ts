/** Depths to pixels, and the ticks beside them. */
import type { Metres } from '../model/si.ts';
import { feet, toFeet } from '../model/units.ts';
import type { View } from './view.ts';

export interface DepthScale {
  readonly topDepth: Metres;
  readonly bottomDepth: Metres;
  /** px per metre. */
  readonly k: number;
  readonly y: (depth: Metres) => number;
  readonly depthAt: (y: number) => Metres;
}

/** Linear, without a break: equal depths are equal lengths on the sheet. */
export function depthScale(topDepth: Metres, bottomDepth: Metres, top: number, bottom: number): DepthScale {
  const k = (bottom - top) / (bottomDepth - topDepth);
  return {
    topDepth,
    bottomDepth,
    k,
    y: (depth) => top + k * (depth - topDepth),
    depthAt: (y) => topDepth + (y - top) / k,
  };
}

export interface Tick {
  readonly depth: Metres;
  /** Bare figure in the reader's unit; empty at a minor tick. */
  readonly words: string;
}

/** Round depths in the reader's unit, about `spacing` px apart, with minor ones between where there is room. */
export function depthTicks(scale: DepthScale, units: View['units'], spacing: number): Tick[] {
  const [toUnit, fromUnit] = units === 'us' ? [toFeet, feet] : [same, same];
  const from = toUnit(scale.topDepth);
  const to = toUnit(scale.bottomDepth);
  const count = Math.max(2, ((scale.bottomDepth - scale.topDepth) * scale.k) / spacing);
  // Half a foot and a decimetre are the finest steps with a figure: nobody measures a well closer from its top.
  const major = roundSteps(from, to, Math.min(count, (to - from) / FINEST[units]));
  const named = new Set(major);
  const step = (major[1] ?? to) - (major[0] ?? from);
  const minor = step * scale.k * fromUnit(1) >= 24 ? between(major, step, from, to) : major;
  return minor.map((value) => ({ depth: fromUnit(value), words: named.has(value) ? String(value) : '' }));
}

/**
 * Whole steps of one, two or five, of tens or of tenths, from end to end of a stretch.
 *
 * @param count  as many as that, or as near to it as round steps come
 */
export function roundSteps(from: number, to: number, count: number): number[] {
  const wanted = (to - from) / count;
  const tens = Math.floor(Math.log10(wanted));
  const size = wanted / 10 ** tens;
  const step = size >= Math.sqrt(50) ? 10 : size >= Math.sqrt(10) ? 5 : size >= Math.sqrt(2) ? 2 : 1;
  // Below one, steps are told by how many make a whole: a tenth is no double, and ten is.
  const at = tens < 0 ? (i: number) => i / (10 ** -tens / step) : (i: number) => i * 10 ** tens * step;
  const steps: number[] = [];
  let i = Math.floor(from / at(1));
  while (at(i) < from) i++;
  for (; at(i) <= to; i++) steps.push(at(i));
  return steps;
}

/** The ticks with finer ones between: fifths of a five, halves of a one or a two. */
function between(major: readonly number[], step: number, from: number, to: number): number[] {
  const parts = Math.round(step / 10 ** Math.floor(Math.log10(step) + 1e-9)) === 5 ? 5 : 2;
  const first = major[0] ?? from;
  const start = Math.ceil(((from - first) / step) * parts - 1e-9);
  const end = Math.floor(((to - first) / step) * parts + 1e-9);
  const ticks: number[] = [];
  for (let i = start; i <= end; i++) {
    const at = i % parts === 0 ? major[i / parts] : undefined;
    ticks.push(at ?? first + (i * step) / parts);
  }
  return ticks;
}

const FINEST = { us: 0.5, metric: 0.1 } as const;

function same(value: number): number {
  return value;
}

/** Two significant figures, so that a caption can state the factor that was drawn with. */
export function roundFactor(factor: number): number {
  const size = 10 ** (Math.floor(Math.log10(factor)) - 1);
  return Math.round(factor / size) * size;
}
