/** What is offered against each rule. */
import type { MakeFixes } from './ruleFixes.ts';
import { adapterCoverFixes } from './rules/adapterCover.ts';
import { buriedLineFixes } from './rules/buriedLine.ts';
import { cableFixes } from './rules/cable.ts';
import { casingDepthFixes } from './rules/casingDepth.ts';
import { checkValveFixes } from './rules/checkValve.ts';
import { clearanceFixes } from './rules/clearance.ts';
import { coolingFixes } from './rules/cooling.ts';
import { deliveryFixes } from './rules/delivery.ts';
import { electricalFixes } from './rules/electrical.ts';
import { flowingFixes } from './rules/flowing.ts';
import { gasAndSandFixes } from './rules/gasAndSand.ts';
import { inflowFixes } from './rules/inflow.ts';
import { liftingFixes } from './rules/lifting.ts';
import { materialsFixes } from './rules/materials.ts';
import { pipeFixes } from './rules/pipe.ts';
import { pitlessFixes } from './rules/pitless.ts';
import { pumpDepthFixes } from './rules/pumpDepth.ts';
import { recordFixes } from './rules/record.ts';
import { ropeFixes } from './rules/rope.ts';
import { screenFixes } from './rules/screen.ts';
import { shortageFixes } from './rules/shortage.ts';
import { supplyFixes } from './rules/supply.ts';
import { tankFixes } from './rules/tank.ts';
import { tankCycleFixes } from './rules/tankCycle.ts';
import { warmWaterFixes } from './rules/warmWater.ts';
import { wellheadFixes } from './rules/wellhead.ts';
import { yieldFixes } from './rules/yield.ts';
import { yieldTestFixes } from './rules/yieldTest.ts';

const LIST = {
  ...adapterCoverFixes,
  ...buriedLineFixes,
  ...cableFixes,
  ...casingDepthFixes,
  ...checkValveFixes,
  ...clearanceFixes,
  ...coolingFixes,
  ...deliveryFixes,
  ...electricalFixes,
  ...flowingFixes,
  ...gasAndSandFixes,
  ...inflowFixes,
  ...liftingFixes,
  ...materialsFixes,
  ...pipeFixes,
  ...pitlessFixes,
  ...pumpDepthFixes,
  ...recordFixes,
  ...ropeFixes,
  ...screenFixes,
  ...shortageFixes,
  ...supplyFixes,
  ...tankFixes,
  ...tankCycleFixes,
  ...warmWaterFixes,
  ...wellheadFixes,
  ...yieldFixes,
  ...yieldTestFixes,
};

/** With the variants and numbers of each: a language that lacks one of them does not compile. */
export type FixList = typeof LIST;

export const FIXES: Readonly<Record<string, MakeFixes | undefined>> = LIST;
