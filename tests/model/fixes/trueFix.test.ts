/** Wells in which one right step is hidden by a trifle, or by another fix that pulls the other way. */
import { describe, expect, test } from 'vitest';
import { changed, fixesOf } from '../../../src/model/fixes/fixesOf.ts';
import type { Plan } from '../../../src/model/index.ts';
import { solve } from '../../../src/model/solve.ts';
import { show } from '../../../src/model/units.ts';
import { en } from '../../../src/words/en/index.ts';
import { sayFix } from '../../../src/words/sayJudgement.ts';
import { withValue } from '../../../src/model/plan/editPlan.ts';
import { planOf } from '../../plans/build.ts';

/** Steel pipe too heavy for any team, wire a hair too thin, a pump that barely reaches cut-out, and too little water over it. */
const LITTLE_WATER = planOf({
  format: 'wellcut-plan/1',
  title: 'Quebrada Alta',
  units: 'metric',
  site: { frostDepth: '0 m', frostFrom: 'local code' },
  well: {
    depth: '90 m',
    depthsFrom: 'casing top',
    casing: { material: 'PVC', size: '6 in', schedule: 'schedule 40', bottom: '90 m', height: '0.4 m' },
    grout: { bottom: '15 m' },
    intake: { kind: 'screen', screens: [{ top: '70 m', bottom: '88 m', slot: '1 mm', openArea: '6 %' }] },
    yield: '1 L/s',
    yieldFrom: 'pump',
  },
  water: {
    staticLevel: '35 m',
    staticLowest: '41 m',
    pumping: { kind: 'level', level: '48 m', flow: '1 L/s' },
  },
  house: {
    demand: '45 L/min',
    cutIn: '2 bar',
    cutOut: '3.5 bar',
    tank: '300 L',
    distance: '40 m',
    rise: '4 m',
    line: { material: 'PVC', size: '1-1/4 in', ratio: 'schedule 40' },
  },
  top: { kind: 'seal' },
  pump: { setting: '60 m', power: '1.5 kW', curve: { kind: 'generic', flow: '60 L/min' }, voltage: '230 V' },
  dropPipe: { material: 'galvanized steel', size: '1-1/4 in', sectionLength: '6 m' },
  string: { torqueArrestor: 'none' },
  wire: { size: '10 AWG', run: '55 m' },
});

/** The motor 3.5 ft off the bottom of a rock well that gives less than the pump takes. */
const ON_THE_BOTTOM = planOf({
  format: 'wellcut-plan/1',
  title: 'Kiln Brook',
  site: { frostDepth: '42 in', frostFrom: 'local code' },
  well: {
    depth: '325 ft',
    casing: { material: 'steel', size: '6 in', bottom: '60 ft', height: '18 in' },
    intake: { kind: 'open hole', diameter: '6 in' },
    yield: '6 gpm',
    yieldFrom: 'air lift',
    layers: [
      { material: 'clay', bottom: '30 ft' },
      { material: 'granite', bottom: '325 ft' },
    ],
  },
  water: { staticLevel: '45 ft', pumping: { kind: 'yield only' } },
  house: {
    demand: '8 gpm',
    cutIn: '40 psi',
    cutOut: '60 psi',
    distance: '80 ft',
    rise: '5 ft',
    tank: '44 gal',
    reliefValve: true,
    line: { material: 'PE', size: '1 in', rating: '200 psi' },
  },
  top: { kind: 'pitless', depth: '5 ft', protrusion: '0.75 in' },
  pump: { setting: '320 ft', power: '2 hp', curve: { kind: 'generic', flow: '10 gpm' }, voltage: '230 V' },
  dropPipe: { material: 'PE', size: '1-1/4 in', rating: '200 psi' },
  wire: { size: '12 AWG' },
});

function told(plan: Plan, rule: string) {
  const solution = solve(plan);
  const at = solution.findings.findIndex((each) => each.rule === rule);
  const offered = fixesOf(plan, solution)[at]!;
  const fix = (offered.button ?? offered.words)!;
  return { changes: offered.button?.changes ?? null, words: sayFix(rule, fix, en, show(solution.facts.units)) };
}

describe('a pump with too little water over it', () => {
  test('is lowered, though its wire loses a trifle more then and its string was too heavy before', () => {
    const before = solve(LITTLE_WATER);
    expect(before.verdicts).toMatchObject({
      'PR-02': 'danger',
      'PR-46': 'warning',
      'PR-49': 'warning',
      'PR-51': 'warning',
    });
    const { changes, words } = told(LITTLE_WATER, 'PR-02');
    expect(words).toMatch(/^Lower to 6\d(?:\.\d)? m$/);
    const after = solve(changed(LITTLE_WATER, changes!));
    expect(after.verdicts['PR-02']).toBe('ok');
    expect(after.findings.filter(({ severity }) => severity === 'danger')).toEqual([]);
  });

  test('is never told to be a smaller one where it barely reaches the switch as it is', () => {
    const installed = withValue(LITTLE_WATER, 'status', { pump: 'installed' });
    const { changes, words } = told(planOf(JSON.parse(JSON.stringify(installed))), 'PR-02');
    expect(changes).toBeNull();
    expect(words).not.toMatch(/smaller/);
    for (const { button, words: said } of fixesOf(LITTLE_WATER, solve(LITTLE_WATER)))
      expect((button ?? said)?.variant).not.toBe('pumpLess');
  });

  test('may be a smaller one where it has pressure to spare', () => {
    const strong = withValue(withValue(LITTLE_WATER, 'house.cutOut', '2.4 bar'), 'house.cutIn', '1 bar');
    const installed = planOf(JSON.parse(JSON.stringify(withValue(strong, 'status', { pump: 'installed' }))));
    expect(solve(installed).verdicts['PR-46']).toBe('ok');
    expect(told(installed, 'PR-02').words).toMatch(/a smaller pump/);
  });
});

describe('a motor in the mud of a well that cannot keep up', () => {
  const probed = planOf(JSON.parse(JSON.stringify(withValue(ON_THE_BOTTOM, 'pump.lowLevelCutOff', '318 ft'))));

  test.each([
    ['without dry-run protection', ON_THE_BOTTOM, 'PR-01'],
    ['without dry-run protection, by its water', ON_THE_BOTTOM, 'PR-02'],
    ['with its probe just over it', probed, 'PR-01'],
  ])('%s comes up with its probe in one step', (_, plan, rule) => {
    expect(solve(plan).verdicts['PR-01']).toBe('danger');
    const { changes, words } = told(plan, rule);
    expect(words).toBe('Raise to 313 ft, and hang the probe at 311 ft');
    const after = solve(changed(plan, changes!));
    expect([after.verdicts['PR-01'], after.verdicts['PR-02']]).toEqual(['ok', 'ok']);
  });

  test('is told of no depth that meets both while one does', () => {
    for (const plan of [ON_THE_BOTTOM, probed])
      for (const { words } of fixesOf(plan, solve(plan))) expect(words?.variant).not.toBe('noDepthMeetsBoth');
  });
});
