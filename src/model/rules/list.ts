/** Every rule that can be decided, the most important first: within one severity, findings keep this order. */
import { cableRules } from './cable.ts';
import { casingDepthRules } from './casingDepth.ts';
import { checkValveRules } from './checkValve.ts';
import { clearanceRules } from './clearance.ts';
import { coolingRules } from './cooling.ts';
import { electricalRules } from './electrical.ts';
import { flowingRules } from './flowing.ts';
import { inflowRules } from './inflow.ts';
import { liftingRules } from './lifting.ts';
import { materialRules } from './materials.ts';
import { pipeRules } from './pipe.ts';
import { pitlessRules } from './pitless.ts';
import { pumpDepthRules } from './pumpDepth.ts';
import { ropeRules } from './rope.ts';
import type { Rule } from './rule.ts';
import { screenRules } from './screen.ts';
import { tankRules } from './tank.ts';
import { wellheadRules } from './wellhead.ts';
import { yieldRules } from './yield.ts';
import { yieldTestRules } from './yieldTest.ts';

export const RULES: readonly Rule[] = [
  ...flowingRules,
  ...pitlessRules,
  ...pumpDepthRules,
  ...inflowRules,
  ...clearanceRules,
  ...tankRules,
  ...electricalRules,
  ...checkValveRules,
  ...pipeRules,
  ...wellheadRules,
  ...liftingRules,
  ...yieldRules,
  ...coolingRules,
  ...cableRules,
  ...ropeRules,
  ...materialRules,
  ...screenRules,
  ...casingDepthRules,
  ...yieldTestRules,
];
