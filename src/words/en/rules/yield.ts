import type { yieldRules } from '../../../model/rules/yield.ts';
import type { Facts } from '../../../model/facts.ts';
import type { CubicMetresPerSecond, Metres } from '../../../model/si.ts';
import type { Show } from '../../../model/units.ts';
import type { LongWords } from '../../ruleWords.ts';
import { gap, tested, withArticle } from '../phrases.ts';
import { type Gives, isRough, flowIn } from '../brief/yield.ts';

export const long: LongWords<typeof yieldRules> = {
  'PR-07': {
    holds: 'The well gives what the pump takes',
    held: {
      givesEnough: ({ margin }, show) => ({ amount: `${show.flow(margin)} to spare` }),
      withinTest: ({ left }, show) => ({ amount: `${gap(left, show)} stay over it` }),
      guarded: () => ({ title: 'The pump is stopped before it empties the well', amount: 'guarded' }),
    },
    asks: ({ times, left }, show) =>
      `The pump takes no more than the well gives; up to ${times} times a tested flow passes, leaving ${show.depth(left)} of water over the intake.`,
    source:
      '15A N.C. Admin. Code 02C .0109(a); W. Va. Code of State Rules 64-46-7; Wis. Adm. Code NR 812.32; 1.5 times the test: common practice, no source',
    why: 'A pump that takes more than flows in empties the well and then draws air.',
    messages: {
      givesEnough: takesAndGives,
      withinTest: ({ flow, tested, left }, show) =>
        `The pump takes up to ${show.flow(flow)}; the test at ${show.flow(tested)} leaves ${gap(left, show)} over the intake.`,
      guarded: ({ flow, ...given }, show) =>
        `The pump takes up to ${show.flow(flow)}, the well gives ${flowIn(given, show)}; dry-run protection stops it in time.`,
      takesTooMuch,
      dependsOnYield: ({ flow, gave, sure, how }, show) =>
        `The pump takes up to ${show.flow(flow)}; ${tested(how)} the well gave ${show.flow(gave)}, ${show.flow(sure)} sure.`,
      dependsOnLevel: ({ gives, turn }, show) =>
        `While the water stands above ${show.depth(turn)} the pump takes more than the proven ${show.flow(gives)}.`,
    },
    fixes: {
      checkTheGuard: () => 'Dry-run protection or a flow-limiting valve guards the pump; check its setting.',
      addFlowLimiter: ({ flow }, show) => `Add ${withArticle(show.flow(flow))} flow-limiting valve`,
      lessFlow: () => 'Take a pump of less flow, or a flow-limiting valve with dry-run protection.',
    },
  },
  'PR-08': {
    holds: 'The pump is guarded against low water',
    held: {
      fitted: () => ({ amount: 'dry-run protection' }),
      enoughWater: ({ submergence }, show) => ({
        title: 'The pump needs no dry-run protection',
        amount: `${gap(submergence, show)} of water`,
      }),
    },
    asks: ({ advisedBelow, above }, show) =>
      `With under ${show.depth(advisedBelow)} of water over the intake, dry-run protection stops the pump, a probe ${show.depth(above)} or more above the intake.`,
    source: 'common practice, no source',
    why: 'A pump that runs dry can be ruined in minutes.',
    messages: {
      fitted: () => 'Dry-run protection stops the pump before the intake runs dry.',
      enoughWater: ({ submergence, advisedBelow }, show) =>
        `Pumping leaves ${gap(submergence, show)} over the intake; below ${show.depth(advisedBelow)} dry-run protection is advised.`,
      probeTooLow: ({ probe, usual }, show) =>
        `Dry-run protection acts ${gap(probe, show)} ${probe < 0 ? 'below' : 'above'} the intake; ${gap(usual, show)} above it is usual.`,
      littleWater: ({ submergence }, show) =>
        `Only ${gap(submergence, show)} of water covers the intake, and no dry-run protection is planned.`,
      fallsToIntake: () => 'The water falls to the intake, and no dry-run protection is planned.',
      takesTooMuch: ({ flow, ...given }, show) =>
        `The pump takes up to ${show.flow(flow)}, the well gives ${flowIn(given, show)}; no dry-run protection is planned.`,
      dependsOnLevel: ({ turn }, show) =>
        `Have dry-run protection, unless the water is known to stand above ${show.depth(turn)} as the pump runs.`,
      dependsOnCutOff: ({ turn }, show) => `It guards the pump only if it acts above ${show.depth(turn)}.`,
    },
    fixes: {
      setProbe: ({ depth }, show) => `Set the probe to ${show.depth(depth)}`,
      hangProbeHigher: () => 'Hang the probe higher than the intake.',
    },
  },
  'PR-53': {
    holds: 'The pumping level is known',
    held: {
      fromAquifer: () => ({ amount: 'from the aquifer' }),
      measured: () => ({ amount: 'measured' }),
      drawnToCutOff: ({ depth }, show) => ({
        title: 'Dry-run protection ends the fall of the water',
        amount: `at ${show.depth(depth)}`,
      }),
    },
    asks: () => 'The well was pumped, and somebody read the flow and how far the water fell.',
    source: 'common practice, no source',
    why: 'Only a test tells how far the water falls; how much the well gives does not tell it.',
    messages: {
      fromAquifer: () => 'The drawdown is computed from what was told of the aquifer.',
      measured: () => 'How far the water falls while pumping was measured.',
      drawnToCutOff: ({ depth }, show) =>
        `The pump takes more than the well gives: dry-run protection stops it with the water at ${show.depth(depth)}.`,
      notTested: () => 'No whole pumping test is on record: the water’s depth while pumping is not known.',
      yieldAlone: ({ gives }, show) =>
        `The report gives a yield of ${show.flow(gives)} and no drawdown: the water’s depth while pumping is not known.`,
    },
    fixes: {
      runTest: () => 'Run a pumping test, and write flow, level and hours down.',
      runTestAndGuard: () => 'Run a pumping test; until then have dry-run protection.',
    },
  },
};

/** Each flow with the level that it belongs to, and of a yield blown with air the part that is sure. */
function takesTooMuch(
  {
    flow,
    how,
    drawn,
    ...given
  }: Gives & {
    flow: CubicMetresPerSecond;
    how: Facts['well']['yieldFrom'];
    drawn: { rest: Metres; atRest: CubicMetresPerSecond; level: Metres } | null;
  },
  show: Show,
): string {
  if (drawn === null)
    return isRough(given)
      ? `${takes(given)} up to ${show.flow(flow)}; ${tested(how)} the well gave ${show.flow(given.gives)}, ${show.flow(given.sure)} sure.`
      : takesAndGives({ flow, ...given }, show);
  const taken = `${show.flow(drawn.atRest)} from ${show.depth(drawn.rest)}, ${show.flow(flow)} from ${show.depth(drawn.level)}`;
  return isRough(given)
    ? `Up to ${taken}; the well gives ${flowIn(given, show)}.`
    : `It takes up to ${taken}; the well gives ${show.flow(given.gives)}.`;
}

/** Into an open tank there is no cut-in. */
function takes({ open }: Gives): string {
  return open === true ? 'The pump takes' : 'At cut-in the pump takes';
}

function takesAndGives({ flow, ...given }: Gives & { flow: CubicMetresPerSecond }, show: Show): string {
  return `${takes(given)} up to ${show.flow(flow)}; by the record the well gives ${flowIn(given, show)}.`;
}
