/** What is offered against a broken rule of `rules/pipe.ts`. */
import { words } from '../../rules/fix.ts';
import { jointChanges, jointFixes } from '../../rules/joints.ts';
import { orWords, strongerPipe, widerPipes } from '../../rules/otherPipe.ts';
import { dropPipeNeed } from '../../rules/pipeNeeds.ts';
import type { RuleFixes } from '../ruleFixes.ts';

export const pipeFixes = {
  'PR-18'({ solved, facts }, { variant }) {
    switch (variant) {
      case 'weakFittings':
      case 'tooFewClamps':
      case 'rustingScrews':
        return jointFixes(facts);
      case 'threadedSchedule40':
      case 'threadedSocketPipe':
      case 'threadsWeakerThanPump':
      case 'threadsBelowUsualRating':
        return orWords(strongerPipe(solved, 'dropPipe', dropPipeNeed(solved), []), words('unthreadedPipe', {}));
      default:
        return orWords(
          strongerPipe(solved, 'dropPipe', dropPipeNeed(solved), jointChanges(facts)),
          words('higherRating', {}),
        );
    }
  },

  'PR-48'({ solved }) {
    return orWords(strongerPipe(solved, 'dropPipe', dropPipeNeed(solved), []), words('higherRating', {}));
  },

  'PR-47'({ solved, facts }, { variant }) {
    const flow = facts.house.demand;
    const otherwise = words('widerOrLessFlow', {});
    if (flow === null) return [otherwise];
    return orWords(widerPipes(solved, flow, variant === 'lineTooSmall' ? 'house.line' : 'dropPipe'), otherwise);
  },
} satisfies RuleFixes;
