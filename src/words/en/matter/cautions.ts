/** What can hurt while a cause is looked for. Local code and licensed people decide. */
import type { MatterCaution, WellCaution } from '../../../model/matter/cause.ts';
import {
  DIGGING_CAUTION,
  FLOWING_CAUTION,
  GAS_CAUTION,
  LIFTING_CAUTION,
  PIT_CAUTION,
  PRESSURE_CAUTION,
} from '../cautions.ts';
import { cautions as ofWork } from '../work/cautions.ts';

/** Sources  common practice, no source; chlorine: label of the product. */
export const cautions: Readonly<Record<MatterCaution, string>> = {
  live: 'Open no cover of switch, box, panel or well cap: what is behind it can kill. A licensed electrician measures there.',
  fire: 'A hot or brown wire can set the house on fire: breaker off until it is put right.',
  pulling: `Nobody pulls a pump to have a look: it is heavy work for people with a hoist. ${LIFTING_CAUTION}`,
  digging: DIGGING_CAUTION,
  pressure: PRESSURE_CAUTION,
  gas: GAS_CAUTION,
  chlorine: ofWork.chlorine,
  drinking:
    'Drink other water, and give none of this to babies, until a lab has tested it. Boiling does not help with nitrate.',
  dryRun: 'A pump that runs without water is ruined in minutes: if none comes, switch it off.',
  flame: 'Thaw with warm cloths or warm air only. A flame sets fire, and steam bursts a frozen pipe.',
  backspin: 'Wait a minute or two between stop and start: a pump that spins backward can shear its shaft.',
};

export const wellCautions: Readonly<Record<WellCaution, string>> = {
  flowing: FLOWING_CAUTION,
  inPit: PIT_CAUTION,
};
