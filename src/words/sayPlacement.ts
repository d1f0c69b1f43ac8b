/** What placing changed, left and could not do, in words. */
import type { Caveat } from '../model/place/caveats.ts';
import type { Clash, HungFrom, NotPlaced, ToldFinding, WhyLeft, WhyPlaced } from '../model/place/told.ts';
import type { EndName } from '../model/solution.ts';
import type { Show } from '../model/units.ts';
import { sayEnd } from './sayEnd.ts';
import { sayFinding, sayFix, sayShort } from './sayJudgement.ts';
import type { Words } from './words.ts';

/** Why a field was set, one plain sentence. */
export function sayWhyPlaced(why: WhyPlaced, words: Words, show: Show): string {
  const { whys } = words.long.places;
  switch (why.variant) {
    case 'finding':
      return whys.finding(sayFinding(why.numbers.finding, words, show).message);
    case 'hung': {
      const { from, fall, hung } = why.numbers;
      return whys.hung(from, fall, hung, nameOfEnd(from, words, show), show);
    }
    case 'probeOverIntake':
      return whys.probeOverIntake(why.numbers.above, show);
    case 'protectedByCurrent':
      return whys.protectedByCurrent();
    case 'belowFrost': {
      const { below, frost, estimated, beyond } = why.numbers;
      return whys.belowFrost(below, frost, estimated, beyond, show);
    }
    case 'covered':
      return whys.covered(why.numbers.cover, why.numbers.beyond, show);
  }
}

/** Why a field stays as it is. */
export function sayWhyLeft(why: WhyLeft, words: Words, show: Show): string {
  const { places } = words.long;
  switch (why.variant) {
    case 'stands':
      return places.stands[why.numbers.status];
    case 'standsAgainst': {
      const { status, finding } = why.numbers;
      return places.standsAgainst(places.stands[status], titleOf(finding, words, show));
    }
    case 'nobodySaid': {
      const { fact, numbers } = why.numbers;
      return places.nobodySaid(words.long.missing[fact](numbers as Readonly<Record<string, unknown>>, show));
    }
    case 'flowing':
      return places.flowing();
    case 'dry':
      return places.dry(why.numbers.rest, why.numbers.bottom, show);
    case 'hangsWell':
      return places.hangsWell(why.numbers.fall, why.numbers.hung, show);
    case 'underProbe':
      return places.underProbe(why.numbers.probe, show);
    case 'deepEnough':
      return places.deepEnough(why.numbers.below, why.numbers.frost, show);
    case 'cannotLift':
      return places.cannotLift(why.numbers.from, why.numbers.lifts, show);
    case 'noRoomForPump': {
      const { least, atRest, deepest, end, wayOut } = why.numbers;
      const change = places.waysOut[wayOut](places.gap(least - deepest, show));
      return places.noRoomForPump(least, atRest, deepest, sayNamed(end, words, show), change, show);
    }
    case 'noRoomForAdapter':
      return places.noRoomForAdapter(why.numbers.least, why.numbers.by, show);
    case 'worseThere': {
      const { to, wrong } = why.numbers;
      return places.worseThere(to, titleOf(wrong.finding, words, show), wrong.hidden, show);
    }
  }
}

/** What the depths rest on and nobody can vouch for. */
export function sayCaveat({ variant, numbers }: Caveat, { long }: Words, show: Show): string {
  return (long.places.caveats[variant] as (numbers: object, show: Show) => string)(numbers, show);
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
  const { clash, waysOut, apart: sayApart, gap } = words.long.places;
  return {
    words: clash[setting](sayNamed(from, words, show), sayNamed(to, words, show), sayApart(apart, show)),
    wayOut: waysOut[wayOut](gap(apart, show)),
  };
}

function sayNamed(end: EndName, { short }: Words, show: Show): string {
  return sayEnd(end, short, show);
}

/** What the pump hangs by, where that has a name of its own. */
function nameOfEnd(from: HungFrom, words: Words, show: Show): string {
  if (from.by === 'end') return sayNamed(from.end, words, show);
  return from.by === 'worse' ? titleOf(from.wrong.finding, words, show) : '';
}

function titleOf(finding: ToldFinding, { short }: Words, show: Show): string {
  return sayShort(finding, short, show).title;
}
