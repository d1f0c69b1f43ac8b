/** Fitted figures as they are said and as they are written into the plan. */
import type { Estimate, FittedTest, PumpingTest } from '../../model/aquifer/index.ts';
import type { Plan } from '../../model/plan/schema.ts';
import { plainNumber, writeQuantity } from '../../model/units.ts';
import { siOfOne } from './readings.ts';

export interface Said {
  readonly value: string;
  /** "380 to 405" */
  readonly interval: string;
}

/** In the unit, to three figures. */
export function sayTransmissivity(estimate: Estimate, unit: string): Said {
  const one = siOfOne('transmissivity', unit);
  const say = (si: number): string => figures(si / one);
  return {
    value: `${say(estimate.value)} ${unit}`,
    interval: `${say(estimate.low)} to ${say(estimate.high)} ${unit}`,
  };
}

export function sayStorativity(estimate: Estimate): Said {
  return { value: figures(estimate.value), interval: `${figures(estimate.low)} to ${figures(estimate.high)}` };
}

/** 24 h: what the level is told for where the plan names no other time. */
const USUAL_AFTER = '24 h';

/**
 * What "Use it" writes at water.pumping.
 *
 * The radius goes along only for the pumped well, whose storativity means nothing but with the radius it was fitted at.
 */
export function aquiferOf(
  { theis }: FittedTest,
  test: PumpingTest,
  plan: Plan,
  units: { readonly transmissivity: string; readonly length: string },
): Record<string, string> {
  const before = plan.water.pumping;
  const after = before !== undefined && 'after' in before ? before.after : undefined;
  return {
    kind: 'aquifer',
    transmissivity: sayTransmissivity(theis.transmissivity, units.transmissivity).value,
    storativity: figures(theis.storativity.value),
    ...(test.measuredIn === 'pumped well'
      ? { radius: writeQuantity(test.radius, 'length', units.length, 0.001 * siOfOne('length', units.length)) }
      : {}),
    after: after ?? USUAL_AFTER,
  };
}

function figures(value: number): string {
  return plainNumber(Number(value.toPrecision(3)));
}
