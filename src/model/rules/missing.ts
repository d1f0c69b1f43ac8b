/** Facts that a rule may lack, each with the fields of the plan that would decide it, the likeliest first. */
export const DECIDED_BY = {
  staticLevel: ['water.staticLevel'],
  pumpingLevel: ['water.pumping'],
  /** The level alone, where a drawdown would not help. */
  levelWhilePumping: ['water.pumping'],
  demand: ['house.demand'],
  yield: ['well.yield', 'water.pumping'],
  flowAtCutIn: ['water.pumping', 'house.line', 'house.distance', 'house.rise', 'pump.power'],
  operatingPoint: ['water.pumping', 'house.line', 'house.distance', 'house.rise', 'pump.power'],
  flowOfPump: ['house.demand'],
  power: ['pump.power'],
  powerOrCurve: ['pump.power', 'pump.curve'],
  powerOrCurrent: ['pump.power', 'pump.current'],
  currentOrPower: ['pump.current', 'pump.power'],
  weightOrPower: ['pump.mass', 'pump.power'],
  rise: ['house.rise'],
  wayToTank: ['house.line', 'house.distance', 'house.rise'],
  reliefValve: ['house.reliefValve'],
  ratingOfDropPipe: ['dropPipe.rating'],
  ratingSoWarm: ['dropPipe.rating'],
  frostDepth: ['site.frostDepth'],
  protrusion: ['top.protrusion'],
  casingBottom: ['well.casing.bottom'],
  casingBore: ['well.casing.insideDiameter', 'well.casing.size'],
  groundAtFoot: ['well.layers'],
  /** numbers: { material } */
  firmRock: ['well.layers'],
  inflows: ['well.inflows'],
  intakeKind: ['well.intake.kind'],
  screenEnds: ['well.intake.top', 'well.intake.bottom'],
  /** Of the first screen that does not say it. */
  openArea: ['well.intake.screens.0.openArea', 'well.intake.diameter'],
  screenWidth: ['well.intake.diameter'],
  pumpDiameter: ['pump.diameter'],
  holeWidth: ['well.intake.diameter'],
  wireRun: ['wire.run', 'house.distance'],
  /** numbers: { wire } */
  ampacity: ['wire.size'],
  waterTest: ['water.pH', 'water.conductivity'],
  flood: ['site.floodHeight'],
  wellTop: ['well.inPit'],
  distances: ['site.septicTank.distance', 'site.drainField.distance', 'site.building.distance'],
  tank: ['house.tank'],
  line: ['house.line'],
  ratingOfLine: ['house.line.rating'],
  sandAndGas: ['water.sand', 'water.gas'],
  pumpingTest: ['water.pumping'],
  /** A test in steps lacks it in the first that does not say it. */
  testDuration: ['water.pumping.after'],
} as const satisfies Readonly<Record<string, readonly string[]>>;

export type MissingFact = keyof typeof DECIDED_BY;
