import { describe, expect, test } from 'vitest';
import { show, toFeet } from '../../../src/model/units.ts';
import { en } from '../../../src/words/en/index.ts';
import { sayHolding } from '../../../src/words/sayJudgement.ts';
import type { Changes } from './fixture.ts';
import { judged, saidOf } from './fixture.ts';

const heldBy = (rule: string, changes: Changes) => {
  const held = judged(changes).holding.find((each) => each.rule === rule);
  return held === undefined ? null : sayHolding(held, en, show('us'));
};

describe('how deep casing and seal reach', () => {
  test('holds for the casing alone where nobody said how deep the grout goes', () => {
    const { title, message } = heldBy('PR-35', { 'well.grout': undefined })!;
    expect(title).toBe('The casing reaches deep enough, its seal not known');
    expect(message).toBe('Casing reaches 60 ft; 20 ft is usual. Nobody said how deep its grout goes.');
  });

  test('holds for both where it was said', () => {
    expect(heldBy('PR-35', { 'well.grout': { bottom: '60 ft' } })!.title).toBe('Casing and seal reach deep enough');
  });

  test('is broken by the one that is short', () => {
    expect(saidOf('PR-35', { 'well.grout': { bottom: '10 ft' } }).title).toBe('The seal round the casing is shallow');
    expect(saidOf('PR-35', { 'well.casing.bottom': '10 ft' }).title).toBe('The casing is shallow');
  });
});

test('while nobody knows the pumping level, a screen’s casing turns five feet above its end', () => {
  const told = judged({
    'water.pumping': { kind: 'yield only' },
    'well.inflows': undefined,
    'well.casing.bottom': '150 ft',
    'well.intake': { kind: 'screen', diameter: '5 in', screens: [{ top: '150 ft', bottom: '170 ft' }] },
    'pump.setting': '148 ft',
  }).findings.flatMap(({ together }) => together);
  const turning = told.find(({ rule }) => rule === 'PR-36')!;
  expect([toFeet(turning.turn.at), turning.bad]).toEqual([expect.closeTo(145, 6), 'note']);
});
