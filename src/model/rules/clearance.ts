/** Whether the pump passes the casing. */
import type { BoreStretch, Solved } from '../solution.ts';
import { inches } from '../units.ts';
import { meets } from './grace.ts';
import { moveIntoBand } from './mend.ts';
import { breaks, defineRule, holds, missing } from './rule.ts';

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
  broken: 'The pump is too wide for the casing',
  holds: 'The pump passes the casing',
  source: 'common practice, no source; casing bores as their standards print them',
  why: 'Pump, cable, splice and clamps must pass every joint on the way down and up.',
  judge(given) {
    const { solved, facts, show } = given;
    const stretch = narrowest(solved);
    if (stretch === null) return missing('the inside diameter of the casing');
    const bore = 2 * stretch.insideRadius;
    const measured = bore - widestPart(solved);
    const margin = measured - TIGHT_FIT;
    const where = stretch.kind === 'openHole' ? 'hole' : stretch.kind;
    const message = `The ${where} is ${show.bore(bore)} wide inside, the pump ${show.bore(widestPart(solved))} over its cable guard.`;
    if (meets(margin, 'length')) return holds(`${show.bore(measured)} free`, message);
    const passes = meets(measured - TOO_TIGHT, 'length');
    return breaks({
      severity: passes ? 'warning' : 'danger',
      ...(passes ? { title: `The pump hardly passes the ${where}` } : {}),
      measured,
      limit: TIGHT_FIT,
      margin,
      quantity: 'length',
      depth: Math.max(stretch.top, facts.pump.setting - facts.pump.intakeToDischarge),
      amount: `${show.bore(-margin)} too tight`,
      message,
      mend: moveIntoBand(given, 'PR-17', 'pump.setting', 'Choose a slimmer pump, or measure the bore once more.'),
    });
  },
  limits(solved) {
    const widest = widestPart(solved);
    const tight = solved.bore.find(
      (stretch) => stretch.known && !meets(2 * stretch.insideRadius - widest - TIGHT_FIT, 'length'),
    );
    // Where it is tight from the top, no depth helps: another pump does.
    if (tight === undefined || tight === solved.bore[0]) return [];
    return [
      {
        setting: 'pump.setting',
        to: tight.top - solved.facts.pump.intakeToMotorBottom,
        label: () => 'above the narrow part',
      },
    ];
  },
});

export const clearanceRules = [pumpPassesCasing];
