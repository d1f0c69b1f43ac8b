/** Titles, amounts and ends of bands of every rule. */
import type { RuleList } from '../../model/rules/list.ts';
import type { ShortWords } from '../ruleWords.ts';
import { short as adapterCover } from './rules/adapterCover.ts';
import { short as buriedLine } from './rules/buriedLine.ts';
import { short as cable } from './rules/cable.ts';
import { short as casingDepth } from './rules/casingDepth.ts';
import { short as checkValve } from './rules/checkValve.ts';
import { short as clearance } from './rules/clearance.ts';
import { short as cooling } from './rules/cooling.ts';
import { short as delivery } from './rules/delivery.ts';
import { short as electrical } from './rules/electrical.ts';
import { short as flowing } from './rules/flowing.ts';
import { short as gasAndSand } from './rules/gasAndSand.ts';
import { short as inflow } from './rules/inflow.ts';
import { short as lifting } from './rules/lifting.ts';
import { short as materials } from './rules/materials.ts';
import { short as pipe } from './rules/pipe.ts';
import { short as pitless } from './rules/pitless.ts';
import { short as pumpDepth } from './rules/pumpDepth.ts';
import { short as record } from './rules/record.ts';
import { short as rope } from './rules/rope.ts';
import { short as screen } from './rules/screen.ts';
import { short as shortage } from './rules/shortage.ts';
import { short as supply } from './rules/supply.ts';
import { short as tank } from './rules/tank.ts';
import { short as tankCycle } from './rules/tankCycle.ts';
import { short as warmWater } from './rules/warmWater.ts';
import { short as wellhead } from './rules/wellhead.ts';
import { short as yields } from './rules/yield.ts';
import { short as yieldTest } from './rules/yieldTest.ts';

export const shortRules: ShortWords<RuleList> = {
  ...adapterCover,
  ...buriedLine,
  ...cable,
  ...casingDepth,
  ...checkValve,
  ...clearance,
  ...cooling,
  ...delivery,
  ...electrical,
  ...flowing,
  ...gasAndSand,
  ...inflow,
  ...lifting,
  ...materials,
  ...pipe,
  ...pitless,
  ...pumpDepth,
  ...record,
  ...rope,
  ...screen,
  ...shortage,
  ...supply,
  ...tank,
  ...tankCycle,
  ...warmWater,
  ...wellhead,
  ...yields,
  ...yieldTest,
};
