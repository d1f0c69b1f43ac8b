/** What the well gives and how far its water falls. */
import type { PumpingFacts } from '../../facts.ts';
import { fitWellLoss } from '../../formulas/drawdown.ts';
import { theisArgument } from '../../formulas/theis.ts';
import { within } from '../draft.ts';
import type { Draft, Explainer } from '../draft.ts';
import type { Context } from '../context.ts';
import { noDemand, noDrawdown, noStaticLevel, notHeld, reason } from '../missing.ts';
import { step, term } from '../sum.ts';

export const demandFlow: Explainer = (context) => {
  const demand = context.values.demandFlow;
  return {
    title: 'Flow that the house wants',
    symbol: 'Q',
    terms: [term('Q', 'peak flow needed', demand, 'readFlow')],
    steps: [step('Q', 'Q', demand, 'readFlow')],
    as: 'readFlow',
    formula: 'Q = the peak flow needed',
    range: within('the largest flow wanted at once', null),
    source: 'the plan',
    missing: [noDemand(context)],
  };
};

export const specificCapacity: Explainer = (context) => {
  const { values } = context;
  const tested = testedPoint(context);
  return {
    title: 'Specific capacity',
    symbol: 'c',
    terms: [
      term('Q_t', tested.flowFrom, tested.flow, 'readFlow'),
      ...tested.terms,
      term('s_t', 'drawdown at that flow', tested.drawdown, 'length'),
    ],
    steps: [...tested.steps, step('c', 'Q_t / s_t', values.specificCapacity, 'capacity')],
    as: 'capacity',
    range: within('at the tested flow and after the tested time; it falls with both', null),
    source: 'definition: flow by drawdown (Theis, Brown & Meyer, 1963, US Geological Survey Water-Supply Paper 1536-I)',
    missing: [
      noDrawdown(context),
      noStaticLevel(context),
      tested.flow === null ? { path: 'water.pumping', words: 'a flow that belongs to the pumping level' } : null,
      reason(context.facts.water.pumping?.kind === 'aquifer', 'a test: the aquifer’s figures are given instead'),
      reason(tested.drawdown !== null && !(tested.drawdown > 0), 'a drawdown above zero'),
    ],
  };
};

function testedPoint({ facts, solution }: Context) {
  const { pumping, staticLevel } = facts.water;
  const none = { terms: [], steps: [], flow: null, drawdown: null, flowFrom: 'tested flow' };
  if (pumping === null) return none;
  if (pumping.kind === 'test') return { ...none, flow: pumping.flow, drawdown: pumping.drawdown };
  if (pumping.kind === 'steps') {
    const last = pumping.steps[pumping.steps.length - 1];
    return last ? { ...none, flow: last.flow, drawdown: last.drawdown, flowFrom: 'flow of the last step' } : none;
  }
  if (pumping.kind !== 'level') return none;
  const drawdown = staticLevel === null ? null : pumping.level - staticLevel;
  return {
    flow: pumping.flow,
    drawdown,
    flowFrom: flowOfLevel(solution),
    terms: levelTerms(pumping.level, staticLevel),
    steps: [step('s_t', 'h_p − h_s', drawdown, 'length')],
  };
}

/** What is said of the flow that belongs to a measured level. */
const flowOfLevel = ({ assumed }: Context['solution']) =>
  assumed.some(({ path }) => path === 'water.pumping.flow')
    ? 'flow of the pumping level, which nobody wrote down: assumed to be the peak flow needed'
    : 'flow of the pumping level';

const levelTerms = (level: number, staticLevel: number | null) => [
  term('h_p', 'measured pumping level', level, 'length'),
  term('h_s', 'depth of the water at rest', staticLevel, 'length'),
];

export const drawdown: Explainer = (context) => {
  const { facts, values } = context;
  const { pumping } = facts.water;
  return {
    title: 'Drawdown at the peak flow needed',
    symbol: 's',
    as: 'length',
    missing: [noDrawdown(context), noDemand(context), noStaticLevel(context), notHeld(context)],
    ...drawdownAccount(context, pumping, facts.house.demand, values.drawdown),
  };
};

type Account = Pick<Draft, 'terms' | 'steps' | 'range' | 'source' | 'notes'>;

/** How the plan's account of the well gives the drawdown at a flow. */
function drawdownAccount(
  { facts, show, solution }: Context,
  pumping: PumpingFacts | null,
  flow: number | null,
  result: number | null,
): Account {
  const demand = term('Q', 'peak flow needed', flow, 'readFlow');
  switch (pumping?.kind) {
    case 'level': {
      const terms = levelTerms(pumping.level, facts.water.staticLevel);
      return {
        terms: [...terms, demand, term('Q_t', flowOfLevel(solution), pumping.flow, 'readFlow')],
        steps: [step('s', '(h_p − h_s) × Q / Q_t', result, 'length')],
        ...scaled(flow, pumping.flow, pumping.flow === null ? 'the tested flow' : show.flow(pumping.flow)),
      };
    }
    case 'steps': {
      const loss = fitWellLoss(pumping.steps);
      const most = Math.max(...pumping.steps.map((each) => each.flow));
      return {
        terms: [
          demand,
          term('B', 'loss in the ground, fitted to the steps', loss.aquiferLoss, 'aquiferLoss'),
          term('C', 'loss in the well, fitted to the steps', loss.wellLoss, 'wellLoss'),
        ],
        steps: [step('s', 'B × Q + C × Q²', result, 'length')],
        range: within(`up to the largest step, ${show.flow(most)}`, flow === null ? null : flow <= most),
        source: 'Jacob (1947), Trans. ASCE 112, 1047',
        notes: ['B and C are a least-squares fit to the drawdowns of the steps, neither below zero.'],
      };
    }
    case 'aquifer': {
      const { transmissivity, storativity, radius, after } = pumping;
      const u = theisArgument({ transmissivity, storativity, radius, time: after });
      return {
        terms: [
          term('Q', 'peak flow needed', flow, 'flow'),
          term('T', 'transmissivity', transmissivity, 'transmissivity'),
          term('S', 'storativity', storativity, 'number'),
          term('r', 'radius of the well', radius, 'bore'),
          term('t', 'time of pumping', after, 'seconds'),
          term('u', 'argument of the well function', u, 'number'),
        ],
        steps: [step('u', 'r² × S / (4 × T × t)', u, 'number'), step('s', 'Q / (4 × π × T) × W(u)', result, 'length')],
        range: within(
          'confined, wide and even aquifer, well through all of it, no leakage; well loss is not in it',
          null,
        ),
        source:
          'Theis (1935), Trans. Am. Geophys. Union 16, 519; W(u) from Abramowitz & Stegun (1964), 5.1.11 and 5.1.22',
        notes: ['W(u) is the exponential integral, tabulated in handbooks: −0.5772 − ln u where u is small.'],
      };
    }
    default: {
      const test = pumping?.kind === 'test' ? pumping : null;
      return {
        terms: [
          term('s_t', 'drawdown in the test', test?.drawdown ?? null, 'length'),
          demand,
          term('Q_t', 'flow of the test', test?.flow ?? null, 'readFlow'),
        ],
        steps: [step('s', 's_t × Q / Q_t', result, 'length')],
        ...scaled(flow, test?.flow ?? null, test ? show.flow(test.flow) : 'the tested flow'),
      };
    }
  }
}

function scaled(flow: number | null, tested: number | null, most: string): Pick<Account, 'range' | 'source' | 'notes'> {
  return {
    range: within(
      `up to ${most}, the tested flow; beyond it the water falls further than this`,
      flow === null || tested === null ? null : flow <= tested,
    ),
    source: 'drawdown in proportion to flow (Theis, 1935), for the same time of pumping',
    notes: ['Loss in the well itself grows faster than the flow and is not in a single test.'],
  };
}
