/** What is offered against a broken rule of `rules/electrical.ts`. */
import { ampacity, requiredAmpacity, voltageDrop } from '../../formulas/wire.ts';
import type { Solved } from '../../solution.ts';
import { familyOf, usualWires, wireText } from '../../tables/wireSizes.ts';
import type { WireSize } from '../../tables/wireSizes.ts';
import { meets } from '../../rules/grace.ts';
import { change, words } from '../../rules/fix.ts';
import { wireToMotor } from '../../string/wireLengths.ts';
import { drawnCurrent, currentToCarry, DROP_WARNING } from '../../rules/electrical.ts';
import type { RuleFixes } from '../ruleFixes.ts';

export const electricalFixes = {
  'PR-49': ({ solved }) => [thickerWire(solved)],

  'PR-50': ({ solved }) => [thickerWire(solved)],
} satisfies RuleFixes;

/** The thinnest wire of the same family that meets drop and ampacity, each at its own current. */
function thickerWire(solved: Solved) {
  const { facts } = solved;
  const { phase, voltage } = facts.pump;
  const drawn = drawnCurrent(solved);
  const carried = currentToCarry(solved);
  if (drawn === null || carried === null) return words('thicker', {});
  const length = wireToMotor(facts) ?? 0;
  const does = (gauge: WireSize) =>
    meets(ampacity(gauge, 60) - requiredAmpacity(carried), 'current') &&
    meets(DROP_WARNING - voltageDrop({ phase, current: drawn, length, gauge }) / voltage, 'ratio');
  const gauge = usualWires(familyOf(facts.wire.gauge)).find(does);
  return gauge === undefined
    ? words('noneThickEnough', {})
    : change(facts, [{ path: 'wire.size', to: wireText(gauge) }], 'useGauge', { gauge });
}
