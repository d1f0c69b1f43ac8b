/** How each check of frost.json is computed by the model. */
import {
  berggrenDepth,
  berggrenLambda,
  berggrenLambdaExplicit,
  berggrenNumbers,
  stefanDepth,
} from '../../../src/model/formulas/berggren.ts';
import {
  fahrenheitDays,
  monthlyFreezingIndex,
  seasonalFreezingIndex,
  sineAmplitude,
  sineFreezingIndex,
  sineSeason,
} from '../../../src/model/formulas/freezingIndex.ts';
import { empiricalFrostDepth, frostDepthEstimate, judgeFrost } from '../../../src/model/formulas/frost.ts';
import { kerstenFrozen, kerstenUnfrozen, latentHeat, meanHeatCapacity } from '../../../src/model/formulas/soilHeat.ts';
import { findSoil } from '../../../src/model/tables/soils.ts';
import type { Soil } from '../../../src/model/tables/soils.ts';
import { feet, inches, toFeet, toInches } from '../../../src/model/units.ts';
import type { Computations, Inputs } from '../checkValues.ts';

// The manuals print in pounds, feet, Btu, hours and degrees Fahrenheit.
const DENSITY = 16.01846; // kg/m³ of 1 lb/ft³
const CONDUCTIVITY = 1.730735; // W/(m K) of 1 Btu/(h ft °F)
const BTU = 1055.056; // J
const CUBIC_FOOT = feet(1) ** 3;
const HEAT_PER_VOLUME = BTU / CUBIC_FOOT; // J/m³ of 1 Btu/ft³
const HEAT_CAPACITY = (1.8 * BTU) / CUBIC_FOOT; // J/(m³ K) of 1 Btu/(ft³ °F)
const celsius = (fahrenheit: number) => (fahrenheit - 32) / 1.8;

const wet = (inputs: Inputs) =>
  [DENSITY * inputs.number('dry_density_lb_ft3'), inputs.number('water_content_pct') / 100] as const;

function kersten(inputs: Inputs, dryDensity: number) {
  const soil = {
    grain: inputs.text('soil_class') === 'fine' ? ('fine' as const) : ('coarse' as const),
    dryDensity,
    water: inputs.number('water_content_pct') / 100,
  };
  return [kerstenUnfrozen(soil), kerstenFrozen(soil)] as const;
}

const printedKersten = (inputs: Inputs) => {
  const [unfrozen, frozen] = kersten(inputs, DENSITY * inputs.number('dry_density_lb_ft3'));
  return { k_unfrozen_Btu_hr_ft_F: unfrozen / CONDUCTIVITY, k_frozen_Btu_hr_ft_F: frozen / CONDUCTIVITY };
};

/** A soil given by its density, water and mean conductivity. */
function soilOf(inputs: Inputs): Soil {
  const [dryDensity, water] = wet(inputs);
  const conductivity = CONDUCTIVITY * inputs.number('k_mean_Btu_hr_ft_F');
  return {
    id: 'example',
    label: 'example',
    dryDensity,
    water,
    frozenConductivity: conductivity,
    unfrozenConductivity: conductivity,
    latentHeat: latentHeat(dryDensity, water),
    heatCapacity: meanHeatCapacity(dryDensity, water),
    confidence: 'usual',
  };
}

const seasonOf = (inputs: Inputs, index: string) => ({
  surfaceIndex: fahrenheitDays(inputs.number(index)),
  meanAnnual: celsius(inputs.number('mean_annual_temp_F')),
  season: inputs.number('season_length_days'),
});

export const frost: Computations = {
  F01: (inputs) => {
    const heat = latentHeat(...wet(inputs));
    return { latent_heat_Btu_ft3: heat / HEAT_PER_VOLUME, latent_heat_MJ_m3: heat / 1e6 };
  },
  F02: (inputs) => ({ heat_capacity_mean_Btu_ft3_F: meanHeatCapacity(...wet(inputs)) / HEAT_CAPACITY }),
  F03: printedKersten,
  F04: printedKersten,
  F05: (inputs) => {
    const [unfrozen, frozen] = kersten(inputs, 1000 * inputs.number('dry_density_g_cm3'));
    return { k_unfrozen_W_mK: unfrozen, k_frozen_W_mK: frozen };
  },
  F06: (inputs) => {
    const numbers = {
      thermalRatio: inputs.number('thermal_ratio_alpha'),
      fusion: inputs.number('fusion_parameter_mu'),
    };
    return { lambda: berggrenLambda(numbers), lambda_explicit: berggrenLambdaExplicit(numbers) };
  },
  F07: (inputs) => ({
    lambda_rows: inputs
      .list<number>('alpha_list')
      .map((thermalRatio) => inputs.list<number>('mu_list').map((fusion) => berggrenLambda({ thermalRatio, fusion }))),
  }),
  F08: (inputs) => {
    const depth = berggrenDepth({ ...seasonOf(inputs, 'surface_freezing_index_F_days'), soil: soilOf(inputs) });
    return { depth_ft: toFeet(depth), published_depth_ft: toFeet(depth) };
  },
  F09: (inputs) => ({
    depth_ft: toFeet(
      stefanDepth({
        surfaceIndex: fahrenheitDays(inputs.number('surface_freezing_index_F_days')),
        conductivity: CONDUCTIVITY * inputs.number('k_mean_Btu_hr_ft_F'),
        latentHeat: HEAT_PER_VOLUME * inputs.number('latent_heat_Btu_ft3'),
      }),
    ),
  }),
  F10: (inputs) => ({
    depth_m:
      inputs.number('lambda') *
      stefanDepth({
        surfaceIndex: inputs.number('surface_freezing_index_C_days'),
        conductivity: inputs.number('k_mean_W_mK'),
        latentHeat: inputs.number('latent_heat_J_m3'),
      }),
  }),
  F11: (inputs) => ({ freezing_index_C_days: fahrenheitDays(inputs.number('freezing_index_F_days')) }),
  F12: (inputs) => ({
    // What one more day in the middle of a cold spell takes off the index.
    fdd: inputs.list<number>('daily_mean_F').map((mean) => {
      const spell = Array.from({ length: 10 }, () => celsius(12));
      return (
        1.8 * (seasonalFreezingIndex([...spell, ...spell]) - seasonalFreezingIndex([...spell, celsius(mean), ...spell]))
      );
    }),
  }),
  F13: (inputs) => {
    const days = inputs
      .list<[number, number]>('daily_mean_F_runs')
      .flatMap(([mean, count]) => Array.from({ length: count }, () => celsius(mean)));
    const plain = days.reduce((sum, mean) => sum + Math.max(0, -mean), 0);
    return { afi_F_days: 1.8 * seasonalFreezingIndex(days), plain_sum_of_freezing_days_F_days: 1.8 * plain };
  },
  F14: (inputs) => {
    const year = {
      meanAnnual: celsius(inputs.number('mean_annual_temp_F')),
      amplitude: inputs.number('amplitude_F') / 1.8,
    };
    return { afi_F_days: 1.8 * sineFreezingIndex(year), season_length_days: sineSeason(year) };
  },
  F15: (inputs) => {
    const meanAnnual = celsius(inputs.number('mean_annual_temp_F'));
    const amplitude = sineAmplitude({ index: fahrenheitDays(inputs.number('afi_F_days')), meanAnnual });
    return { amplitude_F: 1.8 * amplitude, season_length_days: sineSeason({ meanAnnual, amplitude }) };
  },
  F16: (inputs) => ({
    afi_monthly_sum_F_days: 1.8 * monthlyFreezingIndex(inputs.list<number>('monthly_mean_F').map(celsius)),
  }),
  F17: (inputs) => {
    const index = fahrenheitDays(inputs.number('afi_F_days'));
    const meanAnnual = celsius(inputs.number('mean_annual_temp_F'));
    const soil = findSoil(inputs.text('soil'))!;
    const season = sineSeason({ meanAnnual, amplitude: sineAmplitude({ index, meanAnnual }) });
    const numbers = berggrenNumbers({ surfaceIndex: inputs.number('n_factor') * index, meanAnnual, season }, soil);
    const estimate = frostDepthEstimate({
      index,
      meanAnnual,
      season: null,
      soil: soil.id,
      surfaceFactor: inputs.number('n_factor'),
    });
    return {
      depth_in: 'depth' in estimate ? toInches(estimate.depth) : null,
      lambda: berggrenLambda(numbers),
      alpha: numbers.thermalRatio,
      mu: numbers.fusion,
    };
  },
  F18: (inputs) => {
    const season = seasonOf(inputs, 'afi_F_days');
    const surfaceFactor = inputs.number('n_factor');
    const soil = inputs.text('soil');
    const estimate = frostDepthEstimate({ ...season, index: season.surfaceIndex, soil, surfaceFactor });
    const surface = { ...season, surfaceIndex: surfaceFactor * season.surfaceIndex };
    return {
      depth_in: 'depth' in estimate ? toInches(estimate.depth) : null,
      lambda: berggrenLambda(berggrenNumbers(surface, findSoil(soil)!)),
    };
  },
  F21: (inputs) => ({
    depth_in: toInches(empiricalFrostDepth(fahrenheitDays(inputs.number('freezing_index_F_days')))),
    depth_mm: 1000 * empiricalFrostDepth(inputs.number('freezing_index_C_days')),
  }),
  F27: (inputs) => {
    const judged = inputs.list<Record<string, number | null>>('cases').map((row) =>
      judgeFrost({
        pipeTop: inches(row.top_of_pipe_in!),
        margin: inches(row.margin_in!),
        entered: row.code_frost_depth_in == null ? null : inches(row.code_frost_depth_in),
        estimate: row.estimated_frost_depth_in == null ? null : inches(row.estimated_frost_depth_in),
      }),
    );
    return {
      verdicts: judged.map(({ verdict }) => verdict),
      note_estimate_deeper_than_code: judged.map(({ estimateDeeper }) => estimateDeeper),
    };
  },
  F28: (inputs) => ({
    results: inputs.list<Record<string, number>>('cases').map((changed) => {
      const base = inputs.inside('base');
      const figure = (name: string) => changed[name] ?? base.number(name);
      const usual = findSoil('silt loam')!;
      const water = figure('water_content_pct') / 100;
      const estimate = frostDepthEstimate({
        index: fahrenheitDays(figure('afi_F_days')),
        meanAnnual: celsius(figure('mean_annual_temp_F')),
        season: null,
        surfaceFactor: figure('n_factor'),
        soil: { ...usual, water, latentHeat: latentHeat(usual.dryDensity, water) },
      });
      return 'depth' in estimate ? estimate.depth : estimate.reason;
    }),
  }),
};
