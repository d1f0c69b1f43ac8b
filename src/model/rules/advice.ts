/** Rules that no plan can decide: they stand as advice, in the words of a language. */
import type { Facts } from '../facts.ts';
import type { Advice, Solved } from '../solution.ts';
import { isConducting } from '../tables/casings.ts';

const always = () => true;
const pitless = ({ top }: Facts) => top.kind === 'pitless';
const metalCasing = ({ well }: Facts) => well.casings.some(isConducting);

/** By number, with whether it is about this well. */
export const ADVICE = {
  'PR-22': pitless,
  'PR-25': always,
  'PR-27': always,
  'PR-28': always,
  'PR-29': always,
  'PR-30': always,
  'PR-31': always,
  'PR-32': metalCasing,
  'PR-33': always,
  'PR-34': always,
  'PR-39': always,
  'PR-41': always,
  'PR-45': always,
} as const satisfies Readonly<Record<string, (facts: Facts) => boolean>>;

export type AdviceNumber = keyof typeof ADVICE;

export const ADVICE_NUMBERS = Object.keys(ADVICE) as readonly AdviceNumber[];

export function adviceFor({ facts }: Pick<Solved, 'facts'>): Advice[] {
  return ADVICE_NUMBERS.filter((number) => ADVICE[number](facts)).map((rule) => ({ rule }));
}
