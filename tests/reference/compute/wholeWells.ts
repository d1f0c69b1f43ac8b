/** Checks that ask for a whole well: a plan is written, read and solved. */
import { chlorineProduct } from '../../../src/model/formulas/disinfection.ts';
import { usableStorage } from '../../../src/model/formulas/wellStorage.ts';
import { solve } from '../../../src/model/solve.ts';
import { feet, toFeet, toGallons, toGpm } from '../../../src/model/units.ts';
import { rockWell } from '../../plans/build.ts';
import type { WellInputs } from './wells.ts';

const fluidOunces = (volume: number) => toGallons(volume) * 128;
const inFeet = (length: number | null) => (length === null ? NaN : toFeet(length));

export const wholeWells: Readonly<Record<string, (inputs: WellInputs) => Record<string, number>>> = {
  drop_pipe: (inputs) => {
    const seal = inputs.top === ('seal' as unknown);
    const { values } = solve(
      rockWell({
        well: {
          depth: '200 ft',
          casing: { material: 'steel', size: '6 in', bottom: '200 ft', height: `${inputs.stickup_in ?? 12} in` },
          intake: { kind: 'open hole', diameter: '6 in' },
        },
        top: seal ? { kind: 'seal' } : { kind: 'pitless', depth: `${inputs.pitless_depth_ft} ft` },
        pump: {
          setting: `${inputs.discharge_depth_ft! + 1.5} ft`,
          intakeToDischarge: '1.5 ft',
          power: '1 hp',
          curve: { kind: 'generic', flow: '10 gpm' },
        },
      }),
    );
    return { drop_pipe_ft: inFeet(values.dropPipeCutLength) };
  },

  residential_case: (inputs) => {
    const { bore, facts, values } = solve(
      rockWell({
        well: {
          depth: `${inputs.well_depth_ft} ft`,
          casing: {
            material: 'steel',
            size: '6 in',
            insideDiameter: `${inputs.casing_inside_diameter_in} in`,
            bottom: `${inputs.well_depth_ft} ft`,
          },
          intake: { kind: 'open hole', diameter: `${inputs.casing_inside_diameter_in} in` },
        },
        water: {
          staticLevel: `${inputs.static_level_depth_ft} ft`,
          pumping: {
            kind: 'test',
            flow: `${inputs.test_gpm} gpm`,
            drawdown: `${inputs.test_drawdown_ft} ft`,
            after: `${inputs.test_hours} h`,
          },
        },
        house: { demand: `${inputs.pump_rate_gpm} gpm` },
        top: { kind: 'pitless', depth: `${inputs.pitless_depth_ft} ft` },
        pump: {
          setting: `${inputs.intake_depth_ft} ft`,
          intakeToDischarge: `${inputs.intake_to_discharge_ft} ft`,
          intakeToMotorBottom: `${inputs.intake_to_motor_bottom_ft} ft`,
          power: '1 hp',
          curve: { kind: 'generic', flow: '10 gpm' },
        },
      }),
    );
    const staticLevel = facts.water.staticLevel ?? NaN;
    // The check leaves the drop pipe in the volume and keeps water over the intake; the figure of a plan does neither.
    const kept = usableStorage({
      bore,
      staticLevel,
      intakeDepth: facts.pump.setting,
      dropPipeOutsideDiameter: 0,
      margin: feet(inputs.safety_submergence_ft!),
    });
    const waterVolume = values.wellVolume ?? NaN;
    const bleach = (strength: number) => fluidOunces(chlorineProduct({ waterVolume, target: 0.1, strength }));
    return {
      specific_capacity_gpm_per_ft: toGpm(values.specificCapacity ?? NaN) * feet(1),
      drawdown_ft: inFeet(values.drawdown),
      pumping_level_depth_ft: inFeet(values.pumpingWaterLevel),
      submergence_ft: inFeet(values.submergence),
      bottom_clearance_ft: inFeet(values.clearanceToBottom),
      discharge_depth_ft: inFeet(values.pumpDischargeDepth),
      drop_pipe_ft: inFeet(values.dropPipeCutLength),
      usable_storage_gal: toGallons(kept),
      water_column_ft: toFeet(facts.well.bottom - staticLevel),
      column_gal: toGallons(waterVolume),
      bleach_5_25_percent_fl_oz_for_100_mg_per_L: fluidOunces(values.chlorineDose ?? NaN),
      bleach_8_25_percent_fl_oz_for_100_mg_per_L: bleach(0.0825),
    };
  },
};
