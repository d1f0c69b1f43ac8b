/** Public face of what changes with time; loaded when somebody asks for it. */
export { breakRange } from './breakRange.ts';
export type { BreakRange, TimeRange } from './breakRange.ts';
export { coneAt } from './coneAt.ts';
export type { Cone } from './coneAt.ts';
export { LAST_DAY } from './lastDay.ts';
export { levelAgainstTime } from './levelAgainstTime.ts';
export type { TimeOptions } from './levelAgainstTime.ts';
export type { GroundLevel, LevelCurve, LevelSample, Phase } from './levelCurve.ts';
export { operatingLevels } from './operatingLevels.ts';
export type { OperatingLevels } from './operatingLevels.ts';
export type { FlowChoice } from './pumpedFlow.ts';
export type { Unknown } from './unknown.ts';
export { dailyCycle } from './dailyCycle.ts';
export type { CycleOptions, DailyCycle } from './dailyCycle.ts';
export { poorWell } from './poorWell.ts';
export type { ComingBack, PoorWell } from './poorWell.ts';
