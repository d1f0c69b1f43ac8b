/** Level against time as a path: time by logarithm, depth downwards. */
import { scaleLinear, scaleLog } from 'd3-scale';
import { line } from 'd3-shape';
import type { Metres, Seconds } from '../../model/si.ts';
import type { LevelCurve, LevelSample } from '../../model/time/index.ts';
import { FIRST, LAST } from './timeScale.ts';

export interface PlotBox {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

export interface TimePlot {
  readonly curve: string;
  readonly x: (time: Seconds) => number;
  readonly y: (depth: Metres) => number;
  /** `shift` [px] keeps the words of two near lines apart. */
  readonly lowest: readonly { readonly depth: Metres; readonly label: string; readonly shift: number }[];
}

/** @param intake  of the pump; a cut-off above it has a line of its own */
export function plotTime({ samples, staticLevel, lowest }: LevelCurve, intake: Metres, box: PlotBox): TimePlot {
  const deepest = Math.max(intake, lowest.depth, ...samples.map(({ level }) => level));
  const across = scaleLog([FIRST, LAST], [box.left, box.right]).clamp(true);
  const down = scaleLinear([staticLevel, deepest], [box.top, box.bottom]);
  const x = (time: Seconds): number => round(across(time));
  const y = (depth: Metres): number => round(down(depth));
  const near = lowest.by !== 'intake' && y(intake) - y(lowest.depth) < LINE_OF_TEXT;
  const lines =
    lowest.by === 'intake'
      ? [{ depth: lowest.depth, label: 'intake', shift: 0 }]
      : [
          { depth: lowest.depth, label: 'probe', shift: near ? -6 : 0 },
          { depth: intake, label: 'intake', shift: near ? 6 : 0 },
        ];
  const path = line<LevelSample>()
    .x(({ time }) => x(time))
    .y(({ level }) => y(level));
  return { curve: path(samples) ?? '', x, y, lowest: lines };
}

/** px */
const LINE_OF_TEXT = 13;

function round(pixels: number): number {
  return Math.round(pixels * 100) / 100;
}
