/** What can hurt at a step, and what to do about it. Local code and licensed people decide. */
import type { Caution } from '../../../model/work/step.ts';
import {
  DIGGING_CAUTION,
  ELECTRIC_CAUTION,
  GAS_CAUTION,
  LIFTING_CAUTION,
  OVERHEAD_CAUTION,
  PIT_CAUTION,
  PRESSURE_CAUTION,
} from '../cautions.ts';

/** Sources  coil, stuck: common practice, no source; chlorine: label of the product. */
export const cautions: Readonly<Record<Caution, string>> = {
  electric: ELECTRIC_CAUTION,
  lifting: LIFTING_CAUTION,
  overhead: `${OVERHEAD_CAUTION} What is raised into one kills whoever holds it.`,
  digging: DIGGING_CAUTION,
  pressure: PRESSURE_CAUTION,
  coil: 'A coil of pipe springs open and strikes: hold it, cut its ties one at a time, and stand clear.',
  stuck: 'A stuck string is not pulled harder: the pipe parts and flies. Stop, and ask a contractor with a rig.',
  gas: GAS_CAUTION,
  pit: PIT_CAUTION,
  chlorine:
    'Wear goggles and gloves in moving air. Never mix chlorine with acid, vinegar, ammonia or another cleaner: the gas kills.',
  hygiene: 'What touches the inside of a well is drunk later. Keep it off the soil, and wipe it with chlorine water.',
};
