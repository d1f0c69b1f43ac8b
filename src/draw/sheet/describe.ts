/** The drawing in a few sentences, for those who do not see it. */
import type { Solution } from '../../model/solution.ts';
import type { Show } from '../../model/units.ts';
import { subtitleOf } from './heading.ts';

export function describe(solution: Solution, show: Show): string {
  const { levels, facts, findings } = solution;
  const sentences = [
    `Section through the well. ${subtitleOf(solution, show)}`,
    levels.static === null ? 'Static water level not known.' : `Static water level ${show.depth(levels.static)}.`,
    levels.pumping === null ? 'Pumping level not known.' : `Pumping level ${show.depth(levels.pumping)}.`,
    `Pump intake ${show.depth(facts.pump.setting)}, well bottom ${show.depth(facts.well.bottom)}.`,
    solution.values.frostDepth === null
      ? 'Frost depth not known.'
      : `Frost to ${show.small(solution.values.frostDepth)}.`,
    ...findings.map((finding, i) => `${i + 1}: ${SEVERITY[finding.severity]}. ${finding.title}, ${finding.amount}.`),
  ];
  return sentences.join(' ');
}

const SEVERITY = { danger: 'Danger', warning: 'Warning', note: 'Note' } as const;
