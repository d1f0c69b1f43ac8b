/** How far each may go, in words. What begins to be wrong there is said by its rule's own title. */
import type { Direction, HeadroomOf, NoHeadroom } from '../../model/headroom/told.ts';
import type { Show } from '../../model/units.ts';
import { capital, level } from './phrases.ts';

/** From the last value at which nothing more was wrong, and what it is now: "the pump hangs deeper than 172 ft". */
type Clause = (last: number, now: number, show: Show) => string;

/** A way that rounds to nothing on the page is none. */
const NONE = 1e-6;

const clauses: Readonly<Record<HeadroomOf, Readonly<Record<Direction, Clause>>>> = {
  staticLevel: {
    more: (last, now, show) =>
      last - now > NONE
        ? `the water at rest falls more than ${show.depth(last - now)} further`
        : 'the water at rest falls any further',
    less: (last, _, show) => `the water at rest rises above ${show.depth(last)}`,
  },
  yield: {
    more: (last, _, show) => `the well gives more than ${show.flow(last)}`,
    less: (last, _, show) => `the well gives less than ${show.flow(last)}`,
  },
  demand: {
    more: (last, _, show) => `the house wants more than ${show.flow(last)} at once`,
    less: (last, _, show) => `the house wants less than ${show.flow(last)} at once`,
  },
  switch: {
    more: (last, _, show) => `the switch is turned up past ${show.pressure(last)}`,
    less: (last, _, show) => `the switch is turned down past ${show.pressure(last)}`,
  },
  pumpSetting: {
    more: (last, _, show) => `the pump hangs deeper than ${show.depth(last)}`,
    less: (last, _, show) => `the pump hangs higher than ${show.depth(last)}`,
  },
  frostDepth: {
    more: (last, _, show) =>
      last > NONE ? `the frost goes deeper than ${show.small(last)}` : 'there is any frost at all',
    less: (last, _, show) => `the frost ends above ${show.small(last)}`,
  },
};

/** Where the search ended without a find. */
const ends: Readonly<Record<HeadroomOf, Readonly<Record<Direction, (end: number, show: Show) => string>>>> = {
  staticLevel: {
    more: (end, show) => `with the water at rest down to ${show.depth(end)}`,
    less: (end, show) => `with the water at rest up to ${level(end, show)}`,
  },
  yield: {
    more: (end, show) => `up to a yield of ${show.flow(end)}`,
    less: (end, show) => `down to a yield of ${show.flow(end)}`,
  },
  demand: {
    more: (end, show) => `up to ${show.flow(end)} at once`,
    less: (end, show) => `down to ${show.flow(end)} at once`,
  },
  switch: {
    more: (end, show) => `with the switch up to ${show.pressure(end)}`,
    less: (end, show) => `with the switch down to ${show.pressure(end)}`,
  },
  pumpSetting: {
    more: (end, show) => `with the pump down to ${show.depth(end)}`,
    less: (end, show) => `with the pump up to ${show.depth(end)}`,
  },
  frostDepth: {
    more: (end, show) => `with frost down to ${show.small(end)}`,
    less: (end, show) => `with frost up to ${show.small(end)}`,
  },
};

/** For the middle of a sentence; "PVC" stays "PVC". */
function lower(title: string): string {
  return title.replace(/^[A-Z](?=[a-z ])/, (first) => first.toLowerCase());
}

/** "Whether the pump is strong enough" is no statement, and a question keeps its mark. */
function wrongIn(title: string): string {
  const said = lower(title);
  const whole = said.startsWith('whether ') ? `nobody can tell ${said}` : said;
  return whole.endsWith('?') ? whole : `${whole}.`;
}

export const headroom = {
  title: 'How far may it go',
  /** Over the list. */
  about: 'Each moved alone, all else as it stands. Only what could be checked counts.',
  names: {
    staticLevel: 'Water at rest',
    yield: 'Yield of the well',
    demand: 'Peak flow needed',
    switch: 'Pressure switch',
    pumpSetting: 'Pump',
    frostDepth: 'Frost',
  } satisfies Record<HeadroomOf, string>,
  /** What it is now, behind its name. */
  now: {
    staticLevel: (now: number, show: Show) => level(now, show),
    yield: (now: number, show: Show) => show.flow(now),
    demand: (now: number, show: Show) => show.flow(now),
    switch: (now: number, show: Show) => `stops the pump at ${show.pressure(now)}`,
    pumpSetting: (now: number, show: Show) => `intake at ${show.depth(now)}`,
    frostDepth: (now: number, show: Show) => show.small(now),
  } satisfies Record<HeadroomOf, (now: number, show: Show) => string>,
  wrong: wrongIn,
  /** What is noted now, and a warning there. */
  matters: (title: string) =>
    title.endsWith('?') || title.startsWith('Whether ') ? wrongIn(title) : `then it matters that ${lower(title)}.`,
  /** @param wrong  what is wrong beyond */
  beyond: (of: HeadroomOf, way: Direction, last: number, now: number, wrong: string, show: Show) =>
    `${capital(clauses[of][way](last, now, show))}: ${wrong}`,
  /** The same thing wrong as in the sentence before, and worse. */
  worse: (of: HeadroomOf, way: Direction, last: number, now: number, show: Show) =>
    `${capital(clauses[of][way](last, now, show))}: the same, and worse.`,
  already: (title: string) => `Already now: ${wrongIn(title)}`,
  none: (of: HeadroomOf, way: Direction, end: number, show: Show) =>
    `Nothing more found wrong ${ends[of][way](end, show)}.`,
  noDanger: (of: HeadroomOf, way: Direction, end: number, show: Show) => `No danger found ${ends[of][way](end, show)}.`,
  missing: {
    staticLevel: 'Not known: nobody said where the water stands at rest.',
    yield: 'Not known: nobody said what the well gives.',
    demand: 'Not known: nobody said what the house wants.',
    switch: 'Not known: nobody said how the switch is set.',
    pumpSetting: 'Not known: nobody said where the pump hangs.',
    frostDepth: 'Not known: nobody said how deep the frost goes.',
  } satisfies Record<HeadroomOf, string>,
  refused: {
    flowing: 'The well flows by itself: first a licensed contractor, then this.',
    dry: 'The well is dry: first water, then this.',
  } satisfies Record<NoHeadroom, string>,
  /** @param names  of what it rests on and nobody said */
  rests: (names: readonly string[]) => `Rests on what is assumed: ${names.join(', ')}.`,
};
