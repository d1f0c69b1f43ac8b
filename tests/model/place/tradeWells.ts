/**
 * Invented wells, and where the trade would hang the pump and set the adapter, as ranges: common practice, no source.
 *
 * Wells are plain so that the ranges can be worked out by hand: a flow-limiting valve holds the pump to what the house
 * wants, at which the drawdown is known, so that the lowest pumping level is the level at rest and the drawdown. The
 * motor ends 1.5 ft (0.46 m) under the intake.
 */
import { withValue, type Plan } from '../../../src/model/index.ts';
import type { WhyLeft } from '../../../src/model/place/told.ts';
import { rockWell } from '../../plans/build.ts';

/** In feet or metres, as the plan is; "stays": where it is. */
export type Place = readonly [least: number, most: number] | 'stays';

export interface TradeWell {
  readonly name: string;
  readonly plan: Plan;
  /** Of the intake, from the ground. */
  readonly pump: Place;
  /** Why the pump stays. */
  readonly left?: WhyLeft['variant'];
  readonly adapter?: Place;
  readonly adapterLeft?: WhyLeft['variant'];
  /** Whether something stops it before it runs dry. */
  readonly guarded?: true;
  /** Rules of which no depth meets all. */
  readonly clash?: readonly string[];
}

type Changes = Readonly<Record<string, unknown>>;

/** 200 ft of open rock, water at rest at 40 ft and 30 ft lower at 7 gpm: the lowest pumping level is 70 ft. */
export function plain(changes: Changes = {}): Plan {
  const base: Changes = {
    'well.depth': '200 ft',
    'well.casing.bottom': '30 ft',
    'well.layers': [
      { material: 'clay', bottom: '20 ft' },
      { material: 'granite', bottom: '1000 ft' },
    ],
    'water.pumping': { kind: 'test', flow: '7 gpm', drawdown: '30 ft', after: '6 h' },
    'pump.setting': '60 ft',
    'pump.flowLimiter': '7 gpm',
    'pump.power': '1-1/2 hp',
    'house.tank': '86 gal',
    'dropPipe.rating': '315 psi',
    ...changes,
  };
  return Object.entries(base).reduce((plan, [path, to]) => withValue(plan, path, to), rockWell());
}

/** The same with a screen in sand from a depth on. */
function screened(top: number, changes: Changes = {}): Plan {
  return plain({
    'well.depth': `${top + 10} ft`,
    'well.casing.bottom': `${top} ft`,
    'well.intake': { kind: 'screen', diameter: '6 in', top: `${top} ft`, bottom: `${top + 8} ft` },
    'well.layers': [{ material: 'sand', bottom: '1000 ft' }],
    ...changes,
  });
}

/** 300 ft of rock that was blown with air: nobody knows how far its water falls from 45 ft. */
export function blown(changes: Changes = {}): Plan {
  return plain({
    'well.depth': '300 ft',
    'well.yield': '15 gpm',
    'well.yieldFrom': 'air lift',
    'water.staticLevel': '45 ft',
    'water.pumping': { kind: 'yield only' },
    ...changes,
  });
}

/** 300 ft of rock that gives 1 gpm to a house that wants 7. */
export function lowYield(changes: Changes = {}): Plan {
  return plain({
    'well.depth': '300 ft',
    'well.yield': '1 gpm',
    'well.yieldFrom': 'pump',
    'water.pumping': { kind: 'test', flow: '1 gpm', drawdown: '100 ft', after: '6 h' },
    'pump.flowLimiter': undefined,
    ...changes,
  });
}

/** 60 m of rock in a metric plan, water at rest at 12 m and 9 m lower at 26 L/min: the lowest pumping level is 21 m. */
export function metric(changes: Changes = {}): Plan {
  return plain({
    units: 'metric',
    'site.frostDepth': '90 cm',
    'well.depth': '60 m',
    'well.casing.bottom': '9 m',
    'well.layers': [
      { material: 'clay', bottom: '6 m' },
      { material: 'granite', bottom: '300 m' },
    ],
    'water.staticLevel': '12 m',
    'water.pumping': { kind: 'test', flow: '26 L/min', drawdown: '9 m', after: '6 h' },
    'house.demand': '26 L/min',
    'pump.flowLimiter': '26 L/min',
    'pump.setting': '18 m',
    'top.depth': '1.2 m',
    ...changes,
  });
}

/** A pump of which two points are known, so that its shut-off head is. */
function reaching(shutOff: number): Changes {
  return {
    'pump.curve': {
      kind: 'points',
      points: [
        ['0 gpm', `${shutOff} ft`],
        ['5 gpm', `${shutOff * 0.8} ft`],
        ['8 gpm', `${shutOff * 0.5} ft`],
      ],
    },
    'pump.flowLimiter': undefined,
  };
}

const perforated = (top: string) => ({
  'well.depth': '200 ft',
  'well.casing': undefined,
  'well.casings': [
    { material: 'steel', size: '6 in', bottom: '60 ft', height: '12 in' },
    { material: 'PVC', size: '4-1/2 in', insideDiameter: '4.5 in', outsideDiameter: '5 in', top, bottom: '120 ft' },
  ],
  'well.intake': { kind: 'screen', diameter: '4.5 in', top: '120 ft', bottom: '198 ft' },
  'pump.diameter': '3.8 in',
});

export const TRADE_WELLS: readonly TradeWell[] = [
  // Room between the water and the bottom: 20 to 40 ft under the lowest pumping level of 70 ft.
  { name: 'hung in air', plan: plain(), pump: [90, 110] },
  { name: 'hung above the water at rest', plan: plain({ 'pump.setting': '30 ft' }), pump: [90, 110] },
  { name: 'hung on the bottom', plan: plain({ 'pump.setting': '198 ft' }), pump: [90, 110] },
  { name: 'hung 12 ft off the bottom', plan: plain({ 'pump.setting': '186.5 ft' }), pump: [90, 110] },
  { name: 'barely under the water', plan: plain({ 'pump.setting': '76 ft' }), pump: [90, 110] },
  { name: 'nobody said where it hangs', plan: plain({ 'pump.setting': undefined }), pump: [90, 110] },
  { name: 'a dry season takes 25 ft more', plan: plain({ 'water.dryFall': '25 ft' }), pump: [115, 135] },
  {
    name: 'a level measured while pumping',
    plan: plain({ 'water.pumping': { kind: 'level', level: '85 ft', flow: '7 gpm' } }),
    pump: [105, 125],
  },
  {
    name: 'depths counted from the casing top',
    plan: plain({ 'well.depthsFrom': 'casing top', 'water.staticLevel': '41 ft', 'well.depth': '201 ft' }),
    pump: [90, 110],
  },
  // It holds with room: left where it is, however much shallower it could hang.
  { name: '35 ft under the water', plan: plain({ 'pump.setting': '105 ft' }), pump: 'stays', left: 'hangsWell' },
  { name: '80 ft under the water', plan: plain({ 'pump.setting': '150 ft' }), pump: 'stays', left: 'hangsWell' },
  // Less room in rock: 20 ft off the bottom, but 10 ft under the water first.
  { name: '120 ft of rock', plan: plain({ 'well.depth': '120 ft' }), pump: [93, 98.5] },
  { name: '105 ft of rock', plan: plain({ 'well.depth': '105 ft' }), pump: [80, 83.5] },
  { name: '95 ft of rock', plan: plain({ 'well.depth': '95 ft' }), pump: [80, 83.5] },
  {
    // With a probe 2 ft over the intake less than 10 ft of water do.
    name: '88 ft of rock: 10 ft under the water is not 10 ft off the bottom',
    plan: plain({ 'well.depth': '88 ft' }),
    pump: [74, 76.5],
    guarded: true,
  },
  // Over a screen: its motor 10 ft above it, and never beside it.
  { name: 'a deep screen', plan: screened(150), pump: [90, 110] },
  { name: 'in the screen', plan: screened(150, { 'pump.setting': '152 ft' }), pump: [90, 110] },
  { name: 'a screen at 105 ft', plan: screened(105), pump: [90, 93.5] },
  { name: 'a screen at 92 ft', plan: screened(92), pump: [80, 80.5] },
  { name: 'a screen at 86 ft', plan: screened(86), pump: [80, 84.5] },
  {
    name: 'a screen at 79 ft: 10 ft under the water is in the screen',
    plan: screened(79),
    pump: [74, 77.5],
    guarded: true,
  },
  {
    name: 'a screen of which nobody said the depth',
    plan: screened(150, { 'well.intake': { kind: 'screen', diameter: '6 in' } }),
    pump: 'stays',
    left: 'nobodySaid',
  },
  // A perforated liner in rock is open hole: it may hang in it, as far off the bottom as in rock.
  { name: 'a perforated liner', plan: plain(perforated('50 ft')), pump: [90, 110], adapter: 'stays' },
  {
    name: 'a perforated liner, the water at 130 ft',
    plan: plain({ ...perforated('50 ft'), 'water.staticLevel': '100 ft' }),
    pump: [150, 170],
  },
  // Dug wells: 10 ft of water or what the bottom leaves.
  {
    name: 'a dug well',
    plan: plain({
      'well.depth': '45 ft',
      'well.casing': { material: 'concrete', size: '36 in', bottom: '45 ft', height: '18 in' },
      'well.intake': { kind: 'dug', diameter: '36 in' },
      'well.layers': undefined,
      'water.staticLevel': '14 ft',
      'water.pumping': { kind: 'test', flow: '7 gpm', drawdown: '5 ft', after: '6 h' },
      'pump.setting': '20 ft',
    }),
    pump: [29, 33.5],
  },
  // Blown with air: as deep as the bottom leaves 20 ft, with something to stop it.
  { name: 'blown, hung at 150 ft', plan: blown({ 'pump.setting': '150 ft' }), pump: [268, 278.5], guarded: true },
  {
    name: 'blown, hung 5 ft under the water',
    plan: blown({ 'pump.setting': '50 ft' }),
    pump: [268, 278.5],
    guarded: true,
  },
  {
    name: 'blown, hung well over its protection',
    plan: blown({ 'pump.setting': '250 ft', 'pump.lowLevelCutOff': '240 ft' }),
    pump: 'stays',
    left: 'hangsWell',
    guarded: true,
  },
  {
    name: 'blown, deep enough but nothing stops it',
    plan: blown({ 'pump.setting': '275 ft' }),
    pump: 'stays',
    left: 'hangsWell',
    guarded: true,
  },
  {
    // 280 ft of shut-off head, less 10 ft of rise and 92.4 ft for 40 psi: it lifts from 177.6 ft.
    name: 'blown, and the pump lifts from 178 ft',
    plan: blown({ ...reaching(280), 'pump.setting': '275 ft' }),
    pump: [100, 179.6],
    guarded: true,
  },
  {
    name: 'blown, in 75 ft of rock',
    plan: blown({ 'well.depth': '75 ft', 'pump.setting': '50 ft' }),
    pump: [55, 63.5],
    guarded: true,
  },
  {
    name: 'blown, a rest level 15 ft over the bottom',
    plan: blown({ 'well.depth': '60 ft', 'pump.setting': '50 ft' }),
    pump: 'stays',
    left: 'noRoomForPump',
  },
  // A well that gives less than the house wants is drawn down on purpose.
  {
    name: 'low yield, hung in the middle',
    plan: lowYield({ 'pump.setting': '120 ft' }),
    pump: [268, 278.5],
    guarded: true,
  },
  {
    name: 'low yield, hung deep',
    plan: lowYield({ 'pump.setting': '272 ft', 'pump.lowLevelCutOff': '268 ft' }),
    pump: 'stays',
    left: 'hangsWell',
    guarded: true,
  },
  {
    // 350 ft of shut-off head: it lifts from 247.6 ft, and reaches 60 psi from 201.4 ft.
    name: 'low yield, hung deeper than the pump lifts from',
    plan: lowYield({ ...reaching(350), 'pump.setting': '285 ft' }),
    pump: [150, 249.6],
    guarded: true,
  },
  // What is no place at all.
  {
    name: 'a flowing well',
    plan: plain({ 'water.staticLevel': '-2 ft' }),
    pump: 'stays',
    left: 'flowing',
    adapter: 'stays',
  },
  {
    name: 'a well that flows in spring',
    plan: plain({ 'water.staticHighest': '-6 in' }),
    pump: 'stays',
    left: 'flowing',
    adapter: 'stays',
  },
  { name: 'a dry well', plan: plain({ 'water.staticLevel': '210 ft' }), pump: 'stays', left: 'dry', adapter: 'stays' },
  { name: 'an unknown level', plan: plain({ 'water.staticLevel': 'unknown' }), pump: 'stays', left: 'nobodySaid' },
  {
    name: 'a pump that lifts from 48 ft and water that falls to 70 ft',
    plan: plain({ ...reaching(150), 'pump.setting': '60 ft' }),
    pump: 'stays',
    left: 'cannotLift',
  },
  // What stands.
  {
    name: 'it stands installed',
    plan: plain({ status: { 'pump.setting': 'installed' } }),
    pump: 'stays',
    left: 'stands',
  },
  { name: 'it was measured', plan: plain({ status: { pump: 'measured' } }), pump: 'stays', left: 'stands' },
  {
    name: 'a probe that stands at 120 ft over a pump at 110 ft',
    plan: plain({
      'pump.setting': '110 ft',
      'pump.lowLevelCutOff': '120 ft',
      status: { 'pump.lowLevelCutOff': 'installed' },
    }),
    pump: 'stays',
  },
  // Inflows: a motor of 3 hp hangs above the lowest one rather than in a shroud.
  {
    name: '3 hp below its only inflow',
    plan: plain({ 'pump.power': '3 hp', 'pump.setting': '150 ft', 'well.inflows': [{ depth: '120 ft' }] }),
    pump: [90, 117.5],
  },
  {
    name: 'under a narrowing hole',
    plan: plain({
      'well.casing': undefined,
      'well.casings': [
        { material: 'steel', size: '6 in', bottom: '110 ft', height: '12 in' },
        {
          material: 'steel',
          size: '4 in',
          insideDiameter: '3.6 in',
          outsideDiameter: '4 in',
          top: '105 ft',
          bottom: '200 ft',
        },
      ],
    }),
    pump: [90, 103.5],
  },
  // Metric plans: 6 to 12 m under the water, 6 m off the bottom.
  { name: 'metric, with room', plan: metric(), pump: [27, 33] },
  { name: 'metric, 38 m of rock', plan: metric({ 'well.depth': '35 m' }), pump: [27, 28.6] },
  {
    name: 'metric, blown',
    plan: metric({ 'water.pumping': { kind: 'yield only' }, 'well.yield': '60 L/min', 'well.yieldFrom': 'air lift' }),
    pump: [50, 53.6],
    guarded: true,
  },
  // Adapters, in feet: frost reaches 3 ft, and 6 in are asked for below it.
  { name: 'an adapter at 2 ft', plan: plain({ 'top.depth': '2 ft' }), pump: [90, 110], adapter: [3.5, 4] },
  { name: 'an adapter at 40 in', plan: plain({ 'top.depth': '40 in' }), pump: [90, 110], adapter: [3.5, 4] },
  { name: 'an adapter at 8 ft', plan: plain({ 'top.depth': '8 ft' }), pump: [90, 110], adapter: 'stays' },
  { name: 'an adapter at 20 ft', plan: plain({ 'top.depth': '20 ft' }), pump: [90, 110], adapter: [3.5, 4] },
  {
    name: 'no frost, an adapter at 6 in',
    plan: plain({ 'site.frostDepth': '0 in', 'top.depth': '6 in' }),
    pump: [90, 110],
    adapter: [1, 1.5],
  },
  {
    name: 'water at 44 in in spring',
    plan: plain({ 'top.depth': '2 ft', 'water.staticHighest': '44 in' }),
    pump: [90, 110],
    adapter: [3.5, 3.66],
  },
  {
    name: 'water at 40 in in spring',
    plan: plain({ 'top.depth': '2 ft', 'water.staticHighest': '40 in' }),
    pump: [90, 110],
    adapter: 'stays',
    clash: ['PR-19', 'PR-20'],
  },
  {
    name: 'an adapter in the liner',
    plan: plain({ ...perforated('6 ft'), 'top.depth': '8 ft' }),
    pump: [90, 110],
    adapter: [3.5, 5],
  },
  {
    name: 'a liner up to the ground',
    plan: plain({ ...perforated('0 ft'), 'top.depth': '3 ft' }),
    pump: [90, 110],
    adapter: 'stays',
    clash: ['PR-19'],
  },
  {
    name: 'an adapter that stands installed',
    plan: plain({ 'top.depth': '2 ft', status: { top: 'installed' } }),
    pump: [90, 110],
    adapter: 'stays',
    adapterLeft: 'stands',
  },
  {
    name: 'an unknown frost',
    plan: plain({ 'site.frostDepth': undefined, 'top.depth': '2 ft' }),
    pump: [90, 110],
    adapter: 'stays',
    adapterLeft: 'nobodySaid',
  },
  {
    name: 'metric, an adapter in frost',
    plan: metric({ 'site.frostDepth': '1.2 m' }),
    pump: [27, 33],
    adapter: [1.35, 1.4],
  },
];
