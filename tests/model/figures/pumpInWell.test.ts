/** What the rules ask of a pump in its well, beside the figures. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { pumpAtLevel, pumpFromLevel } from '../../../src/model/figures/curves.ts';
import { mostYield, provenYield } from '../../../src/model/figures/provenYield.ts';
import { solve } from '../../../src/model/index.ts';
import { feet, gpm, toGpm } from '../../../src/model/units.ts';
import { planOf, rockWell } from '../../plans/build.ts';
import { anyPlan } from '../../plans/anyPlan.ts';
import { SEED } from '../laws.ts';

const CUT_IN = { end: 'least', tank: 'cutIn' } as const;

test('from the level at rest the pump works where the figures say', () => {
  fc.assert(
    fc.property(anyPlan, (json) => {
      const { curves, facts } = solve(planOf(json));
      const still = facts.water.staticLevel;
      if (still === null) return;
      expect(pumpFromLevel(facts, CUT_IN, still)).toEqual(curves.atCutIn);
      expect(pumpFromLevel(facts, { end: 'least', tank: 'cutOut' }, still)).toEqual(curves.atCutOut);
      expect(pumpFromLevel(facts, { end: 'most', tank: 'cutIn' }, still)).toEqual(curves.atCutInMost);
    }),
    SEED,
  );
});

test('held at the level to which it draws the water, the pump gives the same', () => {
  const { curves, facts } = solve(rockWell());
  const { flow, head, waterLevel } = curves.atCutIn!;
  const held = pumpAtLevel(facts, CUT_IN, waterLevel)!;
  expect(held.flow).toBeCloseTo(flow, 9);
  expect(held.head).toBeCloseTo(head, 6);
});

test('where the well gives less than its drawdown says, the water falls until the pump takes just the yield', () => {
  // Balance of volumes: the level stands still only where as much flows in as is pumped.
  fc.assert(
    fc.property(fc.double({ min: 3, max: 8, noNaN: true }), (most) => {
      const level = { staticLevel: '40 ft', pumping: { kind: 'test', flow: '20 gpm', drawdown: '10 ft' } };
      const deep = { depth: '900 ft', casing: { material: 'steel', size: '6 in', bottom: '200 ft' } };
      const { facts } = solve(
        rockWell({
          well: { ...deep, intake: { kind: 'open hole', diameter: '6 in' }, yield: `${most} gpm`, yieldFrom: 'pump' },
          water: level,
          pump: { setting: '800 ft', power: '3/4 hp' },
        }),
      );
      const point = pumpFromLevel(facts, CUT_IN, feet(40))!;
      expect(point.outpumped).toBe(false);
      expect(toGpm(point.flow)).toBeCloseTo(most, 6);
      expect(pumpAtLevel(facts, CUT_IN, point.waterLevel)!.flow).toBeCloseTo(point.flow, 9);
    }),
    SEED,
  );
});

test('from a lower level at rest it gives less', () => {
  const { facts } = solve(rockWell());
  const flows = [40, 50, 60, 70].map((depth) => pumpFromLevel(facts, CUT_IN, feet(depth))!.flow);
  for (let i = 1; i < flows.length; i++) expect(flows[i]).toBeLessThan(flows[i - 1]!);
});

const well = (wellYield?: string) => ({
  depth: '200 ft',
  casing: { material: 'steel', size: '6 in', bottom: '200 ft' },
  intake: { kind: 'open hole', diameter: '6 in' },
  ...(wellYield === undefined ? {} : { yield: wellYield }),
});
const yields = (reported: string | undefined, pumping: object) => {
  const { facts } = solve(rockWell({ well: well(reported), water: { staticLevel: '40 ft', pumping } }));
  const inGpm = (flow: number | null) => (flow === null ? null : Number(toGpm(flow).toFixed(6)));
  return [inGpm(provenYield(facts)), inGpm(mostYield(facts))];
};
const tested = { kind: 'test', flow: '10 gpm', drawdown: '60 ft' };
const steps = [3, 6].map((flow) => ({ flow: `${flow} gpm`, drawdown: `${4 * flow} ft` }));

test.each([
  ['a reported yield', '4 gpm', { kind: 'yield only' }, [4, 4]],
  ['a test', undefined, tested, [10, null]],
  ['a step test, by its largest flow', undefined, { kind: 'steps', steps }, [6, null]],
  ['a yield under the tested flow', '8 gpm', tested, [8, 8]],
  ['a yield that is the tested flow', '10 gpm', tested, [10, null]],
  ['a yield far over the tested flow', '20 gpm', tested, [20, null]],
  ['an aquifer', undefined, { kind: 'aquifer', transmissivity: '5 m2/d', storativity: '0.0001' }, [null, null]],
] as const)('%s: what was proven, and the most that is believed', (_what, reported, pumping, found) => {
  expect(yields(reported, pumping)).toEqual(found);
});

test('a flow-limiting valve holds both ends of the band to its flow', () => {
  const pump = {
    setting: '140 ft',
    power: '1 hp',
    curve: { kind: 'generic', flow: '10 gpm' },
    flowLimiter: '6 gpm',
  };
  const { values } = solve(rockWell({ pump }));
  expect(values.operatingFlowAtCutIn).toBe(gpm(6));
  expect(values.operatingFlowAtCutInMost).toBe(gpm(6));
});
