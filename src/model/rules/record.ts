/** Whether the record agrees with itself. */
import type { Metres } from '../si.ts';
import type { Solved } from '../solution.ts';
import { meets } from './grace.ts';
import { breaks, defineRule, doesNotApply, holds } from './rule.ts';

/** Two depths of which the first is above the second, or at it, in every true record. */
interface Order {
  readonly variant:
    | 'dryAboveToday'
    | 'highBelowToday'
    | 'pumpingAboveStatic'
    | 'casingBelowBottom'
    | 'soundedInCasing'
    | 'screenBelowBottom'
    | 'pumpBelowBottom';
  readonly above: Metres;
  readonly below: Metres;
  /** Where the sign stands. */
  readonly depth: Metres;
}

function orders({ facts, levels }: Solved): Order[] {
  const { well, water, pump } = facts;
  const found: Order[] = [];
  const add = (variant: Order['variant'], above: Metres | null, below: Metres | null, depth: Metres | null) => {
    if (above !== null && below !== null && depth !== null) found.push({ variant, above, below, depth });
  };
  add('dryAboveToday', levels.static, water.staticLowest, water.staticLowest);
  add('highBelowToday', water.staticHighest, levels.static, water.staticHighest);
  if (water.pumping?.kind === 'level') add('pumpingAboveStatic', levels.static, water.pumping.level, levels.static);
  for (const { bottom } of well.casings) {
    add('casingBelowBottom', bottom, well.depth, well.depth);
    // Lined to the bottom, a well that fills up is sounded inside its lining. One that gives its water below the casing
    // gives none when it has filled so far.
    if (bottom !== null && !meets(bottom - well.depth, 'length'))
      add('soundedInCasing', bottom, well.soundedDepth, well.soundedDepth);
  }
  for (const { bottom } of well.intake.screens) add('screenBelowBottom', bottom, well.depth, well.depth);
  add('pumpBelowBottom', pump.setting, well.bottom, well.bottom);
  return found;
}

export const recordAgrees = defineRule({
  number: 'PR-62',
  part: 'well',
  restsOn: ['pump.setting', 'top.depth'],
  judge({ solved }) {
    const found = orders(solved);
    const wrong = found.find(({ above, below }) => !meets(below - above, 'length'));
    if (wrong !== undefined) {
      const { variant, above, below, depth } = wrong;
      const margin = below - above;
      return breaks(
        variant,
        'warning',
        { above, below, margin },
        { measured: below, limit: above, margin, quantity: 'length', depth },
      );
    }
    // How deep the pump hangs is all that many a plan says: that is no record.
    return found.length > 1 ? holds('agrees', {}) : doesNotApply;
  },
});

export const recordRules = [recordAgrees] as const;
