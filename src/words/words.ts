/** A language: what the English one says, so that one which lacks a sentence does not compile. */
import type { atHouse } from './en/atHouse.ts';
import type { headroom } from './en/headroom.ts';
import type { long } from './en/long.ts';
import type { short } from './en/short.ts';

/** What a drawing needs. */
export type ShortLanguage = typeof short;
export type LongLanguage = typeof long;
/** What the drawing of the house needs besides. */
export type AtHouseLanguage = typeof atHouse;
export type HeadroomLanguage = typeof headroom;

export interface Words {
  readonly short: ShortLanguage;
  readonly long: LongLanguage;
}

/** What is said of levels and of findings as a whole: what a page needs before it explains any of them. */
export interface FirstWords {
  readonly short: ShortLanguage;
  readonly long: Pick<LongLanguage, 'findings' | 'levels' | 'well'>;
}
