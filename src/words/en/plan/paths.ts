/** What stands at a path of the plan, as a person would say it. */
import { fieldAt } from '../../../model/plan/fields.ts';

/** Whole parts, and fields whose label says too little without what stands around it. */
const NAMES: Readonly<Record<string, string>> = {
  site: 'The place',
  'site.freezing': 'Freezing of the ground',
  'site.freezing.station': 'Weather station',
  'site.freezing.soil': 'Soil near the surface',
  'site.freezing.surface': 'What covers the ground',
  'site.septicTank': 'Distance to the septic tank',
  'site.septicTank.distance': 'Distance to the septic tank',
  'site.septicTank.required': 'Distance required to the septic tank',
  'site.drainField': 'Distance to the drain field',
  'site.drainField.distance': 'Distance to the drain field',
  'site.drainField.required': 'Distance required to the drain field',
  'site.building': 'Distance to the building',
  'site.building.distance': 'Distance to the building',
  'site.building.required': 'Distance required to the building',
  well: 'The well',
  'well.casing': 'Casing',
  'well.casings': 'Casings',
  'well.casings.*': 'Casing',
  'well.casings.*.insideDiameter': 'Inside diameter of the casing',
  'well.casings.*.height': 'Height of the casing above the ground',
  'well.grout': 'Grout',
  'well.intake': 'Where water enters',
  'well.intake.screens': 'Screens',
  'well.intake.screens.*': 'Screen',
  'well.intake.screens.*.slot': 'Slot of the screen',
  'well.intake.screens.*.openArea': 'Open share of the screen',
  'well.inflows': 'Depths where water enters',
  'well.inflows.*': 'Inflow',
  'well.inflows.*.share': 'Share of an inflow',
  'well.layers': 'Layers of the ground',
  'well.layers.*': 'Layer of the ground',
  water: 'The water',
  'water.pumping': 'How the water falls while pumping',
  'water.pumping.kind': 'How the well was tested',
  'water.pumping.steps': 'Steps of the test',
  'water.pumping.steps.*.flow': 'Flow of a step of the test',
  'water.pumping.steps.*.drawdown': 'Drawdown of a step of the test',
  'water.pumping.steps.*.after': 'How long a step was pumped',
  'water.pumping.after': 'How long it is pumped',
  house: 'The house',
  'house.line': 'Line to the house',
  'house.tank': 'Size of the tank',
  'house.branches': 'Branches of the line',
  'house.fixtures': 'Fixtures',
  'house.stock': 'Stock',
  top: 'Top of the well',
  'top.kind': 'How the pipe leaves the well',
  'top.heated': 'Seal kept warm',
  'top.housed': 'Seal in a well house',
  pump: 'Pump',
  'pump.power': 'Power of the motor',
  'pump.phase': 'Phases of the motor',
  'pump.wires': 'Wires of the motor',
  'pump.voltage': 'Voltage of the motor',
  'pump.current': 'Current of the motor',
  'pump.frequency': 'Frequency of the supply',
  'pump.curve': 'Curve of the pump',
  'pump.curve.kind': 'Curve of the pump',
  'pump.curve.flow': 'Rated flow of the pump',
  'pump.curve.points': 'Points of the pump’s curve',
  'pump.intakeToDischarge': 'From the pump’s intake to its discharge',
  'pump.intakeToMotorBottom': 'From the pump’s intake to the motor’s bottom',
  dropPipe: 'Drop pipe',
  string: 'What is fitted on the pipe',
  'string.checkValves': 'Heights of the check valves above the pump',
  'string.torqueArrestor': 'Height of the torque arrestor above the pump',
  'string.splices': 'Splice heights above the pump',
  wire: 'Wire',
  'wire.run': 'Cable from the panel to the well',
  rope: 'Safety rope',
  'rope.tied': 'What the rope is tied to',
  asBuilt: 'As it was built',
  'asBuilt.date': 'Day when it was built',
  'asBuilt.installed': 'What was put in',
  'asBuilt.planned': 'What had been planned',
  'asBuilt.measured': 'Readings of the first start',
  'asBuilt.measured.staticLevel': 'Water at rest before the start',
  'asBuilt.measured.precharge': 'Air in the empty tank, as measured',
  'asBuilt.measured.cutIn': 'Pressure at which the pump started',
  'asBuilt.measured.cutOut': 'Pressure at which the pump stopped',
  'asBuilt.pulled': 'The old pump',
  'asBuilt.pulled.date': 'Day when the old pump was pulled',
  'asBuilt.pulled.intake': 'Depth that the old pump hung at',
  'asBuilt.pulled.pump': 'Old pump and motor',
  'asBuilt.pulled.pipe': 'Old drop pipe',
  'asBuilt.pulled.soundedDepth': 'Bottom, sounded as the old pump was out',
  'asBuilt.pulled.found': 'What was wrong with the old pump',
  disinfection: 'Disinfection',
  'disinfection.strength': 'Strength of the chlorine product',
};

/** Two pipes have the same fields. */
const PIPES = [
  ['dropPipe.', 'of the drop pipe'],
  ['house.line.', 'of the line to the house'],
] as const;

export function nameOfPath(path: string): string {
  const plain = path.replace(/^well\.casing(?=\.)/, 'well.casings.0').replaceAll(/\.\d+(?=\.|$)/g, '.*');
  const name = NAMES[plain] ?? NAMES[path] ?? labelAt(path) ?? spelledOut(path);
  const number = /\.(\d+)(?:\.|$)/.exec(path)?.[1];
  // The first is mostly the only one.
  return number === undefined || number === '0' ? name : `${name}, number ${Number(number) + 1}`;
}

function labelAt(path: string): string | null {
  const label = fieldAt(path)?.label ?? null;
  const pipe = PIPES.find(([prefix]) => path.startsWith(prefix));
  return label === null || pipe === undefined ? label : `${label.replace(/ of the pipe$/, '')} ${pipe[1]}`;
}

/** Of a path that no field has, its last word. */
function spelledOut(path: string): string {
  const last =
    path
      .split('.')
      .filter((key) => !/^\d+$/.test(key))
      .at(-1) ?? path;
  const words = last.replaceAll(/([a-z])([A-Z])/g, (_, a: string, b: string) => `${a} ${b.toLowerCase()}`);
  return words.charAt(0).toUpperCase() + words.slice(1);
}

const PATH = /\b(?:site|well|water|house|top|pump|dropPipe|string|wire|rope|disinfection)(?:\.[A-Za-z\d]+)+/g;

/** A sentence of the reader of plans, which names fields by their paths, as the page says it. */
export function withoutPaths(text: string): string {
  return text.replaceAll(PATH, (path) => nameOfPath(path).toLowerCase());
}
