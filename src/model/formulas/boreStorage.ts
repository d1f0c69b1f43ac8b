/** The share of early pumping that only empties the bore. */
import type { CubicMetresPerSecond, Metres, Ratio, Seconds, SquareMetresPerSecond } from '../si.ts';
import { toGpm, toFeet, toInches } from '../units.ts';
import { besselK } from './besselK.ts';
import { requireNotNegative, requirePositive } from './require.ts';

/** A well in its aquifer, with the water that stands in it. */
export interface BoreInAquifer {
  readonly transmissivity: SquareMetresPerSecond;
  readonly storativity: Ratio;
  /** rw, where the ground begins. */
  readonly wellRadius: Metres;
  /** rc, where the level moves: of the free water surface, so what hangs in the bore is taken off. */
  readonly casingRadius: Metres;
  /** R, head lost on the way into the bore per flow [s/m²]; nothing where it is left out. */
  readonly entryLoss?: number;
}

/**
 * Drawdown in a pumped well whose own water counts.
 *
 *     s = Q times `boreResponse`
 *
 * @param flow  Q [m³/s]
 * @param time  t since pumping began [s]
 * @returns  s [m]
 *
 * Range    as `boreResponse`
 * Throws   RangeError when the flow is negative or another input is not positive
 * Source   Papadopulos & Cooper (1967), Water Resources Research 3, 241
 */
export function boreStorageDrawdown(
  input: BoreInAquifer & { readonly flow: CubicMetresPerSecond; readonly time: Seconds },
): Metres {
  requireNotNegative('boreStorageDrawdown', 'flow', input.flow);
  return input.flow * boreResponse(input, input.time);
}

/**
 * Drawdown in a pumped well for each unit of flow taken from it.
 *
 *     Laplace transform: 1 / ( p (1/Z + pi rc² p) ),   Z = K0(x) / (2 pi T x K1(x)) + R,   x = rw √(p S/T)
 *
 * Z is what ground and well wall hold against the inflow, the other term is the water surface that must fall.
 *
 * @param time  t since pumping began [s]
 * @returns  s/Q [s/m²]
 *
 * Range    as `theisDrawdown`; a loss that goes as the square of the flow must be put in as R = C Q
 * Error    0.03 % against printed benchmark values for t of 0.01 to 1 day
 * Throws   RangeError when an input is not positive
 * Source   Papadopulos & Cooper (1967), Water Resources Research 3, 241; R as the skin of Agarwal, Al-Hussainy & Ramey
 *          (1970), Soc. Petroleum Engineers J. 10, 279, from memory; inverted by Stehfest (1970), Comm. ACM 13, 47
 */
export function boreResponse(bore: BoreInAquifer, time: Seconds): number {
  requireBore('boreResponse', bore, time);
  const { transmissivity: T, casingRadius } = bore;
  return invert(time, (p) => {
    const { order0, order1TimesX } = besselK(argument(bore, p));
    const resistance = order0 / (2 * Math.PI * T * order1TimesX) + (bore.entryLoss ?? 0);
    return 1 / (p * (1 / resistance + Math.PI * casingRadius ** 2 * p));
  });
}

/**
 * Drawdown in the ground round such a well, for each unit of flow taken from it.
 *
 *     Laplace transform: K0(x r/rw) / (2 pi T x K1(x)) / ( p (1 + pi rc² p Z) )
 *
 * @param radius  r from the well's axis [m]; nearer than rw it is as at rw
 * @param time    t since pumping began [s]
 * @returns  s/Q [s/m²]; at rw that of `boreResponse` less the entry loss
 *
 * Range    as `boreResponse`
 * Error    far out, where the drawdown is under a thousandth of that at the wall, the sum's own: 1e-5 of the latter
 * Throws   RangeError when an input is not positive
 * Source   as `boreResponse`
 */
export function groundResponse(bore: BoreInAquifer, radius: Metres, time: Seconds): number {
  requireBore('groundResponse', bore, time);
  requirePositive('groundResponse', 'radius', radius);
  const { transmissivity: T, casingRadius, wellRadius } = bore;
  const outward = Math.max(radius / wellRadius, 1);
  return invert(time, (p) => {
    const x = argument(bore, p);
    const wall = besselK(x);
    const perInflow = 1 / (2 * Math.PI * T * wall.order1TimesX);
    const resistance = wall.order0 * perInflow + (bore.entryLoss ?? 0);
    const there = besselK(x * outward).order0 * Math.exp(x - x * outward) * perInflow;
    return there / (p * (1 + Math.PI * casingRadius ** 2 * p * resistance));
  });
}

function argument({ transmissivity, storativity, wellRadius }: BoreInAquifer, p: number): number {
  return wellRadius * Math.sqrt((p * storativity) / transmissivity);
}

function requireBore(where: string, bore: BoreInAquifer, time: Seconds): void {
  requirePositive(where, 'transmissivity', bore.transmissivity);
  requirePositive(where, 'storativity', bore.storativity);
  requirePositive(where, 'well radius', bore.wellRadius);
  requirePositive(where, 'casing radius', bore.casingRadius);
  requireNotNegative(where, 'entry loss', bore.entryLoss ?? 0);
  requirePositive(where, 'time', time);
}

/** A function of time from its Laplace transform, by the sum of Stehfest. */
function invert(time: Seconds, transform: (p: number) => number): number {
  let sum = 0;
  for (let i = 0; i < STEHFEST.length; i++) sum += (STEHFEST[i] ?? 0) * transform(((i + 1) * Math.LN2) / time);
  return (sum * Math.LN2) / time;
}

/** Weights of the Stehfest sum of twelve terms: more would drown in the last bits of a double. */
const STEHFEST: readonly number[] = stehfestWeights(12);

function stehfestWeights(terms: number): number[] {
  const half = terms / 2;
  const factorial = (n: number): number => (n < 2 ? 1 : n * factorial(n - 1));
  return Array.from({ length: terms }, (_, index) => {
    const i = index + 1;
    let sum = 0;
    for (let k = Math.floor((i + 1) / 2); k <= Math.min(i, half); k++) {
      sum +=
        (k ** half * factorial(2 * k)) /
        (factorial(half - k) * factorial(k) * factorial(k - 1) * factorial(i - k) * factorial(2 * k - i));
    }
    return (-1) ** (half + i) * sum;
  });
}

/**
 * Time after which the level in a pumped well follows Theis.
 *
 *     t = 250 rc²/T   (0.2 % short);  25 rc²/T leaves 2.5 %
 *
 * @param casingRadius    rc, where the level moves [m]
 * @param transmissivity  T [m²/s]
 * @param share           250 or 25 [-]
 * @returns  t [s]
 *
 * Throws   RangeError when an input is not positive
 * Source   Papadopulos & Cooper (1967), limit from memory; the percentages follow from `boreStorageDrawdown`
 */
export function storageFadeTime(
  casingRadius: Metres,
  transmissivity: SquareMetresPerSecond,
  share: 25 | 250 = 250,
): Seconds {
  requirePositive('storageFadeTime', 'casing radius', casingRadius);
  requirePositive('storageFadeTime', 'transmissivity', transmissivity);
  return (share * casingRadius ** 2) / transmissivity;
}

/**
 * The same in the field's form, from specific capacity.
 *
 *     t = 0.6 (Dc² - Dp²) / (Q/s)      t in minutes, D in inches, Q/s in gpm per foot
 *
 * @param casingInsideDiameter     Dc [m]
 * @param dropPipeOutsideDiameter  Dp [m]
 * @param specificCapacity         Q/s at that time [m²/s]
 * @returns  t [s]
 *
 * Range    leaves about 1 %
 * Throws   RangeError when the pipe fills the casing or the capacity is not positive
 * Source   Schafer (1978), quoted in Driscoll (1986), Groundwater and Wells; from memory
 */
export function schaferTime(input: {
  readonly casingInsideDiameter: Metres;
  readonly dropPipeOutsideDiameter: Metres;
  readonly specificCapacity: SquareMetresPerSecond;
}): Seconds {
  const { casingInsideDiameter, dropPipeOutsideDiameter, specificCapacity } = input;
  requirePositive('schaferTime', 'specific capacity', specificCapacity);
  requirePositive('schaferTime', 'ring between casing and pipe', casingInsideDiameter - dropPipeOutsideDiameter);
  const gpmPerFoot = toGpm(specificCapacity) / toFeet(1);
  const minutes = (0.6 * (toInches(casingInsideDiameter) ** 2 - toInches(dropPipeOutsideDiameter) ** 2)) / gpmPerFoot;
  return minutes * 60;
}
