/** What is offered against a broken rule of `rules/rope.ts`. */
import { KNOT_EFFICIENCY } from '../../formulas/rope.ts';
import { change, words } from '../../rules/fix.ts';
import type { RuleFixes } from '../ruleFixes.ts';

export const ropeFixes = {
  'PR-16': ({ facts }, { limit }) => [
    limit === null
      ? change(facts, [{ path: 'rope.tied', to: 'casing hook' }], 'tieInside', { underSeal: facts.top.kind === 'seal' })
      : words('strongerRope', { strength: limit / KNOT_EFFICIENCY }),
  ],
} satisfies RuleFixes;
