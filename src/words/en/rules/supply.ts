import { horsepower } from '../../../model/units.ts';
import type { supplyRules } from '../../../model/rules/supply.ts';
import type { LongWords } from '../../ruleWords.ts';
import { ELECTRIC_CAUTION } from '../cautions.ts';
import { motorSize } from '../motorSizes.ts';

export const long: LongWords<typeof supplyRules> = {
  'PR-59': {
    holds: 'The motor fits its supply',
    held: {
      threePhase: ({ voltage }, show) => ({ amount: `${show.voltage(voltage)}, three-phase` }),
      fits: ({ power, voltage }, show) => ({ amount: `${show.power(power)}, ${show.voltage(voltage)}` }),
    },
    asks: ({ on115, onTwoWires }, show) =>
      `On 115 V a motor has up to ${motorSize(on115, show)}, on two wires up to ${motorSize(onTwoWires, show)}; three phases take three conductors.`,
    source: (show) =>
      `115 V to ${motorSize(horsepower(0.5), show)}, 2-wire motors to ${motorSize(horsepower(1.5), show)}: common practice, no source`,
    why: 'A motor on the wrong supply does not start, or burns out.',
    caution: ELECTRIC_CAUTION,
    messages: {
      threePhase: () => 'A three-phase motor with three power wires; what it runs on is for a licensed electrician.',
      fits: ({ power, voltage, wires }, show) =>
        `${show.power(power)} on ${show.voltage(voltage)}, single phase, ${wires}-wire.`,
      threePhaseOnTwo: () => 'A three-phase motor needs three power wires and the ground.',
      tooLargeForTwo: ({ power, most }, show) =>
        `2-wire motors are made up to ${show.power(most)}; this one has ${show.power(power)}.`,
      tooLargeFor115: ({ power, voltage, most }, show) =>
        `On ${show.voltage(voltage)} motors are usual up to ${show.power(most)}; this one has ${show.power(power)}.`,
    },
    fixes: {
      use230: () => 'Take the 230 V motor',
      smallerMotor: () => 'Ask a licensed electrician for 230 V at the well, or take a smaller motor.',
      threeConductors: () => 'Plan three power wires',
      askElectrician: () => 'Ask a licensed electrician which cable and supply this motor needs.',
      threeWireOn230: () => 'Plan a 3-wire motor on 230 V with its control box',
      threeWire: () => 'Plan a 3-wire motor with its control box',
    },
  },
};
