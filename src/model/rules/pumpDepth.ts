/** How deep the pump hangs: off the bottom, under water, above the screen. */
import type { Metres } from '../si.ts';
import type { Solved } from '../solution.ts';
import { feet } from '../units.ts';
import { flowAsFarAsItFalls } from '../figures/curves.ts';
import { largestFlow, lowestStatic } from '../figures/lowestPumping.ts';
import { mostYield } from '../figures/provenYield.ts';
import { wellRelation } from '../formulas/wellRelation.ts';
import { atBothEnds } from './bothEnds.ts';
import { atLowestLevel, type SetBy } from './atLowestLevel.ts';
import { CUT_OFF_ABOVE_INTAKE, hasCutOff, probeOf } from './cutOff.ts';
import { openCutOffDepth } from './openFacts.ts';
import { exceeds, meets } from './grace.ts';
import { isDrySeason } from './drySeason.ts';
import { intakeUnsaid, isOpenRock } from './openRock.ts';
import { AS_TESTED, ASKED_AT_CUT_IN } from './restsOn.ts';
import { breaks, defineRule, doesNotApply, holds, limit, missing } from './rule.ts';
import type { Given } from './rule.ts';
import { motorBottomDepth, settingForMotorBottom } from '../string/pumpDepths.ts';

export const CLEAR_OF_BOTTOM = feet(10);
export const BURIED_SOON = feet(5);
export const LEAST_SUBMERGENCE = feet(10);
export const LEAST_SUBMERGENCE_WITHOUT_CUT_OFF = feet(5);

/** Top of the uppermost screen; null in a well without one, and where a perforated liner stands in rock. */
export function screenTop({ facts }: Solved): Metres | null {
  const { screens } = facts.well.intake;
  return screens.length === 0 || isOpenRock(facts)
    ? null
    : screens.reduce((least, { top }) => Math.min(least, top), Infinity);
}

/** Depth of the motor's lower end. */
function motorBottomOf({ facts }: Pick<Given, 'facts'>): Metres {
  return motorBottomDepth(facts.pump);
}

export const offTheBottom = defineRule({
  number: 'PR-01',
  part: 'motor',
  restsOn: ['pump.setting'],
  asks: { least: CLEAR_OF_BOTTOM },
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
    const to = settingForMotorBottom(well.bottom - CLEAR_OF_BOTTOM, pump);
    return [limit('pump.setting', { to }, 'offTheBottom', { least: CLEAR_OF_BOTTOM })];
  },
});

export const intakeUnderWater = defineRule({
  number: 'PR-02',
  part: 'intake',
  restsOn: [...ASKED_AT_CUT_IN, 'pump.setting', 'top.depth', ...AS_TESTED],
  onlyHelps: ['pump.frequency'],
  asks: { least: LEAST_SUBMERGENCE, underCutOff: CUT_OFF_ABOVE_INTAKE },
  judge(given) {
    const { facts } = given;
    const intake = facts.pump.setting;
    const rest = lowestStatic(facts);
    if (rest === null) return missing('staticLevel');
    // The level at rest alone decides what hangs above it, whatever else is unknown.
    if (!exceeds(intake - rest, 'length')) return aboveTheWater(given, rest);
    const probe = probeOf(given.solved);
    if (probe !== null && !exceeds(probe - rest, 'length')) return neverStarts(given, probe, rest);
    if (facts.pump.lowLevelCutOff === true) return withCutOffSomewhere(given);
    return atLowestLevel(
      given,
      (level, by) => covered(given, level, by),
      (turn) => ({ variant: 'dependsOnLevel' as const, numbers: { turn, intake } }),
      () => intake - LEAST_SUBMERGENCE,
    );
  },
  limits(solved) {
    const { facts, lowest } = solved;
    const held = probeOf(solved);
    if (lowest === null) return [];
    const underProbe = held === null ? null : held + CUT_OFF_ABOVE_INTAKE;
    const guard = (from: Metres) => limit('pump.setting', { from }, 'underCutOff', { least: CUT_OFF_ABOVE_INTAKE });
    if (lowest.by === 'cutOff' && underProbe !== null) return [guard(underProbe)];
    // Dry-run protection of which nobody said the depth can be hung over any intake, and a probe goes with its pump.
    const { by } = lowest;
    const guarded = by === 'lift' ? hasCutOff(solved) : by === 'intake' && facts.pump.lowLevelCutOff === true;
    const level = guarded ? lowestStatic(facts) : (deepestFall(solved) ?? lowest.depth);
    if (level === null) return [];
    const dry = (facts.water.staticLowest ?? -Infinity) > (facts.water.staticLevel ?? 0);
    const least = LEAST_SUBMERGENCE;
    // A probe so far above the intake holds the water there, however far it falls.
    if (underProbe !== null && underProbe < level + least) return [guard(underProbe)];
    return [limit('pump.setting', { from: level + least }, dry ? 'underDryLevel' : 'underLevel', { least })];
  },
});

/** Where water at rest does not reach the intake; a dry well has none above its bottom. */
function aboveTheWater({ facts }: Given, rest: Metres) {
  const intake = facts.pump.setting;
  const { bottom } = facts.well;
  const measured = intake - rest;
  const margin = measured - LEAST_SUBMERGENCE;
  const at = { measured, limit: LEAST_SUBMERGENCE, margin, quantity: 'length', depth: intake } as const;
  return rest >= bottom
    ? breaks('wellDry', 'danger', { rest, bottom }, at)
    : breaks('aboveWater', 'danger', { rest, dry: isDrySeason(rest, facts), intake, above: rest - intake }, at);
}

/** The probe hangs above the water at rest: it never lets the pump start. */
function neverStarts({ facts }: Given, probe: Metres, rest: Metres) {
  const margin = probe - rest;
  const at = { measured: probe, limit: rest, margin, quantity: 'length', depth: probe } as const;
  return breaks(
    'neverStarts',
    'danger',
    { probe, rest, dry: isDrySeason(rest, facts), intake: facts.pump.setting },
    at,
  );
}

/** With the water at a depth, which a cut-off may hold there. */
function covered({ solved, facts }: Given, level: Metres, by: SetBy) {
  const intake = facts.pump.setting;
  const probe = probeOf(solved);
  const held = by === 'cutOff' || (by === 'open' && probe !== null && level >= probe);
  const measured = intake - level;
  // Wherever the water stands above it, a probe far enough over the intake ends its fall in time.
  const guarded = probe !== null && level < probe && meets(intake - probe - CUT_OFF_ABOVE_INTAKE, 'length');
  const usual = held || (guarded && measured < LEAST_SUBMERGENCE) ? CUT_OFF_ABOVE_INTAKE : LEAST_SUBMERGENCE;
  const margin = measured - usual;
  const atRest = by === 'open' && level === lowestStatic(facts);
  const spoken = held
    ? ('cutOff' as const)
    : by === 'dryLevel'
      ? ('dryLevel' as const)
      : atRest
        ? ('rest' as const)
        : ('level' as const);
  if (meets(margin, 'length'))
    return holds('covered', { by: spoken, measured, margin, usual, today: isToday(facts, spoken) }, margin);
  const bare = !held && !hasCutOff(solved) && !meets(measured - LEAST_SUBMERGENCE_WITHOUT_CUT_OFF, 'length');
  const at = { measured, limit: usual, margin, quantity: 'length', depth: intake } as const;
  if (exceeds(measured, 'length'))
    return breaks('barelyCovered', bare ? 'danger' : 'warning', { by: spoken, measured, margin, usual }, at);
  // A generic pump is a band: where its weaker end would do, what its stronger end can do is told as such.
  const { atCutIn, atCutInMost } = solved.curves;
  return atCutInMost?.outpumped === true && atCutIn?.outpumped !== true
    ? breaks('mayRunDry', 'danger', { intake, margin }, at)
    : breaks('runsDry', 'danger', { intake, margin }, at);
}

/** Nobody said how low the water stands in a dry season, and no cut-off holds it. */
function isToday({ water }: Given['facts'], by: 'cutOff' | 'dryLevel' | 'rest' | 'level'): boolean {
  return by !== 'cutOff' && water.staticLowest === null;
}

/** A cut-off is planned and nobody said how deep: it turns on that where the water may come near the intake. */
function withCutOffSomewhere(given: Given) {
  const { solved, facts } = given;
  const intake = facts.pump.setting;
  const { lowest } = solved;
  if (lowest !== null && meets(intake - lowest.depth - LEAST_SUBMERGENCE, 'length'))
    return covered(given, lowest.depth, lowest.by);
  const open = openCutOffDepth(solved);
  return atBothEnds(
    open,
    (probe) => {
      const measured = intake - probe;
      const usual = CUT_OFF_ABOVE_INTAKE;
      const margin = measured - usual;
      const at = { measured, limit: usual, margin, quantity: 'length', depth: intake } as const;
      return meets(margin, 'length')
        ? holds('covered', { by: 'cutOff', measured, margin, usual, today: false }, margin)
        : breaks('runsDry', 'danger', { intake, margin }, at);
    },
    (turn) => ({ variant: 'dependsOnCutOff' as const, numbers: { turn } }),
  );
}

/**
 * Where the water falls to if no intake ends it, the deeper of two: for the pump where it hangs and for one at the end of
 * its band, since a longer pipe lets a little less through. Null where the drawdown is unknown.
 */
function deepestFall({ facts, lowest, curves }: Solved): Metres | null {
  const rest = lowestStatic(facts);
  const { pumping, staticLevel } = facts.water;
  const relation = wellRelation(pumping, staticLevel);
  if (rest === null || staticLevel === null) return null;
  // Nothing is known but that the pump takes more than flows in: so it would at any depth.
  if (relation === null)
    return lowest?.by === 'intake' || lowest?.by === 'lift' ? Math.max(facts.well.bottom, rest) : null;
  const most = mostYield(facts) ?? Infinity;
  const { atCutInMost } = curves;
  const fallAt = (setting: Metres): Metres | null => {
    const hung = setting === facts.pump.setting && atCutInMost?.outpumped === false;
    const flow = largestFlow(
      facts,
      hung ? atCutInMost.flow : flowAsFarAsItFalls({ ...facts, pump: { ...facts.pump, setting } }, staticLevel),
    );
    if (flow === null) return null;
    // More than the well gives at the most empties it, however deep the pump hangs.
    return flow > most ? Math.max(facts.well.bottom, rest) : rest + relation.drawdownAt(flow);
  };
  const here = fallAt(facts.pump.setting);
  const there = here === null ? null : fallAt(here + LEAST_SUBMERGENCE);
  return here === null || there === null ? null : Math.max(here, there);
}

export const motorAboveScreen = defineRule({
  number: 'PR-03',
  part: 'motor',
  restsOn: ['pump.setting'],
  judge(given) {
    const { solved, facts } = given;
    const screen = screenTop(solved);
    if (intakeUnsaid(facts)) return missing('intakeKind');
    if (screen === null)
      return facts.well.intake.kind === 'screen' && !isOpenRock(facts) ? missing('screenEnds') : doesNotApply;
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
    return [limit('pump.setting', { to: settingForMotorBottom(top, solved.facts.pump) }, 'aboveScreen', {})];
  },
});

export const pumpDepthRules = [intakeUnderWater, offTheBottom, motorAboveScreen] as const;
