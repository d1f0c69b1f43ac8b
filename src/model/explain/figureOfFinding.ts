/** Which figures of the solution a finding weighs, so that it can be opened into their arithmetic. */
import type { Finding, Solved, ValueName } from '../solution.ts';

/** Figures that a rule compares with its limit as they are. Of several, the one that was weighed is told by its value. */
const WEIGHED: Readonly<Record<string, readonly ValueName[]>> = {
  'PR-01': ['clearanceToBottom'],
  'PR-02': ['submergenceDry', 'submergence'],
  'PR-03': ['motorBottomDepth'],
  'PR-05': ['motorBottomDepth'],
  'PR-06': ['velocityPastMotor'],
  'PR-07': ['operatingFlowAtCutIn'],
  'PR-08': ['submergenceDry', 'submergence', 'operatingFlowAtCutIn'],
  'PR-14': ['dropPipeCutLength'],
  'PR-18': ['shutOffPressureAtPump'],
  'PR-19': ['pitlessBelowFrost'],
  'PR-43': ['frostDepth'],
  'PR-44': ['shutOffPressureAtTank'],
  'PR-47': ['velocityDropPipe'],
  'PR-49': ['voltageDropRunning'],
  'PR-51': ['hangLoadDry', 'hangLoadPumping', 'hangLoadAtRest'],
};

/** Figures from which a rule works out one step more by itself; the first that is known counts. */
const STARTED_FROM: Readonly<Record<string, readonly ValueName[]>> = {
  'PR-04': ['pumpingWaterLevelDry', 'pumpingWaterLevel'],
  'PR-46': ['shutOffPressureAtTank'],
  'PR-48': ['operatingHeadAtCutOut'],
};

/** Null where the finding rests on what was typed in, and nothing is worked out. */
export function figureOfFinding({ rule, measured, limit }: Finding, { values }: Solved): ValueName | null {
  const weighed = (WEIGHED[rule] ?? []).find((name) => {
    const value = values[name];
    return value !== null && (value === measured || value === limit);
  });
  return weighed ?? STARTED_FROM[rule]?.find((name) => values[name] !== null) ?? null;
}
