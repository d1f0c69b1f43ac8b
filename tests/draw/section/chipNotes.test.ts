/** What stands under the pump's depth: how much water is over it, unless a danger says that there is none. */
import { expect, test } from 'vitest';
import { CHIP_LOOKS } from '../../../src/draw/section/chipNotes.ts';
import { show, solve, type Solution } from '../../../src/model/index.ts';
import { en } from '../../../src/words/en/index.ts';
import { rockWell } from '../../plans/build.ts';

const notesOf = (solution: Solution) =>
  CHIP_LOOKS['pumpSetting']!.notes(solution, en.short.chips, show('us')).filter((note) => note !== null);

// 60 ft of drawdown at 10 gpm: at the demand of 7 gpm the water stands at 82 ft, at the pump's own 12 gpm lower than 105 ft.
const hungAt = (setting: string) =>
  solve(
    rockWell({
      pump: { setting, power: '1-1/2 hp', curve: { kind: 'generic', flow: '10 gpm' } },
    }),
  );

test('a pump with water over it tells how much', () => {
  const sound = hungAt('150 ft');
  expect(sound.verdicts['PR-02']).not.toBe('danger');
  expect(notesOf(sound)).toHaveLength(1);
});

test('over a pump that runs dry no water is told, though at the demand some would stand there', () => {
  const dry = hungAt('90 ft');
  expect(dry.verdicts['PR-02']).toBe('danger');
  expect(dry.values.submergence).toBeGreaterThan(0);
  expect(notesOf(dry)).toEqual([]);
});

test('an intake above the water is told, danger or not', () => {
  const above = hungAt('70 ft');
  expect(above.values.submergence).toBeNull();
  expect(notesOf(above)).toHaveLength(1);
});
