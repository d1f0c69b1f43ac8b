/** Sizes of pipe that a report may name, without what reads a plan: the form is there before that. */
export type Units = 'us' | 'metric';

const INCH_LINES = ['3/4 in', '1 in', '1-1/4 in', '1-1/2 in', '2 in'] as const;
const METRIC_LINES = ['25 mm', '32 mm', '40 mm', '50 mm', '63 mm'] as const;
export type LineSize = (typeof INCH_LINES)[number] | (typeof METRIC_LINES)[number];

/** Sizes of PE pipe to a house, those of the report's own units first. */
export function lineSizes(units: Units): readonly LineSize[] {
  return units === 'metric' ? [...METRIC_LINES, ...INCH_LINES] : [...INCH_LINES, ...METRIC_LINES];
}
