/** What is fitted along the drop pipe, in SI. */
import type { StringFacts } from '../../facts.ts';
import type { Defaults } from '../defaults.ts';
import type { Plan } from '../schema.ts';
import type { Take } from '../take.ts';

export function stringFacts(string: NonNullable<Plan['string']>, usual: Defaults, take: Take): StringFacts {
  return {
    checkValves: rising(take.lengths('string.checkValves', string.checkValves, usual.checkValves)),
    arrow: take.option('string.arrow', string.arrow, usual.arrow),
    valveBetweenTopAndTank: take.option('string.valveBetweenTopAndTank', string.valveBetweenTopAndTank, false),
    torqueArrestor:
      string.torqueArrestor === 'none'
        ? null
        : take.quantity('string.torqueArrestor', string.torqueArrestor, 'length', usual.torqueArrestor),
    guards: take.maybe(string.guards, 'length'),
    ties: take.quantity('string.ties', string.ties, 'length', usual.ties),
    splices: rising(take.lengths('string.splices', string.splices, usual.splices)),
    fittings: take.option('string.fittings', string.fittings, usual.fittings),
    clampsPerJoint: take.option('string.clampsPerJoint', string.clampsPerJoint, usual.clampsPerJoint),
    clampScrew: string.clampScrew ?? null,
  };
}

function rising(heights: readonly number[]): number[] {
  return [...heights].sort((one, other) => one - other);
}
