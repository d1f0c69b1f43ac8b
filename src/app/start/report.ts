/** What a driller's report says, line by line, as it is typed. */
import type { LineSize, Units } from './lineSizes.ts';

/** As typed or chosen; empty where nobody said anything. */
export interface Report {
  title: string;
  place: string;
  units: Units;
  depthsFrom: '' | 'ground' | 'casing top';
  /** Who read the levels: the driller, or somebody with a tape since. */
  saidBy: '' | 'measured';
  date: string;
  depth: string;
  soundedDepth: string;
  casingMaterial: '' | 'steel' | 'PVC' | 'stainless steel' | 'concrete' | 'other';
  casingSize: string;
  casingInside: string;
  casingBottom: string;
  intake: '' | 'open hole' | 'screen' | 'driven point' | 'dug';
  holeDiameter: string;
  screenTop: string;
  screenBottom: string;
  inflow: string;
  staticLevel: string;
  staticLowest: string;
  test: 'test' | 'level' | 'yield only' | 'unknown';
  yieldFrom: '' | 'air lift' | 'bailer' | 'pump';
  testFlow: string;
  testDrawdown: string;
  testHours: string;
  pumpingLevel: string;
  demand: string;
  people: string;
  distance: string;
  /** Size of PE pipe to the house. */
  line: '' | LineSize;
  rise: string;
  tank: string;
  frostDepth: string;
  frostFrom: '' | 'local code' | 'estimate';
  top: '' | 'pitless' | 'seal';
  adapterDepth: string;
  /** What stands there now; empty: nobody said. */
  hanging: '' | 'nothing' | 'top' | 'pump';
  pumpSetting: string;
  /** "1 hp" */
  power: string;
  oldPipe: '' | 'PE' | 'PVC' | 'galvanized steel';
  oldPipeSize: string;
  wireRun: string;
  voltage: '' | '115 V' | '230 V' | '208 V' | '400 V' | '460 V';
  phase: '' | '1' | '3';
  wires: '' | '2' | '3';
  /** By path of the plan: what was read in a text and has no line here. */
  also: Readonly<Record<string, unknown>>;
}

/** A line of the form. */
export type ReportField = Exclude<keyof Report, 'also'>;

/** Paths of the plan that a text may fill and no line of the form does. */
export const ALSO: ReadonlySet<string> = new Set([
  ...['well.casings', 'well.casing.schedule', 'well.casing.height', 'well.grout', 'well.layers', 'well.inflows'],
  ...['well.intake.screens', 'well.yield', 'pump.power'],
]);

/** Lines with a list to choose from. */
export type ChoiceField =
  | 'units'
  | 'depthsFrom'
  | 'saidBy'
  | 'casingMaterial'
  | 'intake'
  | 'test'
  | 'yieldFrom'
  | 'line'
  | 'frostFrom'
  | 'top'
  | 'hanging'
  | 'power'
  | 'oldPipe'
  | 'voltage'
  | 'phase'
  | 'wires';

export type TextField = Exclude<ReportField, ChoiceField>;

/** How a line is measured, and so which unit a bare number in it has. */
export type Measure = 'depth' | 'flow' | 'hours' | 'small' | 'bore' | 'nominal' | 'volume';

/** What the form shows beside a line, and what a bare number in it is taken in. */
export const REPORT_UNITS = {
  us: { depth: 'ft', flow: 'gpm', hours: 'h', small: 'in', bore: 'in', nominal: 'in', volume: 'gal' },
  metric: { depth: 'm', flow: 'L/min', hours: 'h', small: 'cm', bore: 'mm', nominal: 'in', volume: 'L' },
} as const satisfies Readonly<Record<Units, Readonly<Record<Measure, string>>>>;

/** Lines that hold a quantity. */
export const MEASURES = {
  depth: 'depth',
  soundedDepth: 'depth',
  casingSize: 'nominal',
  casingInside: 'bore',
  casingBottom: 'depth',
  holeDiameter: 'bore',
  screenTop: 'depth',
  screenBottom: 'depth',
  inflow: 'depth',
  staticLevel: 'depth',
  staticLowest: 'depth',
  testFlow: 'flow',
  testDrawdown: 'depth',
  testHours: 'hours',
  pumpingLevel: 'depth',
  demand: 'flow',
  distance: 'depth',
  rise: 'depth',
  tank: 'volume',
  frostDepth: 'small',
  adapterDepth: 'small',
  pumpSetting: 'depth',
  oldPipeSize: 'nominal',
  wireRun: 'depth',
} as const satisfies Partial<Record<TextField, Measure>>;

export type MeasuredField = keyof typeof MEASURES;

/** Nothing, or one of the ways in which reports say nothing. */
export function isEmpty(text: string): boolean {
  return /^\s*(?:n\.?\s*\/?\s*a\.?|unknown|unk\.?|not known|not given|not reported|none given|nil|[-–—?]*)\s*$/i.test(
    text,
  );
}
