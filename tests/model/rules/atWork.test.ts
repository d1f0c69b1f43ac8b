/** What is told with the work, and what own points would decide. */
import { expect, test } from 'vitest';
import { fixesOf } from '../../../src/model/fixes/fixesOf.ts';
import { turnsOnCurve } from '../../../src/model/rules/turnsOnCurve.ts';
import { solve } from '../../../src/model/solve.ts';
import { poundsForce } from '../../../src/model/units.ts';
import type { Changes } from './fixture.ts';
import { changed, judged } from './fixture.ts';

/** 69 lb is more than two people hold. */
const heavy = { hangLoadAtRest: poundsForce(69) } as const;
const ofTheWork = (changes: Changes) => {
  const { findings, atWork } = judged(changes, heavy);
  return [findings.some(({ rule }) => rule === 'PR-51'), atWork.some(({ rule }) => rule === 'PR-51')];
};

const brokenToo = { 'site.floodHeight': '5 ft' };

test('that a string wants a hoist stands back where something is wrong, and is told with the work all the same', () => {
  const [found, toldWithTheWork] = ofTheWork(brokenToo);
  expect([found, toldWithTheWork]).toEqual([false, true]);
});

test('alone it is told as it is', () => {
  expect(ofTheWork({})).toEqual([true, false]);
});

test('own points are asked for where a generic pump decides, and nowhere else', () => {
  const plan = changed({ 'house.demand': '26 gpm', 'wire.size': '14 AWG', 'pump.power': '1/2 hp' });
  const solution = solve(plan);
  const rules = solution.findings.filter((finding) => turnsOnCurve(finding, solution)).map(({ rule }) => rule);
  expect(solution.findings.map(({ rule }) => rule)).toContain('PR-47');
  expect(rules).toContain('PR-54');
  expect(rules).not.toContain('PR-47');
});

test('in a flowing well nothing is offered before it is in hand', () => {
  const plan = changed({ 'water.staticHighest': '-3 ft', 'site.floodHeight': '5 ft' });
  const solution = solve(plan);
  expect(solution.findings.map(({ rule }) => rule)).toContain('PR-38');
  expect(solution.findings.length).toBeGreaterThan(1);
  for (const { button } of fixesOf(plan, solution)) expect(button).toBeNull();
});
