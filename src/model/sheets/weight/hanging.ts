/** The string as it hangs, for the sheets on weight and rope. */
import type { Context } from '../../explain/context.ts';
import { hangingString } from '../../figures/hanging.ts';
import type { HangingString } from '../../formulas/hangLoad.ts';
import type { Metres, Pascals } from '../../si.ts';
import { PIPE_MATERIALS } from '../../tables/pipeMaterials.ts';
import { psi } from '../../units.ts';

/** Null while the pump's mass is unknown. */
export const stringOf = ({ facts, hangingLength }: Context): HangingString | null =>
  hangingString(facts, hangingLength);

/** Water outside, below the suspension; null while the level is unknown. */
export function waterBelow({ facts, suspension }: Context): Metres | null {
  const level = facts.water.staticLevel;
  return level === null ? null : Math.max(level - suspension, 0);
}

/** What polyethylene may carry for years. ASTM D3350 codes: last two digits in hundreds of psi, from memory. */
const DESIGN_STRESS_PSI: Readonly<Record<string, number>> = { PE4710: 1000, PE3608: 800, PE3408: 800 };
/** ISO 12162: least strength over 50 years, 10 and 8 MPa, over a design coefficient of 1.25. */
const METRIC_DESIGN_STRESS: Readonly<Record<string, Pascals>> = { 'PE 100': 8e6, 'PE 80': 6.4e6 };

/** Hydrostatic design stress of the pipe; null for metal and for a resin nobody named. */
export function designStress({ facts }: Context): Pascals | null {
  const { material, resin } = facts.dropPipe;
  const { compound } = PIPE_MATERIALS[material];
  if (compound !== null) return psi(compound.designStress);
  const stress = DESIGN_STRESS_PSI[resin ?? ''];
  return METRIC_DESIGN_STRESS[resin ?? ''] ?? (stress === undefined ? null : psi(stress));
}
