/** Water past the motor: from where it comes, and how fast. */
import type { Metres } from '../si.ts';
import type { Solved } from '../solution.ts';
import { feet, horsepower, inches } from '../units.ts';
import { drawdownMissing, screenTop } from './pumpDepth.ts';
import { meets } from './grace.ts';
import { moveIntoBand, words } from './fix.ts';
import { breaks, defineRule, holds, limit, missing } from './rule.ts';

/** From this power on a motor in open rock wants a shroud. */
export const SHROUD_POWER = horsepower(3);
/** Least velocity past a motor for 4 in wells, and for 6 in and larger. */
export const LEAST_VELOCITY = feet(0.25);
export const LEAST_VELOCITY_LARGE = feet(0.5);
export const LARGE_MOTOR = inches(5);

/** The lowest place where water enters: a screen's bottom, a fracture, or all of the hole under the casing. */
function deepestInflow(solved: Solved): Metres | null {
  const { intake, inflows, casings, bottom } = solved.facts.well;
  if (screenTop(solved) !== null)
    return intake.screens.reduce((most, screen) => Math.max(most, screen.bottom), -Infinity);
  if (inflows !== null && inflows.length > 0)
    return inflows.reduce((most, { depth }) => Math.max(most, depth), -Infinity);
  const casingBottom = casings[casings.length - 1]?.bottom ?? null;
  const motorBottom = solved.facts.pump.setting + solved.facts.pump.intakeToMotorBottom;
  // A motor inside the casing gets all of its water from below, wherever the hole gives it.
  return casingBottom !== null && casingBottom < bottom && motorBottom <= casingBottom ? casingBottom : null;
}

function severityWithoutShroud(solved: Solved): 'note' | 'warning' {
  const { power } = solved.facts.pump;
  const openRock = solved.facts.well.intake.kind === 'open hole';
  return openRock && power !== null && power < SHROUD_POWER ? 'note' : 'warning';
}

export const inflowFromBelow = defineRule({
  number: 'PR-05',
  part: 'motor',
  judge({ solved, facts }) {
    const { pump, water } = facts;
    if (pump.shroudDiameter !== null) return holds('shroud', {});
    const inflow = deepestInflow(solved);
    if (inflow === null) return missing('inflows');
    if (water.pumping?.kind === 'yield only') return missing(drawdownMissing(solved));
    const motor = pump.setting + pump.intakeToMotorBottom;
    const margin = inflow - motor;
    if (meets(margin, 'length')) return holds('fromBelow', { motor, inflow, margin });
    return breaks(
      'fromAbove',
      severityWithoutShroud(solved),
      { motor, inflow, margin },
      { measured: motor, limit: inflow, margin, quantity: 'length', depth: motor },
    );
  },
  limits(solved) {
    const { pump, well } = solved.facts;
    const named = screenTop(solved) !== null || (well.inflows !== null && well.inflows.length > 0);
    if (!named || pump.shroudDiameter !== null || severityWithoutShroud(solved) === 'note') return [];
    const inflow = deepestInflow(solved);
    if (inflow === null || solved.facts.water.pumping?.kind === 'yield only') return [];
    const to = inflow - pump.intakeToMotorBottom;
    return [limit('pump.setting', { to, givesWay: true }, 'aboveLowestInflow', {})];
  },
  fixes(given, { severity }) {
    return [
      severity === 'note'
        ? words('shroudLeads', {})
        : moveIntoBand(given, 'PR-05', 'pump.setting', words('fitShroud', {})),
    ];
  },
});

export const coolingVelocity = defineRule({
  number: 'PR-06',
  part: 'motor',
  judge({ facts, values }) {
    const measured = values.velocityPastMotor;
    if (measured === null) return missing(facts.house.demand === null ? 'demand' : 'holeWidth');
    const least = facts.pump.motorDiameter > LARGE_MOTOR ? LEAST_VELOCITY_LARGE : LEAST_VELOCITY;
    const margin = measured - least;
    const numbers = { measured, margin, least };
    if (meets(margin, 'velocity')) return holds('fastEnough', numbers);
    const depth = facts.pump.setting + facts.pump.intakeToMotorBottom;
    return breaks('slow', 'note', numbers, { measured, limit: least, margin, quantity: 'velocity', depth });
  },
  fixes: () => [words('shroudSpeedsUp', {})],
});

export const coolingRules = [inflowFromBelow, coolingVelocity] as const;
