/** What is expected at the first start, to be written down beside what is measured. */
import type { Amperes, CubicMetresPerSecond, Metres, Pascals, Seconds } from '../si.ts';
import type { Solved } from '../solution.ts';
import { leastRun } from '../rules/tankCycle.ts';
import { runningCurrent } from '../tables/motors.ts';

/** Expected values: null where nobody knows what to expect, and it is measured all the same. */
export interface StartCard {
  /** Null for an open tank. */
  readonly switch: { readonly cutIn: Pascals; readonly cutOut: Pascals; readonly precharge: Pascals } | null;
  /** From the weaker to the stronger pump of a rating; one value twice where its curve is known. */
  readonly flow: { readonly least: CubicMetresPerSecond; readonly most: CubicMetresPerSecond } | null;
  /** On the nameplate at full load; of a table where the plan has none. */
  readonly current: { readonly most: Amperes; readonly said: boolean } | null;
  readonly voltage: number;
  readonly staticLevel: Metres | null;
  /** After an hour of running. */
  readonly pumpingLevel: Metres | null;
  /** At each start. */
  readonly leastRun: Seconds;
}

export function startCard({ facts, values, levels, curves }: Solved): StartCard {
  const { house, pump } = facts;
  const least = curves.atCutIn?.flow ?? null;
  const most = curves.atCutInMost?.flow ?? least;
  const listed =
    pump.power === null ? null : runningCurrent({ ...pump, power: pump.power, frequency: pump.frequency ?? 60 });
  const current =
    pump.current !== null ? { most: pump.current, said: true } : listed === null ? null : { most: listed, said: false };
  return {
    switch:
      house.kind === 'open tank' ? null : { cutIn: house.cutIn, cutOut: house.cutOut, precharge: house.precharge },
    flow: least === null || most === null ? null : { least, most },
    current,
    voltage: pump.voltage,
    staticLevel: levels.static,
    pumpingLevel: values.pumpingWaterLevel,
    leastRun: leastRun(facts),
  };
}
