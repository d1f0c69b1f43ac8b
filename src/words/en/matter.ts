/** What is the matter, in words: what shows, what is looked at, what that tells, what is done, and what this well says of it. */
import type { CauseId, Likelihood } from '../../model/matter/cause.ts';
import type { CausesOf } from './matter/causeWords.ts';
import { cautions, wellCautions } from './matter/cautions.ts';
import { frost } from './matter/frost.ts';
import { house } from './matter/house.ts';
import { own } from './matter/own.ts';
import { power } from './matter/power.ts';
import { symptoms } from './matter/symptoms.ts';
import { water } from './matter/water.ts';
import { way } from './matter/way.ts';

const causes: CausesOf<CauseId> = { ...power, ...water, ...way, ...house, ...frost };

/** What is said of how likely a cause is, before the reasons. */
const likelihoods: Readonly<Record<Likelihood, string>> = {
  likely: 'More likely in this well',
  open: 'May be',
  unlikely: 'Less likely in this well',
};

const heads = {
  look: 'Look',
  tells: 'What it tells',
  then: 'Then',
  own: 'In this well',
  caution: 'Caution',
  first: 'First',
  place: 'Where',
  /** No figure of the plan bears on it. */
  nothing: 'The plan has no figure that bears on this.',
  found: (title: string): string => `Found in the plan: ${lowerFirst(title)}.`,
  against: (title: string): string => `Against it, by the plan: ${lowerFirst(title)}.`,
  deciding: (names: readonly string[]): string => `Not known, and would tell more: ${names.join('; ')}.`,
  assumed: (names: readonly string[]): string => `Rests on what is assumed: ${names.join('; ')}.`,
};

function lowerFirst(text: string): string {
  return text.charAt(0).toLowerCase() + text.slice(1);
}

/** Over the whole list. */
const caution = 'This list is an aid. Open nothing live; local code and licensed people decide what is done.';

export const matter = { symptoms, causes, own, cautions, wellCautions, likelihoods, heads, caution };
