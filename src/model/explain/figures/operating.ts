/** Where the pump's curve meets what well and pipes ask for: the found flow put back into both. */
import type { Facts } from '../../facts.ts';
import { fittingFriction, pipeFriction } from '../../figures/head.ts';
import { lowestLevel } from '../../figures/lowestLevel.ts';
import type { BandEnd } from '../../figures/pumpBand.ts';
import { pipesHead, tankPressure } from '../../figures/pumpInWell.ts';
import { wellRelation } from '../../formulas/wellRelation.ts';
import type { PumpInWell } from '../../solution.ts';
import { atSwitch } from '../atSwitch.ts';
import type { Context } from '../context.ts';
import { within } from '../draft.ts';
import type { Draft, Explainer } from '../draft.ts';
import type { Missing } from '../explanation.ts';
import { noDistance, noDrawdown, noLine, noPumpCurve, noRise, noStaticLevel } from '../missing.ts';
import { step, term } from '../sum.ts';
import type { Step, Term } from '../sum.ts';
import { GENERIC_SOURCE, pumpHeadAt, shutOffHead } from './pumpHead.ts';

/** A point: pressure in the tank, and end of the pump's band. */
interface Asked {
  readonly tank: 'cutOut' | 'cutIn';
  readonly end: BandEnd;
}

const CUT_OUT: Asked = { tank: 'cutOut', end: 'least' };
const CUT_IN: Asked = { tank: 'cutIn', end: 'least' };
const CUT_IN_MOST: Asked = { tank: 'cutIn', end: 'most' };

export const operatingFlowAtCutOut: Explainer = (context) => operating(context, CUT_OUT, 'flow');
export const operatingHeadAtCutOut: Explainer = (context) => operating(context, CUT_OUT, 'head');
export const operatingFlowAtCutIn: Explainer = (context) => operating(context, CUT_IN, 'flow');
export const operatingHeadAtCutIn: Explainer = (context) => operating(context, CUT_IN, 'head');
export const operatingFlowAtCutInMost: Explainer = (context) => operating(context, CUT_IN_MOST, 'flow');
export const operatingHeadAtCutInMost: Explainer = (context) => operating(context, CUT_IN_MOST, 'head');

const wordsOf = ({ tank }: Asked) => (tank === 'cutOut' ? 'cut-out' : 'cut-in');

function pointOf({ solution }: Context, { tank, end }: Asked): PumpInWell | null {
  const { atCutIn, atCutInMost, atCutOut } = solution.curves;
  return tank === 'cutOut' ? atCutOut : end === 'most' ? atCutInMost : atCutIn;
}

/** The water stands deeper than its drawdown at that flow: at the lowest level, or where the pump takes just the yield. */
function isHeld(facts: Facts, { flow, waterLevel, outpumped }: PumpInWell): boolean {
  return outpumped || takesTheYield(facts, { flow, waterLevel });
}

function takesTheYield(facts: Facts, { flow, waterLevel }: Pick<PumpInWell, 'flow' | 'waterLevel'>): boolean {
  const { pumping, staticLevel } = facts.water;
  const relation = wellRelation(pumping, staticLevel);
  if (relation === null || staticLevel === null) return false;
  return flow > 0 && waterLevel > staticLevel + relation.drawdownAt(flow) + MILLIMETRE;
}

const MILLIMETRE = 0.001;

function operating(context: Context, asked: Asked, what: 'flow' | 'head'): Draft {
  const { facts } = context;
  const point = pointOf(context, asked);
  const most = asked.end === 'most' ? ', at the most' : '';
  const held = point !== null && isHeld(facts, point);
  return {
    title: `${what === 'flow' ? 'Flow' : 'Head'} of the pump ${atSwitch(context, wordsOf(asked))}${most}`,
    symbol: what === 'flow' ? 'Q' : 'H',
    as: what === 'flow' ? 'readFlow' : 'length',
    formula: held
      ? 'H_pump(Q) = H_system(Q), with H_pump the pump’s curve and H_system = h_w + r + h_p + h_d(Q) + h_l(Q) + h_f(Q)'
      : 'H_pump(Q) = H_system(Q), with H_pump the pump’s curve and H_system = h_s + r + h_p + s(Q) + h_d(Q) + h_l(Q) + h_f(Q)',
    range: rangeOf(context, point?.flow ?? null),
    missing: missingOf(context),
    ...(point === null
      ? { terms: stillTerms(context, asked), steps: [], source: GENERIC_SOURCE }
      : account(context, asked, point, what)),
    ...(facts.house.kind === 'open tank' && asked.tank === 'cutIn'
      ? { notes: ['An open tank has no pressure: a float stops the pump, and it works at one point.'] }
      : {}),
  };
}

function stillTerms(context: Context, asked: Asked): Term[] {
  const { facts, waterWeight } = context;
  const point = pointOf(context, asked);
  const water =
    point !== null && isHeld(facts, point)
      ? term(
          'h_w',
          point.outpumped
            ? `depth of the water, drawn down to the ${lowestLevel(facts).by}`
            : 'depth of the water, drawn down until the pump takes no more than the well gives',
          point.waterLevel,
          'length',
        )
      : term('h_s', 'depth of the water at rest', facts.water.staticLevel, 'length');
  return [
    water,
    term('r', 'rise to the tank', facts.house.rise, 'length'),
    term(
      'h_p',
      facts.house.kind === 'open tank'
        ? 'pressure as a height of water: an open tank has none'
        : `pressure at ${wordsOf(asked)} as a height of water`,
      tankPressure(facts, asked.tank) / waterWeight,
      'length',
    ),
  ];
}

type Account = Pick<Draft, 'terms' | 'steps' | 'source' | 'notes'>;

const OUTPUMPED =
  'The well cannot keep up: the flow falls from what it is with the water at rest to this, with the water drawn down as far as the pump can.';

const TAKES_THE_YIELD =
  'The well gives less than its drawdown says: the water falls until the pump takes no more than the well gives.';

function account(context: Context, asked: Asked, point: PumpInWell, what: 'flow' | 'head'): Account {
  const { facts, system } = context;
  const { flow, head, outpumped, waterLevel } = point;
  const last = what === 'flow' ? [step('Q', 'Q', flow, 'readFlow')] : [step('H', 'H', head, 'length')];
  const found = [
    term('Q', 'flow that was found', flow, facts.pump.curve.kind === 'points' ? 'readFlow' : 'flow'),
    term('H', 'head at that flow', head, 'length'),
  ];
  const pipes = pipesHead(facts, system, tankPressure(facts, asked.tank));
  if (pipes === null) return { terms: found, steps: last, source: GENERIC_SOURCE };
  if (flow === 0) return noFlow(context, asked, point, { found, last, still: waterLevel + pipes(0) });
  const pump = pumpHeadAt(context, flow, asked.end);
  if (pump === null) return { terms: found, steps: last, source: GENERIC_SOURCE };
  const heldBack = outpumped ? [OUTPUMPED] : takesTheYield(facts, point) ? [TAKES_THE_YIELD] : [];
  if (head === 0 || flow === pump.curve.endFlow) {
    return {
      terms: [...found, ...pump.terms],
      steps: [...pump.steps, ...last],
      source: pump.source,
      notes: [...heldBack, head === 0 ? END_OF_CURVE : endWords(context, flow), pump.note],
    };
  }
  const terms = systemTerms(context, asked, point);
  return {
    terms: [...found, ...pump.terms, ...terms],
    steps: [
      ...pump.steps,
      step('H_pump', pump.expression, head, 'length'),
      step('H_system', terms.map(({ symbol }) => symbol).join(' + '), waterLevel + pipes(flow), 'length'),
      ...last,
    ],
    source: `${pump.source}; friction: Colebrook (1939); meeting point by regula falsi, Anderson & Björck (1973), BIT 13, 253`,
    notes: [
      ...heldBack,
      'The flow is searched for until both heads agree; here it stands put back into both.',
      pump.note,
    ],
  };
}

const END_OF_CURVE = 'Well and pipes ask for no head even here: the pump runs at the end of its curve.';

const endWords = ({ facts }: Context, flow: number) =>
  facts.pump.flowLimiter === flow
    ? 'The flow-limiting valve holds the pump to this; well and pipes ask for less head than it gives here.'
    : 'Well and pipes ask for less head than the pump gives here; no more than 1.4 times the rated flow is promised.';

function systemTerms(context: Context, asked: Asked, point: PumpInWell): Term[] {
  const { flow } = point;
  const { facts, system } = context;
  const { dropPipe, house, water } = facts;
  const line =
    house.line && house.distance !== null ? pipeFriction(house.line, flow, house.distance, system.water) : null;
  const fall = wellRelation(water.pumping, water.staticLevel)?.drawdownAt(flow) ?? 0;
  return [
    ...stillTerms(context, asked),
    ...(isHeld(facts, point) ? [] : [term('s', 'drawdown at that flow', fall, 'length')]),
    term(
      'h_d',
      'friction in the drop pipe at that flow',
      pipeFriction(dropPipe, flow, system.dropPipeLength, system.water),
      'length',
    ),
    term('h_l', 'friction in the line to the house at that flow', line, 'length'),
    term('h_f', 'loss in valves and fittings at that flow', fittingFriction(facts, flow), 'length'),
  ];
}

interface Found {
  readonly found: Term[];
  readonly last: Step[];
  readonly still: number;
}

function noFlow(context: Context, asked: Asked, { outpumped }: PumpInWell, { found, last, still }: Found): Account {
  const pump = shutOffHead(context, asked.end);
  const source = pump?.source ?? GENERIC_SOURCE;
  const ownTerms = [...found, ...(pump?.terms ?? [])];
  const ownSteps = pump?.steps ?? [];
  const ownNotes = pump ? [pump.note] : [];
  if (outpumped) {
    const words = 'No water stands over the intake or the dry-run protection, even at rest: nothing flows.';
    return { terms: ownTerms, steps: [...ownSteps, ...last], source, notes: [words, ...ownNotes] };
  }
  const terms = stillTerms(context, asked);
  return {
    terms: [...ownTerms, ...terms],
    steps: [...ownSteps, step('H_system', terms.map(({ symbol }) => symbol).join(' + '), still, 'length'), ...last],
    source,
    notes: ['Well and pipes ask for more than the pump can give at no flow: it moves no water.', ...ownNotes],
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
