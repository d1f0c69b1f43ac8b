/** The pump's curves against what well and pipes ask for. */
import type { Facts } from '../facts.ts';
import { unended, type PumpBand } from '../formulas/genericBand.ts';
import type { PumpCurve } from '../formulas/pumpCurve.ts';
import { wellRelation } from '../formulas/wellRelation.ts';
import { STANDARD_GRAVITY } from '../formulas/water.ts';
import type { CubicMetresPerSecond, Metres, Pascals } from '../si.ts';
import type { CurvePoint, Curves, PumpInWell, SampledCurves, Solved } from '../solution.ts';
import { suspensionDepth } from '../string/topDepths.ts';
import { lowestLevel, lowestStatic } from './lowestLevel.ts';
import { mostYield, provenYield } from './provenYield.ts';
import { pumpBandOf, type BandEnd } from './pumpBand.ts';
import { siteWater } from './siteWater.ts';
import { pipesHead, pointAtLevel, pointInWell, tankPressure, type HeadOf, type System } from './pumpInWell.ts';
import { dischargeDepth } from '../string/pumpDepths.ts';

export type { System } from './pumpInWell.ts';

const SAMPLES = 16;

/** The plan's curve, by default the weaker end of its band; null for a generic pump whose power nobody knows. */
export function pumpCurveOf(facts: Facts, density: number, end: BandEnd = 'least'): PumpCurve | null {
  return pumpBandOf(facts, density)?.[end] ?? null;
}

/** The water and the pipe that the pump of these facts works with. */
export function systemOf({ site, pump }: Facts, suspension: Metres): System {
  return {
    water: siteWater(site),
    dropPipeLength: Math.max(dischargeDepth(pump) - suspension, 0),
  };
}

/**
 * Head that well and pipes ask for at a flow and a tank pressure, the water falling with the flow as far as the drawdown
 * is known, below the intake too: a curve to draw, not a level; null while something of it is unknown.
 */
export function systemHead(facts: Facts, system: System, pressure: Pascals): HeadOf | null {
  const { staticLevel, pumping } = facts.water;
  const relation = wellRelation(pumping, staticLevel);
  const pipes = pipesHead(facts, system, pressure);
  if (staticLevel === null || relation === null || pipes === null) return null;
  return (flow) => staticLevel + (flow > 0 ? relation.drawdownAt(flow) : 0) + pipes(flow);
}

/** The operating points of the figures, all from the level at rest. */
export function curvesOf(facts: Facts, system: System): Curves & { readonly band: PumpBand | null } {
  const generic = facts.pump.curve.kind === 'generic';
  const band = pumpBandOf(facts, system.water.density);
  const atCutIn = band === null ? null : pointFromRest(facts, system, band.least, 'cutIn');
  return {
    generic,
    atCutOut: band === null ? null : pointFromRest(facts, system, band.least, 'cutOut'),
    atCutIn,
    ...mostOf(facts, system, band, atCutIn),
    band,
  };
}

/** Of the curves what draws the water down the furthest, and the least that can be found without the others. */
export type FallCurves = Pick<Curves, 'atCutInMost' | 'liftsFromMost' | 'outrunsYield'>;

export function fallCurvesOf(facts: Facts, system: System): FallCurves {
  return mostOf(facts, system, pumpBandOf(facts, system.water.density));
}

/** @param atCutIn  of the band's weaker end, where it was found already */
function mostOf(facts: Facts, system: System, band: PumpBand | null, atCutIn: PumpInWell | null = null): FallCurves {
  if (band === null) return { atCutInMost: null, liftsFromMost: null, outrunsYield: null };
  const { rise } = facts.house;
  const low = tankPressure(facts, 'cutIn');
  const pipes = pipesHead(facts, system, low);
  const known = band.most === band.least ? atCutIn : null;
  return {
    atCutInMost: known ?? pointFromRest(facts, system, band.most, 'cutIn'),
    liftsFromMost:
      rise === null ? null : band.most.shutOffHead - rise - low / (system.water.density * STANDARD_GRAVITY),
    outrunsYield: pipes === null ? null : outruns(facts, band.most, pipes),
  };
}

function pointFromRest(facts: Facts, system: System, curve: PumpCurve, tank: PointAsked['tank']): PumpInWell | null {
  const { staticLevel } = facts.water;
  const pipes = pipesHead(facts, system, tankPressure(facts, tank));
  return staticLevel === null || pipes === null ? null : pointInWell(curve, pipes, wellFrom(facts, staticLevel));
}

/** Whether a pump takes more from the lowest water at rest than the well is said to give; null where nobody said what. */
function outruns(facts: Facts, curve: PumpCurve, pipes: HeadOf): boolean | null {
  const rest = lowestStatic(facts);
  const gives = provenYield(facts);
  if (rest === null || gives === null) return null;
  return gives < (curve.endFlow ?? curve.runOutFlow) && curve.headAt(gives) - pipes(gives) > rest;
}

/** The well of these facts with its water at some depth before pumping. */
function wellFrom(facts: Facts, start: Metres) {
  const { pumping, staticLevel } = facts.water;
  const relation = wellRelation(pumping, staticLevel);
  return {
    start,
    lowest: lowestLevel(facts).depth,
    relation,
    most: relation === null ? provenYield(facts) : mostYield(facts),
  };
}

/** Which point of the band, and which end of the switch's range. */
export interface PointAsked {
  readonly end: BandEnd;
  readonly tank: 'cutIn' | 'cutOut';
}

/**
 * Flow and head of the pump while the water is held at a depth, wherever the well would let it stand.
 *
 * @returns  null while pump, line, distance or rise is unknown
 */
export function pumpAtLevel(facts: Facts, { end, tank }: PointAsked, level: Metres): CurvePoint | null {
  const system = systemOf(facts, suspensionDepth(facts));
  const curve = pumpCurveOf(facts, system.water.density, end);
  const pipes = pipesHead(facts, system, tankPressure(facts, tank));
  return curve === null || pipes === null ? null : pointAtLevel(curve, pipes, level);
}

/**
 * Where the pump works when the water stands at `start` before pumping and falls with the flow; see `pointInWell` for
 * the well that cannot keep up.
 *
 * @returns  null while pump, line, distance, rise or both drawdown and yield are unknown
 */
export function pumpFromLevel(facts: Facts, { end, tank }: PointAsked, start: Metres): PumpInWell | null {
  const system = systemOf(facts, suspensionDepth(facts));
  const curve = pumpCurveOf(facts, system.water.density, end);
  const pipes = pipesHead(facts, system, tankPressure(facts, tank));
  return curve === null || pipes === null ? null : pointInWell(curve, pipes, wellFrom(facts, start));
}

/**
 * The deepest water from which the pump still gives a flow; below it it gives less.
 *
 * @returns  depth [m]; null while pump, line, distance or rise is unknown, or where the pump gives so much from no depth
 */
export function levelAtFlow(facts: Facts, { end, tank }: PointAsked, flow: CubicMetresPerSecond): Metres | null {
  const system = systemOf(facts, suspensionDepth(facts));
  const curve = pumpCurveOf(facts, system.water.density, end);
  const pipes = pipesHead(facts, system, tankPressure(facts, tank));
  if (curve === null || pipes === null || flow > (curve.endFlow ?? curve.runOutFlow)) return null;
  return curve.headAt(flow) - pipes(flow);
}

/** The deepest water that the pump still lifts into the tank; null while pump or rise is unknown. */
export function levelAtNoFlow(facts: Facts, { end, tank }: PointAsked): Metres | null {
  const { density } = systemOf(facts, suspensionDepth(facts)).water;
  const curve = pumpCurveOf(facts, density, end);
  const { rise } = facts.house;
  if (curve === null || rise === null) return null;
  return curve.shutOffHead - rise - tankPressure(facts, tank) / (density * STANDARD_GRAVITY);
}

/** What the stronger pump takes at cut-in if nothing ends the water's fall: for the depth that it would need; null while unknown. */
export function flowAsFarAsItFalls(facts: Facts, start: Metres): CubicMetresPerSecond | null {
  const system = systemOf(facts, suspensionDepth(facts));
  const curve = pumpCurveOf(facts, system.water.density, 'most');
  const pipes = pipesHead(facts, system, tankPressure(facts, 'cutIn'));
  if (curve === null || pipes === null) return null;
  return pointInWell(curve, pipes, { ...wellFrom(facts, start), lowest: Infinity, most: null })?.flow ?? null;
}

/** Where the weaker pump would work at cut-in were its curve not ended: past its range or within it. */
export function unendedFromLevel(facts: Facts, start: Metres): PumpInWell | null {
  const system = systemOf(facts, suspensionDepth(facts));
  const curve = pumpCurveOf(facts, system.water.density);
  const pipes = pipesHead(facts, system, tankPressure(facts, 'cutIn'));
  return curve === null || pipes === null ? null : pointInWell(unended(curve), pipes, wellFrom(facts, start));
}

/** The curves point by point, from no flow to the most that the pump gives: for a plot, so not part of every solution. */
export function sampleCurves({ facts }: Pick<Solved, 'facts'>): SampledCurves {
  const system = systemOf(facts, suspensionDepth(facts));
  const band = pumpBandOf(facts, system.water.density);
  if (band === null) return { pump: [], pumpMost: [], system: [] };
  const sample = (headAt: HeadOf, to: number): CurvePoint[] =>
    Array.from({ length: SAMPLES + 1 }, (_, i) => {
      const flow = (to * i) / SAMPLES;
      return { flow, head: headAt(flow) };
    });
  const lastFlow = ({ endFlow, runOutFlow }: PumpCurve) => endFlow ?? runOutFlow;
  const asked = systemHead(facts, system, tankPressure(facts, 'cutOut'));
  return {
    pump: sample(band.least.headAt, lastFlow(band.least)),
    pumpMost: band.most === band.least ? [] : sample(band.most.headAt, lastFlow(band.most)),
    system: asked ? sample(asked, lastFlow(band.most)) : [],
  };
}
