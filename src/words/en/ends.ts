/** What ends a band where no rule does. */
import type { OwnEnd } from '../../model/solution.ts';

export const ends: Readonly<Record<OwnEnd, string>> = {
  underWellTop: 'under the well top',
  pumpingLevelUnknown: 'pumping level not measured',
  underStaticLevel: 'under the static level',
  motorOnBottom: 'motor on the bottom',
  atGround: 'at the ground',
  asDeepAsOneDigs: 'as deep as one digs',
  endOfCasing: 'end of the casing',
  aboveLiner: 'above the liner',
  abovePump: 'above the pump',
};
