/** What is offered against a broken rule of `rules/gasAndSand.ts`. */
import { words } from '../../rules/fix.ts';
import { movePump } from '../../rules/movePump.ts';
import type { RuleFixes } from '../ruleFixes.ts';

export const gasAndSandFixes = {
  'PR-60'(given, { variant }) {
    switch (variant) {
      case 'gasUnderRoof':
        return [words('outdoors', {})];
      case 'gas':
        return [words('ventIt', {})];
      case 'sandInScreen':
        return [movePump(given, 'PR-03', words('raiseIt', {})), words('raiseIt', {})];
      case 'sandNearBottom':
        return [movePump(given, 'PR-01', words('raiseIt', {})), words('raiseIt', {})];
      default:
        return [words('findSand', {})];
    }
  },
} satisfies RuleFixes;
