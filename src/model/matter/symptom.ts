/** What somebody notices of a well in use. */
export const SYMPTOMS = [
  'no-water',
  'weak-flow',
  'air',
  'short-cycles',
  'never-stops',
  'meter-runs',
  'bangs',
  'trips',
  'hot',
  'sand',
  'milky',
  'taste',
  'freezes',
] as const;

export type SymptomId = (typeof SYMPTOMS)[number];

export function isSymptom(name: string): name is SymptomId {
  return (SYMPTOMS as readonly string[]).includes(name);
}
