import { cableDisplacedArea, cableMassPerLength } from '../../../src/model/formulas/cable.ts';
import { boreArea, pipeMassPerLength, SPECIFIC_GRAVITY, wallArea } from '../../../src/model/formulas/pipeBody.ts';
import type { HangingString } from '../../../src/model/formulas/hangLoad.ts';
import { feet, inches, poundsMass } from '../../../src/model/units.ts';

const body = { insideDiameter: inches(1.38), outsideDiameter: inches(1.7743) };

/** 300 ft of 1-1/4 in polyethylene pipe, SIDR 7, with 12 AWG cable and a 40 lb pump; water 100 ft down. */
export const polyethyleneString: HangingString = {
  length: feet(300),
  pipeMassPerLength: pipeMassPerLength(body, SPECIFIC_GRAVITY.PE),
  pipeWallArea: wallArea(body),
  pipeBoreArea: boreArea(body),
  cableMassPerLength: cableMassPerLength(12, 3),
  cableArea: cableDisplacedArea(12, 3),
  pumpMass: poundsMass(40),
  pumpBuoyancy: 0.2,
  waterDepth: feet(100),
  columnHeld: true,
};
