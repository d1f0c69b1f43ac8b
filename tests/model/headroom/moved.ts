/** A plan with one quantity at another value, put together anew from its text, apart from how the model does it. */
import type { Facts } from '../../../src/model/facts.ts';
import type { HeadroomOf } from '../../../src/model/headroom/told.ts';
import type { Plan } from '../../../src/model/plan/schema.ts';
import type { Solution } from '../../../src/model/solution.ts';

type Loose = Record<string, Record<string, unknown> | undefined>;

const METRES: Readonly<Record<string, number>> = { ft: 0.3048, m: 1, in: 0.0254, cm: 0.01, mm: 0.001 };

/** "62 ft" and 0.5 m more. */
function longer(text: unknown, by: number): unknown {
  const [, number, unit = ''] = /^(-?[\d.]+) (ft|m|in|cm|mm)$/.exec(String(text)) ?? [];
  return number === undefined ? text : `${Number(number) + by / METRES[unit]!} ${unit}`;
}

/** The same drawdown at less flow. */
function lowerTest(typed: Record<string, unknown> | undefined, { water: { pumping } }: Facts, to: number): void {
  if (typed === undefined) return;
  if (pumping?.kind === 'test') typed['flow'] = `${to * 1000} L/s`;
  if (pumping?.kind === 'steps') {
    const share = to / Math.max(...pumping.steps.map(({ flow }) => flow));
    typed['steps'] = (typed['steps'] as object[]).map((step, i) => ({
      ...step,
      flow: `${pumping.steps[i]!.flow * share * 1000} L/s`,
    }));
  }
}

/** Every way in which it may come to be so: a yield that a test alone tells is said to be less, or its test gives less. */
export function waysTo(plan: Plan, solution: Solution, of: HeadroomOf, to: number): readonly Plan[] {
  const moved = movedTo(plan, solution, of, to);
  if (of !== 'yield' || solution.facts.well.yield !== null) return [moved];
  const made = structuredClone(plan) as unknown as Loose;
  lowerTest(made['water']?.['pumping'] as Record<string, unknown> | undefined, solution.facts, to);
  return [moved, made as unknown as Plan];
}

export function movedTo(plan: Plan, { facts, levels, assumed }: Solution, of: HeadroomOf, to: number): Plan {
  const made = structuredClone(plan) as unknown as Loose;
  const section = (name: string): Record<string, unknown> => (made[name] ??= {});
  const { house, well } = facts;
  // What was assumed and follows from it stays where it is.
  for (const { path, value } of assumed) {
    if (path === 'pump.setting') section('pump')['setting'] = value;
    if (path === 'top.depth' && plan.top?.kind !== undefined) section('top')['depth'] = value;
  }
  switch (of) {
    case 'staticLevel': {
      const by = to - (levels.static ?? 0);
      const water = section('water');
      for (const name of ['staticLevel', 'staticHighest', 'staticLowest']) {
        if (water[name] !== undefined) water[name] = longer(water[name], by);
      }
      const pumping = water['pumping'] as Record<string, unknown> | undefined;
      if (pumping?.['kind'] === 'level') pumping['level'] = longer(pumping['level'], by);
      break;
    }
    case 'yield':
      section('well')['yield'] = `${to * 1000} L/s`;
      break;
    case 'demand': {
      const pumping = section('water')['pumping'] as Record<string, unknown> | undefined;
      // What was measured once was measured at what the house wanted then.
      if (pumping?.['kind'] === 'level') pumping['flow'] ??= `${(house.demand ?? 0) * 1000} L/s`;
      section('house')['demand'] = `${to * 1000} L/s`;
      break;
    }
    case 'switch':
      section('house')['precharge'] = `${house.precharge / 1000} kPa`;
      section('house')['cutIn'] = `${(house.cutIn + to - house.cutOut) / 1000} kPa`;
      section('house')['cutOut'] = `${to / 1000} kPa`;
      break;
    case 'pumpSetting':
      section('pump')['setting'] = `${to + (facts.depthsFrom === 'casing top' ? well.casingHeight : 0)} m`;
      break;
    case 'frostDepth':
      section('site')['frostDepth'] = `${to} m`;
      break;
  }
  return made as unknown as Plan;
}
