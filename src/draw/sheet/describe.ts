/** The drawing in a few sentences, for those who do not see it. */
import type { Solution } from '../../model/solution.ts';
import type { Show } from '../../model/units.ts';
import { sayShort } from '../../words/sayJudgement.ts';
import type { ShortLanguage } from '../../words/words.ts';
import { isAnyAssumed } from '../assumed.ts';
import { fallsToIntake } from '../fallsToIntake.ts';
import { subtitleOf } from './heading.ts';

export function describe(solution: Solution, words: ShortLanguage, show: Show): string {
  const { levels, facts, findings, values } = solution;
  const { description } = words;
  const sentences = [
    description.section(subtitleOf(solution, words, show).join(' ')),
    description.staticLevel({ depth: levels.static }, show),
    fallsToIntake(solution) ? description.fallsToIntake : description.pumpingLevel({ depth: levels.pumping }, show),
    description.intakeAndBottom(
      {
        intake: facts.pump.setting,
        assumed: isAnyAssumed(solution, ['pump.setting']),
        bottom: facts.well.bottom,
      },
      show,
    ),
    description.frost({ depth: values.frostDepth, estimated: isAnyAssumed(solution, ['site.frostDepth']) }, show),
    ...findings.map((finding, i) =>
      description.finding({ number: i + 1, severity: finding.severity, ...sayShort(finding, words, show) }),
    ),
  ];
  return sentences.join(' ');
}
