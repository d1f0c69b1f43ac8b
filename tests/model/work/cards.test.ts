/** Tape card and start-up card: what a reader holds against what he sees. */
import { describe, expect, test } from 'vitest';
import { solve } from '../../../src/model/index.ts';
import { graphOf } from '../../../src/model/string/graph/graph.ts';
import { startCard } from '../../../src/model/work/startCard.ts';
import { tapeCard } from '../../../src/model/work/tapeCard.ts';
import { toFeet, toPsi } from '../../../src/model/units.ts';
import { planOf, rockWell, sample, SAMPLES } from '../../plans/build.ts';

describe('the tape card', () => {
  test.each(SAMPLES)('of %s tells every tie, splice and joint once, from the pump up', (name) => {
    const solution = solve(planOf(sample(name)));
    const rows = tapeCard(solution);
    const heights = rows.map(({ height }) => height);
    expect(heights).toEqual([...heights].sort((a, b) => a - b));
    const { pieces } = graphOf(solution);
    const discharge = solution.values.pumpDischargeDepth!;
    for (const kind of ['tie', 'splice', 'checkValve', 'guard', 'torqueArrestor'] as const) {
      const placed = new Set(
        pieces
          .filter((piece) => piece.kind === kind)
          .map(({ top, bottom }) => Math.round((discharge - (top + bottom) / 2) * 1000)),
      );
      expect(rows.filter(({ marks }) => marks.includes(kind)).length, kind).toBe(placed.size);
    }
  });
  test('stops for the top joint before it ends where the string hangs', () => {
    const solution = solve(rockWell());
    const rows = tapeCard(solution);
    const stop = rows.findIndex(({ marks }) => marks.includes('topJoint'));
    expect(stop).toBeGreaterThan(0);
    expect(rows.at(-1)!.marks).toContain('hanging');
    expect(stop).toBeLessThan(rows.length - 1);
    // At the casing's top a tape reads the depth under the ground, and what the casing stands over it.
    expect(rows.at(-1)!.height).toBeCloseTo(solution.values.pumpDischargeDepth! + solution.facts.well.casingHeight, 3);
  });
  test('ends, under a seal, with what the figures say hangs there', () => {
    const solution = solve(rockWell({ top: { kind: 'seal' } }));
    expect(tapeCard(solution).at(-1)!.hook!).toBeCloseTo(solution.values.hangLoadLowering!, 1);
  });
  test('says where the water takes some of the load', () => {
    const water = tapeCard(solve(rockWell())).find(({ marks }) => marks.includes('water'))!;
    expect(toFeet(water.height)).toBeCloseTo(40 + 1, 2);
  });
  test('tells the hook at least every 20 ft', () => {
    const heights = tapeCard(solve(rockWell({ string: { ties: '60 ft' } }))).map(({ height }) => toFeet(height));
    for (const [i, height] of heights.entries()) if (i > 0) expect(height - heights[i - 1]!).toBeLessThanOrEqual(20.01);
  });
});

describe('the start-up card', () => {
  test('expects what the switch, the tank and the curves say', () => {
    const card = startCard(solve(rockWell()));
    expect(card.switch && [toPsi(card.switch.cutIn), toPsi(card.switch.cutOut)].map(Math.round)).toEqual([40, 60]);
    // Common practice, no source: 2 psi under cut-in.
    expect(Math.round(toPsi(card.switch!.precharge))).toBe(38);
    expect(card.flow!.least).toBeLessThanOrEqual(card.flow!.most);
  });
  test('takes the amps of the plate, and says when they are of a table', () => {
    const pump = { ...rockWell().pump, current: '9.8 A' };
    expect(startCard(solve(rockWell({ pump }))).current).toMatchObject({ said: true });
    // NFPA 70 (NEC), Table 430.248: 1 hp at 230 V, 8 A; submersible motors take more at their service factor.
    const listed = startCard(solve(rockWell())).current!;
    expect(listed.said).toBe(false);
    expect(listed.most).toBeGreaterThanOrEqual(8);
  });
  test('knows no switch of an open tank', () => {
    expect(startCard(solve(rockWell({ house: { ...rockWell().house, kind: 'open tank' } }))).switch).toBeNull();
  });
});
