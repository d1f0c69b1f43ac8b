/**
 * What is taken for a choice of the build that nobody made, as one would type it. Each stands in the list of assumed
 * values. A plan in metric units has metric defaults: round ones of its own, no feet turned into centimetres.
 */
export const DEFAULTS = {
  units: 'us',
  depthsFrom: 'ground',
  waterTemperature: '50 degF',
  altitude: '0 ft',
  casingHeightRequired: '12 in',
  frostMargin: '6 in',
  casingHeight: '12 in',
  testDuration: '24 h',
  demand: '8 gpm',
  cutIn: '40 psi',
  cutOut: '60 psi',
  tankRating: '100 psi',
  houseKind: 'pressure tank',
  control: 'switch',
  curve: 'generic',
  ratedFlow: '10 gpm',
  phase: 1,
  wires: 3,
  voltage: '230 V',
  pumpDiameter: '3.9 in',
  motorDiameter: '3.75 in',
  /** Of schedule 40 PVC pipe, from which most sleeves are cut: 0.237 in at 4 in, 0.258 in at 5 in (ASTM D1785). */
  shroudWall: '1/4 in',
  intakeToDischarge: '1.5 ft',
  /** Up to 2 hp, and where nobody said the power. */
  motorLength: '1.5 ft',
  /** Above 2 hp. */
  longMotorLength: '2.5 ft',
  outlet: '1-1/4 in',
  pipeMaterial: 'PE',
  pipeSize: '1 in',
  /** Of a drop pipe of which nobody said anything; a pipe that was named without its rating has an unknown wall. */
  pipeRating: '200 psi',
  /** The same of a size in mm. */
  metricPipeRating: '16 bar',
  resin: 'PE4710',
  checkValves: ['0 ft'],
  arrow: 'up',
  torqueArrestor: '2 ft',
  ties: '10 ft',
  splices: ['4 ft'],
  fittings: 'stainless steel',
  clampsPerJoint: 2,
  wireSize: '12 AWG',
  tied: 'casing hook',
  strength: '5.25 %',
  target: '100 mg/L',
} as const;

/**
 * 2.8 and 4.1 bar are the usual switch of 40 and 60 psi, 6.9 bar the tank of 100 psi, 13.8 bar the pipe of 200 psi. Pump and motor are the same
 * machines, so their diameters and lengths are the same to the millimetre or centimetre. Common practice, no source.
 */
const METRIC = {
  waterTemperature: '10 degC',
  altitude: '0 m',
  casingHeightRequired: '30 cm',
  frostMargin: '15 cm',
  casingHeight: '30 cm',
  demand: '30 L/min',
  cutIn: '2.8 bar',
  cutOut: '4.1 bar',
  tankRating: '6.9 bar',
  ratedFlow: '40 L/min',
  pipeRating: '13.8 bar',
  pumpDiameter: '99 mm',
  motorDiameter: '95 mm',
  shroudWall: '6 mm',
  intakeToDischarge: '0.46 m',
  motorLength: '0.46 m',
  longMotorLength: '0.76 m',
  checkValves: ['0 m'],
  torqueArrestor: '0.6 m',
  ties: '3 m',
  splices: ['1.2 m'],
  wireSize: '4 mm2',
  /** Of plastic pipe by ISO standards; what else is said of the pipe may make it an inch size. */
  pipeSize: '32 mm',
} as const;

export type Defaults = { readonly [Name in keyof typeof DEFAULTS]: Default<(typeof DEFAULTS)[Name], Name> };
/** Of what has a metric twin any text, of the rest the very word. */
type Default<Value, Name> = Name extends keyof typeof METRIC
  ? Value extends readonly string[]
    ? readonly string[]
    : string
  : Value;

const IN_UNITS: Readonly<Record<'us' | 'metric', Defaults>> = {
  us: DEFAULTS,
  metric: { ...DEFAULTS, ...METRIC },
};

/** The defaults of a plan in those units. */
export function defaultsIn(units: unknown): Defaults {
  return IN_UNITS[units === 'metric' ? 'metric' : 'us'];
}
