/** Changes are tried when the pointer is up, never in a frame that is dragged. */
import { expect, test } from 'vitest';
import { keyOf, OfferedFixes } from '../../src/app/panels/fixes.ts';
import { fixesOf } from '../../src/model/fixes/fixesOf.ts';
import { solve } from '../../src/model/solve.ts';
import type { Plan } from '../../src/model/plan/schema.ts';

const PLAN: Plan = {
  format: 'wellcut-plan/1',
  site: { frostDepth: '36 in', frostFrom: 'local code' },
  well: {
    depth: '200 ft',
    casing: { material: 'steel', size: '6 in', bottom: '62 ft' },
    intake: { kind: 'open hole' },
  },
  water: { staticLevel: '40 ft', pumping: { kind: 'test', flow: '10 gpm', drawdown: '30 ft' } },
  top: { kind: 'pitless', depth: '54 in' },
};
const sound = solve(PLAN);
const shallow = solve({ ...PLAN, top: { kind: 'pitless', depth: '24 in' } });

test('at rest each finding has what was tried for it', () => {
  const offered = new OfferedFixes().of(shallow, false);
  const tried = fixesOf(shallow.plan, shallow);
  shallow.findings.forEach((finding, i) => expect(offered.get(keyOf(finding))).toEqual(tried[i]));
  expect([...offered.values()].some(({ button }) => button !== null)).toBe(true);
});

test('while a level is held what was offered before stands, and nothing is tried', () => {
  const offers = new OfferedFixes();
  const before = offers.of(sound, false);
  expect(offers.of(shallow, true)).toBe(before);
  expect(offers.of(shallow, false)).not.toBe(before);
});
