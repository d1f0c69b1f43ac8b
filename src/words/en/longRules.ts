/** Sentences, reasons, sources, cautions and buttons of every rule. */
import type { RuleList } from '../../model/rules/list.ts';
import type { LongWords } from '../ruleWords.ts';
import { long as adapterCover } from './rules/adapterCover.ts';
import { long as buriedLine } from './rules/buriedLine.ts';
import { long as cable } from './rules/cable.ts';
import { long as casingDepth } from './rules/casingDepth.ts';
import { long as checkValve } from './rules/checkValve.ts';
import { long as clearance } from './rules/clearance.ts';
import { long as cooling } from './rules/cooling.ts';
import { long as delivery } from './rules/delivery.ts';
import { long as electrical } from './rules/electrical.ts';
import { long as flowing } from './rules/flowing.ts';
import { long as gasAndSand } from './rules/gasAndSand.ts';
import { long as inflow } from './rules/inflow.ts';
import { long as lifting } from './rules/lifting.ts';
import { long as materials } from './rules/materials.ts';
import { long as pipe } from './rules/pipe.ts';
import { long as pitless } from './rules/pitless.ts';
import { long as pumpDepth } from './rules/pumpDepth.ts';
import { long as record } from './rules/record.ts';
import { long as rope } from './rules/rope.ts';
import { long as screen } from './rules/screen.ts';
import { long as shortage } from './rules/shortage.ts';
import { long as supply } from './rules/supply.ts';
import { long as tank } from './rules/tank.ts';
import { long as tankCycle } from './rules/tankCycle.ts';
import { long as warmWater } from './rules/warmWater.ts';
import { long as wellhead } from './rules/wellhead.ts';
import { long as yields } from './rules/yield.ts';
import { long as yieldTest } from './rules/yieldTest.ts';

export const longRules: LongWords<RuleList> = {
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
