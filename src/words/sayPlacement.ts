/** What placing changed, left and could not do, in words. */
import type { Clash, NotPlaced, ToldFinding, WhyLeft, WhyPlaced } from '../model/place/told.ts';
import type { EndName } from '../model/solution.ts';
import type { Show } from '../model/units.ts';
import { sayEnd } from './sayEnd.ts';
import { sayFinding, sayFix, sayShort } from './sayJudgement.ts';
import type { Words } from './words.ts';

/** Why a field was set, one plain sentence that names the rule. */
export function sayWhyPlaced(why: WhyPlaced, words: Words, show: Show): string {
  const { whys, end } = words.long.places;
  switch (why.variant) {
    case 'finding': {
      const { finding } = why.numbers;
      return whys.finding(sayFinding(finding, words, show).message, finding.rule);
    }
    case 'probeOverIntake':
      return whys.probeOverIntake();
    default:
      return whys[why.variant](end(sayNamed(why.numbers.end, words, show), why.numbers.end.rule));
  }
}

/** Why a field stays as it is. */
export function sayWhyLeft(why: WhyLeft, words: Words, show: Show): string {
  const { stands, standsAgainst, nobodySaid } = words.long.places;
  switch (why.variant) {
    case 'stands':
      return stands[why.numbers.status];
    case 'standsAgainst': {
      const { status, finding } = why.numbers;
      return standsAgainst(stands[status], titleOf(finding, words, show), finding.rule);
    }
    case 'nobodySaid': {
      const { fact, numbers } = why.numbers;
      return nobodySaid(words.long.missing[fact](numbers as Readonly<Record<string, unknown>>));
    }
  }
}

/** Why no placing helps a finding. */
export function sayNotPlaced(rule: string, { status, fix }: NotPlaced, words: Words, show: Show): string {
  const instead = fix === null ? '' : sayFix(rule, fix, words, show);
  return status === null ? instead : `${words.long.places.stands[status]} ${instead}`;
}

export interface SaidClash {
  /** What excludes each other, and by how much. */
  readonly words: string;
  readonly wayOut: string;
}

export function sayClash({ setting, from, to, apart, wayOut }: Clash, words: Words, show: Show): SaidClash {
  const { clash, waysOut, apart: sayApart } = words.long.places;
  const missed = sayApart(apart, show);
  return {
    words: clash[setting](sayNamed(from, words, show), sayNamed(to, words, show), missed),
    wayOut: waysOut[wayOut](missed),
  };
}

function sayNamed(end: EndName, { short }: Words, show: Show): string {
  return sayEnd(end, short, show);
}

function titleOf(finding: ToldFinding, { short }: Words, show: Show): string {
  return sayShort(finding, short, show).title;
}
