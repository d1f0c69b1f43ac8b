/** The parts list holds all of the plan's string, and what has to fit fits. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { solve, type Plan, type Solution } from '../../../src/model/index.ts';
import { byDepth, isLead, partsList } from '../../../src/model/parts/partsList.ts';
import type { PartLine, What } from '../../../src/model/parts/partLine.ts';
import { SOLD } from '../../../src/model/parts/soldAs.ts';
import { graphOf } from '../../../src/model/string/graph/graph.ts';
import type { Kind } from '../../../src/model/work/step.ts';
import { toFeet, toInches } from '../../../src/model/units.ts';
import { anyPlan } from '../../plans/anyPlan.ts';
import { planOf, rockWell, sample, SAMPLES } from '../../plans/build.ts';
import { anyString } from '../string/anyString.ts';

const linesOf = (solution: Solution, work?: Kind): readonly PartLine[] => {
  const list = partsList(solution, work);
  if (list.kind === 'stop') throw new Error(`stopped: ${list.why}`);
  return list.lines;
};
const lines = (plan: Plan, work?: Kind) => linesOf(solve(plan), work);
const line = (plan: Plan, what: What, work?: Kind): PartLine => {
  const found = lines(plan, work).find((each) => each.what === what);
  if (found === undefined) throw new Error(`no ${what} on the list`);
  return found;
};
const sum = (values: readonly number[]): number => values.reduce((all, one) => all + one, 0);

describe('laws of any string', () => {
  const check = (solution: Solution, work: Kind): void => {
    const list = partsList(solution, work);
    if (list.kind === 'stop') return;
    const { pieces } = graphOf(solution);
    const told = list.lines.flatMap((each) => each.pieces);
    expect(new Set(told).size, 'no piece on two lines').toBe(told.length);
    const missing = pieces.filter(({ key, kind, ...piece }) => {
      const sold = SOLD[kind] !== null && !isLead({ kind, cut: piece.cut });
      return sold && work === 'new' && !told.includes(key);
    });
    expect(missing.map(({ key }) => key)).toEqual([]);
    expect(new Set(list.lines.map(({ key }) => key)).size).toBe(list.lines.length);
    const { dropPipeToCut, wireLength, ropeLength } = solution.values;
    for (const { what, cuts, buy } of list.lines) {
      if (what === 'dropPipe') expect(sum(cuts)).toBeCloseTo(dropPipeToCut!, 9);
      if (what === 'cable') expect(sum(cuts)).toBeCloseTo(wireLength!, 9);
      if (what === 'rope') expect(sum(cuts)).toBeCloseTo(ropeLength!, 9);
      if (buy !== null) expect(buy).toBeGreaterThanOrEqual(sum(cuts));
    }
  };
  test('as anyone might hang it', () => {
    fc.assert(
      fc.property(anyString, fc.constantFrom<Kind>('new', 'replace'), (plan, work) => check(solve(plan), work)),
      { numRuns: 100, seed: 31 },
    );
  });
  test('and of any plan', () => {
    fc.assert(
      fc.property(anyPlan, fc.constantFrom<Kind>('new', 'replace'), (json, work) => check(solve(planOf(json)), work)),
      { numRuns: 100, seed: 32 },
    );
  });
  test.each(SAMPLES)('%s', (name) => check(solve(planOf(sample(name))), 'new'));
});

// What sends people back to the shop: common practice, no source.
describe('what has to fit', () => {
  test('a bushing from the outlet of the pump to a smaller pipe', () => {
    expect(line(rockWell(), 'bushing').ends).toEqual([
      { way: 'thread', size: '1 in', system: 'NPT', sex: 'female' },
      { way: 'thread', size: '1-1/4 in', system: 'NPT', sex: 'male' },
    ]);
    const same = rockWell({ dropPipe: { material: 'PE', size: '1-1/4 in', rating: '200 psi' } });
    expect(lines(same).map(({ what }) => what)).not.toContain('bushing');
  });
  test('clamps by the outside of the pipe that they go round, two a joint; the line’s are their own', () => {
    const clamps = lines(rockWell({ string: { checkValves: ['0 ft', '60 ft'] } })).filter(
      (each) => each.what === 'clamp',
    );
    // Four joints in the well: at the pump, at the adapter, and on both sides of the upper valve.
    expect(clamps.map(({ group, count }) => [group, count])).toEqual([
      ['well', 8],
      ['line', 4],
    ]);
    // ASTM D2239, PE4710, 200 psi is SIDR 9: a bore of 1.049 in and a wall of a ninth of it; 1-1/4 in: 1.380 in.
    const over = clamps.map(({ numbers }) => toInches((numbers as { over: number }).over));
    expect(over[0]).toBeCloseTo(1.049 * (1 + 2 / 9), 2);
    expect(over[1]).toBeCloseTo(1.38 * (1 + 2 / 9), 2);
  });
  test('barbs by the pipe that they go into: a line of another size has its own', () => {
    const line = { material: 'PE', size: '3/4 in', rating: '200 psi' } as const;
    const fittings = lines(rockWell({ house: { ...rockWell().house, line } })).filter(
      ({ what, group }) => what === 'insertFitting' && group === 'line',
    );
    const barbs = fittings.flatMap(({ ends }) => ends.filter(({ way }) => way === 'barb').map(({ size }) => size));
    expect(new Set(barbs)).toEqual(new Set(['3/4 in']));
    expect(sum(fittings.map(({ count }) => count))).toBe(2);
  });
  test('the control box by the motor, and none for a motor of two wires', () => {
    expect(line(rockWell(), 'controlBox').numbers).toMatchObject({ voltage: 230 });
    const twoWire = rockWell({ pump: { ...rockWell().pump, wires: 2 } });
    expect(lines(twoWire).map(({ what }) => what)).not.toContain('controlBox');
  });
  test('the cap by the outside of the casing', () => {
    // ASME B36.10M: 6 in pipe is 6.625 in outside.
    expect(toInches((line(rockWell(), 'cap').numbers as { outside: number }).outside)).toBeCloseTo(6.625, 3);
  });
  test('an adapter is one, and its sliding half alone where the body stays in the wall', () => {
    expect(line(rockWell(), 'pitlessAdapter')).toMatchObject({
      count: 1,
      pieces: ['pitlessAdapter', 'pitlessAdapter/spool'],
    });
    expect(line(rockWell(), 'pitlessAdapter', 'replace')).toMatchObject({ count: 1, pieces: ['pitlessAdapter/spool'] });
  });
  test('a splice kit for every wire and the ground, at the pump and under the cap', () => {
    expect(line(rockWell(), 'splice')).toMatchObject({ count: 1, numbers: { wires: 4 } });
    expect(line(rockWell(), 'capSplice')).toMatchObject({ count: 1, numbers: { wires: 4 } });
  });
  test('hoist, steps and sheet ask for one rating: twice what hangs, and never less than the string lifted clear', () => {
    const solution = solve(rockWell());
    const rated = (line(rockWell(), 'hoist').numbers as { rated: number }).rated;
    const { hangLoadAtRest, hangLoadDry } = solution.values;
    expect(rated).toBeCloseTo(Math.max(2 * hangLoadAtRest!, hangLoadDry!), 6);
    expect((line(rockWell(), 'pitlessAdapter').numbers as { load: number }).load).toBe(hangLoadDry);
  });
  test('a barb by the pipe that is pushed over it, the line’s by the line', () => {
    const wide = rockWell({
      house: { ...rockWell().house, line: { material: 'PE', size: '1-1/4 in', rating: '200 psi' } },
    });
    const fittings = lines(wide).filter(({ what, group }) => what === 'insertFitting' && group === 'line');
    expect(fittings.flatMap(({ ends }) => ends.filter(({ way }) => way === 'barb').map(({ size }) => size))).toEqual([
      '1-1/4 in',
      '1-1/4 in',
    ]);
  });
  test('in place of an old pump a box for the new motor is on the list', () => {
    expect(line(rockWell(), 'boxForMotor', 'replace').group).toBe('usedUp');
    expect(line(rockWell(), 'pitlessAdapter', 'replace').numbers).toMatchObject({ half: true });
  });
  test('the lift-out pipe as long as it reaches two feet over the casing', () => {
    expect(toFeet((line(rockWell(), 'liftOutPipe').numbers as { length: number }).length)).toBeCloseTo(5 + 1 + 2, 9);
    expect(lines(rockWell({ top: { kind: 'seal' } })).map(({ what }) => what)).not.toContain('liftOutPipe');
  });
  test('of a rigid pipe each section is told, the odd one first', () => {
    const steel = rockWell({ dropPipe: { material: 'galvanized steel', size: '1-1/4 in', sectionLength: '21 ft' } });
    const { cuts, numbers } = line(steel, 'dropPipe');
    expect(cuts.slice(1).every((cut) => Math.abs(toFeet(cut) - 21) < 1e-9)).toBe(true);
    expect(toFeet((numbers as { section: number }).section)).toBeCloseTo(21, 9);
  });
});

test('by depth the list reads from the top of the well down, and tools come last', () => {
  const order = byDepth(lines(rockWell()));
  const depths = order.flatMap(({ depth }) => depth ?? []);
  expect(depths).toEqual([...depths].sort((a, b) => a - b));
  expect(order.at(-1)!.depth).toBeNull();
});

test('an old string’s line, house and trench are on no list', () => {
  const whats = lines(rockWell(), 'replace').map(({ what }) => what);
  for (const what of ['buriedLine', 'tank', 'conduit', 'holeSaw', 'bedding'] as const)
    expect(whats).not.toContain(what);
  expect(whats).toEqual(expect.arrayContaining(['dropPipe', 'clamp', 'splice', 'liftOutPipe']));
});

test('what rests on nobody’s word says so', () => {
  expect(line(rockWell({ string: { fittings: 'brass' } }), 'insertFitting').assumed).toBe(false);
  expect(line(rockWell(), 'insertFitting').assumed).toBe(true);
});

test('and so does what only its note tells: a clamp by the outside of a pipe of an assumed standard', () => {
  const clamp = line(rockWell({ dropPipe: { material: 'PE', size: '1 in', rating: '200 psi' } }), 'clamp');
  expect(clamp).toMatchObject({ group: 'well', assumed: true, rests: { size: false, note: true } });
  expect(line(rockWell(), 'tank').rests.note).toBe(true);
  const rated = rockWell({ house: { ...rockWell().house, kind: 'pressure tank', tankRating: '100 psi' } });
  expect(line(rated, 'tank')).toMatchObject({ assumed: false, rests: { note: false } });
});

test('nothing is listed for a flowing well', () => {
  const flowing = rockWell({ water: { ...rockWell().water, staticLevel: '-2 ft' } });
  expect(partsList(solve(flowing))).toEqual({ kind: 'stop', why: 'flowing' });
});
