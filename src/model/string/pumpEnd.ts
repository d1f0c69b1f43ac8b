/** Motor, intake, pump and what is screwed on its discharge: everything below the drop pipe's lower end. */
import type { Facts } from '../facts.ts';
import type { Metres } from '../si.ts';
import type { PlacedPart } from '../solution.ts';
import { feet } from '../units.ts';
import { clampsOver } from './clamps.ts';
import {
  CHECK_VALVE,
  COUPLING,
  FITTING_BARB,
  FITTING_SHOWING,
  INTAKE_RING,
  LIMITER_CLEAR,
  NIPPLE_SHOWING,
} from './lengths.ts';
import { sleeveOutside } from './sleeveOutside.ts';
import { dischargeDepth, motorBottomDepth, motorHeadDepth } from './pumpDepths.ts';
import { isBarbed } from '../tables/pipeMaterials.ts';

export interface PumpEnd {
  readonly parts: readonly PlacedPart[];
  readonly discharge: Metres;
  readonly motorBottom: Metres;
  /** Lower end of the drop pipe. */
  readonly pipeBottom: Metres;
}

/** A valve planned no higher than this stands on the pump's nipple, below the pipe; a higher one sits in the pipe. */
export const VALVE_AT_PUMP = feet(1);

export function placePumpEnd({ pump, dropPipe, string }: Facts): PumpEnd {
  const discharge = dischargeDepth(pump);
  const motorBottom = motorBottomDepth(pump);
  const bodyRadius = pump.motorDiameter / 2;
  const pipeRadius = dropPipe.outsideDiameter / 2;
  const bore = dropPipe.insideDiameter / 2;
  const ringTop = pump.setting - INTAKE_RING / 2;
  const ringBottom = motorHeadDepth(pump);
  const parts: PlacedPart[] = [
    { key: 'motor', kind: 'motor', top: ringBottom, bottom: motorBottom, radius: bodyRadius },
    { key: 'intake', kind: 'intake', top: ringTop, bottom: ringBottom, radius: bodyRadius },
    { key: 'pump', kind: 'pump', top: discharge, bottom: ringTop, radius: bodyRadius },
    // Over the leads from the discharge down past the intake: they enter at the motor's head.
    { key: 'cableGuardStrip', kind: 'cableGuardStrip', top: discharge, bottom: ringBottom, radius: pump.diameter / 2 },
  ];
  if (pump.shroudDiameter !== null) {
    parts.push({
      key: 'shroud',
      kind: 'shroud',
      top: ringTop,
      bottom: motorBottom,
      radius: sleeveOutside(pump) / 2,
      insideRadius: pump.shroudDiameter / 2,
    });
  }
  let at = discharge - NIPPLE_SHOWING;
  parts.push({
    key: 'nipple',
    kind: 'nipple',
    top: at,
    bottom: discharge,
    radius: pipeRadius * 0.9,
    insideRadius: bore,
  });
  // Its own length is the nipple's: no plan says how long one is.
  if (pump.flowLimiter !== null && pump.flowLimiter !== false) {
    parts.push({
      key: 'flowLimiter',
      kind: 'flowLimiter',
      top: at + LIMITER_CLEAR,
      bottom: discharge - LIMITER_CLEAR,
      radius: pipeRadius * 1.4,
      insideRadius: bore,
    });
  }
  const hasValve = string.checkValves.some((height) => height <= VALVE_AT_PUMP);
  if (hasValve) {
    parts.push({
      key: 'checkValve',
      kind: 'checkValve',
      top: at - CHECK_VALVE,
      bottom: at,
      radius: pipeRadius * 1.5,
      insideRadius: bore,
    });
    at -= CHECK_VALVE;
  }
  if (!isBarbed(dropPipe)) {
    // Pipe and nipple both have the outer thread; a valve takes it in, and without one a coupling does.
    if (!hasValve) parts.push({ ...collarAt(at, pipeRadius), key: 'coupling/pump', insideRadius: bore });
    return { parts, discharge, motorBottom, pipeBottom: at };
  }
  const pipeBottom = at - FITTING_SHOWING;
  parts.push(
    { key: 'insertFitting/pump', kind: 'insertFitting', top: pipeBottom - FITTING_BARB, bottom: at, radius: bore },
    ...clampsOver('pump', pipeBottom, -1, string.clampsPerJoint, pipeRadius),
  );
  return { parts, discharge, motorBottom, pipeBottom };
}

/** A coupling over two ends that meet in the middle of it. */
export function collarAt(depth: Metres, pipeRadius: Metres): Omit<PlacedPart, 'key'> {
  return { kind: 'coupling', top: depth - COUPLING / 2, bottom: depth + COUPLING / 2, radius: pipeRadius * 1.25 };
}
