/** Every rule that can be decided, the most important first: within one severity, findings keep this order. */
import { adapterCoverRules } from './adapterCover.ts';
import { buriedLineRules } from './buriedLine.ts';
import { cableRules } from './cable.ts';
import { casingDepthRules } from './casingDepth.ts';
import { checkValveRules } from './checkValve.ts';
import { clearanceRules } from './clearance.ts';
import { coolingRules } from './cooling.ts';
import { deliveryRules } from './delivery.ts';
import { electricalRules } from './electrical.ts';
import { flowingRules } from './flowing.ts';
import { gasAndSandRules } from './gasAndSand.ts';
import { inflowRules } from './inflow.ts';
import { liftingRules } from './lifting.ts';
import { materialRules } from './materials.ts';
import { pipeRules } from './pipe.ts';
import { pitlessRules } from './pitless.ts';
import { pumpDepthRules } from './pumpDepth.ts';
import { recordRules } from './record.ts';
import { ropeRules } from './rope.ts';
import type { Rule } from './rule.ts';
import { screenRules } from './screen.ts';
import { shortageRules } from './shortage.ts';
import { supplyRules } from './supply.ts';
import { tankRules } from './tank.ts';
import { tankCycleRules } from './tankCycle.ts';
import { warmWaterRules } from './warmWater.ts';
import { wellheadRules } from './wellhead.ts';
import { yieldRules } from './yield.ts';
import { yieldTestRules } from './yieldTest.ts';

const LIST = [
  ...flowingRules,
  ...recordRules,
  ...pitlessRules,
  ...adapterCoverRules,
  ...pumpDepthRules,
  ...inflowRules,
  ...clearanceRules,
  ...deliveryRules,
  ...tankRules,
  ...tankCycleRules,
  ...electricalRules,
  ...supplyRules,
  ...checkValveRules,
  ...pipeRules,
  ...buriedLineRules,
  ...gasAndSandRules,
  ...wellheadRules,
  ...liftingRules,
  ...yieldRules,
  ...shortageRules,
  ...coolingRules,
  ...warmWaterRules,
  ...cableRules,
  ...ropeRules,
  ...materialRules,
  ...screenRules,
  ...casingDepthRules,
  ...yieldTestRules,
] as const;

/** Every rule with its own variants and numbers: a language that lacks one of them does not compile. */
export type RuleList = typeof LIST;

export const RULES: readonly Rule[] = LIST;

const BY_NUMBER = new Map(RULES.map((rule) => [rule.number, rule]));

export function ruleOf(number: string): Rule {
  const rule = BY_NUMBER.get(number);
  if (rule === undefined) throw new RangeError(`ruleOf: no rule is ${number}`);
  return rule;
}
