/** How each check of mechanical.json is computed by the model. */
import type { PipeMaterial } from '../../../src/model/facts.ts';
import { cableDisplacedArea, cableMassPerLength } from '../../../src/model/formulas/cable.ts';
import { dropCableLength } from '../../../src/model/formulas/cableLength.ts';
import {
  anodeOf,
  coupleClass,
  galvanicDifference,
  LEAD_FREE_LIMIT,
  leadAverage,
} from '../../../src/model/formulas/corrosion.ts';
import { fittingGap, fittingMatch } from '../../../src/model/formulas/fittingMatch.ts';
import { hangLoad, pullLoad } from '../../../src/model/formulas/hangLoad.ts';
import {
  recommendedWeightLimit,
  recommendedWeightLimitCustomary,
  tackleLift,
  teamLimit,
} from '../../../src/model/formulas/lifting.ts';
import { allowablePull, axialStress, jointForce, wallTension } from '../../../src/model/formulas/pipeTension.ts';
import {
  boreArea,
  boreWaterPerLength,
  pipeMassPerLength,
  SPECIFIC_GRAVITY,
  submergedMassPerLength,
  wallArea,
} from '../../../src/model/formulas/pipeBody.ts';
import { ratingFromDimensionRatio, ratingFromSidr } from '../../../src/model/formulas/pipeStrength.ts';
import {
  peakOnSlackRope,
  requiredRopeStrength,
  ropeFactor,
  ropeLoadLimit,
  ropeStiffness,
} from '../../../src/model/formulas/rope.ts';
import {
  apparentModulus,
  FIFTY_YEARS,
  pipeStretch,
  thermalChange,
  thermalExpansion,
} from '../../../src/model/formulas/stretch.ts';
import { engagedLength, handTightTurns } from '../../../src/model/formulas/threads.ts';
import { motorTorque, pipeTwist } from '../../../src/model/formulas/twist.ts';
import { metalOf } from '../../../src/model/tables/metals.ts';
import { ropeStrength, thinnestRope } from '../../../src/model/tables/ropes.ts';
import {
  feet,
  horsepower,
  inches,
  poundsForce,
  poundsMass,
  psi,
  toFeet,
  toInches,
  toPoundsForce,
  toPoundsMass,
  toPsi,
} from '../../../src/model/units.ts';
import type { Computations, Inputs } from '../checkValues.ts';

const SQUARE_INCH = inches(1) ** 2;
const poundsPerFoot = (kilogramsPerMetre: number) => toPoundsMass(kilogramsPerMetre) * feet(1);

/** Pipe by its bore and SIDR (wall = bore / SIDR), or by its outside diameter and wall. */
function bodyOf(inputs: Inputs) {
  if (inputs.has('sidr')) {
    const insideDiameter = inches(inputs.number('id_in'));
    return { insideDiameter, outsideDiameter: insideDiameter * (1 + 2 / inputs.number('sidr')) };
  }
  const outsideDiameter = inches(inputs.number('od_in'));
  return { outsideDiameter, insideDiameter: outsideDiameter - 2 * inches(inputs.number('wall_in')) };
}

function stringOf(inputs: Inputs) {
  const body = bodyOf(inputs);
  return {
    length: feet(inputs.number('length_ft')),
    pipeMassPerLength: pipeMassPerLength(body, inputs.number('pipe_sg')),
    pipeWallArea: wallArea(body),
    pipeBoreArea: boreArea(body),
    cableMassPerLength: poundsMass(inputs.number('cable_lb_per_ft')) / feet(1),
    cableArea: inputs.number('cable_displaced_area_in2') * SQUARE_INCH,
    pumpMass: poundsMass(inputs.number('pump_motor_lb')),
    pumpBuoyancy: inputs.number('pump_buoyancy_fraction'),
    waterDepth: feet(inputs.number('water_depth_ft')),
    columnHeld: !inputs.has('check_valve_holds') || inputs.flag('check_valve_holds'),
  };
}

const hanging = (inputs: Inputs) => ({ hang_load_lb: toPoundsForce(hangLoad(stringOf(inputs))) });

export const mechanical: Computations = {
  M01: (inputs) => {
    const body = bodyOf(inputs);
    const gravity = inputs.number('specific_gravity');
    return {
      wall_in: toInches((body.outsideDiameter - body.insideDiameter) / 2),
      od_in: toInches(body.outsideDiameter),
      area_wall_in2: wallArea(body) / SQUARE_INCH,
      weight_air_lb_per_ft: poundsPerFoot(pipeMassPerLength(body, gravity)),
      net_weight_submerged_lb_per_ft: poundsPerFoot(submergedMassPerLength(body, gravity)),
      water_in_bore_lb_per_ft: poundsPerFoot(boreWaterPerLength(body)),
    };
  },
  M02: hanging,
  M03: hanging,
  M04: hanging,
  M05: hanging,
  M06: hanging,
  M07: hanging,
  M08: (inputs) => ({ weight_lb_per_ft: poundsPerFoot(pipeMassPerLength(bodyOf(inputs), SPECIFIC_GRAVITY.steel)) }),
  M09: (inputs) => {
    const whole = { ...stringOf(inputs), length: feet(300) };
    return { hang_load_lb: toPoundsForce(pullLoad(whole, feet(inputs.number('length_ft')))) };
  },
  M10: (inputs) => {
    const string = stringOf(inputs);
    const tension = wallTension({
      load: hangLoad(string),
      pressure: psi(inputs.number('pressure_top_psi')),
      boreArea: string.pipeBoreArea,
    });
    return {
      wall_tension_lb: toPoundsForce(tension),
      axial_stress_psi: toPsi(axialStress({ tension, wallArea: string.pipeWallArea })),
    };
  },
  M11: (inputs) => ({
    joint_force_lb: toPoundsForce(
      jointForce({
        weightBelow: poundsForce(inputs.number('weight_below_submerged_lb')),
        pressureTop: psi(inputs.number('pressure_top_psi')),
        waterDepth: feet(inputs.number('water_depth_ft')),
        boreArea: inputs.number('bore_area_in2') * SQUARE_INCH,
      }),
    ),
  }),
  M12: (inputs) => ({
    rating_psi: inputs
      .rows('cases')
      .map((row) =>
        toPsi(
          row.has('sidr')
            ? ratingFromSidr(psi(row.number('hds_psi')), row.number('sidr'))
            : ratingFromDimensionRatio(psi(row.number('hds_psi')), row.number('dr_od')),
        ),
      ),
  }),
  M13: (inputs) => ({
    allowable_tensile_load_lb: toPoundsForce(
      allowablePull({
        outsideDiameter: inches(inputs.number('od_in')),
        dimensionRatio: inputs.number('dr'),
        yieldStrength: psi(inputs.number('yield_psi')),
        designFactor: inputs.number('f_yield'),
        timeFactor: inputs.number('f_time'),
      }),
    ),
  }),
  M14: (inputs) => {
    const stretch = (modulus: number) => toFeet(pipeStretch({ ...stringOf(inputs), modulus }));
    const [long, short] = [apparentModulus('PE4710', FIFTY_YEARS), apparentModulus('PE4710', 12 * 3600)];
    if (Math.abs(toPsi(long) - inputs.number('e_50y_psi')) > 1) throw new Error('another modulus after 50 years');
    if (Math.abs(toPsi(short) - inputs.number('e_12h_psi')) > 1) throw new Error('another modulus after 12 hours');
    return { stretch_50y_ft: stretch(long), stretch_12h_ft: stretch(short) };
  },
  M15: (inputs) => {
    const grown = (material: PipeMaterial) =>
      toInches(
        thermalChange({
          material,
          length: feet(inputs.number('length_ft')),
          change: inputs.number('delta_t_degF') / 1.8,
        }),
      );
    return { pe_in: grown('PE'), pvc_in: grown('PVC'), steel_in: grown('galvanized steel') };
  },
  M16: (inputs) => ({
    expansion_mm:
      1000 *
      thermalExpansion({
        coefficient: inputs.number('alpha_per_degC'),
        length: inputs.number('length_m'),
        change: inputs.number('delta_t_degC'),
      }),
  }),
  M17: (inputs) => {
    const full = motorTorque({ power: horsepower(inputs.number('hp')), turnsPerMinute: inputs.number('rpm') });
    const degrees = (torque: number) =>
      (180 / Math.PI) *
      pipeTwist({
        torque,
        length: feet(inputs.number('length_ft')),
        modulus: psi(inputs.number('e_short_psi')),
        poisson: inputs.number('poisson'),
        outsideDiameter: inches(inputs.number('od_in')),
        insideDiameter: inches(inputs.number('id_in')),
      });
    return {
      torque_lb_ft: toPoundsForce(full) / feet(1),
      twist_full_load_deg: degrees(full),
      twist_start_deg: degrees(inputs.number('start_torque_factor') * full),
    };
  },
  M18: (inputs) => {
    const breakingStrength = ropeStrength({ material: 'polypropylene', diameter: inches(0.25) })!;
    if (Math.round(toPoundsForce(breakingStrength)) !== inputs.number('mbs_lb')) throw new Error('another rope');
    const limits = (knotEfficiency: number) =>
      inputs
        .list<number>('design_factors')
        .map((designFactor) => toPoundsForce(ropeLoadLimit({ breakingStrength, designFactor, knotEfficiency })));
    return { wll_no_knot_lb: limits(1), wll_knotted_lb: limits(inputs.number('knot_efficiency')) };
  },
  M19: (inputs) => {
    const limit = ropeLoadLimit({
      breakingStrength: poundsForce(inputs.number('mbs_lbf')),
      designFactor: inputs.number('design_factor'),
      knotEfficiency: 1,
    });
    return { safe_load_lbf: toPoundsForce(limit), safe_load_kn: limit / 1000, safe_mass_kg: limit / 9.80665 };
  },
  M20: (inputs) => {
    const needed = (designFactor: number) =>
      requiredRopeStrength({
        load: poundsForce(inputs.number('load_lb')),
        designFactor,
        knotEfficiency: inputs.number('knot_efficiency'),
      });
    return {
      required_mbs_df5_lb: toPoundsForce(needed(5)),
      rope_df5_in: thinnestRope('polypropylene', needed(5))?.name,
      required_mbs_df12_lb: toPoundsForce(needed(12)),
      rope_df12_in: thinnestRope('polypropylene', needed(12))?.name,
    };
  },
  M21: (inputs) => {
    const rope = {
      breakingStrength: poundsForce(inputs.number('rope_mbs_lb')),
      load: poundsForce(inputs.number('hang_load_lb')),
    };
    const knotted = ropeFactor({ ...rope, knotEfficiency: inputs.number('knot_efficiency') });
    return { ratio: ropeFactor({ ...rope, knotEfficiency: 1 }), ratio_knotted: knotted, meets_df5: knotted >= 5 };
  },
  M22: (inputs) => {
    const rope = {
      breakingStrength: poundsForce(inputs.number('rope_mbs_lb')),
      ropeLength: feet(inputs.number('rope_length_ft')),
      elongationAtBreak: inputs.number('elongation_at_break'),
    };
    const load = poundsForce(inputs.number('load_lb'));
    const peak = peakOnSlackRope({ ...rope, load, slack: feet(inputs.number('slack_ft')) });
    return {
      stiffness_lb_per_ft: toPoundsForce(ropeStiffness(rope)) * feet(1),
      dynamic_factor: peak / load,
      peak_lb: toPoundsForce(peak),
    };
  },
  M23: (inputs) => {
    const mass = poundsPerFoot(cableMassPerLength(inputs.number('awg'), 3));
    const area = cableDisplacedArea(inputs.number('awg'), 3) / SQUARE_INCH;
    // The two materials follow from the whole and from the area the strands leave to the plastic.
    const strands = inputs.number('conductors') * (Math.PI / 4) * inputs.number('strand_od_in') ** 2;
    const plastic = ((area - strands) * inputs.number('pvc_sg') * 62.4) / 144;
    return {
      copper_lb_per_ft: mass - plastic,
      pvc_lb_per_ft: plastic,
      total_lb_per_ft: mass,
      displaced_area_in2: area,
    };
  },
  M24: (inputs) => {
    const pairs = inputs
      .list<[string, string]>('pairs')
      .map(([first, second]) => [metalOf(first)!, metalOf(second)!] as const);
    return {
      delta_v: pairs.map(([first, second]) => galvanicDifference(first, second)),
      anode: pairs.map(([first, second]) => anodeOf(first, second)),
      class: pairs.map(([first, second]) => coupleClass(first, second)),
    };
  },
  M25: (inputs) => {
    const lead = leadAverage(
      inputs.rows('parts').map((part) => ({
        area: part.number('wetted_area_in2') * SQUARE_INCH,
        lead: part.number('lead_pct') / 100,
      })),
    );
    return { weighted_lead_pct: 100 * lead, lead_free: lead <= LEAD_FREE_LIMIT };
  },
  M26: (inputs) => ({
    rwl_kg: recommendedWeightLimit({
      reach: inputs.number('h_cm') / 100,
      height: inputs.number('v_cm') / 100,
      travel: inputs.number('d_cm') / 100,
      turn: inputs.number('a_deg'),
      frequency: inputs.number('fm'),
      grip: inputs.number('cm'),
    }),
  }),
  M27: (inputs) => ({
    rwl_lb: toPoundsMass(
      recommendedWeightLimitCustomary({
        reach: inches(inputs.number('h_in')),
        height: inches(inputs.number('v_in')),
        travel: inches(inputs.number('d_in')),
        turn: inputs.number('a_deg'),
        frequency: inputs.number('fm'),
        grip: inputs.number('cm'),
      }),
    ),
  }),
  M28: (inputs) => ({
    orientation_lb: inputs.list<1 | 2 | 3>('people').map((people) => toPoundsForce(teamLimit(people))),
  }),
  M29: (inputs) => ({
    hand_tight_turns: handTightTurns('1 in'),
    engaged_length_in: toInches(engagedLength('1 in', inputs.number('wrench_turns'))),
  }),
  M30: (inputs) => {
    const madeFor = inches(inputs.number('barb_for_id_in'));
    const barbs = inputs.rows('candidates').map((row) => {
      const wall = inches(row.number('od_in')) / row.number('dr');
      return { madeFor, pipeBore: inches(row.number('od_in')) - 2 * wall };
    });
    return {
      candidate_id_in: barbs.map(({ pipeBore }) => toInches(pipeBore)),
      gap_in: barbs.map((barb) => toInches(fittingGap(barb))),
      verdict: barbs.map(fittingMatch),
    };
  },
  M31: (inputs) => ({
    lift_lb: toPoundsForce(
      tackleLift({
        parts: inputs.number('rope_parts'),
        pull: poundsForce(inputs.number('pull_lb')),
        efficiency: inputs.number('efficiency'),
      }),
    ),
  }),
  M32: (inputs) => {
    const cable = dropCableLength({
      setting: feet(inputs.number('setting_depth_ft')),
      pumpToSplice: feet(inputs.number('pump_to_splice_ft')),
      slack: inputs.number('slack_fraction'),
      topAllowance: feet(inputs.number('top_allowance_ft')),
    });
    return {
      drop_cable_ft: toFeet(cable),
      electrical_path_in_well_ft: toFeet(cable) + inputs.number('pump_to_splice_ft'),
    };
  },
};
