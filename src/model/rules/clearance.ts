/** Whether the pump passes what lines the hole on its way down. */
import type { Metres } from '../si.ts';
import type { BoreStretch, Solved } from '../solution.ts';
import { inches } from '../units.ts';
import { sleeveOutside } from '../string/sleeveOutside.ts';
import { meets } from './grace.ts';
import { isAssumed } from './assumed.ts';
import type { MissingFact } from './missing.ts';
import { breaks, defineRule, holds, limit, missing } from './rule.ts';
import { dischargeDepth, motorBottomDepth, settingForMotorBottom } from '../string/pumpDepths.ts';

export const TOO_TIGHT = inches(0.1);
export const TIGHT_FIT = inches(0.25);

/** What stands round the pump there. */
export type BoreName = 'casing' | 'liner' | 'screen' | 'blankPipe' | 'hole';

function nameOf({ kind, casing }: BoreStretch): BoreName {
  if (kind === 'openHole') return 'hole';
  if (kind === 'screen') return 'screen';
  return casing === undefined ? 'blankPipe' : casing === 0 ? 'casing' : 'liner';
}

export function widestPart({ facts }: Pick<Solved, 'facts'>): Metres {
  return Math.max(facts.pump.diameter, sleeveOutside(facts.pump));
}

/** The least that it can be: where nobody said the pump, its motor alone. */
function slimmestPart(solved: Solved): Metres {
  const { pump } = solved.facts;
  if (!isAssumed(solved, 'pump.diameter')) return widestPart(solved);
  return Math.min(Math.max(pump.motorDiameter, sleeveOutside(pump)), widestPart(solved));
}

/** The bore of a stretch as far as it is said: a casing's is known where nobody knows how deep it reaches. */
function boreOf({ facts }: Pick<Solved, 'facts'>, stretch: BoreStretch): Metres | null {
  const casing = stretch.casing === undefined ? undefined : facts.well.casings[stretch.casing];
  const known = casing === undefined ? stretch.known : casing.insideKnown;
  return known ? 2 * stretch.insideRadius : null;
}

/** Those that the motor's lower end enters on its way down. */
function passed({ facts, bore }: Pick<Solved, 'facts' | 'bore'>): readonly BoreStretch[] {
  const down = motorBottomDepth(facts.pump);
  return bore.filter(({ top }) => top < down);
}

/** Null while no bore on the way is known. */
function narrowestPassed(
  solved: Pick<Solved, 'facts' | 'bore'>,
): { readonly stretch: BoreStretch; readonly bore: Metres } | null {
  let narrowest: { readonly stretch: BoreStretch; readonly bore: Metres } | null = null;
  for (const stretch of passed(solved)) {
    const bore = boreOf(solved, stretch);
    if (bore !== null && (narrowest === null || bore < narrowest.bore)) narrowest = { stretch, bore };
  }
  return narrowest;
}

/** The widest pump that passes as it should; null while no bore on its way is known. */
export function mostThatPasses(solved: Pick<Solved, 'facts' | 'bore'>): Metres | null {
  const narrowest = narrowestPassed(solved);
  return narrowest === null ? null : narrowest.bore - TIGHT_FIT;
}

/** What nobody said of the stretches that the pump passes; null where all of them are known. */
function unknownOf(solved: Solved): MissingFact | null {
  const { facts } = solved;
  for (const stretch of passed(solved)) {
    if (boreOf(solved, stretch) === null) return stretch.casing === undefined ? 'holeWidth' : 'casingBore';
    const casing = stretch.casing === undefined ? undefined : facts.well.casings[stretch.casing];
    if (casing === undefined || casing.bottom !== null) continue;
    // It may end above the pump: then the hole counts.
    const hole = facts.well.intake.diameter;
    if (hole === null) return 'holeWidth';
    if (!meets(hole - widestPart(solved) - TIGHT_FIT, 'length')) return 'casingBottom';
  }
  return null;
}

/** 0: the pump passes; 1: hardly; 2: it does not, or may not come up again. */
function tightness(bore: Metres | null, widest: Metres): 0 | 1 | 2 {
  if (bore === null || meets(bore - widest - TIGHT_FIT, 'length')) return 0;
  return meets(bore - widest - TOO_TIGHT, 'length') ? 1 : 2;
}

/**
 * Where it first gets tighter than it is right from the top. What is as tight from there on no depth avoids: another pump
 * does.
 */
export function firstTighter(solved: Solved): BoreStretch | undefined {
  const [highest] = solved.bore;
  if (highest === undefined) return undefined;
  const widest = slimmestPart(solved);
  const fromTheTop = tightness(boreOf(solved, highest), widest);
  return solved.bore.find((stretch) => tightness(boreOf(solved, stretch), widest) > fromTheTop);
}

/** The deepest intake with which the motor stays above it. */
export function deepestAbove({ top }: BoreStretch, { facts }: Pick<Solved, 'facts'>): Metres {
  return settingForMotorBottom(top, facts.pump);
}

export const pumpPassesCasing = defineRule({
  number: 'PR-17',
  part: 'pump',
  restsOn: ['pump.diameter', 'pump.motorDiameter', 'pump.setting', 'pump.shroudWall', 'well.casing.schedule'],
  asks: { least: TIGHT_FIT },
  judge({ solved, facts }) {
    const widest = widestPart(solved);
    // What has to pass is then the sleeve, and its owner looks for its width, not for the pump's.
    const sleeve = widest > facts.pump.diameter;
    const narrowest = narrowestPassed(solved);
    if (narrowest === null) return missing('casingBore');
    const { stretch, bore } = narrowest;
    const where = nameOf(stretch);
    const measured = bore - widest;
    const margin = measured - TIGHT_FIT;
    const tight = tightness(bore, widest);
    if (tight === 0) {
      const unknown = unknownOf(solved);
      return unknown === null ? holds('passes', { where, bore, widest, sleeve, measured }) : missing(unknown);
    }
    const depth = Math.max(stretch.top, dischargeDepth(facts.pump));
    const at = { measured, limit: TIGHT_FIT, margin, quantity: 'length', depth } as const;
    const numbers = { where, bore, widest, sleeve, margin };
    const slimmest = slimmestPart(solved);
    if (slimmest === widest)
      return tight === 1 ? breaks('hardlyPasses', 'warning', numbers, at) : breaks('tooWide', 'danger', numbers, at);
    // A usual pump would be tight, and nobody said which pump. What its motor is too wide for no pump over it passes; where
    // the motor passes, the pump decides, and nobody said that.
    const ofMotor = tightness(bore, slimmest);
    if (ofMotor === 0) return missing('pumpDiameter');
    const free = bore - slimmest;
    const shroud = slimmest > facts.pump.motorDiameter;
    const least = { where, bore, slimmest, shroud, margin: free - TIGHT_FIT };
    const atMotor = { ...at, measured: free, margin: least.margin };
    return ofMotor === 1
      ? breaks('motorHardlyPasses', 'warning', least, atMotor)
      : breaks('motorTooWide', 'danger', least, atMotor);
  },
  limits(solved) {
    const tighter = firstTighter(solved);
    if (tighter === undefined) return [];
    const to = deepestAbove(tighter, solved);
    return [limit('pump.setting', { to }, 'aboveNarrowPart', { where: nameOf(tighter) })];
  },
});

export const clearanceRules = [pumpPassesCasing] as const;
