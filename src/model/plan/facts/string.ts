/** What is fitted along the drop pipe, in SI. */
import type { StringFacts } from '../../facts.ts';
import { DEFAULTS } from '../defaults.ts';
import type { Plan } from '../schema.ts';
import { read } from '../take.ts';
import type { Take } from '../take.ts';

export function stringFacts(string: NonNullable<Plan['string']>, take: Take): StringFacts {
  return {
    checkValves: heights('string.checkValves', string.checkValves, DEFAULTS.checkValves, take),
    arrow: take.option('string.arrow', string.arrow, DEFAULTS.arrow),
    valveBetweenTopAndTank: take.option('string.valveBetweenTopAndTank', string.valveBetweenTopAndTank, false),
    torqueArrestor:
      string.torqueArrestor === 'none'
        ? null
        : take.quantity('string.torqueArrestor', string.torqueArrestor, 'length', DEFAULTS.torqueArrestor),
    guards: take.maybe(string.guards, 'length'),
    ties: take.quantity('string.ties', string.ties, 'length', DEFAULTS.ties),
    splices: heights('string.splices', string.splices, DEFAULTS.splices, take),
    fittings: take.option('string.fittings', string.fittings, DEFAULTS.fittings),
    clampsPerJoint: take.option('string.clampsPerJoint', string.clampsPerJoint, DEFAULTS.clampsPerJoint),
    clampScrew: string.clampScrew ?? null,
  };
}

/** Heights above the discharge, rising. */
function heights(
  path: string,
  typed: readonly string[] | undefined,
  otherwise: readonly string[],
  take: Take,
): number[] {
  if (typed === undefined) take.assumed.push({ path, value: JSON.stringify(otherwise) });
  return (typed ?? otherwise).map((text) => read(text, 'length')).sort((one, other) => one - other);
}
