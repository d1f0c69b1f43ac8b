/** The words of a plan's choices as a person would say them: "pitless" is "a pitless adapter". */

const ANYWHERE: Readonly<Record<string, string>> = {
  ground: 'the ground',
  'casing top': 'the top of the casing',
  'local code': 'the local code',
  estimate: 'an estimate',
  adviser: 'an adviser',
  other: 'something else',
  'open hole': 'open hole in rock',
  screen: 'a screen',
  'driven point': 'a driven point',
  dug: 'dug or bored, wide',
  'air lift': 'blowing with air',
  bailer: 'a bailer',
  pump: 'a pump',
  test: 'pumped, with a drawdown',
  level: 'pumped, level measured',
  steps: 'a test in steps',
  aquifer: 'what the aquifer is like',
  'yield only': 'only a yield (air lift)',
  pitless: 'a pitless adapter',
  seal: 'a seal on top',
  generic: 'a usual pump of its flow and power',
  points: 'points from the maker’s sheet',
  'pressure tank': 'a pressure tank',
  'open tank': 'an open tank',
  switch: 'a pressure switch',
  'variable speed': 'a variable-speed drive',
  'casing hook': 'a hook on the casing, or the eye under a seal',
  cap: 'the cap',
  'through cap': 'an anchor through the cap',
  loose: 'nothing: it lies loose',
};

/** Bare numbers and letters, which mean something only in their field. */
const OF_FIELD: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  units: { us: 'feet and gallons', metric: 'metres and litres' },
  'pump.phase': { 1: 'single-phase', 3: 'three-phase' },
  'pump.wires': { 2: '2-wire', 3: '3-wire' },
};

export function sayChoice(path: string, option: string | number): string {
  return OF_FIELD[path]?.[option] ?? ANYWHERE[option] ?? String(option);
}
