/** What is offered against a broken rule of `rules/supply.ts`. */
import type { Facts } from '../../facts.ts';
import { change, words } from '../../rules/fix.ts';
import { LOW_VOLTAGE } from '../../rules/supply.ts';
import type { RuleFixes } from '../ruleFixes.ts';

export const supplyFixes = {
  'PR-59'({ facts }, { variant }) {
    switch (variant) {
      case 'tooLargeFor115':
        return [change(facts, [{ path: 'pump.voltage', to: '230 V' }], 'use230', {}), words('smallerMotor', {})];
      case 'threePhaseOnTwo':
        return [change(facts, [{ path: 'pump.wires', to: 3 }], 'threeConductors', {}), words('askElectrician', {})];
      default:
        return [threeWire(facts), words('askElectrician', {})];
    }
  },
} satisfies RuleFixes;

/** A motor so strong is no motor for 115 V either. */
function threeWire(facts: Facts) {
  const wires = { path: 'pump.wires', to: 3 };
  return facts.pump.voltage < LOW_VOLTAGE
    ? change(facts, [wires, { path: 'pump.voltage', to: '230 V' }], 'threeWireOn230', {})
    : change(facts, [wires], 'threeWire', {});
}
