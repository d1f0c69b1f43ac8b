/** The band of a pump and the well's curves as paths. */
import { scaleLinear } from 'd3-scale';
import { area, line } from 'd3-shape';
import type { BandInWell, HeldLevel } from '../../model/choose/bandInWell.ts';
import type { CurvePoint } from '../../model/solution.ts';
import type { PlotSize } from '../panels/curveShape.ts';

export interface BandPlot {
  /** Between the ends; empty where they are one. */
  readonly band: string;
  readonly least: string;
  readonly most: string;
  readonly wells: readonly { readonly at: HeldLevel; readonly path: string; readonly y: number }[];
  readonly mostFlow: number;
  readonly mostHead: number;
}

export function plotBand({ least, most, wells }: BandInWell, size: PlotSize): BandPlot {
  const strong = most.length > 0 ? most : least;
  const mostFlow = Math.max(...strong.map(({ flow }) => flow), 1e-6);
  const mostHead = Math.max(...strong.map(({ head }) => head), ...wells.map(({ curve }) => curve[0]?.head ?? 0), 1);
  const x = scaleLinear([0, mostFlow], [size.left, size.width]);
  const y = scaleLinear([0, mostHead * 1.05], [size.height, size.top]);
  const inside = ({ head }: CurvePoint) => head >= 0 && head <= mostHead * 1.05;
  const path = line<CurvePoint>()
    .x(({ flow }) => round(x(flow)))
    .y(({ head }) => round(y(head)));
  return {
    band: most.length === 0 ? '' : (area<Pair>().x(at).y0(low).y1(high)(pairs(least, most)) ?? ''),
    least: path(least.filter(inside)) ?? '',
    most: path(most.filter(inside)) ?? '',
    wells: wells.map(({ at: which, curve }) => ({
      at: which,
      path: path(curve.filter(inside)) ?? '',
      y: round(y(curve[0]?.head ?? 0)),
    })),
    mostFlow,
    mostHead,
  };

  function at({ flow }: Pair): number {
    return round(x(flow));
  }
  function low({ from }: Pair): number {
    return round(y(Math.max(from, 0)));
  }
  function high({ to }: Pair): number {
    return round(y(Math.max(to, 0)));
  }
}

interface Pair {
  readonly flow: number;
  readonly from: number;
  readonly to: number;
}

/** Both ends at the flows of the stronger; where the weaker one has ended the band goes down to no head. */
function pairs(least: readonly CurvePoint[], most: readonly CurvePoint[]): Pair[] {
  const end = least.at(-1)?.flow ?? 0;
  const flows = [...most.map(({ flow }) => flow), end].sort((a, b) => a - b);
  const all = flows.map((flow) => ({ flow, from: flow > end ? 0 : headAt(least, flow), to: headAt(most, flow) }));
  const last = all.findIndex(({ flow }) => flow > end);
  // The weaker end stops all at once.
  return last < 0 ? all : [...all.slice(0, last), { flow: end, from: 0, to: headAt(most, end) }, ...all.slice(last)];
}

function headAt(curve: readonly CurvePoint[], flow: number): number {
  for (let i = 1; i < curve.length; i++) {
    const [from, to] = [curve[i - 1], curve[i]];
    if (from === undefined || to === undefined || flow > to.flow) continue;
    const share = to.flow === from.flow ? 0 : (flow - from.flow) / (to.flow - from.flow);
    return from.head + share * (to.head - from.head);
  }
  return curve.at(-1)?.head ?? 0;
}

function round(pixels: number): number {
  return Math.round(pixels * 100) / 100;
}
