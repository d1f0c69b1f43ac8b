/**
 * From the few lines of a driller's report to a plan that can be drawn.
 *
 * What the report does not say stays unknown. Choices of the build that nobody has made yet start from common sizes and
 * stand in the plan as "to choose", so that they can be moved.
 */
import type { QuantityKind } from '../../model/units.ts';
import { parseQuantity, writeQuantity } from '../../model/units.ts';
import { readPlan, type Problem } from '../../model/plan/readPlan.ts';
import type { Plan } from '../../model/plan/schema.ts';

export type Units = 'us' | 'metric';

/** As typed; empty where the report says nothing. */
export interface Report {
  title: string;
  units: Units;
  depthsFrom: 'ground' | 'casing top';
  depth: string;
  casingMaterial: 'steel' | 'PVC' | 'stainless steel' | 'other';
  casingSize: string;
  casingBottom: string;
  intake: 'open hole' | 'screen';
  screenTop: string;
  screenBottom: string;
  staticLevel: string;
  test: 'test' | 'level' | 'yield only' | 'unknown';
  testFlow: string;
  testDrawdown: string;
  testHours: string;
  pumpingLevel: string;
  demand: string;
  distance: string;
  rise: string;
  /** "1 hp"; empty while no pump is chosen. */
  power: string;
  frostDepth: string;
  pumpSetting: string;
}

export type ReportField = keyof Report;

export type ReportReading =
  | { readonly ok: true; readonly plan: Plan }
  | { readonly ok: false; readonly problems: Readonly<Partial<Record<ReportField, string>>> };

const UNIT: Readonly<Record<Units, Readonly<Partial<Record<QuantityKind, string>>>>> = {
  us: { length: 'ft', flow: 'gpm', time: 'h' },
  metric: { length: 'm', flow: 'L/min', time: 'h' },
};

/** Which field of the report a path of the plan came from, so that a reader's problem lands beside it. */
const FIELD_OF: readonly (readonly [path: string, field: ReportField])[] = [
  ['well.depth', 'depth'],
  ['well.casing.size', 'casingSize'],
  ['well.casing.bottom', 'casingBottom'],
  ['well.intake.screens.0.top', 'screenTop'],
  ['well.intake.screens.0.bottom', 'screenBottom'],
  ['water.staticLevel', 'staticLevel'],
  ['water.pumping.flow', 'testFlow'],
  ['water.pumping.drawdown', 'testDrawdown'],
  ['water.pumping.after', 'testHours'],
  ['water.pumping.level', 'pumpingLevel'],
  ['house.demand', 'demand'],
  ['house.distance', 'distance'],
  ['house.rise', 'rise'],
  ['site.frostDepth', 'frostDepth'],
  ['pump.setting', 'pumpSetting'],
];

/** Metres of well left under a pump that nobody has set yet. */
const CLEAR_OF_BOTTOM = 6;

export function planFromReport(report: Report): ReportReading {
  const missing: Partial<Record<ReportField, string>> = {};
  if (report.depth.trim() === '')
    missing.depth = 'The drawing needs the depth of the well. The report has it; a weighted line finds it.';
  if (report.test === 'test' && (report.testFlow.trim() === '' || report.testDrawdown.trim() === '')) {
    missing.testDrawdown =
      'A test needs its flow and its drawdown. If the report has only a flow, choose “Only a yield”.';
  }
  if (report.test === 'level' && report.pumpingLevel.trim() === '')
    missing.pumpingLevel = 'Type the level, or choose “Not known”.';
  if (report.intake === 'screen' && (report.screenTop.trim() === '' || report.screenBottom.trim() === '')) {
    missing.screenTop =
      'A screen needs its top and its bottom. If the report does not say, choose “Open hole” and come back to it in the record.';
  }
  if (Object.keys(missing).length > 0) return { ok: false, problems: missing };
  const reading = readPlan(written(report));
  return reading.ok ? reading : { ok: false, problems: byField(reading.problems, report) };
}

function written(report: Report): unknown {
  const { units } = report;
  const quantity = (text: string, kind: QuantityKind): string => withUnit(text, kind, units);
  const orUnknown = (text: string, kind: QuantityKind): string =>
    text.trim() === '' ? 'unknown' : quantity(text, kind);
  const known = (text: string, kind: QuantityKind): string | undefined =>
    text.trim() === '' ? undefined : quantity(text, kind);
  const us = units === 'us';
  const frost = known(report.frostDepth, 'length');
  return withoutGaps({
    format: 'wellcut-plan/1',
    title: report.title.trim() === '' ? 'My well' : report.title.trim(),
    units,
    site: { frostDepth: frost, frostFrom: frost === undefined ? undefined : 'local code' },
    well: {
      depth: quantity(report.depth, 'length'),
      depthsFrom: report.depthsFrom,
      casing: {
        material: report.casingMaterial,
        size: report.casingSize.trim() === '' ? undefined : inInches(report.casingSize),
        bottom: orUnknown(report.casingBottom, 'length'),
      },
      intake: {
        kind: report.intake,
        screens:
          report.intake === 'screen'
            ? [{ top: quantity(report.screenTop, 'length'), bottom: quantity(report.screenBottom, 'length') }]
            : undefined,
      },
      yield: report.test === 'yield only' ? orUnknown(report.testFlow, 'flow') : undefined,
      yieldFrom: report.test === 'yield only' ? 'air lift' : undefined,
    },
    water: { staticLevel: orUnknown(report.staticLevel, 'length'), pumping: pumpingOf(report, quantity, known) },
    house: {
      demand: orUnknown(report.demand, 'flow'),
      distance: known(report.distance, 'length'),
      rise: known(report.rise, 'length'),
      line: { material: 'PE', size: '1 in', rating: '200 psi' },
    },
    top: { kind: 'pitless', depth: pitlessDepth(frost, us) },
    pump: {
      setting: known(report.pumpSetting, 'length') ?? firstSetting(quantity(report.depth, 'length'), us),
      power: report.power === '' ? undefined : report.power,
      curve: { kind: 'generic', flow: us ? '10 gpm' : '38 L/min' },
    },
    dropPipe: { material: 'PE', size: '1 in', rating: '200 psi' },
    wire: { size: '12 AWG' },
    status: {
      'pump.setting': 'to choose',
      'top.depth': 'to choose',
      'wire.size': 'to choose',
      'dropPipe.size': 'to choose',
    },
  });
}

function pumpingOf(
  report: Report,
  quantity: (text: string, kind: QuantityKind) => string,
  known: (text: string, kind: QuantityKind) => string | undefined,
): unknown {
  switch (report.test) {
    case 'test':
      return {
        kind: 'test',
        flow: quantity(report.testFlow, 'flow'),
        drawdown: quantity(report.testDrawdown, 'length'),
        after: known(report.testHours, 'time'),
      };
    case 'level':
      return { kind: 'level', level: quantity(report.pumpingLevel, 'length'), flow: known(report.testFlow, 'flow') };
    case 'yield only':
      return { kind: 'yield only' };
    case 'unknown':
      return undefined;
  }
}

const BARE_NUMBER = /^[-+]?[\d.,]+$/;

/** A bare number takes the unit that the form shows beside the field. */
function withUnit(text: string, kind: QuantityKind, units: Units): string {
  const trimmed = text.trim();
  const unit = UNIT[units][kind];
  return BARE_NUMBER.test(trimmed) && unit !== undefined ? `${trimmed} ${unit}` : trimmed;
}

/** Casing goes by its nominal size in inches everywhere. */
function inInches(text: string): string {
  const trimmed = text.trim();
  return BARE_NUMBER.test(trimmed) ? `${trimmed} in` : trimmed;
}

/** A foot below frost, or 4 ft where the frost is not known: a start that can be dragged. */
function pitlessDepth(frost: string | undefined, us: boolean): string {
  const read = frost === undefined ? null : parseQuantity(frost, 'length');
  const below = read?.ok === true ? Math.max(read.si + 0.3048, 0.6096) : 1.2192;
  return us ? writeQuantity(below, 'length', 'in', 0.0254) : writeQuantity(below, 'length', 'm', 0.05);
}

function firstSetting(depth: string, us: boolean): string {
  const read = parseQuantity(depth, 'length');
  const metres = read.ok ? Math.max(read.si - CLEAR_OF_BOTTOM, read.si * 0.8) : 0;
  return us ? writeQuantity(metres, 'length', 'ft', 0.3048) : writeQuantity(metres, 'length', 'm', 0.5);
}

function byField(problems: readonly Problem[], report: Report): Readonly<Partial<Record<ReportField, string>>> {
  const said: Partial<Record<ReportField, string>> = {};
  for (const { path, read, problem, write } of problems) {
    // A setting that the report did not give was worked out from the depth, and fails with it.
    if (path === 'pump.setting' && report.pumpSetting.trim() === '') continue;
    const field = FIELD_OF.find(([from]) => from === path)?.[1] ?? 'depth';
    said[field] ??= `${read === '' ? '' : `${read}: `}${problem}${write === '' ? '.' : `; write ${write}.`}`;
  }
  return said;
}

/** Leaves out what was not said, at every depth of the plan. */
function withoutGaps(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(withoutGaps);
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(
    Object.entries(value)
      .filter(([, each]) => each !== undefined)
      .map(([key, each]) => [key, withoutGaps(each)]),
  );
}
