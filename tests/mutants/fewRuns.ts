/**
 * Laws over plans made at random, the first of them only: hundreds for every mutant would take days. Nor is the smallest
 * plan looked for that breaks one: that it is broken is enough.
 */
import * as fc from '../../node_modules/fast-check/lib/fast-check.js';

const MOST_RUNS = 10;

/** Of the two that it replaces one takes laws that wait for something, the other those that do not. */
const assert = ((property: fc.IProperty<never>, parameters: fc.Parameters<never> = {}) =>
  fc.assert(property, {
    ...parameters,
    numRuns: Math.min(parameters.numRuns ?? 100, MOST_RUNS),
    endOnFailure: true,
  })) as typeof fc.assert;

export default { ...fc, assert };
