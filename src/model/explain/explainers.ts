/** Who explains which figure, in the order of the table of figures. */
import type { ValueName } from '../solution.ts';
import type { Explainer } from './draft.ts';
import * as drawdowns from './figures/drawdown.ts';
import { voltageDropRunning } from './figures/electrical.ts';
import * as friction from './figures/friction.ts';
import { frostDepth } from './figures/frost.ts';
import * as hanging from './figures/hanging.ts';
import * as head from './figures/head.ts';
import * as lengths from './figures/lengths.ts';
import * as operating from './figures/operating.ts';
import * as places from './figures/places.ts';
import * as pressure from './figures/pressure.ts';
import * as velocity from './figures/velocity.ts';
import * as volumes from './figures/volumes.ts';

export const EXPLAINERS: Readonly<Record<ValueName, Explainer>> = {
  demandFlow: drawdowns.demandFlow,
  specificCapacity: drawdowns.specificCapacity,
  drawdown: drawdowns.drawdown,
  pumpingWaterLevel: places.pumpingWaterLevel,
  pumpingWaterLevelDry: places.pumpingWaterLevelDry,
  lowestPumpingWaterLevel: places.lowestPumpingWaterLevel,
  submergenceDry: places.submergenceDry,
  intakeDepth: places.intakeDepth,
  pumpDischargeDepth: places.pumpDischargeDepth,
  motorBottomDepth: places.motorBottomDepth,
  submergence: places.submergence,
  clearanceToBottom: places.clearanceToBottom,
  lift: head.lift,
  rise: head.rise,
  pressureHead: head.pressureHead,
  frictionDropPipe: friction.frictionDropPipe,
  frictionLine: friction.frictionLine,
  frictionFittings: head.frictionFittings,
  totalDynamicHead: head.totalDynamicHead,
  frictionDropPipeHazenWilliams: friction.frictionDropPipeHazenWilliams,
  frictionLineHazenWilliams: friction.frictionLineHazenWilliams,
  operatingFlowAtCutOut: operating.operatingFlowAtCutOut,
  operatingHeadAtCutOut: operating.operatingHeadAtCutOut,
  operatingFlowAtCutIn: operating.operatingFlowAtCutIn,
  operatingHeadAtCutIn: operating.operatingHeadAtCutIn,
  operatingFlowAtCutInMost: operating.operatingFlowAtCutInMost,
  operatingHeadAtCutInMost: operating.operatingHeadAtCutInMost,
  shutOffPressureAtPump: pressure.shutOffPressureAtPump,
  shutOffPressureAtTank: pressure.shutOffPressureAtTank,
  shutOffPressureAtTankLeast: pressure.shutOffPressureAtTankLeast,
  velocityDropPipe: velocity.velocityDropPipe,
  velocityPastMotor: velocity.velocityPastMotor,
  dropPipeCutLength: lengths.dropPipeCutLength,
  dropPipeToCut: lengths.dropPipeToCut,
  liftPipeLength: lengths.liftPipeLength,
  wireLength: lengths.wireLength,
  ropeLength: lengths.ropeLength,
  voltageDropRunning,
  hangLoadLowering: hanging.hangLoadLowering,
  hangLoadAtRest: hanging.hangLoadAtRest,
  hangLoadPumping: hanging.hangLoadPumping,
  hangLoadDry: hanging.hangLoadDry,
  frostDepth,
  pitlessBelowFrost: places.pitlessBelowFrost,
  wellVolume: volumes.wellVolume,
  chlorineDose: volumes.chlorineDose,
  tankDrawdown: volumes.tankDrawdown,
  usableStorage: volumes.usableStorage,
  timeToBreakSuction: volumes.timeToBreakSuction,
};
