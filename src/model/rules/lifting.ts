/** What hangs on the hook: hands, more hands, or a hoist. */
import { HOIST_LOAD, LIFT_TWO_PEOPLE } from '../formulas/lifting.ts';
import { feet } from '../units.ts';
import { meets } from './grace.ts';
import { hangLimit } from './hangLimit.ts';
import { words } from './mend.ts';
import { breaks, defineRule, holds, missing } from './rule.ts';
import { gap, LIFTING_CAUTION } from './say.ts';

/** What self-installers pull by hand at most. */
export const HAND_DEPTH = feet(300);

export const hookLoad = defineRule({
  number: 'PR-51',
  part: 'dropPipe',
  broken: 'The string is too heavy for two people',
  holds: 'Two people can hold the string',
  source:
    '51 lb a person: NIOSH Applications Manual, DHHS 94-110; team of two: from memory; 150 lb and 300 ft: common practice, no source',
  why: 'A wet string pulled hand over hand hurts backs and hands, and one slip drops it.',
  caution: `${LIFTING_CAUTION} Keep pipe and hoist away from power lines.`,
  judge({ facts, values, show }) {
    const load = values.hangLoadDry;
    const rigid = facts.dropPipe.material !== 'PE';
    const depth = facts.top.kind === 'pitless' ? facts.top.depth : -facts.well.casingHeight;
    if (rigid) {
      return breaks({
        severity: 'warning',
        measured: load,
        limit: null,
        margin: null,
        quantity: 'force',
        depth,
        title: 'Threaded pipe needs a hoist',
        amount: load === null ? 'hoist' : show.force(load),
        message: 'Threaded pipe comes up length by length: a hoist and two pipe holders at any depth.',
        mend: words('Have a hoist and two pipe holders at hand.'),
      });
    }
    if (load === null) return missing('the weight or the power of the pump');
    const margin = LIFT_TWO_PEOPLE - load;
    if (!meets(margin, 'force')) {
      const hoist = !meets(HOIST_LOAD - load, 'force');
      const limit = hoist ? HOIST_LOAD : LIFT_TWO_PEOPLE;
      return breaks({
        severity: 'warning',
        measured: load,
        limit,
        margin: limit - load,
        quantity: 'force',
        depth,
        ...(hoist ? { title: 'The string needs a hoist' } : {}),
        amount: show.force(load),
        message: hoist
          ? `Up to ${show.force(load)} hangs on the hook; over ${show.force(HOIST_LOAD)} take a hoist.`
          : `Up to ${show.force(load)} hangs on the hook; two people hold about ${show.force(LIFT_TWO_PEOPLE)}.`,
        mend: words(hoist ? 'Use a hoist rated for twice that load.' : 'Have more than two people, or a hoist.'),
      });
    }
    if (!meets(HAND_DEPTH - facts.pump.setting, 'length')) {
      return breaks({
        severity: 'note',
        measured: facts.pump.setting,
        limit: HAND_DEPTH,
        margin: HAND_DEPTH - facts.pump.setting,
        quantity: 'length',
        depth,
        title: 'The pump hangs deep for pulling by hand',
        amount: `${gap(HAND_DEPTH - facts.pump.setting, show)} deeper`,
        message: `The pump hangs at ${show.depth(facts.pump.setting)}; by hand few pull from below ${show.depth(HAND_DEPTH)}.`,
        mend: words('A hoist is the easier way at this depth.'),
      });
    }
    return holds(
      `${show.force(margin)} to spare`,
      `Up to ${show.force(load)} hangs on the hook, full of water and with none round it.`,
    );
  },
  limits(solved) {
    if (solved.facts.dropPipe.material !== 'PE') return [];
    return hangLimit(solved, LIFT_TWO_PEOPLE, (show) => `${show.force(LIFT_TWO_PEOPLE)} for two people`);
  },
});

export const liftingRules = [hookLoad];
