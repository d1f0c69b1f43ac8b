import { feet } from '../units.ts';
import { words } from './fix.ts';
import { meets } from './grace.ts';
import { breaks, defineRule, doesNotApply, holds, missing } from './rule.ts';
import { largestPumpFlow } from './yield.ts';

export const ENTRANCE_VELOCITY = feet(0.1);

export const screenEntrance = defineRule({
  number: 'PR-37',
  part: 'screen',
  judge({ solved, facts }) {
    const { screens, diameter } = facts.well.intake;
    if (screens.length === 0) return doesNotApply;
    const flow = largestPumpFlow(solved) ?? facts.house.demand;
    const across = diameter ?? facts.well.casings[facts.well.casings.length - 1]?.outsideDiameter ?? null;
    if (flow === null) return missing('flowOfPump');
    if (across === null || screens.some(({ openArea }) => openArea === null)) return missing('openArea');
    const open = screens.reduce(
      (sum, { top, bottom, openArea }) => sum + Math.PI * across * (bottom - top) * (openArea ?? 0),
      0,
    );
    if (!(open > 0)) return missing('openArea');
    const measured = flow / open;
    const most = ENTRANCE_VELOCITY;
    const margin = most - measured;
    const numbers = { flow, measured, most, margin };
    if (meets(margin, 'velocity')) return holds('slow', numbers);
    const depth = screens[0]?.top ?? null;
    return breaks('fast', 'warning', numbers, { measured, limit: most, margin, quantity: 'velocity', depth });
  },
  fixes: () => [words('pumpLess', {})],
});

export const screenRules = [screenEntrance] as const;
