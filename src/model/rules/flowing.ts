import { exceeds } from './grace.ts';
import { highestStaticLevel } from './highestStatic.ts';
import { breaks, defineRule, holds, missing } from './rule.ts';

export const flowingWell = defineRule({
  number: 'PR-38',
  part: 'staticLevel',
  restsOn: [],
  judge({ solved, facts }) {
    const level = highestStaticLevel(solved);
    if (level === null) return missing('staticLevel');
    // A level read once says nothing of a wet season's.
    if (exceeds(level, 'length'))
      return solved.levels.staticHighest === null
        ? holds('readBelowGround', { level })
        : holds('belowGround', { level });
    const controlled = facts.well.flowControl === true;
    const severity = controlled ? 'warning' : 'danger';
    const at = { measured: level, limit: 0, margin: level, quantity: 'length', depth: level } as const;
    return level < 0
      ? breaks('aboveGround', severity, { height: -level, controlled }, at)
      : breaks('atGround', severity, { controlled }, at);
  },
});

export const flowingRules = [flowingWell] as const;
