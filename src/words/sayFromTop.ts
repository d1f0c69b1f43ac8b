/** The well from top to bottom in words: the section for those who do not see it, or would rather read it. */
import type { Standing } from '../model/string/fromTop.ts';
import type { Meeting } from '../model/string/meetings.ts';
import type { Metres } from '../model/si.ts';
import type { Band, BandSetting, Solution } from '../model/solution.ts';
import type { Show } from '../model/units.ts';
import type { fromTop } from './en/fromTop.ts';
import { nameOfPath } from './en/plan/paths.ts';
import { measureOf, sayBand } from './sayBand.ts';
import { sayEnd } from './sayEnd.ts';
import { sayShort } from './sayJudgement.ts';
import type { HeadroomLanguage, ShortLanguage } from './words.ts';

/** Fetched apart from the rest of a language: a page asks for them when the list is opened. */
export interface FromTopWords {
  readonly short: ShortLanguage;
  readonly headroom: HeadroomLanguage;
  readonly fromTop: typeof fromTop;
}

export interface SaidStanding {
  readonly key: string;
  readonly name: string;
  /** "5 ft to 158 ft", "depth not known" */
  readonly where: string;
  /** Whole sentences: what it is, what it meets, what of it is assumed. */
  readonly says: readonly string[];
}

export function sayStanding(standing: Standing, { fromTop: words }: FromTopWords, show: Show): SaidStanding {
  const { key, telling, above, below, assumed, unasked } = standing;
  // A variant and its numbers belong together by their types, which a look-up cannot follow.
  const tell = words.tellings[telling.variant] as (
    numbers: object,
    show: Show,
  ) => { readonly name: string; readonly says: readonly string[] };
  const { name, says } = tell(telling.numbers, show);
  const names = [...new Set(assumed.map((path) => lower(nameOfPath(path))))];
  return {
    key,
    name,
    where: whereOf(standing, words, show),
    says: [
      ...says,
      ...(above === null ? [] : [words.above(sayMeeting(above, words))]),
      ...(below === null ? [] : [words.below(sayMeeting(below, words))]),
      ...(unasked ? [words.unasked] : []),
      ...(names.length === 0 ? [] : [words.assumed(names)]),
    ],
  };
}

function sayMeeting(meeting: Meeting, words: FromTopWords['fromTop']): string {
  return meeting.with === 'liftOutPipe' ? words.liftOutPipe : words.meets(meeting.with, meeting.joint);
}

function whereOf(standing: Standing, words: FromTopWords['fromTop'], show: Show): string {
  const { top, bottom, telling, placeAssumed } = standing;
  if (top === null) return words.notKnown;
  const said = words.where(top, bottom, telling.variant === 'casing', show);
  if (bottom === null || placeAssumed.top === placeAssumed.bottom)
    return placeAssumed.top ? words.placeAssumed.both(said) : said;
  return words.placeAssumed[placeAssumed.top ? 'top' : 'bottom'](said);
}

/** Where the pump may hang and why, and where it hangs; of an adapter, where it may stand. */
export function sayMayHang(
  setting: BandSetting,
  solution: Pick<Solution, 'bands' | 'levels' | 'facts' | 'findings'>,
  words: FromTopWords,
  show: Show,
): readonly string[] {
  const { mayHang: where } = words.fromTop;
  const { levels, facts } = solution;
  const band = solution.bands.find((each) => each.setting === setting);
  if (band === undefined) {
    // Water that stands at the ground or over it: no depth is right before somebody has seen to that.
    if (levels.static !== null && setting === 'pump.setting') return [where.flowing];
    return [setting === 'pump.setting' ? where.noStaticLevel : where.noFrost];
  }
  if (band.from === null || band.to === null) return [sayNowhere(band, solution, words, show)];
  const now = setting === 'pump.setting' ? facts.pump.setting : facts.top.kind === 'pitless' ? facts.top.depth : null;
  return [sayBand(band, words, show), ...(now === null ? [] : [sayNow(band, now, words, show)])].filter(
    (sentence) => sentence !== '',
  );
}

function sayNow(
  { setting, kind, from, to }: Band,
  now: Metres,
  { fromTop: { mayHang: where } }: FromTopWords,
  show: Show,
): string {
  const measure = measureOf(setting, show);
  const ofPump = setting === 'pump.setting';
  const over = now - (to ?? now);
  const short = (from ?? now) - now;
  const away = Math.max(over, short);
  // What rounds to nothing in the reader's unit is within.
  if (away <= 0 || measure(away) === measure(0)) {
    if (!ofPump) return where.adapterWithin(measure(now));
    return (kind === 'unknown' ? where.withinUnknown : where.within)(measure(now));
  }
  return (ofPump ? where.off : where.adapterOff)(measure(now), measure(away), over > 0);
}

function sayNowhere(
  { clash, fromEnd, toEnd }: Band,
  { findings }: Pick<Solution, 'findings'>,
  words: FromTopWords,
  show: Show,
): string {
  const { mayHang: where } = words.fromTop;
  const only = clash.length === 1 ? findings.find(({ rule }) => rule === clash[0]) : undefined;
  if (only !== undefined && fromEnd.rule !== only.rule && toEnd.rule !== only.rule)
    return where.wrongAnywhere(lower(sayShort(only, words.short, show).title));
  return where.nowhere(sayEnd(fromEnd, words.short, show), sayEnd(toEnd, words.short, show));
}

/** For the middle of a sentence; "PE" stays "PE". */
function lower(text: string): string {
  return text.replace(/^[A-Z](?=[a-z ])/, (first) => first.toLowerCase());
}
