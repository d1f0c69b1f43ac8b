/** What is offered against a broken rule of `rules/lifting.ts`. */
import { gearRating } from '../../figures/gearRating.ts';
import { words } from '../../rules/fix.ts';
import type { RuleFixes } from '../ruleFixes.ts';

export const liftingFixes = {
  'PR-51'({ solved }, { variant }) {
    const rated = { rated: gearRating(solved, 'new') };
    if (variant === 'needsMachine') return [words('machine', rated)];
    return [variant === 'needsWheel' ? words('wheelOrHoist', rated) : words('hoistAndHolders', rated)];
  },
} satisfies RuleFixes;
