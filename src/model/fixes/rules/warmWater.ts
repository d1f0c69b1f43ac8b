/** What is offered against a broken rule of `rules/warmWater.ts`. */
import { words } from '../../rules/fix.ts';
import type { RuleFixes } from '../ruleFixes.ts';

export const warmWaterFixes = {
  'PR-63': () => [words('motorForWarmth', {})],
} satisfies RuleFixes;
