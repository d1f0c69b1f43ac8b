/** How fast the water moves in the drop pipe and past the motor. */
import { widestBetween } from '../../bore.ts';
import type { Context } from '../context.ts';
import { within } from '../draft.ts';
import type { Explainer } from '../draft.ts';
import { noDemand, reason } from '../missing.ts';
import { step, term } from '../sum.ts';
import { motorBottomDepth } from '../../string/pumpDepths.ts';

export const velocityDropPipe: Explainer = (context) => {
  const { facts, values } = context;
  return {
    title: 'Velocity in the drop pipe',
    symbol: 'v',
    terms: [
      term('Q', 'peak flow needed', facts.house.demand, 'flow'),
      term('d', 'bore of the drop pipe', facts.dropPipe.insideDiameter, 'bore'),
    ],
    steps: [step('v', '4 × Q / (π × d²)', values.velocityDropPipe, 'velocity')],
    as: 'velocity',
    range: within('round pipe running full', true),
    source: 'continuity',
    missing: [noDemand(context)],
  };
};

export const velocityPastMotor: Explainer = (context) => {
  const { facts, values } = context;
  const around = roundMotor(context);
  const fits = around === null || around.diameter > facts.pump.motorDiameter;
  return {
    title: 'Velocity past the motor',
    symbol: 'v_m',
    terms: [
      term('Q', 'peak flow needed', facts.house.demand, 'flow'),
      term('D', around?.what ?? 'bore of casing or hole round the motor', around?.diameter ?? null, 'bore'),
      term('d_m', 'diameter of the motor', facts.pump.motorDiameter, 'bore'),
    ],
    steps: [step('v_m', '4 × Q / (π × (D² − d_m²))', values.velocityPastMotor, 'velocity')],
    as: 'velocity',
    range: within('all the water comes from below the motor, which hangs in the middle', null),
    source: 'continuity',
    notes: ['Water that enters above the motor does not cool it.'],
    missing: [
      noDemand(context),
      around === null ? { path: 'well.intake.diameter', words: 'the diameter of the hole round the motor' } : null,
      reason(!fits, 'a ring between motor and wall: the motor does not fit here'),
    ],
  };
};

/** What the water passes on its way up to the intake: shroud, casing or hole. */
function roundMotor({ facts, solution }: Context): { readonly diameter: number; readonly what: string } | null {
  const { pump, well } = facts;
  if (pump.shroudDiameter !== null) return { diameter: pump.shroudDiameter, what: 'bore of the flow sleeve' };
  const motorBottom = motorBottomDepth(pump);
  const unknown = solution.bore.some((each) => !each.known && each.bottom > pump.setting && each.top < motorBottom);
  if (unknown) return null;
  const end = Math.min(motorBottom, Math.max(well.bottom, pump.setting));
  return { diameter: 2 * widestBetween(solution.bore, pump.setting, end), what: 'widest bore round the motor' };
}
