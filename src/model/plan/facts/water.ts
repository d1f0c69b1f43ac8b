/** Water levels of a plan in SI, from the ground. */
import type { PumpingFacts, WaterFacts } from '../../facts.ts';
import type { Metres } from '../../si.ts';
import { writeQuantity } from '../../units.ts';
import { DEFAULTS } from '../defaults.ts';
import { UNKNOWN } from '../unknown.ts';
import type { Plan } from '../schema.ts';
import { read } from '../take.ts';
import type { Take } from '../take.ts';

type WaterPlan = Plan['water'];
type PumpingPlan = NonNullable<WaterPlan['pumping']>;

/** What a missing fact of the water is taken from. */
export interface BesideWater {
  /** Diameter of the hole or, failing that, of the casing: half of it is the aquifer's radius if nobody said. */
  readonly bore: Metres;
  /** What the house wants, as typed: the flow at which a level was measured if nobody said. */
  readonly demand: string | undefined;
  /** What the well is said to give, as typed: no level was measured at more. */
  readonly yielded: string | undefined;
  readonly units: Plan['units'];
}

export function waterFacts(water: WaterPlan, beside: BesideWater, take: Take): WaterFacts {
  const staticLevel = take.depthFact('water.staticLevel', water.staticLevel);
  const staticHighest = take.depthFact('water.staticHighest', water.staticHighest);
  const fall = take.maybe(water.dryFall, 'length');
  const staticLowest =
    take.depth(water.staticLowest) ?? (staticLevel === null || fall === null ? null : staticLevel + fall);
  if (staticLowest === null) take.unknown.push('water.staticLowest');
  if (!water.pumping) take.unknown.push('water.pumping');
  return {
    staticLevel,
    staticHighest,
    staticLowest,
    pumping: water.pumping ? pumpingFacts(water.pumping, beside, take) : null,
    acidity: take.fact('water.pH', water.pH, 'acidity'),
    conductivity: take.fact('water.conductivity', water.conductivity, 'conductivity'),
    sand: take.flag('water.sand', water.sand),
    gas: take.flag('water.gas', water.gas),
  };
}

/**
 * Flow that the well was pumped at by a test of which the fall of the water was not written down, as typed: no drawdown,
 * but a yield. Undefined where the fall is said too, as the test itself then tells what the well gives.
 */
export function pumpedFlow(pumping: PumpingPlan | undefined): string | undefined {
  switch (pumping?.kind) {
    case 'test':
      return isSaid(pumping.flow) && !isSaid(pumping.drawdown) ? pumping.flow : undefined;
    case 'level':
      return isSaid(pumping.flow) && !isSaid(pumping.level) ? pumping.flow : undefined;
    case 'steps': {
      if (pumping.steps.some((step) => isSaid(step.flow) && isSaid(step.drawdown))) return undefined;
      const flows = pumping.steps.map(({ flow }) => flow).filter(isSaid);
      return flows.toSorted((one, other) => read(other, 'flow') - read(one, 'flow'))[0];
    }
    default:
      return undefined;
  }
}

function isSaid(typed: string | undefined): typed is string {
  return typed !== undefined && typed !== UNKNOWN;
}

/** Null while a number is missing without which the test says nothing of the drawdown; that number is listed. */
function pumpingFacts(pumping: PumpingPlan, beside: BesideWater, take: Take): PumpingFacts | null {
  switch (pumping.kind) {
    case 'yield only':
      return pumping;
    case 'test': {
      const step = stepFacts('water.pumping', pumping, take);
      return step && { kind: 'test', ...step };
    }
    case 'steps': {
      const steps = pumping.steps.map((step, i) => stepFacts(`water.pumping.steps.${i}`, step, take));
      const known = steps.filter((step) => step !== null);
      return known.length > 0 ? { kind: 'steps', steps: known } : null;
    }
    case 'level': {
      const level = take.depthFact('water.pumping.level', pumping.level);
      const flow = flowOfLevel(pumping.flow, beside, take);
      return level === null ? null : { kind: 'level', level, ...flow };
    }
    case 'aquifer': {
      const transmissivity = take.fact('water.pumping.transmissivity', pumping.transmissivity, 'transmissivity');
      const storativity = take.fact('water.pumping.storativity', pumping.storativity, 'ratio');
      if (transmissivity === null || storativity === null) return null;
      // Exact, so that it reads back as half the bore in either system.
      const half = writeQuantity(beside.bore / 2, 'length', beside.units === 'metric' ? 'mm' : 'in');
      return {
        kind: 'aquifer',
        transmissivity,
        storativity,
        radius: take.quantity('water.pumping.radius', pumping.radius, 'length', half),
        after: take.quantity('water.pumping.after', pumping.after, 'time', DEFAULTS.testDuration),
      };
    }
  }
}

/**
 * A level whose flow nobody wrote down is taken as measured at what the house wants, or at what the well is said to give
 * where that is less: a level alone is no drawdown, and no well was pumped at more than it gives.
 */
function flowOfLevel(
  typed: string | undefined,
  { demand, yielded }: BesideWater,
  take: Take,
): Pick<Extract<PumpingFacts, { kind: 'level' }>, 'flow' | 'flowAssumed'> {
  const said = take.maybe(typed, 'flow');
  if (said !== null && said > 0) return { flow: said };
  const wanted = take.maybe(demand, 'flow');
  if (wanted === null || demand === undefined || !(wanted > 0)) {
    take.unknown.push('water.pumping.flow');
    return { flow: null };
  }
  const gives = take.maybe(yielded, 'flow');
  const isLess = gives !== null && yielded !== undefined && gives > 0 && gives < wanted;
  take.assume('water.pumping.flow', isLess ? yielded : demand);
  return { flow: isLess ? gives : wanted, flowAssumed: true };
}

interface StepPlan {
  readonly flow: string;
  readonly drawdown: string;
  readonly after?: string | undefined;
}

function stepFacts(path: string, typed: StepPlan, take: Take) {
  const flow = take.fact(`${path}.flow`, typed.flow, 'flow');
  const drawdown = take.fact(`${path}.drawdown`, typed.drawdown, 'length');
  return flow === null || drawdown === null ? null : { flow, drawdown, after: take.maybe(typed.after, 'time') };
}
