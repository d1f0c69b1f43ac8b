/** Public face of pumping tests typed in and fitted; loaded when somebody asks for it. */
export { fitPumpingTest } from './fitPumpingTest.ts';
export type { NotFitted } from './fitPumpingTest.ts';
export { fitStepTest, wellCondition } from './fitStepTest.ts';
export type { FittedSteps, StepReading, WellCondition } from './fitStepTest.ts';
export type {
  Estimate,
  FittedTest,
  PumpingTest,
  RecoveryLine,
  RecoveryReading,
  Residual,
  StraightLine,
  TestReading,
  TheisFit,
} from './pumpingTest.ts';
