import type { Holding } from '../solution.ts';

/** Whether what holds rests on nothing but what somebody said. */
export function isSure({ assumed, unsaid }: Holding): boolean {
  return assumed.length === 0 && unsaid.length === 0;
}
