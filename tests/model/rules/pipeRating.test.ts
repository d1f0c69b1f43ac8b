import { describe, expect, test } from 'vitest';
import type { PipeFacts } from '../../../src/model/facts.ts';
import { bornePressure, overLeast, shareLeft } from '../../../src/model/rules/pipeRating.ts';
import { bars, psi } from '../../../src/model/units.ts';
import { changed, solvedPlan } from './fixture.ts';

const pipeOf = (dropPipe: object): PipeFacts => solvedPlan(changed({ dropPipe })).facts.dropPipe;

describe('a printed rating against the usual least', () => {
  const over = (rating: number) => overLeast(rating, { units: 'us' });

  test('is over it by what is more', () => {
    expect(over(psi(200))).toBeCloseTo(psi(40), 6);
    expect(overLeast(bars(12.5), { units: 'metric' })).toBeCloseTo(bars(2.5), 6);
  });

  // 11 bar is 159.5 psi and 145 psi is 9.997 bar: a hundredth is what rounding takes.
  test('may be short by a hundredth, which is rounding, and by no more', () => {
    expect([over(bars(11)), over(psi(158.5))]).toEqual([0, 0]);
    expect(overLeast(psi(145), { units: 'metric' })).toBe(0);
    expect(over(psi(158.3))).toBeCloseTo(psi(-1.7), 6);
  });
});

describe('what warm water leaves of a rating', () => {
  // ISO 4427-1 and ISO 13761: 0.87 at 30 °C, 0.74 at 40 °C. PPI Handbook of Polyethylene Pipe, ch. 6: 0.9 from 80 to 90 degF.
  test('goes by ISO for PE of ISO 4427-2, and by the American steps for other PE', () => {
    const iso = pipeOf({ material: 'PE', standard: 'ISO 4427-2', size: '32 mm' });
    expect([shareLeft(iso, 30), shareLeft(iso, 40)]).toEqual([expect.closeTo(0.87, 9), expect.closeTo(0.74, 9)]);
    expect(shareLeft(pipeOf({ material: 'PE', size: '1 in' }), 30)).toBeCloseTo(0.9, 9);
  });

  test('is nothing that anybody knows past the table, threaded or not', () => {
    const hot = { site: { ...solvedPlan(changed({})).facts.site, waterTemperature: 65 } };
    for (const place of ['dropPipe', 'house.line'] as const)
      expect(bornePressure(pipeOf({ material: 'PVC', size: '1 in' }), place, hot)).toBeNull();
  });

  // ASTM D1785, appendix, from memory: threads leave half of it, in the well and nowhere else.
  test('is halved by threads in the well, and whole in a line that is glued', () => {
    const cold = { site: { ...solvedPlan(changed({})).facts.site, waterTemperature: 10 } };
    const pvc = pipeOf({ material: 'PVC', size: '1 in' });
    const glued = bornePressure(pvc, 'house.line', cold) ?? NaN;
    expect((bornePressure(pvc, 'dropPipe', cold) ?? NaN) / glued).toBeCloseTo(0.5, 9);
    const pe = pipeOf({ material: 'PE', size: '1 in', rating: '200 psi' });
    expect(bornePressure(pe, 'dropPipe', cold)).toBeCloseTo(psi(200), 3);
  });
});
