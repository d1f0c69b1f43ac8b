/** Where the water comes in, and whether pumping uncovers it. */
import { lowestStatic } from '../figures/lowestPumping.ts';
import type { Facts } from '../facts.ts';
import type { Metres, Ratio } from '../si.ts';
import { feet } from '../units.ts';
import { atLowestLevel, type SetBy } from './atLowestLevel.ts';
import { isDrySeason } from './drySeason.ts';
import { meets } from './grace.ts';
import { screenTop } from './pumpDepth.ts';
import { AS_TESTED, ASKED_AT_CUT_IN } from './restsOn.ts';
import { breaks, defineRule, holds, missing } from './rule.ts';
import type { Given } from './rule.ts';

export const LEVEL_ABOVE_SCREEN = feet(5);
/** A fracture that gives less than this share of the water is a minor one. */
export const MINOR_SHARE: Ratio = 1 / 3;

export const levelAboveInflow = defineRule({
  number: 'PR-04',
  part: 'pumpingLevel',
  restsOn: [...ASKED_AT_CUT_IN, 'pump.setting', ...AS_TESTED],
  onlyHelps: ['pump.frequency'],
  asks: { aboveScreen: LEVEL_ABOVE_SCREEN },
  judge(given) {
    const screen = screenTop(given.solved);
    if (screen !== null) return aboveScreen(given, screen);
    const { inflows } = given.facts.well;
    const inflow = (inflows ?? []).reduce((least, { depth }) => Math.min(least, depth), Infinity);
    return inflow === Infinity ? aboveAnyInflow(given) : aboveInflow(given, inflow);
  },
});

function aboveScreen(given: Given, screen: Metres) {
  return atLowestLevel(
    given,
    (level, by) => {
      const measured = screen - level;
      const margin = measured - LEVEL_ABOVE_SCREEN;
      if (meets(margin, 'length'))
        return by === 'open'
          ? holds('floorAboveScreen', { screen, floor: level, margin }, margin)
          : holds('screenCovered', { screen, measured, margin }, margin);
      const severity = meets(measured, 'length') ? 'warning' : 'danger';
      if (by === 'open') return screenAtRest(given, screen, severity);
      const at = { measured, limit: LEVEL_ABOVE_SCREEN, margin, quantity: 'length', depth: level } as const;
      return measured < 0
        ? breaks('screenUncovered', severity, { screen, measured, margin }, at)
        : breaks('screenAlmostUncovered', severity, { screen, measured, margin }, at);
    },
    (turn) => ({ variant: 'screenDepends' as const, numbers: { turn, screen, least: LEVEL_ABOVE_SCREEN } }),
    () => screen - LEVEL_ABOVE_SCREEN,
  );
}

/** At both ends of what the level can be it breaks: then the water at rest is too deep already, and that is known. */
function screenAtRest({ facts }: Given, screen: Metres, severity: 'warning' | 'danger') {
  const rest = lowestStatic(facts) ?? screen;
  const measured = screen - rest;
  const margin = measured - LEVEL_ABOVE_SCREEN;
  const at = { measured, limit: LEVEL_ABOVE_SCREEN, margin, quantity: 'length', depth: rest } as const;
  return breaks('screenAtRest', severity, { screen, rest, dry: isDrySeason(rest, facts), margin }, at);
}

function aboveInflow(given: Given, inflow: Metres) {
  return atLowestLevel(
    given,
    (level, by) => {
      const margin = inflow - level;
      if (meets(margin, 'length'))
        return by === 'open'
          ? holds('floorAboveInflow', { inflow, floor: level, margin }, margin)
          : holds('inflowsCovered', { water: level, inflow, margin }, margin);
      return uncovered(given, inflow, level, by);
    },
    (turn) => ({ variant: 'inflowDepends' as const, numbers: { turn } }),
    () => inflow,
  );
}

function uncovered({ facts }: Given, inflow: Metres, level: Metres, by: SetBy) {
  const share = shareAbove(facts, level);
  const minor = share !== null && share < MINOR_SHARE;
  const rest = lowestStatic(facts) ?? level;
  const atRest = by === 'open' || (facts.well.inflows ?? []).every(({ depth }) => depth < rest || depth >= level);
  const water = atRest ? rest : level;
  const margin = inflow - water;
  const at = { measured: water, limit: inflow, margin, quantity: 'length', depth: inflow } as const;
  if (atRest)
    return breaks(
      'inflowAtRest',
      minor ? 'note' : 'warning',
      { rest, dry: isDrySeason(rest, facts), inflow, margin },
      at,
    );
  return minor
    ? breaks('minorInflowUncovered', 'note', { water, inflow, margin, share }, at)
    : breaks('inflowUncovered', 'warning', { water, inflow, margin, share }, at);
}

/** How much of the water comes in above a depth; null where nobody said of one that does. */
function shareAbove({ well }: Facts, depth: Metres): Ratio | null {
  return (well.inflows ?? [])
    .filter((each) => each.depth < depth)
    .reduce<Ratio | null>((sum, { share }) => (sum === null || share === null ? null : sum + share), 0);
}

/** Nobody said where the water comes in: not above the end of the casing, so that water which stays above it covers it all. */
function aboveAnyInflow({ solved, facts }: Given) {
  const { casings, intake } = facts.well;
  if (intake.kind === 'screen' && intake.screens.length === 0) return missing('screenEnds');
  const foot = casings[casings.length - 1]?.bottom ?? null;
  const level = solved.lowest?.depth ?? null;
  if (foot === null || level === null || foot >= facts.well.bottom || !meets(foot - level, 'length'))
    return missing(intake.kind === null ? 'intakeKind' : 'inflows');
  return holds('aboveFoot', { water: level, foot, margin: foot - level });
}

export const inflowRules = [levelAboveInflow] as const;
