/** What the figures of a step rest on: paths of the plan, told with the step where nobody said them. */
import type { StepId } from './step.ts';

const SETTING = ['pump.setting', 'top.depth', 'well.casing.height'];

export const STEP_RESTS_ON: Readonly<Partial<Record<StepId, readonly string[]>>> = {
  breakerOff: ['pump.voltage'],
  measure: ['well.casing.height', 'pump.diameter'],
  layOut: [...SETTING, 'string.checkValves', 'dropPipe.sectionLength'],
  trench: ['top.depth', 'top.kind'],
  hole: ['top.depth', 'top.kind', 'well.casing.height'],
  line: ['house.line.size', 'house.line.material'],
  conduit: ['wire.size', 'wire.conduitDepth'],
  outlet: ['pump.outlet', 'dropPipe.size'],
  splice: ['string.splices', 'wire.size', 'pump.wires'],
  pumpJoint: ['string.torqueArrestor'],
  lower: SETTING,
  sections: [...SETTING, 'dropPipe.sectionLength'],
  valve: ['string.checkValves'],
  seat: ['top.depth', 'well.casing.height'],
  capSplice: ['wire.size', 'pump.wires'],
  tank: ['house.precharge', 'house.cutIn'],
  boxes: ['pump.wires', 'pump.phase'],
  boxCheck: ['pump.wires', 'pump.power'],
  pressureTest: ['house.cutOut'],
  readings: ['house.cutIn', 'house.cutOut'],
};
