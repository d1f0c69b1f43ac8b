/** Where the pump's curve meets what well and pipes ask for: the found flow put back into both. */
import { systemHead } from '../../figures/curves.ts';
import { fittingFriction, pipeFriction } from '../../figures/head.ts';
import { drawdownAt } from '../../formulas/drawdown.ts';
import type { Context } from '../context.ts';
import { within } from '../draft.ts';
import type { Draft, Explainer } from '../draft.ts';
import type { Missing } from '../explanation.ts';
import { noDistance, noDrawdown, noLine, noPumpCurve, noRise, noStaticLevel } from '../missing.ts';
import { step, term } from '../sum.ts';
import type { Step, Term } from '../sum.ts';
import { GENERIC_SOURCE, pumpHeadAt, shutOffHead } from './pumpHead.ts';

type End = 'CutOut' | 'CutIn';

export const operatingFlowAtCutOut: Explainer = (context) => operating(context, 'CutOut', 'flow');
export const operatingHeadAtCutOut: Explainer = (context) => operating(context, 'CutOut', 'head');
export const operatingFlowAtCutIn: Explainer = (context) => operating(context, 'CutIn', 'flow');
export const operatingHeadAtCutIn: Explainer = (context) => operating(context, 'CutIn', 'head');

function operating(context: Context, end: End, what: 'flow' | 'head'): Draft {
  const { facts, values } = context;
  const flow = values[`operatingFlowAt${end}`];
  const head = values[`operatingHeadAt${end}`];
  const endWords = end === 'CutOut' ? 'cut-out' : 'cut-in';
  return {
    title: what === 'flow' ? `Flow of the pump at ${endWords}` : `Head of the pump at ${endWords}`,
    symbol: what === 'flow' ? 'Q' : 'H',
    as: what === 'flow' ? 'readFlow' : 'length',
    formula:
      'H_pump(Q) = H_system(Q), with H_pump the pump’s curve and H_system = h_s + r + h_p + s(Q) + h_d(Q) + h_l(Q) + h_f(Q)',
    range: rangeOf(context, flow),
    missing: missingOf(context),
    ...(flow === null || head === null
      ? { terms: stillTerms(context, end), steps: [], source: GENERIC_SOURCE }
      : account(context, end, flow, head, what)),
    ...(facts.house.kind === 'open tank' && end === 'CutIn'
      ? { notes: ['An open tank has no pressure: cut-in and cut-out are the same point.'] }
      : {}),
  };
}

const tankPressure = ({ facts }: Context, end: End): number => {
  const { house } = facts;
  return house.kind === 'open tank' ? 0 : end === 'CutOut' ? house.cutOut : house.cutIn;
};

function stillTerms(context: Context, end: End): Term[] {
  const { facts, waterWeight } = context;
  const words = end === 'CutOut' ? 'cut-out' : 'cut-in';
  return [
    term('h_s', 'depth of the water at rest', facts.water.staticLevel, 'length'),
    term('r', 'rise to the tank', facts.house.rise, 'length'),
    term('h_p', `pressure at ${words} as a height of water`, tankPressure(context, end) / waterWeight, 'length'),
  ];
}

type Account = Pick<Draft, 'terms' | 'steps' | 'source' | 'notes'>;

function account(context: Context, end: End, flow: number, head: number, what: 'flow' | 'head'): Account {
  const asked = systemHead(context.facts, context.system, tankPressure(context, end));
  const last = what === 'flow' ? [step('Q', 'Q', flow, 'readFlow')] : [step('H', 'H', head, 'length')];
  const found = [
    term('Q', 'flow that was found', flow, context.facts.pump.curve.kind === 'points' ? 'readFlow' : 'flow'),
    term('H', 'head at that flow', head, 'length'),
  ];
  if (asked === null) return { terms: found, steps: last, source: GENERIC_SOURCE };
  if (flow === 0) return noFlow(context, end, found, last, asked(0));
  const pump = pumpHeadAt(context, flow);
  if (pump === null) return { terms: found, steps: last, source: GENERIC_SOURCE };
  if (head === 0) {
    return {
      terms: [...found, ...pump.terms],
      steps: [...pump.steps, ...last],
      source: pump.source,
      notes: ['Well and pipes ask for no head even here: the pump runs at the end of its curve.', pump.note],
    };
  }
  const system = systemTerms(context, end, flow);
  return {
    terms: [...found, ...pump.terms, ...system],
    steps: [
      ...pump.steps,
      step('H_pump', pump.expression, head, 'length'),
      step('H_system', system.map(({ symbol }) => symbol).join(' + '), asked(flow), 'length'),
      ...last,
    ],
    source: `${pump.source}; friction: Colebrook (1939); meeting point by regula falsi, Anderson & Björck (1973), BIT 13, 253`,
    notes: ['The flow is searched for until both heads agree; here it stands put back into both.', pump.note],
  };
}

function systemTerms(context: Context, end: End, flow: number): Term[] {
  const { facts, system } = context;
  const { dropPipe, house, water } = facts;
  const line =
    house.line && house.distance !== null ? pipeFriction(house.line, flow, house.distance, system.water) : null;
  return [
    ...stillTerms(context, end),
    term(
      's',
      'drawdown at that flow',
      water.pumping ? (drawdownAt(water.pumping, flow, water.staticLevel) ?? 0) : null,
      'length',
    ),
    term(
      'h_d',
      'friction in the drop pipe at that flow',
      pipeFriction(dropPipe, flow, system.dropPipeLength, system.water),
      'length',
    ),
    term('h_l', 'friction in the buried line at that flow', line, 'length'),
    term('h_f', 'loss in valves and fittings at that flow', fittingFriction(facts, flow), 'length'),
  ];
}

function noFlow(context: Context, end: End, found: Term[], last: Step[], still: number): Account {
  const pump = shutOffHead(context);
  const fall = still - stillTerms(context, end).reduce((sum, { value }) => sum + (value ?? 0), 0);
  const terms = [...stillTerms(context, end), term('s', 'drawdown taken at every flow', fall, 'length')];
  return {
    terms: [...found, ...(pump?.terms ?? []), ...terms],
    steps: [
      ...(pump?.steps ?? []),
      step('H_system', terms.map(({ symbol }) => symbol).join(' + '), still, 'length'),
      ...last,
    ],
    source: pump?.source ?? GENERIC_SOURCE,
    notes: [
      'Well and pipes ask for more than the pump can give at no flow: it moves no water.',
      ...(pump ? [pump.note] : []),
    ],
  };
}

function rangeOf({ facts, show }: Context, flow: number | null): Draft['range'] {
  const { pumping } = facts.water;
  const most =
    pumping?.kind === 'test'
      ? pumping.flow
      : pumping?.kind === 'steps'
        ? Math.max(...pumping.steps.map((each) => each.flow))
        : null;
  if (most === null) return within('as far as the drawdown and the pump’s curve hold', null);
  return within(
    `flows up to ${show.flow(most)}, the tested flow, and as far as the pump’s curve holds`,
    flow === null ? null : flow <= most,
  );
}

function missingOf(context: Context): (Missing | null)[] {
  return [
    noPumpCurve(context),
    noStaticLevel(context),
    noDrawdown(context),
    noLine(context),
    noDistance(context),
    noRise(context),
  ];
}
