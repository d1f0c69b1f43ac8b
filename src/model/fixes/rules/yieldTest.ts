/** What is offered against a broken rule of `rules/yieldTest.ts`. */
import { words } from '../../rules/fix.ts';
import type { RuleFixes } from '../ruleFixes.ts';

export const yieldTestFixes = {
  'PR-42': () => [words('pumpSteadily', {})],
} satisfies RuleFixes;
