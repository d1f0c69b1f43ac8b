import { describe, expect, test } from 'vitest';
import { withEntry, type Answers } from '../../src/app/form/addEntry.ts';
import { entryOfItem, entryOfKind, entryOfPart, type Asked, type Entry } from '../../src/app/form/entries.ts';
import { ABOUT, FEWEST, lengthOfList, PARTS, SECTIONS, startOfKind, type Block } from '../../src/app/form/layout.ts';
import { headingOf, ITEMS, nameOfField } from '../../src/app/form/names.ts';
import { statusHere, withStatus } from '../../src/app/form/status.ts';
import { textOf, valueOf } from '../../src/app/form/typedValue.ts';
import { blankReport } from '../../src/app/start/reportDraft.ts';
import type { Report } from '../../src/app/start/report.ts';
import { planFromReport } from '../../src/app/start/reportPlan.ts';
import { fieldAt, fields, type FieldInfo } from '../../src/model/plan/fields.ts';
import { valueAt, withValue } from '../../src/model/plan/editPlan.ts';
import { readPlan } from '../../src/model/plan/readPlan.ts';
import type { Plan } from '../../src/model/plan/schema.ts';
import { mayMove } from '../../src/model/rules/fix.ts';
import { solve } from '../../src/model/solve.ts';
import rock from '../../static/samples/tamarack-ridge.json';

const reading = readPlan(rock);
if (!reading.ok) throw new Error('the sample does not read');
const plan: Plan = reading.plan;

function field(path: string) {
  const found = fieldAt(path);
  if (found === null) throw new Error(`no field ${path}`);
  return found;
}

function fieldsOf(block: Block): readonly FieldInfo[] {
  if (block.kind === 'field') return [block.field];
  return block.kind === 'list' ? block.fields : block.leaves.flatMap(fieldsOf);
}

function pathsOf(block: Block): readonly string[] {
  return fieldsOf(block).map(({ path }) => path);
}

describe('the record', () => {
  test('asks for every field of the plan but those that are set elsewhere', () => {
    const asked = new Set([
      ...ABOUT.map(({ path }) => path),
      ...SECTIONS.flatMap(({ blocks }) => blocks.flatMap(pathsOf)),
    ]);
    const left = fields
      .map(({ path }) => path)
      .filter((path) => !asked.has(path) && !/^(?:house\.branches|ownPumps|asBuilt)/.test(path));
    // Own pumps are pasted where a pump is chosen, and what was put in is written down where it is built. The screen's short form is asked for as a list; format and units are no questions.
    expect(left).toEqual(['format', 'units', 'well.intake.top', 'well.intake.bottom']);
  });

  test('every kind of test, top and curve reads when it is chosen, or asks before it is', () => {
    for (const path of ['water.pumping', 'top', 'pump.curve'] as const) {
      for (const kind of field(`${path}.kind`).options ?? []) {
        if (entryOfKind(path, String(kind)) !== null) continue;
        const chosen = withValue(plan, path, startOfKind(path, String(kind)));
        expect(readPlan(chosen), `${path} ${kind}`).toMatchObject({ ok: true });
      }
    }
    expect(entryOfKind('pump.curve', 'points')).not.toBeNull();
  });

  test('of another kind of test, top or curve every number is unknown or assumed', () => {
    for (const kind of ['test', 'level', 'steps', 'aquifer']) {
      const chosen = withValue(plan, 'water.pumping', startOfKind('water.pumping', kind));
      expect([kind, solve(chosen).values.drawdown]).toEqual([kind, null]);
    }
    const pitless = withValue(plan, 'top', startOfKind('top', 'pitless'));
    expect(solve(pitless).assumed.map(({ path }) => path)).toContain('top.depth');
  });
});

/** Answers as typed; "?" stands for "not known". */
function answers(typed: Readonly<Record<string, string>>): Answers {
  return Object.fromEntries(
    Object.entries(typed).map(([key, text]) => [
      key,
      text === '?' ? { text: '', notKnown: true } : { text, notKnown: false },
    ]),
  );
}

function item(list: string): Entry {
  const entry = entryOfItem(list);
  if (entry === null) throw new Error(`nothing can be added to ${list}`);
  return entry;
}

function part(path: string): Entry {
  const entry = entryOfPart(path);
  if (entry === null) throw new Error(`${path} cannot be added`);
  return entry;
}

function points(): Entry {
  const entry = entryOfKind('pump.curve', 'points');
  if (entry === null) throw new Error('points are not asked for');
  return entry;
}

function added(entry: Entry, typed: Readonly<Record<string, string>>, to: Plan = plan): Plan {
  const adding = withEntry(to, entry, answers(typed));
  if (!adding.ok) throw new Error(JSON.stringify(adding));
  return adding.plan;
}

/** What is said beside each field, by its key, and of the whole. */
function refused(entry: Entry, typed: Readonly<Record<string, string>>, to: Plan = plan) {
  const adding = withEntry(to, entry, answers(typed));
  if (adding.ok) throw new Error('it was put in');
  return { ...adding.problems, ...(adding.whole !== null && { whole: adding.whole }) };
}

/** Every text that stands in a plan. */
function textsIn(value: unknown): readonly string[] {
  if (typeof value === 'object' && value !== null) return Object.values(value).flatMap(textsIn);
  return value === undefined ? [] : [String(value)];
}

const EVERY: readonly Entry[] = [
  ...Object.keys(ITEMS).map(item),
  ...Object.keys(PARTS).map((path) => entryOfPart(path)),
  entryOfKind('pump.curve', 'points'),
].filter((entry) => entry !== null);
const TESTS = ['test', 'level', 'steps', 'aquifer', 'yield only'];

/** The plan with a test in steps and a pump with points of its own, so that each list may take another item. */
const listed: Plan = {
  ...plan,
  water: { ...plan.water, pumping: { kind: 'steps', steps: [{ flow: '5 gpm', drawdown: '20 ft' }] } },
  pump: {
    ...plan.pump,
    curve: {
      kind: 'points',
      points: [
        ['0 gpm', '350 ft'],
        ['16 gpm', '120 ft'],
      ],
    },
  },
};

/** Every entry in both units, of every kind of test; items beside others of their list and, where it may be empty, alone. */
function everyCase() {
  return (['us', 'metric'] as const).flatMap((units) =>
    EVERY.flatMap((entry) => {
      const alone = withValue(listed, entry.path, undefined);
      const plans = !entry.isItem ? [alone] : entry.path in FEWEST ? [listed] : [listed, alone];
      const kinds = entry.path === 'water.pumping' ? TESTS : [''];
      return plans.flatMap((to) => kinds.map((kind) => ({ entry, kind, units, to: { ...to, units } as Plan })));
    }),
  );
}

/** As its example, or the first of its choices. */
function exampleOf({ key, field: { options }, example }: Asked, kind: string, units: 'us' | 'metric'): string {
  return key === 'kind' ? kind : (example?.[units] ?? String(options?.[0] ?? ''));
}

describe('what is added', () => {
  test('is asked for: each list and each part of the record has its few questions', () => {
    const blocks = SECTIONS.flatMap((section) => section.blocks);
    const lists = blocks
      .flatMap((block) => (block.kind === 'part' ? block.leaves : [block]))
      .flatMap((leaf) => (leaf.kind === 'list' ? [leaf.path] : []));
    expect(lists.filter((path) => entryOfItem(path) === null)).toEqual([]);
    expect(blocks.filter((block) => block.kind === 'part' && entryOfPart(block.path) === null)).toEqual([]);
  });

  test('is never put in as long as one of them is open', () => {
    for (const entry of EVERY) {
      expect(Object.keys(refused(entry, {})), entry.add).toEqual(entry.asks('').map(({ key }) => key));
    }
    for (const kind of ['test', 'level', 'steps', 'aquifer']) {
      expect(Object.keys(refused(part('water.pumping'), { kind })).length, kind).toBe(2);
    }
  });

  test('puts into the plan what was typed and chosen, the word "unknown", and nothing else', () => {
    for (const { entry, kind, to, units } of everyCase()) {
      // Whatever may be left open is; the rest is as its example.
      const typed = Object.fromEntries(
        entry.asks(kind).map((asked) => [asked.key, asked.notKnown === null ? exampleOf(asked, kind, units) : '?']),
      );
      const allowed = [...textsIn(to), ...Object.values(typed), 'unknown', ...textsIn(entry.said)];
      const next = added(entry, typed, to);
      expect(
        textsIn(next).filter((text) => !allowed.includes(text)),
        `${entry.add} ${kind}`,
      ).toEqual([]);
      expect(textsIn(next).length, `${entry.add} ${kind}`).toBeGreaterThan(textsIn(to).length);
    }
  });

  test('shows examples that would read, in feet and in metres', () => {
    for (const { entry, kind, to, units } of everyCase()) {
      const typed = entry.asks(kind).map((asked) => [asked.key, exampleOf(asked, kind, units)] as const);
      expect(withEntry(to, entry, answers(Object.fromEntries(typed))), `${entry.add} ${kind}`).toMatchObject({
        ok: true,
      });
    }
  });

  test('of a casing of which nothing is known everything is unknown', () => {
    const casing = added(item('well.casings'), { material: '?', size: '?', bottom: '?' });
    expect(valueAt(casing, 'well.casings.1')).toEqual({ bottom: 'unknown' });
    expect(solve(casing).unknown).toEqual(
      expect.arrayContaining(['well.casings.1.material', 'well.casings.1.size', 'well.casings.1.bottom']),
    );
  });

  test('takes the place of what was assumed: the assumed splice is not written beside it', () => {
    const bare = withValue(plan, 'string.splices', undefined);
    expect(solve(bare).assumed.map(({ path }) => path)).toContain('string.splices');
    const said = added(item('string.splices'), { '': '90 ft' }, bare);
    expect(said.string?.splices).toEqual(['90 ft']);
  });

  test('a layer comes to stand where its depth belongs, and statuses stay with their layers', () => {
    const layers = [
      { material: 'clay', bottom: '20 ft' },
      { material: 'granite', bottom: '220 ft' },
    ];
    const two: Plan = {
      ...plan,
      well: { ...plan.well, layers },
      status: { 'well.layers.0.bottom': 'reported', 'well.layers.1.bottom': 'measured', 'pump.setting': 'installed' },
    };
    const three = added(item('well.layers'), { material: 'sand', bottom: '12 m' }, two);
    expect(three.well.layers?.map(({ material }) => material)).toEqual(['clay', 'sand', 'granite']);
    expect(three.status).toEqual({
      'well.layers.0.bottom': 'reported',
      'well.layers.2.bottom': 'measured',
      'pump.setting': 'installed',
    });
  });

  test('points of a pump are typed, at least two, and come to stand with rising flow', () => {
    const typed = {
      'points.0.0': '0 gpm',
      'points.0.1': '350 ft',
      'points.1.0': '16 gpm',
      'points.1.1': '120 ft',
    };
    const two = added(points(), typed);
    expect(two.pump?.curve).toEqual({
      kind: 'points',
      points: [
        ['0 gpm', '350 ft'],
        ['16 gpm', '120 ft'],
      ],
    });
    const three = added(item('pump.curve.points'), { '0': '10 gpm', '1': '270 ft' }, two);
    expect(valueAt(three, 'pump.curve.points.1')).toEqual(['10 gpm', '270 ft']);
    // A head that does not fall is told beside the new head, whichever of the two points comes first.
    expect(refused(item('pump.curve.points'), { '0': '10 gpm', '1': '400 ft' }, two)).toEqual({
      '1': expect.stringContaining('not below the head of the point before it'),
    });
    expect(refused(item('pump.curve.points'), { '0': '10 gpm', '1': '100 ft' }, two)).toEqual({
      '1': expect.stringContaining('number 3'),
    });
  });

  test('says beside each field what is wrong with it, in plain words', () => {
    expect(refused(item('well.layers'), { material: 'clay', bottom: '30' })).toEqual({
      bottom: 'Bottom of the layer, number 5 cannot be "30": it is without a unit. Write it as "30 ft" or "9.14 m".',
    });
    expect(refused(part('house.line'), { material: 'PE', size: '7 in' })).toEqual({
      size: expect.stringMatching(/^Size of the line to the house cannot be "7 in": it is not a size of ASTM D2239/),
    });
    expect(refused(part('house.line'), {})).toEqual({ material: 'Choose one.', size: 'Type a value.' });
  });

  test('a list that cannot be empty says so before the reader does', () => {
    const two = added(points(), {
      'points.0.0': '0 gpm',
      'points.0.1': '350 ft',
      'points.1.0': '10 gpm',
      'points.1.1': '270 ft',
    });
    expect(lengthOfList('pump.curve.points', two)).toBe(FEWEST['pump.curve.points']);
    expect(readPlan(withValue(two, 'pump.curve.points.1', undefined)).ok).toBe(false);
    expect(lengthOfList('well.casings', plan)).toBe(FEWEST['well.casings']);
    expect(readPlan(withValue(plan, 'well.casings.0', undefined)).ok).toBe(false);
  });
});

describe('what a field is called', () => {
  test('short under its heading, and in full for those who only hear it', () => {
    expect(nameOfField(field('well.layers.0.bottom'), 'well.layers.1.bottom', 3)).toEqual({
      shown: 'Bottom',
      heard: 'Bottom of layer 2',
    });
    expect(headingOf('well.layers', 1, 3)).toBe('Layer 2');
    expect(nameOfField(field('well.casings.0.height'), 'well.casings.0.height', 2).heard).toBe(
      'Height above ground, casing 1',
    );
    expect(nameOfField(field('dropPipe.standard'), 'dropPipe.standard', 1).heard).toBe('Standard of the drop pipe');
    expect(nameOfField(field('house.line.standard'), 'house.line.standard', 1).heard).toBe(
      'Standard of the line to the house',
    );
  });

  test('tells it from every other field of the record', () => {
    const asked = [...ABOUT, ...SECTIONS.flatMap(({ blocks }) => blocks.flatMap(fieldsOf))];
    const heard = asked.flatMap((each) =>
      each.path.includes('.*')
        ? [0, 1].map((i) => [each.path.replace('*', String(i)), each] as const)
        : [[each.path, each] as const],
    );
    const pathsByName = new Map<string, Set<string>>();
    for (const [path, each] of heard) {
      const name = nameOfField(each, path, 2).heard;
      pathsByName.set(name, (pathsByName.get(name) ?? new Set()).add(path));
    }
    expect([...pathsByName].filter(([, paths]) => paths.size > 1).map(([name]) => name)).toEqual([]);
  });

  test('an entry that is new says so with every field', () => {
    for (const list of Object.keys(ITEMS)) {
      for (const { label } of item(list).asks('')) expect(label).toMatch(/ of the new /);
    }
    expect(item('well.inflows').asks('')[0]?.label).toBe('Depth of the new inflow');
  });
});

describe('how a value came to stand in the plan', () => {
  test('is written for one field, or told by its part, and taken out again', () => {
    const reported: Plan = { ...plan, status: { 'well.casing': 'reported' } };
    expect(statusHere(reported, 'well.casings.0.bottom')).toEqual({ own: null, ofPart: 'reported' });
    const status = withStatus(reported, 'well.casings.0.bottom', 'measured');
    expect(status).toEqual({ 'well.casing': 'reported', 'well.casing.bottom': 'measured' });
    expect(withStatus({ ...plan, status: { 'pump.setting': 'installed' } }, 'pump.setting', null)).toBeUndefined();
  });

  test('goes with the value, and follows a casing into a list of two', () => {
    const installed: Plan = { ...plan, status: { 'pump.setting': 'installed', 'well.casing.bottom': 'measured' } };
    expect(withValue(installed, 'pump.setting', undefined).status).toEqual({ 'well.casing.bottom': 'measured' });
    const two = withValue(installed, 'well.casings.1', { material: 'PVC', size: '4 in' });
    expect(statusHere(two, 'well.casings.0.bottom').own).toBe('measured');
    expect(withValue(two, 'well.casings.0', undefined).status).toEqual({ 'pump.setting': 'installed' });
  });

  test('is read in every plan that the form can write it to', () => {
    for (const path of fields.filter(({ group }) => group !== '').map((each) => each.path.replaceAll('*', '0'))) {
      expect([path, readPlan({ ...plan, status: withStatus(plan, path, 'measured') }).ok]).toEqual([path, true]);
    }
  });
});

describe('a typed value', () => {
  test('keeps its own unit and its own way of writing', () => {
    expect(valueOf(field('pump.setting'), '171\' 6"', '180 ft')).toBe('171\' 6"');
  });

  test('takes the unit of what stood there when it is a bare number', () => {
    expect(valueOf(field('pump.setting'), '171', '180 ft')).toBe('171 ft');
    expect(valueOf(field('pump.setting'), '52.3', '54.9 m', 'metric')).toBe('52.3 m');
  });

  test('beside a value in the other system takes the reader’s own unit, or is asked for one', () => {
    expect(valueOf(field('dropPipe.rating'), '16', '200 psi', 'metric')).toBe('16 bar');
    expect(valueOf(field('house.cutIn'), '40', '2.8 bar', 'us')).toBe('40 psi');
    expect(valueOf(field('house.demand'), '30', '8 gpm', 'metric')).toBe('30 L/min');
    expect(valueOf(field('pump.setting'), '52', '180 ft', 'metric')).toBe('52');
    expect(readPlan(withValue(plan, 'pump.setting', '52'))).toMatchObject({ ok: false });
  });

  test('of frost that is hardly any in that unit is asked back', () => {
    expect(valueOf(field('site.frostDepth'), '4', '42 in')).toBe('4');
    expect(valueOf(field('site.frostDepth'), '40', '42 in')).toBe('40 in');
    expect(valueOf(field('site.frostDepth'), '0', '42 in')).toBe('0 in');
  });

  test('is never given a unit where none stood', () => {
    expect(valueOf(field('house.rise'), '8', undefined)).toBe('8');
  });

  test('is unknown when it is empty and may be, and gone when it is optional', () => {
    expect(valueOf(field('water.staticLevel'), ' ', '62 ft')).toBe('unknown');
    expect(valueOf(field('site.frostDepth'), '', '48 in')).toBeUndefined();
    expect(textOf('unknown')).toBe('');
  });
});

describe('a driller’s report', () => {
  const empty: Report = blankReport('us');

  function planOf(report: Partial<Report>): Plan {
    const read = planFromReport({ ...empty, ...report });
    if (!read.ok) throw new Error(JSON.stringify(read.problems));
    return read.plan;
  }

  test('with the depth alone makes a plan that says the depth and nothing else', () => {
    const plan = planOf({ depth: '240' });
    expect(plan).toEqual({
      format: 'wellcut-plan/1',
      title: 'My well',
      units: 'us',
      well: { depth: '240 ft', casing: {}, intake: {} },
      water: { staticLevel: 'unknown' },
      status: { 'well.depth': 'reported' },
    });
    const { values, assumed } = solve(plan);
    expect(values.pumpingWaterLevel).toBeNull();
    expect(assumed.map(({ path }) => path)).toContain('top.depth');
  });

  test('keeps where the well is beside its name, and nothing where it was left empty', () => {
    expect(planOf({ depth: '240', place: '  Birch Hollow Road, lot 7 ' }).place).toBe('Birch Hollow Road, lot 7');
    expect(planOf({ depth: '240', place: '  ' })).not.toHaveProperty('place');
  });

  test('nothing that is assumed of its plan stands in the plan', () => {
    for (const units of ['us', 'metric'] as const) {
      const plan = planOf({
        units,
        depth: '70',
        casingSize: '6',
        casingMaterial: 'steel',
        top: 'pitless',
        frostDepth: '40',
      });
      for (const { path } of solve(plan).assumed) expect([path, valueAt(plan, path)]).toEqual([path, undefined]);
    }
  });

  test.each([
    ['us', '4', '4 in', '4 ft'],
    ['us', '3.5', '3.5 in', '3.5 ft'],
    ['us', '150', '150 in', '150 cm'],
    ['metric', '1.2', '1.2 cm', '1.2 m'],
    ['metric', '1,2', '1,2 cm', '1,2 m'],
    ['metric', '900', '900 cm', '900 mm'],
  ] as const)(
    'frost of a bare number is asked back where it is hardly possible: %s %s',
    (units, typed, read, meant) => {
      const report = { ...empty, units, depth: '73', frostDepth: typed };
      const asked = planFromReport(report);
      expect(asked.ok ? '' : asked.problems.frostDepth).toContain(`${read}. Did you mean ${meant}?`);
      // A trench follows it: drawing again is no answer, and the unit that was meant is.
      expect(planFromReport(report, ['frostDepth'])).toEqual(asked);
      expect(planFromReport({ ...report, frostDepth: read })).toMatchObject({
        ok: true,
        plan: { site: { frostDepth: read } },
      });
      expect(planFromReport({ ...report, frostDepth: meant })).toMatchObject({
        ok: true,
        plan: { site: { frostDepth: meant } },
      });
    },
  );

  test.each(['0', '6', '42', '120', '4 in', '3 ft', 'unknown', ''])('frost of %s is taken as it is', (frostDepth) => {
    expect(planFromReport({ ...empty, depth: '73', frostDepth })).toMatchObject({ ok: true });
  });

  test('frost is typed in inches or centimetres, and is the code’s only where that was said', () => {
    const unsaid = planOf({ depth: '240', frostDepth: '24' });
    expect(unsaid.site).toEqual({ frostDepth: '24 in' });
    expect(planOf({ depth: '240', frostDepth: '24', frostFrom: 'local code' }).site?.frostFrom).toBe('local code');
    expect(planOf({ units: 'metric', depth: '73', frostDepth: '90' }).site?.frostDepth).toBe('90 cm');
    // 24 in of frost and 6 in of margin (IRC P2603.5, from memory), a whole half foot already.
    expect(solve(unsaid).values.pitlessBelowFrost).toBeCloseTo(6 * 0.0254, 9);
  });

  test('what the report says is reported, what hangs in the well is installed', () => {
    const said = {
      depth: '240',
      casingSize: '6',
      staticLevel: '60',
      pumpSetting: '200',
      power: '1 hp',
      adapterDepth: '60',
    };
    expect(planOf(said).status).toEqual({
      'well.depth': 'reported',
      'well.casing': 'reported',
      'water.staticLevel': 'reported',
    });
    expect(planOf({ ...said, hanging: 'pump' })).toMatchObject({
      top: { kind: 'pitless', depth: '60 in' },
      pump: { setting: '200 ft', power: '1 hp' },
      status: { 'pump.setting': 'installed', 'pump.power': 'installed', top: 'installed' },
    });
  });

  test('a pump that hangs there is not moved for want of its depth', () => {
    const plan = planOf({ depth: '240', staticLevel: '60', hanging: 'pump' });
    expect(plan.status).toMatchObject({ 'pump.setting': 'installed' });
    expect(mayMove(solve(plan).facts, 'pump.setting')).toBe(false);
    expect(mayMove(solve(plan).facts, 'pump.lowLevelCutOff')).toBe(true);
  });

  test('a test of which a number is missing is kept with what is known', () => {
    const report = { ...empty, depth: '240', staticLevel: '60', test: 'test', testFlow: '10' } as const;
    const first = planFromReport(report);
    expect(first.ok ? [] : Object.keys(first.problems)).toEqual(['testDrawdown']);
    // Left empty once more, it is not known.
    const read = planFromReport(report, ['testDrawdown']);
    expect(read.ok ? read.plan.water.pumping : read.problems).toEqual({
      kind: 'test',
      flow: '10 gpm',
      drawdown: 'unknown',
    });
    expect(read.ok ? solve(read.plan).unknown : []).toContain('water.pumping.drawdown');
  });

  test('a drawdown without its flow is asked for the flow', () => {
    const read = planFromReport({ ...empty, depth: '240', test: 'test', testDrawdown: '40' });
    expect(read.ok ? [] : Object.keys(read.problems)).toEqual(['testFlow']);
  });

  test('how the water comes in is not known until somebody says it', () => {
    const { unknown, facts } = solve(planOf({ depth: '240', staticLevel: '60' }));
    expect(facts.well.intake.kind).toBeNull();
    expect(unknown).toContain('well.intake.kind');
    const said = planOf({ depth: '240', staticLevel: '60', intake: 'open hole' });
    expect(solve(said).unknown).not.toContain('well.intake.kind');
    expect(said.status).toMatchObject({ 'well.intake': 'reported' });
  });

  test.each(['6-5/8', '6.625', '4-1/2 in', '7'])('a casing of %s reads, and its bore is asked for', (casingSize) => {
    const plan = planOf({ depth: '240', casingMaterial: 'steel', casingSize });
    expect(solve(plan).unknown).toContain('well.casing.insideDiameter');
    const measured = planOf({ depth: '240', casingMaterial: 'steel', casingSize, casingInside: '6.4' });
    expect(solve(measured).unknown).not.toContain('well.casing.insideDiameter');
  });

  test.each(['N/A', 'n/a', '-', '?', 'unknown', ' '])('"%s" for a static level is not known', (staticLevel) => {
    expect(planOf({ depth: '240', staticLevel }).water.staticLevel).toBe('unknown');
  });

  test('"+3" for a static level is asked back: it may stand above the ground', () => {
    const read = planFromReport({ ...empty, depth: '240', staticLevel: '+3' });
    expect(read.ok ? '' : read.problems.staticLevel).toMatch(/both ways/);
  });

  test('in metres keeps metres', () => {
    const report = planFromReport({ ...empty, units: 'metric', depth: '73', staticLevel: '12,5', frostDepth: '90' });
    if (!report.ok) throw new Error(JSON.stringify(report.problems));
    expect(valueAt(report.plan, 'water.staticLevel')).toBe('12,5 m');
    expect(solve(report.plan).values.pitlessBelowFrost).toBeGreaterThan(0);
  });

  test('says beside each line what is wrong with it', () => {
    const report = planFromReport({
      ...empty,
      depth: 'deep',
      staticLevel: '60 gpm',
      test: 'test',
      testFlow: '10',
      testDrawdown: '30',
    });
    expect(report.ok).toBe(false);
    if (!report.ok) expect(Object.keys(report.problems).sort()).toEqual(['depth', 'staticLevel']);
  });

  test.each(['test', 'level', 'yield only', 'unknown'] as const)('tested by "%s" reads', (test) => {
    const report = planFromReport({
      ...empty,
      depth: '240',
      staticLevel: '60',
      test,
      testFlow: '10',
      testDrawdown: '40',
      pumpingLevel: '100',
    });
    expect(report).toMatchObject({ ok: true });
  });

  test('with a screen reads', () => {
    const report = planFromReport({
      ...empty,
      depth: '120',
      casingBottom: '100',
      intake: 'screen',
      screenTop: '100',
      screenBottom: '115',
    });
    expect(report).toMatchObject({ ok: true });
  });
});
