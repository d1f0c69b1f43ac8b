/** The two sets of invented wells are plans that read, and each of the bad ones is a sound one with something changed. */
import { describe, expect, it } from 'vitest';
import { readPlan, sayProblem } from '../../src/model/index.ts';
import { BAD } from './bad.ts';
import { SOUND } from './sound.ts';

const problems = (plan: unknown): string[] => {
  const reading = readPlan(plan);
  return reading.ok ? [] : reading.problems.map(sayProblem);
};
const unitsOf = (plan: unknown): string => (plan as { units?: string }).units ?? 'us';
const planOn = (on: string): unknown => SOUND.find(({ name }) => name === on)?.plan;

describe('sound wells', () => {
  it.each(SOUND)('$name reads', ({ plan }) => expect(problems(plan)).toEqual([]));

  it('are enough, of both unit systems, each with its own name', () => {
    expect(SOUND.length).toBeGreaterThanOrEqual(34);
    expect(SOUND.filter(({ plan }) => unitsOf(plan) === 'metric').length).toBeGreaterThanOrEqual(12);
    expect(SOUND.filter(({ plan }) => unitsOf(plan) === 'us').length).toBeGreaterThanOrEqual(12);
    expect(new Set(SOUND.map(({ name }) => name)).size).toBe(SOUND.length);
  });
});

describe('bad wells', () => {
  it.each(BAD)('$name reads', ({ plan }) => expect(problems(plan)).toEqual([]));

  it.each(BAD)('$name is a sound well with something changed', ({ plan, on }) => {
    const sound = planOn(on);
    expect(sound).toBeDefined();
    expect(plan).not.toEqual(sound);
    // A copy: what is changed in it leaves the sound one as it was.
    expect((plan as { well: unknown }).well).not.toBe((sound as { well: unknown }).well);
  });

  it.each(BAD)('$name names rules, each once', ({ breaks }) => {
    expect(new Set(breaks).size).toBe(breaks.length);
    for (const rule of breaks) expect(rule).toMatch(/^PR-\d\d$/);
  });

  it('are enough, of both unit systems, each with its own name', () => {
    expect(BAD.length).toBeGreaterThanOrEqual(46);
    expect(new Set(BAD.map(({ plan }) => unitsOf(plan)))).toEqual(new Set(['us', 'metric']));
    expect(new Set(BAD.map(({ name }) => name)).size).toBe(BAD.length);
  });
});
