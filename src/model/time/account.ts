/** Which flow is watched, and how the well stands up to it: what level against time, day and break of suction share. */
import { lowestLevel } from '../figures/lowestLevel.ts';
import { provenYield } from '../figures/provenYield.ts';
import type { NobodyKnows } from '../figures/waterFall.ts';
import type { LevelFall } from '../formulas/levelFall.ts';
import type { Metres } from '../si.ts';
import type { Solved } from '../solution.ts';
import { givenFlow, ownFlow, type FlowChoice, type PumpedFlow } from './pumpedFlow.ts';
import { drawdownKnown, fallAt, ownSettling, ownStanding, standingAt } from './standing.ts';
import type { Unknown } from './unknown.ts';

export interface Account extends PumpedFlow {
  /**
   * `falls`: the well cannot keep up, and the water comes down as `fall` says. `keepsUp`: by its test or aquifer it does,
   * and no time is named. `settles`: it does once the pump gives less, with the water as far down as `fall` ends.
   * `followed`: a flow that somebody asked about, to be followed by the ground alone.
   */
  readonly kind: 'falls' | 'keepsUp' | 'settles' | 'followed';
  readonly fall: LevelFall | null;
}

/** Or the reason why nothing can be told; never a guess in its place. */
export function accountOf(solved: Solved, staticLevel: Metres, choice: FlowChoice = 'operating'): Account | Unknown {
  const lowest = lowestLevel(solved.facts);
  if (!(lowest.depth > staticLevel)) return { reason: because(solved, 'noWater') };
  if (choice === 'operating') return ownAccount(solved, staticLevel);
  const given = givenFlow(solved, choice);
  if (given === null) return { reason: 'The flow is not known.' };
  const fall = drawdownKnown(solved) ? null : fallAt(solved, staticLevel, given.flow);
  return { ...given, kind: fall === null ? 'followed' : 'falls', fall };
}

function ownAccount(solved: Solved, staticLevel: Metres): Account | Unknown {
  const standing = ownStanding(solved, staticLevel);
  if (standing.kind === 'unknown')
    return standing.why === 'pumpFlow' ? atDemand(solved, staticLevel) : { reason: because(solved, standing.why) };
  const pumped = ownFlow(solved, staticLevel);
  if (standing.kind === 'falls') {
    const own = flowOf(standing.fall);
    const named = solved.curves.generic ? `${own.words} (a strong pump of that rating)` : own.words;
    return { kind: 'falls', ...own, words: own.words === FALLING ? named : own.words, fall: standing.fall };
  }
  const settling = ownSettling(solved, staticLevel);
  if (settling === null)
    return { reason: 'The width of the bore is not known, so neither is the water that it holds.' };
  if (settling !== 'elsewhere') return { kind: 'settles', ...flowOf(settling), fall: settling };
  return pumped === null
    ? { reason: because(solved, 'inflow') }
    : { kind: 'keepsUp', flow: pumped.flow, words: pumped.words, fall: null };
}

function flowOf({ moments }: LevelFall): PumpedFlow {
  const flow = moments[0]?.pumpFlow ?? 0;
  const last = moments[moments.length - 1]?.pumpFlow ?? flow;
  return { flow, words: last < flow ? FALLING : LIMITED };
}

const FALLING = 'the flow at cut-in from the level at rest, and less as the water falls';
const LIMITED = 'the flow limiter’s flow';

/**
 * Nobody knows what the pump gives. How far the water falls while the house draws what it needs is told all the same;
 * when it would be gone is not.
 */
function atDemand(solved: Solved, staticLevel: Metres): Account | Unknown {
  const demand = givenFlow(solved, 'demand');
  if (demand === null) return { reason: because(solved, 'pumpFlow') };
  const standing = standingAt(solved, staticLevel, demand.flow);
  if (standing.kind === 'keepsUp') return { ...demand, kind: 'keepsUp', fall: null };
  const inflowUnknown = standing.kind === 'unknown' && standing.why === 'inflow';
  if (inflowUnknown) return { reason: because(solved, 'inflow') };
  return {
    reason: `What the house draws alone would bring the water down to ${DEEPEST[lowestLevel(solved.facts).by]}. When, nobody knows: ${because(solved, 'pumpFlow').replace('What', 'what')}`,
  };
}

const DEEPEST = { intake: 'the intake', 'low-level cut-off': 'the probe of the dry-run protection' } as const;

/** Why nobody knows, and what to enter, as a sentence or two. */
export function because(solved: Solved, why: NobodyKnows): string {
  const where = DEEPEST[lowestLevel(solved.facts).by];
  switch (why) {
    case 'noWater':
      return `${where.replace('the', 'The')} hangs above the water at rest.`;
    case 'liftsNothing':
      return 'This pump lifts no water into the tank, even while the water stands at rest.';
    case 'pumpFlow':
      return `What the pump gives is not known. Enter ${missingOfPump(solved)}.`;
    case 'inflow':
      return provenYield(solved.facts) === null
        ? 'Nothing is known of the drawdown, nor of the yield.'
        : 'A yield is known and no drawdown: how far the level falls at this flow is not known.';
    case 'bore':
      return `The pump takes more than the well gives, so the water comes down to ${where}. When, nobody knows: the width of the bore is not known, so neither is the water that it holds. Enter the diameters of hole and casing.`;
  }
}

function missingOfPump({ facts: { house, pump } }: Solved): string {
  const asked = [
    pump.curve.kind !== 'points' && pump.power === null ? 'the pump’s power' : null,
    house.line === null ? 'the line to the house' : null,
    house.distance === null ? 'how far the house is' : null,
    house.rise === null ? 'how high it stands over the well' : null,
  ].filter((each) => each !== null);
  const last = asked.pop() ?? 'the pump’s power';
  return asked.length === 0 ? last : `${asked.join(', ')} and ${last}`;
}
