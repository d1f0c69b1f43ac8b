/** What is told of each pump after its name, in the order in which an adviser asks. */
export const PUMP_FIGURES = [
  'flow',
  'share',
  'spare',
  'lifts',
  'left',
  'range',
  'depth',
  'pipe',
  'wire',
  'weight',
  'tank',
] as const;
