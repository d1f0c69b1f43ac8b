/** What may be offered against broken rules, by their numbers. */
import type { Breaks, Fix, Given } from '../rules/rule.ts';

/**
 * The best first, three at most: changes of choices of the build, never of the well, its water or its site; and last what
 * to do where no change is possible. Apart from the rules, since `solve` asks for none of it.
 */
export type MakeFixes = (given: Given, broken: Breaks) => readonly Fix[];

/** Of one family of rules; one that nothing is offered against is left out. */
export type RuleFixes = Readonly<Record<string, MakeFixes>>;
