/** How far the water falls at a flow, and what flows in when it has fallen so far: one relation, read both ways. */
import type { PumpingFacts } from '../facts.ts';
import type { CubicMetresPerSecond, Metres } from '../si.ts';
import { drawdownWithLoss, fitWellLoss, type WellLoss } from './drawdown.ts';
import { theisDrawdown } from './theis.ts';

export interface WellRelation {
  /** s at a flow of zero or more. */
  readonly drawdownAt: (flow: CubicMetresPerSecond) => Metres;
  /** Q at a drawdown of zero or more; without bound for a well that showed no drawdown at all. */
  readonly inflowAt: (drawdown: Metres) => CubicMetresPerSecond;
}

/**
 * Drawdown against flow by what the plan knows, made ready to be asked many times.
 *
 *     s = B Q + C Q²,   Q = 2 s / (B + √(B² + 4 C s))
 *
 * B and C of a step test as fitted; C = 0 for a test, a level with its flow, and an aquifer, whose s/Q is B.
 *
 * @returns  the relation; null where none is known: a yield alone, a level without its flow or above the water at rest
 *
 * Range    as `drawdownAt`, whose figures it gives
 * Throws   RangeError when a tested flow is not positive
 * Source   as `drawdownAt`; the way back is the quadratic's root, written so that it does not cancel
 */
export function wellRelation(pumping: PumpingFacts | null, staticLevel: Metres | null): WellRelation | null {
  const loss = pumping === null ? null : lossOf(pumping, staticLevel);
  if (loss === null) return null;
  const { aquiferLoss: b, wellLoss: c } = loss;
  return {
    drawdownAt: (flow) => drawdownWithLoss(loss, flow),
    inflowAt: (drawdown) => {
      if (b === 0 && c === 0) return Infinity;
      return drawdown > 0 ? (2 * drawdown) / (b + Math.sqrt(b * b + 4 * c * drawdown)) : 0;
    },
  };
}

function lossOf(pumping: PumpingFacts, staticLevel: Metres | null): WellLoss | null {
  switch (pumping.kind) {
    case 'test':
      return perFlow(pumping.drawdown, pumping.flow);
    case 'level':
      return staticLevel === null || pumping.flow === null || pumping.level < staticLevel
        ? null
        : perFlow(pumping.level - staticLevel, pumping.flow);
    case 'steps':
      return fitWellLoss(pumping.steps);
    case 'aquifer':
      return { aquiferLoss: theisDrawdown({ ...pumping, flow: 1, time: pumping.after }), wellLoss: 0 };
    case 'yield only':
      return null;
  }
}

function perFlow(drawdown: Metres, flow: CubicMetresPerSecond): WellLoss {
  if (!(flow > 0)) throw new RangeError(`wellRelation: tested flow is ${flow}, must be positive`);
  return { aquiferLoss: drawdown / flow, wellLoss: 0 };
}
