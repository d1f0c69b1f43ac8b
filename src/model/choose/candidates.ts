/** Pumps to choose among: every usual rating, the plan's own pump, and what was kept by its points. */
import type { Facts } from '../facts.ts';
import type { PumpPoint } from '../formulas/pointsCurve.ts';
import type { Plan } from '../plan/schema.ts';
import type { CubicMetresPerSecond, Watts } from '../si.ts';
import type { Change } from '../solution.ts';
import { parseQuantity } from '../units.ts';
import { mostPowerFlow } from './mostPowerFlow.ts';

/**
 * Ratings in which well pumps of 4 in are sold, flow in the name and power of the motor. A motor named in horsepower
 * runs on 60 Hz where nobody says otherwise; of one named in kilowatts nobody knows. Common practice, from memory.
 */
export const USUAL_RATINGS = {
  us: {
    flows: ['5 gpm', '7 gpm', '10 gpm', '15 gpm', '20 gpm', '25 gpm'],
    powers: ['1/2 hp', '3/4 hp', '1 hp', '1-1/2 hp', '2 hp', '3 hp', '5 hp'],
  },
  metric: {
    flows: ['20 L/min', '30 L/min', '40 L/min', '60 L/min', '80 L/min', '100 L/min'],
    powers: ['0.37 kW', '0.55 kW', '0.75 kW', '1.1 kW', '1.5 kW', '2.2 kW', '3.7 kW'],
  },
} as const;

/** A pump that was kept by the points of its maker's curve. */
export interface OwnPump {
  readonly name: string;
  readonly power?: string | undefined;
  readonly points: readonly (readonly [flow: string, head: string])[];
}

/** What a pump is called: by its rating as typed, or by the name that it was kept under. */
export type PumpName =
  | { readonly kind: 'rating'; readonly flow: string; readonly power: string }
  | { readonly kind: 'own'; readonly name: string }
  /** What the plan says now, where it is neither of them. */
  | { readonly kind: 'plan' };

export interface Candidate {
  /** Stable, and its own in one table: "10 gpm, 1/2 hp", "own: North field". */
  readonly key: string;
  readonly name: PumpName;
  /** The flow in its name; of a pump by points where flow times head is most. */
  readonly rated: CubicMetresPerSecond;
  /** Null where nobody said it. */
  readonly power: Watts | null;
  /** It is the plan's pump already. */
  readonly isPlans: boolean;
  /** What makes the plan's pump this one; nothing where it is. */
  readonly changes: readonly Change[];
}

/** Metric names of the same motors are rounded: 0.75 kW is 1.006 hp. */
const SAME = 0.01;

/**
 * @param plan   as typed
 * @param facts  of it
 * @param own    pumps kept by their points
 */
export function candidatesOf(plan: Plan, facts: Facts, own: readonly OwnPump[]): readonly Candidate[] {
  const { flows, powers } = USUAL_RATINGS[facts.units];
  const rated = powers.flatMap((power) => flows.map((flow) => ratedCandidate(plan, facts, flow, power)));
  const kept = own.map((pump) => ownCandidate(plan, facts, pump));
  const all = [...rated, ...kept];
  const now = all.some(({ isPlans }) => isPlans) ? null : plansPump(plan, facts);
  return now === null ? all : [now, ...all];
}

function ratedCandidate(plan: Plan, facts: Facts, flow: string, power: string): Candidate {
  const [q, p] = [siOf(flow, 'flow'), siOf(power, 'power')];
  const { curve, power: standing } = facts.pump;
  const isPlans =
    curve.kind === 'generic' && standing !== null && isSame(curve.flow, q) && isSame(standing, p) && saysPump(plan);
  return {
    key: `${flow}, ${power}`,
    name: { kind: 'rating', flow, power },
    rated: q,
    power: p,
    isPlans,
    changes: isPlans ? [] : anotherPump(plan, power, { kind: 'generic', flow }),
  };
}

function ownCandidate(plan: Plan, facts: Facts, { name, power, points }: OwnPump): Candidate {
  const read = pointsOf(points);
  const { curve } = facts.pump;
  const watts = power === undefined ? null : siOf(power, 'power');
  // The same pump on another motor is another choice.
  const standing = facts.pump.power;
  const isSaid = plan.pump?.power !== undefined;
  const sameMotor = watts === null ? !isSaid : isSaid && standing !== null && isSame(standing, watts);
  const isPlans = curve.kind === 'points' && samePoints(curve.points, read) && sameMotor;
  return {
    key: `own: ${name}`,
    name: { kind: 'own', name },
    rated: mostPowerFlow(read),
    power: watts,
    isPlans,
    changes: isPlans ? [] : anotherPump(plan, power, { kind: 'points', points: points.map((point) => [...point]) }),
  };
}

function plansPump(plan: Plan, { pump }: Facts): Candidate | null {
  if (!saysPump(plan)) return null;
  const { curve, power } = pump;
  const rated = curve.kind === 'generic' ? curve.flow : mostPowerFlow(curve.points);
  return { key: 'plan', name: { kind: 'plan' }, rated, power, isPlans: true, changes: [] };
}

/** Whether somebody said which pump it is: a rating of which half is assumed is nobody's pump. */
function saysPump({ pump }: Plan): boolean {
  const curve = pump?.curve;
  return curve?.kind === 'points' || (curve?.flow !== undefined && pump?.power !== undefined);
}

/** What stands on the nameplate and in the sheet of one machine is not true of another. */
const OF_THE_OLD_PUMP = ['pump.current', 'pump.mass', 'pump.intakeToDischarge', 'pump.intakeToMotorBottom'] as const;

function anotherPump(plan: Plan, power: string | undefined, curve: unknown): Change[] {
  const { pump } = plan;
  const gone = OF_THE_OLD_PUMP.filter((path) => pump?.[path.slice('pump.'.length) as keyof typeof pump] !== undefined);
  return [
    { path: 'pump.power', to: power },
    { path: 'pump.curve', to: curve },
    ...gone.map((path) => ({ path, to: undefined })),
  ];
}

export function pointsOf(points: OwnPump['points']): PumpPoint[] {
  return points.map(([flow, head]) => ({ flow: siOf(flow, 'flow'), head: siOf(head, 'length') }));
}

function samePoints(one: readonly PumpPoint[], other: readonly PumpPoint[]): boolean {
  const byFlow = (points: readonly PumpPoint[]) => points.toSorted((a, b) => a.flow - b.flow);
  const [a, b] = [byFlow(one), byFlow(other)];
  return (
    a.length === b.length &&
    a.every(({ flow, head }, i) => isSame(flow, b[i]?.flow ?? -1) && isSame(head, b[i]?.head ?? -1))
  );
}

function isSame(one: number, other: number): boolean {
  return Math.abs(one - other) <= SAME * Math.max(Math.abs(one), Math.abs(other));
}

/** Throws for text that no readable plan holds. */
function siOf(text: string, kind: 'flow' | 'power' | 'length'): number {
  const read = parseQuantity(text, kind);
  if (!read.ok) throw new RangeError(`candidatesOf: ${kind} "${text}" is ${read.problem}`);
  return read.si;
}
