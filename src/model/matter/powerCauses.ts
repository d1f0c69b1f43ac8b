/** From the breaker to the motor: what brings the power, what switches it, and what it turns. */
import { lowestLevel } from '../figures/lowestLevel.ts';
import { hasCutOff } from '../rules/cutOff.ts';
import { currentToCarry, drawnCurrent, shareAtStart } from '../rules/electrical.ts';
import { ampacity, requiredAmpacity } from '../formulas/wire.ts';
import type { Solution } from '../solution.ts';
import { wireToMotor } from '../string/wireLengths.ts';
import { whenSaid } from './evidence.ts';
import { broken, type CauseId, type Judge } from './cause.ts';
import { own, type Own } from './own.ts';

const MOTOR = ['pump.current', 'pump.phase', 'pump.voltage', 'pump.frequency'] as const;
const WIRE = ['wire.size', 'wire.run', 'pump.setting'] as const;

function supplyOf(solution: Solution): readonly Own[] {
  const { voltage, phase } = solution.facts.pump;
  return whenSaid(solution, ['pump.voltage'], own('supply', { voltage, phase }));
}

const power: Judge = ({ solution }) => ({
  at: ['disconnect'],
  says: supplyOf(solution),
  decidedBy: ['pump.voltage'],
});

const switchAtTank: Judge = ({ solution }) => {
  const { kind, control, cutIn, cutOut } = solution.facts.house;
  if (kind === 'open tank' || control !== 'switch') return null;
  return {
    at: ['switch'],
    says: whenSaid(solution, ['house.cutIn', 'house.cutOut'], own('switchPoints', { cutIn, cutOut })),
    decidedBy: ['house.cutIn', 'house.cutOut'],
  };
};

const float: Judge = ({ solution: { facts } }) => (facts.house.kind === 'open tank' ? { at: ['float', 'tank'] } : null);

const drive: Judge = ({ solution }) =>
  solution.facts.house.control === 'variable speed' && solution.facts.house.kind !== 'open tank'
    ? {
        at: ['drive', 'disconnect'],
        says: whenSaid(solution, ['house.cutOut'], own('holds', { pressure: solution.facts.house.cutOut })),
        decidedBy: ['house.cutOut'],
      }
    : null;

/** Protection against running dry has stopped it: as it should, where the well gives less than the pump takes. */
const dryRunStop: Judge = ({ solution }) => {
  const { facts, levels, values } = solution;
  const { lowLevelCutOff } = facts.pump;
  const at = ['probe', 'controlBox', 'drive', 'disconnect'] as const;
  const decidedBy = ['pump.lowLevelCutOff'];
  if (lowLevelCutOff === null) return { at, decidedBy };
  if (lowLevelCutOff === false) return { at, says: [own('noGuard', {})], ruledOut: true };
  const time = hasCutOff(solution) ? values.timeToBreakSuction : null;
  const rest = levels.static;
  const end = lowestLevel(facts);
  return {
    at,
    says: [
      typeof lowLevelCutOff === 'number'
        ? own('probe', {
            probe: lowLevelCutOff,
            over: rest === null || rest >= lowLevelCutOff ? null : lowLevelCutOff - rest,
          })
        : own('byCurrent', {}),
      ...(time === null
        ? []
        : [
            own('drawnDown', {
              time,
              level: end.depth,
              by: end.by === 'intake' ? 'intake' : 'cutOff',
            }),
          ]),
    ],
    shown: time !== null,
    rests: time === null ? [] : ['pump.setting', 'pump.curve.flow', 'house.cutIn', 'pump.frequency'],
  };
};

const controlBox: Judge = ({ solution: { facts, parts } }) => {
  if (!parts.some(({ kind }) => kind === 'controlBox')) return null;
  const { power: rated } = facts.pump;
  return {
    at: ['controlBox'],
    says: rated === null ? [] : [own('boxPower', { power: rated })],
    decidedBy: ['pump.wires', 'pump.power'],
    rests: ['pump.wires'],
  };
};

const wireThin: Judge = ({ solution }) => {
  const { facts, values } = solution;
  const length = wireToMotor(facts);
  const share = values.voltageDropRunning;
  const start = length === null ? null : shareAtStart(solution, length);
  return {
    at: ['cable'],
    says: [
      ...(share === null || length === null ? [] : [own('runningDrop', { share, length })]),
      ...(start === null ? [] : [own('startDrop', { share: 1 - start })]),
    ],
    likelyBy: [broken('PR-49')],
    unlikelyBy: ['PR-49'],
    decidedBy: ['pump.current', 'wire.run', 'wire.size'],
    rests: [...MOTOR, ...WIRE],
  };
};

const wireHot: Judge = ({ solution }) => {
  const carried = currentToCarry(solution);
  return {
    at: ['cable'],
    says:
      carried === null
        ? []
        : [own('carries', { carries: ampacity(solution.facts.wire.gauge, 60), asked: requiredAmpacity(carried) })],
    likelyBy: [broken('PR-50')],
    unlikelyBy: ['PR-50'],
    decidedBy: ['pump.current', 'wire.size'],
    rests: [...MOTOR, 'wire.size'],
  };
};

const supplyFit: Judge = ({ solution }) => ({
  at: ['motor'],
  says: supplyOf(solution),
  likelyBy: [broken('PR-59')],
  unlikelyBy: ['PR-59'],
  decidedBy: ['pump.voltage', 'pump.wires', 'pump.power'],
  rests: ['pump.voltage', 'pump.wires', 'pump.phase'],
});

/** Turned backward, which only three phases can be. */
const rotation: Judge = ({ solution: { facts } }) =>
  facts.pump.phase === 3 ? { at: ['motor'], rests: ['pump.phase'] } : null;

const cooling: Judge = () => ({
  at: ['motor'],
  likelyBy: [broken('PR-05'), broken('PR-06'), broken('PR-63')],
  decidedBy: ['well.inflows', 'site.waterTemperature'],
});

const cable: Judge = ({ solution }) => {
  const { splices } = solution.facts.string;
  const [height] = splices;
  return {
    at: ['splice', 'cable'],
    says: whenSaid(
      solution,
      ['string.splices'],
      height === undefined ? own('noSplices', {}) : own('splices', { count: splices.length, height }),
    ),
    likelyBy: [broken('PR-13'), broken('PR-14'), broken('PR-15')],
    decidedBy: ['string.splices', 'string.ties'],
  };
};

const motor: Judge = ({ solution }) => {
  const current = drawnCurrent(solution);
  const length = wireToMotor(solution.facts);
  const start = length === null ? null : shareAtStart(solution, length);
  return {
    at: ['motor'],
    says: [
      ...(current === null ? [] : [own('draws', { current, said: solution.facts.pump.current !== null })]),
      ...(start === null ? [] : [own('startDrop', { share: 1 - start })]),
    ],
    likelyBy: [broken('PR-59')],
    decidedBy: ['pump.current', 'pump.power'],
    rests: [...MOTOR, ...WIRE],
  };
};

const jammed: Judge = ({ solution: { facts } }) => {
  const { sand } = facts.water;
  return {
    at: ['pump'],
    says: sand === null ? [] : [sand ? own('sandSaid', {}) : own('noSandSaid', {})],
    shown: sand === true,
    decidedBy: ['water.sand'],
  };
};

/** Wires that have come loose, or were never tight. */
const terminal: Judge = ({ solution }) => {
  const current = drawnCurrent(solution);
  return {
    at: ['disconnect'],
    says: current === null ? [] : [own('draws', { current, said: solution.facts.pump.current !== null })],
    rests: MOTOR,
  };
};

const otherLoad: Judge = () => ({ at: ['disconnect'] });

export const powerCauses = {
  power,
  switch: switchAtTank,
  float,
  drive,
  dryRunStop,
  controlBox,
  wireThin,
  wireHot,
  supplyFit,
  rotation,
  cooling,
  cable,
  motor,
  jammed,
  terminal,
  otherLoad,
} satisfies { readonly [Id in CauseId]?: Judge };
