/** A pump's curve in its well: where it works with the water held at a depth, and with the water falling as it flows. */
import type { Facts } from '../facts.ts';
import { fittingHead, velocityIn } from '../formulas/friction.ts';
import { operatingPoint } from '../formulas/operatingPoint.ts';
import type { PumpCurve } from '../formulas/pumpCurve.ts';
import type { WellRelation } from '../formulas/wellRelation.ts';
import { STANDARD_GRAVITY } from '../formulas/water.ts';
import type { CubicMetresPerSecond, Metres, Pascals } from '../si.ts';
import type { CurvePoint, PumpInWell } from '../solution.ts';
import { dropPipeLoss, lineLoss, pipeFriction, type Water } from './head.ts';

/** The water and the pipe that a pump works with. */
export interface System {
  readonly water: Water & { readonly density: number };
  readonly dropPipeLength: Metres;
}

/** Head asked for at a flow. */
export type HeadOf = (flow: CubicMetresPerSecond) => Metres;

/** Pressure in the tank at one end of the switch's range; an open tank has none. */
export function tankPressure({ house }: Facts, end: 'cutIn' | 'cutOut'): Pascals {
  return house.kind === 'open tank' ? 0 : house[end];
}

/** Head from the ground at the well into the tank: rise, pressure and friction; null while something of it is unknown. */
export function pipesHead(facts: Facts, { water, dropPipeLength }: System, pressure: Pascals): HeadOf | null {
  const { dropPipe, house } = facts;
  const { line, distance, rise } = house;
  if (line === null || distance === null || rise === null) return null;
  const still = rise + pressure / (water.density * STANDARD_GRAVITY);
  // Counted once: the search for an operating point asks for a dozen flows.
  const [inDropPipe, inLine] = [dropPipeLoss(facts), lineLoss(facts)];
  const fittings = (flow: CubicMetresPerSecond) =>
    fittingHead(inDropPipe, velocityIn(flow, dropPipe.insideDiameter)) +
    fittingHead(inLine, velocityIn(flow, line.insideDiameter));
  return (flow) =>
    flow > 0
      ? still +
        pipeFriction(dropPipe, flow, dropPipeLength, water) +
        pipeFriction(line, flow, distance, water) +
        fittings(flow)
      : still;
}

/** Where a pump works while the water stands at a depth. */
export function pointAtLevel(curve: PumpCurve, pipes: HeadOf, level: Metres): CurvePoint {
  return operatingPoint(curve, (flow) => level + pipes(flow));
}

/** What is known of a well for the pump that hangs in it. */
export interface WellForPump {
  /** Depth of the water before pumping. */
  readonly start: Metres;
  /** Depth of the intake, or of a cut-off above it. */
  readonly lowest: Metres;
  readonly relation: WellRelation | null;
  /** What the well is held to give at the most, however far its water falls; null: nobody said. */
  readonly most: CubicMetresPerSecond | null;
}

/**
 * Where a pump works in a well whose water falls with the flow.
 *
 * Where the well cannot keep up there is no such point: the flow falls from its value at the start to its value with
 * the water at the lowest level, and that last one is told, as `outpumped`. The well cannot keep up when the drawdown
 * would take the water below the lowest level, or when more than it gives at the most is pumped even with the water
 * there. Where it gives less than the drawdown says, the water falls on to where the pump takes just that much. With the water below the lowest level from the start, nothing flows.
 *
 * @returns  null where neither the drawdown is known nor the yield says that the well cannot keep up
 */
export function pointInWell(curve: PumpCurve, pipes: HeadOf, well: WellForPump): PumpInWell | null {
  const { start, lowest, relation, most } = well;
  if (!(start < lowest)) return { flow: 0, head: curve.shutOffHead, waterLevel: start, outpumped: true };
  if (relation === null && most === null) return null;
  const held = () => ({ ...pointAtLevel(curve, pipes, lowest), waterLevel: lowest, outpumped: true });
  if (relation === null) {
    const there = held();
    return there.flow > (most ?? 0) ? there : null;
  }
  const moving = operatingPoint(curve, (flow) => start + relation.drawdownAt(flow) + pipes(flow));
  const waterLevel = start + relation.drawdownAt(moving.flow);
  if (waterLevel > lowest) return held();
  if (most !== null && moving.flow > most) {
    const there = held();
    if (there.flow > most) return there;
    // The water goes on falling until the pump takes no more than the well gives.
    const head = curve.headAt(most);
    return { flow: most, head, waterLevel: Math.min(head - pipes(most), lowest), outpumped: false };
  }
  return { ...moving, waterLevel, outpumped: false };
}
