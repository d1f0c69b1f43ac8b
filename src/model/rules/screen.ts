import { screenEntrance } from '../figures/screenEntrance.ts';
import type { Solved } from '../solution.ts';
import { UNKNOWN } from '../plan/unknown.ts';
import { feet } from '../units.ts';
import { meets } from './grace.ts';
import { intakeUnsaid, isOpenRock } from './openRock.ts';
import { breaks, defineRule, doesNotApply, holds, missing } from './rule.ts';

export const ENTRANCE_VELOCITY = feet(0.1);

export const screenVelocity = defineRule({
  number: 'PR-37',
  part: 'screen',
  restsOn: ['house.cutIn', 'house.demand', 'pump.curve.flow'],
  asks: { most: ENTRANCE_VELOCITY },
  judge({ solved, facts }) {
    if (intakeUnsaid(facts)) return missing('intakeKind');
    const entrance = screenEntrance(solved);
    // Rock gives no sand to drag through the openings of a liner.
    if (entrance === null || isOpenRock(facts)) return doesNotApply;
    const { flow, velocity, openShare } = entrance;
    if (flow === null) return missing('flowOfPump');
    if (openShare === null) return missing('openArea', {}, openAreaFields(solved));
    if (velocity === null) return missing('screenWidth');
    const most = ENTRANCE_VELOCITY;
    const margin = most - velocity;
    const numbers = { flow, measured: velocity, most, margin };
    if (meets(margin, 'velocity')) return holds('slow', numbers);
    const depth = facts.well.intake.screens[0]?.top ?? null;
    return breaks('fast', 'warning', numbers, { measured: velocity, limit: most, margin, quantity: 'velocity', depth });
  },
});

/** The first screen that does not say how open it is, and the width where that is unknown too. */
function openAreaFields({ plan, facts }: Solved): string[] {
  const typed = plan.well.intake.screens ?? [];
  const at = typed.findIndex(({ openArea }) => openArea === undefined || openArea === UNKNOWN);
  const width = facts.well.intake.diameter === null ? ['well.intake.diameter'] : [];
  return [`well.intake.screens.${Math.max(at, 0)}.openArea`, ...width];
}

export const screenRules = [screenVelocity] as const;
