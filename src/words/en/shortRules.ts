/** Titles and amounts of what is wrong, and ends of bands, of every rule. */
import type { RuleList } from '../../model/rules/list.ts';
import type { ShortWords } from '../ruleWords.ts';
import { short as adapterCover } from './brief/adapterCover.ts';
import { short as buriedLine } from './brief/buriedLine.ts';
import { short as cable } from './brief/cable.ts';
import { short as casingDepth } from './brief/casingDepth.ts';
import { short as checkValve } from './brief/checkValve.ts';
import { short as clearance } from './brief/clearance.ts';
import { short as cooling } from './brief/cooling.ts';
import { short as delivery } from './brief/delivery.ts';
import { short as electrical } from './brief/electrical.ts';
import { short as flowing } from './brief/flowing.ts';
import { short as gasAndSand } from './brief/gasAndSand.ts';
import { short as inflow } from './brief/inflow.ts';
import { short as lifting } from './brief/lifting.ts';
import { short as materials } from './brief/materials.ts';
import { short as pipe } from './brief/pipe.ts';
import { short as pitless } from './brief/pitless.ts';
import { short as pumpDepth } from './brief/pumpDepth.ts';
import { short as record } from './brief/record.ts';
import { short as rope } from './brief/rope.ts';
import { short as screen } from './brief/screen.ts';
import { short as shortage } from './brief/shortage.ts';
import { short as supply } from './brief/supply.ts';
import { short as tank } from './brief/tank.ts';
import { short as tankCycle } from './brief/tankCycle.ts';
import { short as warmWater } from './brief/warmWater.ts';
import { short as wellhead } from './brief/wellhead.ts';
import { short as yields } from './brief/yield.ts';
import { short as yieldTest } from './brief/yieldTest.ts';

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
