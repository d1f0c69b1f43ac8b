import { describe, expect, test } from 'vitest';
import { psi } from '../../../src/model/units.ts';
import { changed, findingOf, fixOf, judged, saidOf, solvedPlan, verdictOf } from './fixture.ts';

/** 1 in schedule 80: 630 psi with plain ends by 2 HDS t / (D - t), ASTM D1785; 1-1/4 in: 520 psi, 1-1/2 in: 471 psi. */
const pvc = (more: object = {}) => ({ dropPipe: { material: 'PVC', size: '1 in', ...more } });

describe('threaded PVC', () => {
  // Half: ASTM D1785, appendix, from memory. The well hangs on what the threads leave of the pipe.
  test('was judged at its full rating: 471 psi under a pump of 247 psi is too weak', () => {
    const bad = pvc({ size: '1-1/2 in', ratio: 'schedule 80' });
    expect(verdictOf('PR-18', bad, { shutOffPressureAtPump: psi(247) })).toBe('danger');
    expect(saidOf('PR-18', bad, { shutOffPressureAtPump: psi(247) }).message).toContain('235 psi');
  });

  test('passed in schedule 40, which is never threaded; schedule 80 is offered for it', () => {
    const { changes, words } = fixOf('PR-18', pvc({ ratio: 'schedule 40' }), { shutOffPressureAtPump: psi(100) });
    expect([changes, words]).toEqual([[{ path: 'dropPipe.ratio', to: 'schedule 80' }], 'Use schedule 80 pipe']);
  });

  test('of a printed rating keeps no rating of another wall', () => {
    const thin = pvc({ ratio: 'schedule 40', rating: '450 psi' });
    const { changes } = fixOf('PR-18', thin, { shutOffPressureAtPump: psi(100) });
    expect(changes).toEqual([
      { path: 'dropPipe.ratio', to: 'schedule 80' },
      { path: 'dropPipe.rating', to: '630 psi' },
    ]);
  });

  test('is no buried line: that is glued, and keeps its rating', () => {
    const line = { 'house.line': { material: 'PVC', size: '1 in', ratio: 'schedule 40' }, 'house.reliefValve': false };
    expect(verdictOf('PR-61', line, { shutOffPressureAtPump: psi(460) })).toBe('ok');
  });
});

describe('wider pipe', () => {
  const fast = { 'house.demand': '15.2 gpm' };

  test('was offered too weak: in PVC a wider one bears less', () => {
    const wide = { ...fast, ...pvc() };
    expect(fixOf('PR-47', wide, { shutOffPressureAtPump: psi(259) }).changes).toEqual([
      { path: 'dropPipe.size', to: '1-1/4 in' },
    ]);
    expect(fixOf('PR-47', wide, { shutOffPressureAtPump: psi(261) }).changes).toBeNull();
  });

  test('keeps the rating of PE', () => {
    expect(fixOf('PR-47', { ...fast, 'dropPipe.rating': '250 psi' }).changes).toEqual([
      { path: 'dropPipe.size', to: '1-1/4 in' },
    ]);
  });

  test('of a size that does not come in its ratio is told with another', () => {
    // ASTM D2737 tubing of 1 in is SDR 9 alone; in 1-1/4 in it is again.
    const tubing = { ...fast, dropPipe: { material: 'PE', size: '1 in', standard: 'ASTM D2737' } };
    const { changes } = fixOf('PR-47', tubing);
    const wide = changed({ ...tubing, ...Object.fromEntries((changes ?? []).map(({ path, to }) => [path, to])) });
    expect(solvedPlan(wide).facts.dropPipe.rating).toBeCloseTo(psi(250), 3);
  });

  test('of both pipes is told in one fix, each strong enough for its place', () => {
    const both = { 'house.demand': '16 gpm', 'house.line': { material: 'PE', size: '1 in', rating: '160 psi' } };
    expect(fixOf('PR-47', both).changes).toEqual([
      { path: 'dropPipe.size', to: '1-1/4 in' },
      { path: 'house.line.size', to: '1-1/4 in' },
    ]);
  });
});

describe('stronger pipe', () => {
  test('is strong enough for the running pressure, for no flow and by custom', () => {
    const { changes } = fixOf('PR-18', { 'dropPipe.rating': '125 psi' }, { shutOffPressureAtPump: psi(120) });
    expect(changes).toEqual([{ path: 'dropPipe.rating', to: '160 psi' }]);
  });

  test('of pipe that is known by its ratio has another ratio', () => {
    // SIDR 9 in PE4710 is 200 psi, SIDR 7 is 250 psi: 2 x 1000 / (SIDR + 1), ASTM D2239.
    const byRatio = { dropPipe: { material: 'PE', size: '1 in', ratio: 'SIDR 9' } };
    expect(fixOf('PR-18', byRatio, { shutOffPressureAtPump: psi(230) }).changes).toEqual([
      { path: 'dropPipe.ratio', to: 'SIDR 7' },
    ]);
  });

  test('is written in bar where the rating was', () => {
    const bar = { units: 'metric', 'dropPipe.rating': '13.8 bar' };
    expect(fixOf('PR-18', bar, { shutOffPressureAtPump: psi(230) }).changes).toEqual([
      { path: 'dropPipe.rating', to: '17.2 bar' },
    ]);
  });
});

describe('running pressure', () => {
  test('is that of the strongest pump that the name can stand for', () => {
    // At one flow a stronger pump has more head: over what the weaker one has where it crosses.
    const weak = { 'dropPipe.rating': '160 psi', 'pump.power': '1-1/2 hp' };
    const { numbers } = findingOf('PR-48', weak);
    const least = solvedPlan(changed(weak)).values.operatingHeadAtCutOut ?? 0;
    // Water at 50 degF: 999.7 kg/m3 (ISO 15927, any steam table).
    expect((numbers as { pressure: number }).pressure).toBeGreaterThan(least * 999.7 * 9.80665);
  });

  test('of metal pipe is not judged, and nothing is said to hold', () => {
    const steel = judged({ dropPipe: { material: 'galvanized steel', size: '1 in' } });
    expect(steel.holding.some(({ rule }) => rule === 'PR-48')).toBe(false);
  });
});

test('a line that nobody named is not said to be wide enough', () => {
  const held = judged({ 'house.line': undefined, 'house.demand': '8 gpm' }).holding.find(
    ({ rule }) => rule === 'PR-47',
  );
  expect(held?.variant).toBe('dropPipeAloneWideEnough');
});

test('a weak line under a strong pump is as strong as the pump asks, where no relief stands', () => {
  // 209 psi at the pump, less 35 ft of water under the outlet: 194 psi.
  const weak = { 'house.line.rating': '100 psi', 'house.reliefValve': false };
  expect(fixOf('PR-61', weak, { shutOffPressureAtPump: psi(209) }).changes).toEqual([
    { path: 'house.line.rating', to: '200 psi' },
  ]);
});

test('pressure that a flow-limiting valve holds back in the pipe is told as its doing', () => {
  const thin = { 'dropPipe.rating': '160 psi', 'pump.power': '2 hp' };
  const free = judged(thin).findings.find(({ rule }) => rule === 'PR-48');
  const held = saidOf('PR-48', { ...thin, 'pump.flowLimiter': '3 gpm' });
  expect(held.message).toMatch(/^The flow-limiting valve holds \d+ psi in the pipe; 72 % of its rating is \d+ psi\.$/);
  if (free !== undefined) expect(saidOf('PR-48', thin).message).toMatch(/^At cut-out up to /);
});
