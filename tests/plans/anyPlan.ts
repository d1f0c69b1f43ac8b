/** Plans as anyone might type them: every kind of well, facts left out at random, sound and foolish alike. */
import fc from 'fast-check';
import { withValue } from '../../src/model/plan/editPlan.ts';
import type { Plan } from '../../src/model/plan/schema.ts';

const ft = (least: number, most: number) =>
  fc.integer({ min: Math.round(least * 4), max: Math.round(most * 4) }).map((n) => n / 4);
const maybe = <T>(value: fc.Arbitrary<T>) => fc.option(value, { nil: undefined, freq: 3 });
const text = (unit: string) => (n: number) => `${n} ${unit}`;

/** Leaves out what is undefined: in a plan "not said" is an absent key. */
function said<T extends object>(object: T): T {
  return Object.fromEntries(Object.entries(object).filter(([, value]) => value !== undefined)) as T;
}

const intakes = ['open hole', 'screen', 'driven point', 'dug'] as const;

const shape = fc.record({
  depth: ft(12, 1000),
  intake: fc.constantFrom(...intakes),
  casingShare: fc.double({ min: 0.15, max: 0.8, noNaN: true }),
  screenShare: fc.double({ min: 0.05, max: 0.15, noNaN: true }),
  settingShare: fc.double({ min: 0.1, max: 1.2, noNaN: true }),
  staticShare: fc.double({ min: -0.02, max: 0.9, noNaN: true }),
});

const fullPlan: fc.Arbitrary<Plan> = shape.chain((well) => {
  const screened = well.intake === 'screen' || well.intake === 'driven point';
  const casingBottom = Math.max(Math.round(well.depth * well.casingShare), 2);
  const screenTop = casingBottom;
  const screenBottom = Math.min(casingBottom + Math.max(Math.round(well.depth * well.screenShare), 1), well.depth);
  const setting = Math.max(Math.round(well.depth * well.settingShare), 6);
  const level = Math.round(well.depth * well.staticShare);
  const dug = well.intake === 'dug';
  return fc
    .record({
      units: fc.constantFrom('us' as const, 'metric' as const),
      frostDepth: maybe(fc.integer({ min: 0, max: 90 }).map(text('in'))),
      septic: maybe(fc.integer({ min: 10, max: 150 }).map((n) => ({ distance: `${n} ft` }))),
      diameter: maybe(fc.constant(dug ? '36 in' : screened ? '4 in' : '6 in')),
      dryFall: maybe(fc.integer({ min: 0, max: 40 }).map(text('ft'))),
      yields: maybe(fc.integer({ min: 1, max: 40 }).map((n) => `${n / 2} gpm`)),
      staticLevel: fc.option(fc.constant(`${level} ft`), { nil: 'unknown', freq: 3 }),
      pumping: maybe(
        fc.oneof(
          fc.record({
            kind: fc.constant('test' as const),
            flow: fc.integer({ min: 1, max: 30 }).map(text('gpm')),
            drawdown: ft(0.25, 300).map(text('ft')),
            after: fc.constant('4 h'),
          }),
          fc.record({
            kind: fc.constant('level' as const),
            level: fc.integer({ min: Math.max(level, 1), max: Math.max(level, 1) + 200 }).map(text('ft')),
            flow: fc.constant('8 gpm'),
          }),
          fc.record({
            kind: fc.constant('aquifer' as const),
            transmissivity: fc.integer({ min: 1, max: 500 }).map(text('m2/d')),
            storativity: fc.constant('0.0002'),
          }),
          fc.constant({ kind: 'yield only' as const }),
        ),
      ),
      demand: fc.integer({ min: 1, max: 25 }).map(text('gpm')),
      distance: maybe(fc.integer({ min: 5, max: 800 }).map(text('ft'))),
      rise: maybe(fc.integer({ min: -20, max: 120 }).map(text('ft'))),
      tank: maybe(fc.integer({ min: 10, max: 120 }).map(text('gal'))),
      line: maybe(fc.constant({ material: 'PE' as const, size: '1 in', rating: '200 psi' })),
      top: fc.oneof(
        fc
          .integer({ min: 12, max: 110 })
          .map((n) => ({ kind: 'pitless' as const, depth: `${Math.min(n, Math.floor((setting - 3) * 12))} in` })),
        fc.constant({ kind: 'seal' as const }),
      ),
      power: maybe(fc.constantFrom('1/2 hp', '3/4 hp', '1 hp', '1-1/2 hp', '2 hp', '3 hp', '5 hp')),
      rated: fc.constantFrom('5 gpm', '7 gpm', '10 gpm', '15 gpm', '25 gpm'),
      pipe: fc.constantFrom(
        { material: 'PE' as const, size: '1 in', rating: '200 psi' },
        { material: 'PE' as const, size: '1-1/4 in', rating: '160 psi' },
        { material: 'PVC' as const, size: '1-1/4 in' },
        { material: 'galvanized steel' as const, size: '1-1/4 in' },
        { material: 'PE' as const, size: '40 mm', rating: 'PN 16' },
        { material: 'galvanized steel' as const, standard: 'EN 10255' as const, size: 'DN 32' },
      ),
      gauge: fc.constantFrom('14 AWG', '12 AWG', '10 AWG', '8 AWG', '6 AWG', '2.5 mm2', '6 mm2'),
      rope: maybe(fc.constant({ material: 'polypropylene', breakingStrength: '1125 lbf' })),
      splices: maybe(fc.constantFrom([], ['4 ft'], ['4 ft', '40 ft'])),
      valves: maybe(fc.constantFrom([], ['0 ft'], ['0 ft', '30 ft'])),
      arrestor: maybe(fc.constantFrom('none', '2 ft', '6 ft')),
    })
    .map((each): Plan => {
      const plan = {
        format: 'wellcut-plan/1',
        units: each.units,
        site: said({ frostDepth: each.frostDepth, septicTank: each.septic }),
        well: said({
          depth: `${well.depth} ft`,
          casing: {
            material: dug ? 'concrete' : 'steel',
            size: dug ? '36 in' : '6 in',
            bottom: `${casingBottom} ft`,
            height: '12 in',
          },
          intake: said({
            kind: well.intake,
            diameter: each.diameter,
            ...(screened ? { top: `${screenTop} ft`, bottom: `${screenBottom} ft` } : {}),
          }),
          yield: each.yields,
          layers: [
            { material: 'clay', bottom: `${Math.max(casingBottom / 2, 1)} ft` },
            { material: 'limestone', bottom: `${well.depth} ft` },
          ],
        }),
        water: said({ staticLevel: each.staticLevel, dryFall: each.dryFall, pumping: each.pumping }),
        house: said({
          demand: each.demand,
          distance: each.distance,
          rise: each.rise,
          tank: each.tank,
          line: each.line,
          reliefValve: true,
        }),
        top: each.top,
        pump: said({ setting: `${setting} ft`, power: each.power, curve: { kind: 'generic', flow: each.rated } }),
        dropPipe: each.pipe,
        string: said({ checkValves: each.valves, splices: each.splices, torqueArrestor: each.arrestor }),
        wire: { size: each.gauge },
        ...(each.rope ? { rope: each.rope } : {}),
      };
      return plan as unknown as Plan;
    });
});

/** What a plan may leave to be assumed, or does not know of its casing. */
const LEFT_OUT = [
  'house.demand',
  'house',
  'top',
  'top.depth',
  'pump.setting',
  'pump.curve',
  'pump.curve.flow',
  'pump',
  'dropPipe',
  'dropPipe.material',
  'dropPipe.size',
  'dropPipe.rating',
  'wire.size',
  'wire',
  'well.casing.size',
  'well.casing.material',
] as const;

/** Every other plan says all that can be chosen; the rest leave some of it out. */
export const anyPlan: fc.Arbitrary<Plan> = fc
  .tuple(fullPlan, fc.option(fc.subarray([...LEFT_OUT], { minLength: 1, maxLength: 5 }), { nil: [], freq: 2 }))
  .map(([plan, gaps]) =>
    gaps.reduce((left, path) => {
      // A pipe of PVC is no pipe of PE: what is left of it would not read.
      if (path === 'dropPipe.material' && left.dropPipe?.material !== 'PE') return left;
      return withValue(left, path, undefined);
    }, plan),
  );
