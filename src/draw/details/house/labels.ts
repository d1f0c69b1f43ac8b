/** Labels of what stands in the house, and of what nobody said of it. */
import type { Solution } from '../../../model/solution.ts';
import { floorDepth } from '../../../model/string/houseEnd.ts';
import { isUnasked } from '../../../model/string/placedBy.ts';
import { show as showIn, type Show } from '../../../model/units.ts';
import type { PartLabel } from '../../../words/labels.ts';
import type { AtHouseLanguage } from '../../../words/words.ts';
import type { Callout } from '../callouts.ts';
import type { DetailFrame } from '../contract.ts';
import type { Look } from '../partLabels.ts';
import type { Wanted } from '../wanted.ts';

interface Labelled {
  readonly weight: number;
  readonly across: number;
  readonly down: number;
  readonly say: (solution: Solution, words: AtHouseLanguage, show: Show) => PartLabel;
}

const openTank = ({ facts }: Solution): boolean => facts.house.kind === 'open tank';

/** By key; shares say where on the part the leader's dot sits. */
const LABELS: Readonly<Record<string, Labelled>> = {
  disconnect: { weight: 5, across: 0.3, down: 0.3, say: (_, words) => words.disconnect },
  controlBox: { weight: 2.2, across: 0.3, down: 0.5, say: (_, words) => words.controlBox },
  drive: { weight: 2.2, across: 0.3, down: 0.5, say: (_, words) => words.drive },
  tank: {
    weight: 4,
    across: 0.985,
    down: 0.17,
    say: (solution, words, show) =>
      words.tank(
        { volume: solution.facts.house.tank, open: openTank(solution), water: solution.values.tankDrawdown },
        show,
      ),
  },
  float: { weight: 3, across: 0.5, down: 0.4, say: (_, words) => words.float },
  shutOff: {
    weight: 3.6,
    across: 0.7,
    down: 0.3,
    say: (solution, words) => (openTank(solution) ? words.outlet : words.shutOff),
  },
  switch: {
    weight: 4,
    across: 0.7,
    down: 0.3,
    say: ({ facts: { house } }, words, show) =>
      house.control === 'variable speed' ? words.sensor : words.switch(house, show),
  },
  gauge: { weight: 1.8, across: 0.6, down: 0.25, say: (_, words) => words.gauge },
  reliefValve: { weight: 5, across: 0.5, down: 0.7, say: (_, words) => words.reliefValve },
  reliefPipe: {
    weight: 3.4,
    across: 0.5,
    down: 0.94,
    say: ({ facts, parts }, words, show) => {
      const pipe = parts.find(({ kind }) => kind === 'reliefPipe');
      return words.reliefPipe({ over: pipe === undefined ? 0 : floorDepth(facts) - pipe.bottom }, show);
    },
  },
  tankTee: { weight: 1.9, across: 0.86, down: 0.6, say: (_, words) => words.tankTee },
  drain: { weight: 1.2, across: 0.4, down: 0.7, say: (_, words) => words.drain },
  buriedLine: {
    weight: 2.6,
    across: 0.8,
    down: 0.5,
    say: ({ facts, parts, values }, words, show) => {
      const line = parts.find(({ kind }) => kind === 'buriedLine');
      const pipe = facts.house.line;
      const size =
        pipe === null ? null : `${pipe.nominalSize} ${pipe.material.includes('steel') ? 'steel' : pipe.material}`;
      return words.line({ size, top: line?.top ?? 0, belowFrost: values.pitlessBelowFrost }, show);
    },
  },
  riser: {
    weight: 4.5,
    across: 0.5,
    down: 0.7,
    say: ({ values }, words) => words.riser({ freezes: values.frostDepth === null || values.frostDepth > 0 }),
  },
};

export function wantedIn(words: AtHouseLanguage): readonly Wanted[] {
  return Object.entries(LABELS).map(([key, { weight, across, down, say }]) => {
    const look: Look = { weight, say: (solution, _words, show) => say(solution, words, show) };
    return { key, across, down, look };
  });
}

/** Its height is a usual one, and that it is there nobody said. */
export function isDotted(key: string, { parts }: Solution): boolean {
  const part = parts.find((each) => each.key === key);
  return part !== undefined && key !== 'riser' && key !== 'buriedLine' && isUnasked(part);
}

/** Where what is no part stands on paper [px]. */
export interface NotePlaces {
  readonly tank: { readonly x: number; readonly air: number; readonly water: number };
  readonly relief: Spot | null;
  readonly floor: Spot;
}

interface Spot {
  readonly x: number;
  readonly y: number;
}

export function notesOf(
  { facts }: Solution,
  said: AtHouseLanguage,
  units: DetailFrame['units'],
  places: NotePlaces,
): Callout[] {
  const { house } = facts;
  const show = showIn(units);
  const note = (key: string, { x, y }: Spot, weight: number, label: PartLabel): Callout => ({
    ...label,
    key,
    x,
    y,
    weight,
  });
  const { tank, relief, floor } = places;
  return [
    note('floor', floor, 1, said.floor({ rise: house.rise }, show)),
    ...(house.kind === 'open tank'
      ? []
      : [
          note('tankAir', { x: tank.x, y: tank.air }, 1.6, said.air(house, show)),
          note('tankWater', { x: tank.x, y: tank.water }, 2.4, said.full(house, show)),
        ]),
    ...(relief === null ? [] : [note('noRelief', relief, 4, said.noRelief({ none: house.reliefValve === false }))]),
  ];
}
