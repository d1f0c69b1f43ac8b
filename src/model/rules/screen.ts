import { feet } from '../units.ts';
import { meets } from './grace.ts';
import { words } from './mend.ts';
import { breaks, defineRule, doesNotApply, holds, missing } from './rule.ts';
import { slow } from './say.ts';
import { largestPumpFlow } from './yield.ts';

export const ENTRANCE_VELOCITY = feet(0.1);

export const screenEntrance = defineRule({
  number: 'PR-37',
  part: 'screen',
  broken: 'Water enters the screen too fast',
  holds: 'Water enters the screen slowly',
  source: 'US Army TM 5-813-1, ch. 5; Mont. Admin. R. 36.21.652; 35 Ill. Adm. Code 604.240: 0.1 ft/s',
  why: 'Fast water drags sand through the slots and clogs them.',
  judge({ solved, facts, show }) {
    const { screens, diameter } = facts.well.intake;
    if (screens.length === 0) return doesNotApply;
    const flow = largestPumpFlow(solved) ?? facts.house.demand;
    const across = diameter ?? facts.well.casings[facts.well.casings.length - 1]?.outsideDiameter ?? null;
    if (flow === null) return missing('the flow of the pump');
    if (across === null || screens.some(({ openArea }) => openArea === null))
      return missing('the open area of the screen');
    const open = screens.reduce(
      (sum, { top, bottom, openArea }) => sum + Math.PI * across * (bottom - top) * (openArea ?? 0),
      0,
    );
    if (!(open > 0)) return missing('the open area of the screen');
    const measured = flow / open;
    const margin = ENTRANCE_VELOCITY - measured;
    const message = `${show.flow(flow)} enters the slots at ${slow(measured, show)}; ${slow(ENTRANCE_VELOCITY, show)} is the most.`;
    if (meets(margin, 'velocity'))
      return holds(`${Math.round((margin / ENTRANCE_VELOCITY) * 100)} % to spare`, message);
    return breaks({
      severity: 'warning',
      measured,
      limit: ENTRANCE_VELOCITY,
      margin,
      quantity: 'velocity',
      depth: screens[0]?.top ?? null,
      amount: `${slow(-margin, show)} too fast`,
      message,
      mend: words('Pump less; the screen itself cannot be changed.'),
    });
  },
});

export const screenRules = [screenEntrance];
