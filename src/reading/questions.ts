/** What a plan does not say yet, as questions in the order in which one asks them. */
import { valueIn } from './valueIn.ts';

export type Question =
  | 'depth'
  | 'sounded'
  | 'casing'
  | 'casingInside'
  | 'casingBottom'
  | 'intake'
  | 'screen'
  | 'holeDiameter'
  | 'inflow'
  | 'static'
  | 'whenRead'
  | 'lowest'
  | 'test'
  | 'testDrawdown'
  | 'pumped'
  | 'datum'
  | 'frost'
  | 'frostFrom'
  | 'top'
  | 'hanging'
  | 'oldPump'
  | 'demand'
  | 'distance'
  | 'line'
  | 'rise'
  | 'tank'
  | 'wireRun'
  | 'voltage'
  | 'wires';

/** Where the answer would stand; of several, any. */
const ANSWERS: readonly (readonly [Question, readonly string[]])[] = [
  ['depth', ['well.depth']],
  ['sounded', ['well.soundedDepth']],
  ['datum', ['well.depthsFrom']],
  ['casing', ['well.casing.size', 'well.casings']],
  ['casingBottom', ['well.casing.bottom', 'well.casings']],
  ['intake', ['well.intake.kind']],
  ['static', ['water.staticLevel']],
  ['lowest', ['water.staticLowest']],
  ['test', ['water.pumping', 'well.yield']],
  ['frost', ['site.frostDepth']],
  ['top', ['top']],
  ['hanging', ['pump.setting']],
  ['demand', ['house.demand', 'house.people', 'house.fixtures']],
  ['distance', ['house.distance']],
  ['rise', ['house.rise']],
  ['line', ['house.line']],
  ['tank', ['house.tank']],
  ['wireRun', ['wire.run']],
  ['voltage', ['pump.voltage']],
];

/** @param plan  as it is written into a file, whole or not */
export function openQuestions(plan: unknown): readonly Question[] {
  const said = (path: string): boolean => {
    const value = valueIn(plan, path);
    return value !== undefined && value !== 'unknown';
  };
  const open = ANSWERS.filter(([, paths]) => !paths.some(said)).map(([question]) => question);
  const only = valueIn(plan, 'water.pumping.kind') === 'yield only';
  return only ? [...open, 'pumped'] : open;
}
