/** The list of what may be taken for granted, against what plans do take. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { assumable } from '../../../src/model/plan/assumable.ts';
import { readFacts } from '../../../src/model/plan/readFacts.ts';
import { anyPlan } from '../../plans/anyPlan.ts';

const listed = { us: byPath('us'), metric: byPath('metric') };

function byPath(units: 'us' | 'metric'): ReadonlyMap<string, string | null> {
  return new Map(assumable(units).map(({ path, value }) => [path, value]));
}

/** However casings are typed, the first goes by one name; which system a plan is in is no choice of the build. */
const plain = (path: string) => path.replace(/^well\.casings\.\d+/, 'well.casing');
const NOT_LISTED = new Set(['units']);

test('whatever any plan takes for granted is listed, with the value that it takes', () => {
  fc.assert(
    fc.property(anyPlan, (plan) => {
      const units = plan.units ?? 'us';
      for (const { path, value } of readFacts(plan).assumed) {
        // A metric plan with a motor that is named in horsepower: told of in words.
        if (NOT_LISTED.has(path) || (path === 'pump.frequency' && units === 'metric')) continue;
        const usual = listed[units].get(plain(path));
        expect(usual, `${path} of a plan in ${units}`).not.toBeUndefined();
        expect(usual ?? value, path).toBe(value);
      }
    }),
    { seed: 61, numRuns: 2000 },
  );
});

test('no level, yield, frost depth or end of a casing or screen is ever taken for granted', () => {
  const facts =
    /^(?:water\.(?:static|dryFall|pH|conductivity|sand|gas)|well\.(?:depth$|yield|casing\.bottom|intake|inflows|layers|grout)|site\.(?:frostDepth|floodHeight))/;
  for (const units of ['us', 'metric'] as const)
    expect([...listed[units].keys()].filter((path) => facts.test(path))).toEqual([]);
});
