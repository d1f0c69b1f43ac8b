/** How far each may go, in words. What begins to be wrong there is said by its rule's own title. */
import type { Direction, HeadroomOf, NoHeadroom } from '../../model/headroom/told.ts';
import type { Band } from '../../model/solution.ts';
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

/** The same under the name of what moves, or beside it. */
const briefly: Readonly<Record<HeadroomOf, Readonly<Record<Direction, Clause>>>> = {
  staticLevel: {
    more: (last, now, show) =>
      last - now > NONE ? `falls more than ${show.depth(last - now)} further` : 'falls any further',
    less: (last, _, show) => `rises above ${show.depth(last)}`,
  },
  yield: {
    more: (last, _, show) => `more than ${show.flow(last)}`,
    less: (last, _, show) => `less than ${show.flow(last)}`,
  },
  demand: {
    more: (last, _, show) => `more than ${show.flow(last)} at once`,
    less: (last, _, show) => `less than ${show.flow(last)} at once`,
  },
  switch: {
    more: (last, _, show) => `turned up past ${show.pressure(last)}`,
    less: (last, _, show) => `turned down past ${show.pressure(last)}`,
  },
  pumpSetting: {
    more: (last, _, show) => `deeper than ${show.depth(last)}`,
    less: (last, _, show) => `higher than ${show.depth(last)}`,
  },
  frostDepth: {
    more: (last, _, show) => (last > NONE ? `deeper than ${show.small(last)}` : 'any frost at all'),
    less: (last, _, show) => `ends above ${show.small(last)}`,
  },
};

/** Where the same becomes a danger, behind what is said of the warning. */
const dangers: Readonly<Record<HeadroomOf, Readonly<Record<Direction, Clause>>>> = {
  staticLevel: {
    more: (last, now, show) => `past ${show.depth(last - now)}`,
    less: (last, _, show) => `above ${show.depth(last)}`,
  },
  yield: {
    more: (last, _, show) => `over ${show.flow(last)}`,
    less: (last, _, show) => `under ${show.flow(last)}`,
  },
  demand: {
    more: (last, _, show) => `over ${show.flow(last)}`,
    less: (last, _, show) => `under ${show.flow(last)}`,
  },
  switch: {
    more: (last, _, show) => `past ${show.pressure(last)}`,
    less: (last, _, show) => `under ${show.pressure(last)}`,
  },
  pumpSetting: {
    more: (last, _, show) => `past ${show.depth(last)}`,
    less: (last, _, show) => `above ${show.depth(last)}`,
  },
  frostDepth: {
    more: (last, _, show) => `past ${show.small(last)}`,
    less: (last, _, show) => `above ${show.small(last)}`,
  },
};

const CLAUSES = { whole: clauses, brief: briefly } as const;

/** Whole sentences stand alone; brief ones under the name of what moves. */
export type Telling = keyof typeof CLAUSES;

/** Of a band, with what ends it there. */
interface BandEnd {
  readonly depth: string;
  readonly name: string;
}

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
  beyond: (telling: Telling, of: HeadroomOf, way: Direction, last: number, now: number, wrong: string, show: Show) =>
    `${capital(CLAUSES[telling][of][way](last, now, show))}: ${wrong}`,
  /** In place of what is wrong: the same as in the sentence before. */
  worse: 'the same, and worse.',
  /** Behind a warning, briefly, where the danger is the same thing. */
  dangerToo: (warning: string, of: HeadroomOf, way: Direction, last: number, now: number, show: Show) =>
    `${warning.replace(/\.$/, '')}; danger ${dangers[of][way](last, now, show)}.`,
  already: (title: string) => `Already now: ${wrongIn(title)}`,
  none: (of: HeadroomOf, way: Direction, end: number, show: Show) =>
    `Nothing more found wrong ${ends[of][way](end, show)}.`,
  noDanger: (of: HeadroomOf, way: Direction, end: number, show: Show) => `No danger found ${ends[of][way](end, show)}.`,
  /** Where a danger stands already, of whatever. */
  noNewDanger: (of: HeadroomOf, way: Direction, end: number, show: Show) =>
    `No further danger found ${ends[of][way](end, show)}; what is one now stays.`,
  overWater: (stands: boolean, of: HeadroomOf, way: Direction, last: number, now: number, show: Show) =>
    capital(
      `${stands ? 'already a danger now; ' : ''}${dangers[of][way](last, now, show)} ${
        of === 'staticLevel' ? 'further down the water leaves the pump dry' : 'the pump hangs over the water'
      }.`,
    ),
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
  /** The bar beside the hole: where the rules for depth hold, or where nobody can tell. */
  band: {
    allowed: (from: BandEnd, to: BandEnd) =>
      `The rules for depth hold from ${from.depth} (${from.name}) to ${to.depth} (${to.name}).`,
    unknown: (from: BandEnd, to: BandEnd) =>
      `From ${from.depth} (${from.name}) to ${to.depth} (${to.name}) nobody knows whether it is right.`,
  } satisfies Record<Band['kind'], (from: BandEnd, to: BandEnd) => string>,
  /** While a level is dragged. */
  before: 'As it was before this move; found again when you let go.',
  looking: 'Looking how far it may go …',
  /** @param names  of what it rests on and nobody said */
  rests: (names: readonly string[]) => `Rests on what is assumed: ${names.join(', ')}.`,
};
