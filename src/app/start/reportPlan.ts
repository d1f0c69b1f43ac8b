/**
 * From the few lines of a driller's report to a plan that can be drawn.
 *
 * The plan holds what was typed or chosen, and who said it: nothing else. What the report does not say of the well stays
 * unknown; what nobody has chosen yet of the build is assumed by the model, which lists it.
 */
import { readPlan, type Problem } from '../../model/plan/readPlan.ts';
import type { Plan } from '../../model/plan/schema.ts';
import { sayRefusal } from '../../words/en/plan/refusal.ts';
import { frostDoubt } from '../form/frostDoubt.ts';
import type { LineSize, Units } from './lineSizes.ts';

/** As typed or chosen; empty where nobody said anything. */
export interface Report {
  title: string;
  place: string;
  units: Units;
  depthsFrom: '' | 'ground' | 'casing top';
  depth: string;
  casingMaterial: '' | 'steel' | 'PVC' | 'stainless steel' | 'concrete' | 'other';
  casingSize: string;
  casingInside: string;
  casingBottom: string;
  intake: '' | 'open hole' | 'screen' | 'driven point' | 'dug';
  holeDiameter: string;
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
  /** Size of PE pipe to the house. */
  line: '' | LineSize;
  rise: string;
  frostDepth: string;
  frostFrom: '' | 'local code' | 'estimate';
  /** What hangs in the well now; empty: nothing, or nobody said. */
  hanging: '' | 'pump';
  pumpSetting: string;
  /** "1 hp" */
  power: string;
  top: '' | 'pitless' | 'seal';
  adapterDepth: string;
}

export type ReportField = keyof Report;

export type ReportReading =
  | { readonly ok: true; readonly plan: Plan }
  | { readonly ok: false; readonly problems: Readonly<Partial<Record<ReportField, string>>> };

/** What the form shows beside a field, and what a bare number in it is taken in. */
export const REPORT_UNITS = {
  us: { depth: 'ft', flow: 'gpm', hours: 'h', small: 'in', bore: 'in', nominal: 'in' },
  metric: { depth: 'm', flow: 'L/min', hours: 'h', small: 'cm', bore: 'mm', nominal: 'in' },
} as const;

type Measure = keyof (typeof REPORT_UNITS)['us'];

/** Which field of the report a path of the plan came from, so that a reader's problem lands beside it. */
const FIELD_OF: Readonly<Record<string, ReportField>> = {
  'well.depth': 'depth',
  'well.casing.size': 'casingSize',
  'well.casing.insideDiameter': 'casingInside',
  'well.casing.bottom': 'casingBottom',
  'well.intake.diameter': 'holeDiameter',
  'well.intake.screens.0.top': 'screenTop',
  'well.intake.screens.0.bottom': 'screenBottom',
  'water.staticLevel': 'staticLevel',
  'well.yield': 'testFlow',
  'water.pumping.flow': 'testFlow',
  'water.pumping.drawdown': 'testDrawdown',
  'water.pumping.after': 'testHours',
  'water.pumping.level': 'pumpingLevel',
  'house.demand': 'demand',
  'house.distance': 'distance',
  'house.rise': 'rise',
  'site.frostDepth': 'frostDepth',
  'pump.setting': 'pumpSetting',
  'top.depth': 'adapterDepth',
};

/** @param asked  fields that were asked for once: what may stay unknown does, where it was left empty again */
export function planFromReport(report: Report, asked: readonly string[] = []): ReportReading {
  const open = Object.entries(askedOf(report)).filter(([field]) => !asked.includes(field));
  const missing = { ...Object.fromEntries(open), ...missingOf(report) };
  if (Object.keys(missing).length > 0) return { ok: false, problems: missing };
  const reading = readPlan(written(report));
  return reading.ok ? reading : { ok: false, problems: byField(reading.problems) };
}

/** What contradicts itself or can be read in two ways before any number is. */
function missingOf(report: Report): Partial<Record<ReportField, string>> {
  const missing: Partial<Record<ReportField, string>> = {};
  const said = (field: ReportField) => !isEmpty(report[field]);
  if (!said('depth'))
    missing.depth = 'The drawing needs the depth of the well. The report has it; a weighted line finds it.';
  if (report.test === 'test' && !said('testFlow') && !said('testDrawdown'))
    missing.testDrawdown = 'Type the flow and the drawdown of the test, or choose “Not known”.';
  if (report.test === 'level' && !said('pumpingLevel')) missing.pumpingLevel = 'Type the level, or choose “Not known”.';
  // A trench is dug by it, and nobody may freeze for a unit that was guessed.
  const frost = frostDoubt(report.frostDepth, REPORT_UNITS[report.units].small);
  if (frost !== null)
    missing.frostDepth = `${frost.read}. Did you mean ${frost.meant}? Choose one: nothing is drawn before.`;
  // Some reports write +3 for water 3 ft above the ground, where this form counts down.
  if (/^\s*\+/.test(report.staticLevel))
    missing.staticLevel = `A plus can be read both ways. Below the ground: ${bareOf(report.staticLevel)}. Above it, a flowing well: -${bareOf(report.staticLevel)}.`;
  return missing;
}

/** What the report may well say and the form was left without: asked once, then drawn as not known. */
function askedOf(report: Report): Partial<Record<ReportField, string>> {
  if (report.test !== 'test') return {};
  const [flow, drawdown] = [!isEmpty(report.testFlow), !isEmpty(report.testDrawdown)];
  if (flow && !drawdown)
    return {
      testDrawdown: `How far did the water fall? Without it nobody knows how deep the water stands while pumping. ${DRAW_AGAIN}`,
    };
  if (drawdown && !flow) return { testFlow: `At which flow? A drawdown alone tells nothing. ${DRAW_AGAIN}` };
  return {};
}

const DRAW_AGAIN = 'If the report does not say, leave it empty and draw: it stays not known.';

function bareOf(text: string): string {
  return text.trim().replace(/^\+\s*/, '');
}

function written(report: Report): unknown {
  const said = (field: ReportField, measure: Measure): string | undefined =>
    isEmpty(report[field]) ? undefined : withUnit(report[field], REPORT_UNITS[report.units][measure]);
  const orUnknown = (field: ReportField, measure: Measure): string => said(field, measure) ?? 'unknown';
  const screened = report.intake === 'screen' || report.intake === 'driven point';
  const hasEnds = !isEmpty(report.screenTop) || !isEmpty(report.screenBottom);
  const yieldOnly = report.test === 'yield only';
  const adapter = report.top === 'seal' ? undefined : said('adapterDepth', 'small');
  const top = report.top !== '' ? report.top : adapter === undefined ? undefined : 'pitless';
  const plan = {
    format: 'wellcut-plan/1',
    title: report.title.trim() === '' ? 'My well' : report.title.trim(),
    place: report.place.trim() === '' ? undefined : report.place.trim(),
    units: report.units,
    site: {
      frostDepth: said('frostDepth', 'small'),
      frostFrom: isEmpty(report.frostDepth) ? undefined : chosen(report.frostFrom),
    },
    well: {
      depth: said('depth', 'depth'),
      depthsFrom: chosen(report.depthsFrom),
      casing: {
        material: chosen(report.casingMaterial),
        size: said('casingSize', 'nominal'),
        insideDiameter: said('casingInside', 'bore'),
        bottom: said('casingBottom', 'depth'),
      },
      intake: {
        kind: chosen(report.intake),
        diameter: said('holeDiameter', 'bore'),
        screens:
          screened && hasEnds
            ? [{ top: orUnknown('screenTop', 'depth'), bottom: orUnknown('screenBottom', 'depth') }]
            : undefined,
      },
      yield: yieldOnly ? said('testFlow', 'flow') : undefined,
      yieldFrom: yieldOnly ? 'air lift' : undefined,
    },
    water: { staticLevel: orUnknown('staticLevel', 'depth'), pumping: pumpingOf(report, said) },
    house: {
      demand: said('demand', 'flow'),
      distance: said('distance', 'depth'),
      rise: said('rise', 'depth'),
      line: report.line === '' ? undefined : { material: 'PE', size: report.line },
    },
    top: top === undefined ? undefined : { kind: top, depth: top === 'pitless' ? adapter : undefined },
    pump: { setting: said('pumpSetting', 'depth'), power: chosen(report.power) },
  };
  return tidy({ ...plan, status: statusOf(tidy(plan), report) });
}

function pumpingOf(report: Report, said: (field: ReportField, measure: Measure) => string | undefined): unknown {
  const flow = said('testFlow', 'flow') ?? 'unknown';
  switch (report.test) {
    case 'test':
      return {
        kind: 'test',
        flow,
        drawdown: said('testDrawdown', 'depth') ?? 'unknown',
        after: said('testHours', 'hours'),
      };
    case 'level':
      return { kind: 'level', level: said('pumpingLevel', 'depth'), flow };
    case 'yield only':
      return { kind: 'yield only' };
    case 'unknown':
      return undefined;
  }
}

/** What the report may have said, and what may be standing there already. */
const REPORTED = ['well.depth', 'well.casing', 'well.intake', 'well.yield', 'water.staticLevel', 'water.pumping'];
const STANDING = ['pump.setting', 'pump.power', 'top'];

function statusOf(plan: unknown, { hanging }: Report): unknown {
  const said = (path: string) => {
    const value = path.split('.').reduce<unknown>((at, key) => (isObject(at) ? at[key] : undefined), plan);
    const empty = isObject(value) && Object.keys(value).length === 0;
    return value !== undefined && value !== 'unknown' && !empty;
  };
  const all = (paths: readonly string[], status: string) => paths.filter(said).map((path) => [path, status] as const);
  // A pump that hangs there is not moved for want of its depth.
  const standing = hanging === 'pump' ? [...all(STANDING, 'installed'), ['pump.setting', 'installed'] as const] : [];
  return Object.fromEntries([...all(REPORTED, 'reported'), ...standing]);
}

function chosen<Value extends string>(value: Value | ''): Value | undefined {
  return value === '' ? undefined : value;
}

/** Nothing, or one of the ways in which reports say nothing. */
function isEmpty(text: string): boolean {
  return /^\s*(?:n\/?a|unknown|not known|none given|[-–—?]*)\s*$/i.test(text);
}

/** A bare number, also one with a fraction ("6-5/8"). */
const BARE_NUMBER = /^[-+]?[\d.,]+(?:[-\s]+\d+\/\d+)?$/;

/** A bare number takes the unit that the form shows beside the field. */
function withUnit(text: string, unit: string): string {
  const trimmed = text.trim();
  return BARE_NUMBER.test(trimmed) ? `${trimmed} ${unit}` : trimmed;
}

function byField(problems: readonly Problem[]): Readonly<Partial<Record<ReportField, string>>> {
  const said: Partial<Record<ReportField, string>> = {};
  for (const each of problems) {
    const { path, read, problem } = each;
    const field = FIELD_OF[path] ?? 'depth';
    said[field] ??=
      field === 'casingSize' && !problem.startsWith('which')
        ? `${read}: not a size of casing. Write its name in inches, as 6 or 6-5/8, or its outside diameter, as 160 mm, or leave it empty and type the inside diameter.`
        : sayRefusal(each);
  }
  return said;
}

/** Leaves out what was not said, at every depth of the plan; of what every well has, what is left. */
function tidy(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(tidy);
  if (!isObject(value)) return value;
  return Object.fromEntries(
    Object.entries(value)
      .map(([key, each]) => [key, tidy(each)] as const)
      .filter(
        ([key, each]) =>
          each !== undefined &&
          (KEPT.has(key) || !isObject(each) || Array.isArray(each) || Object.keys(each).length > 0),
      ),
  );
}

/** Casing, and where water enters. */
const KEPT: ReadonlySet<string> = new Set(['casing', 'intake']);

function isObject(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null;
}
