/** Which figure of the solution a finding weighs, so that it can be opened into its arithmetic. */
import type { Finding, Quantity, Solved, ValueName } from '../solution.ts';

/** By rule, and by what was measured where a rule weighs one thing or another. */
const WEIGHED: Readonly<Record<string, Readonly<Partial<Record<Quantity, ValueName>>>>> = {
  'PR-01': { length: 'clearanceToBottom' },
  'PR-02': { length: 'lowestPumpingWaterLevel' },
  'PR-03': { length: 'motorBottomDepth' },
  'PR-04': { length: 'lowestPumpingWaterLevel' },
  'PR-05': { length: 'motorBottomDepth' },
  'PR-06': { velocity: 'velocityPastMotor' },
  'PR-07': { flow: 'operatingFlowAtCutInMost' },
  'PR-08': { length: 'lowestPumpingWaterLevel', flow: 'operatingFlowAtCutInMost' },
  'PR-14': { length: 'dropPipeCutLength' },
  'PR-18': { pressure: 'shutOffPressureAtPump' },
  'PR-19': { length: 'pitlessBelowFrost' },
  'PR-36': { length: 'lowestPumpingWaterLevel' },
  'PR-43': { length: 'frostDepth' },
  'PR-44': { pressure: 'shutOffPressureAtTank' },
  'PR-46': { pressure: 'shutOffPressureAtTankLeast' },
  'PR-47': { velocity: 'velocityDropPipe' },
  'PR-49': { ratio: 'voltageDropRunning' },
  'PR-51': { force: 'hangLoadAtRest' },
  'PR-54': { flow: 'operatingFlowAtCutIn' },
  'PR-55': { flow: 'usableStorage' },
  'PR-56': { time: 'tankDrawdown' },
  'PR-61': { pressure: 'shutOffPressureAtPump' },
};

/** Null where the finding rests on what was typed in, and nothing is worked out. */
export function figureOfFinding(
  { rule, quantity }: Pick<Finding, 'rule' | 'quantity'>,
  { values }: Solved,
): ValueName | null {
  const name = quantity === null ? undefined : WEIGHED[rule]?.[quantity];
  return name === undefined || values[name] === null ? null : name;
}
