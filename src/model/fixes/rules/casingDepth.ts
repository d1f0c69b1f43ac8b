/** What is offered against a broken rule of `rules/casingDepth.ts`. */
import { words } from '../../rules/fix.ts';
import type { RuleFixes } from '../ruleFixes.ts';

export const casingDepthFixes = {
  'PR-35': () => [words('askLocalCode', {})],

  'PR-36'(_given, { variant }) {
    const rock = variant === 'barelySeated' || variant === 'notInRock';
    // Water that rests too near the casing's end comes no nearer for less pumping.
    return [rock || variant === 'nearRest' ? words('askDriller', {}) : words('pumpLess', {})];
  },
} satisfies RuleFixes;
