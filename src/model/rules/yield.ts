/** What the well gives against what the pump takes. */
import type { CubicMetresPerSecond, Metres } from '../si.ts';
import type { Solved } from '../solution.ts';
import { feet, gpm, writeQuantity } from '../units.ts';
import type { Show } from '../units.ts';
import { CUT_OFF_ABOVE_INTAKE, hasCutOff, probeAbove, probeAboveIntake } from './cutOff.ts';
import { meets } from './grace.ts';
import { change, unitAt, words } from './mend.ts';
import { floorTo } from './rounding.ts';
import { breaks, defineRule, doesNotApply, holds, missing } from './rule.ts';
import type { Breaks, Mend } from './rule.ts';
import { gap } from './say.ts';

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
  broken: 'The pump takes more than the well gives',
  holds: 'The well gives what the pump takes',
  source: '15A N.C. Admin. Code 02C .0109(a); W. Va. Code of State Rules 64-46-7; Wis. Adm. Code NR 812.32',
  why: 'A pump that takes more than flows in empties the well and then draws air.',
  judge(given) {
    const { solved, facts, show } = given;
    const flow = largestPumpFlow(solved);
    const limit = provenYield(solved);
    if (limit === null) return missing('the yield of the well');
    if (flow === null) return missing('the pump’s flow at cut-in, which needs levels, pipes and pump');
    const margin = limit - flow;
    const message = `At cut-in the pump takes ${show.flow(flow)}; the proven yield is ${show.flow(limit)}.`;
    if (meets(margin, 'flow')) return holds(`${show.flow(margin)} to spare`, message);
    const guarded = hasCutOff(solved) || facts.pump.flowLimiter === true;
    return breaks({
      severity: guarded ? 'note' : 'warning',
      measured: flow,
      limit,
      margin,
      quantity: 'flow',
      depth: facts.pump.setting,
      amount: `${show.flow(-margin)} too much`,
      message,
      mend: guarded
        ? words('The cut-off or the flow-limiting valve guards the pump; check its setting.')
        : limitFlow(solved, limit),
    });
  },
});

/** A valve for the yield where the house gets along with it, else a cut-off, so that the bore's storage can be used. */
function limitFlow({ facts, plan }: Solved, limit: CubicMetresPerSecond): Mend {
  const { demand } = facts.house;
  const unit = unitAt(plan, 'house.demand', facts.units === 'us' ? 'gpm' : 'L/min', 'flow');
  const step = unit === 'gpm' ? gpm(0.5) : 1 / 60000;
  const held = floorTo(limit, step, step * 1e-6);
  if (held <= 0 || (demand !== null && !meets(held - demand, 'flow'))) {
    return change(facts, [{ path: 'pump.lowLevelCutOff', to: true }], 'Add a low-level cut-off');
  }
  const to = writeQuantity(held, 'flow', unit, step);
  return change(facts, [{ path: 'pump.flowLimiter', to }], `Add a ${to} flow-limiting valve`);
}

export const lowLevelCutOff = defineRule({
  number: 'PR-08',
  part: 'pump',
  broken: 'Nothing stops the pump at low water',
  holds: 'The pump is guarded against low water',
  source: 'common practice, no source',
  why: 'A pump that runs dry can be ruined in minutes.',
  judge({ solved, facts, values, show }) {
    const probe = probeAboveIntake(facts);
    if (probe !== null && !meets(probe - CUT_OFF_ABOVE_INTAKE, 'length')) return probeTooLow(solved, probe, show);
    if (hasCutOff(solved))
      return holds('cut-off fitted', 'A low-level cut-off stops the pump before the intake runs dry.');
    const submergence = values.submergenceDry ?? values.submergence;
    const flow = largestPumpFlow(solved);
    const limit = provenYield(solved);
    const over = flow !== null && limit !== null && !meets(limit - flow, 'flow');
    const shallow = submergence !== null && !meets(submergence - SUBMERGENCE_WITHOUT_CUT_OFF, 'length');
    if (!over && !shallow) {
      if (submergence === null) return missing('the pumping level');
      return holds(
        `${gap(submergence, show)} of water`,
        `Pumping leaves ${gap(submergence, show)} over the intake; below ${show.depth(SUBMERGENCE_WITHOUT_CUT_OFF)} a cut-off is advised.`,
      );
    }
    return breaks({
      severity: 'note',
      ...(shallow && submergence !== null
        ? {
            measured: submergence,
            limit: SUBMERGENCE_WITHOUT_CUT_OFF,
            margin: submergence - SUBMERGENCE_WITHOUT_CUT_OFF,
            quantity: 'length' as const,
          }
        : {
            measured: flow,
            limit,
            margin: flow !== null && limit !== null ? limit - flow : null,
            quantity: 'flow' as const,
          }),
      depth: facts.pump.setting,
      amount: 'no cut-off',
      message:
        shallow && submergence !== null
          ? submergence > 0
            ? `Only ${gap(submergence, show)} of water covers the intake, and no low-level cut-off is planned.`
            : 'The water falls below the intake, and no low-level cut-off is planned.'
          : `The pump takes ${show.flow(flow ?? 0)} of ${show.flow(limit ?? 0)}, and no low-level cut-off is planned.`,
      mend: change(facts, [{ path: 'pump.lowLevelCutOff', to: true }], 'Add a low-level cut-off'),
    });
  },
});

function probeTooLow(solved: Solved, probe: Metres, show: Show): Breaks {
  const { facts } = solved;
  const margin = probe - CUT_OFF_ABOVE_INTAKE;
  const to = probeAbove(solved, facts.pump.setting);
  const otherwise = 'Hang the probe higher than the intake.';
  return breaks({
    severity: 'note',
    measured: probe,
    limit: CUT_OFF_ABOVE_INTAKE,
    margin,
    quantity: 'length',
    depth: facts.pump.setting - probe,
    title: 'The low-level cut-off hangs too low',
    amount: `${gap(margin, show)} too low`,
    message: `The cut-off acts ${gap(probe, show)} ${probe < 0 ? 'below' : 'above'} the intake; ${show.depth(CUT_OFF_ABOVE_INTAKE)} above it is usual.`,
    mend: to === null ? words(otherwise) : change(facts, [to], `Set it to ${String(to.to)}`, otherwise),
  });
}

export const yieldFromAirLift = defineRule({
  number: 'PR-53',
  part: 'pumpingLevel',
  broken: 'The pumping level is unknown',
  holds: 'The drawdown comes from a test',
  source: 'common practice, no source',
  why: 'Blowing the well with air tells how much it gives, not how far the water falls.',
  judge({ solved, facts, show }) {
    const { pumping } = facts.water;
    const blown = pumping?.kind === 'yield only' || (pumping === null && facts.well.yieldFrom === 'air lift');
    if (!blown)
      return pumping === null
        ? doesNotApply
        : pumping.kind === 'aquifer'
          ? holds('from the aquifer', 'The drawdown is computed from what was told of the aquifer.')
          : holds('measured', 'The driller measured how far the water falls while pumping.');
    const given = provenYield(solved);
    return breaks({
      severity: 'note',
      depth: facts.water.staticLevel,
      amount: 'not measured',
      message: `The report gives a yield${given === null ? '' : ` of ${show.flow(given)}`} and no drawdown: the water’s depth while pumping is unknown.`,
      mend: hasCutOff(solved)
        ? words('Run a pumping test, and write flow, level and hours down.')
        : change(
            facts,
            [{ path: 'pump.lowLevelCutOff', to: true }],
            'Add a low-level cut-off',
            'Run a pumping test; until then a low-level cut-off is advised.',
          ),
    });
  },
});

export const yieldRules = [pumpWithinYield, yieldFromAirLift, lowLevelCutOff];
