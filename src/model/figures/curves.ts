/** The pump's curve against what well and pipes ask for. */
import type { Facts } from '../facts.ts';
import { drawdownAt } from '../formulas/drawdown.ts';
import { operatingPoint } from '../formulas/operatingPoint.ts';
import { pointsCurve } from '../formulas/pointsCurve.ts';
import { genericCurve, genericDesignHead, type PumpCurve } from '../formulas/pumpCurve.ts';
import { kinematicViscosity, STANDARD_GRAVITY, waterDensity } from '../formulas/water.ts';
import type { CubicMetresPerSecond, Metres, Pascals } from '../si.ts';
import type { CurvePoint, Curves, SampledCurves, Solved } from '../solution.ts';
import { suspensionDepth } from '../string/topWorks.ts';
import { fittingFriction, pipeFriction, type Water } from './head.ts';

const SAMPLES = 16;

/** The plan's curve; null for a generic pump whose power nobody knows. */
export function pumpCurveOf({ pump }: Facts, density: number): PumpCurve | null {
  if (pump.curve.kind === 'points') return pointsCurve(pump.curve.points);
  if (pump.power === null) return null;
  const designFlow = pump.curve.flow;
  return genericCurve({ designFlow, designHead: genericDesignHead({ power: pump.power, flow: designFlow, density }) });
}

export interface System {
  readonly water: Water & { readonly density: number };
  readonly dropPipeLength: Metres;
}

/** The water and the pipe that the pump of these facts works with. */
export function systemOf({ site, pump }: Facts, suspension: Metres): System {
  const temperature = site.waterTemperature;
  return {
    water: { density: waterDensity(temperature), kinematicViscosity: kinematicViscosity(temperature) },
    dropPipeLength: Math.max(pump.setting - pump.intakeToDischarge - suspension, 0),
  };
}

/** Head that well and pipes ask for at a flow and a tank pressure; null while something of it is unknown. */
export function systemHead(
  facts: Facts,
  { water, dropPipeLength }: System,
  tankPressure: Pascals,
): ((flow: CubicMetresPerSecond) => Metres) | null {
  const { house, water: level, dropPipe } = facts;
  const { staticLevel, pumping } = level;
  const { line, distance, rise } = house;
  if (staticLevel === null || pumping === null || pumping.kind === 'yield only') return null;
  if (line === null || distance === null || rise === null) return null;
  const still = staticLevel + rise + tankPressure / (water.density * STANDARD_GRAVITY);
  return (flow) => {
    if (!(flow > 0))
      return (
        still + (pumping.kind === 'level' && pumping.flow === null ? (drawdownAt(pumping, 0, staticLevel) ?? 0) : 0)
      );
    return (
      still +
      (drawdownAt(pumping, flow, staticLevel) ?? 0) +
      pipeFriction(dropPipe, flow, dropPipeLength, water) +
      pipeFriction(line, flow, distance, water) +
      (fittingFriction(facts, flow) ?? 0)
    );
  };
}

export function curvesOf(facts: Facts, system: System): Curves & { readonly curve: PumpCurve | null } {
  const curve = pumpCurveOf(facts, system.water.density);
  const generic = facts.pump.curve.kind === 'generic';
  if (curve === null) return { generic, atCutOut: null, atCutIn: null, curve };
  const high = systemHead(facts, system, tankPressure(facts, 'cutOut'));
  const low = systemHead(facts, system, tankPressure(facts, 'cutIn'));
  return {
    generic,
    atCutOut: high ? operatingPoint(curve, high) : null,
    atCutIn: low ? operatingPoint(curve, low) : null,
    curve,
  };
}

/** Both curves point by point, from no flow to the most that the pump gives: for a plot, so not part of every solution. */
export function sampleCurves({ facts }: Pick<Solved, 'facts'>): SampledCurves {
  const system = systemOf(facts, suspensionDepth(facts));
  const curve = pumpCurveOf(facts, system.water.density);
  if (curve === null) return { pump: [], system: [] };
  const flows = Array.from({ length: SAMPLES + 1 }, (_, i) => (curve.runOutFlow * i) / SAMPLES);
  const sample = (headAt: (flow: number) => Metres): CurvePoint[] =>
    flows.map((flow) => ({ flow, head: headAt(flow) }));
  const asked = systemHead(facts, system, tankPressure(facts, 'cutOut'));
  return { pump: sample(curve.headAt), system: asked ? sample(asked) : [] };
}

/** An open tank has no pressure. */
function tankPressure({ house }: Facts, end: 'cutIn' | 'cutOut'): Pascals {
  return house.kind === 'open tank' ? 0 : house[end];
}
