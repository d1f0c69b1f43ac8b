import { lowestStatic } from '../figures/lowestPumping.ts';
import { probeAboveIntake } from '../rules/cutOff.ts';
import { exceeds } from '../rules/grace.ts';
import { RULES } from '../rules/list.ts';
import { rangesOf } from '../rules/ranges.ts';
import type { Range } from '../rules/rule.ts';
import type { EndName, Solution } from '../solution.ts';
import type { Clash, WayOut } from './told.ts';

export function clashesOf(solution: Solution): Clash[] {
  const ranges = rangesOf(solution, RULES);
  return [ranges['pump.setting'], ranges['top.depth']]
    .flatMap((range) => clashOf(range, solution))
    .filter(({ rules }) => rules.some((rule) => isBroken(solution, rule)));
}

/** Where water is held on purpose nothing is broken, though no depth meets what is asked without it. */
function isBroken({ findings }: Solution, rule: string): boolean {
  return findings.some(
    (finding) =>
      finding.severity !== 'note' && (finding.rule === rule || finding.together.some((each) => each.rule === rule)),
  );
}

function clashOf(range: Range | null, solution: Solution): Clash[] {
  if (range === null || !range.known || range.ends !== null) return [];
  const { setting, from, to } = range;
  const rules = [from.name.rule, to.name.rule].filter((rule) => rule !== null);
  if (rules.length === 0) return [];
  return [
    {
      setting,
      rules,
      from: from.name,
      to: to.name,
      apart: Math.abs(from.depth - to.depth),
      wayOut: wayOut(range, solution),
    },
  ];
}

/** The first that fits, by the rule at the range's deeper end. */
function wayOut({ setting, from: { name: from }, to: { name: to, depth } }: Range, { facts }: Solution): WayOut {
  if (setting === 'top.depth') return wayOutForAdapter(to);
  // Where the pump would have to be stopped with the water above its level at rest, no protection ever lets it start.
  const stopsAt = depth - Math.max(probeAboveIntake(facts) ?? 0, 0);
  if (to.rule === 'PR-46' && !exceeds(stopsAt - (lowestStatic(facts) ?? 0), 'length')) return 'onlyStrongerPump';
  return from.rule === 'PR-02' || to.rule === 'PR-46' ? wayOutForPump(to) : 'lessDrawdown';
}

/** Where the water leaves no room over what ends the pump's way down. */
export function wayOutForPump({ rule }: EndName): WayOut {
  if (rule === 'PR-46') return 'strongerPump';
  if (rule === 'PR-03') return 'blankBelowScreen';
  return rule === 'PR-17' ? 'slimmerPump' : 'deeperWell';
}

function wayOutForAdapter({ rule, variant }: EndName): WayOut {
  if (rule === 'PR-20') return 'adapterUnderWater';
  if (variant === 'aboveLiner') return 'adapterInLiner';
  return variant === 'abovePump' ? 'deeperPump' : 'heatedTop';
}
