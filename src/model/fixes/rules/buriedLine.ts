/** What is offered against a broken rule of `rules/buriedLine.ts`. */
import { words } from '../../rules/fix.ts';
import { orWords, strongerPipe } from '../../rules/otherPipe.ts';
import { lineNeed } from '../../rules/pipeNeeds.ts';
import type { RuleFixes } from '../ruleFixes.ts';

export const buriedLineFixes = {
  'PR-61': ({ solved }) => orWords(strongerPipe(solved, 'house.line', lineNeed(solved), []), words('higherRating', {})),
} satisfies RuleFixes;
