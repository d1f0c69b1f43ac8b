/** What is offered against a broken rule of `rules/record.ts`. */
import { words } from '../../rules/fix.ts';
import type { RuleFixes } from '../ruleFixes.ts';

export const recordFixes = {
  'PR-62': () => [words('askAgain', {})],
} satisfies RuleFixes;
