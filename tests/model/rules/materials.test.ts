import { describe, expect, test } from 'vitest';
import type { Changes } from './fixture.ts';
import { changed, fixOf, judged, solvedPlan, verdictOf } from './fixture.ts';

function mended(changes: Changes) {
  const fix = fixOf('PR-52', changes).changes ?? [];
  return { ...changes, ...Object.fromEntries(fix.map(({ path, to }) => [path, to])) };
}

describe('pipe for the barbs', () => {
  // SDR 9 in PE4710 is 250 psi, 2 x 1000 / (9 - 1); so is SIDR 7, 2 x 1000 / (7 + 1): ASTM D2737 and D2239, appendixes.
  test('lost the rating that its ratio had told, so that nobody could judge the pipe any more', () => {
    const tubing = { dropPipe: { material: 'PE', size: '1 in', standard: 'ASTM D2737' } };
    const after = mended(tubing);
    expect(solvedPlan(changed(after)).facts.dropPipe.wallClass).toBe('SIDR 7');
    expect([verdictOf('PR-52', after), verdictOf('PR-18', after)]).toEqual(['ok', 'ok']);
  });

  test('has the ratio of the same rating where a ratio was typed', () => {
    const pipe = { dropPipe: { material: 'PE', size: '1 in', standard: 'ASTM D3035', ratio: 'DR 11' } };
    expect(fixOf('PR-52', pipe).changes).toEqual([
      { path: 'dropPipe.standard', to: 'ASTM D2239' },
      { path: 'dropPipe.ratio', to: 'SIDR 9' },
    ]);
  });

  test('is words where none is as strong: DR 7 is 333 psi, and no pipe for barbs is', () => {
    const strong = { dropPipe: { material: 'PE', size: '1 in', standard: 'ASTM D3035', ratio: 'DR 7' } };
    expect(fixOf('PR-52', strong).changes).toBeNull();
  });
});

describe('fittings of galvanized steel', () => {
  const tubing = { dropPipe: { material: 'PE', size: '1 in', standard: 'ASTM D2737', rating: '200 psi' } };
  const fittingsAfter = (fittings: string) =>
    fixOf('PR-52', { ...tubing, 'string.fittings': fittings }).changes?.find(({ path }) => path === 'string.fittings');

  test('would break the rule again beside the pipe that fits: they are changed with it, and no others', () => {
    expect(fittingsAfter('galvanized steel')?.to).toBe('stainless steel');
    expect(fittingsAfter('stainless steel')).toBeUndefined();
    expect(fittingsAfter('brass')).toBeUndefined();
  });
});

test('a default of the fittings was held against the pipe: nobody chose them', () => {
  const steel = { dropPipe: { material: 'galvanized steel', size: '1 in' }, 'water.pH': '6.5' };
  expect(judged(steel).findings.map(({ rule }) => rule)).not.toContain('PR-52');
});

test('fittings that nobody chose are not said to go with the pipe', () => {
  expect(judged({}).holding.some(({ rule }) => rule === 'PR-52')).toBe(false);
});
