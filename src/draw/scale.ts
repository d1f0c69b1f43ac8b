/** Depths to pixels, and the ticks beside them. */
import { scaleLinear } from 'd3-scale';
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
  const axis = scaleLinear().domain([from, to]);
  const major = axis.ticks(count);
  const named = new Set(major);
  const step = (major[1] ?? to) - (major[0] ?? from);
  const minor = step * scale.k * fromUnit(1) >= 24 ? axis.ticks(count * 2) : major;
  return minor.map((value) => ({ depth: fromUnit(value), words: named.has(value) ? String(value) : '' }));
}

function same(value: number): number {
  return value;
}

/** Two significant figures, so that a caption can state the factor that was drawn with. */
export function roundFactor(factor: number): number {
  const size = 10 ** (Math.floor(Math.log10(factor)) - 1);
  return Math.round(factor / size) * size;
}
