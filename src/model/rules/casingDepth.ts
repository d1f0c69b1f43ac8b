/** How deep casing and seal reach, and where the casing's foot stands. Codes differ: at most a note. */
import type { Facts } from '../facts.ts';
import type { Metres } from '../si.ts';
import { feet } from '../units.ts';
import { meets } from './grace.ts';
import { isFirmRock } from './ground.ts';
import { words } from './mend.ts';
import { drawdownMissing, lowestPumpingLevel } from './pumpDepth.ts';
import { breaks, defineRule, doesNotApply, holds, missing } from './rule.ts';
import type { Given, Outcome } from './rule.ts';
import { gap, toSpare } from './say.ts';

/** Sealed casing below the ground: 18 ft is the least that a code asks for drilled wells, 20 ft the commonest. */
export const LEAST_SEALED_ANYWHERE = feet(18);
export const LEAST_SEALED = feet(20);
/** Into firm rock, or below the pumping level in sand and gravel. */
export const FOOT_BEYOND = feet(5);

/** The deepest foot of the casings that begin at the top; null where nobody said how deep they reach. */
function casingFoot({ well }: Facts): Metres | null {
  return well.casings.reduce<Metres | null>(
    (deepest, { bottom }) => (bottom === null ? deepest : Math.max(deepest ?? bottom, bottom)),
    null,
  );
}

export const sealedDeepEnough = defineRule({
  number: 'PR-35',
  part: 'casing',
  broken: 'Casing and seal are shallow',
  holds: 'Casing and seal reach deep enough',
  source:
    '20 ft: 77 Ill. Adm. Code 920, 15A N.C. Admin. Code 02C .0107; 19 ft: 10 N.Y. Codes R. & Regs. App. 5-B; the local code decides',
  why: 'Water near the surface is the dirtiest; casing and grout keep it out of the well.',
  judge({ facts, show }) {
    const foot = casingFoot(facts);
    if (foot === null) return missing('how deep the casing reaches');
    const grout = facts.well.groutBottom;
    const groutEnds = grout !== null && grout < foot;
    const measured = groutEnds ? grout : foot;
    const margin = measured - LEAST_SEALED;
    const reaches = `${groutEnds ? 'Grout' : 'Casing'} reaches ${show.depth(measured)}`;
    if (meets(margin, 'length')) {
      const seal =
        grout === null ? ', and nobody said how deep the grout goes' : `; ${show.depth(LEAST_SEALED)} is usual`;
      return holds(toSpare(margin, show), `${reaches}${seal}.`);
    }
    return breaks({
      severity: 'note',
      measured,
      limit: LEAST_SEALED,
      margin,
      quantity: 'length',
      depth: measured,
      amount: `${gap(margin, show)} short`,
      message: `${reaches}; codes ask for ${show.depth(LEAST_SEALED_ANYWHERE)} to ${show.depth(LEAST_SEALED)} at least, some for more.`,
      mend: words('Ask the local code, and have the water tested; deeper casing is a driller’s work.'),
    });
  },
});

export const casingSeated = defineRule({
  number: 'PR-36',
  part: 'casing',
  broken: 'The casing ends too high',
  holds: 'The casing’s foot stands where it should',
  source: 'US Army TI 814-01 and 10 N.Y. Codes R. & Regs. App. 5-B, Table 2: 5 ft; the local code decides',
  why: 'Shallow water and loose ground enter a well at the foot of its casing.',
  judge(given) {
    const { intake } = given.facts.well;
    // A driven pipe and its point are one; a dug well's rings stand in loose ground.
    if (intake.kind === 'dug' || intake.kind === 'driven point') return doesNotApply;
    const foot = casingFoot(given.facts);
    if (foot === null) return missing('how deep the casing reaches');
    return intake.kind === 'open hole' ? seatedInRock(foot, given) : belowPumpingLevel(foot, given);
  },
});

/** In rock: from the top of the firm rock that the foot stands in. */
function seatedInRock(foot: Metres, { facts, show }: Given): Outcome {
  const { layers } = facts.well;
  const at = layers.findIndex(({ top, bottom }) => top < foot && meets(bottom - foot, 'length'));
  const layer = layers[at];
  if (layer === undefined) return missing('what ground the casing ends in');
  const firm = isFirmRock(layer.material);
  if (firm === null) return missing(`whether “${layer.material}” is firm rock`);
  const rockTop = firm ? topOfRock(facts, at) : foot;
  const measured = foot - rockTop;
  const margin = measured - FOOT_BEYOND;
  const where = firm
    ? `The casing stands ${gap(measured, show)} in ${layer.material}`
    : `The casing ends in ${layer.material}, not in firm rock`;
  if (meets(margin, 'length')) return holds(toSpare(margin, show), `${where}; ${show.depth(FOOT_BEYOND)} is usual.`);
  return breaks({
    severity: 'note',
    measured,
    limit: FOOT_BEYOND,
    margin,
    quantity: 'length',
    depth: foot,
    title: firm ? 'The casing is barely seated in rock' : 'The casing does not reach firm rock',
    amount: firm ? `${gap(margin, show)} short` : 'not in rock',
    message: `${where}; ${show.depth(FOOT_BEYOND)} into it is usual.`,
    mend: words('Ask the driller how the casing was seated; a liner with grout can close the gap.'),
  });
}

/** The firm layers over the one at this place, without a gap. */
function topOfRock({ well }: Facts, at: number): Metres {
  let first = at;
  while (first > 0 && isFirmRock(well.layers[first - 1]?.material ?? '') === true) first--;
  return well.layers[first]?.top ?? 0;
}

/** In sand and gravel: below the water while it is pumped. */
function belowPumpingLevel(foot: Metres, { solved, show }: Given): Outcome {
  const level = lowestPumpingLevel(solved);
  if (level === null) return missing(drawdownMissing(solved));
  const measured = foot - level.depth;
  const margin = measured - FOOT_BEYOND;
  const message = `The casing ends ${gap(measured, show)} ${measured < 0 ? 'above' : 'below'} the pumping level; ${show.depth(FOOT_BEYOND)} below it is usual.`;
  if (meets(margin, 'length')) return holds(toSpare(margin, show), message);
  return breaks({
    severity: 'note',
    measured,
    limit: FOOT_BEYOND,
    margin,
    quantity: 'length',
    depth: foot,
    title: 'The casing ends too near the pumping level',
    amount: `${gap(margin, show)} short`,
    message,
    mend: words('Pump less: the casing itself cannot be changed.'),
  });
}

export const casingDepthRules = [sealedDeepEnough, casingSeated];
