/** What hangs on the hook: hands, more hands, or a hoist. */
import { HOIST_LOAD, LIFT_TWO_PEOPLE } from '../formulas/lifting.ts';
import { feet } from '../units.ts';
import { words } from './fix.ts';
import { meets } from './grace.ts';
import { hangLimit } from './hangLimit.ts';
import { breaks, defineRule, holds, missing } from './rule.ts';

/** What self-installers pull by hand at most. */
export const HAND_DEPTH = feet(300);

export const hookLoad = defineRule({
  number: 'PR-51',
  part: 'dropPipe',
  judge({ facts, values }) {
    const load = values.hangLoadDry;
    const depth = facts.top.kind === 'pitless' ? facts.top.depth : -facts.well.casingHeight;
    if (facts.dropPipe.material !== 'PE')
      return breaks('threaded', 'warning', { load }, { measured: load, quantity: 'force', depth });
    if (load === null) return missing('weightOrPower');
    const margin = LIFT_TWO_PEOPLE - load;
    if (!meets(HOIST_LOAD - load, 'force')) {
      const most = HOIST_LOAD;
      const at = { measured: load, limit: most, margin: most - load, quantity: 'force', depth } as const;
      return breaks('needsHoist', 'warning', { load, most }, at);
    }
    if (!meets(margin, 'force')) {
      const most = LIFT_TWO_PEOPLE;
      const at = { measured: load, limit: most, margin, quantity: 'force', depth } as const;
      return breaks('tooHeavyForTwo', 'warning', { load, most }, at);
    }
    const { setting } = facts.pump;
    const room = HAND_DEPTH - setting;
    if (!meets(room, 'length')) {
      const most = HAND_DEPTH;
      const at = { measured: setting, limit: most, margin: room, quantity: 'length', depth } as const;
      return breaks('deepByHand', 'note', { setting, most, margin: room }, at);
    }
    return holds('twoCanHold', { load, margin });
  },
  limits(solved) {
    if (solved.facts.dropPipe.material !== 'PE') return [];
    return hangLimit(solved, LIFT_TWO_PEOPLE, 'twoPeople', { most: LIFT_TWO_PEOPLE });
  },
  fixes(_given, { variant }) {
    if (variant === 'threaded') return [words('hoistAndHolders', {})];
    if (variant === 'needsHoist') return [words('ratedHoist', {})];
    return [variant === 'tooHeavyForTwo' ? words('morePeople', {}) : words('hoistIsEasier', {})];
  },
});

export const liftingRules = [hookLoad] as const;
