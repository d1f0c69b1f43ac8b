/** How deep the pump hangs: off the bottom, under water, above the screen. */
import type { Metres } from '../si.ts';
import { withValue } from '../plan/editPlan.ts';
import { readFacts } from '../plan/readFacts.ts';
import type { Solved } from '../solution.ts';
import { feet } from '../units.ts';
import { CUT_OFF_ABOVE_INTAKE, cutOffLevel, hasCutOff, probeAbove } from './cutOff.ts';
import { exceeds, meets } from './grace.ts';
import { change, changeOr, moveIntoBand, words, writtenInside } from './fix.ts';
import type { MissingFact } from './missing.ts';
import { breaks, defineRule, doesNotApply, holds, limit, missing } from './rule.ts';
import type { Given } from './rule.ts';
import { largestPumpFlow, provenYield } from './yield.ts';

export const CLEAR_OF_BOTTOM = feet(10);
export const BURIED_SOON = feet(5);
export const LEAST_SUBMERGENCE = feet(10);
export const LEAST_SUBMERGENCE_WITHOUT_CUT_OFF = feet(5);

/** Top of the uppermost screen; null in a well without one. */
export function screenTop({ facts }: Solved): Metres | null {
  const { screens } = facts.well.intake;
  return screens.length === 0 ? null : screens.reduce((least, { top }) => Math.min(least, top), Infinity);
}

/** The lowest water while pumping: in the dry season where the plan says how far it falls, else as it is now. */
export function lowestPumpingLevel({ levels }: Solved): { readonly depth: Metres; readonly dry: boolean } | null {
  if (levels.pumpingDry !== null) return { depth: levels.pumpingDry, dry: true };
  return levels.pumping === null ? null : { depth: levels.pumping, dry: false };
}

/** What is missing where nothing is known of the drawdown. */
export function drawdownMissing({ facts }: Solved): MissingFact {
  if (facts.water.staticLevel === null) return 'staticLevel';
  if (facts.water.pumping === null || facts.water.pumping.kind === 'yield only') return 'pumpingLevel';
  return 'demand';
}

/** Depth of the motor's lower end. */
function motorBottomOf({ facts }: Pick<Given, 'facts'>): Metres {
  return facts.pump.setting + facts.pump.intakeToMotorBottom;
}

export const offTheBottom = defineRule({
  number: 'PR-01',
  part: 'motor',
  judge(given) {
    const { solved, facts } = given;
    const motorBottom = motorBottomOf(given);
    const measured = facts.well.bottom - motorBottom;
    const usual = CLEAR_OF_BOTTOM;
    const margin = measured - usual;
    if (meets(margin, 'length')) return holds('clear', { measured, margin, usual });
    const top = screenTop(solved);
    const aboveScreen = top !== null && meets(top - motorBottom, 'length');
    const severity = aboveScreen ? 'note' : meets(measured - BURIED_SOON, 'length') ? 'warning' : 'danger';
    const at = { measured, limit: usual, margin, quantity: 'length', depth: motorBottom } as const;
    return measured < 0
      ? breaks('belowBottom', severity, { measured, margin }, at)
      : breaks('tooLow', severity, { measured, margin, usual }, at);
  },
  limits(solved) {
    const { pump, well } = solved.facts;
    // Above a screen the clearance is at most a note, and the screen ends the band sooner.
    if (screenTop(solved) !== null) return [];
    const to = well.bottom - CLEAR_OF_BOTTOM - pump.intakeToMotorBottom;
    return [limit('pump.setting', { to }, 'offTheBottom', { least: CLEAR_OF_BOTTOM })];
  },
  fixes(given, { severity }) {
    return [
      severity === 'note'
        ? words('leaveIt', {})
        : moveIntoBand(given, 'PR-01', 'pump.setting', words('raiseOrCleanOut', {})),
    ];
  },
});

export const intakeUnderWater = defineRule({
  number: 'PR-02',
  part: 'intake',
  judge({ solved, facts }) {
    const level = lowestPumpingLevel(solved);
    if (level === null) return missing(drawdownMissing(solved));
    const intake = facts.pump.setting;
    // A probe below the intake holds nothing up.
    const held = hasCutOff(solved) ? cutOffLevel(solved, level.depth) : null;
    const usual = held === null ? LEAST_SUBMERGENCE : CUT_OFF_ABOVE_INTAKE;
    const water = held ?? level.depth;
    const measured = intake - water;
    const margin = measured - usual;
    const by = held !== null ? 'cutOff' : level.dry ? 'dryLevel' : 'level';
    if (meets(margin, 'length')) return holds('covered', { by, measured, margin, usual });
    const bare = held === null && !hasCutOff(solved) && !meets(measured - LEAST_SUBMERGENCE_WITHOUT_CUT_OFF, 'length');
    const dry = !exceeds(measured, 'length');
    const at = { measured, limit: usual, margin, quantity: 'length', depth: intake } as const;
    return dry
      ? breaks('runsDry', 'danger', { water, intake, margin }, at)
      : breaks('barelyCovered', bare ? 'danger' : 'warning', { by, measured, margin, usual }, at);
  },
  limits(solved) {
    const level = lowestPumpingLevel(solved);
    if (level === null) return [];
    const held = cutOffLevel(solved, level.depth);
    if (held !== null) {
      const least = CUT_OFF_ABOVE_INTAKE;
      return [limit('pump.setting', { from: held + least }, 'underCutOff', { least })];
    }
    const least = LEAST_SUBMERGENCE;
    return [limit('pump.setting', { from: level.depth + least }, level.dry ? 'underDryLevel' : 'underLevel', { least })];
  },
  fixes(given) {
    return [drawDownToCutOff(given) ?? moveIntoBand(given, 'PR-02', 'pump.setting', words('pumpLess', {}))];
  },
});

/**
 * Where no depth meets the rules since the well gives less than the pump takes, the pump hangs as deep as it may and a
 * cut-off holds the water over it: the bore's storage is drawn down on purpose. Null where that is not the case.
 */
function drawDownToCutOff(given: Given) {
  const { solved, facts } = given;
  const range = given.ranges['pump.setting'];
  const flow = largestPumpFlow(solved) ?? facts.house.demand;
  const gives = provenYield(solved);
  if (range.firm !== null || flow === null || gives === null || meets(gives - flow, 'flow')) return null;
  const least = Math.max(solved.levels.static ?? 0, 0) + LEAST_SUBMERGENCE;
  const deepest = range.to.depth;
  if (!meets(deepest - least, 'length')) return null;
  const to = writtenInside(given, 'pump.setting', 'to', { from: least, to: deepest });
  const intake = readFacts(withValue(solved.plan, 'pump.setting', to)).facts.pump.setting;
  const level = lowestPumpingLevel(solved);
  // Water that would not fall to the probe is not held up by it.
  if (level === null || !exceeds(level.depth - intake + CUT_OFF_ABOVE_INTAKE, 'length')) return null;
  const probe = probeAbove(solved, intake);
  if (probe === null) return null;
  return changeOr(
    change(facts, [{ path: 'pump.setting', to }, probe], 'lowerWithCutOff', { to, probe: String(probe.to) }),
    words('asDeepAsAllowed', {}),
  );
}

export const motorAboveScreen = defineRule({
  number: 'PR-03',
  part: 'motor',
  judge(given) {
    const { solved, facts } = given;
    const screen = screenTop(solved);
    if (screen === null) return facts.well.intake.kind === 'screen' ? missing('screenEnds') : doesNotApply;
    const motor = motorBottomOf(given);
    const margin = screen - motor;
    if (meets(margin, 'length')) return holds('above', { motor, screen, margin });
    const shroud = facts.pump.shroudDiameter !== null;
    return breaks(
      'inScreen',
      shroud ? 'warning' : 'danger',
      { motor, screen, margin, shroud },
      { measured: motor, limit: screen, margin, quantity: 'length', depth: motor },
    );
  },
  limits(solved) {
    const top = screenTop(solved);
    if (top === null) return [];
    return [limit('pump.setting', { to: top - solved.facts.pump.intakeToMotorBottom }, 'aboveScreen', {})];
  },
  fixes: (given) => [moveIntoBand(given, 'PR-03', 'pump.setting', words('raiseOrShroud', {}))],
});

export const pumpDepthRules = [intakeUnderWater, offTheBottom, motorAboveScreen] as const;
