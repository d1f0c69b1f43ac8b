import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Facts } from '../../../src/model/facts.ts';
import { readFacts } from '../../../src/model/plan/readFacts.ts';
import { readPlan } from '../../../src/model/plan/readPlan.ts';
import { fields } from '../../../src/model/plan/fields.ts';
import { valueAt, withValue } from '../../../src/model/plan/editPlan.ts';
import type { Plan } from '../../../src/model/plan/schema.ts';
import { feet, gpm, inches, psi } from '../../../src/model/units.ts';
import { anyPlan } from '../../plans/anyPlan.ts';
import { edgePlan } from './edgePlan.ts';
import { SAMPLES, sample, spoiled } from './sample.ts';

/** An assumed value, told for people, as the plan would hold it. */
function typedAs(path: string, value: string): unknown {
  if (['string.checkValves', 'string.splices'].includes(path)) return value === 'none' ? [] : value.split(', ');
  const kind = fields.find((field) => field.path === path)?.kind;
  if (kind === 'flag') return value === 'yes';
  return kind === 'count' || (kind === 'choice' && /^\d+$/.test(value)) ? Number(value) : value;
}

function expectSameTyped(plan: Plan): void {
  const { facts, assumed } = readFacts(plan);
  // In the order of the list: which kind a thing is stands before what belongs to it.
  const typed = assumed.reduce((made, { path, value }) => withValue(made, path, typedAs(path, value)), plan);
  const again = readPlan(typed);
  expect(again.ok ? [] : again.problems).toEqual([]);
  const read = readFacts(typed);
  expect(read.assumed).toEqual([]);
  // A current that is typed counts as the nameplate's; a weight is rounded where it is told.
  const plain = (each: Facts) => ({ ...each, pump: { ...each.pump, current: null, mass: 0 } });
  expect(plain(read.facts)).toEqual(plain(facts));
}

function factsOf(plan: unknown) {
  return readFacts(plan as Plan);
}

describe('a plan in SI', () => {
  const { facts } = readFacts(sample());

  test('holds what was typed', () => {
    expect(facts.well.depth).toBe(feet(220));
    expect(facts.well.casingHeight).toBeCloseTo(inches(16), 12);
    expect(facts.well.casings[0]).toMatchObject({ top: -inches(16), bottom: feet(90), nominalSize: '6 in' });
    expect(facts.house.demand).toBe(gpm(8));
    expect(facts.house.cutOut).toBe(psi(60));
    expect(facts.site.waterTemperature).toBe(10);
    expect(facts.wire.gauge).toBe(10);
    expect(facts.well.layers.map(({ top }) => top)).toEqual([0, feet(28), feet(61), feet(84)]);
  });

  test('the lowest level is the static level and the dry fall together', () => {
    expect(facts.water.staticLowest).toBeCloseTo(feet(77), 12);
  });

  // ASME B36.10M: 6 in schedule 40 is 6.625 in outside with a 0.280 in wall.
  test('a casing has the true bore of its standard', () => {
    expect(facts.well.casings[0]!.insideDiameter).toBeCloseTo(inches(6.065), 9);
  });

  // ASTM D2239: 2 x hydrostatic design stress / (SIDR + 1); PE4710 has 1000 psi, so 200 psi is SIDR 9. Bore of 1 in: 1.049 in.
  test('the wall of a PE pipe follows from its printed rating and resin', () => {
    expect(facts.dropPipe).toMatchObject({ wallClass: 'SIDR 9', resin: 'PE4710', rating: psi(200) });
    expect(facts.dropPipe.insideDiameter).toBeCloseTo(inches(1.049), 9);
  });
});

describe('the datum', () => {
  const fromTop = { ...sample(), well: { ...sample().well, depthsFrom: 'casing top' as const } };
  const shifted = readFacts(fromTop).facts;
  const { facts } = readFacts(sample());
  const height = inches(16);

  test('depths under well and water and the pump setting are shifted by the casing height', () => {
    expect(shifted.well.depth).toBeCloseTo(facts.well.depth - height, 12);
    expect(shifted.well.casings[0]!.bottom).toBeCloseTo(feet(90) - height, 12);
    expect(shifted.well.groutBottom).toBeCloseTo(feet(90) - height, 12);
    expect(shifted.well.inflows![0]!.depth).toBeCloseTo(feet(150) - height, 12);
    expect(shifted.well.layers[0]).toMatchObject({ top: 0, bottom: feet(28) - height });
    expect(shifted.water.staticLevel).toBeCloseTo(feet(62) - height, 12);
    expect(shifted.pump.setting).toBeCloseTo(feet(180) - height, 12);
  });

  test('no difference, no height and nothing of frost or the adapter is shifted', () => {
    expect(shifted.water.pumping).toEqual(facts.water.pumping);
    expect(shifted.water.staticLowest! - shifted.water.staticLevel!).toBeCloseTo(feet(15), 12);
    expect(shifted.site.frostDepth).toBe(facts.site.frostDepth);
    expect(shifted.top).toEqual(facts.top);
    expect(shifted.string).toEqual(facts.string);
    expect(shifted.well.casingHeight).toBe(height);
    expect(shifted.well.casings[0]!.top).toBe(-height);
  });
});

describe('what nobody said', () => {
  const bare = {
    format: 'wellcut-plan/1',
    well: { depth: '200 ft', casing: { material: 'steel', size: '6 in' }, intake: { kind: 'open hole' } },
    water: { staticLevel: 'unknown' },
    house: { demand: 'unknown' },
    top: { kind: 'pitless', depth: '6 ft' },
    pump: { setting: '150 ft', curve: { kind: 'generic', flow: '10 gpm' } },
    dropPipe: { material: 'PE', size: '1 in' },
    wire: { size: '12 AWG' },
  };
  const reading = factsOf(bare);

  test('is unknown where it is a fact of the place', () => {
    expect(readPlan(bare).ok).toBe(true);
    const { facts, unknown } = reading;
    expect(facts.water.staticLevel).toBeNull();
    expect(facts.well.casings[0]!.bottom).toBeNull();
    expect(facts.well.inflows).toBeNull();
    expect(facts.dropPipe).toMatchObject({ wallClass: null, rating: null });
    for (const path of [
      'site.frostDepth',
      'water.staticLevel',
      'water.pumping',
      'house.demand',
      'house.distance',
      'house.rise',
      'well.casing.bottom',
      'well.intake.diameter',
      'pump.power',
      'dropPipe.rating',
    ]) {
      expect(unknown).toContain(path);
    }
  });

  test('takes its default, and says so, where it is a choice of the build', () => {
    const assumed = Object.fromEntries(reading.assumed.map(({ path, value }) => [path, value]));
    expect(assumed).toMatchObject({
      units: 'us',
      'well.depthsFrom': 'ground',
      'well.casing.height': '12 in',
      'site.waterTemperature': '50 degF',
      'site.frostMargin': '6 in',
      'house.cutIn': '40 psi',
      'house.cutOut': '60 psi',
      'house.precharge': '38 psi',
      'house.tankRating': '100 psi',
      'pump.voltage': '230 V',
      'pump.phase': '1',
      'pump.wires': '3',
      'pump.intakeToMotorBottom': '1.5 ft',
      'string.checkValves': '0 ft',
      'pump.checkValveInside': 'no',
      'string.torqueArrestor': '2 ft',
      'dropPipe.resin': 'PE4710',
      'dropPipe.standard': 'ASTM D2239',
      'disinfection.target': '100 mg/L',
    });
  });

  test('no path is both assumed and unknown, and none twice', () => {
    for (const name of SAMPLES) {
      const { assumed, unknown } = readFacts(sample(name));
      const paths = [...assumed.map(({ path }) => path), ...unknown];
      expect(new Set(paths).size).toBe(paths.length);
    }
  });

  test('everything assumed was left out of the plan', () => {
    for (const name of SAMPLES) {
      const plan = sample(name);
      for (const { path } of readFacts(plan).assumed) expect([path, valueAt(plan, path)]).toEqual([path, undefined]);
    }
  });

  test.each([['tamarack-ridge'], ['heron-flats'], ['slate-hollow']] as const)(
    '%s: an assumed value, typed in, leaves the facts as they are',
    (name) => {
      expectSameTyped(sample(name));
    },
  );
});

test('a motor above 2 hp is longer, one of 1.5 kW (2.012 hp) is not', () => {
  expect(factsOf(spoiled('pump.power', '3 hp')).facts.pump.intakeToMotorBottom).toBe(feet(2.5));
  expect(factsOf(spoiled('pump.power', '1.5 kW')).facts.pump.intakeToMotorBottom).toBe(feet(1.5));
});

test('an aquifer without a radius takes half the hole', () => {
  const pumping = { kind: 'aquifer', transmissivity: '50 m2/d', storativity: '0.0002' };
  const { facts, assumed } = factsOf(spoiled('water.pumping', pumping));
  expect(facts.water.pumping).toMatchObject({ kind: 'aquifer', radius: inches(3), after: 24 * 3600 });
  expect(assumed).toContainEqual({ path: 'water.pumping.radius', value: '3 in' });
});

test('several screens and a single one in its short form read alike', () => {
  const short = factsOf(sample('palo-amargo')).facts.well.intake.screens;
  const { top, bottom, ...intake } = sample('palo-amargo').well.intake;
  const long = factsOf(spoiled('well.intake', { ...intake, screens: [{ top, bottom }] }, 'palo-amargo')).facts.well
    .intake.screens;
  expect(long).toEqual(short);
});

test('what no figure reads yet is kept and listed', () => {
  const well = { ...sample().well, tested: '2019' };
  expect(factsOf(spoiled('well', well)).notUsed).toEqual(['well.tested']);
});

test('every plan that reads has finite facts, and is left as it was', () => {
  fc.assert(
    fc.property(edgePlan, (plan) => {
      const before = JSON.stringify(plan);
      const loose: string[] = [];
      JSON.stringify(readFacts(plan), (key, value: unknown) => {
        if (typeof value === 'number' && !Number.isFinite(value)) loose.push(key);
        return value;
      });
      return loose.length === 0 && JSON.stringify(plan) === before;
    }),
    { seed: 61, numRuns: 400 },
  );
});

test('any plan, with all typed in that was assumed of it, has the same facts and assumes nothing', () => {
  fc.assert(
    fc.property(anyPlan, (plan) => {
      expectSameTyped(plan);
    }),
    { seed: 67, numRuns: 300 },
  );
});
