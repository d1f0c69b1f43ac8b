/**
 * From the few lines of a driller's report to a plan that can be drawn.
 *
 * The plan holds what was typed or chosen, and who said it: nothing else. What the report does not say of the well stays
 * unknown; what nobody has chosen yet of the build is assumed by the model, which lists it.
 */
import { readPlan, type Problem } from '../../model/plan/readPlan.ts';
import type { Plan } from '../../model/plan/schema.ts';
import { sayRefusal } from '../../words/en/plan/refusal.ts';
import { ALSO, isEmpty, MEASURES, REPORT_UNITS, type MeasuredField, type Report, type ReportField } from './report.ts';
import { doubtsOf, habitOf, withUnit } from './reportHabits.ts';

export type ReportReading =
  | { readonly ok: true; readonly plan: Plan }
  | { readonly ok: false; readonly problems: Readonly<Partial<Record<ReportField | 'also', string>>> };

/** Which field of the report a path of the plan came from, so that a reader's problem lands beside it. */
const FIELD_OF: Readonly<Record<string, ReportField>> = {
  'well.depth': 'depth',
  'well.soundedDepth': 'soundedDepth',
  'well.casing.size': 'casingSize',
  'well.casing.insideDiameter': 'casingInside',
  'well.casing.bottom': 'casingBottom',
  'well.intake.diameter': 'holeDiameter',
  'well.intake.screens.0.top': 'screenTop',
  'well.intake.screens.0.bottom': 'screenBottom',
  'well.inflows.0.depth': 'inflow',
  'water.staticLevel': 'staticLevel',
  'water.staticLowest': 'staticLowest',
  'well.yield': 'testFlow',
  'water.pumping.flow': 'testFlow',
  'water.pumping.drawdown': 'testDrawdown',
  'water.pumping.after': 'testHours',
  'water.pumping.level': 'pumpingLevel',
  'house.demand': 'demand',
  'house.people': 'people',
  'house.tank': 'tank',
  'house.distance': 'distance',
  'house.rise': 'rise',
  'site.frostDepth': 'frostDepth',
  'pump.setting': 'pumpSetting',
  'dropPipe.size': 'oldPipeSize',
  'wire.run': 'wireRun',
  'pump.voltage': 'voltage',
  'pump.phase': 'phase',
  'pump.wires': 'wires',
  'top.depth': 'adapterDepth',
};

/** @param asked  fields that were asked for once: what may stay unknown does, where it was left empty again */
export function planFromReport(report: Report, asked: readonly string[] = []): ReportReading {
  const open = Object.entries(askedOf(report)).filter(([field]) => !asked.includes(field));
  const missing = { ...Object.fromEntries(open), ...missingOf(report) };
  if (Object.keys(missing).length > 0) return { ok: false, problems: missing };
  const reading = readPlan(written(report));
  return reading.ok ? reading : { ok: false, problems: byField(reading.problems, report.also) };
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
  if (said('people') && !/^\s*\d{1,4}\s*$/.test(report.people)) missing.people = 'Type a whole number, such as 4.';
  const shown = shownFields(report);
  for (const [field, doubt] of Object.entries(doubtsOf(report)))
    if (shown(field as MeasuredField)) missing[field as MeasuredField] = doubt.question;
  return missing;
}

/** A line that another choice has hidden is not asked about. */
function shownFields(report: Report): (field: MeasuredField) => boolean {
  const hidden = new Set<MeasuredField>();
  if (!isScreened(report)) hidden.add('screenTop').add('screenBottom');
  if (report.test !== 'test') hidden.add('testDrawdown').add('testHours');
  if (report.test !== 'level') hidden.add('pumpingLevel');
  if (report.test === 'unknown') hidden.add('testFlow');
  if (report.top === 'seal') hidden.add('adapterDepth');
  if (report.hanging !== 'pump') hidden.add('oldPipeSize');
  return (field) => !hidden.has(field);
}

function isScreened({ intake }: Report): boolean {
  return intake === 'screen' || intake === 'driven point';
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

type Said = (field: MeasuredField) => string | undefined;

/** What stands in the plan of a line: with its unit, and as a plan reads it. */
function saidIn(report: Report): Said {
  return (field) => {
    const habit = habitOf(report, field);
    const text = 'doubt' in habit ? '' : habit.text;
    return text === '' ? undefined : withUnit(text, REPORT_UNITS[report.units][MEASURES[field]]);
  };
}

function written(report: Report): unknown {
  const said = saidIn(report);
  const screened = isScreened(report);
  const hasEnds = !isEmpty(report.screenTop) || !isEmpty(report.screenBottom);
  const yieldOnly = report.test === 'yield only';
  const adapter = report.top === 'seal' ? undefined : said('adapterDepth');
  const top = report.top !== '' ? report.top : adapter === undefined ? undefined : 'pitless';
  const inflow = said('inflow');
  const plan = {
    format: 'wellcut-plan/1',
    title: report.title.trim() === '' ? 'My well' : report.title.trim(),
    place: report.place.trim() === '' ? undefined : report.place.trim(),
    units: report.units,
    site: {
      frostDepth: said('frostDepth'),
      frostFrom: isEmpty(report.frostDepth) ? undefined : chosen(report.frostFrom),
    },
    well: {
      depth: said('depth'),
      soundedDepth: said('soundedDepth'),
      depthsFrom: chosen(report.depthsFrom),
      casing: {
        material: chosen(report.casingMaterial),
        size: said('casingSize'),
        insideDiameter: said('casingInside'),
        bottom: said('casingBottom'),
      },
      intake: {
        kind: chosen(report.intake),
        diameter: said('holeDiameter'),
        screens:
          screened && hasEnds
            ? [{ top: said('screenTop') ?? 'unknown', bottom: said('screenBottom') ?? 'unknown' }]
            : undefined,
      },
      inflows: inflow === undefined ? undefined : [{ depth: inflow }],
      yield: yieldOnly ? said('testFlow') : undefined,
      yieldFrom: yieldOnly ? chosen(report.yieldFrom) : undefined,
      tested: report.date.trim() === '' ? undefined : report.date.trim(),
    },
    water: {
      staticLevel: said('staticLevel') ?? 'unknown',
      staticLowest: said('staticLowest'),
      pumping: pumpingOf(report, said),
    },
    house: {
      demand: said('demand'),
      people: isEmpty(report.people) ? undefined : Number(report.people),
      distance: said('distance'),
      rise: said('rise'),
      tank: said('tank'),
      line: report.line === '' ? undefined : { material: 'PE', size: report.line },
    },
    top: top === undefined ? undefined : { kind: top, depth: top === 'pitless' ? adapter : undefined },
    pump: {
      setting: said('pumpSetting'),
      power: chosen(report.power),
      voltage: chosen(report.voltage),
      phase: report.phase === '' ? undefined : Number(report.phase),
      wires: report.wires === '' ? undefined : Number(report.wires),
    },
    dropPipe: report.hanging === 'pump' ? { material: chosen(report.oldPipe), size: said('oldPipeSize') } : undefined,
    wire: { run: said('wireRun') },
  };
  const whole = withAlso(tidy(plan) as Record<string, unknown>, report.also);
  return { ...whole, status: statusOf(whole, report) };
}

/** A line that was typed counts before what was read in a text. */
function withAlso(plan: Record<string, unknown>, also: Report['also']): Record<string, unknown> {
  const whole = structuredClone(plan);
  for (const [path, value] of Object.entries(also)) {
    if (!ALSO.has(path)) continue;
    const keys = path.split('.');
    const last = keys.pop() ?? '';
    let at = whole;
    for (const key of keys) at = (isObject(at[key]) ? at[key] : (at[key] = {})) as Record<string, unknown>;
    if (path === 'well.casings') {
      const casing = at['casing'];
      if (isObject(casing) && Object.keys(casing).length > 0) continue;
      delete at['casing'];
    }
    at[last] ??= path === 'well.grout' && Array.isArray(value) ? (value as unknown[])[0] : value;
  }
  return whole;
}

function pumpingOf(report: Report, said: Said): unknown {
  const flow = said('testFlow') ?? 'unknown';
  switch (report.test) {
    case 'test':
      return { kind: 'test', flow, drawdown: said('testDrawdown') ?? 'unknown', after: said('testHours') };
    case 'level':
      return { kind: 'level', level: said('pumpingLevel'), flow };
    case 'yield only':
      return { kind: 'yield only' };
    case 'unknown':
      return undefined;
  }
}

/** What the report may have said, and what may be standing there already. */
const REPORTED = [
  ...['well.depth', 'well.casing', 'well.casings', 'well.layers', 'well.intake', 'well.inflows', 'well.yield'],
  ...['water.staticLevel', 'water.staticLowest', 'water.pumping'],
];
/** Read with a tape since the driller wrote; what lines the hole is his word all the same. */
const MEASURED = new Set(['water.staticLevel', 'water.staticLowest', 'water.pumping']);
const STANDING = {
  pump: ['pump.setting', 'pump.power', 'dropPipe', 'top'],
  top: ['top'],
  nothing: [],
  '': [],
} as const satisfies Readonly<Record<Report['hanging'], readonly string[]>>;

function statusOf(plan: unknown, { hanging, saidBy }: Report): unknown {
  const said = (path: string) => {
    const value = path.split('.').reduce<unknown>((at, key) => (isObject(at) ? at[key] : undefined), plan);
    const empty = isObject(value) && Object.keys(value).length === 0;
    return value !== undefined && value !== 'unknown' && !empty;
  };
  const reported = REPORTED.filter(said).map(
    (path) => [path, saidBy === 'measured' && MEASURED.has(path) ? 'measured' : 'reported'] as const,
  );
  const sounded = said('well.soundedDepth') ? [['well.soundedDepth', 'measured'] as const] : [];
  const standing = STANDING[hanging].filter(said).map((path) => [path, 'installed'] as const);
  // A pump that hangs there is not moved for want of its depth.
  const hangs = hanging === 'pump' ? [['pump.setting', 'installed'] as const] : [];
  return Object.fromEntries([...reported, ...sounded, ...standing, ...hangs]);
}

function chosen<Value extends string>(value: Value | ''): Value | undefined {
  return value === '' ? undefined : value;
}

function byField(
  problems: readonly Problem[],
  also: Report['also'],
): Readonly<Partial<Record<ReportField | 'also', string>>> {
  const said: Partial<Record<ReportField | 'also', string>> = {};
  const isAlso = (path: string): boolean =>
    Object.keys(also).some((each) => path === each || path.startsWith(`${each}.`));
  for (const each of problems) {
    const { path, read, problem } = each;
    const field = FIELD_OF[path] ?? (isAlso(path) ? 'also' : 'depth');
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
