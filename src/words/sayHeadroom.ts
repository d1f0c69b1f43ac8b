/** How far the well may go, in sentences. */
import type { Headroom, Step } from '../model/headroom/told.ts';
import type { Severity } from '../model/solution.ts';
import type { Show } from '../model/units.ts';
import { sayShort } from './sayJudgement.ts';
import type { Telling } from './en/headroom.ts';
import type { HeadroomLanguage, ShortLanguage } from './words.ts';

/** Fetched apart from the rest of a language: a page asks for it when the well is drawn. */
export interface HeadroomWords {
  readonly short: ShortLanguage;
  readonly headroom: HeadroomLanguage;
}

export interface SaidStep {
  /** Null where nothing is wrong, or nobody can tell. */
  readonly severity: Severity | null;
  /** "The water at rest falls more than 38 ft further: the pump runs dry." */
  readonly text: string;
}

export interface SaidHeadroom {
  /** "Water at rest" */
  readonly name: string;
  /** What it is now; empty where nobody said. */
  readonly now: string;
  /** One or two sentences: the warning before the danger. */
  readonly steps: readonly SaidStep[];
}

export function sayHeadroom(
  line: Headroom,
  words: HeadroomWords,
  show: Show,
  telling: Telling = 'whole',
): SaidHeadroom {
  const { headroom } = words;
  const { of, now } = line;
  return {
    name: headroom.names[of],
    now: now === null ? '' : headroom.now[of](now, show),
    steps: stepsOf(line, words, show, telling),
  };
}

function stepsOf(line: Headroom, words: HeadroomWords, show: Show, telling: Telling): SaidStep[] {
  const { of, direction, now, end, warning, danger, standing } = line;
  const { headroom } = words;
  if (now === null || end === null) return [{ severity: null, text: headroom.missing[of] }];
  const textOf = (step: Step, wrong: string) => {
    if (step.already) return headroom.already(titleOf(step, words, show));
    if (step.overWater) return headroom.overWater(standing.includes(step.rule), of, direction, step.last, now, show);
    return headroom.beyond(telling, of, direction, step.last, now, wrong, show);
  };
  const say = (step: Step, wrong = wrongAt(step, words, show)): SaidStep => ({
    severity: step.severity,
    text: textOf(step, wrong),
  });
  if (danger !== null && (warning === null || isNoSooner(warning, danger))) return [say(danger)];
  if (warning === null) return [{ severity: null, text: headroom.none(of, direction, end, show) }];
  if (danger === null) {
    const none = standing.length > 0 ? headroom.noNewDanger : headroom.noDanger;
    return [say(warning), { severity: null, text: none(of, direction, end, show) }];
  }
  // A warning of its own may lie beyond a danger that a warning has grown into.
  if (Math.abs(danger.at - now) < Math.abs(warning.at - now)) return [say(danger), say(warning)];
  if (danger.overWater) return [say(warning), say(danger)];
  const same = titleOf(warning, words, show) === titleOf(danger, words, show);
  if (!same) return [say(warning), say(danger)];
  if (telling === 'whole') return [say(warning), say(danger, headroom.worse)];
  const first = say(warning);
  return [{ ...first, text: headroom.dangerToo(first.text, of, direction, danger.last, now, show) }];
}

/** What begins as a danger is told once; and what is a danger already leaves no warning to tell. */
function isNoSooner(warning: Step, danger: Step): boolean {
  return danger.already || warning.at === danger.at;
}

/** What is known and noted now is no news there: that it counts is. */
function wrongAt(step: Step, words: HeadroomWords, show: Show): string {
  const { headroom } = words;
  const title = titleOf(step, words, show);
  const noted = step.before !== null && titleOf({ ...step, finding: step.before }, words, show) === title;
  return noted ? headroom.matters(title) : headroom.wrong(title);
}

/** A rule that is told together with others turns on a fact that nobody said: its own title says which. */
function titleOf({ rule, finding }: Pick<Step, 'rule' | 'finding'>, { short }: HeadroomWords, show: Show): string {
  const own = finding.rule === rule ? finding : (finding.together.find((each) => each.rule === rule) ?? finding);
  return sayShort(own, short, show).title;
}
