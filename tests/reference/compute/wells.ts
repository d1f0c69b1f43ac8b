/** How each kind of check of wells.json is computed by the model. */
import {
  fitStraightLine,
  fitTheis,
  thiemTransmissivity,
  transmissivityByRule,
  transmissivityFromSlope,
  transmissivityFromSpecificCapacity,
} from '../../../src/model/formulas/aquiferTest.ts';
import { boreStorageDrawdown, schaferTime, storageFadeTime } from '../../../src/model/formulas/boreStorage.ts';
import { chlorineGranules, chlorineProduct, chlorineStrength } from '../../../src/model/formulas/disinfection.ts';
import { drawdownAt, drawdownWithLoss, specificCapacity, wellLossShare } from '../../../src/model/formulas/drawdown.ts';
import {
  flowForMotorVelocity,
  screenEntranceVelocity,
  velocityPastMotor,
} from '../../../src/model/formulas/flowPast.ts';
import { residualDrawdown, steppedDrawdown } from '../../../src/model/formulas/recovery.ts';
import {
  confinedEquivalent,
  cooperJacobDrawdown,
  radiusOfZeroDrawdown,
  theisArgument,
  theisDrawdown,
  unconfinedDrawdown,
  wellFunction,
} from '../../../src/model/formulas/theis.ts';
import { waterDensity } from '../../../src/model/formulas/water.ts';
import {
  boreVolumePerMetre,
  refillTime,
  timeToBreakSuction,
  usableStorage,
} from '../../../src/model/formulas/wellStorage.ts';
import { feet, gallons, gpm, inches, poundsMass, toFeet, toGallons, toGpm } from '../../../src/model/units.ts';
import reference from '../wells.json' with { type: 'json' };

const perDay = (n: number) => n / 86400;
const toPerDay = (n: number) => n * 86400;
const minutes = (n: number) => n * 60;
const gallonPerDayPerFoot = gallons(1) / 86400 / feet(1);
const fluidOunces = (n: number) => gallons(n / 128);
const toFluidOunces = (volume: number) => toGallons(volume) * 128;
const milligramsPerLitre = (n: number) => n / 1000;

export type WellInputs = Record<string, number> & { readonly [list: string]: unknown };

/** Q, T, S and r of a check in m³/d, m²/d and m. */
function aquifer({ Q_m3_per_d: Q, T_m2_per_d: T, S, r_m: r }: WellInputs) {
  return { flow: perDay(Q!), transmissivity: perDay(T!), storativity: S!, radius: r! };
}

function readingsOf(name: unknown, from = 0, to = Infinity) {
  const test = reference.readings.find(({ id }) => id === name)!;
  const readings = test.time_drawdown_min_m
    .filter(([time]) => time! >= from && time! <= to)
    .map(([time, drawdown]) => ({ time: minutes(time!), drawdown: drawdown! }));
  return { flow: perDay(test.flow_m3_per_d), radius: test.radius_m, readings };
}

function bleachFor(
  waterVolume: number,
  { target_mg_per_L: target, available_chlorine_percent: strength }: WellInputs,
): number {
  return chlorineProduct({ waterVolume, target: milligramsPerLitre(target!), strength: strength! / 100 });
}

/** Each kind of check computed from its inputs, in the units its names carry. */
export const wells: Readonly<Record<string, (inputs: WellInputs) => Record<string, number>>> = {
  well_function: ({ u }) => ({ W: wellFunction(u!) }),
  cooper_jacob_error: ({ u }) => {
    const at = { flow: 1, transmissivity: 1, storativity: 4 * u!, radius: 1, time: 1 };
    return { error_percent: 100 * (cooperJacobDrawdown(at) / theisDrawdown(at) - 1) };
  },
  theis: (inputs) => ({ s_m: theisDrawdown({ ...aquifer(inputs), time: minutes(inputs.t_min!) }) }),
  theis_us: ({ Q_gpm, T_gpd_per_ft, S, r_ft, t_min }) => {
    const at = {
      flow: gpm(Q_gpm!),
      transmissivity: T_gpd_per_ft! * gallonPerDayPerFoot,
      storativity: S!,
      radius: feet(r_ft!),
      time: minutes(t_min!),
    };
    return { u: theisArgument(at), W: wellFunction(theisArgument(at)), s_ft: toFeet(theisDrawdown(at)) };
  },
  jacob_line: ({ dataset, t_from_min, t_to_min }) => {
    const line = fitStraightLine(readingsOf(dataset, t_from_min!, t_to_min!));
    return {
      slope_m_per_log_cycle: line.slopePerCycle,
      t0_min: line.zeroTime / 60,
      T_m2_per_d: toPerDay(line.transmissivity),
      S: line.storativity,
    };
  },
  theis_fit: ({ datasets }) => {
    const [{ dataset }] = datasets as unknown as [{ dataset: string }];
    const fit = fitTheis(readingsOf(dataset));
    return { T_m2_per_d: toPerDay(fit.transmissivity), S: fit.storativity, rmse_m: fit.error };
  },
  thiem: ({ Q_m3_per_d, r1_m, r2_m, s1_m, s2_m }) => ({
    T_m2_per_d: toPerDay(
      thiemTransmissivity({
        flow: perDay(Q_m3_per_d!),
        near: { radius: r1_m!, drawdown: s1_m! },
        far: { radius: r2_m!, drawdown: s2_m! },
      }),
    ),
  }),
  stepped_theis: (inputs) => {
    const steps = (inputs.steps as unknown as { t_start_min: number; Q_m3_per_d: number }[]).map(
      ({ t_start_min, Q_m3_per_d }) => ({ from: minutes(t_start_min), flow: perDay(Q_m3_per_d) }),
    );
    const { transmissivity, storativity, radius } = aquifer({ ...inputs, Q_m3_per_d: 0 } as WellInputs);
    return { s_m: steppedDrawdown({ transmissivity, storativity, radius }, steps, minutes(inputs.t_min!)) };
  },
  recovery: (inputs) => {
    const pumped = minutes(inputs.t_pump_min!);
    const well = { ...aquifer(inputs), pumped, sinceStop: minutes(inputs.t_since_stop_min!) };
    const residual = residualDrawdown(well);
    return { residual_m: residual, buildup_m: theisDrawdown({ ...well, time: pumped }) - residual };
  },
  recovery_line: ({ Q_m3_per_d, ds_residual_m_per_log_cycle }) => ({
    T_m2_per_d: toPerDay(transmissivityFromSlope(perDay(Q_m3_per_d!), ds_residual_m_per_log_cycle!)),
  }),
  wellbore_storage: ({ Q_m3_per_d, T_m2_per_d, S, rw_m, rc_m, t_d }) => {
    const at = { flow: perDay(Q_m3_per_d!), transmissivity: perDay(T_m2_per_d!), storativity: S!, time: t_d! * 86400 };
    return {
      s_m: boreStorageDrawdown({ ...at, wellRadius: rw_m!, casingRadius: rc_m! }),
      theis_s_m: theisDrawdown({ ...at, radius: rw_m! }),
    };
  },
  storage_time: ({ rc_m, T_m2_per_d }) => ({
    t25_min: storageFadeTime(rc_m!, perDay(T_m2_per_d!), 25) / 60,
    t250_min: storageFadeTime(rc_m!, perDay(T_m2_per_d!)) / 60,
  }),
  schafer_time: ({ casing_inside_diameter_in, drop_pipe_outside_diameter_in, specific_capacity_gpm_per_ft }) => ({
    t_min:
      schaferTime({
        casingInsideDiameter: inches(casing_inside_diameter_in!),
        dropPipeOutsideDiameter: inches(drop_pipe_outside_diameter_in!),
        specificCapacity: gpm(specific_capacity_gpm_per_ft!) / feet(1),
      }) / 60,
  }),
  well_loss: ({ B_ft_per_gpm, C_ft_per_gpm2, Q_gpm }) => {
    const loss = { aquiferLoss: feet(B_ft_per_gpm!) / gpm(1), wellLoss: feet(C_ft_per_gpm2!) / gpm(1) ** 2 };
    const flow = gpm(Q_gpm!);
    const drawdown = toFeet(drawdownWithLoss(loss, flow));
    const share = wellLossShare(loss, flow);
    return {
      s_ft: drawdown,
      aquifer_loss_ft: drawdown * (1 - share),
      well_loss_ft: drawdown * share,
      well_loss_share_percent: 100 * share,
    };
  },
  specific_capacity: ({ Q_test_gpm, s_test_ft, Q_new_gpm }) => {
    const test = { flow: gpm(Q_test_gpm!), drawdown: feet(s_test_ft!) };
    const capacity = { sc_gpm_per_ft: toGpm(specificCapacity(test)) * feet(1) };
    if (Q_new_gpm === undefined) return capacity;
    return {
      ...capacity,
      s_new_ft: toFeet(drawdownAt({ kind: 'test', ...test, after: null }, gpm(Q_new_gpm), null) ?? NaN),
    };
  },
  t_from_sc_rule: ({ specific_capacity_gpm_per_ft }) => {
    const capacity = gpm(specific_capacity_gpm_per_ft!) / feet(1);
    return {
      T_confined_gpd_per_ft: transmissivityByRule(capacity, 'confined') / gallonPerDayPerFoot,
      T_unconfined_gpd_per_ft: transmissivityByRule(capacity, 'unconfined') / gallonPerDayPerFoot,
    };
  },
  t_from_sc: ({ Q_gpm, s_ft, t_min, rw_ft, S }) => {
    const transmissivity =
      transmissivityFromSpecificCapacity({
        flow: gpm(Q_gpm!),
        drawdown: feet(s_ft!),
        time: minutes(t_min!),
        radius: feet(rw_ft!),
        storativity: S!,
      }) ?? NaN;
    return { T_m2_per_d: toPerDay(transmissivity), T_gpd_per_ft: transmissivity / gallonPerDayPerFoot };
  },
  jacob_unconfined: ({ b_m, s_m }) => {
    const corrected = confinedEquivalent(s_m!, b_m!);
    return { s_corrected_m: corrected, s_back_m: unconfinedDrawdown(corrected, b_m!) };
  },
  radius_zero: ({ T_m2_per_d, t_d, S }) => ({
    r0_m: radiusOfZeroDrawdown({ transmissivity: perDay(T_m2_per_d!), time: t_d! * 86400, storativity: S! }),
  }),
  gallons_per_foot: ({ diameter_in }) => ({
    gal_per_ft: toGallons(boreVolumePerMetre(inches(diameter_in!)) * feet(1)),
  }),
  low_yield: (inputs) => {
    const [staticLevel, intakeDepth] = [feet(inputs.static_level_depth_ft!), feet(inputs.intake_depth_ft!)];
    const insideRadius = inches(inputs.casing_inside_diameter_in!) / 2;
    const bore = [{ top: 0, bottom: feet(300), insideRadius }];
    const margin = feet(inputs.safety_submergence_ft!);
    const storage = usableStorage({ bore, staticLevel, intakeDepth, dropPipeOutsideDiameter: 0, margin });
    const wellYield = gpm(inputs.well_yield_gpm!);
    const run = timeToBreakSuction({ storage, pumpFlow: gpm(inputs.pump_rate_gpm!), wellYield }) ?? NaN;
    return { usable_gal: toGallons(storage), run_min: run / 60, refill_min: refillTime(storage, wellYield) / 60 };
  },
  bleach: (inputs) => ({ bleach_fl_oz: toFluidOunces(bleachFor(gallons(inputs.water_gal!), inputs)) }),
  granules: ({ water_gal, target_mg_per_L, available_chlorine_fraction }) => ({
    granules_oz:
      (16 / poundsMass(1)) *
      chlorineGranules({
        waterVolume: gallons(water_gal!),
        target: milligramsPerLitre(target_mg_per_L!),
        strength: available_chlorine_fraction!,
      }),
  }),
  bleach_well: (inputs) => {
    const water = boreVolumePerMetre(inches(inputs.casing_inside_diameter_in!)) * feet(inputs.water_column_ft!);
    return { water_gal: toGallons(water), bleach_fl_oz: toFluidOunces(bleachFor(water, inputs)) };
  },
  bleach_well_per_foot: (inputs) => {
    const water = boreVolumePerMetre(inches(inputs.casing_inside_diameter_in!)) * feet(1) * inputs.volume_factor!;
    return { bleach_L_per_ft: bleachFor(water, inputs) * 1000 };
  },
  chlorine_strength: (inputs) => {
    const strength = inputs.available_chlorine_percent! / 100;
    const strengthIn = (bleachVolume: number, waterVolume: number) => ({
      strength_mg_per_L: 1000 * chlorineStrength({ bleachVolume, waterVolume, strength }),
    });
    if (inputs.water_gal !== undefined) return strengthIn(fluidOunces(inputs.bleach_fl_oz!), gallons(inputs.water_gal));
    const cups = inputs.bleach_cups_per_ft! * inputs.water_column_ft!;
    const water = boreVolumePerMetre(inches(inputs.diameter_in!)) * feet(inputs.water_column_ft!);
    return { bleach_cups: cups, ...strengthIn(fluidOunces(8 * cups), water) };
  },
  motor_velocity: ({ Q_gpm, casing_inside_diameter_in, motor_diameter_in }) => ({
    v_ft_per_s: toFeet(
      velocityPastMotor({
        flow: gpm(Q_gpm!),
        insideDiameter: inches(casing_inside_diameter_in!),
        motorDiameter: inches(motor_diameter_in!),
      }),
    ),
  }),
  motor_velocity_inverse: ({ v_ft_per_s, casing_inside_diameter_in, motor_diameter_in }) => ({
    Q_gpm: toGpm(
      flowForMotorVelocity({
        velocity: feet(v_ft_per_s!),
        insideDiameter: inches(casing_inside_diameter_in!),
        motorDiameter: inches(motor_diameter_in!),
      }),
    ),
  }),
  screen_velocity: ({ Q_gpm, diameter_in, length_ft, open_fraction }) => ({
    v_ft_per_s: toFeet(
      screenEntranceVelocity({
        flow: gpm(Q_gpm!),
        diameter: inches(diameter_in!),
        length: feet(length_ft!),
        openArea: open_fraction!,
      }),
    ),
  }),
  water_weight: ({ pipe_inside_diameter_in, length_ft }) => {
    const perFoot = (boreVolumePerMetre(inches(pipe_inside_diameter_in!)) * feet(1) * waterDensity(10)) / poundsMass(1);
    return { lb_per_ft: perFoot, water_lb: perFoot * length_ft! };
  },
};
