/** Head that water loses in pipe and fittings. */
import type { CubicMetresPerSecond, Metres, MetresPerSecond, Ratio } from '../si.ts';
import { requireNotNegative, requirePositive } from './require.ts';
import { STANDARD_GRAVITY } from './water.ts';
import { feet } from '../units.ts';

/** Mean velocity v = 4 Q / (pi d²) [m/s] of a flow Q [m³/s] in a round bore d [m]. */
export function velocityIn(flow: CubicMetresPerSecond, insideDiameter: Metres): MetresPerSecond {
  requirePositive('velocityIn', 'inside diameter', insideDiameter);
  return (4 * flow) / (Math.PI * insideDiameter * insideDiameter);
}

/** Reynolds number Re = 4 Q / (pi d nu) [-]: Q flow [m³/s], d bore [m], nu kinematic viscosity [m²/s]. */
export function reynoldsNumber(input: {
  readonly flow: CubicMetresPerSecond;
  readonly insideDiameter: Metres;
  readonly kinematicViscosity: number;
}): number {
  requirePositive('reynoldsNumber', 'inside diameter', input.insideDiameter);
  requirePositive('reynoldsNumber', 'kinematic viscosity', input.kinematicViscosity);
  return (4 * input.flow) / (Math.PI * input.insideDiameter * input.kinematicViscosity);
}

/** Below it flow is taken as laminar, above `TURBULENT_FROM` as turbulent [Re]. */
export const LAMINAR_TO = 2000;
export const TURBULENT_FROM = 4000;

/**
 * Darcy friction factor.
 *
 *     Re < 2000         f = 64 / Re
 *     2000 to 4000      a cubic in Re that meets both neighbours in value and slope
 *     Re > 4000         1/√f = -2 log10( e/(3.7 d) + 2.51/(Re √f) )
 *
 * @param reynolds           Re [-]
 * @param relativeRoughness  e/d: roughness height by bore [-]
 * @returns  f [-]
 *
 * Range    Re up to 1e8, e/d up to 0.05
 * Error    solves the Colebrook-White equation to 1e-12; that equation itself is good to some per cent. Between 2000
 *          and 4000 no flow has one answer
 * Throws   RangeError when Re is not positive or e/d is outside 0 to 0.5
 * Source   Colebrook (1939), J. Inst. Civil Eng. 11, 133; laminar law and form of the cubic: EPANET 2.2 User Manual,
 *          ch. 12, which ends its cubic on the Swamee-Jain value at Re 4000 and so up to 3.4 % lower
 */
export function darcyFactor(reynolds: number, relativeRoughness: Ratio): number {
  requirePositive('darcyFactor', 'Reynolds number', reynolds);
  requireRoughness('darcyFactor', relativeRoughness);
  if (reynolds < LAMINAR_TO) return 64 / reynolds;
  if (reynolds < TURBULENT_FROM) return between(reynolds, relativeRoughness);
  const x = colebrookRoot(reynolds, relativeRoughness);
  return 1 / (x * x);
}

/** 2 log10(y) is this times ln(y). */
const TWO_BY_LN10 = 2 / Math.LN10;

/** x = 1/√f of the Colebrook-White equation: from Haaland, then two Newton steps, which leave 1e-12. */
function colebrookRoot(reynolds: number, relativeRoughness: Ratio): number {
  const rough = relativeRoughness / 3.7;
  const smooth = 2.51 / reynolds;
  let x = -1.8 * Math.log10(rough ** 1.11 + 6.9 / reynolds);
  for (let step = 0; step < 2; step++) {
    const inside = rough + smooth * x;
    x -= (x + TWO_BY_LN10 * Math.log(inside)) / (1 + TWO_BY_LN10 * (smooth / inside));
  }
  return x;
}

/** The EPANET cubic, with FA the factor at Re 4000 and FB = 2 (FA + its slope over Re/2000), both of Colebrook-White. */
function between(reynolds: number, relativeRoughness: Ratio): number {
  const x = colebrookRoot(TURBULENT_FROM, relativeRoughness);
  const smooth = 2.51 / TURBULENT_FROM;
  const k = (TWO_BY_LN10 * smooth) / (relativeRoughness / 3.7 + smooth * x);
  const FA = 1 / (x * x);
  const FB = (2 * FA) / (1 + k);
  const R = reynolds / 2000;
  const X1 = 7 * FA - FB;
  const X2 = 0.128 - 17 * FA + 2.5 * FB;
  const X3 = -0.128 + 13 * FA - 2 * FB;
  const X4 = 0.032 - 3 * FA + 0.5 * FB;
  return X1 + R * (X2 + R * (X3 + R * X4));
}

/**
 * Explicit form of the turbulent friction factor.
 *
 *     f = 0.25 / log10( e/(3.7 d) + 5.74/Re^0.9 )²
 *
 * @returns  f [-]
 *
 * Range    Re 5e3 to 1e8, e/d 1e-6 to 0.05
 * Error    within 3.4 % of Colebrook-White, worst at Re 4000
 * Throws   RangeError when Re is not positive or e/d is outside 0 to 0.5
 * Source   Swamee & Jain (1976), J. Hydraulics Div. ASCE 102, 657; as in EPANET 2.2 User Manual, ch. 12
 */
export function swameeJain(reynolds: number, relativeRoughness: Ratio): number {
  requirePositive('swameeJain', 'Reynolds number', reynolds);
  requireRoughness('swameeJain', relativeRoughness);
  return 0.25 / Math.log10(relativeRoughness / 3.7 + 5.74 / reynolds ** 0.9) ** 2;
}

/**
 * Explicit form of the turbulent friction factor, closer than Swamee-Jain.
 *
 *     1/√f = -1.8 log10( (e/(3.7 d))^1.11 + 6.9/Re )
 *
 * @returns  f [-]
 *
 * Range    Re 4e3 to 1e8, e/d up to 0.05
 * Error    within 1.4 % of Colebrook-White
 * Throws   RangeError when Re is not positive or e/d is outside 0 to 0.5
 * Source   Haaland (1983), J. Fluids Eng. 105, 89, from memory
 */
export function haaland(reynolds: number, relativeRoughness: Ratio): number {
  requirePositive('haaland', 'Reynolds number', reynolds);
  requireRoughness('haaland', relativeRoughness);
  return 1 / (1.8 * Math.log10((relativeRoughness / 3.7) ** 1.11 + 6.9 / reynolds)) ** 2;
}

/**
 * Friction head of straight pipe by Darcy-Weisbach.
 *
 *     h = f (L/d) v²/(2 g)
 *
 * @param flow                Q [m³/s]
 * @param length              L [m]
 * @param insideDiameter      d [m]
 * @param roughness           e [m]: 0.0015 mm for plastic
 * @param kinematicViscosity  nu [m²/s]
 * @returns  h [m]; 0 without flow
 *
 * Range    as `darcyFactor`
 * Throws   RangeError when flow or length is negative or the bore is not positive
 * Source   Darcy-Weisbach equation, as in EPANET 2.2 User Manual, ch. 3
 */
export function darcyHead(input: {
  readonly flow: CubicMetresPerSecond;
  readonly length: Metres;
  readonly insideDiameter: Metres;
  readonly roughness: Metres;
  readonly kinematicViscosity: number;
}): Metres {
  const { flow, length, insideDiameter, roughness } = input;
  requireNotNegative('darcyHead', 'flow', flow);
  requireNotNegative('darcyHead', 'length', length);
  if (flow === 0) return 0;
  const velocity = velocityIn(flow, insideDiameter);
  const factor = darcyFactor(reynoldsNumber(input), roughness / insideDiameter);
  return (factor * length * velocity * velocity) / (2 * STANDARD_GRAVITY * insideDiameter);
}

/** 4.727 of the printed equation in feet and ft³/s, carried to metres and m³/s: 4.727 × 0.3048^(4.871 - 3 × 1.852). */
export const HAZEN_WILLIAMS = 4.727 * feet(1) ** (4.871 - 3 * 1.852);

/**
 * Friction head of straight pipe by Hazen-Williams.
 *
 *     h = 4.727 L Q^1.852 / (C^1.852 d^4.871)      h, L, d in feet, Q in ft³/s
 *
 * @param flow            Q [m³/s]
 * @param length          L [m]
 * @param insideDiameter  d [m]
 * @param coefficient     C [-]: 150 to 140 plastic, 120 galvanized steel
 * @returns  h [m]
 *
 * Range    turbulent flow of water near 16 degC, 2 in and larger by origin; used down to 3/4 in by habit
 * Error    in small smooth pipe with cold water 6 to 25 % under Darcy-Weisbach at C = 150
 * Throws   RangeError when flow or length is negative or another input is not positive
 * Source   EPANET 2.2 User Manual, ch. 3, pipe headloss formulas
 */
export function hazenWilliamsHead(input: {
  readonly flow: CubicMetresPerSecond;
  readonly length: Metres;
  readonly insideDiameter: Metres;
  readonly coefficient: number;
}): Metres {
  const { flow, length, insideDiameter, coefficient } = input;
  requireNotNegative('hazenWilliamsHead', 'flow', flow);
  requireNotNegative('hazenWilliamsHead', 'length', length);
  requirePositive('hazenWilliamsHead', 'inside diameter', insideDiameter);
  requirePositive('hazenWilliamsHead', 'coefficient', coefficient);
  return (HAZEN_WILLIAMS * length * (flow / coefficient) ** 1.852) / insideDiameter ** 4.871;
}

/** Head [m] lost in a fitting: K v²/(2 g), with v [m/s] in the pipe that K belongs to. */
export function fittingHead(lossCoefficient: number, velocity: MetresPerSecond): Metres {
  return (lossCoefficient * velocity * velocity) / (2 * STANDARD_GRAVITY);
}

/**
 * Loss coefficient of an insert (barbed) fitting, on the velocity in the pipe.
 *
 *     K = ( 0.5 (1 - b²) + (1 - b²)² ) / b⁴
 *
 * @param boreRatio  b: bore of the fitting by bore of the pipe [-]
 * @returns  K [-]: 0.20 at b 0.90, 0.76 at 0.80, 2.14 at 0.70
 *
 * Range    sharp edges; a rounded bore loses less
 * Throws   RangeError when b is not above 0 and at most 1
 * Source   sudden contraction and Borda-Carnot expansion, any text on hydraulics; from memory
 */
export function insertFittingLoss(boreRatio: Ratio): number {
  if (!(boreRatio > 0 && boreRatio <= 1)) {
    throw new RangeError(`insertFittingLoss: bore ratio is ${boreRatio}, must be above 0 and at most 1`);
  }
  const blocked = 1 - boreRatio * boreRatio;
  return (0.5 * blocked + blocked * blocked) / boreRatio ** 4;
}

function requireRoughness(where: string, relativeRoughness: Ratio): void {
  if (!(relativeRoughness >= 0 && relativeRoughness <= 0.5)) {
    throw new RangeError(`${where}: relative roughness is ${relativeRoughness}, must be between 0 and 0.5`);
  }
}
