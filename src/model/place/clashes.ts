import { RULES } from '../rules/list.ts';
import { rangesOf } from '../rules/ranges.ts';
import type { Range } from '../rules/rule.ts';
import type { Solution } from '../solution.ts';
import type { Clash, WayOut } from './told.ts';

export function clashesOf(solution: Solution): Clash[] {
  const ranges = rangesOf(solution, RULES);
  return [ranges['pump.setting'], ranges['top.depth']].flatMap(clashOf);
}

function clashOf(range: Range | null): Clash[] {
  if (range === null || !range.known || range.ends !== null) return [];
  const { setting, from, to } = range;
  const rules = [from.name.rule, to.name.rule].filter((rule) => rule !== null);
  if (rules.length === 0) return [];
  return [
    { setting, rules, from: from.name, to: to.name, apart: Math.abs(from.depth - to.depth), wayOut: wayOut(range) },
  ];
}

/** The first that fits, by the rule at the range's deeper end. */
function wayOut({ setting, from: { name: from }, to: { name: to } }: Range): WayOut {
  if (setting === 'top.depth') return to.rule === 'PR-20' ? 'adapterUnderWater' : 'deeperPump';
  if (from.rule !== 'PR-02') return 'lessDrawdown';
  if (to.rule === 'PR-03') return 'blankBelowScreen';
  return to.rule === 'PR-17' ? 'slimmerPump' : 'deeperWell';
}
