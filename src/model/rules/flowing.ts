import { breaks, defineRule, holds, missing } from './rule.ts';
import { exceeds } from './grace.ts';
import { words } from './mend.ts';
import { highestStaticLevel } from './pitless.ts';
import { FLOWING_CAUTION, gap, toSpare } from './say.ts';

export const flowingWell = defineRule({
  number: 'PR-38',
  part: 'staticLevel',
  broken: 'Water rises above the ground',
  holds: 'The water stays below the ground',
  source: 'Mont. Admin. R. 36.21.658; Wash. Admin. Code 173-160-291; 15A N.C. Admin. Code 02C .0109(e)',
  why: 'A flowing well that is opened without control can wash itself out of the ground.',
  caution: FLOWING_CAUTION,
  judge({ solved, facts, show }) {
    const level = highestStaticLevel(solved);
    if (level === null) return missing('the static water level');
    if (exceeds(level, 'length'))
      return holds(toSpare(level, show), `At its highest the water stands ${show.depth(level)} below the ground.`);
    const controlled = facts.well.flowControl === true;
    return breaks({
      severity: controlled ? 'warning' : 'danger',
      measured: level,
      limit: 0,
      margin: level,
      quantity: 'length',
      depth: level,
      amount: level < 0 ? `${gap(level, show)} above ground` : 'at the ground',
      message: `The water stands ${level < 0 ? `${gap(level, show)} above the ground` : 'at the ground'}; ${controlled ? 'flow control is reported' : 'no flow control is reported'}.`,
      mend: words('Stop here: this is work for a licensed contractor.'),
    });
  },
});

export const flowingRules = [flowingWell];
