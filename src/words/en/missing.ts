/** What nobody told, as the end of a sentence: "Missing: the static water level". */
import type { MissingFact } from '../../model/rules/missing.ts';
import type { PartOfWay } from '../../model/rules/wayToTank.ts';
import type { Show } from '../../model/units.ts';
import { listed } from './phrases.ts';

const WAY: Readonly<Record<PartOfWay, string>> = {
  line: 'which pipe leads to the house',
  distance: 'how far the house is from the well',
  rise: 'how far the tank stands over the well',
};

type Said = (numbers: Readonly<Record<string, unknown>>, show: Show) => string;

export const missing: Readonly<Record<MissingFact, Said>> = {
  staticLevel: () => 'the static water level',
  pumpingLevel: () => 'the pumping level: a test with flow and drawdown',
  demand: () => 'the flow that the house needs',
  yield: () => 'the yield of the well',
  flowAtCutIn: () => 'the pump’s flow at cut-in, which needs levels, pipes and pump',
  operatingPoint: () => 'the pump’s operating point, which needs levels, pipes and pump',
  flowOfPump: () => 'the flow of the pump',
  power: () => 'the motor’s power',
  powerOrCurve: () => 'the pump’s power or curve',
  powerOrCurrent: () => 'the motor’s power or current',
  currentOrPower: () => 'the motor’s current or power',
  weightOrPower: () => 'the weight or the power of the pump',
  wayToTank: ({ lacks }) => listed((lacks as readonly PartOfWay[]).map((part) => WAY[part])),
  rise: () => 'the rise from the well to the tank',
  /** Of the tank's rule; what the pump puts on the line is another rule's. */
  reliefValve: ({ reach, rating }, show) =>
    typeof reach === 'number' && typeof rating === 'number'
      ? `whether a relief valve stands at the tank: the pump can reach ${show.pressure(reach)} there, and ${show.pressure(rating)} is only assumed for the tank`
      : 'whether a relief valve stands at the tank',
  ratingOfDropPipe: () => 'the pressure rating of the drop pipe',
  ratingSoWarm: () => 'a rating for water this warm',
  frostDepth: () => 'the frost depth',
  protrusion: () => 'how far the adapter stands into the casing',
  casingBottom: () => 'how deep the casing reaches',
  casingBore: () => 'the inside diameter of the casing',
  groundAtFoot: () => 'what ground the casing ends in',
  firmRock: ({ material }) => `whether “${String(material)}” is firm rock`,
  inflows: () => 'where water enters the well',
  intakeKind: () => 'whether the hole is open or has a screen',
  screenEnds: () => 'where the screen begins and ends',
  openArea: () => 'the open area of the screen',
  screenWidth: () => 'the diameter of the screen',
  pumpDiameter: () => 'the diameter of the pump',
  holeWidth: () => 'the width of the hole round the motor',
  wireRun: () => 'the length of wire from the panel to the well',
  waterTest: () => 'the water’s pH and conductivity',
  flood: () => 'how high a flood reaches at the well',
  wellTop: () => 'how the top of the well was built',
  distances: () => 'the distances to septic tank, drain field and building',
  levelWhilePumping: () => 'the pumping level',
  tank: () => 'the size of the tank',
  ratingOfLine: () => 'the pressure rating of the line to the house',
  line: () => 'which pipe leads to the house',
  sandAndGas: () => 'whether the water carries sand or gas',
  pumpingTest: () => 'a test with flow, drawdown and hours',
  testDuration: () => 'how long the well was pumped before the level was read',
};
