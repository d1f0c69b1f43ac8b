/**
 * Where the drop pipe's centre line and its cable run across the bore, by depth: one answer for every view.
 *
 * A pitless spool hugs the casing wall, so the pipe hangs 1 to 2 in off that wall and drifts to the middle lower down
 * (common practice, no source). Under a seal it hangs from the middle. Offsets are positive towards the house.
 */
import { feet, inches } from '../../model/units.ts';
import type { Metres } from '../../model/si.ts';
import type { Solved } from '../../model/solution.ts';
import { forgetful, type Memory } from '../memory.ts';

/** Wall of the casing to the wall of the pipe, under the spool. */
const OFF_THE_WALL: Metres = inches(1.5);
/** The pipe has found the middle this far below the spool, or at a third of its length when it is shorter. */
const DRIFT: Metres = feet(12);
const DRIFT_SHARE = 1 / 3;
/** The cable crosses to the far wall over this height below the spool, and is back at the pipe below it. */
const CABLE_CROSSES: Metres = feet(4);
const CABLE_GAP: Metres = inches(0.15);
/** Half of a probe's two conductors. */
const WIRE_RADIUS: Metres = inches(0.1);

export interface StringAxis {
  /** Middle of the pipe. */
  pipe(depth: Metres): Metres;
  /** Middle of the cable. */
  cable(depth: Metres): Metres;
  /** Middle of the rope, slack beside the cable. */
  rope(depth: Metres): Metres;
  /** Middle of a probe's wires: along the pipe on the side away from the cable, and beside it near the top. */
  wire(depth: Metres): Metres;
  /** Depth below which the pipe hangs in the middle. */
  readonly centredFrom: Metres;
}

export interface AxisInput {
  /** Depth under the spool or seal where the string begins. */
  readonly hangsFrom: Metres;
  /** Depth of the pump's discharge. */
  readonly discharge: Metres;
  readonly casingInsideRadius: Metres;
  readonly boreInsideRadius: Metres;
  readonly pipeRadius: Metres;
  readonly cableRadius: Metres;
  readonly atWall: boolean;
}

/** 3t^2 - 2t^3: level at both ends; as a curve over depth it is exactly one cubic piece. */
function ease(t: number): number {
  const u = Math.min(1, Math.max(0, t));
  return u * u * (3 - 2 * u);
}

/** Heights under the spool over which pipe and cable find their place: a long string's do not know how long it is. */
function bendsOf(hangsFrom: Metres, discharge: Metres): { readonly drift: Metres; readonly crosses: Metres } {
  const share = (discharge - hangsFrom) * DRIFT_SHARE;
  return { drift: Math.max(0.3, Math.min(DRIFT, share)), crosses: Math.max(0.3, Math.min(CABLE_CROSSES, share)) };
}

export function makeStringAxis(input: AxisInput): StringAxis {
  const { hangsFrom, discharge, casingInsideRadius, boreInsideRadius, pipeRadius, cableRadius, atWall } = input;
  const room = Math.max(0, casingInsideRadius - pipeRadius);
  const start = atWall ? Math.max(0, room - Math.min(OFF_THE_WALL, room * 0.6)) : 0;
  const { drift, crosses } = bendsOf(hangsFrom, discharge);
  const pipe = (depth: Metres): Metres => start * (1 - ease((depth - hangsFrom) / drift));
  const beside = (depth: Metres): Metres =>
    Math.max(cableRadius - boreInsideRadius, pipe(depth) - pipeRadius - cableRadius - CABLE_GAP);
  // Under a seal it passes the house's side of the plate, behind the pipe, to the conduit there.
  const farWall = (casingInsideRadius - cableRadius) * (atWall ? -0.62 : 0.62);
  const cable = (depth: Metres): Metres => {
    const t = ease((depth - hangsFrom) / crosses);
    return (atWall ? Math.min(farWall, beside(depth)) : farWall) * (1 - t) + beside(depth) * t;
  };
  // By the casing's wall above, and by the hole's where that is narrower, which is farther down.
  const narrower = Math.min(casingInsideRadius, boreInsideRadius);
  const rope = (depth: Metres): Metres => {
    const t = ease((depth - hangsFrom) / drift);
    const wall = casingInsideRadius * (1 - t) + narrower * t - cableRadius;
    return Math.max(-wall, Math.min(-wall * 0.86, (atWall ? cable(depth) : beside(depth)) - 1.6 * cableRadius));
  };
  const wire = (depth: Metres): Metres => {
    const t = ease((depth - hangsFrom) / crosses);
    return (cable(depth) + cableRadius + WIRE_RADIUS) * (1 - t) + (pipe(depth) + pipeRadius + WIRE_RADIUS) * t;
  };
  return { pipe, cable, rope, wire, centredFrom: hangsFrom + drift };
}

/** The axis for a solved plan. */
export function stringAxisOf(solved: Solved, { recall }: Memory = forgetful): StringAxis {
  const input = axisInputOf(solved);
  const { hangsFrom, discharge, casingInsideRadius, boreInsideRadius, pipeRadius, cableRadius, atWall } = input;
  const { drift, crosses } = bendsOf(hangsFrom, discharge);
  const radii = [casingInsideRadius, boreInsideRadius, pipeRadius, cableRadius];
  return recall('axis', [hangsFrom, drift, crosses, ...radii, atWall], () => makeStringAxis(input));
}

function axisInputOf({ facts, parts, bore }: Solved): AxisInput {
  const pipe = parts.find((part) => part.kind === 'dropPipe');
  const pump = parts.find((part) => part.kind === 'pump');
  const carrier = parts.find((part) => part.kind === (facts.top.kind === 'pitless' ? 'pitlessAdapter' : 'seal'));
  const hangsFrom = carrier?.bottom ?? pipe?.top ?? 0;
  const discharge = pump?.top ?? pipe?.bottom ?? facts.pump.setting;
  const casing = bore.find((stretch) => stretch.kind === 'casing' && stretch.bottom > hangsFrom) ?? bore[0];
  const atPump = bore.find((stretch) => stretch.bottom >= discharge) ?? bore[bore.length - 1];
  const casingInsideRadius = casing?.insideRadius ?? (facts.well.casings[0]?.insideDiameter ?? 0.15) / 2;
  return {
    hangsFrom,
    discharge,
    casingInsideRadius,
    boreInsideRadius: atPump?.insideRadius ?? casingInsideRadius,
    pipeRadius: facts.dropPipe.outsideDiameter / 2,
    cableRadius: parts.find((part) => part.kind === 'cable')?.radius ?? inches(0.25),
    atWall: facts.top.kind === 'pitless',
  };
}
