import { describe, expect, test } from 'vitest';
import { poundsForce, show } from '../../../src/model/units.ts';
import { en } from '../../../src/words/en/index.ts';
import { sayFinding } from '../../../src/words/sayJudgement.ts';
import { findingOf, judged, saidOf } from './fixture.ts';

describe('what hangs on the hook', () => {
  test('is judged as it hangs at rest, not as it would in an empty well', () => {
    const loads = { hangLoadAtRest: poundsForce(60), hangLoadDry: poundsForce(223) };
    expect(judged({}, loads).verdicts['PR-51']).toBe('ok');
  });

  test.each([
    [60, null, null],
    [69, 'note', 'needsWheel'],
    [151, 'note', 'needsHoist'],
    [301, 'warning', 'needsMachine'],
  ] as const)('of %d lb is %s', (pounds, severity, variant) => {
    const found = judged({}, { hangLoadAtRest: poundsForce(pounds) }).findings.find(({ rule }) => rule === 'PR-51');
    expect([found?.severity ?? null, found?.variant ?? null]).toEqual([severity, variant]);
  });

  test('has its mark at the hook over the casing, and not on the adapter', () => {
    const finding = findingOf('PR-51', { 'well.casing.height': '18 in' }, { hangLoadAtRest: poundsForce(200) });
    expect(finding.depth).toBeCloseTo(-0.4572, 9);
  });

  test('is told in kilograms to a metric reader, and always with the caution', () => {
    const finding = findingOf('PR-51', {}, { hangLoadAtRest: poundsForce(200) });
    const { message, caution } = sayFinding(finding, en, show('metric'));
    // 1 lb is 0.45359237 kg (NIST SP 811): 200 lb is 90.7 kg, 150 lb is 68.0 kg.
    expect(message).toBe('At rest 91 kg hangs on the hook; over 68 kg it takes a hoist and two pipe holders.');
    expect(caution).toMatch(/hold it with a pipe clamp.*power lines/);
    expect(saidOf('PR-51', {}, { hangLoadAtRest: poundsForce(200) }).message).toMatch(/^At rest 200 lb .* over 150 lb/);
  });
});
