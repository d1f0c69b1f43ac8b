/** Where the water stands for a pump that may hang anywhere: the plan's own level ends at the pump as it hangs now. */
import type { Facts } from '../facts.ts';
import { fallCurvesOf, systemOf } from '../figures/curves.ts';
import { lowestPumping, lowestStatic } from '../figures/lowestPumping.ts';
import { provenYield } from '../figures/provenYield.ts';
import { wellRelation } from '../formulas/wellRelation.ts';
import { withValue } from '../plan/editPlan.ts';
import { readFacts } from '../plan/readFacts.ts';
import { probeOf } from '../rules/cutOff.ts';
import { mayMove } from '../rules/fix.ts';
import { meets } from '../rules/grace.ts';
import type { Metres } from '../si.ts';
import type { LowestPumping, Solved } from '../solution.ts';
import { suspensionDepth } from '../string/topDepths.ts';
import type { Fall } from './told.ts';

export type WaterInWell =
  /** Dry-run protection that stands holds the water there. */
  | { readonly kind: 'held'; readonly probe: Metres }
  | {
      readonly kind: 'known';
      /** The lowest pumping level with the intake at a depth: a longer pipe lets a little less through. */
      readonly levelAt: (setting: Metres) => Metres;
      /** The setting with so much water over its intake. */
      readonly under: (water: Metres) => Metres;
    }
  /** Nobody knows how far it falls, or it falls as far as the pump lets it. */
  | {
      readonly kind: 'open';
      readonly fall: Exclude<Fall, 'known'>;
      /** As above, where at least the level at that flow is known. */
      readonly under: ((water: Metres) => Metres) | null;
    };

/**
 * @param solved   whose level at rest is known
 * @param deepest  place that the pump may have
 */
export function waterInWell(solved: Solved, deepest: Metres): WaterInWell {
  const { facts, plan } = solved;
  const probe = probeOf(solved);
  const movable = mayMove(facts, 'pump.lowLevelCutOff');
  if (probe !== null && !movable) return { kind: 'held', probe };
  // A probe that goes where the pump goes ends no fall.
  const bare = typeof facts.pump.lowLevelCutOff === 'number' ? withValue(plan, 'pump.lowLevelCutOff', undefined) : plan;
  // Asked for at a dozen depths: the plan is read once, and no more is worked out than the level.
  const unguarded = bare === plan ? facts : readFacts(bare).facts;
  const lowestAt = (setting: Metres) => lowestIn({ ...unguarded, pump: { ...unguarded.pump, setting } });
  const lowest = lowestAt(deepest);
  const less = givesLess(solved);
  if (lowest === null) return { kind: 'open', fall: less ? 'givesLess' : 'unknown', under: null };
  if (lowest.by === 'intake' || lowest.by === 'cutOff' || lowest.by === 'lift')
    return { kind: 'open', fall: less ? 'givesLess' : 'pumpTakesMore', under: null };
  const levelAt = (setting: Metres) => lowestAt(setting)?.depth ?? lowest.depth;
  const under = (water: Metres) => {
    let setting = lowest.depth + water;
    for (let round = 0; round < ROUNDS; round++) {
      const last = setting;
      setting = levelAt(last) + water;
      if (Math.abs(setting - last) < SETTLED) break;
    }
    return setting;
  };
  return less ? { kind: 'open', fall: 'givesLess', under } : { kind: 'known', levelAt, under };
}

function lowestIn(facts: Facts): LowestPumping | null {
  const curves = fallCurvesOf(facts, systemOf(facts, suspensionDepth(facts)));
  const lowest = lowestPumping(facts, curves);
  return curves.atCutInMost === null ? lowestWithAnyPump(facts, lowest) : lowest;
}

/** A pump of which only the flow is known takes that flow at least, and more than the house asks if it is more. */
function lowestWithAnyPump(facts: Facts, lowest: LowestPumping | null): LowestPumping | null {
  const { curve } = facts.pump;
  const rest = lowestStatic(facts);
  const relation = wellRelation(facts.water.pumping, facts.water.staticLevel);
  if (lowest === null || rest === null || relation === null) return lowest;
  if (curve.kind !== 'generic') return lowest;
  return { ...lowest, depth: Math.max(lowest.depth, rest + relation.drawdownAt(curve.flow)) };
}

/** Pipe of some feet more or less moves the level by a hair: it settles at once. */
const ROUNDS = 3;
/** Far under what can be written [m]. */
const SETTLED: Metres = 1e-6;

/** A well that gives less than the house wants stores water for it: the deeper the pump, the more of it comes up. */
function givesLess({ facts }: Solved): boolean {
  const gives = provenYield(facts);
  const { demand } = facts.house;
  return gives !== null && demand !== null && !meets(gives - demand, 'flow');
}

/** The lowest level at rest of a well that is said to have one. */
export function restOf({ facts }: Solved): Metres {
  return lowestStatic(facts) ?? 0;
}
