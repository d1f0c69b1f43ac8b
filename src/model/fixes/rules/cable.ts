/** What is offered against a broken rule of `rules/cable.ts`. */
import { ARRESTOR, SPLICE } from '../../string/lengths.ts';
import { feet } from '../../units.ts';
import { change, changeOr, heightText, words } from '../../rules/fix.ts';
import { freeHeight, freeSpacing } from '../../rules/freePlaces.ts';
import type { RuleFixes } from '../ruleFixes.ts';

export const cableFixes = {
  'PR-12'({ solved, facts }, { variant }) {
    const place = freeHeight(solved, 'torqueArrestor', ARRESTOR, ARRESTOR_HEIGHTS[facts.units]);
    if (place === null) return [words('clearOfTheRest', {})];
    const changes = [{ path: 'string.torqueArrestor', to: place.text }];
    const { height } = place;
    return [
      variant === 'none'
        ? changeOr(change(facts, changes, 'addOne', { height }), words('add', {}))
        : change(facts, changes, 'putIt', { height }),
    ];
  },

  'PR-13'({ solved, facts }) {
    const free = freeSpacing(solved, TIE_SPACINGS[facts.units]);
    if (free === null) return [words('tieBetween', {})];
    return [change(facts, [{ path: 'string.ties', to: free.text }], 'tieEvery', { every: free.spacing })];
  },

  'PR-14'({ facts }) {
    const changes = [{ path: 'string.guards', to: heightText(facts, 40, 12) }];
    return [change(facts, changes, 'addOneEvery', { every: facts.units === 'us' ? feet(40) : 12 })];
  },

  'PR-15'({ solved, facts }) {
    const place = freeHeight(solved, 'splice', SPLICE, SPLICE_HEIGHTS[facts.units]);
    if (place === null) return [words('clearOfTheRest', {})];
    return [change(facts, [{ path: 'string.splices', to: [place.text] }], 'oneSplice', { height: place.height })];
  },
} satisfies RuleFixes;

/** Where an arrestor or a splice may go, the usual height first: as one would type it. */
const ARRESTOR_HEIGHTS = {
  us: ['2 ft', '2.5 ft', '3 ft', '3.5 ft', '1.5 ft', '4 ft'],
  metric: ['0.6 m', '0.75 m', '0.9 m', '1.05 m', '0.45 m', '1.2 m'],
} as const;

const SPLICE_HEIGHTS = {
  us: ['4 ft', '4.5 ft', '5 ft', '3.5 ft', '3 ft', '2.5 ft', '2 ft', '1.5 ft'],
  metric: ['1.2 m', '1.35 m', '1.5 m', '1.05 m', '0.9 m', '0.75 m', '0.6 m', '0.45 m'],
} as const;

const TIE_SPACINGS = {
  us: ['10 ft', '9 ft', '8 ft', '11 ft', '12 ft', '7 ft'],
  metric: ['3 m', '2.8 m', '2.5 m', '3.3 m', '3.6 m', '2.2 m'],
} as const;
