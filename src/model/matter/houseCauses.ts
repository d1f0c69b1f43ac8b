/** Tank, switch and house: what is asked of the pump, how long it may run, and what lets the water go again. */
import { valueAt, withValue } from '../plan/editPlan.ts';
import { isAssumed } from '../rules/assumed.ts';
import { exceeds } from '../rules/grace.ts';
import { ratedFlow, usualPrecharge } from '../rules/tankCycle.ts';
import { createSolver } from '../solve.ts';
import type { CubicMetres, Seconds } from '../si.ts';
import type { Solution } from '../solution.ts';
import { psi, writeQuantity } from '../units.ts';
import { whenSaid } from './evidence.ts';
import { broken, type CauseId, type Judge } from './cause.ts';
import { own, type Own } from './own.ts';

const SWITCH = ['house.cutIn', 'house.cutOut'] as const;
const PUMP = ['pump.curve.flow', 'pump.frequency'] as const;

/** From stop to start less than this is a switch that chatters; 20 psi is usual. Common practice, no source. */
const LEAST_GAP = psi(15);

const isSwitched = ({ facts: { house } }: Solution): boolean =>
  house.kind !== 'open tank' && house.control === 'switch';

function runOf(solution: Solution, water: CubicMetres): Seconds | null {
  const flow = ratedFlow(solution);
  return flow === null || !(flow > 0) ? null : water / flow;
}

function switchPoints(solution: Solution): readonly Own[] {
  const { cutIn, cutOut } = solution.facts.house;
  return whenSaid(solution, SWITCH, own('switchPoints', { cutIn, cutOut }));
}

const afterTank: Judge = ({ solution }) => ({
  at: ['shutOff', 'tank'],
  says: isSwitched(solution) ? switchPoints(solution) : [],
  decidedBy: isSwitched(solution) ? SWITCH : [],
});

const switchLow: Judge = ({ solution }) =>
  isSwitched(solution)
    ? {
        at: ['gauge', 'switch'],
        says: switchPoints(solution),
        decidedBy: SWITCH,
      }
    : null;

/** What the pump brings at cut-in, from the weaker to the stronger of its rating. */
function gives({ facts, values }: Solution): readonly Own[] {
  const { operatingFlowAtCutIn: least, operatingFlowAtCutInMost: most } = values;
  if (least === null) return [];
  const cutIn = facts.house.kind === 'open tank' ? null : facts.house.cutIn;
  return [own('gives', { least, most: most ?? least, wanted: facts.house.demand, cutIn })];
}

const tooMuchAsked: Judge = ({ solution }) => ({
  at: ['pump'],
  says: gives(solution),
  likelyBy: [broken('PR-54'), broken('PR-55')],
  unlikelyBy: ['PR-54'],
  decidedBy: ['house.demand', 'pump.power'],
  rests: ['house.demand', 'house.cutIn', ...PUMP, 'pump.setting'],
});

/** With every tap shut, from the water at rest. */
function topsOut({ facts, values }: Solution): readonly Own[] {
  const { shutOffPressureAtTankLeast: least, shutOffPressureAtTank: most } = values;
  // Under no pressure at all the figure would only say that nothing arrives.
  if (facts.house.kind === 'open tank' || least === null || most === null || !(least > 0)) return [];
  return [own('topsOut', { least, most, cutOut: facts.house.cutOut })];
}

const cutOutHigh: Judge = ({ solution }) =>
  isSwitched(solution)
    ? {
        at: ['switch'],
        says: topsOut(solution),
        likelyBy: [broken('PR-46')],
        unlikelyBy: ['PR-46'],
        decidedBy: ['house.cutOut', 'house.rise', 'pump.power'],
        rests: [...SWITCH, ...PUMP],
      }
    : null;

const wornPump: Judge = ({ solution }) => ({
  at: ['pump'],
  says: [...gives(solution), ...topsOut(solution)],
  decidedBy: ['pump.curve', 'pump.power', 'house.rise'],
  rests: ['house.cutIn', ...PUMP, 'pump.setting'],
});

const houseLeak: Judge = ({ solution: { values } }) => ({
  at: ['shutOff', 'tank'],
  says: values.tankDrawdown === null ? [] : [own('leaks', { water: values.tankDrawdown })],
  decidedBy: ['house.tank'],
  rests: values.tankDrawdown === null ? [] : [...SWITCH, 'house.precharge'],
});

function tankGives(solution: Solution): readonly Own[] {
  const water = solution.values.tankDrawdown;
  return water === null || !isSwitched(solution) ? [] : [own('tankGives', { water, run: runOf(solution, water) })];
}

/** The same plan with the tank's own air gone, solved. */
function withoutAir({ plan, values }: Solution): readonly Own[] {
  if (values.tankDrawdown === null) return [];
  const unit = plan.units === 'metric' ? 'bar' : 'psi';
  const without = createSolver().later(withValue(plan, 'house.precharge', writeQuantity(0, 'pressure', unit)));
  const water = without.values.tankDrawdown;
  return water === null || water >= values.tankDrawdown
    ? []
    : [own('withoutAir', { water, run: runOf(without, water) })];
}

const TANK_RESTS = [...SWITCH, 'house.precharge', 'pump.curve.flow', 'site.altitude'] as const;

const waterlogged: Judge = ({ solution }) =>
  solution.facts.house.kind === 'open tank'
    ? null
    : {
        at: ['tank'],
        says: isSwitched(solution) ? [...tankGives(solution), ...withoutAir(solution)] : [],
        decidedBy: ['house.tank'],
        rests: TANK_RESTS,
      };

const tankSmall: Judge = ({ solution }) =>
  isSwitched(solution)
    ? {
        at: ['tank'],
        says: tankGives(solution),
        likelyBy: [broken('PR-56')],
        unlikelyBy: ['PR-56'],
        decidedBy: ['house.tank'],
        rests: TANK_RESTS,
      }
    : null;

const precharge: Judge = ({ solution }) => {
  const { house } = solution.facts;
  if (house.kind === 'open tank') return null;
  return {
    at: ['tank'],
    says: airOf(solution),
    likelyBy: [broken('PR-57')],
    unlikelyBy: ['PR-57'],
    decidedBy: ['house.precharge'],
    rests: SWITCH,
  };
};

function airOf(solution: Solution): readonly Own[] {
  const { precharge: set, cutIn, cutOut, control } = solution.facts.house;
  const usual = usualPrecharge(solution.facts);
  if (control === 'variable speed') return [own('airForDrive', { usual, holds: cutOut })];
  if (isAssumed(solution, 'house.precharge') || valueAt(solution.plan, 'house.precharge') === undefined)
    return [own('airUsual', { usual, cutIn })];
  const over = set - cutIn;
  return [exceeds(over, 'pressure') ? own('airOver', { over, cutIn }) : own('airSet', { precharge: set, cutIn })];
}

const switchGap: Judge = ({ solution }) => {
  if (!isSwitched(solution)) return null;
  const { cutIn, cutOut } = solution.facts.house;
  const said = !SWITCH.some((path) => isAssumed(solution, path));
  const narrow = exceeds(LEAST_GAP - (cutOut - cutIn), 'pressure');
  return {
    at: ['switch'],
    says: whenSaid(solution, SWITCH, own('switchGap', { gap: cutOut - cutIn, cutIn, cutOut })),
    shown: said && narrow,
    ruledOut: said && !narrow,
    decidedBy: SWITCH,
  };
};

const fastValve: Judge = ({ solution: { values } }) => {
  const { velocityDropPipe: velocity, demandFlow: flow } = values;
  return {
    at: ['shutOff', 'tank'],
    says: velocity === null || flow === null ? [] : [own('speed', { velocity, flow })],
    likelyBy: [broken('PR-47')],
    decidedBy: ['house.demand'],
    rests: ['dropPipe.size', 'dropPipe.rating', 'dropPipe.material', 'house.demand'],
  };
};

export const houseCauses = {
  afterTank,
  switchLow,
  tooMuchAsked,
  cutOutHigh,
  wornPump,
  houseLeak,
  waterlogged,
  tankSmall,
  precharge,
  switchGap,
  fastValve,
} satisfies { readonly [Id in CauseId]?: Judge };
