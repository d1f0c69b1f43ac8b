/** Water past the motor: from where it comes, and how fast. */
import type { Metres } from '../si.ts';
import type { Solved } from '../solution.ts';
import { feet, horsepower, inches } from '../units.ts';
import { drawdownMissing, screenTop } from './pumpDepth.ts';
import { meets } from './grace.ts';
import { moveIntoBand, words } from './mend.ts';
import { breaks, defineRule, holds, missing } from './rule.ts';
import { gap, slow, toSpare } from './say.ts';

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
  broken: 'The water comes from above the motor',
  holds: 'Water reaches the pump past its motor',
  source: 'common practice, no source',
  why: 'A motor is cooled by the water that flows past it; water from above never gets there.',
  judge(given) {
    const { solved, facts, show } = given;
    const { pump, water } = facts;
    if (pump.shroudDiameter !== null) return holds('shroud fitted', 'The shroud leads all the water past the motor.');
    const inflow = deepestInflow(solved);
    if (inflow === null) return missing('where water enters the well');
    if (water.pumping?.kind === 'yield only') return missing(drawdownMissing(solved));
    const motorBottom = pump.setting + pump.intakeToMotorBottom;
    const margin = inflow - motorBottom;
    const message = `The motor ends at ${show.depth(motorBottom)}, the lowest inflow is at ${show.depth(inflow)}.`;
    if (meets(margin, 'length')) return holds(toSpare(margin, show), message);
    const severity = severityWithoutShroud(solved);
    return breaks({
      severity,
      measured: motorBottom,
      limit: inflow,
      margin,
      quantity: 'length',
      depth: motorBottom,
      amount: `${gap(margin, show)} too low`,
      message,
      mend:
        severity === 'note'
          ? words('A shroud round the pump leads the water past the motor.')
          : moveIntoBand(given, 'PR-05', 'pump.setting', 'Fit a shroud: it leads the water past the motor.'),
    });
  },
  limits(solved) {
    const { pump, well } = solved.facts;
    const named = screenTop(solved) !== null || (well.inflows !== null && well.inflows.length > 0);
    if (!named || pump.shroudDiameter !== null || severityWithoutShroud(solved) === 'note') return [];
    const inflow = deepestInflow(solved);
    if (inflow === null || solved.facts.water.pumping?.kind === 'yield only') return [];
    return [
      {
        setting: 'pump.setting',
        to: inflow - pump.intakeToMotorBottom,
        label: () => 'motor above the lowest inflow',
        givesWay: true,
      },
    ];
  },
});

export const coolingVelocity = defineRule({
  number: 'PR-06',
  part: 'motor',
  broken: 'Water passes the motor slowly',
  holds: 'Water passes the motor fast enough',
  source: 'common practice, no source; the motor’s own instructions overrule it',
  why: 'Slow water carries little heat away, and a hot motor ages early.',
  judge({ facts, values, show }) {
    const measured = values.velocityPastMotor;
    if (measured === null)
      return missing(
        facts.house.demand === null ? 'the flow that the house needs' : 'the width of the hole round the motor',
      );
    const limit = facts.pump.motorDiameter > LARGE_MOTOR ? LEAST_VELOCITY_LARGE : LEAST_VELOCITY;
    const margin = measured - limit;
    const message = `Water passes the motor at ${slow(measured, show)}; ${slow(limit, show)} is the usual least.`;
    if (meets(margin, 'velocity')) return holds(`${slow(margin, show)} over the least`, message);
    return breaks({
      severity: 'note',
      measured,
      limit,
      margin,
      quantity: 'velocity',
      depth: facts.pump.setting + facts.pump.intakeToMotorBottom,
      amount: `${slow(-margin, show)} short`,
      message,
      mend: words('A shroud makes the water pass faster; motors under 3 hp usually do without.'),
    });
  },
});

export const coolingRules = [inflowFromBelow, coolingVelocity];
