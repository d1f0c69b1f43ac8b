/** What is offered against a broken rule of `rules/adapterCover.ts`. */
import { moveIntoBand, words } from '../../rules/fix.ts';
import type { RuleFixes } from '../ruleFixes.ts';

export const adapterCoverFixes = {
  'PR-64'(given, { variant }) {
    // Which of the two was meant nobody knows: nothing is moved by a click.
    if (variant === 'veryDeep') return [words('smallerUnit', {})];
    return [moveIntoBand(given, 'PR-64', 'top.depth', words('lowerIt', {})), words('lowerIt', {})];
  },
} satisfies RuleFixes;
