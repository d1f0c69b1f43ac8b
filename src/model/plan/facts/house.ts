/** The house of a plan in SI. */
import type { HouseFacts } from '../../facts.ts';
import { readQuantity, psi, writeQuantity } from '../../units.ts';
import type { Defaults } from '../defaults.ts';
import type { Plan } from '../schema.ts';
import { read, type Take } from '../take.ts';
import { lineFacts } from './pipe.ts';

type HousePlan = NonNullable<Plan['house']>;

export function houseFacts(house: HousePlan, usual: Defaults, take: Take): HouseFacts {
  const isOpen = (house.kind ?? usual.houseKind) === 'open tank';
  // An open tank has neither switch nor cushion: nothing rests on theirs, and nothing of them is told as assumed.
  const pressure = (path: string, typed: string | undefined, otherwise: string) =>
    isOpen
      ? (take.maybe(typed, 'pressure') ?? read(otherwise, 'pressure'))
      : take.quantity(path, typed, 'pressure', otherwise);
  const cutIn = pressure('house.cutIn', house.cutIn, usual.cutIn);
  if (!house.line) take.unknown.push('house.line');
  return {
    demand: demandOf(house, usual, take),
    cutIn,
    cutOut: pressure('house.cutOut', house.cutOut, usual.cutOut),
    tank: take.fact('house.tank', house.tank, 'volume'),
    tankRating: pressure('house.tankRating', house.tankRating, usual.tankRating),
    precharge: pressure('house.precharge', house.precharge, usualPrecharge(house.cutIn ?? usual.cutIn)),
    reliefValve: take.flag('house.reliefValve', house.reliefValve),
    distance: take.fact('house.distance', house.distance, 'length'),
    rise: take.fact('house.rise', house.rise, 'length'),
    line: house.line ? lineFacts(house.line, take) : null,
    kind: take.option('house.kind', house.kind, usual.houseKind),
    control: isOpen ? (house.control ?? usual.control) : take.option('house.control', house.control, usual.control),
  };
}

/** What the house wants is a choice: assumed where it is left out, and not known only where that is typed. */
function demandOf(house: HousePlan, usual: Defaults, take: Take) {
  return house.demand === undefined
    ? take.quantity('house.demand', undefined, 'flow', usual.demand)
    : take.fact('house.demand', house.demand, 'flow');
}

/** How far the air cushion stands under cut-in, by the unit that cut-in was typed in: the same to a man with a gauge. */
const UNDER_CUT_IN: Readonly<Record<string, number>> = { psi: psi(2), kPa: 15e3, bar: 0.15e5 };

function usualPrecharge(cutIn: string): string {
  const parsed = readQuantity(cutIn, 'pressure');
  if (!parsed.ok)
    throw new RangeError(`usualPrecharge: cut-in "${cutIn}" is no pressure; read the plan with readPlan first`);
  const below = Math.max(0, parsed.si - (UNDER_CUT_IN[parsed.unit] ?? psi(2)));
  return writeQuantity(below, 'pressure', parsed.unit);
}
