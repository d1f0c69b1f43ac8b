import { expect, test } from 'vitest';
import { fixesOf } from '../../../src/model/fixes/fixesOf.ts';
import { withValue } from '../../../src/model/plan/editPlan.ts';
import { solve } from '../../../src/model/solve.ts';
import { planOf, sample } from '../../plans/build.ts';

/** What the buttons of a plan would write, by path. */
function offered(name: 'willow-dale' | 'heron-flats', changes: Readonly<Record<string, string>>) {
  const plan = Object.entries(changes).reduce((was, [path, to]) => withValue(was, path, to), planOf(sample(name)));
  const written = fixesOf(plan, solve(plan)).flatMap(({ button }) => button?.changes ?? []);
  return Object.fromEntries(written.map(({ path, to }) => [path, to]));
}

test('too thin wire in mm2 is made thicker in mm2, wire in AWG in AWG, whatever units the plan has', () => {
  expect(offered('willow-dale', { 'wire.size': '1.5 mm2', 'wire.run': '90 m' })['wire.size']).toMatch(
    /^(?:2\.5|4|6) mm2$/,
  );
  expect(offered('heron-flats', { 'wire.size': '14 AWG', 'wire.run': '150 m' })['wire.size']).toMatch(
    /^(?:12|10|8|6) AWG$/,
  );
});

test('metric pipe too weak for its pump is made stronger by its PN', () => {
  expect(offered('willow-dale', { 'dropPipe.rating': 'PN 8' })['dropPipe.rating']).toMatch(/^(?:12.5|16|20) bar$/);
});

test('metric pipe too narrow for the flow is made wider in mm', () => {
  const plan = { 'dropPipe.size': '25 mm', 'house.line.size': '25 mm', 'house.demand': '40 L/min' };
  const written = offered('willow-dale', plan);
  expect(written['dropPipe.size']).toMatch(/^(?:32|40) mm$/);
  expect(written['house.line.size']).toMatch(/^(?:32|40) mm$/);
});
