/** What has no meaning is refused, and the last figure that has one is not: both sides of every bound of the formulas. */
import { describe, expect, test } from 'vitest';
import { thiemTransmissivity, transmissivityByRule } from '../../../src/model/formulas/aquiferTest.ts';
import {
  berggrenLambda,
  berggrenLambdaExplicit,
  berggrenNumbers,
  stefanDepth,
} from '../../../src/model/formulas/berggren.ts';
import { schaferTime } from '../../../src/model/formulas/boreStorage.ts';
import { dropCableLength } from '../../../src/model/formulas/cableLength.ts';
import {
  areaForDrop,
  copperResistance,
  insulationResistanceFloor,
  resistanceRatio,
} from '../../../src/model/formulas/copper.ts';
import { leadAverage, waterClass } from '../../../src/model/formulas/corrosion.ts';
import { chlorineGranules } from '../../../src/model/formulas/disinfection.ts';
import { coneDistances, fitWellLoss } from '../../../src/model/formulas/drawdown.ts';
import { erf } from '../../../src/model/formulas/errorFunction.ts';
import { fittingGap } from '../../../src/model/formulas/fittingMatch.ts';
import { screenEntranceVelocity, velocityPastMotor } from '../../../src/model/formulas/flowPast.ts';
import { sineAmplitude, sineFreezingIndex } from '../../../src/model/formulas/freezingIndex.ts';
import { empiricalFrostDepth, frostDepthEstimate } from '../../../src/model/formulas/frost.ts';
import { darcyFactor, haaland, insertFittingLoss, swameeJain } from '../../../src/model/formulas/friction.ts';
import { requireNotNegative, requirePositive } from '../../../src/model/formulas/require.ts';
import { longestRun } from '../../../src/model/formulas/wire.ts';

const thiem = (near: number, nearDrawdown: number) => () =>
  thiemTransmissivity({
    flow: 1e-3,
    near: { radius: near, drawdown: nearDrawdown },
    far: { radius: 10, drawdown: 1 },
  });
const stefan = (surfaceIndex: number, conductivity: number, latentHeat: number) => () =>
  stefanDepth({ surfaceIndex, conductivity, latentHeat });
const winter = (change: Partial<Record<'surfaceIndex' | 'meanAnnual' | 'season', number>>) => () =>
  berggrenNumbers({ surfaceIndex: 500, meanAnnual: 5, season: 100, ...change }, { latentHeat: 1e8, heatCapacity: 2e6 });
const ground = (latentHeat: number, heatCapacity: number) => () =>
  berggrenNumbers({ surfaceIndex: 500, meanAnnual: 5, season: 100 }, { latentHeat, heatCapacity });
const numbers = (thermalRatio: number, fusion: number) => () => berggrenLambdaExplicit({ thermalRatio, fusion });
const cut = (change: Partial<Parameters<typeof dropCableLength>[0]>) => () =>
  dropCableLength({ setting: 30, pumpToSplice: 2, slack: 0.02, topAllowance: 1, ...change });
const drop = (change: { current?: number; length?: number }) => () =>
  areaForDrop({ phase: 1, current: 8, length: 90, drop: 5, ...change });
const water = (conductivity: number | null, acidity: number | null) => () => waterClass({ conductivity, acidity });
const lead = (area: number, share: number) => () =>
  leadAverage([
    { area: 10, lead: 0.001 },
    { area, lead: share },
  ]);

const granules = (strength: number) => () => chlorineGranules({ waterVolume: 1, target: 0.1, strength });
const screen = (openArea: number) => () => screenEntranceVelocity({ flow: 1e-3, diameter: 0.1, length: 3, openArea });
const casing = (insideDiameter: number) => () => velocityPastMotor({ flow: 1e-3, insideDiameter, motorDiameter: 0.1 });
const estimate = (change: { index?: number; meanAnnual?: number; surfaceFactor?: number }) => () =>
  frostDepthEstimate({ index: 500, meanAnnual: 5, season: 100, soil: 'sandy loam', surfaceFactor: 0.7, ...change });

const run = (change: { voltage?: number; current?: number; share?: number }) => () =>
  longestRun({ phase: 1, voltage: 230, current: 8, gauge: 10, share: 0.05, ...change });

type Bound = readonly [what: string, compute: () => unknown, refusal: string | null];

const BOUNDS: Readonly<Record<string, readonly Bound[]>> = {
  'pumping test': [
    ['a near well drawn down more', thiem(1, 2), null],
    ['a near well as far as the other', thiem(10, 2), 'the near well'],
    ['a near well farther than the other', thiem(11, 2), 'the near well'],
    ['a near well drawn down as much', thiem(1, 1), 'the near well'],
    ['a near well drawn down less', thiem(1, 0.5), 'the near well'],
    ['a well without drawdown per flow', () => transmissivityByRule(0, 'confined'), 'specific capacity is 0'],
  ],
  'frost in one soil': [
    ['a winter without frost, by Stefan', stefan(0, 1, 1e8), null],
    ['a frost below none, by Stefan', stefan(-1, 1, 1e8), 'index -1 K day'],
    ['ground that leads no heat', stefan(500, 0, 1e8), 'conductivity 0'],
    ['ground that leads less than none', stefan(500, -1, 1e8), 'conductivity -1'],
    ['ground without water, by Stefan', stefan(500, 1, 0), 'latent heat 0'],
    ['a winter, a mean, a season and a wet ground', winter({}), null],
    ['no frost', winter({ surfaceIndex: 0 }), 'index 0 K day'],
    ['a year that stays frozen', winter({ meanAnnual: 0 }), 'mean 0 degC'],
    ['a season without a day', winter({ season: 0 }), 'season 0 days'],
    ['a frost below none', winter({ surfaceIndex: -1 }), 'index -1 K day'],
    ['a year colder than that', winter({ meanAnnual: -1 }), 'mean -1 degC'],
    ['a season of less than none', winter({ season: -1 }), 'season -1 days'],
    ['ground without water', ground(0, 2e6), 'latent heat 0'],
    ['ground that holds no heat', ground(1e8, 0), 'all must be positive'],
    ['ground that stands at freezing', numbers(0, 0.1), null],
    ['ground below it', numbers(-1, 0.1), 'thermal ratio -1'],
    ['ground endlessly warm', numbers(Infinity, 0.1), 'thermal ratio Infinity'],
    ['water that freezes at no cost', numbers(1, Infinity), 'fusion parameter Infinity'],
    ['no fusion', numbers(1, 0), 'fusion parameter 0'],
    ['fusion past the chart', () => berggrenLambda({ thermalRatio: 0, fusion: 1e9 }), 'is too large'],
  ],
  'water in the bore': [
    [
      'a pipe as wide as its casing',
      () => schaferTime({ casingInsideDiameter: 0.1, dropPipeOutsideDiameter: 0.1, specificCapacity: 1e-4 }),
      'ring between casing and pipe is 0',
    ],
    [
      'a pipe wider than its casing',
      () => schaferTime({ casingInsideDiameter: 0.1, dropPipeOutsideDiameter: 0.2, specificCapacity: 1e-4 }),
      'ring between casing and pipe is -0.1',
    ],
  ],
  'length of cable': [
    [
      'a pump without a lead, and neither slack nor allowance',
      cut({ pumpToSplice: 0, slack: 0, topAllowance: 0 }),
      null,
    ],
    ['a lead as long as the setting', cut({ pumpToSplice: 30 }), null],
    ['a lead longer than the setting', cut({ pumpToSplice: 30.01 }), 'lead 30.01 m'],
    ['a lead shorter than none', cut({ pumpToSplice: -0.01 }), 'lead -0.01 m'],
    ['an endless well', cut({ setting: Infinity }), 'setting Infinity m'],
    ['cable that shrinks', cut({ slack: -0.01 }), 'slack -0.01'],
    ['less than none at the top', cut({ topAllowance: -0.01 }), 'allowance -0.01'],
  ],
  copper: [
    ['an endless area', () => copperResistance({ area: Infinity, temperature: 20 }), 'area is Infinity'],
    // 1 + 0.00393 (T - 20) is nothing at -234.45 degC.
    ['copper colder than its line goes', () => resistanceRatio(20 - 1 / 0.00393 - 0.01), 'temperature is'],
    ['copper endlessly warm', () => resistanceRatio(Infinity), 'temperature is Infinity'],
    ['a run without current', drop({ current: 0 }), null],
    ['a run without length', drop({ length: 0 }), null],
    ['a current below none', drop({ current: -1 }), 'current -1 A'],
    ['a run shorter than none', drop({ length: -1 }), 'length -1 m'],
    ['a motor at rest', () => insulationResistanceFloor(0), null],
    ['an endless voltage', () => insulationResistanceFloor(Infinity), 'voltage is Infinity'],
  ],
  corrosion: [
    ['water without a salt, at the sour end', water(0, 0), null],
    ['water at the other end', water(0, 14), null],
    ['water of which only its acidity is known', water(null, 7), null],
    ['less salt than none', water(-0.01, null), 'conductivity -0.01'],
    ['sourer than the scale', water(null, -0.1), 'pH -0.1'],
    ['past its other end', water(null, 14.1), 'pH 14.1'],
    ['past its other end, its salts known', water(0.04, 14.1), 'pH 14.1'],
    ['a part without surface, of no lead', lead(0, 0), null],
    ['a surface below none', lead(-1, 0.001), 'area -1 m2'],
    ['lead below none', lead(1, -0.001), 'lead -0.001'],
  ],
  disinfection: [
    ['chlorine and nothing else', granules(1), null],
    ['more chlorine than all', granules(1.01), 'strength is 1.01'],
  ],
  drawdown: [
    ['a step test without a step', () => fitWellLoss([]), 'needs one step or more'],
    ['two places round a well', () => coneDistances(0.1, 10, 2), null],
    ['one place round a well', () => coneDistances(0.1, 10, 1), 'two points are the least'],
    ['places no farther than the wall', () => coneDistances(0.1, 0.1, 2), 'must lie outside the well'],
    ['places inside the well', () => coneDistances(0.1, 0.05, 2), 'must lie outside the well'],
  ],
  'error function': [['an endless argument', () => erf(Infinity), 'x is Infinity']],
  fittings: [
    ['a barb made for no pipe', () => fittingGap({ pipeBore: 0.02, madeFor: 0 }), 'barb for 0 m'],
    ['a barb made for less', () => fittingGap({ pipeBore: 0.02, madeFor: -0.01 }), 'barb for -0.01 m'],
    ['a pipe endlessly wide', () => fittingGap({ pipeBore: Infinity, madeFor: 0.02 }), 'pipe Infinity m'],
    ['a barb endlessly thick', () => fittingGap({ pipeBore: 0.02, madeFor: Infinity }), 'barb for Infinity m'],
  ],
  'flow past the motor': [
    ['a screen that is all opening', screen(1), null],
    ['a screen that is more than opening', screen(1.01), 'open area is 1.01'],
    ['a screen without an opening', screen(0), 'open area is 0'],
    ['a screen with less', screen(-0.1), 'open area is -0.1'],
    ['a casing as wide as the motor', casing(0.1), 'does not fit'],
    ['a casing endlessly wide', casing(Infinity), 'does not fit'],
  ],
  'freezing index': [
    [
      'a year that swings endlessly',
      () => sineFreezingIndex({ meanAnnual: 5, amplitude: Infinity }),
      'amplitude Infinity',
    ],
    ['an endless winter', () => sineAmplitude({ index: Infinity, meanAnnual: 5 }), 'index Infinity'],
    ['a year that stays frozen', () => sineAmplitude({ index: 500, meanAnnual: 0 }), 'mean 0 degC'],
    ['a year colder than that', () => sineAmplitude({ index: 500, meanAnnual: -5 }), 'mean -5 degC'],
    ['a year endlessly warm', () => sineAmplitude({ index: 500, meanAnnual: Infinity }), 'mean Infinity'],
  ],
  'frost of a place': [
    ['a winter without frost', estimate({ index: 0 }), null],
    ['a surface that lets none in', estimate({ surfaceFactor: 0 }), null],
    ['a frost below none', estimate({ index: -1 }), 'index -1 K day'],
    ['a surface that lets in less', estimate({ surfaceFactor: -0.1 }), 'surface factor -0.1'],
    ['both, whose product is a frost', estimate({ index: -500, surfaceFactor: -0.7 }), 'must not be negative'],
    ['an endless winter', estimate({ index: Infinity }), 'index Infinity'],
    ['a year of no known mean', estimate({ meanAnnual: NaN }), 'mean NaN'],
    ['a frost of none, by the rule of thumb', () => empiricalFrostDepth(0), null],
    ['an endless winter, by the rule of thumb', () => empiricalFrostDepth(Infinity), 'index is Infinity'],
  ],
  'every formula': [
    ['a positive figure that is endless', () => requirePositive('it', 'flow', Infinity), 'it: flow is Infinity'],
    [
      'a figure of none or more that is endless',
      () => requireNotNegative('it', 'flow', Infinity),
      'it: flow is Infinity',
    ],
    ['none, where none is allowed', () => requireNotNegative('it', 'flow', 0), null],
  ],
  'longest run': [
    ['no voltage', run({ voltage: 0 }), 'longestRun: voltage 0 V'],
    ['less voltage', run({ voltage: -230 }), 'longestRun: voltage -230 V'],
    ['no current', run({ current: 0 }), 'longestRun: voltage 230 V, current 0 A'],
    ['less current', run({ current: -8 }), 'longestRun: voltage 230 V, current -8 A'],
    ['no share', run({ share: 0 }), 'longestRun: voltage 230 V, current 8 A, share 0'],
    ['less of a share', run({ share: -0.05 }), 'longestRun: voltage 230 V, current 8 A, share -0.05'],
  ],
  friction: [
    ['a fitting as wide as its pipe', () => insertFittingLoss(1), null],
    ['a fitting wider than its pipe', () => insertFittingLoss(1.001), 'bore ratio is 1.001'],
    ['a fitting without a bore', () => insertFittingLoss(0), 'bore ratio is 0'],
    ['a wall of half the bore', () => darcyFactor(1e5, 0.5), null],
    ['a wall rougher than that', () => darcyFactor(1e5, 0.501), 'roughness is 0.501'],
    ['a wall rougher than that, by Swamee and Jain', () => swameeJain(1e5, 0.501), 'swameeJain: relative'],
    ['a wall rougher than that, by Haaland', () => haaland(1e5, 0.501), 'haaland: relative'],
    ['a smooth wall', () => darcyFactor(1e5, 0), null],
    ['a wall smoother than smooth', () => darcyFactor(1e5, -1e-6), 'roughness is -0.000001'],
  ],
};

describe.each(Object.entries(BOUNDS))('%s', (_, bounds) => {
  test.each(bounds)('%s', (_what, compute, refusal) => {
    if (refusal === null) expect(compute).not.toThrow();
    else expect(compute).toThrow(refusal);
  });
});
