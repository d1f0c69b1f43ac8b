/** Pump and motor of a plan in SI. */
import type { PumpFacts } from '../../facts.ts';
import type { Watts } from '../../si.ts';
import { pumpMass, runningCurrent } from '../../tables/motors.ts';
import { horsepower, readQuantity, poundsMass, writeQuantity } from '../../units.ts';
import { defaultsIn } from '../defaults.ts';
import type { Defaults } from '../defaults.ts';
import type { Plan } from '../schema.ts';
import { read } from '../take.ts';
import type { Take } from '../take.ts';

type PumpPlan = Omit<NonNullable<Plan['pump']>, 'setting'>;

/** All of a pump but where it hangs. */
type PumpBuild = Omit<PumpFacts, 'setting'>;

/** 2 hp, with room for its metric name (1.5 kW is 2.012 hp). */
const LONG_MOTOR_ABOVE = horsepower(2.05);

export function pumpFacts(pump: PumpPlan, units: Plan['units'], take: Take): PumpBuild {
  const usual = defaultsIn(units);
  const power = take.fact('pump.power', pump.power, 'power');
  const phase = take.option('pump.phase', pump.phase, usual.phase);
  const voltage = take.quantity('pump.voltage', pump.voltage, 'voltage', usual.voltage);
  const motorLength = power !== null && power > LONG_MOTOR_ABOVE ? usual.longMotorLength : usual.motorLength;
  const shroudDiameter = take.maybe(pump.shroudDiameter, 'length');
  return {
    power,
    phase,
    wires: take.option('pump.wires', pump.wires, usual.wires),
    voltage,
    frequency: frequencyOf(pump, power, take),
    current: nameplateCurrent(pump, { power, phase, voltage }, take),
    curve: curveOf(pump, usual, take),
    diameter: take.quantity('pump.diameter', pump.diameter, 'length', usual.pumpDiameter),
    motorDiameter: take.quantity('pump.motorDiameter', pump.motorDiameter, 'length', usual.motorDiameter),
    intakeToDischarge: take.quantity(
      'pump.intakeToDischarge',
      pump.intakeToDischarge,
      'length',
      usual.intakeToDischarge,
    ),
    intakeToMotorBottom: take.quantity('pump.intakeToMotorBottom', pump.intakeToMotorBottom, 'length', motorLength),
    mass: massOf(pump, power, units, take),
    outlet: take.option('pump.outlet', pump.outlet, usual.outlet),
    checkValveInside: take.option('pump.checkValveInside', pump.checkValveInside, false),
    shroudDiameter,
    shroudWall:
      shroudDiameter === null ? 0 : take.quantity('pump.shroudWall', pump.shroudWall, 'length', usual.shroudWall),
    lowLevelCutOff: flagOr(pump.lowLevelCutOff, (typed) => take.maybe(typed, 'length')),
    flowLimiter: flagOr(pump.flowLimiter, (typed) => take.maybe(typed, 'flow')),
  };
}

/** Motors named in horsepower run on 60 Hz; of one named in kilowatts nobody knows. Only a generic curve asks for it. */
function frequencyOf({ frequency, power: typed, curve }: PumpPlan, power: Watts | null, take: Take): 50 | 60 | null {
  if (frequency !== undefined) return frequency === '50 Hz' ? 50 : 60;
  if (power === null || typed === undefined || curve?.kind === 'points') return null;
  const parsed = readQuantity(typed, 'power');
  if (parsed.ok && parsed.unit === 'hp') {
    take.assume('pump.frequency', '60 Hz');
    return 60;
  }
  take.unknown.push('pump.frequency');
  return null;
}

function curveOf({ curve }: PumpPlan, usual: Defaults, take: Take): PumpFacts['curve'] {
  if (curve?.kind === 'points') {
    return {
      kind: 'points',
      points: curve.points.map(([flow, head]) => ({ flow: read(flow, 'flow'), head: read(head, 'length') })),
    };
  }
  return {
    kind: take.option('pump.curve.kind', curve?.kind, usual.curve),
    flow: take.quantity('pump.curve.flow', curve?.flow, 'flow', usual.ratedFlow),
  };
}

/** The nameplate's; without one what such motors draw stands in, which is told, but stays out of the facts. */
function nameplateCurrent(pump: PumpPlan, supply: { power: Watts | null; phase: 1 | 3; voltage: number }, take: Take) {
  const said = take.maybe(pump.current, 'current');
  const { power, phase, voltage } = supply;
  if (said !== null || power === null) return said;
  const frequency = pump.frequency === '50 Hz' ? 50 : null;
  const usual = runningCurrent({ power, phase, voltage, frequency });
  if (usual === null) take.unknown.push('pump.current');
  else take.assume('pump.current', writeQuantity(usual, 'current', 'A'));
  return null;
}

function massOf({ mass }: PumpPlan, power: Watts | null, units: Plan['units'], take: Take) {
  const said = take.maybe(mass, 'mass');
  if (said !== null || power === null) return said;
  const usual = pumpMass(power);
  if (usual === null) return null;
  const value =
    units === 'metric' ? writeQuantity(usual, 'mass', 'kg', 0.1) : writeQuantity(usual, 'mass', 'lb', poundsMass(1));
  take.assume('pump.mass', value);
  return usual;
}

function flagOr(
  typed: string | boolean | undefined,
  readText: (text: string) => number | null,
): number | boolean | null {
  return typeof typed === 'string' ? readText(typed) : (typed ?? null);
}
