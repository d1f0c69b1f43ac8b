/** What the rules read, put together once. All of one shape: engines read such objects several times as fast. */
import type { Facts } from '../facts.ts';
import type { Solved, Values } from '../solution.ts';
import type { Given, Ranges } from './rule.ts';

/** Where parts may go is found when it is first asked for: most rules never do. */
class GivenOnce implements Given {
  readonly solved: Solved;
  readonly facts: Facts;
  readonly values: Values;
  readonly #find: () => Ranges;
  #ranges: Ranges | null = null;

  constructor(solved: Solved, find: () => Ranges) {
    this.solved = solved;
    this.facts = solved.facts;
    this.values = solved.values;
    this.#find = find;
  }

  get ranges(): Ranges {
    this.#ranges ??= this.#find();
    return this.#ranges;
  }
}

export function givenOf(solved: Solved, find: () => Ranges): Given {
  return new GivenOnce(solved, find);
}

/** The same with something of the well otherwise; parts may go where they might before. */
export function givenOtherwise(given: Given, solved: Solved): Given {
  return new GivenOnce(solved, () => given.ranges);
}
