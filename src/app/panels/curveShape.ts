/** The pump's curve and the well-and-pipe curve as paths, with the crossing exactly on both. */
import { scaleLinear } from 'd3-scale';
import { line } from 'd3-shape';
import type { CurvePoint, Curves, SampledCurves } from '../../model/solution.ts';

export interface PlotSize {
  readonly width: number;
  readonly height: number;
  readonly left: number;
  readonly top: number;
}

export interface PlotPoint {
  readonly x: number;
  readonly y: number;
}

export interface CurvePlot {
  readonly pump: string;
  readonly system: string;
  readonly cutOut: PlotPoint | null;
  readonly cutIn: PlotPoint | null;
  readonly pumpEnd: PlotPoint | null;
  readonly systemEnd: PlotPoint | null;
  readonly mostFlow: number;
  readonly mostHead: number;
}

export function plotCurves(curves: Curves, sampled: SampledCurves, size: PlotSize): CurvePlot {
  const mostFlow = Math.max(...sampled.pump.map(({ flow }) => flow), 1e-6);
  const mostHead = Math.max(...sampled.pump.map(({ head }) => head), curves.atCutOut?.head ?? 0, 1);
  const x = scaleLinear([0, mostFlow], [size.left, size.width]);
  const y = scaleLinear([0, mostHead * 1.08], [size.height, size.top]);
  const path = line<CurvePoint>()
    .x(({ flow }) => round(x(flow)))
    .y(({ head }) => round(y(head)));
  const at = (point: CurvePoint | null | undefined): PlotPoint | null =>
    point == null ? null : { x: round(x(point.flow)), y: round(y(point.head)) };
  // A pump with no crossing stands at no flow: that point lies on its own curve, not on the well's.
  const crossing = curves.atCutOut !== null && curves.atCutOut.flow > 0 ? curves.atCutOut : null;
  const pump = through(sampled.pump, crossing);
  const system = through(sampled.system, crossing).filter(
    ({ flow, head }) => flow <= mostFlow && head <= mostHead * 1.08,
  );
  return {
    pump: path(pump) ?? '',
    system: path(system) ?? '',
    cutOut: at(curves.atCutOut),
    cutIn: at(curves.atCutIn),
    pumpEnd: at(pump[1] ?? pump[0]),
    systemEnd: at(system.at(-1)),
    mostFlow,
    mostHead,
  };
}

/** The curve with one more point of its own, so that straight pieces between points do not miss it. */
function through(curve: readonly CurvePoint[], point: CurvePoint | null): readonly CurvePoint[] {
  if (point === null || curve.length === 0) return curve;
  return [...curve.filter(({ flow }) => flow !== point.flow), point].sort((a, b) => a.flow - b.flow);
}

function round(pixels: number): number {
  return Math.round(pixels * 100) / 100;
}
