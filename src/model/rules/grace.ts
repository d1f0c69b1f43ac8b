import type { Quantity } from '../solution.ts';

/** 0.1 mm, 1 Pa, 0.1 N, and the sliver that rounding leaves elsewhere: nobody builds to less. */
const GRACE: Readonly<Record<Quantity, number>> = {
  length: 1e-4,
  pressure: 1,
  force: 0.1,
  flow: 1e-9,
  velocity: 1e-9,
  ratio: 1e-9,
  current: 1e-9,
  time: 1e-6,
  count: 0,
};

/** Whether a limit holds: the margin to it, positive on the right side, may be short by the grace. */
export function meets(margin: number, quantity: Quantity): boolean {
  return margin >= -GRACE[quantity];
}

/** How far inside a limit that must be passed, and not just reached, a value has to stay. */
export function past(quantity: Quantity): number {
  return 2 * GRACE[quantity];
}

/** Whether a limit is passed, where reaching it is not enough. */
export function exceeds(margin: number, quantity: Quantity): boolean {
  return margin > GRACE[quantity];
}
