/** What hands can lift. Pulling a wet string hand over hand is outside all of it: orientation only. */
import type { Kilograms, Metres, Newtons, Ratio } from '../si.ts';
import { TEAM_SHARE } from '../tables/liftingLimits.ts';
import { poundsForce, poundsMass, toInches } from '../units.ts';

/** Load constant of the NIOSH equation, 51 pounds: one person, everything favourable. */
export const LIFT_ONE_PERSON: Newtons = poundsForce(51);
/** Two people at once, as an orientation. */
export const LIFT_TWO_PEOPLE: Newtons = poundsForce(68);
/** Beyond this a hoist, whatever the number of people. Common practice, no source. */
export const HOIST_LOAD: Newtons = poundsForce(150);
/** Beyond this no team of people holds what hangs. Common practice, no source. */
export const NO_TEAM_LOAD: Newtons = poundsForce(300);

export interface Lift {
  /** H, hands in front of the ankles: 25 to 63 cm. */
  readonly reach: Metres;
  /** V, hands above the floor at the start: up to 175 cm. */
  readonly height: Metres;
  /** D, how far it is lifted: from 25 cm on. */
  readonly travel: Metres;
  /** A, turn of the body: up to 135 degrees [degrees]. */
  readonly turn: number;
  /** FM [-]; `LIFT_FREQUENCY` */
  readonly frequency: Ratio;
  /** CM [-]; `LIFT_GRIP` */
  readonly grip: Ratio;
}

/**
 * Recommended weight limit, metric form of the NIOSH equation.
 *
 *     RWL = 23 kg · 25/H · (1 − 0.003 |V − 75|) · (0.82 + 4.5/D) · (1 − 0.0032 A) · FM · CM,   H, V, D in cm
 *
 * @returns  kilograms
 * Range     smooth lifting with both hands, standing; not pulling, not wet or jerking loads
 * Throws    RangeError outside the limits that `Lift` names
 * Source    NIOSH, Applications Manual for the Revised NIOSH Lifting Equation, DHHS 94-110; limits from memory
 */
export function recommendedWeightLimit(lift: Lift): Kilograms {
  requireLift(lift);
  const [reach, height, travel] = [100 * lift.reach, 100 * lift.height, 100 * lift.travel];
  return 23 * (25 / reach) * (1 - 0.003 * Math.abs(height - 75)) * (0.82 + 4.5 / travel) * common(lift);
}

/**
 * The same in the customary form, whose round constants give up to 4 % more.
 *
 *     RWL = 51 lb · 10/H · (1 − 0.0075 |V − 30|) · (0.82 + 1.8/D) · (1 − 0.0032 A) · FM · CM,   H, V, D in inches
 *
 * @returns  kilograms
 * Range, throws and source as `recommendedWeightLimit`
 */
export function recommendedWeightLimitCustomary(lift: Lift): Kilograms {
  requireLift(lift);
  const [reach, height, travel] = [toInches(lift.reach), toInches(lift.height), toInches(lift.travel)];
  const pounds = 51 * (10 / reach) * (1 - 0.0075 * Math.abs(height - 30)) * (0.82 + 1.8 / travel) * common(lift);
  return poundsMass(pounds);
}

const common = ({ turn, frequency, grip }: Lift): number => (1 - 0.0032 * turn) * frequency * grip;

/** The customary form's own limits in inches are the wider ones for H, so both forms take them. */
function requireLift({ reach, height, travel, turn, frequency, grip }: Lift): void {
  const within =
    reach >= 0.25 &&
    reach <= 0.64 &&
    height >= 0 &&
    height <= 1.78 &&
    travel >= 0.25 &&
    travel <= 1.78 &&
    turn >= 0 &&
    turn <= 135 &&
    frequency > 0 &&
    frequency <= 1 &&
    grip > 0 &&
    grip <= 1;
  if (!within) {
    throw new RangeError(
      `recommendedWeightLimit: reach ${reach} m (0.25 to 0.64), height ${height} m (to 1.78), travel ` +
        `${travel} m (0.25 to 1.78), turn ${turn} degrees (to 135), multipliers ${frequency} and ${grip} (to 1)`,
    );
  }
}

/**
 * Load for a team, as an orientation.
 *
 *     1 person 51 lb, 2 people 2/3 of 102 lb, 3 people 1/2 of 153 lb
 *
 * @returns  newtons
 * Source    load constant NIOSH DHHS 94-110; shares of a team from memory
 */
export function teamLimit(people: 1 | 2 | 3): Newtons {
  return people * TEAM_SHARE[people] * LIFT_ONE_PERSON;
}

/**
 * Load that a tackle lifts.
 *
 *     lift = parts · pull · efficiency
 *
 * @param parts       ropes that hold the moving block
 * @param efficiency  1 without friction; real blocks lose a tenth or so each
 * @returns           newtons
 * Throws             RangeError unless there is a part, a pull and an efficiency up to 1
 */
export function tackleLift({
  parts,
  pull,
  efficiency,
}: {
  readonly parts: number;
  readonly pull: Newtons;
  readonly efficiency: Ratio;
}): Newtons {
  if (!(parts >= 1 && pull >= 0 && efficiency > 0 && efficiency <= 1)) {
    throw new RangeError(`tackleLift: ${parts} parts, pull ${pull} N, efficiency ${efficiency}`);
  }
  return parts * pull * efficiency;
}
