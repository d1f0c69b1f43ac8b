/** What hangs on the hook: hands, a wheel, a hoist, or a machine. */
import { HOIST_LOAD, LIFT_TWO_PEOPLE, NO_TEAM_LOAD } from '../formulas/lifting.ts';
import { meets } from './grace.ts';
import { DROP_PIPE } from './restsOn.ts';
import { isBarbed } from '../tables/pipeMaterials.ts';
import { breaks, defineRule, holds, missing } from './rule.ts';

/** Judged with water round the string, as it hangs; what it can be at the most stands in the table of the weights. */
export const hookLoad = defineRule({
  number: 'PR-51',
  part: 'dropPipe',
  restsOn: [...DROP_PIPE, 'pump.mass', 'pump.setting', 'pump.wires', 'top.depth', 'top.kind', 'wire.size'],
  asks: { two: LIFT_TWO_PEOPLE, hoist: HOIST_LOAD, machine: NO_TEAM_LOAD },
  judge({ facts, values }) {
    const load = values.hangLoadAtRest;
    // The hook holds the string over the casing's top.
    const on = { quantity: 'force', depth: -facts.well.casingHeight } as const;
    if (load !== null && !meets(NO_TEAM_LOAD - load, 'force')) {
      const most = NO_TEAM_LOAD;
      return breaks(
        'needsMachine',
        'warning',
        { load, most },
        { measured: load, limit: most, margin: most - load, ...on },
      );
    }
    if (!isBarbed(facts.dropPipe)) return breaks('threaded', 'note', { load }, { measured: load, ...on });
    if (load === null) return missing(facts.pump.mass === null ? 'weightOrPower' : 'staticLevel');
    if (!meets(HOIST_LOAD - load, 'force')) {
      const most = HOIST_LOAD;
      return breaks('needsHoist', 'note', { load, most }, { measured: load, limit: most, margin: most - load, ...on });
    }
    const most = LIFT_TWO_PEOPLE;
    const margin = most - load;
    if (meets(margin, 'force')) return holds('twoCanHold', { load, margin, most });
    return breaks('needsWheel', 'note', { load, most }, { measured: load, limit: most, margin, ...on });
  },
});

export const liftingRules = [hookLoad] as const;
