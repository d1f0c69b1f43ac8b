/** What nobody said is not taken to be as it suits: to learn it turns nothing that held into a warning. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { withValue } from '../../../src/model/plan/editPlan.ts';
import { readPlan } from '../../../src/model/plan/readPlan.ts';
import type { Plan } from '../../../src/model/plan/schema.ts';
import { solve } from '../../../src/model/solve.ts';
import { anyPlan } from '../../plans/anyPlan.ts';
import { rockWell } from '../../plans/build.ts';
import { BAD } from '../../wells/bad.ts';
import { SOUND } from '../../wells/sound.ts';

/** Values that a fact may turn out to have, by path. */
const LEARNT: Readonly<Record<string, readonly unknown[]>> = {
  'pump.power': ['1/2 hp', '1 hp', '2 hp', '5 hp'],
  'pump.frequency': ['50 Hz', '60 Hz'],
  'pump.current': ['4 A', '30 A'],
  'dropPipe.rating': ['100 psi', '160 psi', '315 psi'],
  'house.line.rating': ['100 psi', '160 psi', '315 psi'],
  'house.tank': ['10 gal', '120 gal'],
  'house.reliefValve': [true, false],
  'house.rise': ['-20 ft', '60 ft'],
  'house.distance': ['10 ft', '600 ft'],
  'site.frostDepth': ['0 in', '90 in'],
  'site.floodHeight': ['-1 ft', '4 ft'],
  'site.septicTank.distance': ['10 ft', '200 ft'],
  'top.protrusion': ['0.4 in', '1.3 in'],
  'water.sand': [true, false],
  'water.gas': [true, false],
  'water.pH': ['5', '7.5'],
  'water.conductivity': ['3000 uS/cm'],
  'water.staticLowest': ['60 ft', '500 ft'],
  'water.staticHighest': ['0.5 ft', '2 ft'],
  'well.yield': ['0.5 gpm', '30 gpm'],
  'well.inPit': [true, false],
  'well.grout.bottom': ['5 ft'],
  'well.intake.diameter': ['6 in', '10 in'],
  'rope.breakingStrength': ['100 lbf'],
};

/** What holds though the fact is unknown, and may be overturned by it: each with what its holding says instead. */
const ALLOWED: readonly { readonly path: RegExp; readonly rules: RegExp; readonly since: string }[] = [
  { path: /^water\.staticLowest$/, rules: /./, since: 'one reading is no dry season: PR-02 says that it holds today' },
  { path: /^water\.staticHighest$/, rules: /./, since: 'one reading is no wet season: PR-20 and PR-38 say so' },
  {
    path: /^well\.yield$/,
    rules: /./,
    since: 'a test stands in for it; to say less than was pumped contradicts the test',
  },
  { path: /^site\./, rules: /^PR-40$/, since: 'each source is held against its own distance; the others are listed' },
  { path: /^(?:pump\.power|rope\.)/, rules: /^PR-16$/, since: 'says only how the rope is tied, not what it bears' },
];
const WORSE: readonly string[] = ['warning', 'danger'];

function overturned(plan: Plan): string[] {
  const before = solve(plan);
  return before.unknown.flatMap((path) =>
    (LEARNT[path] ?? []).flatMap((to) => {
      const read = readPlan(JSON.parse(JSON.stringify(withValue(plan, path, to))));
      if (!read.ok) return [];
      const { verdicts } = solve(read.plan);
      return before.holding
        .filter(({ rule, assumed }) => WORSE.includes(verdicts[rule]!) && !assumed.includes(path))
        .filter(({ unsaid }) => !unsaid.includes(path))
        .filter(({ rule }) => !ALLOWED.some((one) => one.path.test(path) && one.rules.test(rule)))
        .map(({ rule }) => `${rule} holds with ${path} unknown, and with ${String(to)} is a ${verdicts[rule]}`);
    }),
  );
}

test('in sound and bad wells', () => {
  const plans = [...SOUND, ...BAD].map(({ plan }) => readPlan(plan)).flatMap((read) => (read.ok ? [read.plan] : []));
  expect([...new Set(plans.flatMap(overturned))]).toEqual([]);
});

test('in 200 plans made at random', () => {
  fc.assert(
    fc.property(anyPlan, (plan) => {
      expect(overturned(plan)).toEqual([]);
    }),
    { seed: 62, numRuns: 200 },
  );
});

test('how long a motor of unknown power must run is not known between both limits', () => {
  const tank = (volume: string, power?: string) =>
    solve(
      rockWell({
        pump: { setting: '140 ft', curve: { kind: 'generic', flow: '10 gpm' }, ...(power ? { power } : {}) },
        house: { demand: '7 gpm', tank: volume, cutIn: '30 psi', cutOut: '50 psi', precharge: '28 psi' },
      }),
    );
  // 44 gal in all give some 13 gal between the pressures: 77 s of 10 gpm.
  const between = tank('44 gal');
  expect(between.verdicts['PR-56']).toBe('not judged');
  expect(between.notJudged).toContainEqual(expect.objectContaining({ rule: 'PR-56', fields: ['pump.power'] }));
  expect(tank('44 gal', '1 hp').verdicts['PR-56']).toBe('ok');
  expect(tank('44 gal', '5 hp').verdicts['PR-56']).toBe('warning');
  // Enough for any motor, and for none.
  expect(tank('119 gal').verdicts['PR-56']).toBe('ok');
  expect(tank('14 gal').verdicts['PR-56']).toBe('warning');
});
