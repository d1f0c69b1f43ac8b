/** What a pumping test says about the ground: transmissivity and storativity from drawdowns. */
import type { CubicMetresPerSecond, Metres, Ratio, Seconds, SquareMetresPerSecond } from '../si.ts';
import { feet, gallons } from '../units.ts';
import { requirePositive } from './require.ts';
import { theisArgument, wellFunction } from './theis.ts';

/** One reading of the water level in a well at `radius`. */
export interface DrawdownReading {
  readonly time: Seconds;
  readonly drawdown: Metres;
}

export interface AquiferEstimate {
  readonly transmissivity: SquareMetresPerSecond;
  readonly storativity: Ratio;
}

/**
 * Transmissivity from the slope of a straight line on a logarithmic time axis.
 *
 *     T = ln 10 Q / (4 pi ds),   ds drawdown, or residual drawdown, per log cycle
 *
 * Throws   RangeError when an input is not positive
 * Source   Cooper & Jacob (1946), Trans. Am. Geophys. Union 27, 526
 */
export function transmissivityFromSlope(flow: CubicMetresPerSecond, slopePerCycle: Metres): SquareMetresPerSecond {
  requirePositive('transmissivityFromSlope', 'flow', flow);
  requirePositive('transmissivityFromSlope', 'slope', slopePerCycle);
  return (Math.LN10 * flow) / (4 * Math.PI * slopePerCycle);
}

/**
 * Straight line s = a + b log10 t by least squares, and what it says by Cooper and Jacob.
 *
 *     T = ln 10 Q / (4 pi b),   S = 2.25 T t0 / r²,   t0 where the line has no drawdown
 *
 * @returns  slope b per log cycle [m], t0 [s], T [m²/s], S [-]
 *
 * Range    readings with u under about 0.03; the caller picks them
 * Throws   RangeError with fewer than two different times, or when drawdown does not grow
 * Source   Cooper & Jacob (1946)
 */
export function fitStraightLine(input: {
  readonly flow: CubicMetresPerSecond;
  readonly radius: Metres;
  readonly readings: readonly DrawdownReading[];
}): AquiferEstimate & { readonly slopePerCycle: Metres; readonly zeroTime: Seconds } {
  const { flow, radius, readings } = input;
  requirePositive('fitStraightLine', 'radius', radius);
  const n = readings.length;
  const meanTime = readings.reduce((sum, { time }) => sum + Math.log10(time), 0) / n;
  const meanDrawdown = readings.reduce((sum, { drawdown }) => sum + drawdown, 0) / n;
  let [spread, shared] = [0, 0];
  for (const { time, drawdown } of readings) {
    const x = Math.log10(time) - meanTime;
    spread += x * x;
    shared += x * (drawdown - meanDrawdown);
  }
  const slopePerCycle = shared / spread;
  const transmissivity = transmissivityFromSlope(flow, slopePerCycle);
  const zeroTime = 10 ** (meanTime - meanDrawdown / slopePerCycle);
  return { transmissivity, storativity: (2.25 * transmissivity * zeroTime) / radius ** 2, slopePerCycle, zeroTime };
}

/**
 * Theis fitted to readings by least squares on drawdown, unweighted, T and S free.
 *
 * @returns  T [m²/s], S [-], and the root of the mean square left over [m]
 *
 * Range    as `theisDrawdown`; starts from the straight line through all readings
 * Throws   RangeError with fewer than two different times, or when drawdown does not grow
 * Source   Theis (1935); Levenberg-Marquardt steps in ln T and ln S
 */
export function fitTheis(input: {
  readonly flow: CubicMetresPerSecond;
  readonly radius: Metres;
  readonly readings: readonly DrawdownReading[];
}): AquiferEstimate & { readonly error: Metres } {
  const { flow, radius, readings } = input;
  const start = fitStraightLine(input);
  let estimate: AquiferEstimate = start;
  let { square, step } = lookAround(flow, radius, readings, estimate, 0);
  for (let damping = 1e-3, tries = 0; tries < 100 && damping < 1e9; tries++) {
    const damped = lookAround(flow, radius, readings, estimate, damping).step;
    const next = {
      transmissivity: estimate.transmissivity * Math.exp(damped[0]),
      storativity: estimate.storativity * Math.exp(damped[1]),
    };
    const there = lookAround(flow, radius, readings, next, 0);
    if (there.square < square) {
      ({ square, step } = there);
      estimate = next;
      damping /= 10;
    } else damping *= 10;
    if (Math.hypot(...step) < 1e-10) break;
  }
  return { ...estimate, error: Math.sqrt(square / readings.length) };
}

/** Sum of squares at an estimate, and the damped Gauss-Newton step in ln T and ln S. */
function lookAround(
  flow: CubicMetresPerSecond,
  radius: Metres,
  readings: readonly DrawdownReading[],
  { transmissivity, storativity }: AquiferEstimate,
  damping: number,
): { square: number; step: readonly [number, number] } {
  const scale = flow / (4 * Math.PI * transmissivity);
  let [square, tt, ts, ss, td, sd] = [0, 0, 0, 0, 0, 0];
  for (const { time, drawdown } of readings) {
    const u = theisArgument({ transmissivity, storativity, radius, time });
    const computed = scale * wellFunction(u);
    // u dW/du = -exp(-u), and u goes as S/T.
    const byStorativity = -scale * Math.exp(-u);
    const byTransmissivity = -computed - byStorativity;
    const left = drawdown - computed;
    square += left * left;
    tt += byTransmissivity * byTransmissivity;
    ts += byTransmissivity * byStorativity;
    ss += byStorativity * byStorativity;
    td += byTransmissivity * left;
    sd += byStorativity * left;
  }
  const [dampedT, dampedS] = [tt * (1 + damping), ss * (1 + damping)];
  const determinant = dampedT * dampedS - ts * ts;
  return { square, step: [(dampedS * td - ts * sd) / determinant, (dampedT * sd - ts * td) / determinant] };
}

/**
 * Transmissivity between two wells whose drawdowns no longer change against each other.
 *
 *     T = Q ln(r2/r1) / (2 pi (s1 - s2))
 *
 * Throws   RangeError unless r1 < r2 and s1 > s2
 * Source   Thiem (1906); Kruseman & de Ridder (1994), ch. 3
 */
export function thiemTransmissivity(input: {
  readonly flow: CubicMetresPerSecond;
  readonly near: { readonly radius: Metres; readonly drawdown: Metres };
  readonly far: { readonly radius: Metres; readonly drawdown: Metres };
}): SquareMetresPerSecond {
  const { flow, near, far } = input;
  requirePositive('thiemTransmissivity', 'flow', flow);
  requirePositive('thiemTransmissivity', 'near radius', near.radius);
  if (!(near.radius < far.radius && near.drawdown > far.drawdown)) {
    throw new RangeError('thiemTransmissivity: the near well must have the smaller radius and the larger drawdown');
  }
  return (flow * Math.log(far.radius / near.radius)) / (2 * Math.PI * (near.drawdown - far.drawdown));
}

/** u where u W(u) is largest: beyond it the well would yield less by a better aquifer, so no answer lies there. */
const LARGEST_ARGUMENT = 0.43481;

/**
 * Transmissivity from one flow and its drawdown in the pumped well.
 *
 *     solve T = Q/(4 pi s) W( r² S / (4 T t) )
 *
 * @param flow         Q [m³/s]
 * @param drawdown     s [m], without well loss
 * @param time         t since pumping began [s]
 * @param radius       r, half the hole [m]
 * @param storativity  S, guessed [-]: 1e-4 confined, 0.1 to 0.2 unconfined; T depends on it weakly
 * @returns  T [m²/s]; null when no aquifer gives that little drawdown so soon after the start
 *
 * Range    u under 0.43
 * Throws   RangeError when an input is not positive
 * Source   Theis, Brown & Meyer (1963), US Geological Survey Water-Supply Paper 1536-I
 */
export function transmissivityFromSpecificCapacity(input: {
  readonly flow: CubicMetresPerSecond;
  readonly drawdown: Metres;
  readonly time: Seconds;
  readonly radius: Metres;
  readonly storativity: Ratio;
}): SquareMetresPerSecond | null {
  const { flow, drawdown, time, radius, storativity } = input;
  for (const [name, value] of Object.entries(input)) requirePositive('transmissivityFromSpecificCapacity', name, value);
  const scale = flow / (4 * Math.PI * drawdown);
  const argument = (radius * radius * storativity) / (4 * time);
  let u = LARGEST_ARGUMENT;
  if (u * wellFunction(u) < argument / scale) return null;
  // u = (argument/scale)/W(u) climbs down to the root from above, by a factor of about 1/W(u) each time.
  for (let step = 0; step < 200; step++) {
    const next = argument / scale / wellFunction(u);
    const done = Math.abs(next - u) <= 1e-14 * u;
    u = next;
    if (done) break;
  }
  return argument / u;
}

/** A gallon a day per foot of width [m²/s]. */
const GALLON_PER_DAY_PER_FOOT = gallons(1) / 86400 / feet(1);

/**
 * Rule of thumb: T = 2000 Q/s confined, 1500 Q/s unconfined, in gallons a day per foot and gpm per foot.
 *
 * Error    in a low-yield domestic well 20 to 50 %
 * Source   Driscoll (1986), Groundwater and Wells, app. 16D, from memory
 */
export function transmissivityByRule(
  specificCapacity: SquareMetresPerSecond,
  aquifer: 'confined' | 'unconfined',
): SquareMetresPerSecond {
  requirePositive('transmissivityByRule', 'specific capacity', specificCapacity);
  const gpmPerFoot = specificCapacity / (1440 * GALLON_PER_DAY_PER_FOOT);
  return (aquifer === 'confined' ? 2000 : 1500) * gpmPerFoot * GALLON_PER_DAY_PER_FOOT;
}
