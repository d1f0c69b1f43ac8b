/** How deep a pitless adapter can stand. */
import type { Facts } from '../facts.ts';
import type { Metres } from '../si.ts';
import { feet } from '../units.ts';
import { dischargeDepth } from '../string/pumpDepths.ts';
import { ROOM_OVER_PUMP } from '../string/lengths.ts';

/** A trench beside the casing is dug no deeper for an adapter. Common practice, no source. */
export const DEEPEST_DIG: Metres = feet(12);
/** Left between an adapter and the top of a liner below it. Common practice, no source. */
export const LEAST_BELOW_ADAPTER: Metres = feet(1);

export interface AdapterRoom {
  /** Deepest place of the outlet's top; not positive where there is no room at all. */
  readonly deepest: Metres;
  /** What ends it there. */
  readonly by: 'digging' | 'casing' | 'liner' | 'pump';
}

/**
 * How deep an adapter can stand: in the outer casing alone, above any liner, above the pump, and no deeper than one digs.
 * The hole for it goes through one wall; through a liner as well it would leak between the two.
 *
 * A casing of unknown length ends it nowhere.
 */
export function adapterRoom({ well, pump }: Pick<Facts, 'well' | 'pump'>): AdapterRoom {
  const [outer, ...liners] = well.casings;
  let room: AdapterRoom = { deepest: DEEPEST_DIG, by: 'digging' };
  const endsAt = (deepest: Metres, by: AdapterRoom['by']) => {
    if (deepest < room.deepest) room = { deepest, by };
  };
  endsAt(outer?.bottom ?? well.bottom, 'casing');
  for (const { top } of liners) endsAt(top - LEAST_BELOW_ADAPTER, 'liner');
  endsAt(dischargeDepth(pump) - ROOM_OVER_PUMP, 'pump');
  return room;
}
