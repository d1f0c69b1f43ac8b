/** A driller's report as it is typed: kept until it is done with, since nothing that was typed may be lost. */
import { lineSizes } from './lineSizes.ts';
import { ALSO, type Report, type ReportField } from './report.ts';

export function blankReport(units: Report['units']): Report {
  return {
    title: '',
    place: '',
    units,
    depthsFrom: '',
    saidBy: '',
    date: '',
    depth: '',
    soundedDepth: '',
    casingMaterial: '',
    casingSize: '',
    casingInside: '',
    casingBottom: '',
    intake: '',
    holeDiameter: '',
    screenTop: '',
    screenBottom: '',
    inflow: '',
    staticLevel: '',
    staticLowest: '',
    test: 'unknown',
    yieldFrom: '',
    testFlow: '',
    testDrawdown: '',
    testHours: '',
    pumpingLevel: '',
    demand: '',
    people: '',
    distance: '',
    line: '',
    rise: '',
    tank: '',
    frostDepth: '',
    frostFrom: '',
    top: '',
    adapterDepth: '',
    hanging: '',
    pumpSetting: '',
    power: '',
    oldPipe: '',
    oldPipeSize: '',
    wireRun: '',
    voltage: '',
    phase: '',
    wires: '',
    also: {},
  };
}

export const POWERS = {
  us: ['1/2 hp', '3/4 hp', '1 hp', '1-1/2 hp', '2 hp', '3 hp', '5 hp'],
  metric: ['0.37 kW', '0.55 kW', '0.75 kW', '1.1 kW', '1.5 kW', '2.2 kW', '3.7 kW'],
} as const satisfies Readonly<Record<Report['units'], readonly string[]>>;

/** What can be chosen; everything else is free text. */
const CHOICES: { readonly [field in ReportField]?: readonly string[] } = {
  units: ['us', 'metric'],
  depthsFrom: ['ground', 'casing top'],
  saidBy: ['measured'],
  casingMaterial: ['steel', 'PVC', 'stainless steel', 'concrete', 'other'],
  intake: ['open hole', 'screen', 'driven point', 'dug'],
  test: ['test', 'level', 'yield only', 'unknown'],
  yieldFrom: ['air lift', 'bailer', 'pump'],
  line: lineSizes('us'),
  frostFrom: ['local code', 'estimate'],
  hanging: ['nothing', 'top', 'pump'],
  top: ['pitless', 'seal'],
  oldPipe: ['PE', 'PVC', 'galvanized steel'],
  voltage: ['115 V', '230 V', '208 V', '400 V', '460 V'],
  phase: ['1', '3'],
  wires: ['2', '3'],
};

/** Nothing has been said that could be lost. */
export function isBlankReport(report: Report): boolean {
  const blank = blankReport(report.units);
  return (
    fieldsOf(blank).every((field) => report[field].trim() === blank[field]) && Object.keys(report.also).length === 0
  );
}

function fieldsOf(report: Report): ReportField[] {
  return Object.keys(report).filter((key): key is ReportField => key !== 'also');
}

/** Whether a line may hold that: anything where it is typed, one of a list where it is chosen. */
export function isChoiceOf(units: Report['units'], field: ReportField, value: string): boolean {
  return (field === 'power' ? POWERS[units] : CHOICES[field])?.includes(value) ?? true;
}

/** The report with what was kept, wherever nothing stands yet. */
export function withKept(report: Report, text: string | null): Report {
  const kept = readKept(text);
  if (kept === null) return report;
  const blank = blankReport(report.units);
  const fields = Object.entries(kept).filter(([field, value]) => {
    const name = field as ReportField;
    if (typeof value !== 'string' || !Object.hasOwn(blank, field) || report[name] !== blank[name]) return false;
    return CHOICES[name]?.includes(value) ?? true;
  });
  return {
    ...report,
    ...(Object.fromEntries(fields) as Partial<Report>),
    also: Object.keys(report.also).length === 0 ? alsoOf(kept['also']) : report.also,
  };
}

/** What is no value that a text gives is left out. */
function alsoOf(kept: unknown): Report['also'] {
  if (typeof kept !== 'object' || kept === null) return {};
  const isRow = (each: unknown): boolean => typeof each === 'object' && each !== null;
  return Object.fromEntries(
    Object.entries(kept).filter(
      ([path, value]) => ALSO.has(path) && (typeof value === 'string' || (Array.isArray(value) && value.every(isRow))),
    ),
  );
}

function readKept(text: string | null): Record<string, unknown> | null {
  if (text === null) return null;
  try {
    const kept: unknown = JSON.parse(text);
    return typeof kept === 'object' && kept !== null ? (kept as Record<string, unknown>) : null;
  } catch (fault) {
    console.info('wellcut: a kept report cannot be read', fault);
    return null;
  }
}
