/** What a pump can put on its tank: a rating that nobody said is not told as said, and what can burst is told to be relieved. */
import { expect, test } from 'vitest';
import { choose } from '../../src/words/en/choose.ts';

const said = (relief: boolean | null, ratingAssumed: boolean, isOver: boolean): string =>
  choose.tanks.reach({ relief, ratingAssumed, isOver }, '225 psi', '100 psi');

test('over an assumed rating, with nobody sure of a relief valve', () => {
  expect(said(null, true, true)).toBe(
    'The pump can put 225 psi on it; 100 psi is only assumed for its rating: read its plate. Nobody said whether a relief valve is there. Fit one: a tank over its rating can burst.',
  );
});

test('under a rating that was said', () => {
  expect(said(false, false, false)).toBe(
    'The pump can put 225 psi on it; its rating is 100 psi. There is no relief valve.',
  );
});

test('relieved', () => {
  expect(said(true, true, true)).toBe('The pump can put 225 psi on it; a relief valve is there.');
});
