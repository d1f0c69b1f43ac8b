/** Tank, switch and relief against what the pump can reach. */
import { levelAtFlow, levelAtNoFlow } from '../figures/curves.ts';
import { lowestLevel, neverDraws } from '../figures/lowestLevel.ts';
import { lowestStatic } from '../figures/lowestPumping.ts';
import { provenYield } from '../figures/provenYield.ts';
import { boreKnown } from '../figures/waterFall.ts';
import { siteWater } from '../figures/siteWater.ts';
import { STANDARD_GRAVITY } from '../formulas/water.ts';
import { wellRelation } from '../formulas/wellRelation.ts';
import { usableStorage } from '../formulas/wellStorage.ts';
import type { Metres, Pascals, Seconds } from '../si.ts';
import type { Solved } from '../solution.ts';
import { psi } from '../units.ts';
import { isAssumed } from './assumed.ts';
import { atLowestLevel } from './atLowestLevel.ts';
import { hasCutOff, probeAboveIntake, probeOf } from './cutOff.ts';
import { meets } from './grace.ts';
import type { MissingFact } from './missing.ts';
import { openYield } from './openFacts.ts';
import { AS_TESTED, PUMP } from './restsOn.ts';
import { breaks, defineRule, doesNotApply, holds, limit, missing } from './rule.ts';

/** Shut-off pressure at the tank over the cut-out pressure, to be sure that the switch opens. */
export const CUT_OUT_SPARE: Pascals = psi(10);

function shutOffMissing({ facts, values }: Solved): MissingFact {
  if (values.shutOffPressureAtPump === null) return 'powerOrCurve';
  return facts.water.staticLevel === null ? 'staticLevel' : 'rise';
}

export const tankHolds = defineRule({
  number: 'PR-44',
  part: 'tank',
  restsOn: ['house.tankRating', ...PUMP],
  onlyHelps: ['pump.frequency'],
  judge({ solved, facts, values }) {
    const { house } = facts;
    if (house.kind === 'open tank') return doesNotApply;
    const reach = values.shutOffPressureAtTank;
    if (reach === null) return missing(shutOffMissing(solved));
    const rating = house.tankRating;
    const margin = rating - reach;
    if (meets(margin, 'pressure')) return holds('strongEnough', { reach, rating, margin });
    if (house.reliefValve === true) return holds('relieved', {});
    const at = { measured: reach, limit: rating, margin, quantity: 'pressure', depth: null } as const;
    if (house.reliefValve === false) return breaks('noRelief', 'danger', { reach, rating, margin }, at);
    // Whose rating and whose relief nobody said may be in order.
    return isAssumed(solved, 'house.tankRating')
      ? missing('reliefValve', { reach, rating })
      : breaks('reliefUnknown', 'warning', { reach, rating, margin }, at);
  },
});

/** So long a motor may run in water that hardly moves. Common practice, no source. */
const SOON: Seconds = 1800;

export const pumpReachesCutOut = defineRule({
  number: 'PR-46',
  part: 'switch',
  restsOn: ['house.cutIn', 'house.cutOut', 'house.demand', ...PUMP, 'pump.setting', ...AS_TESTED],
  asks: { spare: CUT_OUT_SPARE, soon: SOON },
  judge(given) {
    const { solved, facts } = given;
    const { house } = facts;
    if (house.kind === 'open tank') return doesNotApply;
    // A pump that hangs above the water, or that its cut-off never lets start, is told as such.
    if (neverDraws(facts)) return doesNotApply;
    if (reachAt(solved, 0) === null) return missing(shutOffMissing(solved));
    const { cutOut } = house;
    if (solved.lowest?.by === 'lift') return drawnToItsLift(solved);
    return atLowestLevel(
      given,
      (level) => {
        const reach = reachAt(solved, level) ?? 0;
        const spare = reach - cutOut;
        const margin = spare - CUT_OUT_SPARE;
        const numbers = { reach, cutOut, spare, level };
        if (meets(margin, 'pressure')) return holds('reaches', numbers, margin);
        const at = { measured: spare, limit: CUT_OUT_SPARE, margin, quantity: 'pressure', depth: null } as const;
        if (servesWhileHigh(solved) && meets(reach - house.cutIn, 'pressure')) {
          const turn = levelAtNoFlow(facts, { end: 'least', tank: 'cutOut' }) ?? level;
          const high = { cutOut, turn, level };
          return opensSoon(solved, turn, level)
            ? holds('reachesWhileHigh', high, margin)
            : breaks('opensLate', 'warning', { ...high, reach, spare }, at);
        }
        if (meets(spare, 'pressure')) return breaks('barelyReaches', 'warning', numbers, at);
        const late = solved.lowest !== null && opensAsWaterComesBack(solved);
        if (late) return breaks('reachesLate', 'warning', numbers, at);
        // A generic pump is a band: where its stronger end would do, what its weaker end cannot is told as such.
        const most = reachAt(solved, level, 'shutOffPressureAtTank') ?? 0;
        const strong = solved.curves.generic && meets(most - cutOut, 'pressure');
        return strong ? breaks('mayNeverReach', 'danger', numbers, at) : breaks('neverReaches', 'danger', numbers, at);
      },
      (turn) => ({ variant: 'dependsOnLevel' as const, numbers: { turn, cutOut, spare: CUT_OUT_SPARE } }),
    );
  },
  // Where the water may fall to the pump, it hangs no deeper than it lifts from with the water at its lowest.
  limits(solved) {
    const { facts, curves, lowest } = solved;
    if (facts.house.kind === 'open tank') return [];
    if (lowest !== null && lowest.by !== 'lift' && curves.atCutInMost?.outpumped !== true) return [];
    // Where nobody knows the fall: as deep as it lifts from, for there its probe stops it.
    const mayStall = lowest === null || lowest.by === 'lift';
    const guarded = mayStall ? hasCutOff(solved) && reachesFromRest(solved) : servesWhileHigh(solved);
    const lifts = levelAtNoFlow(facts, { end: 'least', tank: guarded ? 'cutIn' : 'cutOut' });
    if (lifts === null) return [];
    const spare = guarded ? 0 : CUT_OUT_SPARE / (siteWater(facts.site).density * STANDARD_GRAVITY);
    return [limit('pump.setting', { to: lifts - spare + Math.max(probeAboveIntake(facts) ?? 0, 0) }, 'pumpLifts', {})];
  },
});

/**
 * A pump that draws more than flows in hangs so deep that even the strongest of its rating lifts nothing from there. The
 * water falls until the pump gives just what flows in, and no probe or intake ends that: with the taps open it runs on
 * near its shut-off. Where that still opens the switch all is well; where not, nothing stops the motor.
 *
 * Judged on the half that is sure of a yield blown with air: the less flows in, the nearer to its shut-off it runs.
 */
function drawnToItsLift(solved: Solved) {
  const { facts, lowest, curves } = solved;
  const { cutOut } = facts.house;
  const rest = lowestStatic(facts) ?? 0;
  const gives = openYield(solved)?.bad ?? provenYield(facts) ?? 0;
  // A weaker pump that takes no more than flows in stays where the water rests.
  const level = Math.max(levelAtFlow(facts, { end: 'least', tank: 'cutIn' }, gives) ?? rest, rest);
  const reach = reachAt(solved, level) ?? 0;
  const spare = reach - cutOut;
  const margin = spare - CUT_OUT_SPARE;
  if (meets(margin, 'pressure')) return holds('reaches', { reach, cutOut, spare, level }, margin);
  const at = { measured: spare, limit: CUT_OUT_SPARE, margin, quantity: 'pressure', depth: null } as const;
  if (meets(spare, 'pressure')) return breaks('barelyReaches', 'warning', { reach, cutOut, spare, level }, at);
  const lifts = curves.liftsFromMost ?? lowest?.depth ?? rest;
  // The weaker pump of that rating lifts from less deep; of a pump whose points are known there is one curve.
  const weak = curves.generic ? (levelAtNoFlow(facts, { end: 'least', tank: 'cutIn' }) ?? lifts) : lifts;
  const intake = facts.pump.setting;
  const probe = probeOf(solved);
  return probe === null
    ? breaks('hangsBelowItsLift', 'danger', { lifts, weak, intake }, at)
    : breaks('probeBelowItsLift', 'danger', { lifts, weak, intake, probe }, at);
}

/**
 * Whether the switch opens within half an hour once the taps are shut: what flows in fills the bore from where the
 * protection stops the pump up to where the weaker pump reaches cut-out. In a bore of unknown width nobody can tell.
 */
function opensSoon(solved: Solved, turn: Metres, level: Metres): boolean {
  const { facts, bore } = solved;
  const gives = openYield(solved)?.bad ?? provenYield(facts);
  const from = Math.max(turn, lowestStatic(facts) ?? turn);
  if (from >= level) return true;
  if (gives === null || !boreKnown(bore, from, level)) return false;
  const { outsideDiameter } = facts.dropPipe;
  const water = usableStorage({
    bore,
    staticLevel: from,
    intakeDepth: level,
    dropPipeOutsideDiameter: outsideDiameter,
  });
  return water <= gives * SOON;
}

/**
 * A well that even the weaker pump draws down, or may: with the water high the switch opens, and with it low the dry-run
 * protection stops the pump before it runs on in vain.
 */
function servesWhileHigh(solved: Solved): boolean {
  const rest = lowestStatic(solved.facts);
  if (rest === null || !hasCutOff(solved) || solved.lowest === null) return false;
  // Where no drawdown is known the stronger pump empties the well, and of the weaker one nobody can say.
  const { by } = solved.lowest;
  const outpumped = solved.curves.atCutIn?.outpumped ?? (by === 'cutOff' || by === 'intake');
  return outpumped && reachesFromRest(solved);
}

/** With the water at rest the switch opens, with room. */
function reachesFromRest(solved: Solved): boolean {
  const rest = lowestStatic(solved.facts);
  const reach = rest === null ? null : reachAt(solved, rest);
  return reach !== null && meets(reach - solved.facts.house.cutOut - CUT_OUT_SPARE, 'pressure');
}

/**
 * Whether the switch opens after all, once the taps are shut. Drawn so low that it no longer reaches cut-out the pump gives
 * next to nothing, so that the water comes back, in any well, and from above some level the switch opens. Till then the
 * motor runs in water that hardly moves: that is worth a warning however soon the water comes back, since a little wear
 * makes never of late. A danger is only the pump that does not stop: it reaches cut-out neither with room from the water
 * at rest, nor at all from where the house leaves it.
 *
 * None of these levels is set by the pump's own strength, so that a stronger one, which reaches more from the same water,
 * is not judged a danger where a weaker is not.
 */
function opensAsWaterComesBack(solved: Solved): boolean {
  const { facts } = solved;
  const { cutOut, demand } = facts.house;
  const rest = lowestStatic(facts);
  if (rest === null) return false;
  const relation = wellRelation(facts.water.pumping, facts.water.staticLevel);
  const fall = relation === null || demand === null ? 0 : relation.drawdownAt(demand);
  const usual = Math.min(rest + fall, lowestLevel(facts).depth);
  const [atRest, atUsual] = [reachAt(solved, rest) ?? 0, reachAt(solved, usual) ?? 0];
  return meets(atRest - cutOut - CUT_OUT_SPARE, 'pressure') || meets(atUsual - cutOut, 'pressure');
}

/** Pressure at the tank at no flow with the water at a depth, by default on the pump's weaker end; null while unknown. */
export function reachAt(
  { facts, values }: Pick<Solved, 'facts' | 'values'>,
  level: Metres,
  end: 'shutOffPressureAtTankLeast' | 'shutOffPressureAtTank' = 'shutOffPressureAtTankLeast',
): Pascals | null {
  const atRest = values[end];
  const { staticLevel } = facts.water;
  if (atRest === null || staticLevel === null) return null;
  return atRest - (level - staticLevel) * siteWater(facts.site).density * STANDARD_GRAVITY;
}

export const tankRules = [tankHolds, pumpReachesCutOut] as const;
