/** What to expect at the first start, of what hangs there and from what was read so far. */
import { lowestLevel } from '../figures/lowestLevel.ts';
import { pumpAtLevel } from '../figures/curves.ts';
import type { Facts } from '../facts.ts';
import { wellRelation } from '../formulas/wellRelation.ts';
import type { Metres, Pascals } from '../si.ts';
import type { Solution } from '../solution.ts';
import { psi } from '../units.ts';
import { startCard } from '../work/startCard.ts';
import type { Reading, Readings } from './readings.ts';

export interface Expected {
  readonly least: number;
  /** Null where more is never wrong. */
  readonly most: number | null;
}

/** Air under the pressure that starts the pump: common practice, no source. */
const AIR_UNDER: Pascals = psi(2);

/**
 * @param hung  as `asHung` gives it
 * @returns     null where nobody knows what to expect
 */
export function expectedOf(reading: Reading, hung: Solution, readings: Readings): Expected | null {
  const card = startCard(hung);
  switch (reading) {
    case 'staticLevel':
      return one(card.staticLevel);
    case 'voltage':
      return one(card.voltage);
    case 'current':
      return card.current === null ? null : { least: 0, most: card.current.most };
    case 'flow':
      return flowAt(hung, readings);
    case 'precharge':
      return card.switch === null ? null : one(airFor(hung, readings));
    case 'cutIn':
    case 'cutOut':
      return one(card.switch?.[reading]);
    case 'pumpingLevel':
      return drawnTo(hung, readings);
    case 'run':
      return { least: card.leastRun, most: null };
  }
}

function one(value: number | null | undefined): Expected | null {
  return value == null ? null : { least: value, most: value };
}

/** With the switch as it was read: what the gauge shows is what the pump presses against. */
export function withSwitchRead(facts: Facts, { cutIn, cutOut }: Readings): Facts {
  const { house } = facts;
  return { ...facts, house: { ...house, cutIn: cutIn ?? house.cutIn, cutOut: cutOut ?? house.cutOut } };
}

/** At the water that was read; else from what the pump gives once the water is drawn down to what it gives from its rest. */
function flowAt(hung: Solution, readings: Readings): Expected | null {
  const { facts, levels } = hung;
  const read = withSwitchRead(facts, readings);
  const drawn = readings.pumpingLevel;
  const rest = drawn ?? readings.staticLevel ?? levels.static;
  if (rest === null) return null;
  const low = pumpAtLevel(read, { end: 'least', tank: 'cutIn' }, drawn ?? Math.max(rest, lowestLevel(facts).depth));
  const high = pumpAtLevel(read, { end: 'most', tank: 'cutIn' }, rest);
  if (low === null || high === null) return null;
  const planned = drawn === undefined && readings.cutIn === undefined ? startCard(hung).flow : null;
  return { least: planned?.least ?? low.flow, most: Math.max(planned?.most ?? 0, high.flow) };
}

/** Where the switch is not as planned, what is usual under it: air that was planned belongs to another. */
export function airFor({ facts: { house }, plan }: Solution, { cutIn }: Readings): Pascals {
  const { installed = {} } = plan.asBuilt ?? {};
  const reset = installed['house.cutIn'] !== undefined && installed['house.precharge'] === undefined;
  const moved = cutIn !== undefined && Math.abs(cutIn - house.cutIn) > AIR_UNDER;
  if (house.control === 'variable speed' || !(reset || moved)) return house.precharge;
  return (cutIn ?? house.cutIn) - AIR_UNDER;
}

/** From where it rested today: as far down as the house's flow draws it, and as the flow that was read does. */
function drawnTo({ facts, levels, values }: Solution, { staticLevel, flow }: Readings): Expected | null {
  const rest = staticLevel ?? levels.static;
  const relation = wellRelation(facts.water.pumping, facts.water.staticLevel);
  const planned = values.pumpingWaterLevel;
  if (rest === null || relation === null || planned === null || levels.static === null) return one(planned);
  const levelsAt: readonly Metres[] = [
    planned + (rest - levels.static),
    ...(flow === undefined ? [] : [rest + relation.drawdownAt(flow)]),
  ];
  return { least: Math.min(...levelsAt), most: Math.max(...levelsAt) };
}
