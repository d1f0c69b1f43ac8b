import { describe, expect, test } from 'vitest';
import { show, toFeet } from '../../../src/model/units.ts';
import { en } from '../../../src/words/en/index.ts';
import { sayHolding, sayShort } from '../../../src/words/sayJudgement.ts';
import type { Changes } from './fixture.ts';
import { findingOf, fixOf, judged, saidOf } from './fixture.ts';

/** Nobody knows how far the water falls: from 40 ft at rest to the intake at most. */
const unknown = { 'water.pumping': { kind: 'yield only' } };

const turnOf = (rule: string, changes: Changes) =>
  judged(changes)
    .findings.flatMap(({ together }) => together)
    .find((each) => each.rule === rule);

const messageOf = (changes: Changes) => {
  const held = judged(changes).holding.find(({ rule }) => rule === 'PR-04');
  return held === undefined ? null : sayHolding(held, en, show('us')).message;
};

describe('water over the inflows, while nobody knows the pumping level', () => {
  test('depends on it, down to the first inflow that the pump hangs below', () => {
    const told = turnOf('PR-04', unknown)!;
    expect(toFeet(told.turn.at)).toBeCloseTo(130, 6);
    // Only the minor inflow can fall dry: the main one is below the pump.
    expect(told.bad).toBe('note');
    expect(sayShort(told, en.short, show('us')).amount).toBe('only above 130 ft');
  });

  test('is sure where the pump hangs above them: it cannot draw the water lower', () => {
    expect(messageOf({ ...unknown, 'pump.setting': '120 ft' })).toBe(
      'Pumping cannot draw the water below 120 ft; the first inflow is at 130 ft.',
    );
  });

  test('is sure above a probe, which stops the pump', () => {
    expect(messageOf({ ...unknown, 'pump.lowLevelCutOff': '125 ft' })).toMatch(/below 125 ft/);
  });

  test('of an inflow above the water at rest is no matter of pumping less', () => {
    const high = {
      ...unknown,
      'pump.setting': '120 ft',
      'well.inflows': [{ depth: '35 ft' }, { depth: '150 ft' }],
    };
    expect(saidOf('PR-04', high).message).toBe('Even at rest the water stands at 40 ft, below the inflow at 35 ft.');
    expect(fixOf('PR-04', high).words).toMatch(/^Pumping less does not cover it/);
  });
});

test('a level that was measured is judged at what the stronger pump draws, beyond the flow of the test', () => {
  // Held to 10 gpm, at which 120 ft was measured, the inflow at 130 ft stays covered.
  const tested = { 'water.pumping': { kind: 'level', level: '120 ft', flow: '10 gpm' } };
  expect(judged({ ...tested, 'pump.flowLimiter': '10 gpm' }).verdicts['PR-04']).toBe('ok');
  expect(findingOf('PR-04', tested).severity).toBe('note');
});

describe('water over a screen', () => {
  const screened = {
    ...unknown,
    'well.inflows': undefined,
    'well.casing.bottom': '150 ft',
    'well.intake': { kind: 'screen', diameter: '5 in', screens: [{ top: '150 ft', bottom: '170 ft' }] },
  };

  test('turns five feet above it', () => {
    expect(toFeet(turnOf('PR-04', { ...screened, 'pump.setting': '148 ft' })!.turn.at)).toBeCloseTo(145, 6);
  });

  test('is told by the water at rest where that leaves less than five feet over it', () => {
    const { findings } = judged({ ...screened, 'water.staticLevel': '147 ft', 'pump.setting': '151 ft' });
    const told = findings.find(({ rule }) => rule === 'PR-04');
    // Broken with the water at its highest: told as it is, not as what may be.
    expect([told?.variant, told?.severity, told?.turn]).toEqual(['screenAtRest', 'warning', null]);
  });
});
