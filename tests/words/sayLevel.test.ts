import { expect, test } from 'vitest';
import { handlesOf, moveHandle, solve, type Plan } from '../../src/model/index.ts';
import { feet, show } from '../../src/model/units.ts';
import { en } from '../../src/words/en/index.ts';
import { nameLevel, sayBlock, sayHandle } from '../../src/words/sayLevel.ts';
import { rockWell } from '../plans/build.ts';

const US = show('us');
const names = (plan: Plan) => handlesOf(solve(plan)).map(({ label }) => nameLevel(label, en.short));
const heard = (plan: Plan, id: string) => {
  const solution = solve(plan);
  const handle = handlesOf(solution).find((each) => each.id === id)!;
  return sayHandle(handle, handle.depth, solution, en, US);
};

test('the only valve needs no number, of two each has its own', () => {
  expect(names(rockWell({ string: { checkValves: ['0 ft'] } }))).toContain('Check valve');
  const two = names(rockWell({ string: { checkValves: ['0 ft', '80 ft'] } }));
  expect(two).toEqual(expect.arrayContaining(['Check valve 1', 'Check valve 2']));
  expect(two).not.toContain('Check valve');
});

// 200 ft of well, an intake at 140 ft, a motor that ends 1.5 ft under it.
test('of the pump one hears where it hangs and how far its motor is from the bottom', () => {
  expect(heard(rockWell(), 'pumpSetting')).toMatch(/^Pump intake, 140 ft\. Motor 58 ft 6 in above the bottom\./);
});

test('of a level that nobody told one hears just that', () => {
  expect(heard(rockWell({ water: { staticLevel: 'unknown' } }), 'staticLevel')).toBe('Static level, not known.');
});

test('of a level that the program put in one hears that it is assumed, of one that was said not', () => {
  const { pump, ...unsaid } = rockWell();
  expect(heard(unsaid, 'pumpSetting')).toMatch(/^Pump intake, [^.]+, assumed\./);
  expect(heard(rockWell(), 'pumpSetting')).not.toContain('assumed');
  expect(pump?.setting).toBe('140 ft');
  // The fall while pumping is worked out for a flow that nobody asked for.
  const { house, ...homeless } = rockWell();
  expect(house?.demand).toBeDefined();
  expect(heard(homeless, 'pumpingLevel')).toMatch(/^Pumping level, [^.]+, assumed\./);
});

test('where a level stops, the words end a sentence: no capital, no full stop', () => {
  const plan = rockWell();
  const { blocked } = moveHandle(plan, solve(plan), 'pumpSetting', feet(500));
  expect(sayBlock(blocked!, en)).toBe('the motor stands on the bottom');
  for (const words of Object.values(en.long.levels.blocks)) expect(words).toMatch(/^[a-z].*[^.]$/);
});
