/** The way of the water from the pump to the tank: valves, pipe, joints and what they let through. */
import { suspensionDepth, lineDepth } from '../string/topDepths.ts';
import type { Metres } from '../si.ts';
import type { Solution } from '../solution.ts';
import { whenSaid } from './evidence.ts';
import { broken, type CauseId, type Judge } from './cause.ts';
import { own, type Own } from './own.ts';

/** A leak over the water hisses, and drips back into it. */
function pipeInAir({ facts, levels }: Solution): readonly Own[] {
  const from = suspensionDepth(facts);
  const rest = levels.static;
  if (rest === null) return [];
  const to: Metres = Math.min(rest, facts.well.bottom, facts.pump.setting);
  return to > from ? [own('pipeInAir', { from, to, length: to - from })] : [];
}

const adapterLeak: Judge = ({ solution }) => {
  const { top } = solution.facts;
  if (top.kind !== 'pitless') return null;
  return {
    at: ['pitlessAdapter'],
    says: whenSaid(solution, ['top.kind', 'top.depth'], own('adapterAt', { depth: top.depth })),
    decidedBy: ['top.kind', 'top.depth'],
  };
};

const sealLeak: Judge = ({ solution: { facts } }) =>
  facts.top.kind === 'seal' ? { at: ['union', 'tee', 'seal'], rests: ['top.kind'] } : null;

const brokenPipe: Judge = ({ solution }) => ({
  at: ['dropPipe'],
  says: pipeInAir(solution),
  likelyBy: [broken('PR-18'), broken('PR-48')],
  decidedBy: ['dropPipe.rating', 'string.clampsPerJoint', 'water.staticLevel'],
  rests: ['dropPipe.rating', 'string.clampsPerJoint', 'string.fittings', 'top.depth'],
});

const valveDown: Judge = ({ solution: { facts } }) =>
  facts.string.checkValves.length === 0
    ? null
    : {
        at: ['checkValve'],
        likelyBy: [broken('PR-11')],
        unlikelyBy: ['PR-11'],
        decidedBy: ['string.arrow'],
        rests: ['string.arrow', 'string.checkValves'],
      };

const checkValve: Judge = ({ solution }) => {
  const { string, pump } = solution.facts;
  const count = string.checkValves.length + (pump.checkValveInside ? 1 : 0);
  return {
    at: ['checkValve', 'nipple', 'pump'],
    says: [
      ...whenSaid(solution, ['string.checkValves'], count === 0 ? own('noValve', {}) : own('valves', { count })),
      ...pipeInAir(solution),
    ],
    likelyBy: [broken('PR-09'), broken('PR-11')],
    decidedBy: ['string.checkValves', 'pump.checkValveInside'],
    rests: ['string.checkValves', 'top.depth'],
  };
};

const secondValve: Judge = ({ solution }) => ({
  at: ['buriedLine', 'riser'],
  says: solution.facts.string.valveBetweenTopAndTank
    ? []
    : whenSaid(solution, ['string.valveBetweenTopAndTank'], own('noSecondValve', {})),
  likelyBy: [broken('PR-10'), broken('PR-09', 'upperTooHigh', 'upperTooHighAtRest')],
  unlikelyBy: ['PR-10'],
  decidedBy: ['string.valveBetweenTopAndTank'],
  rests: ['string.valveBetweenTopAndTank', 'string.checkValves'],
});

const narrowPipe: Judge = ({ solution: { values, facts } }) => {
  const { frictionDropPipe, frictionLine, velocityDropPipe, demandFlow } = values;
  const known = frictionDropPipe !== null && frictionLine !== null && demandFlow !== null;
  return {
    at: ['buriedLine', 'dropPipe'],
    says: [
      ...(known ? [own('friction', { head: frictionDropPipe + frictionLine, flow: demandFlow })] : []),
      ...(velocityDropPipe === null || demandFlow === null
        ? []
        : [own('speed', { velocity: velocityDropPipe, flow: demandFlow })]),
    ],
    likelyBy: [broken('PR-47')],
    decidedBy: [...(facts.house.line === null ? ['house.line'] : []), 'house.distance', 'house.demand'],
    rests: ['dropPipe.size', 'dropPipe.rating', 'dropPipe.material', 'house.demand', 'pump.setting'],
  };
};

const lineLeak: Judge = ({ solution: { facts } }) => {
  const { distance } = facts.house;
  return {
    at: ['buriedLine'],
    says: distance === null ? [] : [own('line', { length: distance, depth: lineDepth(facts) })],
    likelyBy: [broken('PR-61')],
    decidedBy: ['house.distance', 'house.line'],
    rests: ['top.depth', 'top.kind'],
  };
};

const twist: Judge = ({ solution }) => {
  const height = solution.facts.string.torqueArrestor;
  return {
    at: ['torqueArrestor', 'dropPipe'],
    says: whenSaid(
      solution,
      ['string.torqueArrestor'],
      height === null ? own('noArrestor', {}) : own('arrestor', { height }),
    ),
    likelyBy: [broken('PR-12')],
    decidedBy: ['string.torqueArrestor'],
    rests: ['string.torqueArrestor'],
  };
};

export const wayCauses = {
  adapterLeak,
  sealLeak,
  brokenPipe,
  valveDown,
  checkValve,
  secondValve,
  narrowPipe,
  lineLeak,
  twist,
} satisfies { readonly [Id in CauseId]?: Judge };
