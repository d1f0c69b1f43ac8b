/** Where the trade would hang the pump, the best place first; or that it hangs well already. */
import { levelAtNoFlow } from '../figures/curves.ts';
import { CUT_OFF_ABOVE_INTAKE, hasCutOff } from '../rules/cutOff.ts';
import { mayMove } from '../rules/fix.ts';
import { exceeds, meets } from '../rules/grace.ts';
import { LEAST_SUBMERGENCE } from '../rules/pumpDepth.ts';
import { valueAt } from '../plan/editPlan.ts';
import type { Metres } from '../si.ts';
import type { Solution } from '../solution.ts';
import { feet } from '../units.ts';
import { wayOutForPump } from './clashes.ts';
import { hungIn } from './hung.ts';
import { pumpRoom, type PumpRoom } from './pumpRoom.ts';
import type { Fall, HungFrom, WhyLeft } from './told.ts';
import { opensLate } from './tryPlace.ts';
import { usualIn } from './usual.ts';
import { restOf, waterInWell, type WaterInWell } from './waterInWell.ts';

/** Between its ends, as near to one of them as it can be written. */
export interface PumpPlace {
  readonly ends: { readonly from: Metres; readonly to: Metres };
  readonly near: 'from' | 'to';
  readonly from: HungFrom;
}

export type PumpPlaces =
  /** It stays; `guarded`: something has to stop it there. */
  | { readonly kind: 'left'; readonly why: WhyLeft; readonly guarded: boolean }
  | { readonly kind: 'hang'; readonly places: readonly PumpPlace[] }
  /** As deep as it goes: at best so deep, else as deep as nothing forbids. Something has to stop the pump there. */
  | { readonly kind: 'deep'; readonly best: PumpPlace; readonly least: Metres; readonly fall: Exclude<Fall, 'known'> };

/**
 * @param solution  of a plan whose level at rest is known
 * @param placed    whether the depth was set just now, and may be bettered since a valve or a pipe followed it
 */
export function pumpPlaces(solution: Solution, placed: boolean): PumpPlaces {
  const room = pumpRoom(solution);
  const water = waterInWell(solution, room.deepest.depth);
  return placesIn(solution, room, water, !isTyped(solution) || (placed && hangsDeeperThanNeeded(solution, water)));
}

/** A depth that nobody typed holds only until something else is chosen. */
function isTyped({ plan }: Solution): boolean {
  return valueAt(plan, 'pump.setting') !== undefined;
}

function hangsDeeperThanNeeded({ facts }: Solution, water: WaterInWell): boolean {
  const { setting } = facts.pump;
  return water.kind === 'known' && setting - water.levelAt(setting) > usualIn(facts.units).mostUnderWater;
}

function placesIn(solution: Solution, room: PumpRoom, water: WaterInWell, anew: boolean): PumpPlaces {
  switch (water.kind) {
    case 'held':
      return underProbe(solution, room, water.probe, anew);
    case 'known':
      return underWater(solution, room, water, anew);
    case 'open':
      return asDeepAsUseful(solution, room, water, anew);
  }
}

const left = (why: WhyLeft, guarded = false): PumpPlaces => ({ kind: 'left', why, guarded });

function noRoom({ deepest }: PumpRoom, least: Metres, atRest: boolean): WhyLeft {
  const { depth, end } = deepest;
  const wayOut = wayOutForPump(end);
  // Pumping less brings no water back to where it does not stand at rest.
  const only = atRest && wayOut === 'deeperWell' ? 'onlyDeeperWell' : wayOut;
  return { variant: 'noRoomForPump', numbers: { least, atRest, deepest: depth, end, wayOut: only } };
}

/** The deepest water from which the pump fills its tank; infinite while pump or rise is unknown. */
export function liftsFrom({ facts }: Solution): Metres {
  return levelAtNoFlow(facts, { end: 'least', tank: 'cutIn' }) ?? Infinity;
}

/** Under the lowest pumping level with room, where the well has it; in a shallow one the water comes before the bottom. */
function underWater(
  solution: Solution,
  room: PumpRoom,
  { levelAt, under }: Extract<WaterInWell, { kind: 'known' }>,
  anew: boolean,
): PumpPlaces {
  const { facts } = solution;
  const usual = usualIn(facts.units);
  const setting = facts.pump.setting;
  const least = Math.max(under(LEAST_SUBMERGENCE), room.highest);
  const deepest = room.deepest.depth;
  if (!meets(deepest - least, 'length')) {
    const atRest = !exceeds(levelAt(least) - restOf(solution), 'length');
    return left(noRoom(room, least, atRest));
  }
  const lifts = liftsFrom(solution);
  const lowest = levelAt(least);
  if (!meets(lifts - lowest, 'length')) return left({ variant: 'cannotLift', numbers: { from: lowest, lifts } });
  const end = lowEnd(room, least);
  const roomy = Math.max(under(usual.roomUnderWater), room.highest);
  const hasRoom = meets(end.depth - roomy, 'length');
  const from = hasRoom ? roomy : least;
  const to = meets(end.depth - least, 'length') ? Math.max(end.depth, from) : deepest;
  const water = setting - levelAt(setting);
  const covered = meets(water - (hasRoom ? usual.roomUnderWater : LEAST_SUBMERGENCE), 'length');
  if (!anew && covered && meets(setting - room.highest, 'length') && meets(to - setting, 'length'))
    return left({ variant: 'hangsWell', numbers: { fall: 'known', hung: hungIn(solution) } });
  const places: PumpPlace[] = [];
  const byWater: HungFrom = { by: 'water' };
  if (hasRoom) {
    const aim = Math.max(under(usual.underWater), from);
    const short = aim > to;
    const rounded = Math.min(aim + usual.hangStep / 2, to);
    places.push({ ends: { from, to: rounded }, near: 'to', from: short ? end.from : byWater });
    places.push({ ends: { from, to }, near: 'from', from: byWater });
  } else if (meets(end.depth - least, 'length')) {
    places.push({ ends: { from, to }, near: 'to', from: end.from });
  }
  const holds = meets(water - LEAST_SUBMERGENCE, 'length') && meets(deepest - setting, 'length');
  if (!holds || anew) places.push({ ends: { from: least, to: deepest }, near: 'from', from: byWater });
  return { kind: 'hang', places };
}

/** The deepest place with room, above the lowest inflow where the motor needs that and the water leaves it. */
function lowEnd({ roomy, overInflow }: PumpRoom, least: Metres): PumpRoom['roomy'] {
  return overInflow !== null && overInflow.depth < roomy.depth && meets(overInflow.depth - least, 'length')
    ? overInflow
    : roomy;
}

/**
 * Where the water may fall as far as the pump lets it: as deep as the bottom leaves room and as the pump still lifts
 * with the water at its dry-run protection.
 */
function asDeepAsUseful(
  solution: Solution,
  room: PumpRoom,
  { fall, under }: Extract<WaterInWell, { kind: 'open' }>,
  anew: boolean,
): PumpPlaces {
  const { facts } = solution;
  const { setting, lowLevelCutOff } = facts.pump;
  const usual = usualIn(facts.units);
  const rest = restOf(solution);
  const atRest = Math.max(rest + LEAST_SUBMERGENCE, room.highest);
  const pumped = Math.max(under?.(LEAST_SUBMERGENCE) ?? atRest, atRest);
  const least = meets(room.deepest.depth - pumped, 'length') ? pumped : atRest;
  const mayGuard = mayMove(facts, 'pump.lowLevelCutOff');
  const byProbe = lowLevelCutOff !== true && (mayGuard || hasCutOff(solution));
  const lifts = liftsFrom(solution);
  // Water that was measured far below where this pump lifts from does not rise because the pump does.
  const measured = solution.levels.pumping;
  if (
    fall === 'pumpTakesMore' &&
    measured !== null &&
    measured < facts.well.bottom &&
    !meets(lifts - measured, 'length')
  )
    return left({ variant: 'cannotLift', numbers: { from: measured, lifts } });
  const lifting = { depth: lifts + (byProbe ? CUT_OFF_ABOVE_INTAKE : 0), from: { by: 'lift', lifts } as const };
  const deepest = Math.min(room.deepest.depth, lifting.depth);
  if (!meets(room.deepest.depth - least, 'length')) return left(noRoom(room, least, true));
  if (!meets(deepest - least, 'length')) return left({ variant: 'cannotLift', numbers: { from: least, lifts } });
  const low = lowEnd(room, least);
  const end = lifting.depth < low.depth ? lifting : low;
  const shallow = !meets(end.depth - least, 'length');
  const aim = shallow ? least : end.depth;
  const inRoom = meets((shallow ? deepest : end.depth) - setting, 'length') && meets(setting - least, 'length');
  const nearAim = meets(setting - aim + usual.smallMove, 'length');
  const inLowerHalf = meets(setting - (rest + aim) / 2, 'length');
  if (!anew && inRoom && (nearAim || (inLowerHalf && hasCutOff(solution) && standsWell(solution))))
    return left({ variant: 'hangsWell', numbers: { fall, hung: hungIn(solution) } }, true);
  return {
    kind: 'deep',
    best: shallow
      ? { ends: { from: least, to: deepest }, near: 'from', from: { by: 'water' } }
      : { ends: { from: least, to: aim }, near: 'to', from: end.from },
    // A pump that holds where it hangs is not brought higher.
    least: inRoom && !anew ? setting : least,
    fall,
  };
}

/** Rules that a deeper pump may help. */
const HELPED: ReadonlySet<string> = new Set(['PR-01', 'PR-02', 'PR-03', 'PR-05', 'PR-07', 'PR-46', 'PR-53', 'PR-55']);

export function standsWell(solution: Solution): boolean {
  return !solution.findings.some(
    ({ rule, severity, together }) =>
      severity !== 'note' &&
      !opensLate(solution, rule) &&
      (HELPED.has(rule) || together.some((each) => HELPED.has(each.rule))),
  );
}

/** A probe that stands ends the water's fall; the pump hangs a little under it. */
function underProbe(solution: Solution, room: PumpRoom, probe: Metres, anew: boolean): PumpPlaces {
  const { setting } = solution.facts.pump;
  const least = Math.max(probe + CUT_OFF_ABOVE_INTAKE, room.highest);
  const deepest = room.deepest.depth;
  if (!meets(deepest - least, 'length')) return left(noRoom(room, least, false));
  const lifts = liftsFrom(solution);
  if (!meets(lifts - probe, 'length')) return left({ variant: 'cannotLift', numbers: { from: probe, lifts } });
  if (!anew && meets(setting - least, 'length') && meets(deepest - setting, 'length'))
    return left({ variant: 'underProbe', numbers: { probe } });
  const aim = Math.max(least, Math.min(probe + UNDER_PROBE, room.roomy.depth));
  return {
    kind: 'hang',
    places: [{ ends: { from: least, to: aim }, near: 'to', from: { by: 'probe', probe } }],
  };
}

/** Common practice, no source. */
const UNDER_PROBE = feet(5);
