/** What the explanations read of a solution: the same things that the figures were worked out from. */
import type { Facts } from '../facts.ts';
import { WATER_WEIGHT } from '../formulas/hangLoad.ts';
import { STANDARD_GRAVITY, WATER_RANGE } from '../formulas/water.ts';
import type { Metres } from '../si.ts';
import type { Solution, Solved, Values } from '../solution.ts';
import { suspensionDepth } from '../string/topDepths.ts';
import { systemOf, type System } from '../figures/curves.ts';
import { show } from '../units.ts';
import type { Show } from '../units.ts';
import type { UnitSystem } from './measure.ts';
import { term } from './sum.ts';
import type { Term } from './sum.ts';

export interface Context {
  readonly solution: Solution | Solved;
  readonly facts: Facts;
  readonly values: Values;
  readonly units: UnitSystem;
  readonly show: Show;
  readonly system: System;
  /** Depth of the point that everything hangs from. */
  readonly suspension: Metres;
  /** As the formulas take it: not negative. */
  readonly hangingLength: Metres;
  readonly waterInRange: boolean;
  /** Weight of the water at its temperature [N/m³]. */
  readonly waterWeight: number;
}

export function contextOf(solution: Solution | Solved, units: UnitSystem): Context {
  const { facts, values } = solution;
  const temperature = facts.site.waterTemperature;
  const suspension = suspensionDepth(facts);
  const system = systemOf(facts, suspension);
  return {
    solution,
    facts,
    values,
    units,
    show: show(units),
    system,
    suspension,
    hangingLength: system.dropPipeLength,
    waterInRange: temperature >= WATER_RANGE.from && temperature <= WATER_RANGE.to,
    waterWeight: system.water.density * STANDARD_GRAVITY,
  };
}

export const gravityTerm: Term = term('g', 'standard gravity', STANDARD_GRAVITY, 'gravity');

export function waterWeightTerm({ waterWeight, facts, show: say }: Context): Term {
  const temperature = say.temperature(facts.site.waterTemperature);
  return term('γ', `weight of water at ${temperature}, by volume`, waterWeight, 'weightPerVolume');
}

/** 62.4 lb/ft³, which the loads of hanging strings are figured with. */
export const handbookWaterTerm: Term = term('γ', 'weight of fresh water by volume', WATER_WEIGHT, 'weightPerVolume');
