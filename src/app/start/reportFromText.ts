/** What was read in a text, as lines of the report; what the form has no line for stands beside them. */
import type { Reading } from '../../reading/reading.ts';
import { ALSO, type Report, type ReportField } from './report.ts';
import { blankReport, isChoiceOf } from './reportDraft.ts';

/** Which line takes the value of a path. */
const LINE_OF: Readonly<Record<string, ReportField>> = {
  'well.depth': 'depth',
  'well.soundedDepth': 'soundedDepth',
  'well.depthsFrom': 'depthsFrom',
  'well.casing.material': 'casingMaterial',
  'well.casing.size': 'casingSize',
  'well.casing.insideDiameter': 'casingInside',
  'well.casing.bottom': 'casingBottom',
  'well.intake.kind': 'intake',
  'well.intake.diameter': 'holeDiameter',
  'well.tested': 'date',
  'well.yieldFrom': 'yieldFrom',
  'water.staticLevel': 'staticLevel',
  'water.pumping.drawdown': 'testDrawdown',
  'water.pumping.level': 'pumpingLevel',
  'water.pumping.after': 'testHours',
  'water.pumping.flow': 'testFlow',
  'well.yield': 'testFlow',
  'pump.setting': 'pumpSetting',
  'pump.power': 'power',
  'top.kind': 'top',
  'top.depth': 'adapterDepth',
};

/** @param readings  those that were accepted */
export function linesOf(units: Report['units'], readings: readonly Reading[], before: Report['also']): Partial<Report> {
  const lines: Partial<Record<ReportField, string>> = {};
  const also: Record<string, unknown> = { ...before };
  const paths = new Set(readings.map(({ path }) => path));
  const pumped = paths.has('water.pumping.drawdown') || paths.has('water.pumping.level');
  for (const reading of readings) {
    const { path, value } = reading;
    // Beside a test's own flow a yield has no line.
    const field = path === 'well.yield' && pumped ? undefined : LINE_OF[path];
    if (field !== undefined && typeof value === 'string' && isChoiceOf(units, field, value))
      lines[field] = asWritten(reading, value);
    else if (!taken(reading, lines) && ALSO.has(path)) also[path] = value;
  }
  if (paths.has('water.pumping.drawdown')) lines.test = 'test';
  else if (paths.has('water.pumping.level')) lines.test = 'level';
  else if (paths.has('well.yield')) lines.test = 'yield only';
  if (readings.some(({ path, note }) => path === 'pump.setting' && note === 'installed')) lines.hanging = 'pump';
  else if (readings.some(({ path, note }) => path === 'top.kind' && note === 'installed')) lines.hanging = 'top';
  return { ...(lines as Partial<Report>), units, also };
}

/** What the report left open goes on as a question of the form: "<1 gpm", "60-75 ft", "+3 ft". */
function asWritten({ doubt }: Reading, value: string): string {
  switch (doubt?.kind) {
    case 'less':
      return `<${value}`;
    case 'range': {
      const [from, to] = [doubt.other, value].sort((a, b) => Number.parseFloat(a) - Number.parseFloat(b));
      return `${Number.parseFloat(from ?? '')}-${to}`;
    }
    case 'plus':
      return `+${doubt.other}`;
    default:
      return value;
  }
}

/** One screen, and one place where water comes in, have lines of their own. */
function taken({ path, value }: Reading, lines: Partial<Record<ReportField, string>>): boolean {
  if (typeof value === 'string' || value.length !== 1) return false;
  const [only = {}] = value;
  const text = (key: string): string => (typeof only[key] === 'string' ? only[key] : '');
  if (path === 'well.intake.screens' && text('slot') === '') {
    lines.screenTop = text('top');
    lines.screenBottom = text('bottom');
    return true;
  }
  if (path === 'well.inflows' && text('share') === '') {
    lines.inflow = text('depth');
    return true;
  }
  return false;
}

/** Lines that hold something already, and would be written over by something else. */
export function wouldChange(report: Report, lines: Partial<Report>): readonly ReportField[] {
  const blank = blankReport(report.units);
  const silent: ReadonlySet<string> = new Set(['also', 'units', 'test']);
  return (Object.keys(lines) as ReportField[]).filter(
    (field) => !silent.has(field) && report[field] !== blank[field] && report[field] !== lines[field],
  );
}
