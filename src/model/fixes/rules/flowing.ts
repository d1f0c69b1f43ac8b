/** What is offered against a broken rule of `rules/flowing.ts`. */
import { words } from '../../rules/fix.ts';
import type { RuleFixes } from '../ruleFixes.ts';

export const flowingFixes = {
  'PR-38': () => [words('callContractor', {})],
} satisfies RuleFixes;
