/** Depths of the pump's two ends: both are measured from its intake, at which it is set. */
import type { PumpFacts } from '../facts.ts';
import type { Metres } from '../si.ts';
import { INTAKE_RING } from './lengths.ts';

type Discharging = Pick<PumpFacts, 'setting' | 'intakeToDischarge'>;
type Reaching = Pick<PumpFacts, 'setting' | 'intakeToMotorBottom'>;

/** Where the pipe is screwed on. */
export function dischargeDepth({ setting, intakeToDischarge }: Discharging): Metres {
  return setting - intakeToDischarge;
}

/** The lowest end of all that hangs. */
export function motorBottomDepth({ setting, intakeToMotorBottom }: Reaching): Metres {
  return setting + intakeToMotorBottom;
}

/** Under the intake's ring, where the leads go in. */
export function motorHeadDepth({ setting }: Pick<PumpFacts, 'setting'>): Metres {
  return setting + INTAKE_RING / 2;
}

/** The setting that brings the discharge to a depth. */
export function settingForDischarge(
  discharge: Metres,
  { intakeToDischarge }: Pick<PumpFacts, 'intakeToDischarge'>,
): Metres {
  return discharge + intakeToDischarge;
}

/** The setting that brings the motor's lower end to a depth. */
export function settingForMotorBottom(
  bottom: Metres,
  { intakeToMotorBottom }: Pick<PumpFacts, 'intakeToMotorBottom'>,
): Metres {
  return bottom - intakeToMotorBottom;
}

/** Heights in the string are told over the discharge; this is the same one over the intake, to which the water falls at most. */
export function heightOverIntake(height: Metres, { intakeToDischarge }: Pick<PumpFacts, 'intakeToDischarge'>): Metres {
  return height + intakeToDischarge;
}

/** From the discharge down to the motor's lower end. */
export function pumpHeight({
  intakeToDischarge,
  intakeToMotorBottom,
}: Pick<PumpFacts, 'intakeToDischarge' | 'intakeToMotorBottom'>): Metres {
  return intakeToDischarge + intakeToMotorBottom;
}
