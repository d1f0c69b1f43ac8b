/** The head that the pump gives at a flow, by its generic curve or by the maker's points. */
import type { Facts } from '../../facts.ts';
import { pumpCurveOf } from '../../figures/curves.ts';
import type { BandEnd } from '../../figures/pumpBand.ts';
import { bandFactors, LEAST_SHARE, MOST_SHARE } from '../../formulas/genericBand.ts';
import { efficiencyAt, genericDesignHead } from '../../formulas/pumpCurve.ts';
import type { PumpCurve } from '../../formulas/pumpCurve.ts';
import { waterWeightTerm } from '../context.ts';
import type { Context } from '../context.ts';
import { step, term } from '../sum.ts';
import type { Step, Term } from '../sum.ts';

export interface PumpHead {
  readonly curve: PumpCurve;
  readonly terms: readonly Term[];
  /** What the head's expression rests on. */
  readonly steps: readonly Step[];
  /** In the symbols of `terms`. */
  readonly expression: string;
  readonly source: string;
  readonly note: string;
}

export const GENERIC_SOURCE =
  'generic curve: EPANET 2.2 User Manual, ch. 3, single-point pump curve; efficiency and band: engineering range and common practice, from memory';
const POINTS_SOURCE =
  'the maker’s points, joined by a cubic that never swings past them: Fritsch & Butland (1984), SIAM J. Sci. Stat. Comput. 5, 300';

/**
 * @param flow  [m³/s]; its symbol in the expression is Q
 * @param end   of a generic pump's band
 */
export function pumpHeadAt(context: Context, flow: number, end: BandEnd): PumpHead | null {
  const { facts, system } = context;
  const curve = pumpCurveOf(facts, system.water.density, end);
  if (curve === null) return null;
  const { pump } = facts;
  if (pump.curve.kind === 'points') return alongPoints(curve, pump.curve.points, flow);
  if (pump.power === null) return null;
  const designFlow = pump.curve.flow;
  return {
    curve,
    ...designHead(context, designFlow, pump.power, end),
    expression: '(H_d / 3) × (4 − (Q / Q_d)²)',
    source: GENERIC_SOURCE,
    note: GENERIC_NOTE[end],
  };
}

const GENERIC_NOTE: Readonly<Record<BandEnd, string>> = {
  least:
    'The weaker end of a generic pump’s band, ended at 1.4 times its rated flow: pumps of one rating differ. The points of the pump’s own sheet overrule it.',
  most: 'The stronger end of a generic pump’s band: pumps of one rating differ. The points of the pump’s own sheet overrule it.',
};

function designHead(
  context: Context,
  designFlow: number,
  power: number,
  end: BandEnd,
): Pick<PumpHead, 'terms' | 'steps'> {
  const { density } = context.system.water;
  const { frequency } = context.facts.pump;
  const factor = bandFactors(power, frequency)[end];
  const share = end === 'least' ? LEAST_SHARE : MOST_SHARE;
  const head = genericDesignHead({ power: factor * power, flow: designFlow, density });
  const supply =
    frequency === null ? (end === 'least' ? '50 Hz, as nobody said' : '60 Hz, as nobody said') : `${frequency} Hz`;
  return {
    terms: [
      term('η', 'efficiency of a pump of that rated flow', efficiencyAt(designFlow), 'number'),
      term('P', 'rated power', power, 'power'),
      term('f', `service factor of such a motor at ${supply}`, factor / share, 'number'),
      term('k', `${end === 'least' ? 'weaker' : 'stronger'} end of the band`, share, 'number'),
      term('Q_d', 'rated flow', designFlow, 'flow'),
      waterWeightTerm(context),
      term('H_d', 'head at the rated flow', head, 'length'),
    ],
    steps: [step('H_d', 'η × k × f × P / (γ × Q_d)', head, 'length')],
  };
}

/** The head at no flow, from which shut-off pressures follow. */
export function shutOffHead(context: Context, end: BandEnd): PumpHead | null {
  const { facts, system } = context;
  const curve = pumpCurveOf(facts, system.water.density, end);
  if (curve === null) return null;
  if (facts.pump.curve.kind === 'points') {
    return {
      curve,
      terms: [term('H_0', 'head at no flow by the maker’s points', curve.shutOffHead, 'length')],
      steps: [],
      expression: 'H_0',
      source: POINTS_SOURCE,
      note: 'Where no point stands at no flow, the curve is carried back to it, flat at its end.',
    };
  }
  if (facts.pump.power === null) return null;
  const { terms, steps } = designHead(context, facts.pump.curve.flow, facts.pump.power, end);
  return {
    curve,
    terms: [...terms, term('H_0', 'head at no flow', curve.shutOffHead, 'length')],
    steps: [...steps, step('H_0', '4 / 3 × H_d', curve.shutOffHead, 'length')],
    expression: 'H_0',
    source: GENERIC_SOURCE,
    note: GENERIC_NOTE[end],
  };
}

type Points = Extract<Facts['pump']['curve'], { kind: 'points' }>['points'];

/** The cubic piece that the flow lies on, found again from four heads of the curve: a cubic has no more freedom. */
function alongPoints(curve: PumpCurve, points: Points, flow: number): PumpHead {
  const ends = [...new Set([0, ...points.map((each) => each.flow), curve.runOutFlow])].sort((a, b) => a - b);
  const at = Math.max(
    ends.findIndex((end, i) => i > 0 && flow <= end),
    1,
  );
  const from = ends[at - 1] ?? 0;
  const to = ends[at] ?? curve.runOutFlow;
  const width = to - from;
  const [h0, h1, h2, h3] = [0, 1, 2, 3].map((i) => curve.headAt(from + (width * i) / 3.000001)) as [
    number,
    number,
    number,
    number,
  ];
  // Newton's forward differences over a third of the piece each, gathered into powers of x.
  const third = width / 3.000001;
  const [d1, d2, d3] = [h1 - h0, h2 - 2 * h1 + h0, h3 - 3 * h2 + 3 * h1 - h0];
  const b = (d1 - d2 / 2 + d3 / 3) / third;
  const c = (d2 - d3) / 2 / third ** 2;
  const d = d3 / 6 / third ** 3;
  return {
    curve,
    terms: [
      term('Q_1', 'flow at which this piece of the curve begins', from, 'readFlow'),
      term('x', 'flow beyond it', flow - from, 'readFlow'),
      term('H_1', 'head there', h0, 'length'),
      term('k_1', 'slope of the curve there', b, 'aquiferLoss'),
      term('k_2', 'its bend', c, 'wellLoss'),
      term('k_3', 'change of its bend', d, 'cubicLoss'),
    ],
    steps: [step('x', 'Q − Q_1', flow - from, 'readFlow')],
    expression: 'H_1 + k_1 × x + k_2 × x² + k_3 × x³',
    source: POINTS_SOURCE,
    note: 'Between two points the curve is a cubic; its figures here are those of the piece that the flow lies on.',
  };
}
