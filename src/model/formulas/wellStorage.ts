/** Water that stands in the bore, and how long it lasts. */
import type { BoreStretch } from '../solution.ts';
import type { CubicMetres, CubicMetresPerSecond, Metres, Seconds, SquareMetres } from '../si.ts';
import { requireNotNegative, requirePositive } from './require.ts';

/** Volume of a round bore per metre, pi d²/4 [m³/m], for an inside diameter d [m]. */
export function boreVolumePerMetre(insideDiameter: Metres): SquareMetres {
  requirePositive('boreVolumePerMetre', 'inside diameter', insideDiameter);
  return (Math.PI * insideDiameter * insideDiameter) / 4;
}

type Stretch = Pick<BoreStretch, 'top' | 'bottom' | 'insideRadius'>;

/**
 * Water in the bore between two depths, stretch by stretch.
 *
 * @param bore   stretches with their inside radius [m]
 * @param from   depth of the water [m]
 * @param to     depth of the bottom or the intake [m]
 * @returns  volume [m³]; 0 when `to` lies above `from`, and nothing for depths without a bore
 *
 * Throws   RangeError when a depth is not a finite number
 */
export function wellVolume(bore: readonly Stretch[], from: Metres, to: Metres): CubicMetres {
  if (!Number.isFinite(from) || !Number.isFinite(to))
    throw new RangeError(`wellVolume: depths are ${from} and ${to}, must be finite`);
  let volume = 0;
  for (const { top, bottom, insideRadius } of bore) {
    const length = Math.min(bottom, to) - Math.max(top, from);
    if (length > 0) volume += Math.PI * insideRadius * insideRadius * length;
  }
  return volume;
}

/**
 * Water that the pump can take from the bore: the bore less the drop pipe, from the static level down to the intake.
 *
 * @param margin  water kept over the intake [m]
 * @returns  volume [m³]; 0 when the intake hangs above the water
 *
 * Throws   RangeError when a depth is not finite, or diameter or margin is negative
 */
export function usableStorage(input: {
  readonly bore: readonly Stretch[];
  readonly staticLevel: Metres;
  readonly intakeDepth: Metres;
  readonly dropPipeOutsideDiameter: Metres;
  readonly margin?: Metres;
}): CubicMetres {
  const { bore, staticLevel, intakeDepth, dropPipeOutsideDiameter, margin = 0 } = input;
  requireNotNegative('usableStorage', 'drop pipe diameter', dropPipeOutsideDiameter);
  requireNotNegative('usableStorage', 'margin', margin);
  let volume = 0;
  const pipe = dropPipeOutsideDiameter / 2;
  const end = intakeDepth - margin;
  for (const { top, bottom, insideRadius } of bore) {
    const length = Math.min(bottom, end) - Math.max(top, staticLevel);
    if (length > 0) volume += Math.PI * (insideRadius * insideRadius - pipe * pipe) * length;
  }
  return volume;
}

/**
 * Time until the stored water is gone and the pump draws air.
 *
 *     t = V / (Q - Y)
 *
 * @param storage   V, usable [m³]
 * @param pumpFlow  Q [m³/s]
 * @param wellYield Y, what the well gives meanwhile [m³/s]
 * @returns  t [s]; null while the well keeps up
 *
 * Throws   RangeError when an input is negative
 */
export function timeToBreakSuction(input: {
  readonly storage: CubicMetres;
  readonly pumpFlow: CubicMetresPerSecond;
  readonly wellYield: CubicMetresPerSecond;
}): Seconds | null {
  const { storage, pumpFlow, wellYield } = input;
  for (const [name, value] of Object.entries(input)) requireNotNegative('timeToBreakSuction', name, value);
  return pumpFlow > wellYield ? storage / (pumpFlow - wellYield) : null;
}

/** Time V/Y [s] in which a well of yield Y [m³/s] fills a volume V [m³] again; longer in truth, as yield falls while the level rises. */
export function refillTime(storage: CubicMetres, wellYield: CubicMetresPerSecond): Seconds {
  requireNotNegative('refillTime', 'storage', storage);
  requirePositive('refillTime', 'yield', wellYield);
  return storage / wellYield;
}

/** Water to be had in a time t [s]: V + Y t [m³], stored V [m³] and yield Y [m³/s]. */
export function waterAvailable(storage: CubicMetres, wellYield: CubicMetresPerSecond, time: Seconds): CubicMetres {
  requireNotNegative('waterAvailable', 'storage', storage);
  requireNotNegative('waterAvailable', 'yield', wellYield);
  requireNotNegative('waterAvailable', 'time', time);
  return storage + wellYield * time;
}
