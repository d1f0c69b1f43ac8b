import type { Facts } from '../facts.ts';
import { mayMove, statusAt } from '../rules/fix.ts';
import type { Stands, WhyLeft } from './told.ts';

/** How a thing came to stand that no click moves. */
export function whatStands(facts: Facts, path: string): Stands {
  const status = statusAt(facts, path);
  return status === 'reported' || status === 'measured' ? status : 'installed';
}

/** Null where it may be moved. */
export function standsStill(facts: Facts, path: string): WhyLeft | null {
  return mayMove(facts, path) ? null : { variant: 'stands', numbers: { status: whatStands(facts, path) } };
}
