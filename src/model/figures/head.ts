/** Heads between the pumping level and the tank: lift, rise, pressure and the three frictions. */
import type { Facts, PipeFacts } from '../facts.ts';
import { darcyHead, fittingHead, hazenWilliamsHead, insertFittingLoss, velocityIn } from '../formulas/friction.ts';
import { FITTING_LOSS } from '../tables/fittingLosses.ts';
import { INSERT_BORE_RATIO } from '../string/lengths.ts';
import type { CubicMetresPerSecond, Metres } from '../si.ts';
import { isBarbed, isBuriedOnBarbs } from '../tables/pipeMaterials.ts';

const INSERT_FITTING_LOSS = insertFittingLoss(INSERT_BORE_RATIO);
const FITTINGS_ON_PE_PIPE = 2;

export interface Water {
  readonly kinematicViscosity: number;
}

export function pipeFriction(
  pipe: PipeFacts,
  flow: CubicMetresPerSecond,
  length: Metres,
  { kinematicViscosity }: Water,
): Metres {
  const { insideDiameter, roughness } = pipe;
  return darcyHead({ flow, length, insideDiameter, roughness, kinematicViscosity });
}

/** The older formula beside it, to compare: it knows no temperature. */
export function pipeFrictionHazenWilliams(pipe: PipeFacts, flow: CubicMetresPerSecond, length: Metres): Metres {
  return hazenWilliamsHead({ flow, length, insideDiameter: pipe.insideDiameter, coefficient: pipe.hazenWilliams });
}

/** Loss coefficients on the drop pipe's velocity: valves, insert fittings, and the turn at the top. */
export function dropPipeLoss({ dropPipe, string, top }: Facts): number {
  const turn =
    top.kind === 'pitless' ? FITTING_LOSS.pitlessAdapter : FITTING_LOSS.teeThroughBranch + FITTING_LOSS.elbow;
  const inserts = isBarbed(dropPipe) ? FITTINGS_ON_PE_PIPE * INSERT_FITTING_LOSS : 0;
  return string.checkValves.length * FITTING_LOSS.checkValve + inserts + turn;
}

/** Loss coefficients on the buried line's velocity. */
export function lineLoss({ house, string }: Facts): number {
  const inserts = house.line !== null && isBuriedOnBarbs(house.line) ? FITTINGS_ON_PE_PIPE * INSERT_FITTING_LOSS : 0;
  return inserts + (string.valveBetweenTopAndTank ? FITTING_LOSS.checkValve : 0);
}

export function fittingFriction(facts: Facts, flow: CubicMetresPerSecond): Metres | null {
  const { dropPipe, house } = facts;
  if (house.line === null) return null;
  return (
    fittingHead(dropPipeLoss(facts), velocityIn(flow, dropPipe.insideDiameter)) +
    fittingHead(lineLoss(facts), velocityIn(flow, house.line.insideDiameter))
  );
}
