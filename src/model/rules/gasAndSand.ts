/** Gas and sand that come with the water. */

import { meets } from './grace.ts';
import { CLEAR_OF_BOTTOM, screenTop } from './pumpDepth.ts';
import { breaks, defineRule, holds, missing } from './rule.ts';
import { motorBottomDepth } from '../string/pumpDepths.ts';

export const gasAndSand = defineRule({
  number: 'PR-60',
  part: 'well',
  restsOn: ['pump.setting'],
  asks: { clear: CLEAR_OF_BOTTOM },
  judge({ solved, facts }) {
    const { gas, sand } = facts.water;
    const inPit = facts.well.inPit === true;
    const housed = facts.top.kind === 'seal' && facts.top.housed;
    const depth = -facts.well.casingHeight;
    if (gas === true && (inPit || housed)) return breaks('gasUnderRoof', 'danger', { inPit }, { depth });
    if (gas === true) return breaks('gas', 'warning', {}, { depth });
    if (sand === true) {
      const motor = motorBottomDepth(facts.pump);
      const screen = screenTop(solved);
      const measured = facts.well.bottom - motor;
      const margin = measured - CLEAR_OF_BOTTOM;
      if (screen !== null && !meets(screen - motor, 'length'))
        return breaks('sandInScreen', 'warning', { motor, screen }, { depth: motor });
      // Above a screen the sump under it does not feed the pump.
      if (screen === null && !meets(margin, 'length'))
        return breaks(
          'sandNearBottom',
          'warning',
          { measured, usual: CLEAR_OF_BOTTOM },
          { measured, limit: CLEAR_OF_BOTTOM, margin, quantity: 'length', depth: motor },
        );
      return breaks('sand', 'note', {}, { depth: facts.pump.setting });
    }
    if (gas === null || sand === null) return missing('sandAndGas');
    return holds('neither', {});
  },
});

export const gasAndSandRules = [gasAndSand] as const;
