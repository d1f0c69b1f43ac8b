/**
 * Whole wells with known verdicts. The thresholds are printed in the publications that each rule cites (state well
 * codes, NFPA 70) or are common practice without a source; the verdicts follow by comparing the numbers by hand.
 * Figures that a plan only computes (flow at cut-in, shut-off pressure) are set outright, so that the rule is on trial.
 */
import { judge } from '../../../src/model/rules/index.ts';
import type { Values, Verdict } from '../../../src/model/solution.ts';
import { gpm, psi } from '../../../src/model/units.ts';
import { planOf, solvedPlan } from '../../model/rules/fixture.ts';

export interface PlacementInputs {
  readonly well_depth_ft?: number;
  readonly casing_inside_diameter_in?: number;
  readonly casing_bottom_depth_ft?: number;
  readonly inflow_depths_ft?: readonly number[];
  readonly screen_top_depth_ft?: number;
  readonly screen_bottom_depth_ft?: number;
  readonly static_level_depth_ft?: number;
  readonly pumping_level_depth_ft?: number;
  readonly intake_depth_ft?: number;
  readonly intake_to_motor_bottom_ft?: number;
  readonly intake_to_discharge_ft?: number;
  readonly pump_outside_diameter_in?: number;
  readonly pitless_depth_ft?: number;
  readonly frost_depth_ft?: number;
  readonly casing_stickup_in?: number;
  readonly required_stickup_in?: number;
  readonly flood_height_above_grade_ft?: number;
  readonly wellhead_in_pit?: boolean;
  readonly pump_rate_gpm?: number;
  readonly well_yield_gpm?: number;
  readonly low_level_protection?: boolean;
  readonly check_valve_heights_above_discharge_ft?: readonly number[];
  readonly check_valve_arrow?: string;
  readonly check_valve_downstream_of_pitless?: boolean;
  readonly torque_arrestor_height_above_discharge_ft?: number;
  readonly cable_tape_interval_ft?: number;
  readonly splice_heights_above_discharge_ft?: readonly number[];
  readonly rope?: string;
  readonly pipe_rating_psi?: number;
  readonly pump_shutoff_psi?: number;
}

const WORDS: Readonly<Record<string, Verdict>> = { ok: 'ok', info: 'note', warn: 'warning', error: 'danger' };
const TIED: Readonly<Record<string, string>> = { tied_inside: 'casing hook', through_cap: 'through cap' };

/** "62 ft", or nothing where the well does not say. */
const ft = (value: number | undefined) => (value === undefined ? undefined : `${value} ft`);
const inch = (value: number | undefined) => (value === undefined ? undefined : `${value} in`);

/** What the well tells, with a bottom, a demand and a pump where a plan must name some: those rules are not read. */
function planFrom(given: PlacementInputs): unknown {
  const screened = given.screen_top_depth_ft !== undefined;
  return {
    format: 'wellcut-plan/1',
    units: 'us',
    site: {
      frostDepth: ft(given.frost_depth_ft),
      casingHeightRequired: inch(given.required_stickup_in),
      floodHeight: ft(given.flood_height_above_grade_ft),
    },
    well: {
      depth: ft(given.well_depth_ft ?? 250),
      casing: {
        material: 'steel',
        size: given.casing_inside_diameter_in !== undefined && given.casing_inside_diameter_in < 5 ? '4 in' : '6 in',
        insideDiameter: inch(given.casing_inside_diameter_in),
        bottom: ft(given.casing_bottom_depth_ft ?? given.screen_top_depth_ft ?? 60),
        height: inch(given.casing_stickup_in),
      },
      intake: screened
        ? {
            kind: 'screen',
            diameter: '4 in',
            top: ft(given.screen_top_depth_ft),
            bottom: ft(given.screen_bottom_depth_ft),
          }
        : { kind: 'open hole', diameter: '6 in' },
      inflows: given.inflow_depths_ft?.map((depth) => ({ depth: ft(depth) })),
      yield: given.well_yield_gpm === undefined ? undefined : `${given.well_yield_gpm} gpm`,
      inPit: given.wellhead_in_pit,
    },
    water: {
      staticLevel: ft(given.static_level_depth_ft) ?? 'unknown',
      pumping:
        given.pumping_level_depth_ft === undefined
          ? undefined
          : { kind: 'level', level: ft(given.pumping_level_depth_ft) },
    },
    house: { demand: '7 gpm' },
    top: { kind: 'pitless', depth: ft(given.pitless_depth_ft ?? 5) },
    pump: {
      setting: ft(given.intake_depth_ft ?? 140),
      curve: { kind: 'generic', flow: '10 gpm' },
      diameter: inch(given.pump_outside_diameter_in),
      intakeToDischarge: ft(given.intake_to_discharge_ft),
      intakeToMotorBottom: ft(given.intake_to_motor_bottom_ft),
      lowLevelCutOff: given.low_level_protection,
    },
    dropPipe: { material: 'PE', size: '1 in', rating: `${given.pipe_rating_psi ?? 200} psi` },
    string: {
      checkValves: given.check_valve_heights_above_discharge_ft?.map(ft),
      arrow: given.check_valve_arrow,
      valveBetweenTopAndTank: given.check_valve_downstream_of_pitless,
      torqueArrestor: ft(given.torque_arrestor_height_above_discharge_ft),
      ties: ft(given.cable_tape_interval_ft),
      splices: given.splice_heights_above_discharge_ft?.map(ft),
    },
    wire: { size: '12 AWG' },
    rope: given.rope === undefined ? undefined : { material: 'polypropylene', tied: TIED[given.rope] },
  };
}

/** The rate is that of one pump: both ends of what a pump of its rating may be. */
function figuresFrom(given: PlacementInputs): Partial<Values> {
  const rate = given.pump_rate_gpm === undefined ? null : gpm(given.pump_rate_gpm);
  return {
    ...(rate === null ? {} : { operatingFlowAtCutIn: rate, operatingFlowAtCutInMost: rate }),
    ...(given.pump_shutoff_psi === undefined ? {} : { shutOffPressureAtPump: psi(given.pump_shutoff_psi) }),
  };
}

/** What the rules say of the well, for the rules asked about, in the words of the file. */
export function placement(
  given: PlacementInputs,
  rules: readonly string[],
): Readonly<Record<string, string | undefined>> {
  const plan = planOf(JSON.parse(JSON.stringify(planFrom(given))));
  const { verdicts } = judge(solvedPlan(plan, figuresFrom(given)));
  const wordOf = (verdict: Verdict | undefined) => Object.keys(WORDS).find((word) => WORDS[word] === verdict);
  return Object.fromEntries(rules.map((rule) => [rule, wordOf(verdicts[rule])]));
}
