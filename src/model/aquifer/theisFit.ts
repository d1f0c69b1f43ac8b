/** Theis fitted to drawdown and recovery together, with the uncertainty of what was fitted. */
import { wellFunction } from '../formulas/theis.ts';
import type { CubicMetresPerSecond, Metres, Ratio, Seconds, SquareMetresPerSecond } from '../si.ts';

/** A reading with the times that its drawdown depends on. */
export interface FitPoint {
  readonly sinceStart: Seconds;
  /** Null while it was pumped. */
  readonly sinceStop: Seconds | null;
  readonly drawdown: Metres;
}

export interface FitSetting {
  readonly flow: CubicMetresPerSecond;
  readonly radius: Metres;
}

export interface AquiferFigures {
  readonly transmissivity: SquareMetresPerSecond;
  readonly storativity: Ratio;
}

export interface TheisSolution extends AquiferFigures {
  /** Sum of the squared differences [m²]. */
  readonly squares: number;
  /** Standard errors of ln T and ln S, and their correlation; null with two readings or where the two cannot be told apart. */
  readonly uncertainty: { readonly logT: number; readonly logS: number; readonly correlation: number } | null;
}

/**
 * Theis by least squares on drawdown, unweighted, ln T and ln S free.
 *
 *     s = Q/(4 pi T) (W(u) - W(u')),   u = r² S/(4 T t), W(u') only after the stop
 *
 * Starts from the best of a coarse net over T and S, so that no starting value is asked of anybody, and goes on by
 * Levenberg-Marquardt. Covariance is s² (JᵀJ)⁻¹ with s² the squares left over by readings less two.
 *
 * @returns  T, S, the squares left, and the standard errors of ln T and ln S
 *
 * Range    as `theisDrawdown`
 * Throws   RangeError with fewer than two readings
 * Source   Theis (1935); Marquardt (1963), J. SIAM 11, 431; Draper & Smith (1998), Applied Regression Analysis, ch. 24
 */
export function solveTheis(setting: FitSetting, points: readonly FitPoint[]): TheisSolution {
  if (points.length < 2) throw new RangeError(`solveTheis: ${points.length} readings, needs two or more`);
  let figures = coarseStart(setting, points);
  let here = lookAround(setting, points, figures);
  for (let damping = 1e-3, tries = 0; tries < 200 && damping < 1e12; tries++) {
    const [stepT, stepS] = here.step(damping);
    const next = {
      transmissivity: figures.transmissivity * Math.exp(stepT),
      storativity: figures.storativity * Math.exp(stepS),
    };
    const there = lookAround(setting, points, next);
    if (there.squares <= here.squares) {
      const settled = Math.hypot(stepT, stepS) < 1e-11;
      [figures, here, damping] = [next, there, damping / 10];
      if (settled) break;
    } else damping *= 10;
  }
  const { squares, normal } = here;
  return { ...figures, squares, uncertainty: uncertaintyOf(normal, squares, points.length - 2) };
}

/** Drawdown of a reading by the figures. */
export function computedDrawdown({ flow, radius }: FitSetting, figures: AquiferFigures, point: FitPoint): Metres {
  return slopes(flow, radius, figures, point).computed;
}

function slopes(flow: number, radius: number, { transmissivity, storativity }: AquiferFigures, point: FitPoint) {
  const scale = flow / (4 * Math.PI * transmissivity);
  const argument = (radius * radius * storativity) / (4 * transmissivity);
  // u dW/du = -exp(-u), and u goes as S/T.
  const u = argument / point.sinceStart;
  let [well, bend] = [wellFunction(u), Math.exp(-u)];
  if (point.sinceStop !== null) {
    const after = argument / point.sinceStop;
    well -= wellFunction(after);
    bend -= Math.exp(-after);
  }
  const computed = scale * well;
  const byLogS = -scale * bend;
  return { computed, byLogT: -computed - byLogS, byLogS };
}

interface Normal {
  readonly tt: number;
  readonly ts: number;
  readonly ss: number;
}

function lookAround({ flow, radius }: FitSetting, points: readonly FitPoint[], figures: AquiferFigures) {
  let [squares, tt, ts, ss, td, sd] = [0, 0, 0, 0, 0, 0];
  for (const point of points) {
    const { computed, byLogT, byLogS } = slopes(flow, radius, figures, point);
    const left = point.drawdown - computed;
    squares += left * left;
    tt += byLogT * byLogT;
    ts += byLogT * byLogS;
    ss += byLogS * byLogS;
    td += byLogT * left;
    sd += byLogS * left;
  }
  const step = (damping: number): readonly [number, number] => {
    const [dampedT, dampedS] = [tt * (1 + damping), ss * (1 + damping)];
    const determinant = dampedT * dampedS - ts * ts;
    if (!(determinant > 0)) return [0, 0];
    return [within((dampedS * td - ts * sd) / determinant), within((dampedT * sd - ts * td) / determinant)];
  };
  return { squares, normal: { tt, ts, ss }, step };
}

/** No step leaves the decade it starts in: further out the slopes say nothing. */
function within(step: number): number {
  return Math.min(Math.max(step, -Math.LN10), Math.LN10);
}

/** S of every ground, and the T that suits each best, which is linear once r²S/(4T) is held. */
function coarseStart(setting: FitSetting, points: readonly FitPoint[]): AquiferFigures {
  const { flow, radius } = setting;
  let best = { squares: Infinity, transmissivity: 1e-4, storativity: 1e-4 };
  const times = points.map(({ sinceStart }) => sinceStart);
  const [first, last] = [Math.min(...times), Math.max(...times)];
  // From readings so early that hardly anything has arrived to readings long after the start.
  for (let logArgument = Math.log(last * 5); logArgument > Math.log(first * 1e-12); logArgument -= 0.5) {
    const argument = Math.exp(logArgument);
    let [shape, shared] = [0, 0];
    for (const { sinceStart, sinceStop, drawdown } of points) {
      const well = wellFunction(argument / sinceStart) - (sinceStop === null ? 0 : wellFunction(argument / sinceStop));
      shape += well * well;
      shared += well * drawdown;
    }
    if (!(shared > 0 && shape > 0)) continue;
    const transmissivity = (flow * shape) / (4 * Math.PI * shared);
    const figures = { transmissivity, storativity: (4 * transmissivity * argument) / (radius * radius) };
    const { squares } = lookAround(setting, points, figures);
    if (squares < best.squares) best = { squares, ...figures };
  }
  return best;
}

function uncertaintyOf({ tt, ts, ss }: Normal, squares: number, degrees: number): TheisSolution['uncertainty'] {
  const determinant = tt * ss - ts * ts;
  if (degrees < 1 || !(determinant > 1e-12 * tt * ss)) return null;
  const variance = squares / degrees;
  return {
    logT: Math.sqrt((variance * ss) / determinant),
    logS: Math.sqrt((variance * tt) / determinant),
    correlation: -ts / Math.sqrt(tt * ss),
  };
}
