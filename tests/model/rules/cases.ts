/**
 * Both sides of every limit, as changes of the sound plan. The limits are those of the placement table that the rules
 * carry; each rule names its own publication. Figures set outright (`values`) keep a case about its limit alone.
 */
import type { Values, Verdict } from '../../../src/model/solution.ts';
import { feet, gpm, poundsForce, psi } from '../../../src/model/units.ts';
import type { Changes } from './fixture.ts';

export interface RuleCase {
  readonly rule: string;
  readonly says: string;
  readonly changes: Changes;
  readonly values?: Partial<Values>;
  readonly verdict: Verdict;
}

const of = (
  rule: string,
  says: string,
  verdict: Verdict,
  changes: Changes,
  values: Partial<Values> = {},
): RuleCase => ({ rule, says, changes, values, verdict });

const screened = {
  'well.inflows': undefined,
  'well.casing.bottom': '150 ft',
  'well.intake': { kind: 'screen', diameter: '5 in', screens: [{ top: '150 ft', bottom: '170 ft', openArea: '10 %' }] },
};
const seal = { top: { kind: 'seal' } };
const layers = (upper: string, bottom: string, lower: string) => [
  { material: upper, bottom },
  { material: lower, bottom: '200 ft' },
];
const test = (after: string | undefined) => ({
  kind: 'test',
  flow: '10 gpm',
  drawdown: '42 ft',
  ...(after === undefined ? {} : { after }),
});
const steps = (after: string) => ({
  kind: 'steps',
  steps: [
    { flow: '5 gpm', drawdown: '18 ft', after },
    { flow: '10 gpm', drawdown: '42 ft', after },
  ],
});
const noCutOff = { 'pump.lowLevelCutOff': undefined };
const noFall = { 'water.pumping.level': '40 ft' };
/** A pump that gives 8 gpm, whatever it lifts. */
const eightGpm = {
  'pump.curve': {
    kind: 'points',
    points: [
      ['0 gpm', '600 ft'],
      ['8 gpm', '599 ft'],
      ['8.001 gpm', '1 ft'],
    ],
  },
};
/** A pump by its own points that ends at a head of so many feet, and holds half of it at 10 gpm. */
const reaching = (head: number) => ({
  'pump.curve': {
    kind: 'points',
    points: [
      ['0 gpm', `${head} ft`],
      ['10 gpm', `${head / 2} ft`],
      ['15 gpm', '1 ft'],
    ],
  },
});
/** 1 gpm of 8 wanted, at 100 ft of drawdown. */
const poor = {
  'well.depth': '300 ft',
  'well.yield': '1 gpm',
  'water.pumping': { kind: 'test', flow: '1 gpm', drawdown: '100 ft', after: '6 h' },
  'house.demand': '8 gpm',
};
/** Every pump draws it down. */
const drawnDown = {
  ...poor,
  'pump.curve': {
    kind: 'points',
    points: [
      ['0 gpm', '270 ft'],
      ['10 gpm', '200 ft'],
      ['15 gpm', '100 ft'],
    ],
  },
};
/** 1/2 hp lifts from some 300 ft at the most, and hangs at 640 ft. */
const belowItsLift = {
  'well.depth': '700 ft',
  'well.yield': '0.75 gpm',
  'well.yieldFrom': 'air lift',
  'water.staticLevel': '90 ft',
  'water.pumping': { kind: 'yield only' },
  'house.demand': '6 gpm',
  'pump.power': '1/2 hp',
  'pump.curve': { kind: 'generic', flow: '5 gpm' },
  'pump.setting': '640 ft',
  'pump.lowLevelCutOff': '620 ft',
};
const noShroud = { 'pump.shroudDiameter': undefined };
/** No more is pumped than at the measured level, which is then the lowest. */
const held = { 'pump.flowLimiter': '10 gpm' };
/** Nobody knows how far the water falls: it stands somewhere between 40 ft and the intake at 140 ft. */
const levelUnknown = { 'water.pumping': { kind: 'yield only' } };
/** A liner with openings from 110 ft on, in a hole in granite. */
const perforated = {
  'well.casing': undefined,
  'well.casings': [
    { material: 'steel', size: '6 in', bottom: '60 ft', height: '12 in' },
    { material: 'PVC', size: '5 in', top: '50 ft', bottom: '110 ft' },
  ],
  'well.intake': { kind: 'screen', diameter: '5 in', screens: [{ top: '110 ft', bottom: '200 ft' }] },
  'well.layers': [
    { material: 'clay', bottom: '40 ft' },
    { material: 'granite', bottom: '200 ft' },
  ],
};
/** A place whose climate is in the tables, and nobody entered its frost: the estimate allows 43.9 in at the most. */
const climateOnly = { 'site.frostDepth': undefined, 'site.freezing': { station: 'Escalante' } };
const pvc = (ratio?: string) => ({ dropPipe: { material: 'PVC', size: '1 in', ...(ratio ? { ratio } : {}) } });
/** A pump with the same head at every flow: it runs at that head, wherever it runs. */
const flat = (head: number) => ({
  'pump.curve': {
    kind: 'points',
    points: [
      ['0 gpm', `${head} ft`],
      ['12 gpm', `${head - 0.01} ft`],
    ],
  },
});

const steelLine = { 'house.line': { material: 'galvanized steel', size: '1 in' } };
const openTank = { 'house.kind': 'open tank' };
/** 2 gpm at 40 ft of drawdown, of 10 wanted. */
const twoGpm = {
  'well.yield': '2 gpm',
  'water.pumping': { kind: 'test', flow: '2 gpm', drawdown: '40 ft', after: '4 h' },
};
const at400Volts = {
  units: 'metric',
  'pump.phase': 3,
  'pump.voltage': '400 V',
  'pump.power': '1.5 kW',
  'wire.size': '1.5 mm2',
};
const smallOpenTank = {
  'house.kind': 'open tank',
  'house.tank': '50 gal',
  'house.demand': '20 gpm',
  'pump.setting': '60 ft',
};
/** 10 gpm at 100 ft of drawdown, and a gallon more wanted. */
const halfComesIn = {
  'water.pumping': { kind: 'test', flow: '10 gpm', drawdown: '100 ft', after: '6 h' },
  'well.yield': '10 gpm',
  'well.inflows': undefined,
  'well.casing.bottom': '30 ft',
  'house.demand': '11 gpm',
};
/** A pump that hangs high and takes 10 gpm; how far the water falls meanwhile nobody knows. */
const shallow = { ...noCutOff, 'water.pumping': undefined, 'pump.power': '1/2 hp', 'pump.setting': '60 ft' };
/** Larger than any that the code's table names. */
const larger = { 'pump.power': '7-1/2 hp', 'pump.current': '40 A' };

/** A liner of some bore from 120 ft on, in the open hole under a wide casing. */
const narrowLiner = (bore: string) => ({
  'well.casing': undefined,
  'well.casings': [
    { material: 'PVC', size: '6 in', bottom: '60 ft', height: '12 in' },
    { material: 'PVC', insideDiameter: bore, top: '120 ft', bottom: '200 ft' },
  ],
  'well.intake.diameter': '5.5 in',
});

export const CASES: readonly RuleCase[] = [
  // The motor's lower end hangs 1.5 ft under the intake, so an intake at 188.5 ft leaves 10 ft of 200.
  of('PR-01', 'ten feet off the bottom', 'ok', { 'pump.setting': '188.5 ft' }),
  of('PR-01', 'an inch less', 'warning', { 'pump.setting': '2263 in' }),
  of('PR-01', 'five feet off', 'warning', { 'pump.setting': '193.5 ft' }),
  of('PR-01', 'an inch under five feet', 'danger', { 'pump.setting': '2323 in' }),
  of('PR-01', 'the bottom as sounded today counts', 'danger', { 'well.soundedDepth': '145 ft' }),
  of('PR-01', 'a short sump under a motor above the screen', 'note', {
    ...screened,
    'well.intake.screens.0.top': '195 ft',
    'well.intake.screens.0.bottom': '199 ft',
    'well.casing.bottom': '195 ft',
    'pump.setting': '193 ft',
  }),
  // A flow-limiting valve holds the pump to the tested 10 gpm, so that the water falls to 82 ft and no further.
  of('PR-02', 'a probe above the water at rest', 'danger', { 'pump.lowLevelCutOff': '20 ft' }),
  of('PR-54', 'a probe above the water at rest', 'not judged', { 'pump.lowLevelCutOff': '20 ft' }),
  of('PR-08', 'a probe above the water at rest', 'not judged', { 'pump.lowLevelCutOff': '20 ft' }),
  of('PR-46', 'a probe above the water at rest', 'not judged', { 'pump.lowLevelCutOff': '20 ft' }),
  of('PR-02', 'ten feet under the pumping level', 'ok', { ...held, 'pump.setting': '92 ft' }),
  of('PR-02', 'an inch less', 'warning', { ...held, ...noCutOff, 'pump.setting': '1103 in' }),
  of('PR-02', 'five feet without a cut-off', 'warning', { ...held, ...noCutOff, 'pump.setting': '87 ft' }),
  of('PR-02', 'under five feet without a cut-off', 'danger', { ...held, ...noCutOff, 'pump.setting': '86 ft' }),
  of('PR-02', 'at the pumping level', 'danger', { ...held, ...noCutOff, 'pump.setting': '82 ft' }),
  of('PR-02', 'the dry season counts', 'warning', {
    ...held,
    ...noCutOff,
    'pump.setting': '95 ft',
    'water.dryFall': '5 ft',
  }),
  of('PR-02', 'the strongest pump of that name draws the water deeper', 'warning', {
    ...noCutOff,
    'pump.setting': '110 ft',
  }),
  of('PR-02', 'a cut-off of which nobody said the depth, with the water near', 'depends', {
    ...held,
    'pump.setting': '91 ft',
  }),
  of('PR-02', 'a cut-off that holds the water up counts instead', 'ok', {
    ...held,
    'water.pumping.level': '150 ft',
    'pump.lowLevelCutOff': '138 ft',
  }),
  of('PR-02', 'a cut-off too near the intake', 'warning', {
    ...held,
    'water.pumping.level': '150 ft',
    'pump.lowLevelCutOff': '139 ft',
  }),
  of('PR-02', 'no drawdown known', 'depends', { ...noCutOff, 'water.pumping': { kind: 'yield only' } }),
  of('PR-02', 'no drawdown known, and a probe over the intake', 'ok', {
    'pump.lowLevelCutOff': '138 ft',
    'water.pumping': { kind: 'yield only' },
  }),
  of('PR-02', 'the intake above the water at rest, whatever else is unknown', 'danger', {
    'pump.setting': '39 ft',
    'water.pumping': undefined,
    'house.rise': undefined,
  }),
  of('PR-02', 'a dry-season level typed above today’s counts for nothing', 'danger', {
    'water.staticLevel': '145 ft',
    'water.staticLowest': '100 ft',
    'water.pumping': undefined,
  }),
  of('PR-02', 'a dry well', 'danger', { 'water.staticLevel': '240 ft', 'water.pumping': undefined }),
  of('PR-01', 'under the well’s own bottom', 'danger', { 'pump.setting': '199 ft', ...noFall }),
  of('PR-01', 'under a screen, in its sump', 'warning', { ...screened, 'pump.setting': '191 ft' }),
  of('PR-01', 'five feet off, under a screen', 'warning', { ...screened, 'pump.setting': '193.5 ft' }),
  of('PR-01', 'under five feet off, under a screen', 'danger', { ...screened, 'pump.setting': '194 ft' }),
  of('PR-02', 'an inch under five feet without a cut-off', 'danger', {
    ...held,
    ...noCutOff,
    'pump.setting': '1043 in',
  }),
  of('PR-02', 'a probe far under the water', 'ok', { ...held, 'pump.lowLevelCutOff': '138 ft' }),
  of('PR-02', 'eight feet of water, and a probe two feet over the intake', 'ok', {
    ...held,
    'water.pumping.level': '132 ft',
    'pump.lowLevelCutOff': '138 ft',
  }),
  of('PR-02', 'eight feet of water, and a probe nearer than that', 'warning', {
    ...held,
    'water.pumping.level': '132 ft',
    'pump.lowLevelCutOff': '138.1 ft',
  }),
  of('PR-02', 'four feet of water, and a probe nearer than that', 'warning', {
    ...held,
    'water.pumping.level': '136 ft',
    'pump.lowLevelCutOff': '138.5 ft',
  }),
  of('PR-02', 'a dry season as wet as today', 'ok', { ...held, ...noCutOff, 'water.staticLowest': '40 ft' }),
  of('PR-02', 'eight feet of water in a well that shows no drawdown', 'warning', {
    ...noFall,
    ...noCutOff,
    'pump.setting': '48 ft',
  }),
  of('PR-02', 'covered in the dry season too', 'ok', { ...held, ...noCutOff, 'water.dryFall': '5 ft' }),
  of('PR-02', 'a dry-season level typed above today’s moves no band', 'danger', {
    ...noCutOff,
    'water.staticLevel': '50 ft',
    'water.staticLowest': '45 ft',
    'pump.setting': '100 ft',
  }),
  of('PR-02', 'little water over a pump that brings too little as it is', 'warning', {
    ...eightGpm,
    ...noCutOff,
    'house.demand': '10.5 gpm',
    'water.pumping.level': '128 ft',
  }),
  of('PR-02', 'a probe at the water at rest', 'danger', { 'pump.lowLevelCutOff': '40 ft' }),
  of('PR-02', 'a probe above the water at rest, and the intake just under it', 'danger', {
    'pump.lowLevelCutOff': '20 ft',
    'pump.setting': '41 ft',
  }),
  of('PR-02', 'a probe over the water of the dry season', 'danger', {
    'pump.lowLevelCutOff': '50 ft',
    'water.staticLowest': '52 ft',
  }),
  of('PR-02', 'an intake over the water of the dry season', 'danger', {
    'pump.setting': '50 ft',
    'water.staticLowest': '52 ft',
  }),
  of('PR-02', 'a pump short of pressure, over little water', 'warning', {
    ...held,
    ...noCutOff,
    'pump.setting': '88 ft',
    'house.cutOut': '130 psi',
    'house.cutIn': '110 psi',
  }),
  of('PR-02', 'a well that gives less than the pump takes', 'danger', {
    ...noCutOff,
    'well.yield': '2 gpm',
    'water.pumping': { kind: 'test', flow: '2 gpm', drawdown: '40 ft', after: '4 h' },
  }),
  of('PR-02', 'a well that gives less, and a cut-off of which nobody said the depth', 'depends', {
    'well.yield': '2 gpm',
    'water.pumping': { kind: 'test', flow: '2 gpm', drawdown: '40 ft', after: '4 h' },
  }),
  of('PR-02', 'a well that gives less, and a probe', 'ok', {
    'well.yield': '2 gpm',
    'water.pumping': { kind: 'test', flow: '2 gpm', drawdown: '40 ft', after: '4 h' },
    'pump.lowLevelCutOff': '135 ft',
  }),
  of('PR-02', 'a yield alone under what the pump takes, without a cut-off', 'danger', {
    ...noCutOff,
    'well.yield': '1 gpm',
    'water.pumping': undefined,
  }),
  of('PR-02', 'nobody knows the level, and the pump hangs just under the water at rest', 'danger', {
    ...levelUnknown,
    ...noCutOff,
    'pump.setting': '46 ft',
  }),
  of('PR-02', 'nobody knows the level, nor the depth of a cut-off', 'depends', levelUnknown),
  of('PR-02', 'a probe above the water at rest, and no room for one over the intake', 'danger', {
    ...seal,
    'water.staticLevel': '0.5 ft',
    'water.pumping': { kind: 'level', level: '1 ft', flow: '10 gpm' },
    'pump.setting': '1.9 ft',
    'pump.lowLevelCutOff': '0.4 ft',
  }),
  of('PR-02', 'nobody knows the level, and a probe hangs too near the intake', 'depends', {
    ...levelUnknown,
    'pump.lowLevelCutOff': '139 ft',
  }),
  of('PR-02', 'nobody knows the level, which may fall from ten feet over the intake', 'depends', {
    ...levelUnknown,
    ...noCutOff,
    'water.staticLevel': '130 ft',
  }),
  of('PR-02', 'nobody knows the level, which may fall from nine feet over the intake', 'warning', {
    ...levelUnknown,
    ...noCutOff,
    'water.staticLevel': '131 ft',
  }),
  of('PR-02', 'nobody knows the level, and a probe holds the water four feet under its rest', 'ok', {
    ...levelUnknown,
    'water.staticLevel': '136 ft',
    'pump.lowLevelCutOff': '138 ft',
  }),
  of('PR-02', 'nobody knows the level, four feet at rest, and a probe too near', 'warning', {
    ...levelUnknown,
    'water.staticLevel': '136 ft',
    'pump.lowLevelCutOff': '139 ft',
  }),
  of('PR-02', 'a pump hung below its lift, its water ending above it', 'ok', belowItsLift),
  of('PR-02', 'the same without a probe', 'ok', { ...belowItsLift, ...noCutOff }),
  of('PR-02', 'more taken than the well is said to give, whatever its test says', 'danger', {
    ...noCutOff,
    'well.yield': '5 gpm',
  }),
  // Drawn down by any pump: its store is used, up to where the pump lifts from, over a probe.
  of('PR-02', 'a poor well, and room to hang deeper', 'danger', { ...poor, ...noCutOff }),
  of('PR-02', 'a poor well, and the pump deeper than it lifts from', 'danger', {
    ...poor,
    ...noCutOff,
    'pump.setting': '280 ft',
  }),
  of('PR-02', 'a poor well without room for a store', 'danger', {
    ...poor,
    ...noCutOff,
    'well.depth': '60 ft',
    'well.inflows': undefined,
    'well.casing.bottom': '30 ft',
    'pump.setting': '45 ft',
  }),
  of('PR-03', 'a screen of which nobody said the ends', 'not judged', {
    ...screened,
    'well.intake': { kind: 'screen', diameter: '5 in' },
  }),
  of('PR-03', 'nobody said how the water comes in', 'not judged', { 'well.intake': {} }),
  of('PR-03', 'a dug well', 'not judged', { 'well.intake': { kind: 'dug', diameter: '4 ft' } }),
  of('PR-03', 'two screens, under the upper of them', 'danger', {
    ...screened,
    ...noShroud,
    'pump.setting': '149 ft',
    'well.intake': {
      kind: 'screen',
      diameter: '5 in',
      screens: [
        { top: '150 ft', bottom: '165 ft', openArea: '10 %' },
        { top: '175 ft', bottom: '190 ft', openArea: '10 %' },
      ],
    },
  }),
  of('PR-02', 'static level unknown', 'not judged', { 'water.staticLevel': 'unknown' }),
  of('PR-03', 'the motor ends where the screen begins', 'ok', { ...screened, 'pump.setting': '148.5 ft' }),
  of('PR-03', 'an inch deeper, in a shroud', 'warning', { ...screened, 'pump.setting': '1783 in' }),
  of('PR-03', 'an inch deeper, bare', 'danger', { ...screened, ...noShroud, 'pump.setting': '1783 in' }),
  of('PR-03', 'a well without a screen', 'not judged', {}),
  of('PR-03', 'among the openings of a liner in rock', 'not judged', { ...perforated, ...noShroud }),
  of('PR-03', 'among the openings of the same pipe in sand', 'danger', {
    ...perforated,
    ...noShroud,
    'well.layers': [{ material: 'sand', bottom: '200 ft' }],
  }),
  of('PR-04', 'water five feet above the screen', 'ok', { ...screened, ...held, 'water.pumping.level': '145 ft' }),
  of('PR-04', 'a foot less', 'warning', {
    ...screened,
    ...held,
    'pump.setting': '160 ft',
    'water.pumping.level': '146 ft',
  }),
  of('PR-04', 'below the top of the screen', 'danger', {
    ...screened,
    ...held,
    'pump.setting': '165 ft',
    'water.pumping.level': '151 ft',
  }),
  of('PR-04', 'at the top of the screen', 'warning', {
    ...screened,
    ...held,
    'pump.setting': '165 ft',
    'water.pumping.level': '150 ft',
  }),
  of('PR-04', 'level unknown, the water at rest three feet above the screen', 'warning', {
    ...screened,
    ...levelUnknown,
    'water.staticLevel': '147 ft',
    'pump.setting': '165 ft',
  }),
  of('PR-04', 'level unknown, the water at rest in the screen', 'danger', {
    ...screened,
    ...levelUnknown,
    'water.staticLevel': '152 ft',
    'pump.setting': '165 ft',
  }),
  of('PR-04', 'a screen of which nobody said the ends', 'not judged', {
    ...screened,
    'well.intake': { kind: 'screen', diameter: '5 in' },
  }),
  of('PR-04', 'above every inflow in rock', 'ok', { ...held, 'water.pumping.level': '130 ft' }),
  of('PR-04', 'a minor inflow uncovered', 'note', { ...held, 'water.pumping.level': '131 ft' }),
  of('PR-04', 'an inflow of 32 % uncovered', 'note', {
    ...held,
    'water.pumping.level': '131 ft',
    'well.inflows.0.share': '32 %',
    'well.inflows.1.share': '68 %',
  }),
  of('PR-04', 'an inflow of 35 % uncovered', 'warning', {
    ...held,
    'water.pumping.level': '131 ft',
    'well.inflows.0.share': '35 %',
    'well.inflows.1.share': '65 %',
  }),
  of('PR-04', 'two uncovered, and a share of one unknown', 'warning', {
    ...held,
    'water.pumping.level': '131 ft',
    'well.inflows': [{ depth: '100 ft' }, { depth: '120 ft', share: '10 %' }, { depth: '175 ft', share: '70 %' }],
  }),
  of('PR-04', 'a minor inflow above the water at rest', 'note', { ...held, 'well.inflows.0.depth': '39 ft' }),
  of('PR-04', 'the main inflow above the water at rest', 'warning', {
    ...held,
    'well.inflows.0.depth': '39 ft',
    'well.inflows.0.share': '70 %',
    'well.inflows.1.share': '30 %',
  }),
  of('PR-04', 'an inflow above the water at rest, and one that pumping uncovers', 'note', {
    ...held,
    'water.pumping.level': '131 ft',
    'well.inflows': [
      { depth: '39 ft', share: '10 %' },
      { depth: '130 ft', share: '20 %' },
      { depth: '175 ft', share: '70 %' },
    ],
  }),
  of('PR-04', 'a well that lives on its store, guarded', 'note', twoGpm),
  of('PR-04', 'the same, with nothing to stop the pump', 'note', { ...twoGpm, ...noCutOff }),
  of('PR-04', 'nobody said where the water comes in, nor how deep the casing reaches', 'not judged', {
    'well.inflows': undefined,
    'well.casing.bottom': undefined,
  }),
  of('PR-04', 'nobody said where the water comes in, nor how far it falls', 'not judged', {
    ...levelUnknown,
    'well.inflows': undefined,
  }),
  of('PR-04', 'nobody said where the water comes in, and the casing reaches the bottom', 'not judged', {
    'well.inflows': undefined,
    'well.casing.bottom': '200 ft',
  }),
  of('PR-04', 'nobody said how the water comes in', 'not judged', { 'well.inflows': undefined, 'well.intake': {} }),
  of('PR-04', 'the main inflow uncovered', 'warning', {
    ...held,
    'water.pumping.level': '131 ft',
    'well.inflows.0.share': '40 %',
    'well.inflows.1.share': '60 %',
  }),
  of('PR-04', 'shares unknown', 'warning', {
    ...held,
    'water.pumping.level': '131 ft',
    'well.inflows.0.share': undefined,
  }),
  of('PR-04', 'the pump takes more than the test did', 'note', { 'water.pumping.level': '120 ft' }),
  of('PR-04', 'level unknown, the pump hangs below an inflow', 'depends', levelUnknown),
  of('PR-04', 'level unknown, the pump hangs above every inflow', 'ok', { ...levelUnknown, 'pump.setting': '130 ft' }),
  of('PR-04', 'level unknown, an inflow above the water at rest', 'warning', {
    ...levelUnknown,
    'pump.setting': '129 ft',
    'well.inflows.0.depth': '39 ft',
    'well.inflows.0.share': '70 %',
    'well.inflows.1.share': '30 %',
  }),
  of('PR-04', 'level unknown, the pump hangs five feet above the screen', 'ok', {
    ...screened,
    ...levelUnknown,
    'pump.setting': '145 ft',
  }),
  of('PR-04', 'level unknown, the pump hangs lower', 'depends', {
    ...screened,
    ...levelUnknown,
    'pump.setting': '146 ft',
  }),
  of('PR-04', 'inflows unknown, water above the end of the casing', 'ok', {
    ...held,
    'well.inflows': undefined,
    'water.pumping.level': '60 ft',
  }),
  of('PR-04', 'inflows unknown, water below it', 'not judged', {
    ...held,
    'well.inflows': undefined,
    'water.pumping.level': '61 ft',
  }),
  of('PR-05', 'the lowest inflow at the motor’s end', 'ok', { ...noShroud, 'pump.setting': '173.5 ft' }),
  of('PR-05', 'below it under 3 hp', 'ok', { ...noShroud, 'pump.setting': '174 ft', 'pump.power': '2 hp' }),
  of('PR-05', 'below it from 3 hp', 'warning', { ...noShroud, 'pump.setting': '174 ft', 'pump.power': '3 hp' }),
  of('PR-05', 'below it from 2.2 kW, which is 3 hp', 'warning', {
    ...noShroud,
    'pump.setting': '174 ft',
    'pump.power': '2.2 kW',
  }),
  of('PR-05', 'below it with the power unknown', 'warning', {
    ...noShroud,
    'pump.setting': '174 ft',
    'pump.power': undefined,
  }),
  of('PR-05', 'below it while nobody knows the pumping level', 'warning', {
    ...noShroud,
    ...levelUnknown,
    'pump.setting': '174 ft',
    'pump.power': '3 hp',
  }),
  of('PR-05', 'below it in a shroud', 'ok', { 'pump.setting': '180 ft', 'pump.power': '3 hp' }),
  of('PR-05', 'in the screen, where water enters above the motor', 'not judged', {
    ...noShroud,
    ...screened,
    'pump.setting': '150 ft',
  }),
  of('PR-05', 'in the screen in a sleeve', 'ok', { ...screened, 'pump.setting': '150 ft', 'pump.power': '3 hp' }),
  of('PR-05', 'inflows unknown, 3 hp in the hole', 'not judged', {
    ...noShroud,
    'well.inflows': undefined,
    'pump.power': '3 hp',
  }),
  of('PR-05', 'inflows unknown, 3 hp in the casing', 'ok', {
    ...noShroud,
    'well.inflows': undefined,
    'pump.power': '3 hp',
    'pump.setting': '57.5 ft',
  }),
  of('PR-05', 'inflows unknown, a small motor in the hole', 'ok', { ...noShroud, 'well.inflows': undefined }),
  of('PR-05', '3 hp among the openings of a liner in rock, below the inflows', 'warning', {
    ...perforated,
    ...noShroud,
    'pump.power': '3 hp',
    'pump.setting': '176 ft',
  }),
  of('PR-05', '3 hp above the openings of a liner in rock', 'ok', {
    ...perforated,
    ...noShroud,
    'well.inflows': undefined,
    'pump.power': '3 hp',
    'pump.setting': '107.5 ft',
  }),
  of('PR-05', '3 hp above the openings of a liner that begin under its blank end', 'ok', {
    ...perforated,
    ...noShroud,
    'well.inflows': undefined,
    'well.intake.screens.0.top': '120 ft',
    'pump.power': '3 hp',
    'pump.setting': '117.5 ft',
  }),
  of('PR-05', '3 hp in a casing down to the bottom: nobody said where water enters', 'not judged', {
    ...noShroud,
    'well.inflows': undefined,
    'well.casing.bottom': '200 ft',
    'pump.power': '3 hp',
  }),
  of('PR-05', '3 hp, and a list of inflows with none in it', 'not judged', {
    ...noShroud,
    'well.inflows': [],
    'pump.power': '3 hp',
  }),
  of('PR-05', '3 hp over a screen', 'ok', { ...screened, ...noShroud, 'pump.power': '3 hp' }),
  of('PR-05', '3 hp over a screen of which nobody said the ends', 'not judged', {
    ...screened,
    ...noShroud,
    'pump.power': '3 hp',
    'pump.setting': '160 ft',
    'well.intake': { kind: 'screen', diameter: '5 in' },
  }),
  of('PR-05', '3 hp, and nobody said how the water comes in', 'not judged', {
    ...noShroud,
    'pump.power': '3 hp',
    'well.inflows': undefined,
    'well.intake': {},
  }),
  of('PR-06', '3 hp in a hole of unknown width', 'not judged', {
    ...noShroud,
    'pump.power': '3 hp',
    'well.intake.diameter': undefined,
  }),
  of('PR-06', 'a small motor in a hole of unknown width', 'ok', { ...noShroud, 'well.intake.diameter': undefined }),
  of('PR-06', 'a quarter foot a second', 'ok', { 'pump.power': '3 hp' }, { velocityPastMotor: feet(0.25) }),
  of('PR-06', 'in the screen, where nobody knows how much passes the motor', 'not judged', {
    ...noShroud,
    ...screened,
    'pump.setting': '150 ft',
  }),
  of('PR-06', 'in the screen in a sleeve', 'ok', { ...screened, 'pump.setting': '150 ft', 'pump.power': '3 hp' }),
  of('PR-06', '3 hp, and nobody knows what the house wants', 'not judged', {
    ...noShroud,
    'house.demand': 'unknown',
    'pump.power': '3 hp',
  }),
  of('PR-06', 'slower', 'note', { 'pump.power': '3 hp' }, { velocityPastMotor: feet(0.249) }),
  of('PR-06', 'slower under 3 hp', 'ok', { 'pump.power': '2 hp' }, { velocityPastMotor: feet(0.1) }),
  of(
    'PR-06',
    'slower with the power unknown',
    'not judged',
    { 'pump.power': undefined },
    { velocityPastMotor: feet(0.1) },
  ),
  of(
    'PR-06',
    'a 6 in motor wants half a foot a second',
    'note',
    { 'pump.motorDiameter': '5.5 in', 'pump.power': '5 hp' },
    { velocityPastMotor: feet(0.499) },
  ),
  of('PR-07', 'as much as the yield', 'ok', {}, { operatingFlowAtCutInMost: gpm(15) }),
  of('PR-07', 'more, with a cut-off', 'note', {}, { operatingFlowAtCutInMost: gpm(15.1) }),
  of('PR-07', 'more, without', 'warning', noCutOff, { operatingFlowAtCutInMost: gpm(15.1) }),
  of(
    'PR-07',
    'half as much again as was tested, with water to spare',
    'ok',
    { ...noCutOff, 'well.yield': '10 gpm' },
    {
      operatingFlowAtCutInMost: gpm(15),
    },
  ),
  of(
    'PR-07',
    'more than that',
    'warning',
    { ...noCutOff, 'well.yield': '10 gpm' },
    {
      operatingFlowAtCutInMost: gpm(15.1),
    },
  ),
  of(
    'PR-07',
    'within the test, and little water left',
    'warning',
    { ...noCutOff, 'well.yield': '10 gpm', 'pump.setting': '91 ft' },
    {
      operatingFlowAtCutInMost: gpm(15),
    },
  ),
  of('PR-07', 'held back by a flow-limiting valve', 'ok', { 'pump.flowLimiter': '15 gpm' }),
  of('PR-07', 'a house that wants more than the well gives, unguarded', 'warning', {
    ...noCutOff,
    'well.yield': '5 gpm',
  }),
  of('PR-07', 'the same under a valve of which nobody said the flow', 'note', {
    ...noCutOff,
    'well.yield': '5 gpm',
    'pump.flowLimiter': true,
  }),
  of('PR-07', 'into an open tank', 'warning', { ...noCutOff, 'house.kind': 'open tank', 'well.yield': '5 gpm' }),
  of('PR-07', 'a house that gets along with a valve', 'warning', {
    ...noCutOff,
    'well.yield': '5.9 gpm',
    'house.demand': '5 gpm',
  }),
  of('PR-07', 'a yield under the smallest valve', 'warning', {
    ...noCutOff,
    'well.yield': '0.3 gpm',
    'house.demand': 'unknown',
  }),
  of('PR-07', 'a valve in litres a minute', 'warning', {
    ...noCutOff,
    units: 'metric',
    'well.yield': '22.5 L/min',
    'house.demand': '20 L/min',
  }),
  of('PR-07', 'a valve in cubic metres an hour', 'warning', {
    ...noCutOff,
    units: 'metric',
    'well.yield': '1.35 m3/h',
    'house.demand': '1.2 m3/h',
  }),
  of('PR-07', 'a valve in litres a second', 'warning', {
    ...noCutOff,
    units: 'metric',
    'well.yield': '0.375 L/s',
    'house.demand': '0.3 L/s',
  }),
  of('PR-07', 'a valve in gallons an hour', 'warning', {
    ...noCutOff,
    'well.yield': '350 gph',
    'house.demand': '300 gph',
  }),
  of('PR-07', 'a valve in a metric plan whose demand was typed in gallons', 'warning', {
    ...noCutOff,
    units: 'metric',
    'well.yield': '22.5 L/min',
    'house.demand': '5 gpm',
  }),
  of('PR-08', 'a probe deeper than the pump lifts from', 'not judged', belowItsLift),
  of('PR-08', 'level unknown, and a probe deeper than the pump lifts from', 'not judged', {
    ...levelUnknown,
    'pump.power': '1/2 hp',
    'pump.lowLevelCutOff': '138 ft',
    'house.rise': '120 ft',
  }),
  of('PR-08', 'level unknown, and a probe', 'ok', { ...levelUnknown, 'pump.lowLevelCutOff': '138 ft' }),
  of('PR-08', 'level unknown, and a cut-off of which nobody said the depth', 'depends', levelUnknown),
  of('PR-08', 'level unknown, and nothing', 'depends', { ...levelUnknown, ...noCutOff }),
  // The test was at 10 gpm and 2 hp takes over one and a half times that, from 40 ft over the intake.
  of('PR-08', 'water to spare, and more taken than the well gives', 'note', {
    ...noCutOff,
    'well.yield': '10 gpm',
    'pump.power': '2 hp',
  }),
  of('PR-08', 'a pump hung under the well’s own bottom', 'note', {
    ...noCutOff,
    'pump.setting': '205 ft',
    'well.yield': '2 gpm',
    'water.pumping': { kind: 'test', flow: '2 gpm', drawdown: '40 ft', after: '4 h' },
  }),
  of('PR-08', 'no room for a probe between ground and intake', 'note', {
    ...seal,
    'water.staticLevel': '0.5 ft',
    'water.pumping': { kind: 'level', level: '1 ft', flow: '10 gpm' },
    'pump.setting': '1.9 ft',
    'pump.lowLevelCutOff': '1 ft',
  }),
  of('PR-07', 'a house that wants more than the well gives, guarded', 'ok', {
    'well.yield': '8 gpm',
    'house.demand': '10 gpm',
  }),
  of('PR-07', 'blown with air: enough of all that came, too much of half of it', 'depends', {
    ...noCutOff,
    'well.yield': '18 gpm',
    'well.yieldFrom': 'air lift',
    'water.pumping': { kind: 'yield only' },
  }),
  of(
    'PR-07',
    'no yield told, and a step test: its largest flow counts',
    'ok',
    { 'well.yield': undefined, 'water.pumping': steps('6 h') },
    { operatingFlowAtCutInMost: gpm(10) },
  ),
  of(
    'PR-07',
    'more than three halves of the largest step',
    'warning',
    { ...noCutOff, 'well.yield': undefined, 'water.pumping': steps('6 h') },
    { operatingFlowAtCutInMost: gpm(15.1) },
  ),
  of(
    'PR-07',
    'more than the yield, in a metric plan',
    'warning',
    { ...noCutOff, units: 'metric', 'house.demand': '38 L/min', 'well.yield': '57 L/min' },
    { operatingFlowAtCutInMost: gpm(20) },
  ),
  of(
    'PR-07',
    'more than the yield, in a plan in cubic metres an hour',
    'warning',
    { ...noCutOff, units: 'metric', 'house.demand': '2.27 m3/h', 'well.yield': '3.4 m3/h' },
    { operatingFlowAtCutInMost: gpm(20) },
  ),
  of(
    'PR-07',
    'a yield that the house just gets along with',
    'warning',
    { ...noCutOff, 'well.yield': '10 gpm' },
    { operatingFlowAtCutInMost: gpm(20) },
  ),
  of('PR-07', 'nobody knows the level, and the pump takes more from above', 'depends', {
    ...levelUnknown,
    ...noCutOff,
    'well.yield': '14.5 gpm',
  }),
  of('PR-08', 'more taken than flows in, far under the water', 'note', {
    ...noCutOff,
    'well.yield': '8 gpm',
    'water.pumping': test('6 h'),
    'pump.setting': '190 ft',
  }),
  of('PR-08', 'the water falls to the intake', 'note', {
    ...noCutOff,
    'well.yield': '1 gpm',
    'water.pumping': undefined,
  }),
  of('PR-53', 'an aquifer’s figures', 'ok', {
    'water.pumping': { kind: 'aquifer', transmissivity: '5 m2/d', storativity: '0.0001', after: '24 h' },
  }),
  of('PR-53', 'a yield alone, and nothing stops the pump', 'warning', {
    ...levelUnknown,
    'well.yield': '15 gpm',
    'pump.lowLevelCutOff': undefined,
  }),
  of('PR-53', 'nothing told but the water at rest', 'warning', {
    'water.pumping': undefined,
    'well.yield': undefined,
    'pump.lowLevelCutOff': undefined,
  }),
  of('PR-53', 'drawn down to its probe whatever the drawdown', 'ok', {
    'water.pumping': undefined,
    'well.yield': '1 gpm',
    'pump.lowLevelCutOff': '135 ft',
  }),
  of('PR-07', 'yield unknown', 'not judged', { 'well.yield': undefined, 'water.pumping': undefined }),
  of('PR-08', 'twenty feet of water without a cut-off', 'ok', { ...held, ...noCutOff, 'pump.setting': '102 ft' }),
  of('PR-08', 'less', 'note', { ...held, ...noCutOff, 'pump.setting': '101 ft' }),
  of('PR-08', 'less, with a cut-off', 'ok', { ...held, 'pump.setting': '101 ft' }),
  of('PR-08', 'a cut-off of which nobody said the depth, with the water near', 'depends', {
    ...held,
    'pump.setting': '91 ft',
  }),
  of('PR-08', 'no drawdown known and no cut-off', 'depends', { ...noCutOff, 'water.pumping': { kind: 'yield only' } }),
  of('PR-08', 'a probe two feet above the intake', 'ok', { 'pump.lowLevelCutOff': '138 ft' }),
  of('PR-08', 'a probe lower', 'note', { 'pump.lowLevelCutOff': '1657 in' }),
  of('PR-08', 'a probe below the intake', 'warning', { 'pump.lowLevelCutOff': '145 ft' }),
  of('PR-02', 'a probe below the intake guards nothing', 'danger', {
    ...held,
    'pump.setting': '86 ft',
    'pump.lowLevelCutOff': '90 ft',
  }),
  of('PR-09', 'a valve 25 ft above the pump', 'ok', { 'string.checkValves': ['25 ft'] }),
  of('PR-09', 'higher', 'warning', { 'string.checkValves': ['301 in'] }),
  of('PR-09', 'no valve anywhere', 'danger', { 'string.checkValves': [] }),
  of('PR-09', 'one inside the pump is enough', 'ok', { 'string.checkValves': [], 'pump.checkValveInside': true }),
  // Discharge at 138.5 ft, pumping level at 82 ft: 81.5 ft up is 25 ft above the water.
  of('PR-09', 'an upper valve 24.5 ft above the water', 'ok', { ...held, 'string.checkValves': ['0 ft', '81 ft'] }),
  of('PR-09', 'an upper valve higher', 'warning', { ...held, 'string.checkValves': ['0 ft', '82 ft'] }),
  of('PR-09', 'level unknown, one valve at the pump', 'ok', levelUnknown),
  of('PR-09', 'level unknown, an upper valve under the water at rest', 'depends', {
    ...levelUnknown,
    'string.checkValves': ['0 ft', '81 ft'],
  }),
  // At 123 ft it hangs at 15.5 ft, 24.5 ft over the water at rest.
  of('PR-09', 'level unknown, an upper valve too high even at rest', 'warning', {
    ...levelUnknown,
    'string.checkValves': ['0 ft', '124 ft'],
  }),
  of('PR-09', 'thin air holds up less', 'warning', {
    ...held,
    'string.checkValves': ['0 ft', '81 ft'],
    'site.altitude': '5000 ft',
  }),
  of('PR-09', 'three hundred feet on one valve', 'ok', {}, { dropPipeCutLength: feet(300) }),
  of('PR-09', 'more', 'note', {}, { dropPipeCutLength: feet(301) }),
  of('PR-09', 'level unknown, one valve nearly as high as it may be', 'ok', {
    ...levelUnknown,
    'string.checkValves': ['24 ft'],
  }),
  of('PR-09', 'level unknown, an upper valve a little over the pump’s own height', 'depends', {
    ...levelUnknown,
    'string.checkValves': ['0 ft', '24 ft'],
  }),
  of('PR-10', 'a valve at the tank of a well with a seal', 'warning', {
    ...seal,
    'string.valveBetweenTopAndTank': true,
  }),
  of('PR-10', 'no valve beyond the top', 'ok', {}),
  of('PR-10', 'a valve at the tank', 'warning', { 'string.valveBetweenTopAndTank': true }),
  of('PR-11', 'arrow up', 'ok', {}),
  of('PR-11', 'arrow down', 'danger', { 'string.arrow': 'down' }),
  of('PR-11', 'no valve that has an arrow', 'not judged', {
    'string.checkValves': [],
    'pump.checkValveInside': true,
  }),
  of('PR-12', 'four feet up', 'ok', { 'string.torqueArrestor': '4 ft', 'string.splices': [] }),
  of('PR-12', 'higher', 'warning', { 'string.torqueArrestor': '49 in' }),
  of('PR-12', 'over half a foot up', 'ok', { 'string.torqueArrestor': '7 in' }),
  of('PR-12', 'half a foot up', 'warning', { 'string.torqueArrestor': '6 in' }),
  of('PR-12', 'none on plastic pipe', 'warning', { 'string.torqueArrestor': 'none' }),
  of('PR-12', 'none on polyethylene under 1 hp', 'ok', { 'string.torqueArrestor': 'none', 'pump.power': '3/4 hp' }),
  of('PR-12', 'none on polyethylene from 0.75 kW, which is 1 hp', 'warning', {
    'string.torqueArrestor': 'none',
    'pump.power': '0.75 kW',
  }),
  of('PR-12', 'none on polyethylene, power unknown', 'warning', {
    'string.torqueArrestor': 'none',
    'pump.power': undefined,
  }),
  of('PR-12', 'none on threaded steel', 'note', {
    'string.torqueArrestor': 'none',
    dropPipe: { material: 'galvanized steel', size: '1 in' },
  }),
  of('PR-13', 'a tie every 20 ft', 'ok', { 'string.ties': '20 ft' }),
  of('PR-13', 'fewer', 'warning', { 'string.ties': '21 ft' }),
  of('PR-13', 'every 5 ft', 'ok', { 'string.ties': '5 ft' }),
  of('PR-13', 'more', 'note', { 'string.ties': '4 ft' }),
  of('PR-12', 'four feet up, inside the casing', 'ok', {
    'pump.setting': '59.5 ft',
    'string.torqueArrestor': '4 ft',
    'string.splices': [],
  }),
  of('PR-12', 'in a liner under the open hole', 'ok', narrowLiner('4.5 in')),
  of('PR-12', 'too high, and all that is right is taken', 'warning', {
    'string.torqueArrestor': '8 ft',
    'string.splices': ['1 ft', '2 ft', '3 ft', '4 ft', '5 ft'],
  }),
  of('PR-13', 'too few, and a valve at every usual spacing', 'warning', {
    'string.ties': '30 ft',
    'string.checkValves': ['0 ft', '7 ft', '8 ft', '9 ft', '10 ft', '11 ft', '12 ft'],
  }),
  of('PR-12', 'none on threaded PVC', 'warning', {
    'string.torqueArrestor': 'none',
    dropPipe: { material: 'PVC', size: '1 in', ratio: 'schedule 80' },
  }),
  of('PR-12', 'none on threaded PVC under a small pump', 'warning', {
    'string.torqueArrestor': 'none',
    'pump.power': '1/2 hp',
    dropPipe: { material: 'PVC', size: '1 in', ratio: 'schedule 80' },
  }),
  of('PR-14', 'fewer, in a metric plan', 'note', { units: 'metric', 'string.guards': '51 ft' }),
  of('PR-64', 'less, where frost and its margin just come to a foot', 'not judged', {
    'site.frostDepth': '6 in',
    'site.frostMargin': '6 in',
    'top.depth': '11 in',
  }),
  of('PR-64', 'less, where they come to an inch under it', 'warning', {
    'site.frostDepth': '5 in',
    'site.frostMargin': '6 in',
    'top.depth': '11 in',
  }),
  of('PR-14', 'a guard every 50 ft', 'ok', { 'string.guards': '50 ft' }),
  of('PR-14', 'fewer', 'note', { 'string.guards': '51 ft' }),
  of('PR-14', 'none down to 300 ft', 'not judged', { 'string.guards': undefined }, { dropPipeCutLength: feet(300) }),
  of('PR-14', 'none beyond', 'note', { 'string.guards': undefined }, { dropPipeCutLength: feet(301) }),
  of('PR-15', 'one splice 5 ft up', 'ok', { 'string.splices': ['5 ft'] }),
  of('PR-15', 'higher', 'warning', { 'string.splices': ['61 in'] }),
  of('PR-15', 'at the discharge itself', 'warning', { 'string.splices': ['0 ft'] }),
  of('PR-15', 'two', 'warning', { 'string.splices': ['4 ft', '60 ft'] }),
  of('PR-15', 'none', 'ok', { 'string.splices': [] }),
  of('PR-15', 'in the arms of the arrestor', 'warning', { 'string.splices': ['2 ft'] }),
  of('PR-15', 'two, each at a right height', 'warning', { 'string.splices': ['3.5 ft', '4.5 ft'] }),
  of('PR-15', 'two, one of them in the arms of the arrestor', 'warning', { 'string.splices': ['2 ft', '4 ft'] }),
  of('PR-15', 'too high, in the arms of an arrestor that is too high itself', 'warning', {
    'string.splices': ['8 ft'],
    'string.torqueArrestor': '8 ft',
  }),
  of('PR-15', 'too high, and a valve at every right height', 'warning', {
    'string.splices': ['7 ft'],
    'string.checkValves': ['0 ft', '1.5 ft', '2.5 ft', '3.5 ft', '4.5 ft'],
  }),
  of('PR-16', 'no rope', 'ok', {}),
  of('PR-16', 'on the eye under a seal', 'ok', { ...seal, rope: { material: 'polypropylene', tied: 'casing hook' } }),
  of('PR-16', 'on a seal', 'warning', { ...seal, rope: { material: 'polypropylene', tied: 'cap' } }),
  of('PR-16', 'loose under a seal', 'warning', { ...seal, rope: { material: 'polypropylene', tied: 'loose' } }),
  of('PR-16', 'through a seal', 'danger', { ...seal, rope: { material: 'polypropylene', tied: 'through cap' } }),
  of('PR-16', 'strong enough or not: nobody knows the load', 'ok', {
    'pump.power': undefined,
    rope: { material: 'polypropylene', breakingStrength: '600 lbf' },
  }),
  of('PR-16', 'on a casing hook', 'ok', { rope: { material: 'polypropylene', tied: 'casing hook' } }),
  of('PR-16', 'on the cap', 'warning', { rope: { material: 'polypropylene', tied: 'cap' } }),
  of('PR-16', 'loose', 'warning', { rope: { material: 'polypropylene', tied: 'loose' } }),
  of('PR-16', 'through the cap', 'danger', { rope: { material: 'polypropylene', tied: 'through cap' } }),
  of(
    'PR-16',
    'knotted, 1.5 times the load',
    'ok',
    { rope: { material: 'polypropylene', breakingStrength: '600 lbf' } },
    { hangLoadDry: poundsForce(200) },
  ),
  of(
    'PR-16',
    'weaker',
    'warning',
    { rope: { material: 'polypropylene', breakingStrength: '599 lbf' } },
    { hangLoadDry: poundsForce(200) },
  ),
  of('PR-17', 'a pump of which nobody said the width, where its motor passes', 'not judged', {
    ...noShroud,
    'pump.diameter': undefined,
    'well.casing.insideDiameter': '4.02 in',
  }),
  of('PR-17', 'a pump of which nobody said the width, where not even its motor passes', 'danger', {
    ...noShroud,
    'pump.diameter': undefined,
    'well.casing.insideDiameter': '2.07 in',
  }),
  of('PR-17', 'a quarter inch free', 'ok', { ...noShroud, 'well.casing.insideDiameter': '4.15 in' }),
  of('PR-17', 'less', 'warning', { ...noShroud, 'well.casing.insideDiameter': '4.14 in' }),
  of('PR-17', 'a tenth of an inch free', 'warning', { ...noShroud, 'well.casing.insideDiameter': '4 in' }),
  of('PR-17', 'under a tenth', 'danger', { ...noShroud, 'well.casing.insideDiameter': '3.99 in' }),
  of('PR-17', 'a hole narrower than the casing', 'danger', { ...noShroud, 'well.intake.diameter': '3.99 in' }),
  of('PR-17', 'the same hole, not reached', 'ok', {
    ...noShroud,
    'well.intake.diameter': '3.99 in',
    'pump.setting': '58 ft',
  }),
  of('PR-17', 'in a hole of unknown width', 'not judged', { 'well.intake.diameter': undefined }),
  of('PR-17', 'in a casing of unknown width', 'not judged', { ...noShroud, 'well.casing.size': undefined }),
  of('PR-17', 'a pump of which nobody said the width, where its motor hardly passes', 'warning', {
    ...noShroud,
    'pump.diameter': undefined,
    'well.casing.insideDiameter': '3.95 in',
  }),
  // 4 in and a tenth of an inch of wall on each side are 4.2 in.
  of('PR-17', 'a sleeve that hardly passes, round a pump of which nobody said the width', 'warning', {
    'pump.diameter': undefined,
    'well.casing.insideDiameter': '4.3 in',
  }),
  of('PR-17', 'a sleeve that does not pass', 'danger', { 'well.casing.insideDiameter': '4.25 in' }),
  of('PR-17', 'a screen narrower than the casing', 'danger', {
    ...noShroud,
    ...screened,
    'well.intake.diameter': '3.99 in',
    'pump.setting': '160 ft',
  }),
  of('PR-17', 'blank pipe over the screen, narrower than the casing', 'danger', {
    ...noShroud,
    ...screened,
    'well.intake.diameter': '3.99 in',
    'well.intake.screens.0.top': '155 ft',
    'pump.setting': '152 ft',
  }),
  of('PR-17', 'a liner narrower than the casing', 'danger', { ...noShroud, ...narrowLiner('3.99 in') }),
  of('PR-17', 'a narrower hole under water that stands high', 'danger', {
    ...noShroud,
    'well.intake.diameter': '3.95 in',
    'water.staticLevel': '10 ft',
    'water.pumping.level': '20 ft',
  }),
  of('PR-17', 'a casing of unknown length in a hole of unknown width', 'not judged', {
    'well.casing.bottom': undefined,
    'well.intake.diameter': undefined,
  }),
  of('PR-17', 'a casing of unknown length in a hole with a quarter inch free', 'ok', {
    ...noShroud,
    'well.casing.bottom': undefined,
    'well.intake.diameter': '4.15 in',
  }),
  of('PR-17', 'a casing of unknown length in a hole with less', 'not judged', {
    ...noShroud,
    'well.casing.bottom': undefined,
    'well.intake.diameter': '4.14 in',
  }),
  of('PR-17', 'above a hole of unknown width', 'ok', { 'well.intake.diameter': undefined, 'pump.setting': '58 ft' }),
  of('PR-17', 'a casing of unknown length in a wide hole', 'ok', { 'well.casing.bottom': undefined }),
  of('PR-17', 'a narrow casing of unknown length', 'danger', {
    ...noShroud,
    'well.casing.bottom': undefined,
    'well.casing.insideDiameter': '3.99 in',
  }),
  of('PR-18', 'the rating at the shut-off pressure', 'ok', {}, { shutOffPressureAtPump: psi(200) }),
  of('PR-18', 'below it', 'danger', {}, { shutOffPressureAtPump: psi(201) }),
  // Polyethylene carries 90 % from 80 to 90 degF (PPI Handbook of Polyethylene Pipe, ch. 6).
  of(
    'PR-18',
    'warm water takes from the rating',
    'danger',
    { 'site.waterTemperature': '85 degF' },
    { shutOffPressureAtPump: psi(190) },
  ),
  of('PR-18', '160 psi pipe', 'ok', { 'dropPipe.rating': '160 psi' }, { shutOffPressureAtPump: psi(120) }),
  of('PR-18', 'less than 160 psi', 'warning', { 'dropPipe.rating': '125 psi' }, { shutOffPressureAtPump: psi(120) }),
  of('PR-18', 'PE of a rating that nobody said', 'not judged', { dropPipe: { material: 'PE', size: '1 in' } }),
  // 1 in schedule 80 PVC is rated 630 psi with plain ends, half of it threaded (ASTM D1785, appendix, from memory).
  of('PR-18', 'threaded PVC up to half its rating', 'ok', pvc(), { shutOffPressureAtPump: psi(315) }),
  of('PR-18', 'threaded PVC over half its rating', 'danger', pvc(), { shutOffPressureAtPump: psi(316) }),
  of('PR-18', 'schedule 40 PVC is never threaded', 'danger', pvc('schedule 40'), { shutOffPressureAtPump: psi(50) }),
  of('PR-18', 'PVC made for sockets is never threaded', 'danger', {
    dropPipe: { material: 'PVC', standard: 'ISO 1452-2', size: '32 mm' },
  }),
  of('PR-18', 'new steel pipe', 'ok', { dropPipe: { material: 'galvanized steel', size: '1 in' } }),
  of(
    'PR-18',
    'steel pipe under a pump that few wells have',
    'not judged',
    { dropPipe: { material: 'galvanized steel', size: '1 in' } },
    { shutOffPressureAtPump: psi(401) },
  ),
  of(
    'PR-18',
    '10 bar pipe in a metric plan',
    'ok',
    { units: 'metric', 'dropPipe.rating': '10 bar' },
    { shutOffPressureAtPump: psi(120) },
  ),
  of(
    'PR-18',
    'less than 10 bar in a metric plan',
    'warning',
    { units: 'metric', 'dropPipe.rating': '9.8 bar' },
    { shutOffPressureAtPump: psi(120) },
  ),
  of('PR-18', 'plastic insert fittings', 'danger', { 'string.fittings': 'plastic' }),
  of('PR-18', 'one clamp a joint', 'danger', { 'string.clampsPerJoint': 1 }),
  of('PR-18', 'nylon insert fittings', 'danger', { 'string.fittings': 'nylon' }),
  of('PR-18', 'plastic fittings, one clamp and screws that rust: all are set right', 'danger', {
    'string.fittings': 'plastic',
    'string.clampsPerJoint': 1,
    'string.clampScrew': 'carbon steel',
  }),
  of('PR-18', 'carbon-steel screws', 'warning', { 'string.clampScrew': 'carbon steel' }),
  // Frost 42 in and a margin of 6 in.
  of('PR-19', 'at the margin below frost', 'ok', { 'top.depth': '48 in' }),
  of('PR-19', 'an inch short of the margin', 'warning', { 'top.depth': '47 in' }),
  of('PR-19', 'at the frost depth', 'warning', { 'top.depth': '42 in' }),
  of('PR-19', 'an inch above it', 'danger', { 'top.depth': '41 in' }),
  of('PR-19', 'frost unknown', 'not judged', { 'site.frostDepth': undefined }),
  of('PR-19', 'no frost asks for no margin', 'ok', { 'site.frostDepth': '0 in', 'top.depth': '5 in' }),
  of('PR-19', 'below the deepest that the place’s climate allows', 'ok', climateOnly),
  of('PR-19', 'within what the place’s climate allows', 'depends', { ...climateOnly, 'top.depth': '49 in' }),
  of('PR-20', 'the water at rest unknown', 'not judged', { 'water.staticLevel': 'unknown' }),
  of('PR-20', 'a seal has no adapter', 'not judged', seal),
  of('PR-20', 'water over it, and no frost that keeps it down', 'danger', {
    'water.staticLevel': '3 ft',
    'site.frostDepth': '12 in',
  }),
  of('PR-20', 'water over it, and frost over that', 'danger', { 'water.staticLevel': '3 ft' }),
  of('PR-20', 'above the water', 'ok', { 'water.staticLevel': '61 in' }),
  of('PR-20', 'at the water', 'danger', { 'water.staticLevel': '60 in' }),
  of('PR-20', 'the highest level counts', 'danger', { 'water.staticHighest': '59 in' }),
  of('PR-20', 'made for submerged use', 'note', { 'water.staticLevel': '50 in', 'top.submergedUse': true }),
  of('PR-21', 'even the shortest reach hardly lets the pump pass', 'warning', {
    ...noShroud,
    'top.protrusion': undefined,
    'well.casing.insideDiameter': '4.6 in',
  }),
  of('PR-21', 'even the shortest reach keeps the sleeve', 'danger', {
    'top.protrusion': undefined,
    'well.casing.insideDiameter': '4.4 in',
  }),
  of('PR-21', 'an adapter that keeps the sleeve', 'danger', { 'well.casing.insideDiameter': '4.4 in' }),
  of('PR-21', 'an adapter that keeps the pump', 'danger', { ...noShroud, 'well.casing.insideDiameter': '4.4 in' }),
  of('PR-21', 'a quarter inch free beside the adapter', 'ok', {
    ...noShroud,
    'well.casing.insideDiameter': '5 in',
    'top.protrusion': '0.85 in',
  }),
  of('PR-21', 'less', 'warning', { ...noShroud, 'well.casing.insideDiameter': '5 in', 'top.protrusion': '0.86 in' }),
  of('PR-21', 'under a tenth', 'danger', {
    ...noShroud,
    'well.casing.insideDiameter': '5 in',
    'top.protrusion': '1.01 in',
  }),
  // Adapters stand 0.5 to 1.25 in into their casing: common practice, no source.
  of('PR-21', 'reach unknown, room for any', 'ok', {
    'top.protrusion': undefined,
    'well.casing.insideDiameter': '5.7 in',
  }),
  of('PR-21', 'reach unknown, room for some', 'depends', { 'top.protrusion': undefined }),
  of('PR-21', 'reach unknown, room for none', 'danger', {
    ...noShroud,
    'top.protrusion': undefined,
    'well.casing.insideDiameter': '4.45 in',
  }),
  of('PR-21', '0.17 in to spare in a 4 in casing', 'warning', {
    'pump.shroudDiameter': undefined,
    'well.casing.insideDiameter': '4.07 in',
    'pump.diameter': '3.2 in',
    'top.protrusion': '0.7 in',
  }),
  of('PR-23', '12 in above the ground', 'ok', {}),
  of('PR-23', 'less', 'danger', { 'well.casing.height': '11 in' }),
  of('PR-23', 'the local figure counts', 'danger', { 'site.casingHeightRequired': '18 in' }),
  of('PR-24', '2 ft above the flood', 'ok', { 'site.floodHeight': '-12 in' }),
  of('PR-24', 'less', 'danger', { 'site.floodHeight': '-11 in' }),
  of('PR-24', 'flood unknown', 'not judged', { 'site.floodHeight': undefined }),
  of('PR-26', 'no pit', 'ok', {}),
  of('PR-26', 'a pit', 'danger', { 'well.inPit': true }),
  of('PR-26', 'nobody said', 'not judged', { 'well.inPit': undefined }),
  // pi x 5 in x 20 ft x 10 % is 2.618 ft2 open, half of it counted: 0.1 ft/s lets 58.75 gpm in.
  of('PR-37', 'a tenth of a foot a second', 'ok', screened, { operatingFlowAtCutIn: gpm(58.7) }),
  of('PR-37', 'faster', 'warning', screened, { operatingFlowAtCutIn: gpm(58.8) }),
  of('PR-37', 'the openings of a liner in rock', 'not judged', perforated, { operatingFlowAtCutIn: gpm(1000) }),
  of('PR-37', 'open area unknown', 'not judged', { ...screened, 'well.intake.screens.0.openArea': undefined }),
  of('PR-35', 'casing to 20 ft', 'ok', { 'well.casing.bottom': '20 ft' }),
  of('PR-35', 'casing an inch less', 'note', { 'well.casing.bottom': '239 in' }),
  of('PR-35', 'grout to 20 ft', 'ok', { 'well.grout': { bottom: '20 ft' } }),
  of('PR-35', 'grout that ends sooner than the casing', 'note', { 'well.grout': { bottom: '19 ft' } }),
  of('PR-35', 'a short casing grouted to its end', 'note', {
    'well.casing.bottom': '19 ft',
    'well.grout': { bottom: '19 ft' },
  }),
  of('PR-35', 'a casing cut off level with the ground', 'ok', { 'well.casing.height': '0 in' }),
  of('PR-35', 'two casings from the top: the longer one counts', 'ok', {
    'well.casing': undefined,
    'well.casings': [
      { material: 'steel', size: '8 in', bottom: '60 ft', height: '12 in' },
      { material: 'PVC', size: '5 in', bottom: '15 ft', height: '12 in' },
    ],
  }),
  of('PR-35', 'a liner hung lower seals nothing', 'note', {
    ...perforated,
    'well.casings.0.bottom': '19 ft',
    'well.casings.1.top': '15 ft',
  }),
  of('PR-35', 'casing of unknown length', 'not judged', { 'well.casing.bottom': undefined }),
  // The casing ends at 60 ft.
  of('PR-36', 'five feet into rock', 'ok', { 'well.layers': layers('clay', '55 ft', 'granite') }),
  of('PR-36', 'an inch less', 'note', { 'well.layers': layers('clay', '661 in', 'granite') }),
  of('PR-36', 'two rocks in one', 'ok', {
    'well.layers': [{ material: 'clay', bottom: '50 ft' }, ...layers('limestone', '58 ft', 'shale')],
  }),
  of('PR-36', 'broken rock does not count', 'note', {
    'well.layers': [{ material: 'clay', bottom: '50 ft' }, ...layers('weathered granite', '58 ft', 'granite')],
  }),
  of('PR-36', 'in gravel over rock', 'note', { 'well.layers': layers('gravel', '60 ft', 'granite') }),
  of('PR-36', 'in ground of an unknown name', 'not judged', { 'well.layers': layers('clay', '40 ft', 'greenish') }),
  of('PR-36', 'no layers told', 'not judged', {}),
  of('PR-36', 'in rock with sand under it', 'ok', {
    'well.layers': [{ material: 'clay', bottom: '50 ft' }, ...layers('granite', '100 ft', 'sand')],
  }),
  of('PR-36', 'a dug well has no foot to seat', 'not judged', { 'well.intake': { kind: 'dug', diameter: '4 ft' } }),
  of('PR-36', 'nor has a driven point', 'not judged', { ...screened, 'well.intake.kind': 'driven point' }),
  of('PR-36', 'a screen’s casing that ends above the pumping level', 'note', {
    ...screened,
    ...held,
    'pump.setting': '165 ft',
    'water.pumping.level': '160 ft',
  }),
  of('PR-36', 'a screen’s casing five feet below the pumping level', 'ok', {
    ...screened,
    ...held,
    'pump.setting': '148 ft',
    'water.pumping.level': '145 ft',
  }),
  of('PR-36', 'an inch less of it', 'note', {
    ...screened,
    ...held,
    'pump.setting': '148 ft',
    'water.pumping.level': '1741 in',
  }),
  of('PR-36', 'level unknown, the casing ends five feet below the pump', 'ok', {
    ...screened,
    ...levelUnknown,
    'pump.setting': '145 ft',
  }),
  of('PR-36', 'level unknown, the pump hangs lower', 'depends', {
    ...screened,
    ...levelUnknown,
    'pump.setting': '146 ft',
  }),
  of('PR-36', 'level unknown, the casing ends near the water at rest', 'note', {
    ...screened,
    ...levelUnknown,
    'water.staticLevel': '146 ft',
    'pump.setting': '149 ft',
  }),
  of('PR-36', 'a perforated liner in rock hangs under a casing seated in it', 'ok', perforated),
  of('PR-42', 'a test of four hours', 'ok', { 'water.pumping': test('4 h') }),
  of('PR-42', 'a minute less', 'note', { 'water.pumping': test('239 min') }),
  of('PR-42', 'steps of four hours together', 'ok', { 'water.pumping': steps('2 h') }),
  of('PR-42', 'steps of less', 'note', { 'water.pumping': steps('1 h') }),
  of('PR-42', 'hours unknown', 'not judged', { 'water.pumping': test(undefined) }),
  of('PR-42', 'a level without hours', 'not judged', {}),
  of('PR-38', 'below the ground', 'ok', { 'water.staticLevel': '1 in' }),
  of('PR-38', 'at the ground with flow control', 'warning', { 'water.staticLevel': '0 ft', 'well.flowControl': true }),
  of('PR-38', 'above it without', 'danger', { 'water.staticLevel': '-4 ft' }),
  of('PR-38', 'below the ground in the wet season too', 'ok', {
    'water.staticLevel': '5 ft',
    'water.staticHighest': '3 ft',
  }),
  of('PR-38', 'above the ground in the wet season alone', 'danger', {
    'water.staticLevel': '5 ft',
    'water.staticHighest': '-1 ft',
  }),
  of('PR-38', 'nobody knows the level', 'not judged', { 'water.staticLevel': 'unknown' }),
  of('PR-40', 'as far as asked', 'ok', {
    'site.septicTank.distance': '50 ft',
    'site.drainField.distance': '100 ft',
    'site.building.distance': '5 ft',
  }),
  of('PR-40', 'septic tank nearer', 'warning', { 'site.septicTank.distance': '49 ft' }),
  of('PR-40', 'drain field nearer', 'warning', { 'site.drainField.distance': '99 ft' }),
  of('PR-40', 'building nearer', 'warning', { 'site.building.distance': '4 ft' }),
  of('PR-40', 'two of three distances unsaid', 'ok', {
    'site.drainField.distance': undefined,
    'site.building.distance': undefined,
  }),
  of('PR-40', 'two of three unsaid, the third too near', 'warning', {
    'site.septicTank.distance': '49 ft',
    'site.drainField.distance': undefined,
    'site.building.distance': undefined,
  }),
  of('PR-40', 'no distance said', 'not judged', {
    'site.septicTank.distance': undefined,
    'site.drainField.distance': undefined,
    'site.building.distance': undefined,
  }),
  of('PR-40', 'the local figure counts', 'warning', { 'site.septicTank.required': '100 ft' }),
  of('PR-43', 'no frost', 'ok', { ...seal, 'site.frostDepth': '0 in' }),
  of('PR-43', 'six inches', 'warning', { ...seal, 'site.frostDepth': '6 in' }),
  of('PR-43', 'a quarter inch more', 'danger', { ...seal, 'site.frostDepth': '6.25 in' }),
  of('PR-43', 'more, but heated', 'note', { top: { kind: 'seal', heated: true }, 'site.frostDepth': '40 in' }),
  of('PR-43', 'more, but housed', 'note', { top: { kind: 'seal', housed: true }, 'site.frostDepth': '40 in' }),
  of('PR-43', 'frost unknown', 'not judged', { ...seal, 'site.frostDepth': undefined }),
  of('PR-43', 'frost unknown in a climate that may have some', 'depends', { ...seal, ...climateOnly }),
  of('PR-43', 'frost unknown in a climate that may have some, but heated', 'depends', {
    top: { kind: 'seal', heated: true },
    ...climateOnly,
  }),
  of('PR-43', 'frost unknown in a climate that may have some, but housed', 'depends', {
    top: { kind: 'seal', housed: true },
    ...climateOnly,
  }),
  of('PR-44', 'up to the tank’s rating', 'ok', { 'house.reliefValve': false }, { shutOffPressureAtTank: psi(100) }),
  of('PR-44', 'over it without relief', 'danger', { 'house.reliefValve': false }, { shutOffPressureAtTank: psi(101) }),
  of('PR-44', 'over it with relief', 'ok', {}, { shutOffPressureAtTank: psi(150) }),
  of(
    'PR-44',
    'over it, relief unknown',
    'not judged',
    { 'house.reliefValve': undefined },
    { shutOffPressureAtTank: psi(150) },
  ),
  of(
    'PR-44',
    'over what its label says, relief unknown',
    'warning',
    { 'house.reliefValve': undefined, 'house.tankRating': '100 psi' },
    { shutOffPressureAtTank: psi(150) },
  ),
  // A well that shows no drawdown: the lowest water stands at the level at rest.
  of('PR-46', '10 psi over cut-out', 'ok', noFall, { shutOffPressureAtTankLeast: psi(70) }),
  of('PR-46', 'less', 'warning', noFall, { shutOffPressureAtTankLeast: psi(69) }),
  of('PR-46', 'under cut-out', 'danger', noFall, { shutOffPressureAtTankLeast: psi(59) }),
  // 42 ft of drawdown take 18.2 psi.
  of('PR-46', 'enough at rest, and only then', 'warning', held, {
    shutOffPressureAtTankLeast: psi(78),
  }),
  of(
    'PR-46',
    'only with the water high, which nobody knows',
    'depends',
    { 'water.pumping': { kind: 'yield only' }, 'pump.setting': '186 ft', 'pump.power': '1/2 hp' },
    { shutOffPressureAtTankLeast: psi(75) },
  ),
  of('PR-44', 'a pump of which nobody said the strength', 'not judged', {
    'pump.power': undefined,
    'pump.curve': undefined,
  }),
  of('PR-44', 'the water at rest unknown', 'not judged', { 'water.staticLevel': 'unknown' }),
  of('PR-44', 'the rise to the tank unknown', 'not judged', { 'house.rise': undefined }),
  of('PR-46', 'the rise to the tank unknown', 'not judged', { 'house.rise': undefined }),
  of('PR-46', 'into an open tank', 'not judged', { 'house.kind': 'open tank' }),
  of(
    'PR-46',
    'a tank whose air was read: it goes down with the switch',
    'warning',
    {
      ...noFall,
      'house.precharge': '38 psi',
    },
    { shutOffPressureAtTankLeast: psi(69) },
  ),
  of(
    'PR-46',
    'a switch in bar, and the tank’s air',
    'warning',
    {
      ...noFall,
      units: 'metric',
      'house.cutIn': '3.6 bar',
      'house.cutOut': '5 bar',
      'house.precharge': '3.4 bar',
    },
    { shutOffPressureAtTankLeast: psi(75) },
  ),
  // The house keeps 30 psi: 45 comes down by three steps of 5 psi, 44 does not.
  of(
    'PR-46',
    'a weak pump, and room to lower the switch',
    'danger',
    {
      ...noFall,
      'house.cutIn': '45 psi',
      'house.cutOut': '70 psi',
    },
    { shutOffPressureAtTankLeast: psi(65) },
  ),
  of(
    'PR-46',
    'a weak pump, and a psi too little room for that',
    'danger',
    {
      ...noFall,
      'house.cutIn': '44 psi',
      'house.cutOut': '70 psi',
    },
    { shutOffPressureAtTankLeast: psi(65) },
  ),
  of('PR-46', 'a strong pump hung below its lift: it opens the switch from there', 'ok', belowItsLift, {
    shutOffPressureAtTankLeast: psi(200),
  }),
  of('PR-46', 'not even a strong pump of that name reaches it', 'danger', {
    ...noFall,
    'pump.power': '1/2 hp',
    'house.cutIn': '100 psi',
    'house.cutOut': '120 psi',
  }),
  // The water ends 116 ft under its level at rest: 50 psi of 115 are lost, and 65 psi just open a switch of 60.
  of('PR-46', 'hung below its lift, and the switch barely opens from there', 'warning', belowItsLift, {
    shutOffPressureAtTankLeast: psi(115),
  }),
  of('PR-46', 'drawn down and protected, in a bore of unknown width', 'warning', {
    ...drawnDown,
    'pump.setting': '155 ft',
    'pump.lowLevelCutOff': '150 ft',
    'well.intake.diameter': undefined,
  }),
  of('PR-46', 'level unknown, and even at rest only a strong pump reaches it', 'danger', {
    ...levelUnknown,
    'pump.power': '1/2 hp',
    'house.cutOut': '90 psi',
  }),
  of('PR-44', 'into an open tank', 'not judged', { 'house.kind': 'open tank' }),
  of('PR-46', 'a pump of which nobody said the strength', 'not judged', {
    'pump.power': undefined,
    'pump.curve': undefined,
  }),
  of('PR-46', 'the water at rest unknown', 'not judged', { 'water.staticLevel': 'unknown' }),
  of('PR-46', 'own points that do not reach it', 'danger', { ...noFall, ...reaching(160) }),
  of('PR-46', 'own points that just reach it', 'warning', { ...noFall, ...reaching(186) }),
  // 1 gpm at 100 ft of drawdown, and a pump of 270 ft: the cut-off stops it at 165 ft, and it opens from 126.5 ft.
  of('PR-46', 'drawn down, protected, and long in coming back', 'warning', {
    ...drawnDown,
    'pump.setting': '170 ft',
    'pump.lowLevelCutOff': '165 ft',
  }),
  of('PR-46', 'drawn down, protected, and soon back', 'ok', {
    ...drawnDown,
    'pump.setting': '155 ft',
    'pump.lowLevelCutOff': '150 ft',
  }),
  of('PR-46', 'drawn down without protection', 'warning', {
    ...drawnDown,
    'pump.setting': '170 ft',
    'pump.lowLevelCutOff': undefined,
  }),
  of('PR-46', 'hung, with its probe, deeper than it lifts from', 'danger', belowItsLift),
  of('PR-46', 'hung deeper than it lifts from', 'danger', { ...belowItsLift, 'pump.lowLevelCutOff': undefined }),
  of('PR-46', 'hung deeper than it lifts from, by its own points', 'danger', {
    ...belowItsLift,
    ...reaching(400),
    'pump.lowLevelCutOff': undefined,
  }),
  // 1.049 in bore: 15.08 gpm is 5.6 ft/s.
  of('PR-18', 'a pump of which nobody said the strength', 'not judged', {
    'pump.power': undefined,
    'pump.curve': undefined,
  }),
  of('PR-48', 'a pump of which nobody said the strength', 'not judged', {
    'pump.power': undefined,
    'pump.curve': undefined,
  }),
  of('PR-18', 'PE in water warmer than its table', 'not judged', { 'site.waterTemperature': '110 degF' }),
  of('PR-48', 'PE in water warmer than its table', 'not judged', { 'site.waterTemperature': '110 degF' }),
  of('PR-47', 'a line narrower than the drop pipe', 'warning', {
    'house.line.size': '3/4 in',
    'house.demand': '14 gpm',
  }),
  of('PR-47', 'the same line from a well with a seal', 'warning', {
    ...seal,
    'house.line.size': '3/4 in',
    'house.demand': '14 gpm',
  }),
  of('PR-47', '15 gpm in 1 in', 'ok', { 'house.demand': '15 gpm' }),
  of('PR-47', '15.2 gpm in 1 in', 'warning', { 'house.demand': '15.2 gpm' }),
  of('PR-47', '26.2 gpm in 1-1/4 in throughout', 'warning', {
    'house.demand': '26.2 gpm',
    'dropPipe.size': '1-1/4 in',
  }),
  of('PR-47', '26 gpm in 1-1/4 in throughout', 'ok', { 'house.demand': '26 gpm', 'dropPipe.size': '1-1/4 in' }),
  of('PR-47', '15 gpm in 1 in, line unknown', 'ok', { 'house.demand': '15 gpm', 'house.line': undefined }),
  // 72 % of 200 psi is 144 psi, 332.2 ft of water at 50 degF.
  of('PR-48', 'running at 332 ft', 'ok', flat(332)),
  of('PR-48', 'running at 333 ft', 'warning', flat(333)),
  of('PR-48', 'working point unknown', 'not judged', { ...flat(333), 'house.distance': undefined }),
  // Half of 630.3 psi is left by threads; 72 % of that is 226.9 psi, 523.5 ft.
  of('PR-48', 'threaded PVC running at 523 ft', 'ok', { ...flat(523), ...pvc() }),
  of('PR-48', 'threaded PVC running at 524 ft', 'warning', { ...flat(524), ...pvc() }),
  of('PR-49', '3 %', 'ok', {}, { voltageDropRunning: 0.03 }),
  of('PR-49', 'over 3 %', 'ok', {}, { voltageDropRunning: 0.0301 }),
  of('PR-49', '5 %', 'ok', {}, { voltageDropRunning: 0.05 }),
  of('PR-49', 'over 5 %', 'warning', {}, { voltageDropRunning: 0.0501 }),
  of('PR-49', 'run unknown', 'not judged', { 'house.distance': undefined }),
  of('PR-49', 'neither power nor current known', 'not judged', { 'pump.power': undefined }),
  of('PR-49', 'a current from the nameplate, and no power', 'ok', { 'pump.power': undefined, 'pump.current': '10 A' }),
  // The table of locked rotors has no 400 V: six times 3.5 A, 16 ohm a kilometre of 1.5 mm2 (IEC 60228).
  of('PR-49', 'a motor at 400 V, so far away that it does not start', 'danger', {
    ...at400Volts,
    'wire.run': '1200 m',
  }),
  of('PR-49', 'the same, half as far', 'warning', { ...at400Volts, 'wire.run': '600 m' }),
  of('PR-49', 'so far away that no usual cable is thick enough', 'danger', {
    'pump.power': '5 hp',
    'wire.run': '5000 ft',
  }),
  // 125 % of 28 A is 35 A: 8 AWG at 60 degC, 10 AWG at 75 degC (NFPA 70, Tables 430.248 and 310.16).
  of('PR-50', '5 hp on 8 AWG', 'ok', { 'pump.power': '5 hp', 'wire.size': '8 AWG' }),
  of('PR-50', '5 hp on 10 AWG', 'warning', { 'pump.power': '5 hp', 'wire.size': '10 AWG' }),
  of('PR-50', '5 hp on 12 AWG', 'danger', { 'pump.power': '5 hp', 'wire.size': '12 AWG' }),
  // 1 hp draws 8 A by the table; 125 % of 17 A is 21.25 A, and 12 AWG carries 20 A at 60 degC and 25 A at 75 degC.
  of('PR-50', 'a nameplate that says more than the table', 'warning', {
    'pump.current': '17 A',
    'wire.size': '12 AWG',
  }),
  of('PR-50', 'a nameplate that says less does not thin the wire', 'warning', {
    'pump.power': '5 hp',
    'pump.current': '20 A',
    'wire.size': '10 AWG',
  }),
  of('PR-50', 'neither power nor current known', 'not judged', { 'pump.power': undefined }),
  of('PR-50', 'a motor larger than the table, without a nameplate', 'not judged', { 'pump.power': '10 hp' }),
  // The table ends at 5 hp. 125 % of 40 A is 50 A: 6 AWG carries 55 A, 8 AWG 50 A at 75 degC, 10 AWG 35 A.
  of('PR-50', 'a motor larger than the table on 6 AWG, by its nameplate', 'ok', {
    ...larger,
    'wire.size': '6 AWG',
  }),
  of('PR-50', 'a motor larger than the table on 8 AWG', 'warning', { ...larger, 'wire.size': '8 AWG' }),
  of('PR-50', 'a motor larger than the table on 10 AWG', 'danger', { ...larger, 'wire.size': '10 AWG' }),
  of('PR-50', 'a nameplate alone, and no power', 'ok', { 'pump.power': undefined, 'pump.current': '10 A' }),
  of('PR-51', '68 lb', 'ok', {}, { hangLoadAtRest: poundsForce(68) }),
  of('PR-51', 'more', 'note', {}, { hangLoadAtRest: poundsForce(69) }),
  of('PR-51', 'over 150 lb', 'note', {}, { hangLoadAtRest: poundsForce(151) }),
  of('PR-51', '300 lb', 'note', {}, { hangLoadAtRest: poundsForce(300) }),
  of('PR-51', 'more than any team holds', 'warning', {}, { hangLoadAtRest: poundsForce(301) }),
  of(
    'PR-51',
    'light, however deep',
    'ok',
    { 'pump.setting': '301 ft', 'well.depth': '400 ft' },
    {
      hangLoadAtRest: poundsForce(60),
      hangLoadDry: poundsForce(200),
    },
  ),
  of(
    'PR-51',
    'threaded pipe at any weight',
    'note',
    { dropPipe: { material: 'PVC', size: '1 in' } },
    { hangLoadAtRest: poundsForce(20) },
  ),
  of(
    'PR-51',
    'threaded pipe that no team holds',
    'warning',
    { dropPipe: { material: 'PVC', size: '1 in' } },
    { hangLoadAtRest: poundsForce(301) },
  ),
  of('PR-51', 'weight unknown', 'not judged', { 'pump.power': undefined }),
  of('PR-51', 'level at rest unknown', 'not judged', { 'water.staticLevel': 'unknown' }),
  of('PR-65', 'an outlet of which nobody said the system', 'not judged', { 'pump.outlet': '1-1/4 in' }),
  of('PR-65', 'an outlet of the pipe’s own system', 'ok', { 'pump.outlet': '1-1/4 in NPT' }),
  of('PR-65', 'outlet and adapter of the pipe’s own system', 'ok', {
    'pump.outlet': '1-1/4 in NPT',
    'top.thread': '1 in FNPT',
  }),
  of('PR-65', 'an outlet of the other system', 'warning', { 'pump.outlet': 'Rp 1 1/4' }),
  of('PR-65', 'an adapter of the other system', 'warning', { 'top.thread': 'BSP 1 in' }),
  of('PR-65', 'both of the other system: the one that all hangs on', 'warning', {
    'pump.outlet': 'G 1 1/4',
    'top.thread': 'Rp 1',
  }),
  of('PR-65', 'pipe in mm goes with fittings of either', 'not judged', {
    'pump.outlet': 'Rp 1 1/4',
    'dropPipe.standard': 'ISO 4427-2',
    'dropPipe.size': '40 mm',
    'dropPipe.rating': '16 bar',
  }),
  of('PR-52', 'stainless barbs in their own pipe', 'ok', { 'string.fittings': 'stainless steel' }),
  of('PR-52', 'fittings and standard that nobody chose', 'not judged', {}),
  of('PR-52', 'galvanized pipe, fittings that nobody chose', 'not judged', {
    dropPipe: { material: 'galvanized steel', size: '1 in' },
  }),
  of('PR-52', 'barbs in iron-pipe-size pipe, 0.027 in loose', 'warning', {
    'dropPipe.standard': 'ASTM D3035',
    'dropPipe.ratio': 'DR 11',
    'dropPipe.rating': undefined,
  }),
  of('PR-52', 'barbs in copper-tube-size pipe of which nobody said the rating', 'warning', {
    'dropPipe.standard': 'ASTM D2737',
    'dropPipe.rating': undefined,
  }),
  of('PR-52', 'barbs in copper-tube-size pipe', 'warning', { 'dropPipe.standard': 'ASTM D2737' }),
  of('PR-52', 'galvanized fittings on a stainless pump', 'warning', { 'string.fittings': 'galvanized steel' }),
  of('PR-52', 'stainless fittings on galvanized pipe, mild water', 'note', {
    dropPipe: { material: 'galvanized steel', size: '1 in' },
    'string.fittings': 'stainless steel',
  }),
  of('PR-52', 'the same in sour water', 'warning', {
    dropPipe: { material: 'galvanized steel', size: '1 in' },
    'string.fittings': 'stainless steel',
    'water.pH': '6.5',
  }),
  of('PR-52', 'brass in mild water', 'ok', { 'string.fittings': 'brass' }),
  of('PR-52', 'brass in sour water', 'note', { 'string.fittings': 'brass', 'water.pH': '6.9' }),
  of('PR-52', 'brass in water that nobody tested', 'not judged', { 'string.fittings': 'brass', 'water.pH': undefined }),
  of('PR-52', 'brass in water of which nobody measured the salt', 'not judged', {
    'string.fittings': 'brass',
    'water.conductivity': undefined,
  }),
  of('PR-52', 'brass in salty water of which nobody said the pH', 'note', {
    'string.fittings': 'brass',
    'water.pH': undefined,
    'water.conductivity': '1501 uS/cm',
  }),
  of('PR-52', 'bronze in sour water, like brass', 'note', { 'string.fittings': 'bronze', 'water.pH': '6.9' }),
  of('PR-52', 'a stainless motor in a steel casing, in sour water', 'note', {
    'well.casing.material': 'steel',
    'water.pH': '6.9',
  }),
  of('PR-52', 'brass fittings too: of two as bad the one that is sooner mended', 'note', {
    'string.fittings': 'brass',
    'well.casing.material': 'steel',
    'water.pH': '6.9',
  }),
  of('PR-52', 'galvanized fittings in a steel casing: the worse of the two', 'warning', {
    'string.fittings': 'galvanized steel',
    'well.casing.material': 'steel',
    'water.pH': '6.9',
  }),
  of('PR-53', 'a measured level', 'ok', {}),
  of('PR-53', 'the level at rest unknown', 'not judged', { 'water.staticLevel': 'unknown' }),
  of('PR-53', 'the pump takes more than flows in, down to its intake', 'not judged', {
    ...noCutOff,
    'well.yield': '1 gpm',
    'water.pumping': undefined,
  }),
  of('PR-53', 'the pump takes more than flows in, down to its probe', 'ok', {
    'well.yield': '1 gpm',
    'water.pumping': undefined,
    'pump.lowLevelCutOff': '138 ft',
  }),
  of('PR-53', 'a yield blown with air', 'note', {
    'well.yield': '20 gpm',
    'well.yieldFrom': 'air lift',
    'water.pumping': undefined,
  }),
  of('PR-53', 'a report without level or yield', 'note', { ...levelUnknown, 'well.yield': undefined }),
  of('PR-53', 'a yield that was pumped, and no test on record', 'note', {
    'well.yield': '20 gpm',
    'water.pumping': undefined,
  }),
  of('PR-53', 'nobody pumped it, and nothing stops the pump', 'warning', { ...noCutOff, 'water.pumping': undefined }),
  of('PR-54', 'four fifths of what is wanted', 'ok', { ...eightGpm, 'house.demand': '10 gpm' }),
  of('PR-54', 'less', 'warning', { ...eightGpm, 'house.demand': '10.02 gpm' }),
  of('PR-54', 'half of it', 'warning', { ...eightGpm, 'house.demand': '15.98 gpm' }),
  of('PR-54', 'less than half', 'danger', { ...eightGpm, 'house.demand': '16.02 gpm' }),
  of('PR-54', 'nothing at cut-in', 'danger', { 'pump.power': '1/2 hp', 'house.rise': '200 ft' }),
  of('PR-54', 'only with the water high, which nobody knows', 'depends', {
    'water.pumping': { kind: 'yield only' },
    'pump.power': '1/2 hp',
    'pump.setting': '186 ft',
  }),
  of('PR-54', 'pump unknown', 'not judged', { 'pump.power': undefined }),
  of('PR-54', 'nobody knows what the house wants', 'not judged', { 'house.demand': 'unknown' }),
  of('PR-54', 'nobody knows the level', 'not judged', { 'water.staticLevel': 'unknown' }),
  of('PR-54', 'no line named', 'not judged', { 'house.line': undefined }),
  of('PR-54', 'neither distance nor rise named', 'not judged', {
    'house.distance': undefined,
    'house.rise': undefined,
  }),
  of('PR-54', 'from the water of the dry season', 'ok', { 'water.staticLowest': '60 ft' }),
  of('PR-54', 'a pump of which a strong one of its name gives enough', 'warning', { 'pump.power': '1/2 hp' }),
  // The well gives 4.2 ft a gpm: 8.3 gpm with the water drawn from 40 to 75 ft, 8.8 gpm to 77 ft.
  of('PR-54', 'enough at first, then four fifths of what the well gives', 'ok', {
    'pump.power': '1/2 hp',
    'pump.setting': '75 ft',
  }),
  of('PR-54', 'enough at first, then less than four fifths of it', 'warning', {
    'pump.power': '1/2 hp',
    'pump.setting': '77 ft',
  }),
  of('PR-54', 'little at first, then less than half of what the well gives', 'danger', {
    'pump.power': '1/2 hp',
    'house.demand': '15 gpm',
    'well.yield': '14 gpm',
  }),
  of('PR-54', 'more than a well gives that gives nearly enough', 'ok', { 'well.yield': '9 gpm' }),
  of('PR-54', 'a yield of four fifths, and no drawdown', 'ok', { ...shallow, 'well.yield': '8 gpm' }),
  of('PR-54', 'a smaller yield, and no drawdown', 'ok', { ...shallow, 'well.yield': '7.9 gpm' }),
  of('PR-54', 'only with the water high, and neither level nor yield known', 'depends', {
    'well.yield': undefined,
    'water.pumping': undefined,
    'pump.power': '1/2 hp',
    'pump.setting': '186 ft',
  }),
  of('PR-54', 'nothing at cut-in, and neither level nor yield known', 'danger', {
    'well.yield': undefined,
    'water.pumping': undefined,
    'pump.power': '1/2 hp',
    'house.rise': '100 ft',
  }),
  of('PR-54', 'a valve that lets enough through, under a weak pump', 'danger', {
    'pump.power': '1/2 hp',
    'house.demand': '14 gpm',
    'pump.flowLimiter': '12 gpm',
  }),
  of('PR-55', 'as much as the well gives', 'ok', { 'house.demand': '15 gpm' }),
  of('PR-55', 'more, with its store to carry the peak', 'note', { 'house.demand': '15.1 gpm' }),
  of('PR-55', 'the same, with nothing to stop the pump', 'warning', { ...noCutOff, 'house.demand': '15.1 gpm' }),
  // The pump gives 20 gpm from no depth, so that no store carries a peak of it.
  of('PR-55', 'a peak that no store carries', 'warning', { 'house.demand': '20 gpm' }),
  // Half a gallon a minute is 720 gal a day; two hours of 10 gpm are 1,200.
  of('PR-55', 'less than a day needs', 'danger', { 'well.yield': '0.5 gpm' }),
  of('PR-55', 'four people on 300 gal a day', 'warning', { 'well.yield': '0.21 gpm', 'house.people': 4 }),
  of('PR-55', 'blown with air: enough of all that came, too little of half of it', 'depends', {
    'well.yieldFrom': 'air lift',
    'water.pumping': { kind: 'yield only' },
  }),
  of('PR-55', 'a peak that an open tank carries', 'note', {
    'house.demand': '20 gpm',
    'house.kind': 'open tank',
    'house.tank': '400 gal',
  }),
  of('PR-55', 'a peak for which the open tank is too small', 'warning', {
    'house.demand': '20 gpm',
    'house.kind': 'open tank',
    'house.tank': '50 gal',
    'pump.setting': '60 ft',
  }),
  // Drawn from 40 to 140 ft a well of 10 gpm at 100 ft lets in 5 gpm on the average: of 11 gpm its store gives 6. A
  // twentieth of the 660 gal of an hour is not missed, so 27 min ask for 162 gal: 161 in a hole of 6.2 in with 11 in the
  // tank, 166 in one of 6.3 in.
  of('PR-55', 'a tested well whose store lasts just not long enough', 'warning', {
    ...halfComesIn,
    'well.intake.diameter': '6.2 in',
  }),
  of('PR-55', 'a tested well whose store lasts just long enough', 'note', {
    ...halfComesIn,
    'well.intake.diameter': '6.3 in',
  }),
  // Of a well without a drawdown its yield is counted all the time, and an hour of a gallon a minute asks for 60 gal.
  of('PR-55', 'no drawdown known, and 52 gal stored', 'warning', {
    ...halfComesIn,
    'water.pumping': undefined,
    'pump.setting': '80 ft',
  }),
  of('PR-55', 'no drawdown known, and 72 gal stored', 'note', {
    ...halfComesIn,
    'water.pumping': undefined,
    'pump.setting': '100 ft',
  }),
  of('PR-55', 'a tank in gallons in a metric plan', 'warning', { ...smallOpenTank, units: 'metric' }),
  of('PR-55', 'a tank in litres in a plan of gallons', 'warning', { ...smallOpenTank, 'house.tank': '200 L' }),
  of('PR-55', 'nobody knows what the house wants', 'not judged', { 'house.demand': 'unknown' }),
  of('PR-55', 'less than a day needs, into an open tank', 'danger', { ...openTank, 'well.yield': '0.5 gpm' }),
  of('PR-55', 'a peak that no store carries, with nothing to stop the pump', 'warning', {
    ...noCutOff,
    'house.demand': '20 gpm',
  }),
  of('PR-55', 'a peak for which the open tank is too small, in litres', 'warning', {
    ...openTank,
    units: 'metric',
    'house.tank': '200 L',
    'house.demand': '20 gpm',
    'pump.setting': '60 ft',
  }),
  of('PR-55', 'a peak, and a bore of unknown width', 'note', {
    'house.demand': '20 gpm',
    'well.intake.diameter': undefined,
  }),
  of('PR-55', 'less than a day needs, in a bore of unknown width', 'danger', {
    'well.yield': '0.5 gpm',
    'well.intake.diameter': undefined,
  }),
  of('PR-55', 'yield unknown', 'not judged', { 'well.yield': undefined, 'water.pumping': undefined }),
  of('PR-58', 'within its range', 'ok', {}),
  of('PR-58', 'past the last point of its sheet', 'note', {
    'pump.curve': {
      kind: 'points',
      points: [
        ['0 gpm', '400 ft'],
        ['8 gpm', '300 ft'],
      ],
    },
  }),
  of('PR-58', 'held back by a valve', 'not judged', held),
  of('PR-58', 'past its range without one', 'note', { 'pump.flowLimiter': false, 'pump.power': '3 hp' }),
  of('PR-58', 'past its range into an open tank', 'note', { 'house.kind': 'open tank', 'pump.power': '3 hp' }),
  of('PR-58', 'pump unknown', 'not judged', { 'pump.power': undefined }),
  of('PR-58', 'nobody knows the level', 'not judged', { 'water.staticLevel': 'unknown' }),
  of('PR-58', 'a pump that follows the demand', 'not judged', { 'house.control': 'variable speed' }),
  // Boyle: a 40 to 60 psi switch on air at 38 psi takes 10 gal into a tank of 38.8 gal, a minute at 10 gpm.
  of('PR-56', 'a minute of running', 'ok', { 'house.tank': '38.8 gal' }),
  of('PR-56', 'a tenth less', 'ok', { 'house.tank': '35 gal' }),
  of('PR-56', 'still less', 'warning', { 'house.tank': '34.8 gal' }),
  of('PR-56', 'two minutes above 1 hp', 'ok', { 'house.tank': '77.6 gal', 'pump.power': '2 hp' }),
  of('PR-56', 'less above 1 hp', 'warning', { 'house.tank': '69.6 gal', 'pump.power': '2 hp' }),
  of('PR-56', '0.75 kW is 1 hp', 'ok', { 'house.tank': '38.8 gal', 'pump.power': '0.75 kW' }),
  of('PR-56', 'a flow-limiting valve halves the flow', 'ok', { 'house.tank': '19.4 gal', 'pump.flowLimiter': '5 gpm' }),
  of(
    'PR-56',
    'own points: the mean of the flows at cut-in and cut-out',
    'ok',
    { ...flat(332), 'house.tank': '35 gal' },
    { operatingFlowAtCutIn: gpm(12), operatingFlowAtCutOut: gpm(8) },
  ),
  of(
    'PR-56',
    'own points, a larger mean',
    'warning',
    { ...flat(332), 'house.tank': '35 gal' },
    { operatingFlowAtCutIn: gpm(13), operatingFlowAtCutOut: gpm(9) },
  ),
  of('PR-56', 'a drive starts softly and as often as it likes', 'not judged', {
    'house.tank': '2 gal',
    'house.control': 'variable speed',
  }),
  of('PR-56', '0.8 kW is more than 1 hp', 'warning', { 'house.tank': '38.8 gal', 'pump.power': '0.8 kW' }),
  of(
    'PR-56',
    'own points, and none of them at cut-out',
    'not judged',
    { ...flat(332) },
    { operatingFlowAtCutIn: gpm(12), operatingFlowAtCutOut: null },
  ),
  of('PR-56', 'just enough for a small motor, power unknown', 'not judged', {
    'pump.power': undefined,
    'house.tank': '35 gal',
  }),
  of('PR-56', 'a small tank in gallons in a metric plan', 'warning', { units: 'metric', 'house.tank': '20 gal' }),
  of('PR-56', 'a small tank in litres in a plan of gallons', 'warning', { 'house.tank': '80 L' }),
  of('PR-56', 'an open tank counts no starts', 'not judged', openTank),
  of('PR-56', 'own points, and nobody knows the way to the tank', 'not judged', {
    ...flat(332),
    'house.rise': undefined,
  }),
  of('PR-56', 'own points from which nothing flows', 'not judged', flat(60)),
  of('PR-56', 'a large tank on air at 38 psi, power unknown', 'ok', {
    'pump.power': undefined,
    'house.tank': '70 gal',
  }),
  of('PR-56', 'enough for a small motor, power unknown', 'not judged', {
    'pump.power': undefined,
    'house.tank': '69 gal',
  }),
  of('PR-56', 'too little for any motor, power unknown', 'warning', {
    'pump.power': undefined,
    'house.tank': '34 gal',
  }),
  of('PR-56', 'a small tank with its air at cut-in', 'warning', {
    'house.precharge': '40 psi',
    'house.tank': '20 gal',
  }),
  of('PR-56', 'a small tank with its air set too high', 'warning', {
    'house.precharge': '45 psi',
    'house.tank': '20 gal',
  }),
  of('PR-56', 'a pump for which no one tank is large enough', 'warning', { 'pump.curve.flow': '60 gpm' }),
  of('PR-56', 'tank unknown', 'not judged', { 'house.tank': undefined }),
  of('PR-57', 'air at cut-in', 'ok', { 'house.precharge': '40 psi' }),
  of('PR-57', 'over it', 'warning', { 'house.precharge': '41 psi' }),
  of('PR-57', 'just under cut-out', 'warning', { 'house.precharge': '59 psi' }),
  of('PR-57', 'at cut-out', 'danger', { 'house.precharge': '60 psi' }),
  of('PR-57', '10 psi under cut-in', 'ok', { 'house.precharge': '30 psi' }),
  of('PR-57', 'less', 'note', { 'house.precharge': '29 psi' }),
  of('PR-57', 'over it, in bar', 'warning', {
    units: 'metric',
    'house.precharge': '3.2 bar',
    'house.cutIn': '2.8 bar',
    'house.cutOut': '4.1 bar',
  }),
  of('PR-57', 'over it, in kPa', 'warning', {
    units: 'metric',
    'house.precharge': '320 kPa',
    'house.cutIn': '280 kPa',
    'house.cutOut': '410 kPa',
  }),
  of('PR-57', 'over it, in bar, in a plan of psi', 'warning', {
    'house.precharge': '3.2 bar',
    'house.cutIn': '2.8 bar',
    'house.cutOut': '4.1 bar',
  }),
  of('PR-57', 'over it, in psi, in a metric plan', 'warning', { units: 'metric', 'house.precharge': '45 psi' }),
  of('PR-57', 'an open tank holds no air', 'not judged', { ...openTank, 'house.precharge': '50 psi' }),
  of('PR-57', 'air that nobody set', 'not judged', {}),
  // 70 % of 60 psi is 42 psi, with a tenth of 60 psi on both sides.
  of('PR-57', 'a drive on air at 60 %', 'ok', { 'house.precharge': '36 psi', 'house.control': 'variable speed' }),
  of('PR-57', 'a drive on less', 'note', { 'house.precharge': '35 psi', 'house.control': 'variable speed' }),
  of('PR-57', 'a drive on air at 80 %', 'ok', { 'house.precharge': '48 psi', 'house.control': 'variable speed' }),
  of('PR-57', 'a drive on more', 'note', { 'house.precharge': '49 psi', 'house.control': 'variable speed' }),
  of('PR-59', '1/2 hp on 115 V', 'ok', { 'pump.power': '1/2 hp', 'pump.voltage': '115 V' }),
  of('PR-59', '0.37 kW on 110 V', 'ok', { 'pump.power': '0.37 kW', 'pump.voltage': '110 V' }),
  of('PR-59', '3/4 hp on 115 V', 'warning', { 'pump.power': '3/4 hp', 'pump.voltage': '115 V' }),
  of('PR-59', '3/4 hp on 127 V', 'warning', { 'pump.power': '3/4 hp', 'pump.voltage': '127 V' }),
  of('PR-59', '1-1/2 hp on two wires', 'ok', { 'pump.power': '1-1/2 hp', 'pump.wires': 2 }),
  of('PR-59', '1.1 kW on two wires', 'ok', { 'pump.power': '1.1 kW', 'pump.wires': 2 }),
  of('PR-59', '2 hp on two wires', 'danger', { 'pump.power': '2 hp', 'pump.wires': 2 }),
  of('PR-59', '1.2 kW on two wires', 'danger', { 'pump.power': '1.2 kW', 'pump.wires': 2 }),
  of('PR-59', '2 hp on two wires at 115 V', 'danger', {
    'pump.power': '2 hp',
    'pump.wires': 2,
    'pump.voltage': '115 V',
  }),
  of('PR-59', 'three phases on three wires', 'ok', { 'pump.phase': 3 }),
  of('PR-59', 'three phases on two', 'danger', { 'pump.phase': 3, 'pump.wires': 2 }),
  of('PR-59', 'three phases on three wires, power unknown', 'ok', { 'pump.phase': 3, 'pump.power': undefined }),
  of('PR-59', 'power unknown', 'not judged', { 'pump.power': undefined }),
  of('PR-60', 'neither gas nor sand', 'ok', { 'water.gas': false, 'water.sand': false }),
  of('PR-60', 'gas', 'warning', { 'water.gas': true }),
  of('PR-60', 'gas and a pit', 'danger', { 'water.gas': true, 'well.inPit': true }),
  of('PR-60', 'gas and a well house', 'danger', { 'water.gas': true, top: { kind: 'seal', housed: true } }),
  of('PR-60', 'sand, the motor ten feet off the bottom', 'note', { 'water.sand': true, 'pump.setting': '188.5 ft' }),
  of('PR-60', 'sand, an inch less', 'warning', { 'water.sand': true, 'pump.setting': '2263 in' }),
  of('PR-60', 'sand, the motor above the screen', 'note', {
    ...screened,
    'water.sand': true,
    'pump.setting': '148.5 ft',
  }),
  of('PR-60', 'sand, the motor an inch into the screen', 'warning', {
    ...screened,
    'water.sand': true,
    'pump.setting': '1783 in',
  }),
  of('PR-60', 'nobody said', 'not judged', { 'water.gas': undefined, 'water.sand': false }),
  of('PR-60', 'nobody said of sand', 'not judged', { 'water.gas': false, 'water.sand': undefined }),
  of('PR-60', 'gas under a seal in the open', 'warning', { 'water.gas': true, ...seal }),
  // The motor ends at 194.5 ft, half a foot above the screen and 5.5 ft off the bottom.
  of('PR-60', 'sand, a short sump under the screen', 'note', {
    ...screened,
    'water.sand': true,
    'well.intake.screens.0.top': '195 ft',
    'well.intake.screens.0.bottom': '199 ft',
    'well.casing.bottom': '195 ft',
    'pump.setting': '193 ft',
  }),
  of('PR-61', 'a line of 160 psi', 'ok', { 'house.line.rating': '160 psi' }),
  of('PR-61', 'less', 'warning', { 'house.line.rating': '158 psi' }),
  of('PR-61', '11 bar is 160 psi', 'ok', { 'house.line.rating': '11 bar' }),
  of('PR-61', '10 bar in a metric plan', 'ok', { units: 'metric', 'house.line.rating': '10 bar' }),
  of('PR-61', 'less in a metric plan', 'warning', { units: 'metric', 'house.line.rating': '9.8 bar' }),
  of('PR-61', '1.5 times cut-out is the rating', 'ok', { 'house.cutOut': '133 psi' }),
  of('PR-61', 'over it', 'warning', { 'house.cutOut': '134 psi' }),
  // The water stands 35 ft under the outlet: 15.2 psi at 50 degF.
  of(
    'PR-61',
    'just what the pump puts on the line, without relief',
    'ok',
    { 'house.reliefValve': false },
    { shutOffPressureAtPump: psi(215) },
  ),
  of('PR-61', 'more, without relief', 'danger', { 'house.reliefValve': false }, { shutOffPressureAtPump: psi(216) }),
  of(
    'PR-61',
    'the same to a house 20 ft below the well',
    'danger',
    { 'house.reliefValve': false, 'house.rise': '-20 ft' },
    { shutOffPressureAtPump: psi(215) },
  ),
  of('PR-61', 'more, with relief', 'ok', {}, { shutOffPressureAtPump: psi(216) }),
  of(
    'PR-61',
    'more, relief unknown',
    'not judged',
    { 'house.reliefValve': undefined },
    { shutOffPressureAtPump: psi(216) },
  ),
  of(
    'PR-61',
    'more than a weak line bears, relief unknown',
    'warning',
    { 'house.reliefValve': undefined, 'house.line.rating': '100 psi' },
    { shutOffPressureAtPump: psi(209) },
  ),
  of(
    'PR-61',
    'more, to an open tank',
    'danger',
    { 'house.reliefValve': undefined, 'house.kind': 'open tank' },
    { shutOffPressureAtPump: psi(216) },
  ),
  of('PR-61', 'a steel line, pump unknown', 'not judged', { ...steelLine, 'pump.power': undefined }),
  of('PR-61', 'a steel line, the water at rest unknown', 'not judged', {
    ...steelLine,
    'water.staticLevel': 'unknown',
  }),
  of('PR-61', 'a steel line under a pump that few wells have', 'not judged', steelLine, {
    shutOffPressureAtPump: psi(430),
  }),
  of('PR-61', 'PE in water warmer than its table', 'not judged', { 'site.waterTemperature': '110 degF' }),
  of('PR-61', 'pump and relief unknown', 'not judged', { 'house.reliefValve': undefined, 'pump.power': undefined }),
  of('PR-61', 'the water at rest and relief unknown', 'not judged', {
    'house.reliefValve': undefined,
    'water.staticLevel': 'unknown',
  }),
  of('PR-61', 'pump unknown, with relief', 'ok', { 'pump.power': undefined }),
  of(
    'PR-61',
    'a pump that puts nothing on the line',
    'ok',
    { 'house.reliefValve': false },
    {
      shutOffPressureAtPump: psi(10),
    },
  ),
  of(
    'PR-61',
    'more, to an open tank, with relief',
    'ok',
    { 'house.kind': 'open tank' },
    {
      shutOffPressureAtPump: psi(216),
    },
  ),
  of('PR-61', 'rating unknown', 'not judged', { 'house.line.rating': undefined }),
  of('PR-61', 'a steel line', 'ok', { 'house.line': { material: 'galvanized steel', size: '1 in' } }),
  of('PR-62', 'levels in their order', 'ok', { 'water.staticHighest': '40 ft', 'water.staticLowest': '40 ft' }),
  of('PR-62', 'a dry season above today', 'warning', { 'water.staticLowest': '479 in' }),
  of('PR-62', 'a highest level below today', 'warning', { 'water.staticHighest': '481 in' }),
  of('PR-62', 'a pumping level above the level at rest', 'warning', { 'water.pumping.level': '479 in' }),
  of('PR-62', 'a casing that ends below the well', 'warning', { 'well.casing.bottom': '201 ft' }),
  of('PR-62', 'sounded to the casing’s end', 'ok', { 'well.soundedDepth': '150 ft', 'well.casing.bottom': '150 ft' }),
  of('PR-62', 'sounded inside the casing', 'warning', {
    'well.soundedDepth': '149 ft',
    'well.casing.bottom': '150 ft',
  }),
  of('PR-62', 'mud in a well that is lined to the bottom', 'ok', {
    'well.soundedDepth': '195 ft',
    'well.casing.bottom': '200 ft',
  }),
  of('PR-62', 'the pump on the bottom', 'ok', { 'pump.setting': '200 ft' }),
  of('PR-62', 'the pump below it', 'warning', { 'pump.setting': '201 ft' }),
  of('PR-63', 'water of 86 degF', 'ok', { 'site.waterTemperature': '86 degF' }),
  of('PR-63', 'warmer', 'warning', { 'site.waterTemperature': '87 degF' }),
  of('PR-63', 'a temperature that nobody said', 'not judged', {}),
  of('PR-64', 'a foot of cover without frost', 'ok', { 'site.frostDepth': '0 in', 'top.depth': '12 in' }),
  of('PR-64', 'a seal has no adapter', 'not judged', seal),
  of('PR-64', 'less', 'warning', { 'site.frostDepth': '0 in', 'top.depth': '11 in' }),
  of('PR-64', '30 cm in a metric plan', 'ok', { units: 'metric', 'site.frostDepth': '0 cm', 'top.depth': '30 cm' }),
  of('PR-64', 'less, frost unknown', 'warning', { 'site.frostDepth': undefined, 'top.depth': '11 in' }),
  of('PR-64', 'less, in light frost', 'warning', { 'site.frostDepth': '3 in', 'top.depth': '11 in' }),
  of('PR-64', 'less, where frost asks for more', 'not judged', { 'top.depth': '11 in' }),
  of('PR-64', 'as deep as one digs', 'ok', { 'top.depth': '12 ft' }),
  of('PR-64', 'deeper: feet or inches?', 'warning', { 'top.depth': '145 in' }),
  of('PR-53', 'blown with air, over dry-run protection that is hung right', 'note', {
    'water.pumping': { kind: 'yield only' },
    'well.yieldFrom': 'air lift',
  }),
];
