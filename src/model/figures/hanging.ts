import type { Facts } from '../facts.ts';
import { cableDisplacedArea, cableMassPerLength } from '../formulas/wire.ts';
import { PUMP_BUOYANCY, hangLoad, type HangingString } from '../formulas/hangLoad.ts';
import { FIFTY_YEARS, modulusOfPipe, pipeStretch } from '../formulas/stretch.ts';
import type { Metres, Newtons } from '../si.ts';

/** What hangs, as the formulas of load and stretch want it; null while the pump's mass is unknown. */
export function hangingString(facts: Facts, length: Metres): HangingString | null {
  const { dropPipe, pump, wire } = facts;
  if (pump.mass === null) return null;
  const bore = (Math.PI / 4) * dropPipe.insideDiameter ** 2;
  const whole = (Math.PI / 4) * dropPipe.outsideDiameter ** 2;
  return {
    length,
    pipeMassPerLength: dropPipe.massPerLength,
    pipeWallArea: whole - bore,
    pipeBoreArea: bore,
    cableMassPerLength: cableMassPerLength(wire.gauge, pump.wires),
    cableArea: cableDisplacedArea(wire.gauge, pump.wires),
    pumpMass: pump.mass,
    pumpBuoyancy: PUMP_BUOYANCY,
    waterDepth: length,
    columnHeld: true,
  };
}

export interface HangLoads {
  readonly lowering: Newtons | null;
  readonly atRest: Newtons | null;
  readonly pumping: Newtons | null;
  readonly dry: Newtons | null;
}

/** @param suspension  depth of the point that everything hangs from [m] */
export function hangLoads(
  string: HangingString | null,
  suspension: Metres,
  staticLevel: Metres | null,
  pumpingLevel: Metres | null,
): HangLoads {
  if (string === null) return { lowering: null, atRest: null, pumping: null, dry: null };
  const at = (level: Metres, columnHeld: boolean) =>
    hangLoad({ ...string, waterDepth: level - suspension, columnHeld });
  return {
    lowering: staticLevel === null ? null : at(staticLevel, false),
    atRest: staticLevel === null ? null : at(staticLevel, true),
    pumping: pumpingLevel === null ? null : at(pumpingLevel, true),
    dry: hangLoad({ ...string, waterDepth: string.length, columnHeld: true }),
  };
}

/** How much longer the drop pipe is after fifty years at rest; wire and rope need that slack. */
export function fiftyYearStretch(
  facts: Facts,
  string: HangingString | null,
  suspension: Metres,
  staticLevel: Metres | null,
): Metres | null {
  if (string === null || staticLevel === null) return null;
  const modulus = modulusOfPipe(facts.dropPipe, FIFTY_YEARS);
  return pipeStretch({ ...string, waterDepth: staticLevel - suspension, columnHeld: true, modulus });
}
