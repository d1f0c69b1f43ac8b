/**
 * Thirty-odd invented wells of every kind that a driller meets, with where the trade would hang the pump and set the
 * adapter: common practice, no source, from memory. And what is never done to any well, in a thousand random ones.
 */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { solve, valueAt, withValue, type Plan, type Solution } from '../../../src/model/index.ts';
import { levelAtNoFlow } from '../../../src/model/figures/curves.ts';
import { lowestLevel } from '../../../src/model/figures/lowestLevel.ts';
import { fixesOf } from '../../../src/model/fixes/fixesOf.ts';
import { setDepths } from '../../../src/model/place/setDepths.ts';
import type { WhyLeft } from '../../../src/model/place/told.ts';
import { screenTop } from '../../../src/model/rules/pumpDepth.ts';
import { feet, show } from '../../../src/model/units.ts';
import { en } from '../../../src/words/en/index.ts';
import { sayCaveat, sayWhyLeft, sayWhyPlaced } from '../../../src/words/sayPlacement.ts';
import { planOf } from '../../plans/build.ts';
import { anyBuild } from './anyBuild.ts';
import { blown, lowYield, plain } from './tradeWells.ts';

/** Of intake or adapter from the ground, in feet or metres as the plan is; "stays": where it is. */
type Place = readonly [least: number, most: number] | 'stays';

interface Well {
  readonly name: string;
  readonly plan: Plan;
  readonly pump: Place;
  readonly adapter?: Place;
  readonly left?: WhyLeft['variant'];
  readonly guarded?: true;
}

type Part = Readonly<Record<string, unknown>>;
interface Said {
  readonly well: Part;
  readonly water: Part;
  readonly top?: Part;
  readonly house?: Part;
  readonly pump?: Part;
  readonly dropPipe?: Part;
  readonly site?: Part;
  readonly status?: Part;
}

const US_HOUSE = {
  demand: '8 gpm',
  distance: '80 ft',
  rise: '8 ft',
  line: { material: 'PE', size: '1-1/4 in', rating: '200 psi' },
  reliefValve: true,
  tank: '62 gal',
};
const METRIC_HOUSE = {
  demand: '30 L/min',
  distance: '25 m',
  rise: '2.5 m',
  line: { material: 'PE', size: '1-1/4 in', rating: '200 psi' },
  reliefValve: true,
  tank: '230 L',
};

/** A valve holds the pump to the demand, at which the test was run: the lowest pumping level is that of the test. */
function us({ well, water, top, house, pump, dropPipe, site, status }: Said): Plan {
  return planOf({
    format: 'wellcut-plan/1',
    units: 'us',
    site: { frostDepth: '42 in', ...site },
    well,
    water,
    house: { ...US_HOUSE, ...house },
    top: top ?? { kind: 'pitless', depth: '5 ft' },
    pump: {
      setting: '60 ft',
      power: '1-1/2 hp',
      curve: { kind: 'generic', flow: '10 gpm' },
      flowLimiter: '8 gpm',
      diameter: '3.8 in',
      ...pump,
    },
    dropPipe: dropPipe ?? { material: 'PE', size: '1-1/4 in', rating: '315 psi' },
    wire: { size: '8 AWG' },
    ...(status === undefined ? {} : { status }),
  });
}

function metric({ well, water, top, house, pump, site, status }: Said): Plan {
  return planOf({
    format: 'wellcut-plan/1',
    units: 'metric',
    site: { frostDepth: '1.1 m', ...site },
    well,
    water,
    house: { ...METRIC_HOUSE, ...house },
    top: top ?? { kind: 'pitless', depth: '1.6 m' },
    pump: {
      setting: '20 m',
      power: '1-1/2 hp',
      curve: { kind: 'generic', flow: '38 L/min' },
      flowLimiter: '30 L/min',
      diameter: '97 mm',
      ...pump,
    },
    dropPipe: { material: 'PE', size: '1-1/4 in', rating: '315 psi' },
    wire: { size: '8 AWG' },
    ...(status === undefined ? {} : { status }),
  });
}

const steel = (bottom: string, size = '6 in') => ({ material: 'steel', size, bottom, height: '12 in' });
const usTest = (drawdown: string, after = '6 h') => ({ kind: 'test', flow: '8 gpm', drawdown, after });
const metricTest = (drawdown: string) => ({ kind: 'test', flow: '30 L/min', drawdown, after: '6 h' });
const usRock = (depth: string, casing = '40 ft', extra: Part = {}) => ({
  depth,
  casing: steel(casing),
  intake: { kind: 'open hole', diameter: '6 in' },
  yield: '12 gpm',
  yieldFrom: 'pump',
  layers: [
    { material: 'clay', bottom: casing },
    { material: 'granite', bottom: depth },
  ],
  ...extra,
});
const metricRock = (depth: string, casing = '12 m', extra: Part = {}) => ({
  depth,
  casing: { material: 'steel', size: '6 in', bottom: casing, height: '30 cm' },
  intake: { kind: 'open hole', diameter: '150 mm' },
  yield: '45 L/min',
  yieldFrom: 'pump',
  layers: [
    { material: 'clay', bottom: casing },
    { material: 'gneiss', bottom: depth },
  ],
  ...extra,
});
const usScreen = (top: number, length = 10, extra: Part = {}) => ({
  depth: `${top + length} ft`,
  casing: { material: 'PVC', size: '5 in', bottom: `${top} ft`, height: '12 in' },
  intake: { kind: 'screen', diameter: '5 in', top: `${top} ft`, bottom: `${top + length} ft` },
  yield: '15 gpm',
  yieldFrom: 'pump',
  layers: [{ material: 'sand', bottom: `${top + length} ft` }],
  ...extra,
});
const metricScreen = (top: number, length = 3) => ({
  depth: `${top + length} m`,
  casing: { material: 'PVC', size: '5 in', bottom: `${top} m`, height: '30 cm' },
  intake: { kind: 'screen', diameter: '125 mm', top: `${top} m`, bottom: `${top + length} m` },
  yield: '60 L/min',
  yieldFrom: 'pump',
  layers: [{ material: 'sand', bottom: `${top + length} m` }],
});
const BLOWN = { kind: 'yield only' };
const SEAL = { kind: 'seal' };

/** The motor ends some 1.5 ft (0.5 m) or more under the intake; a motor of 1-1/2 hp hangs up to 2.5 ft under it. */
const WELLS: readonly Well[] = [
  // Rock with room: 20 to 40 ft (6 to 12 m) under the lowest pumping level.
  {
    name: 'Alder Bench, rock, level 75 ft',
    plan: us({ well: usRock('240 ft'), water: { staticLevel: '45 ft', pumping: usTest('30 ft') } }),
    pump: [95, 115],
  },
  {
    name: 'Burnt Mill, deep rock, level 190 ft',
    plan: us({
      well: usRock('420 ft'),
      water: { staticLevel: '150 ft', pumping: usTest('40 ft') },
      pump: { power: '3 hp' },
    }),
    pump: [210, 230],
  },
  {
    name: 'Cold Spring, rock that falls 15 ft in a dry season',
    plan: us({ well: usRock('260 ft'), water: { staticLevel: '40 ft', dryFall: '15 ft', pumping: usTest('25 ft') } }),
    pump: [100, 120],
  },
  {
    name: 'Dovecote, hung on the bottom of roomy rock',
    plan: us({
      well: usRock('220 ft'),
      water: { staticLevel: '30 ft', pumping: usTest('20 ft') },
      pump: { setting: '217 ft' },
    }),
    pump: [70, 90],
  },
  {
    name: 'Elm Hollow, hung deep with room: stays',
    plan: us({
      well: usRock('240 ft'),
      water: { staticLevel: '45 ft', pumping: usTest('30 ft') },
      pump: { setting: '150 ft' },
    }),
    pump: 'stays',
    left: 'hangsWell',
  },
  {
    name: 'Fjellgard, metric rock, level 26 m',
    plan: metric({ well: metricRock('75 m'), water: { staticLevel: '16 m', pumping: metricTest('10 m') } }),
    pump: [32, 38],
  },
  {
    name: 'Granåsen, metric rock, level 41 m',
    plan: metric({
      well: metricRock('95 m'),
      water: { staticLevel: '33 m', pumping: metricTest('8 m') },
      pump: { power: '2 hp' },
    }),
    pump: [47, 53],
  },
  // Screened: the motor 10 ft over the screen where the water leaves that, and never in it.
  {
    name: 'Heron Reach, a screen far below the water',
    plan: us({ well: usScreen(160), water: { staticLevel: '35 ft', pumping: usTest('20 ft') } }),
    pump: [75, 95],
  },
  {
    name: 'Ibis Flat, a screen 35 ft under the water',
    plan: us({ well: usScreen(95), water: { staticLevel: '40 ft', pumping: usTest('20 ft') } }),
    pump: [70, 83.5],
  },
  {
    name: 'Juniper Wash, hung in its screen',
    plan: us({
      well: usScreen(120, 20),
      water: { staticLevel: '50 ft', pumping: usTest('15 ft') },
      pump: { setting: '128 ft' },
    }),
    pump: [85, 105],
  },
  {
    name: 'Kestrel Sands, metric screen at 30 m',
    plan: metric({ well: metricScreen(30), water: { staticLevel: '8 m', pumping: metricTest('5 m') } }),
    pump: [19, 25],
  },
  {
    name: 'Lagune, metric screen at 22 m, level 13 m',
    plan: metric({ well: metricScreen(22), water: { staticLevel: '7 m', pumping: metricTest('6 m') } }),
    pump: [16, 18.6],
  },
  // Shallow: 10 ft (3 m) of water comes before 20 ft (6 m) off the bottom.
  {
    name: 'Marten Ford, 100 ft of rock, level 65 ft',
    plan: us({ well: usRock('100 ft'), water: { staticLevel: '40 ft', pumping: usTest('25 ft') } }),
    pump: [75, 78.5],
  },
  {
    name: 'Nordlia, 32 m of rock, level 19 m',
    plan: metric({ well: metricRock('32 m'), water: { staticLevel: '12 m', pumping: metricTest('7 m') } }),
    pump: [22, 25.5],
  },
  // Low yield: as deep as 20 ft off the bottom and the pump's lift leave, over a probe.
  {
    name: 'Otter Ledge, 400 ft of rock that gives 1 gpm',
    plan: us({
      well: usRock('400 ft', '40 ft', { yield: '1 gpm' }),
      water: { staticLevel: '60 ft', pumping: { kind: 'test', flow: '1 gpm', drawdown: '180 ft', after: '6 h' } },
      pump: { power: '3 hp', setting: '120 ft', flowLimiter: undefined, curve: { kind: 'generic', flow: '7 gpm' } },
      dropPipe: { material: 'galvanized steel', size: '1-1/4 in' },
    }),
    pump: [367, 378.5],
    guarded: true,
  },
  {
    name: 'Perch Knob, low yield and a pump that lifts no deeper',
    plan: us({
      well: usRock('500 ft', '40 ft', { yield: '1 gpm' }),
      water: { staticLevel: '60 ft', pumping: { kind: 'test', flow: '1 gpm', drawdown: '180 ft', after: '6 h' } },
      pump: { power: '1 hp', setting: '120 ft', flowLimiter: undefined },
    }),
    pump: [130, 260],
    guarded: true,
  },
  {
    name: 'Rimfjell, metric rock that gives 4 L/min',
    plan: metric({
      well: metricRock('100 m', '12 m', { yield: '4 L/min' }),
      water: { staticLevel: '15 m', pumping: { kind: 'test', flow: '4 L/min', drawdown: '40 m', after: '6 h' } },
      pump: { power: '3 hp', setting: '40 m', flowLimiter: undefined, curve: { kind: 'generic', flow: '26 L/min' } },
    }),
    pump: [90, 93.6],
    guarded: true,
  },
  // Only blown with air: nobody knows how far the water falls.
  {
    name: 'Quail Ridge, 250 ft blown at 10 gpm',
    plan: us({
      well: usRock('250 ft', '40 ft', { yield: '10 gpm', yieldFrom: 'air lift' }),
      water: { staticLevel: '35 ft', pumping: BLOWN },
      pump: { setting: '60 ft' },
    }),
    pump: [215, 228.5],
    guarded: true,
  },
  {
    name: 'Skogen, 70 m blown at 40 L/min',
    plan: metric({
      well: metricRock('70 m', '12 m', { yield: '40 L/min', yieldFrom: 'air lift' }),
      water: { staticLevel: '10 m', pumping: BLOWN },
      pump: { setting: '18 m' },
    }),
    pump: [60, 63.6],
    guarded: true,
  },
  // Dug, and of large diameter: as deep as the bottom leaves.
  {
    name: 'Tolland Green, a dug well of 30 ft',
    plan: us({
      well: {
        depth: '34 ft',
        casing: { material: 'concrete', size: '36 in', bottom: '34 ft', height: '18 in' },
        intake: { kind: 'dug', diameter: '36 in' },
      },
      water: { staticLevel: '8 ft', pumping: usTest('3 ft') },
      pump: { setting: '14 ft', power: '1/2 hp' },
    }),
    pump: [20, 22.5],
  },
  {
    name: 'Udmark, a dug well of 14 m',
    plan: metric({
      well: {
        depth: '14 m',
        casing: { material: 'concrete', size: '36 in', bottom: '14 m', height: '45 cm' },
        intake: { kind: 'dug', diameter: '1 m' },
      },
      water: { staticLevel: '3 m', pumping: metricTest('1.5 m') },
      pump: { setting: '5 m', power: '1/2 hp' },
    }),
    pump: [7.5, 10.5],
  },
  {
    name: 'Vetch Prairie, bored 24 in wide to 60 ft',
    plan: us({
      well: {
        depth: '60 ft',
        casing: { material: 'concrete', size: '36 in', bottom: '60 ft', height: '18 in' },
        intake: { kind: 'dug', diameter: '24 in' },
      },
      water: { staticLevel: '18 ft', pumping: usTest('6 ft') },
      pump: { setting: '26 ft', power: '1/2 hp' },
    }),
    pump: [34, 48.5],
  },
  // A driven point is a screen on a pipe: above it.
  {
    name: 'Willet Bar, a driven point of 4 in at 70 ft',
    plan: us({
      well: {
        depth: '76 ft',
        casing: steel('70 ft', '5 in'),
        intake: { kind: 'driven point', diameter: '4 in', top: '70 ft', bottom: '76 ft' },
        yield: '15 gpm',
        yieldFrom: 'pump',
      },
      water: { staticLevel: '20 ft', pumping: usTest('8 ft') },
      pump: { setting: '72 ft', power: '1/2 hp' },
    }),
    pump: [48, 60],
  },
  // Lined.
  {
    name: 'Yarrow Gap, a liner too narrow for the pump from 130 ft on',
    plan: us({
      well: {
        ...usRock('220 ft', '60 ft', { casing: undefined }),
        casings: [steel('60 ft'), { material: 'PVC', insideDiameter: '3.6 in', top: '130 ft', bottom: '220 ft' }],
      },
      water: { staticLevel: '60 ft', pumping: usTest('30 ft') },
      pump: { setting: '150 ft' },
    }),
    pump: [110, 128.5],
  },
  {
    name: 'Zinnia Park, a liner wide enough for it',
    plan: us({
      well: {
        ...usRock('220 ft', '60 ft', { casing: undefined }),
        casings: [steel('60 ft'), { material: 'PVC', insideDiameter: '4.5 in', top: '50 ft', bottom: '220 ft' }],
      },
      water: { staticLevel: '60 ft', pumping: usTest('30 ft') },
    }),
    pump: [110, 130],
  },
  // Cold and warm country, pitless and seal.
  {
    name: 'Aspen Portage, frost to 7 ft and an adapter at 5',
    plan: us({
      well: usRock('240 ft'),
      water: { staticLevel: '45 ft', pumping: usTest('30 ft') },
      site: { frostDepth: '84 in' },
    }),
    pump: [95, 115],
    adapter: [7.5, 8.5],
  },
  {
    name: 'Birkelund, frost to 1.8 m and an adapter at 1.2',
    plan: metric({
      well: metricRock('75 m'),
      water: { staticLevel: '16 m', pumping: metricTest('10 m') },
      site: { frostDepth: '1.8 m' },
      top: { kind: 'pitless', depth: '1.2 m' },
    }),
    pump: [32, 38],
    adapter: [1.9, 2.2],
  },
  {
    name: 'Cypress Key, no frost and 6 in of cover',
    plan: us({
      well: usScreen(120),
      water: { staticLevel: '20 ft', pumping: usTest('10 ft') },
      site: { frostDepth: '0 in' },
      top: { kind: 'pitless', depth: '6 in' },
    }),
    pump: [50, 70],
    adapter: [1, 2],
  },
  {
    name: 'Dune Court, warm country, a seal on top',
    plan: us({
      well: usScreen(140),
      water: { staticLevel: '60 ft', pumping: usTest('15 ft') },
      site: { frostDepth: '0 in' },
      top: SEAL,
    }),
    pump: [95, 115],
  },
  {
    name: 'Espelund, metric, a seal in a warm house',
    plan: metric({
      well: metricRock('75 m'),
      water: { staticLevel: '16 m', pumping: metricTest('10 m') },
      top: { kind: 'seal', heated: true, housed: true },
    }),
    pump: [32, 38],
  },
  {
    name: 'Fern Notch, an adapter 8 ft down that nobody brings up',
    plan: us({
      well: usRock('240 ft'),
      water: { staticLevel: '45 ft', pumping: usTest('30 ft') },
      top: { kind: 'pitless', depth: '8 ft' },
    }),
    pump: [95, 115],
    adapter: 'stays',
  },
  // What is left alone.
  {
    name: 'Gull Island, it flows',
    plan: us({ well: usScreen(120), water: { staticLevel: '-1 ft', pumping: usTest('20 ft') } }),
    pump: 'stays',
    adapter: 'stays',
    left: 'flowing',
  },
  {
    name: 'Hopper Draw, it is dry',
    plan: us({ well: usRock('140 ft'), water: { staticLevel: '150 ft' } }),
    pump: 'stays',
    adapter: 'stays',
    left: 'dry',
  },
  {
    name: 'Iversand, the pump stands installed',
    plan: metric({
      well: metricScreen(30),
      water: { staticLevel: '8 m', pumping: metricTest('5 m') },
      pump: { setting: '15 m' },
      status: { 'pump.setting': 'installed' },
    }),
    pump: 'stays',
    left: 'stands',
  },
  {
    name: 'Jasper Cut, both stand as the driller reported them',
    plan: us({
      well: usRock('240 ft'),
      water: { staticLevel: '45 ft', pumping: usTest('30 ft') },
      top: { kind: 'pitless', depth: '2 ft' },
      status: { pump: 'reported', top: 'reported' },
    }),
    pump: 'stays',
    adapter: 'stays',
    left: 'stands',
  },
];

function depthsOf(plan: Plan): { readonly pump: number; readonly adapter: number | null } {
  const { facts } = solve(plan);
  const unit = facts.units === 'us' ? feet(1) : 1;
  return {
    pump: facts.pump.setting / unit,
    adapter: facts.top.kind === 'pitless' ? facts.top.depth / unit : null,
  };
}

function expectAt(is: number | null, was: number | null, place: Place): void {
  if (place === 'stays') return void expect(is).toBe(was);
  expect(is).toBeGreaterThanOrEqual(place[0] - 1e-3);
  expect(is).toBeLessThanOrEqual(place[1] + 1e-3);
}

test('thirty wells and more, of both unit systems, each under its own name', () => {
  expect(new Set(WELLS.map(({ name }) => name)).size).toBeGreaterThanOrEqual(30);
  for (const units of ['us', 'metric'])
    expect(WELLS.filter(({ plan }) => plan.units === units).length).toBeGreaterThanOrEqual(9);
});

test.each(WELLS)('$name', ({ plan, pump, adapter = 'stays', left, guarded }) => {
  const placed = setDepths(plan);
  const [was, is] = [depthsOf(plan), depthsOf(placed.plan)];
  expectAt(is.pump, was.pump, pump);
  expectAt(is.adapter, was.adapter, adapter);
  if (left !== undefined) expect(placed.left.find(({ path }) => path === 'pump.setting')?.why.variant).toBe(left);
  const { facts } = solve(placed.plan);
  if (guarded === true)
    expect(facts.pump.setting - Number(facts.pump.lowLevelCutOff)).toBeGreaterThanOrEqual(feet(2) - 1e-3);
  expect(setDepths(placed.plan).changes).toEqual([]);
});

/** As a placed plan stands: what is never done to any well. */
describe('in a thousand random plans', () => {
  const HOW_BAD = { ok: 0, 'not judged': 0, note: 1, warning: 2, danger: 3 } as const;
  /** What turns on an unknown fact stands as the finding that tells it. */
  function badness({ verdicts, findings }: Solution, rule: string): number {
    const verdict = verdicts[rule] ?? 'not judged';
    if (verdict !== 'depends') return HOW_BAD[verdict];
    return HOW_BAD[findings.find(({ together }) => together.some((each) => each.rule === rule))?.severity ?? 'note'];
  }
  /** Hands and hoist follow the depth. */
  const ON_THE_HOOK = 'PR-51';
  /** A weak pump in a poor well reaches cut-out late from wherever it does not run dry: setting it says so, and no more. */
  const LATE = 'PR-46';
  const EACH = 250;

  test.each([11, 12, 13, 14])(
    'no verdict is worse than a warning that was not before, and none of the rest either (%i)',
    (seed) => {
      fc.assert(fc.property(anyBuild, holdsTo), { seed, numRuns: EACH });
    },
    300_000,
  );

  function holdsTo(plan: Plan): void {
    const placed = setDepths(plan);
    const [before, after] = [solve(plan), solve(placed.plan)];
    for (const rule of Object.keys(after.verdicts)) {
      const is = badness(after, rule);
      if (rule === LATE && is === 2 && placed.changes.length > 0) continue;
      if (is >= 2 && rule !== ON_THE_HOOK) expect(badness(before, rule), rule).toBeGreaterThanOrEqual(is);
    }
    for (const path of Object.keys(plan.status ?? {}))
      expect(valueAt(placed.plan, path), path).toEqual(valueAt(plan, path));
    const again = setDepths(placed.plan);
    expect(again.changes).toEqual([]);
    expect(again.plan).toEqual(placed.plan);
    if (!placed.changes.some(({ path }) => path === 'pump.setting')) return;
    const { facts, lowest } = after;
    const lifts = levelAtNoFlow(facts, { end: 'least', tank: 'cutIn' }) ?? Infinity;
    expect(lowest?.depth ?? lowestLevel(facts).depth).toBeLessThanOrEqual(lifts + 1e-3);
    const motorEnd = facts.pump.setting + facts.pump.intakeToMotorBottom;
    expect(motorEnd).toBeLessThanOrEqual((screenTop(after) ?? Infinity) + 1e-3);
    const wide = Math.max(facts.pump.diameter, facts.pump.shroudDiameter ?? 0);
    for (const { top, bottom, known, insideRadius } of after.bore.slice(1)) {
      const isNarrowing = known && 2 * insideRadius < wide && 2 * (after.bore[0]?.insideRadius ?? 0) > wide + 0.007;
      if (isNarrowing && before.assumed.every(({ path }) => path !== 'pump.diameter') && bottom > top)
        expect(motorEnd).toBeLessThanOrEqual(top + 1e-3);
    }
  }
});

describe('what is set is what the finding’s own button sets, or better', () => {
  // Nobody said at what flow 150 ft were read: the pump at 120 ft was called dry, its button hung it at 162 ft over a probe,
  // and setting the depths left it.
  const unknownFlow = us({
    well: usRock('220 ft', '90 ft', { yield: undefined, yieldFrom: undefined }),
    water: { staticLevel: '62 ft', dryFall: '15 ft', pumping: { kind: 'level', level: '150 ft' } },
    house: { demand: '8 gpm', line: { material: 'PE', size: '1 in', rating: '200 psi' }, distance: '120 ft' },
    pump: { setting: '120 ft', power: '1 hp', flowLimiter: undefined },
  });

  test('a level without its flow', () => {
    const before = solve(unknownFlow);
    const at = before.findings.findIndex(({ rule }) => rule === 'PR-02');
    const button = fixesOf(unknownFlow, before)[at]!.button!;
    expect(button.variant).toBe('hangWithCutOff');
    const { changes, clashes } = setDepths(unknownFlow);
    for (const { path, to } of button.changes!) expect(changes.find((each) => each.path === path)?.to).toBe(to);
    expect(clashes).toEqual([]);
    expect(sayWhyPlaced(changes[0]!.why, en, show('us'))).toMatch(
      /^As deep as this well and this pump let it; the pump takes more than flows in/,
    );
  });

  test('in random wells no warning is left whose button would hang the pump where it lifts', () => {
    fc.assert(
      fc.property(anyBuild, (plan) => {
        const { plan: placed, left } = setDepths(plan);
        const why = left.find(({ path }) => path === 'pump.setting')?.why.variant;
        // Nobody knows the water, or the pump lifts from no depth it may have: then another pump comes first.
        if (why === 'nobodySaid' || why === 'cannotLift') return;
        const solution = solve(placed);
        fixesOf(placed, solution).forEach(({ button }, i) => {
          const moves = button?.changes?.some(({ path }) => path === 'pump.setting') ?? false;
          if (solution.findings[i]!.severity !== 'note') expect(moves, JSON.stringify(button)).toBe(false);
        });
      }),
      { seed: 21, numRuns: 300 },
    );
  }, 120_000);
});

describe('what is told with the depths', () => {
  const said = (plan: Plan) => setDepths(plan).caveats.map((each) => sayCaveat(each, en, show('us')));
  const tested = (after: string | undefined) =>
    us({ well: usRock('240 ft'), water: { staticLevel: '45 ft', pumping: { ...usTest('30 ft'), after } } });

  test('a test of 2 h proves 2 h', () => {
    expect(said(tested('2 h'))).toEqual([
      'The test took 2 h and proves no more: pumped longer, the water may fall further.',
    ]);
    expect(said(tested('6 h'))).toEqual([]);
  });

  test('a test of unsaid length, and a level at an unsaid flow', () => {
    expect(said(withValue(tested('6 h'), 'water.pumping.after', undefined))).toEqual([
      'Nobody said how long the test took: pumped longer, the water may fall further than it did.',
    ]);
    expect(said(withValue(plain(), 'water.pumping', { kind: 'level', level: '70 ft' }))).toEqual([
      'Nobody said at what flow the pumping level was read; 7 gpm is assumed, and at less it proves less.',
    ]);
    expect(said(blown())).toEqual([]);
  });

  test('frost that nobody said is not told as the static level', () => {
    const plan = plain({ 'water.staticLevel': 'unknown', 'site.frostDepth': undefined });
    const why = Object.fromEntries(
      setDepths(plan).left.map((each) => [each.path, sayWhyLeft(each.why, en, show('us'))]),
    );
    expect(why).toMatchObject({
      'pump.setting': 'Nobody said the static water level.',
      'top.depth': 'Nobody said the frost depth.',
    });
  });

  test('a stronger pump would hang deeper where the pump itself ends its way down', () => {
    const weak = lowYield({
      'pump.curve': {
        kind: 'points',
        points: [
          ['0 gpm', '350 ft'],
          ['5 gpm', '280 ft'],
          ['8 gpm', '175 ft'],
        ],
      },
      'pump.setting': '285 ft',
    });
    const why = setDepths(weak).changes.find(({ path }) => path === 'pump.setting')!.why;
    expect(sayWhyPlaced(why, en, show('us'))).toMatch(
      /a stronger pump could hang deeper and use more of the well’s store/,
    );
    const strong = setDepths(lowYield({ 'pump.setting': '90 ft' })).changes[0]!.why;
    expect(sayWhyPlaced(strong, en, show('us'))).not.toMatch(/stronger/);
  });
});
