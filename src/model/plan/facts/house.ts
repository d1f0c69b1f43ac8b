/** The house of a plan in SI. */
import type { HouseFacts } from '../../facts.ts';
import { parseQuantity, psi, writeQuantity } from '../../units.ts';
import { DEFAULTS } from '../defaults.ts';
import type { Plan } from '../schema.ts';
import type { Take } from '../take.ts';
import { pipeFacts } from './pipe.ts';

type HousePlan = Plan['house'];

export function houseFacts(house: HousePlan, take: Take): HouseFacts {
  const cutIn = take.quantity('house.cutIn', house.cutIn, 'pressure', DEFAULTS.cutIn);
  if (!house.line) take.unknown.push('house.line');
  return {
    demand: take.fact('house.demand', house.demand, 'flow'),
    cutIn,
    cutOut: take.quantity('house.cutOut', house.cutOut, 'pressure', DEFAULTS.cutOut),
    tank: take.fact('house.tank', house.tank, 'volume'),
    tankRating: take.quantity('house.tankRating', house.tankRating, 'pressure', DEFAULTS.tankRating),
    precharge: take.quantity(
      'house.precharge',
      house.precharge,
      'pressure',
      usualPrecharge(house.cutIn ?? DEFAULTS.cutIn),
    ),
    reliefValve: take.flag('house.reliefValve', house.reliefValve),
    distance: take.fact('house.distance', house.distance, 'length'),
    rise: take.fact('house.rise', house.rise, 'length'),
    line: house.line ? pipeFacts('house.line', house.line, take) : null,
    kind: take.option('house.kind', house.kind, DEFAULTS.houseKind),
    control: take.option('house.control', house.control, DEFAULTS.control),
  };
}

/** 2 psi under cut-in, in the unit that cut-in was typed in. */
function usualPrecharge(cutIn: string): string {
  const parsed = parseQuantity(cutIn, 'pressure');
  if (!parsed.ok) return DEFAULTS.cutIn;
  const below = Math.max(0, parsed.si - psi(2));
  return parsed.unit === 'psi'
    ? writeQuantity(below, 'pressure', 'psi')
    : writeQuantity(below, 'pressure', parsed.unit, 1000);
}
