/** A language: what the English one says, so that one which lacks a sentence does not compile. */
import type { long } from './en/long.ts';
import type { short } from './en/short.ts';

/** What a drawing needs. */
export type ShortLanguage = typeof short;
export type LongLanguage = typeof long;

export interface Words {
  readonly short: ShortLanguage;
  readonly long: LongLanguage;
}
