/** What is taken for a choice of the build that nobody made, as one would type it. Each stands in the list of assumed values. */
export const DEFAULTS = {
  units: 'us',
  depthsFrom: 'ground',
  waterTemperature: '50 degF',
  altitude: '0 ft',
  casingHeightRequired: '12 in',
  frostMargin: '6 in',
  casingHeight: '12 in',
  testDuration: '24 h',
  cutIn: '40 psi',
  cutOut: '60 psi',
  tankRating: '100 psi',
  houseKind: 'pressure tank',
  control: 'switch',
  phase: 1,
  wires: 3,
  voltage: '230 V',
  pumpDiameter: '3.9 in',
  motorDiameter: '3.75 in',
  intakeToDischarge: '1.5 ft',
  /** Up to 2 hp, and where nobody said the power. */
  motorLength: '1.5 ft',
  /** Above 2 hp. */
  longMotorLength: '2.5 ft',
  outlet: '1-1/4 in',
  resin: 'PE4710',
  checkValves: ['0 ft'],
  arrow: 'up',
  torqueArrestor: '2 ft',
  ties: '10 ft',
  splices: ['4 ft'],
  fittings: 'stainless steel',
  clampsPerJoint: 2,
  tied: 'casing hook',
  strength: '5.25 %',
  target: '100 mg/L',
} as const;

/** Typed where a fact of the place is not known; the same as leaving it out, but on purpose. */
export const UNKNOWN = 'unknown';
