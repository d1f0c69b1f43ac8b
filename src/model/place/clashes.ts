/** Where no depth meets every rule: which exclude each other, by how much, and what would have to change. */
import { RULES } from '../rules/list.ts';
import { rangesOf } from '../rules/ranges.ts';
import type { Range } from '../rules/rule.ts';
import { gap } from '../rules/say.ts';
import type { Solution } from '../solution.ts';
import { show } from '../units.ts';

export interface Clash {
  readonly rules: readonly string[];
  readonly words: string;
  readonly whatWouldHaveToChange: string;
}

export function clashesOf(solution: Solution): Clash[] {
  const ranges = rangesOf(solution, RULES);
  return [ranges['pump.setting'], ranges['top.depth']].flatMap((range) => clashOf(range, solution));
}

function clashOf(range: Range | null, solution: Solution): Clash[] {
  if (range === null || !range.known || range.ends !== null) return [];
  const spoken = show(solution.facts.units);
  const rules = [range.from.rule, range.to.rule].filter((rule) => rule !== '');
  if (rules.length === 0) return [];
  const apart = gap(range.from.depth - range.to.depth, spoken);
  const part = range.setting === 'top.depth' ? 'pitless adapter' : 'pump';
  return [
    {
      rules,
      words: `No depth of the ${part} meets both: ${range.from.label(spoken)}, and ${range.to.label(spoken)}. They miss each other by ${apart}.`,
      whatWouldHaveToChange: wayOut(range, apart),
    },
  ];
}

/** The first words that fit, by the rule at the range's deeper end. */
function wayOut({ setting, from, to }: Range, apart: string): string {
  if (setting === 'top.depth') {
    return to.rule === 'PR-20'
      ? 'An adapter made to stand under water, insulation and heat over a shallower line, or a heated and housed seal on top.'
      : 'A pump that hangs deeper, insulation and heat over a shallower line, or a heated and housed seal on top.';
  }
  const higher = `Water that falls ${apart} less while pumping: a smaller flow, or storage in the house for the peaks`;
  if (from.rule !== 'PR-02') return `${higher}.`;
  if (to.rule === 'PR-03')
    return `${higher}; or a driller who sees whether blank casing below the screen takes a pump in a shroud.`;
  if (to.rule === 'PR-17') return `${higher}; or a slimmer pump that passes the narrow part.`;
  return `${higher}; or a well that is ${apart} deeper.`;
}
