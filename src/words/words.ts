/** A language: what the English one says, so that one which lacks a sentence does not compile. */
import type { headroom } from './en/headroom.ts';
import type { long } from './en/long.ts';
import type { short } from './en/short.ts';

/** What a drawing needs. */
export type ShortLanguage = typeof short;
export type LongLanguage = typeof long;
export type HeadroomLanguage = typeof headroom;

export interface Words {
  readonly short: ShortLanguage;
  readonly long: LongLanguage;
}
