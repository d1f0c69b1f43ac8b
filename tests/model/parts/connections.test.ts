/** Every joint that the water passes, in its order, and what is wrong with it. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { solve } from '../../../src/model/index.ts';
import { connectionsOf, type Connection } from '../../../src/model/parts/connections.ts';
import { graphOf } from '../../../src/model/string/graph/graph.ts';
import { planOf, rockWell, sample, SAMPLES } from '../../plans/build.ts';
import { anyString } from '../string/anyString.ts';

const of = (plan: object): readonly Connection[] => connectionsOf(solve(planOf(plan)));
const named = ({ from, to }: Connection): string => `${from.piece} > ${to.piece}`;
const wrong = (all: readonly Connection[], rule: string): readonly string[] =>
  all.filter(({ findings }) => findings.some((each) => each.rule === rule)).map(named);

test('a PE string is told from the pump up, and its line on to the tank', () => {
  const all = of(rockWell({ dropPipe: { material: 'PE', size: '1 in', rating: '200 psi' } })).map(named);
  expect(all.slice(0, 12)).toEqual([
    'pump > bushing',
    'bushing > nipple',
    'nipple > checkValve',
    'checkValve > insertFitting/pump',
    'insertFitting/pump > dropPipe',
    'dropPipe > insertFitting/top',
    'insertFitting/top > pitlessAdapter/spool',
    'pitlessAdapter/spool > pitlessAdapter',
    'pitlessAdapter > lineEnd/well',
    'lineEnd/well > buriedLine',
    'buriedLine > lineEnd/house',
    'lineEnd/house > elbow',
  ]);
});

describe('what is found stands at the joints that it is about', () => {
  test('one clamp a joint: at both barbs of the string, and at no thread', () => {
    const all = of(rockWell({ string: { clampsPerJoint: 1, checkValves: ['0 ft'], fittings: 'stainless steel' } }));
    expect(wrong(all, 'PR-18')).toEqual(['insertFitting/pump > dropPipe', 'dropPipe > insertFitting/top']);
  });
  test('pipe too thin for threads: at each of its threads', () => {
    const all = of(rockWell({ dropPipe: { material: 'PVC', size: '1-1/4 in', ratio: 'schedule 40' } }));
    const threads = all.filter(
      ({ from, to, way }) => [from, to].some(({ kind }) => kind === 'dropPipe') && way.by === 'thread',
    );
    expect(threads.length).toBeGreaterThan(1);
    expect(wrong(all, 'PR-18')).toEqual(threads.map(named));
  });
  test('two thread systems: at the piece that takes the one to the other, at the end that it is about', () => {
    expect(wrong(of(rockWell({ top: { kind: 'pitless', depth: '6 ft', thread: 'Rp 1' } })), 'PR-65')).toEqual([
      'insertFitting/top > bushing/top',
      'bushing/top > pitlessAdapter/spool',
    ]);
    const pump = { ...rockWell().pump, outlet: 'Rp 1 1/4' };
    expect(wrong(of(rockWell({ pump })), 'PR-65')).toEqual(['pump > bushing', 'bushing > nipple']);
  });
  test('a sound string has none', () => {
    expect(of(sample('tamarack-ridge')).flatMap(({ findings }) => findings)).toEqual([]);
  });
});

test.each(SAMPLES)('%s: each piece begins where one before it ended', (name) => {
  const all = of(sample(name));
  const met = new Set(['pump']);
  for (const { from, to } of all) {
    // A line's union and tap are on the line, which is told after them; a seal lies on its collar.
    if (!met.has(from.piece) && !met.has(to.piece)) expect(['union', 'tap', 'lineEnd/bushing']).toContain(from.kind);
    met.add(from.piece).add(to.piece);
  }
});

test('of any string the joints that bear are all told, each with the most that it bears', () => {
  fc.assert(
    fc.property(anyString, (plan) => {
      const solution = solve(plan);
      const told = connectionsOf(solution);
      const bearing = graphOf(solution).joints.filter(
        ({ load, a, way }) => load !== null && !a.piece.startsWith('casing/') && way.by !== 'bolts',
      );
      for (const { a, b, load } of bearing) {
        const found = told.find((each) =>
          [named(each)].some((key) => key === `${a.piece} > ${b.piece}` || key === `${b.piece} > ${a.piece}`),
        );
        expect(found, `${a.piece} > ${b.piece}`).toBeDefined();
        const most = Math.max(load?.dry ?? 0, load?.atRest ?? 0, load?.pumping ?? 0);
        expect(found?.load ?? 0).toBe(most);
      }
    }),
    { numRuns: 80, seed: 77 },
  );
});
