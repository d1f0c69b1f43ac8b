/** What is offered against a broken rule of `rules/pumpDepth.ts`. */
import { withValue } from '../../plan/editPlan.ts';
import { readFacts } from '../../plan/readFacts.ts';
import { lowestStatic } from '../../figures/lowestPumping.ts';
import { addCutOff, probeAbove, probeWritten } from '../../rules/addCutOff.ts';
import { CUT_OFF_ABOVE_INTAKE, hasCutOff } from '../../rules/cutOff.ts';
import { exceeds, meets } from '../../rules/grace.ts';
import { change, changeOr, words, writtenInside } from '../../rules/fix.ts';
import { movePump, raiseWithProbe } from '../../rules/movePump.ts';
import { pumpGivesEnough } from '../../rules/delivery.ts';
import { pumpReachesCutOut } from '../../rules/tank.ts';
import type { Given } from '../../rules/rule.ts';
import { LEAST_SUBMERGENCE } from '../../rules/pumpDepth.ts';
import type { RuleFixes } from '../ruleFixes.ts';

export const pumpDepthFixes = {
  'PR-01'(given, { severity }) {
    if (severity === 'note') return [words('leaveIt', {})];
    return [raiseWithProbe(given), movePump(given, 'PR-01', words('raiseOrCleanOut', {}))].filter(isSaid);
  },

  'PR-02'(given, { variant, numbers }) {
    if (variant === 'neverStarts') {
      const { setting } = given.facts.pump;
      const lower = probeAbove(given.solved, setting);
      const depth = lower === null ? 0 : probeWritten(lower, setting - CUT_OFF_ABOVE_INTAKE);
      const inWords = words('lowerProbeOrPump', {});
      // Over an intake so near the water at rest the probe would keep the pump from starting again.
      if (lower === null || !exceeds(depth - (lowestStatic(given.facts) ?? 0), 'length')) return [inWords];
      return [changeOr(change(given.facts, [lower], 'lowerProbe', { depth }), inWords)];
    }
    if (variant === 'aboveWater' || variant === 'wellDry') return [words('notWithThisWell', {})];
    // Pumping less brings no water back to where it does not stand at rest.
    const isAtRest = variant === 'barelyCovered' && (numbers as { readonly by: string }).by === 'rest';
    const less = isAtRest
      ? words('anotherKind', {})
      : isWeakAlready(given)
        ? words('limitFlow', {})
        : words('pumpLess', {});
    const move = movePump(given, 'PR-02', less);
    if (hasCutOff(given.solved) || given.solved.curves.atCutInMost?.outpumped !== true) return [move, less];
    return [raiseWithProbe(given), move, drawDownToCutOff(given), addCutOff(given.solved), less].filter(isSaid);
  },

  'PR-03': (given) => [raiseWithProbe(given), movePump(given, 'PR-03', words('raiseOrShroud', {}))].filter(isSaid),
} satisfies RuleFixes;

/** Whether the pump is short of pressure or of water as it is: then a smaller one is no way out. */
function isWeakAlready(given: Given): boolean {
  return [pumpReachesCutOut, pumpGivesEnough].some((rule) => {
    const { kind } = rule.judge(given);
    return kind === 'breaks' || kind === 'depends';
  });
}

function isSaid<F>(fix: F | null): fix is F {
  return fix !== null;
}

/**
 * Where no depth meets the rules since the well gives less than the pump takes, the pump hangs as deep as it may and a
 * cut-off holds the water over it: the bore's storage is drawn down on purpose. Null where that is not the case.
 */
function drawDownToCutOff(given: Given) {
  const { solved, facts } = given;
  const range = given.ranges['pump.setting'];
  if (range.firm !== null || solved.curves.atCutInMost?.outpumped !== true) return null;
  const least = Math.max(lowestStatic(facts) ?? 0, 0) + LEAST_SUBMERGENCE;
  const deepest = range.to.depth;
  // A pump that hangs deeper is not raised to suit it: the store below it would be lost.
  if (!meets(deepest - least, 'length') || facts.pump.setting > deepest) return null;
  const to = writtenInside(given, 'pump.setting', 'to', { from: least, to: deepest });
  const intake = readFacts(withValue(solved.plan, 'pump.setting', to)).facts.pump.setting;
  const probe = probeAbove(solved, intake);
  if (probe === null) return null;
  return changeOr(
    change(facts, [{ path: 'pump.setting', to }, probe], 'hangWithCutOff', {
      intake,
      probe: probeWritten(probe, intake - CUT_OFF_ABOVE_INTAKE),
    }),
    words('asDeepAsAllowed', {}),
  );
}
