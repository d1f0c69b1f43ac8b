/** What the well gives against what the pump takes. */
import type { CubicMetresPerSecond } from '../si.ts';
import type { Solved } from '../solution.ts';
import { feet, gpm, writeQuantity } from '../units.ts';
import { CUT_OFF_ABOVE_INTAKE, hasCutOff, probeAbove, probeAboveIntake } from './cutOff.ts';
import { change, changeOr, unitAt, words } from './fix.ts';
import { meets } from './grace.ts';
import { floorTo } from './rounding.ts';
import { breaks, defineRule, doesNotApply, holds, missing } from './rule.ts';
import type { Given } from './rule.ts';

/** With less water than this over the intake a low-level cut-off is worth its price. */
export const SUBMERGENCE_WITHOUT_CUT_OFF = feet(20);

/** Flow that a test has proven: the reported yield, else the flow of the pumping test. */
export function provenYield({ facts }: Solved): CubicMetresPerSecond | null {
  const { pumping } = facts.water;
  if (facts.well.yield !== null) return facts.well.yield;
  if (pumping?.kind === 'test') return pumping.flow;
  if (pumping?.kind === 'steps') return pumping.steps.reduce((most, { flow }) => Math.max(most, flow), 0) || null;
  return null;
}

/** What the pump takes at cut-in, when it takes most; a flow-limiting valve holds it to its own flow. */
export function largestPumpFlow({ facts, values }: Solved): CubicMetresPerSecond | null {
  const { flowLimiter } = facts.pump;
  const flow = values.operatingFlowAtCutIn;
  if (typeof flowLimiter === 'number') return flow === null ? flowLimiter : Math.min(flow, flowLimiter);
  return flow;
}

export const pumpWithinYield = defineRule({
  number: 'PR-07',
  part: 'pump',
  judge({ solved, facts }) {
    const flow = largestPumpFlow(solved);
    const gives = provenYield(solved);
    if (gives === null) return missing('yield');
    if (flow === null) return missing('flowAtCutIn');
    const margin = gives - flow;
    if (meets(margin, 'flow')) return holds('givesEnough', { flow, gives, margin });
    const guarded = hasCutOff(solved) || facts.pump.flowLimiter === true;
    return breaks(
      'takesTooMuch',
      guarded ? 'note' : 'warning',
      { flow, gives, margin },
      { measured: flow, limit: gives, margin, quantity: 'flow', depth: facts.pump.setting },
    );
  },
  fixes: ({ solved }, { severity, limit }) => [
    severity === 'note' || limit === null ? words('checkTheGuard', {}) : limitFlow(solved, limit),
  ],
});

/** A valve for the yield where the house gets along with it, else a cut-off, so that the bore's storage can be used. */
function limitFlow({ facts, plan }: Solved, gives: CubicMetresPerSecond) {
  const { demand } = facts.house;
  const unit = unitAt(plan, 'house.demand', facts.units === 'us' ? 'gpm' : 'L/min', 'flow');
  const step = unit === 'gpm' ? gpm(0.5) : 1 / 60000;
  const held = floorTo(gives, step, step * 1e-6);
  if (held <= 0 || (demand !== null && !meets(held - demand, 'flow'))) return addCutOff({ facts });
  const to = writeQuantity(held, 'flow', unit, step);
  return change(facts, [{ path: 'pump.flowLimiter', to }], 'addFlowLimiter', { to });
}

function addCutOff({ facts }: Pick<Given, 'facts'>) {
  return change(facts, [{ path: 'pump.lowLevelCutOff', to: true }], 'addCutOff', {});
}

export const lowLevelCutOff = defineRule({
  number: 'PR-08',
  part: 'pump',
  judge({ solved, facts, values }) {
    const depth = facts.pump.setting;
    const probe = probeAboveIntake(facts);
    if (probe !== null && !meets(probe - CUT_OFF_ABOVE_INTAKE, 'length')) {
      const usual = CUT_OFF_ABOVE_INTAKE;
      const margin = probe - usual;
      const at = { measured: probe, limit: usual, margin, quantity: 'length', depth: depth - probe } as const;
      return breaks('probeTooLow', 'note', { probe, usual, margin }, at);
    }
    if (hasCutOff(solved)) return holds('fitted', {});
    const submergence = values.submergenceDry ?? values.submergence;
    const advisedBelow = SUBMERGENCE_WITHOUT_CUT_OFF;
    if (submergence !== null && !meets(submergence - advisedBelow, 'length')) {
      const margin = submergence - advisedBelow;
      const at = { measured: submergence, limit: advisedBelow, margin, quantity: 'length', depth } as const;
      return submergence > 0
        ? breaks('littleWater', 'note', { submergence }, at)
        : breaks('fallsBelowIntake', 'note', {}, at);
    }
    const flow = largestPumpFlow(solved);
    const gives = provenYield(solved);
    if (flow !== null && gives !== null && !meets(gives - flow, 'flow')) {
      const at = { measured: flow, limit: gives, margin: gives - flow, quantity: 'flow', depth } as const;
      return breaks('takesTooMuch', 'note', { flow, gives }, at);
    }
    if (submergence === null) return missing('levelWhilePumping');
    return holds('enoughWater', { submergence, advisedBelow });
  },
  fixes(given, { variant }) {
    if (variant !== 'probeTooLow') return [addCutOff(given)];
    const { solved, facts } = given;
    const probe = probeAbove(solved, facts.pump.setting);
    const otherwise = words('hangProbeHigher', {});
    return [
      probe === null ? otherwise : changeOr(change(facts, [probe], 'setProbe', { to: String(probe.to) }), otherwise),
    ];
  },
});

export const yieldFromAirLift = defineRule({
  number: 'PR-53',
  part: 'pumpingLevel',
  judge({ solved, facts }) {
    const { pumping } = facts.water;
    const blown = pumping?.kind === 'yield only' || (pumping === null && facts.well.yieldFrom === 'air lift');
    if (!blown) {
      if (pumping === null) return doesNotApply;
      return pumping.kind === 'aquifer' ? holds('fromAquifer', {}) : holds('measured', {});
    }
    const gives = provenYield(solved);
    const depth = facts.water.staticLevel;
    return gives === null
      ? breaks('noDrawdown', 'note', {}, { depth })
      : breaks('noDrawdownButYield', 'note', { gives }, { depth });
  },
  fixes(given) {
    if (hasCutOff(given.solved)) return [words('runTest', {})];
    return [changeOr(addCutOff(given), words('runTestAndGuard', {}))];
  },
});

export const yieldRules = [pumpWithinYield, yieldFromAirLift, lowLevelCutOff] as const;
