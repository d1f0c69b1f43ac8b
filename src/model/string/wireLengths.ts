/** How long the wire is: from the motor's lead up to the loop under the cap, and on to the panel. */
import type { Facts } from '../facts.ts';
import { WIRE_LOOP, WIRE_SLACK } from '../figures/allowances.ts';
import { dropCableLength } from '../formulas/cableLength.ts';
import type { Metres } from '../si.ts';
import { dischargeDepth } from './pumpDepths.ts';

/** From the discharge up to the casing's top, where the wire leaves the well. */
function wayUp({ pump, well }: Pick<Facts, 'pump' | 'well'>): Metres {
  return Math.max(dischargeDepth(pump) + well.casingHeight, 0);
}

/** The motor's own lead, up to the splice; a splice that is planned above the casing's top ends there. */
export function leadLength(facts: Pick<Facts, 'pump' | 'well' | 'string'>): Metres {
  return Math.min(Math.max(facts.string.splices[0] ?? 0, 0), wayUp(facts));
}

/** What is cut for the well: slack and the loop are in it, the lead is not. */
export function wireInWell(facts: Pick<Facts, 'pump' | 'well' | 'string'>): Metres {
  return dropCableLength({
    setting: wayUp(facts),
    pumpToSplice: leadLength(facts),
    slack: WIRE_SLACK,
    topAllowance: WIRE_LOOP,
  });
}

/** Panel to well; where nobody said, as far as the line to the house runs. */
export function runToWell({ wire, house }: Pick<Facts, 'wire' | 'house'>): Metres | null {
  return wire.run ?? house.distance;
}

/**
 * What is cut from the panel to the well's top; null while nobody knows how far that is. A run that was told goes along the
 * wire; where only the line's is known, the wire goes down into the trench and up again besides.
 */
export function houseCableLength({ wire, house, well }: Pick<Facts, 'wire' | 'house' | 'well'>): Metres | null {
  if (wire.run !== null || house.distance === null) return wire.run;
  return house.distance + 2 * wire.conduitDepth + well.casingHeight;
}

/** Panel to motor, one way along the wire; null while nobody knows how far the panel is. */
export function wireToMotor(facts: Facts): Metres | null {
  const run = runToWell(facts);
  return run === null ? null : run + wireInWell(facts) + leadLength(facts);
}
