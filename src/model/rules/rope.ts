/** The safety rope, where one hangs in the well. */
import { KNOT_EFFICIENCY } from '../formulas/rope.ts';
import type { Newtons } from '../si.ts';
import { meets } from './grace.ts';
import { change, words } from './mend.ts';
import { breaks, defineRule, holds } from './rule.ts';
import { LIFTING_CAUTION } from './say.ts';
import { hangLimit } from './hangLimit.ts';

/** Knotted strength over the load that comes on the rope when the top joint fails. */
export const ROPE_FACTOR = 1.5;

export const rope = defineRule({
  number: 'PR-16',
  part: 'rope',
  broken: 'The rope is tied in the wrong place',
  holds: 'The rope is tied inside the casing',
  source: 'Md. Code Regs. 26.04.04.22 C; strength: common practice with the knot loss of Cordage Institute CI 1401-06',
  why: 'A rope may catch a slipping string once; through the cap it lets dirt and insects in.',
  caution: `Never lift or lower by the rope. ${LIFTING_CAUTION}`,
  judge({ facts, values, show }) {
    const line = facts.rope;
    if (line === null) return holds('no rope', 'No rope hangs in the well, and no code that was read asks for one.');
    const tieInside = change(facts, [{ path: 'rope.tied', to: 'casing hook' }], 'Tie it to a casing hook');
    const at = { depth: -facts.well.casingHeight, caution: `Never lift or lower by the rope. ${LIFTING_CAUTION}` };
    if (line.tied === 'through cap') {
      return breaks({
        severity: 'danger',
        ...at,
        title: 'The rope is led through the cap',
        amount: 'through the cap',
        message: 'The rope leaves the well through the cap; it must end inside, on a hook.',
        mend: tieInside,
      });
    }
    if (line.tied !== 'casing hook') {
      return breaks({
        severity: 'warning',
        ...at,
        ...(line.tied === 'loose' ? { title: 'The rope is tied to nothing' } : {}),
        amount: line.tied === 'loose' ? 'loose' : 'on the cap',
        message:
          line.tied === 'loose'
            ? 'A loose rope slides down and can jam the pump; tie it to a hook on the casing.'
            : 'The rope hangs on the cap and comes off with it; tie it to a hook on the casing.',
        mend: tieInside,
      });
    }
    const load = values.hangLoadDry;
    if (line.breakingStrength === null || load === null) {
      return holds('tied inside', 'Tied to a casing hook, left slack; may catch a slip once, never for lifting.');
    }
    const measured = line.breakingStrength * KNOT_EFFICIENCY;
    const limit = load * ROPE_FACTOR;
    const margin = measured - limit;
    if (meets(margin, 'force')) {
      return holds(
        `${show.force(margin)} to spare`,
        `Knotted it holds ${show.force(measured)}; may catch a slip once, never for lifting.`,
      );
    }
    return breaks({
      severity: 'warning',
      ...at,
      measured,
      limit,
      margin,
      quantity: 'force',
      title: 'The rope is too weak for the string',
      amount: `${show.force(-margin)} short`,
      message: `Knotted it holds ${show.force(measured)}; 1.5 times the hanging ${show.force(load)} is asked.`,
      mend: words(`Take a rope with ${show.force(limit / KNOT_EFFICIENCY)} breaking strength, or none.`),
    });
  },
  limits(solved) {
    const line = solved.facts.rope;
    if (line === null || line.breakingStrength === null) return [];
    const most: Newtons = (line.breakingStrength * KNOT_EFFICIENCY) / ROPE_FACTOR;
    return hangLimit(solved, most, () => 'strength of the rope');
  },
});

export const ropeRules = [rope];
