/** The parts of the report, in the order in which a driller's report goes, and what each has been told. */
import { isEmpty, MEASURES, REPORT_UNITS, type MeasuredField, type Report, type ReportField } from './report.ts';
import { withUnit } from './reportHabits.ts';

export const GROUPS = ['paper', 'hole', 'water', 'way', 'standing', 'house', 'supply'] as const;
export type GroupName = (typeof GROUPS)[number];

export const GROUP_TITLES: Readonly<Record<GroupName, string>> = {
  paper: 'The report',
  hole: 'Hole and casing',
  water: 'Its water',
  way: 'Frost and the way out',
  standing: 'Pump, and what stands there',
  house: 'The house',
  supply: 'Power supply',
};

const LINES: Readonly<Record<GroupName, readonly ReportField[]>> = {
  paper: ['title', 'place', 'units', 'depthsFrom', 'saidBy', 'date'],
  hole: [
    ...(['depth', 'soundedDepth', 'casingMaterial', 'casingSize', 'casingInside', 'casingBottom'] as const),
    ...(['intake', 'screenTop', 'screenBottom', 'holeDiameter', 'inflow'] as const),
  ],
  water: ['staticLevel', 'staticLowest', 'test', 'testFlow', 'testDrawdown', 'testHours', 'pumpingLevel'],
  way: ['frostDepth', 'frostFrom', 'top', 'adapterDepth'],
  standing: ['hanging', 'pumpSetting', 'power', 'oldPipe', 'oldPipeSize'],
  house: ['people', 'demand', 'distance', 'rise', 'line', 'tank'],
  supply: ['wireRun', 'voltage', 'phase', 'wires'],
};

/** Choices that say nothing by themselves beside the others. */
const SILENT: ReadonlySet<ReportField> = new Set([
  'units',
  'test',
  'saidBy',
  'frostFrom',
  'phase',
  'wires',
  'depthsFrom',
]);

export function groupOf(field: ReportField): GroupName {
  return GROUPS.find((group) => LINES[group].includes(field)) ?? 'hole';
}

/** "240 ft · steel · 6 in · 60 ft": what was typed, with its units. */
export function saidOf(report: Report, group: GroupName): string {
  return LINES[group]
    .filter((field) => !SILENT.has(field) && !isEmpty(report[field]))
    .map((field) =>
      Object.hasOwn(MEASURES, field)
        ? withUnit(report[field], REPORT_UNITS[report.units][MEASURES[field as MeasuredField]])
        : (WORDS[report[field]] ?? report[field].trim()),
    )
    .join(' · ');
}

/** Choices that read otherwise than they are kept. */
const WORDS: Readonly<Record<string, string>> = {
  dug: 'dug or bored',
  top: 'the way out stands',
  pump: 'a pump hangs there',
  nothing: 'nothing in it yet',
  pitless: 'pitless adapter',
  seal: 'seal on top',
};
