/** Water past the motor: from where it comes, and how fast. */
import type { Metres } from '../si.ts';
import type { Solved } from '../solution.ts';
import { feet, horsepower, inches } from '../units.ts';
import { meets } from './grace.ts';
import { intakeUnsaid, isOpenRock } from './openRock.ts';
import { screenTop } from './pumpDepth.ts';
import { ratedUnder } from './ratedUnder.ts';
import { breaks, defineRule, doesNotApply, holds, limit, missing } from './rule.ts';
import { motorBottomDepth, settingForMotorBottom } from '../string/pumpDepths.ts';

/** Smaller motors usually do without a sleeve, wherever the water comes from. Common practice, no source. */
export const SHROUD_POWER = horsepower(3);
/** Least velocity past a motor for 4 in wells, and for 6 in and larger. */
export const LEAST_VELOCITY = feet(0.25);
export const LEAST_VELOCITY_LARGE = feet(0.5);
export const LARGE_MOTOR = inches(5);

/** The lowest place where water is said to enter: a fracture, or the lower end of a screen; null where nobody said. */
function lowestInflow({ facts }: Solved): Metres | null {
  const { intake, inflows } = facts.well;
  const { screens } = intake;
  if (screens.length > 0 && !isOpenRock(facts)) return screens.reduce((most, { bottom }) => Math.max(most, bottom), 0);
  if (inflows === null || inflows.length === 0) return null;
  return inflows.reduce((most, { depth }) => Math.max(most, depth), -Infinity);
}

/**
 * Whether the motor hangs in a screen without a sleeve. Most of the water then enters above its lower end, from all round,
 * and nobody can tell how much of it passes the motor; that it hangs there is told as the danger that it is.
 */
function hangsInScreen(solved: Solved): boolean {
  const { pump } = solved.facts;
  const top = screenTop(solved);
  return top !== null && pump.shroudDiameter === null && !meets(top - motorBottomDepth(pump), 'length');
}

/** Above it no water enters, wherever it does: the end of the casing, or where the liner's openings begin; null where unknown. */
function allEntersBelow({ facts }: Solved): Metres | null {
  const { casings, intake, bottom } = facts.well;
  const end = casings[casings.length - 1]?.bottom ?? null;
  const openings = intake.screens.reduce<Metres | null>((least, { top }) => Math.min(least ?? top, top), null);
  const first = openings ?? end;
  return first !== null && first < bottom ? first : null;
}

export const inflowFromBelow = defineRule({
  number: 'PR-05',
  part: 'motor',
  restsOn: ['pump.setting'],
  asks: { from: SHROUD_POWER },
  judge({ solved, facts }) {
    const { pump, well } = facts;
    if (pump.shroudDiameter !== null) return holds('shroud', {});
    if (hangsInScreen(solved)) return doesNotApply;
    const motor = motorBottomDepth(pump);
    const inflow = lowestInflow(solved);
    const small = ratedUnder(facts, SHROUD_POWER) === true;
    const under = SHROUD_POWER;
    if (inflow === null) {
      const first = allEntersBelow(solved);
      if (first !== null && meets(first - motor, 'length')) return holds('allFromBelow', { motor, first });
      if (small) return holds('smallMotorAnywhere', { under });
      if (intakeUnsaid(facts)) return missing('intakeKind');
      return missing(well.intake.kind === 'screen' && well.intake.screens.length === 0 ? 'screenEnds' : 'inflows');
    }
    const margin = inflow - motor;
    if (meets(margin, 'length')) return holds('fromBelow', { motor, inflow, margin });
    if (small) return holds('smallMotor', { inflow, under });
    return breaks(
      'fromAbove',
      'warning',
      { motor, inflow, margin },
      { measured: motor, limit: inflow, margin, quantity: 'length', depth: motor },
    );
  },
  limits(solved) {
    const to = settingAboveInflow(solved);
    return to === null ? [] : [limit('pump.setting', { to, givesWay: true }, 'aboveLowestInflow', {})];
  },
});

/** The deepest setting at which the motor ends above the lowest inflow; null where the motor does not need it, or nobody can tell. */
export function settingAboveInflow(solved: Solved): Metres | null {
  const { facts } = solved;
  const inflow = lowestInflow(solved);
  if (inflow === null || facts.pump.shroudDiameter !== null || ratedUnder(facts, SHROUD_POWER) === true) return null;
  return settingForMotorBottom(inflow, facts.pump);
}

export const coolingVelocity = defineRule({
  number: 'PR-06',
  part: 'motor',
  restsOn: ['house.demand', 'pump.setting', 'well.casing.schedule'],
  asks: { from: SHROUD_POWER, least: LEAST_VELOCITY, large: LARGE_MOTOR, leastLarge: LEAST_VELOCITY_LARGE },
  judge({ solved, facts, values }) {
    if (hangsInScreen(solved)) return doesNotApply;
    const measured = values.velocityPastMotor;
    const ratedSmall = ratedUnder(facts, SHROUD_POWER);
    const small = ratedSmall === true;
    const under = SHROUD_POWER;
    if (measured === null) {
      if (small) return holds('smallMotorAnyway', { under });
      return missing(facts.house.demand === null ? 'demand' : 'holeWidth');
    }
    const least = facts.pump.motorDiameter > LARGE_MOTOR ? LEAST_VELOCITY_LARGE : LEAST_VELOCITY;
    const margin = measured - least;
    if (meets(margin, 'velocity')) return holds('fastEnough', { measured, margin, least });
    if (small) return holds('slowButSmall', { measured, under });
    if (ratedSmall === null) return missing('power');
    const depth = motorBottomDepth(facts.pump);
    return breaks(
      'slow',
      'note',
      { measured, margin, least },
      { measured, limit: least, margin, quantity: 'velocity', depth },
    );
  },
});

export const coolingRules = [inflowFromBelow, coolingVelocity] as const;
