import type { Metres, Ratio } from '../si.ts';

/**
 * Cable to cut for the well.
 *
 *     (setting − pump to splice)(1 + slack) + allowance at the top
 *
 * @param setting       depth of the pump below the point where the cable leaves the well
 * @param pumpToSplice  length of the motor's own lead
 * @param slack         0.02 is common practice, no source
 * @param topAllowance  5 ft is common practice, no source
 * @returns             metres
 * Throws               RangeError when the lead is longer than the setting or a figure is negative
 */
export function dropCableLength({
  setting,
  pumpToSplice,
  slack,
  topAllowance,
}: {
  readonly setting: Metres;
  readonly pumpToSplice: Metres;
  readonly slack: Ratio;
  readonly topAllowance: Metres;
}): Metres {
  if (!(pumpToSplice >= 0 && setting >= pumpToSplice && setting < Infinity && slack >= 0 && topAllowance >= 0)) {
    throw new RangeError(
      `dropCableLength: setting ${setting} m, lead ${pumpToSplice} m, slack ${slack}, allowance ` +
        `${topAllowance} m; none may be negative and the lead must not be longer than the setting`,
    );
  }
  return (setting - pumpToSplice) * (1 + slack) + topAllowance;
}
