/** How each check of electrical.json is computed by the model. */
import {
  areaForDrop,
  CIRCULAR_MIL,
  CIRCULAR_MIL_COPPER,
  coolRunFactor,
  copperResistance,
  COPPER_TEMPERATURE_COEFFICIENT,
  groundingGauge,
  insulationResistanceFloor,
  resistanceRatio,
  STRANDING_FACTOR,
  thinnestConductor,
} from '../../../src/model/formulas/copper.ts';
import {
  startingDropBound,
  startingTorqueShare,
  startingVoltageShare,
} from '../../../src/model/formulas/startingDip.ts';
import {
  awgArea,
  awgDiameter,
  chooseGauge,
  conductorResistance,
  dropOver,
  dropWithPowerFactor,
  effectiveImpedance,
  longestRun,
  requiredAmpacity,
  runForDrop,
  voltageDrop,
} from '../../../src/model/formulas/wire.ts';
import { conductorOf } from '../../../src/model/tables/conductors.ts';
import { lockedRotorCurrent, motorCurrent } from '../../../src/model/tables/motors.ts';
import { feet, horsepower, toFeet, toInches } from '../../../src/model/units.ts';
import type { Computations, Inputs } from '../checkValues.ts';

const ohmsPerMetre = (perThousandFeet: number) => perThousandFeet / feet(1000);
const perThousandFeet = (ohms: number) => ohms * feet(1000);
const phaseOf = (inputs: Inputs): 1 | 3 => (inputs.number('phase') === 3 ? 3 : 1);
const lengthOf = (inputs: Inputs) => feet(inputs.number('length_one_way_ft'));
const motorOf = (inputs: Inputs) => ({
  phase: phaseOf(inputs),
  power: horsepower(inputs.number('hp')),
  voltage: inputs.number('voltage_v'),
});

/** A drop in volts and in percent of the circuit voltage. */
const asDrop = (volts: number, supply: number) => ({
  voltage_drop_v: volts,
  voltage_drop_pct: (100 * volts) / supply,
});

const dropOfResistance = (inputs: Inputs, resistance: number) =>
  asDrop(
    dropOver({ phase: phaseOf(inputs), current: inputs.number('current_a'), length: lengthOf(inputs), resistance }),
    inputs.number('voltage_v'),
  );

/** By circular mils: ΔV = m K I L / CM is `dropOver` with the resistance K / CM. */
const dropByCircularMils = (inputs: Inputs) =>
  dropOfResistance(inputs, CIRCULAR_MIL_COPPER / (inputs.number('area_cmil') * CIRCULAR_MIL));

export const electrical: Computations = {
  E01: (inputs) => ({
    diameter_in: toInches(awgDiameter(inputs.number('awg'))),
    area_cmil: awgArea(inputs.number('awg')) / CIRCULAR_MIL,
    area_mm2: awgArea(inputs.number('awg')) * 1e6,
  }),
  E02: (inputs) => {
    const area = awgArea(inputs.number('awg'));
    return {
      r20_ohm_per_kft: perThousandFeet(copperResistance({ area, temperature: 20 })),
      r75_ohm_per_kft: perThousandFeet(copperResistance({ area, temperature: 75 })),
      r75_stranded_times_1p02_ohm_per_kft: perThousandFeet(
        STRANDING_FACTOR * copperResistance({ area, temperature: 75 }),
      ),
    };
  },
  E03: (inputs) => ({
    ratio_r75_over_r20: resistanceRatio(inputs.number('t_high_degC')) / resistanceRatio(inputs.number('t_low_degC')),
    alpha75_per_degC: COPPER_TEMPERATURE_COEFFICIENT / resistanceRatio(inputs.number('t_high_degC')),
  }),
  E04: (inputs) => dropOfResistance(inputs, ohmsPerMetre(inputs.number('r_ohm_per_kft'))),
  E05: dropByCircularMils,
  E06: dropByCircularMils,
  E07: (inputs) => dropOfResistance(inputs, ohmsPerMetre(inputs.number('z_effective_ohm_per_kft'))),
  E08: (inputs) => {
    const area = areaForDrop({
      phase: phaseOf(inputs),
      current: inputs.number('current_a'),
      length: lengthOf(inputs),
      drop: inputs.number('allowed_drop_v'),
    });
    return { required_area_cmil: area / CIRCULAR_MIL, selected_awg: thinnestConductor(area) };
  },
  E09: (inputs) => {
    const run = (impedance: number) =>
      toFeet(
        runForDrop({
          phase: phaseOf(inputs),
          current: inputs.number('current_a'),
          drop: inputs.number('allowed_drop_v'),
          resistance: ohmsPerMetre(impedance),
        }),
      );
    const impedances = inputs.inside('z_effective_ohm_per_kft');
    return {
      max_length_awg_10_ft: run(impedances.number('awg_10')),
      max_length_awg_12_ft: run(impedances.number('awg_12')),
    };
  },
  E10: (inputs) => {
    const dropOfOneAmpere = dropOver({
      phase: phaseOf(inputs),
      current: 1,
      length: lengthOf(inputs),
      resistance: ohmsPerMetre(inputs.number('z_effective_ohm_per_kft')),
    });
    return { max_current_a: inputs.number('allowed_drop_v') / dropOfOneAmpere };
  },
  E11: (inputs) => {
    const area = areaForDrop({
      phase: phaseOf(inputs),
      current: inputs.number('current_a'),
      length: lengthOf(inputs),
      drop: (inputs.number('limit_pct') / 100) * inputs.number('voltage_v'),
    });
    return { required_area_cmil: area / CIRCULAR_MIL, selected_awg: thinnestConductor(area) };
  },
  E12: (inputs) => {
    const oneConductor = inputs.number('loop_resistance_ohm_per_ft') / 2 / feet(1);
    const volts = dropOver({
      phase: 1,
      current: inputs.number('current_a'),
      length: lengthOf(inputs),
      resistance: oneConductor,
    });
    return asDrop(volts, inputs.number('voltage_v'));
  },
  E13: (inputs) => {
    const drop = dropOfResistance(inputs, ohmsPerMetre(inputs.number('r_ohm_per_kft')));
    return { ...drop, within_3_pct: drop.voltage_drop_pct <= 3 };
  },
  E14: (inputs) => {
    const current = motorCurrent(motorOf(inputs))!;
    expectTabled(inputs, current);
    const volts = voltageDrop({ phase: 1, current, length: lengthOf(inputs), gauge: inputs.number('awg') });
    return { ...asDrop(volts, inputs.number('voltage_v')), cable_loss_w: volts * current };
  },
  E15: (inputs) => {
    const run = { ...motorOf(inputs), current: motorCurrent(motorOf(inputs))!, length: lengthOf(inputs) };
    return { awg_at_5_pct: chooseGauge({ ...run, share: 0.05 }), awg_at_3_pct: chooseGauge({ ...run, share: 0.03 }) };
  },
  E16: (inputs) => {
    const run = (voltage: number) => {
      const current = motorCurrent({ phase: 1, power: horsepower(inputs.number('hp')), voltage })!;
      return longestRun({
        phase: 1,
        voltage,
        current,
        gauge: inputs.number('awg'),
        share: inputs.number('limit_pct') / 100,
      });
    };
    return {
      max_length_230v_ft: Math.floor(toFeet(run(230))),
      max_length_115v_ft: Math.floor(toFeet(run(115))),
      ratio: run(230) / run(115),
    };
  },
  E17: (inputs) => {
    const current = motorCurrent(motorOf(inputs))!;
    expectTabled(inputs, current);
    const volts = voltageDrop({ phase: 3, current, length: lengthOf(inputs), gauge: inputs.number('awg') });
    return asDrop(volts, inputs.number('voltage_v'));
  },
  E18: (inputs) => {
    const [phase, current, voltage] = [phaseOf(inputs), inputs.number('current_a'), inputs.number('voltage_v')];
    let volts = 0;
    let fractions = 0;
    for (const segment of inputs.rows('segments')) {
      const gauge = segment.number('awg');
      volts += voltageDrop({ phase, current, length: lengthOf(segment), gauge });
      fractions +=
        lengthOf(segment) / longestRun({ phase, voltage, current, gauge, share: inputs.number('limit_pct') / 100 });
    }
    return { ...asDrop(volts, voltage), sum_of_length_fractions: fractions };
  },
  E19: (inputs) => {
    const run = {
      phase: phaseOf(inputs),
      current: inputs.number('current_a'),
      length: lengthOf(inputs),
      gauge: inputs.number('awg'),
    };
    return {
      voltage_drop_pf_v: dropWithPowerFactor({ ...run, powerFactor: inputs.number('power_factor') }),
      voltage_drop_plain_v: voltageDrop(run),
    };
  },
  E20: (inputs) => {
    const voltage = inputs.number('voltage_v');
    const bound = startingDropBound({
      phase: phaseOf(inputs),
      lockedRotorCurrent: lockedRotorCurrent({ power: horsepower(1), phase: 1, voltage })!,
      length: lengthOf(inputs),
      gauge: inputs.number('awg'),
      voltage,
    });
    const share = startingVoltageShare({ bound, powerFactor: inputs.number('locked_rotor_power_factor') });
    return {
      r_ratio: bound,
      upper_bound_drop_pct: 100 * bound,
      motor_voltage_fraction: share,
      start_torque_fraction: startingTorqueShare(share),
    };
  },
  E21: (inputs) => {
    const current = motorCurrent(motorOf(inputs))!;
    const run = { ...motorOf(inputs), current, length: lengthOf(inputs) };
    const thin = voltageDrop({ ...run, gauge: inputs.number('awg') });
    return {
      required_ampacity_a: requiredAmpacity(current),
      voltage_drop_14_awg_pct: (100 * thin) / run.voltage,
      min_awg_75degC: chooseGauge({ ...run, column: 75 }),
      min_awg_60degC: chooseGauge({ ...run, column: 60 }),
    };
  },
  E22: (inputs) => ({
    required_ampacity_a: requiredAmpacity(
      motorCurrent({ phase: 1, power: horsepower(inputs.number('hp')), voltage: inputs.number('voltage_v') })!,
    ),
  }),
  E23: (inputs) => {
    const [least, installed, ground] = [
      inputs.number('awg_minimum'),
      inputs.number('awg_installed'),
      inputs.number('egc_minimum_awg'),
    ];
    const gauge = groundingGauge({ least, installed, ground })!;
    return {
      area_ratio: conductorOf(installed).areaCircularMils / conductorOf(least).areaCircularMils,
      egc_required_cmil: conductorOf(gauge).areaCircularMils,
      egc_awg: gauge,
    };
  },
  E24: (inputs) => ({
    z_effective_ohm_per_kft: perThousandFeet(effectiveImpedance(inputs.number('awg'), inputs.number('power_factor'))),
  }),
  E25: (inputs) => ({ length_multiplier: coolRunFactor(inputs.number('t_degC')) }),
  E26: (inputs) => ({
    min_insulation_resistance_megohm: insulationResistanceFloor(inputs.number('voltage_v')) / 1e6,
  }),
  E27: (inputs) => ({
    k_ohm_cmil_per_ft:
      conductorResistance(inputs.number('awg')) * feet(1) * conductorOf(inputs.number('awg')).areaCircularMils,
  }),
};

/** The current that the source works with is the one in our table. */
function expectTabled(inputs: Inputs, current: number): void {
  if (current !== inputs.number('current_a')) throw new Error(`table gives ${current} A`);
}
