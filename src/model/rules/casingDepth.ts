/** How deep casing and seal reach, and where the casing's foot stands. Codes differ: at most a note. */
import type { Facts } from '../facts.ts';
import type { Metres } from '../si.ts';
import { feet } from '../units.ts';
import { meets } from './grace.ts';
import { isFirmRock } from './ground.ts';
import { atLowestLevel } from './atLowestLevel.ts';
import { intakeUnsaid, isOpenRock } from './openRock.ts';
import { AS_TESTED } from './restsOn.ts';
import { breaks, defineRule, doesNotApply, holds, missing } from './rule.ts';
import type { Given } from './rule.ts';

/** Sealed casing below the ground: 18 ft is the least that a code asks for drilled wells, 20 ft the commonest. */
export const LEAST_SEALED_ANYWHERE = feet(18);
export const LEAST_SEALED = feet(20);
/** Into firm rock, or below the pumping level in sand and gravel. */
export const FOOT_BEYOND = feet(5);

/**
 * The deepest foot of the casings that begin at the top, since a liner hung lower seals nothing; null where nobody said
 * how deep they reach.
 */
function casingFoot({ well }: Facts): Metres | null {
  return well.casings.reduce<Metres | null>(
    (deepest, { top, bottom }) => (bottom === null || top > 0 ? deepest : Math.max(deepest ?? bottom, bottom)),
    null,
  );
}

export const sealedDeepEnough = defineRule({
  number: 'PR-35',
  part: 'casing',
  restsOn: [],
  asks: { usual: LEAST_SEALED, least: LEAST_SEALED_ANYWHERE },
  judge({ facts }) {
    const foot = casingFoot(facts);
    if (foot === null) return missing('casingBottom');
    const grout = facts.well.groutBottom;
    const groutEnds = grout !== null && grout < foot;
    const by = groutEnds ? 'grout' : 'casing';
    const measured = groutEnds ? grout : foot;
    const usual = LEAST_SEALED;
    const margin = measured - usual;
    // What nobody said of the seal does not hold: then the casing alone is told.
    if (meets(margin, 'length'))
      return grout === null
        ? holds('casingOnly', { measured, margin, usual })
        : holds('deepEnough', { by, measured, margin, usual });
    return breaks(
      'shallow',
      'note',
      { by, measured, margin, least: LEAST_SEALED_ANYWHERE, usual },
      { measured, limit: usual, margin, quantity: 'length', depth: measured },
    );
  },
});

export const casingSeated = defineRule({
  number: 'PR-36',
  part: 'casing',
  restsOn: ['house.demand', ...AS_TESTED],
  asks: { beyond: FOOT_BEYOND },
  judge(given) {
    const { intake } = given.facts.well;
    // A driven pipe and its point are one; a dug well's rings stand in loose ground.
    if (intake.kind === 'dug' || intake.kind === 'driven point') return doesNotApply;
    const foot = casingFoot(given.facts);
    if (foot === null) return missing('casingBottom');
    if (intakeUnsaid(given.facts)) return missing('intakeKind');
    return isOpenRock(given.facts) ? seatedInRock(foot, given) : belowPumpingLevel(foot, given);
  },
});

/** In rock: from the top of the firm rock that the foot stands in. */
function seatedInRock(foot: Metres, { facts }: Given) {
  const { layers } = facts.well;
  const place = layers.findIndex(({ bottom }) => meets(bottom - foot, 'length'));
  const layer = layers[place];
  if (layer === undefined) return missing('groundAtFoot');
  const { material } = layer;
  const firm = isFirmRock(layer);
  if (firm === null) return missing('firmRock', { material });
  const measured = firm ? foot - topOfRock(facts, place) : 0;
  const usual = FOOT_BEYOND;
  const margin = measured - usual;
  if (meets(margin, 'length')) return holds('seated', { measured, margin, material, usual });
  const at = { measured, limit: usual, margin, quantity: 'length', depth: foot } as const;
  return firm
    ? breaks('barelySeated', 'note', { measured, margin, material, usual }, at)
    : breaks('notInRock', 'note', { material, usual }, at);
}

/** The firm layers over the one at this place, without a gap. */
function topOfRock({ well }: Facts, at: number): Metres {
  const loose = well.layers.findLastIndex((layer, place) => place < at && isFirmRock(layer) !== true);
  return well.layers[loose + 1]?.top ?? 0;
}

/** In sand and gravel: below the water while it is pumped. */
function belowPumpingLevel(foot: Metres, given: Given) {
  const usual = FOOT_BEYOND;
  return atLowestLevel(
    given,
    (level, by) => {
      const measured = foot - level;
      const margin = measured - usual;
      if (meets(margin, 'length'))
        return by === 'open'
          ? holds('belowFloor', { foot, floor: level, margin, usual }, margin)
          : holds('belowLevel', { measured, margin, usual }, margin);
      const at = { measured, limit: usual, margin, quantity: 'length', depth: foot } as const;
      // Told where it breaks at either end of what the level can be: then the water at rest is too deep already.
      if (by === 'open') return breaks('nearRest', 'note', { foot, rest: level, margin, usual }, at);
      const numbers = { measured, margin, usual };
      return measured < 0 ? breaks('aboveLevel', 'note', numbers, at) : breaks('nearLevel', 'note', numbers, at);
    },
    (turn) => ({ variant: 'dependsOnLevel' as const, numbers: { turn, foot, usual } }),
    () => foot - usual,
  );
}

export const casingDepthRules = [sealedDeepEnough, casingSeated] as const;
