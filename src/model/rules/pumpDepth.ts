/** How deep the pump hangs: off the bottom, under water, above the screen. */
import type { Metres } from '../si.ts';
import { withValue } from '../plan/editPlan.ts';
import { readFacts } from '../plan/readFacts.ts';
import type { Solved } from '../solution.ts';
import { feet } from '../units.ts';
import { CUT_OFF_ABOVE_INTAKE, cutOffLevel, hasCutOff, probeAbove } from './cutOff.ts';
import { exceeds, meets } from './grace.ts';
import { change, moveIntoBand, words, writtenInside } from './mend.ts';
import { breaks, defineRule, doesNotApply, holds, missing } from './rule.ts';
import type { Given, Mend } from './rule.ts';
import { gap, toSpare } from './say.ts';
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
export function drawdownMissing({ facts }: Solved): string {
  if (facts.water.staticLevel === null) return 'the static water level';
  if (facts.water.pumping === null || facts.water.pumping.kind === 'yield only')
    return 'the pumping level: a test with flow and drawdown';
  return 'the flow that the house needs';
}

export const offTheBottom = defineRule({
  number: 'PR-01',
  part: 'motor',
  broken: 'The pump is too near the bottom',
  holds: 'The motor hangs clear of the bottom',
  source: 'common practice, no source; inspectors’ training in North Carolina asks for 20 ft where possible',
  why: 'Sediment gathers at the bottom; a pump near it draws sand, and a buried motor overheats.',
  judge(given) {
    const { solved, facts, show } = given;
    const motorBottom = facts.pump.setting + facts.pump.intakeToMotorBottom;
    const measured = facts.well.bottom - motorBottom;
    const margin = measured - CLEAR_OF_BOTTOM;
    if (meets(margin, 'length')) {
      return holds(
        toSpare(margin, show),
        `The motor ends ${show.depth(measured)} above the bottom; ${show.depth(CLEAR_OF_BOTTOM)} is usual.`,
      );
    }
    const top = screenTop(solved);
    const aboveScreen = top !== null && meets(top - motorBottom, 'length');
    const severity = aboveScreen ? 'note' : meets(measured - BURIED_SOON, 'length') ? 'warning' : 'danger';
    return breaks({
      severity,
      measured,
      limit: CLEAR_OF_BOTTOM,
      margin,
      quantity: 'length',
      depth: motorBottom,
      amount: `${gap(margin, show)} too low`,
      message:
        measured < 0
          ? `The motor would end ${gap(measured, show)} below the bottom of the well.`
          : `The motor ends ${gap(measured, show)} above the bottom; common practice keeps ${show.depth(CLEAR_OF_BOTTOM)}.`,
      mend: aboveScreen
        ? words('Leave it: above the screen the sump below does not matter much.')
        : moveIntoBand(given, 'PR-01', 'pump.setting', 'Raise the pump, or have the well cleaned out by a contractor.'),
    });
  },
  limits(solved) {
    const { pump, well } = solved.facts;
    // Above a screen the clearance is at most a note, and the screen ends the band sooner.
    if (screenTop(solved) !== null) return [];
    return [
      {
        setting: 'pump.setting',
        to: well.bottom - CLEAR_OF_BOTTOM - pump.intakeToMotorBottom,
        label: (show) => `${show.depth(CLEAR_OF_BOTTOM)} off the bottom`,
      },
    ];
  },
});

export const intakeUnderWater = defineRule({
  number: 'PR-02',
  part: 'intake',
  broken: 'Too little water covers the intake',
  holds: 'The intake stays under water',
  source: 'common practice, no source; the pump’s own instructions overrule it',
  why: 'A pump that draws air loses its flow and the water that cools it.',
  judge(given) {
    const { solved, facts, show } = given;
    const level = lowestPumpingLevel(solved);
    if (level === null) return missing(drawdownMissing(solved));
    // A probe below the intake holds nothing up.
    const held = hasCutOff(solved) ? cutOffLevel(solved, level.depth) : null;
    const limit = held === null ? LEAST_SUBMERGENCE : CUT_OFF_ABOVE_INTAKE;
    const measured = facts.pump.setting - (held ?? level.depth);
    const margin = measured - limit;
    const season =
      held !== null ? 'the cut-off stops it' : level.dry ? 'the dry-season pumping level' : 'the pumping level';
    const spoken =
      held !== null
        ? `The cut-off stops the pump with ${gap(measured, show)} of water above the intake`
        : `The intake is ${gap(measured, show)} under ${season}`;
    if (meets(margin, 'length')) return holds(toSpare(margin, show), `${spoken}; ${show.depth(limit)} is usual.`);
    const bare = held === null && !hasCutOff(solved) && !meets(measured - LEAST_SUBMERGENCE_WITHOUT_CUT_OFF, 'length');
    const dry = !exceeds(measured, 'length');
    return breaks({
      severity: dry || bare ? 'danger' : 'warning',
      measured,
      limit,
      margin,
      quantity: 'length',
      depth: facts.pump.setting,
      ...(dry ? { title: 'The pump runs dry' } : {}),
      amount: `${gap(margin, show)} too high`,
      message: dry
        ? `While pumping, water falls to ${show.depth(held ?? level.depth)}; the intake is at ${show.depth(facts.pump.setting)}.`
        : `${spoken}; ${show.depth(limit)} is usual.`,
      mend:
        drawDownToCutOff(given) ??
        moveIntoBand(
          given,
          'PR-02',
          'pump.setting',
          'Pump less: a smaller pump, or a flow-limiting valve with a low-level cut-off.',
        ),
    });
  },
  limits(solved) {
    const level = lowestPumpingLevel(solved);
    if (level === null) return [];
    const held = cutOffLevel(solved, level.depth);
    if (held !== null) {
      return [
        {
          setting: 'pump.setting',
          from: held + CUT_OFF_ABOVE_INTAKE,
          label: (show) => `${show.depth(CUT_OFF_ABOVE_INTAKE)} under the cut-off`,
        },
      ];
    }
    const name = level.dry ? 'dry level' : 'pumping level';
    return [
      {
        setting: 'pump.setting',
        from: level.depth + LEAST_SUBMERGENCE,
        label: (show) => `${show.depth(LEAST_SUBMERGENCE)} under the ${name}`,
      },
    ];
  },
});

/**
 * Where no depth meets the rules since the well gives less than the pump takes, the pump hangs as deep as it may and a
 * cut-off holds the water over it: the bore's storage is drawn down on purpose. Null where that is not the case.
 */
function drawDownToCutOff(given: Given): Mend | null {
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
  return change(
    facts,
    [{ path: 'pump.setting', to }, probe],
    `Lower to ${to}, with a cut-off at ${String(probe.to)}`,
    'Hang the pump as deep as the rules allow, with a low-level cut-off above its intake.',
  );
}

export const motorAboveScreen = defineRule({
  number: 'PR-03',
  part: 'motor',
  broken: 'The pump hangs in the screen',
  holds: 'The pump hangs above the screen',
  source:
    'common practice, no source; 35 Ill. Adm. Code 604.240 keeps the water level above the screen of public wells',
  why: 'A pump inside the screen pulls sand through the slots and gets no water past its motor.',
  judge(given) {
    const { solved, facts, show } = given;
    const top = screenTop(solved);
    if (top === null)
      return facts.well.intake.kind === 'screen' ? missing('where the screen begins and ends') : doesNotApply;
    const motorBottom = facts.pump.setting + facts.pump.intakeToMotorBottom;
    const margin = top - motorBottom;
    if (meets(margin, 'length'))
      return holds(
        toSpare(margin, show),
        `The motor ends at ${show.depth(motorBottom)}, the screen begins at ${show.depth(top)}.`,
      );
    const shroud = facts.pump.shroudDiameter !== null;
    return breaks({
      severity: shroud ? 'warning' : 'danger',
      measured: motorBottom,
      limit: top,
      margin,
      quantity: 'length',
      depth: motorBottom,
      amount: `${gap(margin, show)} too low`,
      message: `The motor ends at ${show.depth(motorBottom)}, the screen begins at ${show.depth(top)}${shroud ? '; a shroud helps, but not enough' : ''}.`,
      mend: moveIntoBand(
        given,
        'PR-03',
        'pump.setting',
        'Raise the pump above the screen; where that leaves too little water, fit a shroud.',
      ),
    });
  },
  limits(solved) {
    const top = screenTop(solved);
    return top === null
      ? []
      : [
          {
            setting: 'pump.setting',
            to: top - solved.facts.pump.intakeToMotorBottom,
            label: () => 'motor above the screen',
          },
        ];
  },
});

export const pumpDepthRules = [intakeUnderWater, offTheBottom, motorAboveScreen];
