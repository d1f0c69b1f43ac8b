/** What is offered against a broken rule of `rules/delivery.ts`. */
import { provenYield } from '../../figures/provenYield.ts';
import { wantedOfPump } from '../../figures/wantedOfPump.ts';
import { words } from '../../rules/fix.ts';
import { LEAST_SHARE } from '../../rules/delivery.ts';
import type { RuleFixes } from '../ruleFixes.ts';

export const deliveryFixes = {
  'PR-54'({ facts, solved }, { variant, limit, measured, numbers }) {
    const { flowLimiter } = facts.pump;
    const gives = provenYield(facts);
    // More than flows in no pump gives for long: it would only draw the well dry.
    if (gives !== null && (measured ?? 0) >= LEAST_SHARE * gives)
      return [wantedOfPump(solved)?.fillsTank === true ? words('tankGetsNoMore', {}) : words('wellGivesNoMore', {})];
    if (typeof flowLimiter === 'number' && limit !== null && flowLimiter < limit) return [words('largerLimiter', {})];
    // A pump of that rating may do: its own sheet tells.
    if ((numbers as { readonly strong?: unknown }).strong !== null) return [words('readItsSheet', {})];
    return [variant === 'givesNone' ? words('strongerPump', {}) : words('strongerOrLess', {})];
  },

  'PR-58': () => [words('holdItBack', {})],
} satisfies RuleFixes;
