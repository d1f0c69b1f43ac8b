/** What is offered against a broken rule of `rules/screen.ts`. */
import { words } from '../../rules/fix.ts';
import type { RuleFixes } from '../ruleFixes.ts';

export const screenFixes = {
  'PR-37': () => [words('pumpLess', {})],
} satisfies RuleFixes;
