/** Facts near which most plans lie, each as far off as it is met: what holds only near what was assumed says so. */
import type { Facts } from '../facts.ts';
import { feet } from '../units.ts';
import { givenOtherwise } from './given.ts';
import type { Given, Rule } from './rule.ts';
import { WARMEST } from './warmWater.ts';

interface FarEnd {
  readonly path: string;
  /** Rules that read it, straight from the facts. */
  readonly rules: ReadonlySet<string>;
  readonly at: (facts: Facts) => Facts;
}

/** Few houses stand higher; wells there have their altitude said. */
const HIGH = feet(8000);
/** As long below the intake as the largest motors of 4 in wells. Common practice, no source. */
const LONG_MOTOR = feet(4);

const FAR_ENDS: readonly FarEnd[] = [
  {
    path: 'site.waterTemperature',
    rules: new Set(['PR-18', 'PR-48', 'PR-61']),
    at: (facts) => ({ ...facts, site: { ...facts.site, waterTemperature: WARMEST } }),
  },
  {
    path: 'site.altitude',
    rules: new Set(['PR-09']),
    at: (facts) => ({ ...facts, site: { ...facts.site, altitude: HIGH } }),
  },
  {
    path: 'pump.intakeToMotorBottom',
    rules: new Set(['PR-01', 'PR-03']),
    at: (facts) => ({ ...facts, pump: { ...facts.pump, intakeToMotorBottom: LONG_MOTOR } }),
  },
];

/** Paths of what a rule that holds rests on, since it would not hold at the far end. */
export function restsOnFar(rule: Rule, given: Given, assumed: ReadonlySet<string>): readonly string[] {
  const near = FAR_ENDS.filter(({ path, rules }) => rules.has(rule.number) && assumed.has(path));
  return near.flatMap(({ path, at }) => {
    const facts = at(given.facts);
    const there = rule.judge(givenOtherwise(given, { ...given.solved, facts }));
    return there.kind === 'holds' || there.kind === 'doesNotApply' ? [] : [path];
  });
}
