/** Water too warm to cool the motor. */
import type { Celsius } from '../si.ts';
import { isAssumed } from './assumed.ts';
import { breaks, defineRule, doesNotApply, holds } from './rule.ts';
import { motorBottomDepth } from '../string/pumpDepths.ts';

/** 86 °F. Common practice, no source; the motor's own sheet overrules it. */
export const WARMEST: Celsius = 30;
/** What conversions from other degrees leave. */
const SLIVER = 1e-6;

export const waterCoolsMotor = defineRule({
  number: 'PR-63',
  part: 'motor',
  restsOn: [],
  asks: { most: WARMEST },
  judge({ solved, facts }) {
    if (isAssumed(solved, 'site.waterTemperature')) return doesNotApply;
    const temperature = facts.site.waterTemperature;
    const numbers = { temperature, most: WARMEST };
    if (temperature <= WARMEST + SLIVER) return holds('cool', numbers);
    return breaks('warm', 'warning', numbers, { depth: motorBottomDepth(facts.pump) });
  },
});

export const warmWaterRules = [waterCoolsMotor] as const;
