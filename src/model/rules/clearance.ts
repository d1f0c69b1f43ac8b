/** Whether the pump passes the casing. */
import type { BoreStretch, Solved } from '../solution.ts';
import { inches } from '../units.ts';
import { meets } from './grace.ts';
import { moveIntoBand, words } from './fix.ts';
import { breaks, defineRule, holds, limit, missing } from './rule.ts';

export const TOO_TIGHT = inches(0.1);
export const TIGHT_FIT = inches(0.25);

function widestPart({ facts }: Solved): number {
  return Math.max(facts.pump.diameter, facts.pump.shroudDiameter ?? 0);
}

/** The narrowest known stretch that the motor's lower end passes on its way down. */
function narrowest(solved: Solved): BoreStretch | null {
  const { pump } = solved.facts;
  const down = pump.setting + pump.intakeToMotorBottom;
  let found: BoreStretch | null = null;
  for (const stretch of solved.bore) {
    if (stretch.known && stretch.top < down && (found === null || stretch.insideRadius < found.insideRadius))
      found = stretch;
  }
  return found;
}

export const pumpPassesCasing = defineRule({
  number: 'PR-17',
  part: 'pump',
  judge({ solved, facts }) {
    const stretch = narrowest(solved);
    if (stretch === null) return missing('casingBore');
    const where = stretch.kind;
    const bore = 2 * stretch.insideRadius;
    const widest = widestPart(solved);
    const measured = bore - widest;
    const margin = measured - TIGHT_FIT;
    if (meets(margin, 'length')) return holds('passes', { where, bore, widest, measured });
    const depth = Math.max(stretch.top, facts.pump.setting - facts.pump.intakeToDischarge);
    const at = { measured, limit: TIGHT_FIT, margin, quantity: 'length', depth } as const;
    const numbers = { where, bore, widest, margin };
    return meets(measured - TOO_TIGHT, 'length')
      ? breaks('hardlyPasses', 'warning', numbers, at)
      : breaks('tooWide', 'danger', numbers, at);
  },
  limits(solved) {
    const widest = widestPart(solved);
    const tight = solved.bore.find(
      (stretch) => stretch.known && !meets(2 * stretch.insideRadius - widest - TIGHT_FIT, 'length'),
    );
    // Where it is tight from the top, no depth helps: another pump does.
    if (tight === undefined || tight === solved.bore[0]) return [];
    return [limit('pump.setting', { to: tight.top - solved.facts.pump.intakeToMotorBottom }, 'aboveNarrowPart', {})];
  },
  fixes: (given) => [moveIntoBand(given, 'PR-17', 'pump.setting', words('slimmerPump', {}))],
});

export const clearanceRules = [pumpPassesCasing] as const;
