/** Heads: what the pump must lift, push and overcome. */
import type { PipeFacts } from '../../facts.ts';
import { dropPipeLoss, lineLoss } from '../../figures/head.ts';
import {
  darcyFactor,
  hazenWilliamsHead,
  LAMINAR_TO,
  reynoldsNumber,
  TURBULENT_FROM,
  velocityIn,
} from '../../formulas/friction.ts';
import { gravityTerm, waterWeightTerm } from '../context.ts';
import type { Context } from '../context.ts';
import { everywhere, GEOMETRY, within } from '../draft.ts';
import type { Draft, Explainer } from '../draft.ts';
import type { Missing } from '../explanation.ts';
import { noDemand, noDistance, noDrawdown, noLine, noRise, noStaticLevel } from '../missing.ts';
import { step, term } from '../sum.ts';
import type { Step, Term } from '../sum.ts';
import { pumpingWaterLevel } from './places.ts';

export const lift: Explainer = (context) => ({
  ...pumpingWaterLevel(context),
  title: 'Lift to the ground surface',
  symbol: 'z',
  steps: [step('z', 'h_s + s', context.values.lift, 'length')],
});

export const rise: Explainer = (context) => ({
  title: 'Rise from the well to the tank',
  symbol: 'r',
  terms: [term('r', 'height of the tank above the ground at the well', context.values.rise, 'length')],
  steps: [step('r', 'r', context.values.rise, 'length')],
  as: 'length',
  formula: 'r = the rise of the plan',
  range: everywhere,
  source: 'the plan',
  missing: [noRise(context)],
});

export const pressureHead: Explainer = (context) => {
  const { facts, values } = context;
  const open = facts.house.kind === 'open tank';
  return {
    title: 'Pressure at the tank as a height of water',
    symbol: 'h_p',
    terms: [
      term('p', open ? 'pressure in an open tank' : 'cut-out pressure', open ? 0 : facts.house.cutOut, 'pressure'),
      waterWeightTerm(context),
    ],
    steps: [step('h_p', 'p / γ', values.pressureHead, 'length')],
    as: 'length',
    range: within('water between 0 and 40 °C (32 and 104 °F)', context.waterInRange),
    source: 'hydrostatics; density of water: Tanaka et al. (2001), Metrologia 38, 301',
    missing: [],
  };
};

const COLEBROOK =
  'Darcy-Weisbach with Colebrook (1939), J. Inst. Civil Eng. 11, 133; laminar law and the range between: EPANET 2.2 User Manual, ch. 12';

export const frictionDropPipe: Explainer = (context) =>
  friction(context, {
    title: 'Friction in the drop pipe',
    symbol: 'h_d',
    pipe: context.facts.dropPipe,
    length: context.hangingLength,
    lengthIs: 'length of the drop pipe',
    result: context.values.frictionDropPipe,
    missing: [noDemand(context)],
  });

export const frictionLine: Explainer = (context) =>
  friction(context, {
    title: 'Friction in the buried line',
    symbol: 'h_l',
    pipe: context.facts.house.line,
    length: context.facts.house.distance,
    lengthIs: 'length of the line from well to house',
    result: context.values.frictionLine,
    missing: [noDemand(context), noLine(context), noDistance(context)],
  });

interface PipeRun {
  readonly title: string;
  readonly symbol: string;
  readonly pipe: PipeFacts | null;
  readonly length: number | null;
  readonly lengthIs: string;
  readonly result: number | null;
  readonly missing: readonly (Missing | null)[];
}

function friction({ facts, system, waterInRange }: Context, run: PipeRun): Draft {
  const { pipe, length } = run;
  const flow = facts.house.demand;
  const viscosity = system.water.kinematicViscosity;
  const moving = pipe !== null && flow !== null && flow > 0;
  const velocity = pipe && flow !== null ? velocityIn(flow, pipe.insideDiameter) : null;
  const reynolds = moving
    ? reynoldsNumber({ flow, insideDiameter: pipe.insideDiameter, kinematicViscosity: viscosity })
    : null;
  const factor = moving && reynolds !== null ? darcyFactor(reynolds, pipe.roughness / pipe.insideDiameter) : null;
  return {
    title: run.title,
    symbol: run.symbol,
    terms: [
      term('Q', 'demand', flow, 'flow'),
      term('L', run.lengthIs, length, 'length'),
      term('d', 'bore of the pipe', pipe?.insideDiameter ?? null, 'bore'),
      term('e', 'roughness of its wall', pipe?.roughness ?? null, 'roughness'),
      term('ν', 'kinematic viscosity of the water', viscosity, 'viscosity'),
      gravityTerm,
      term('v', 'velocity in the pipe', velocity, 'velocity'),
      term('Re', 'Reynolds number', reynolds, 'number'),
      term('f', 'Darcy friction factor', factor, 'number'),
    ],
    steps: [
      step('v', '4 × Q / (π × d²)', velocity, 'velocity'),
      ...(reynolds === null || factor === null ? [] : factorSteps(reynolds, factor)),
      step(run.symbol, reynolds === null ? '0 × L' : 'f × (L / d) × v² / (2 × g)', run.result, 'length'),
    ],
    as: 'length',
    range: within(
      'round pipe running full; between Re 2000 and 4000 no flow has one answer',
      reynolds === null ? null : waterInRange && (reynolds < LAMINAR_TO || reynolds >= TURBULENT_FROM),
    ),
    source: COLEBROOK,
    notes: reynolds === null || factor === null ? [] : factorNotes(reynolds),
    missing: run.missing,
  };
}

/** The friction factor: by its law where flow is laminar, else the root put back into both sides. */
function factorSteps(reynolds: number, factor: number): Step[] {
  const first = step('Re', 'v × d / ν', reynolds, 'number');
  if (reynolds < LAMINAR_TO) return [first, step('f', '64 / Re', factor, 'number')];
  if (reynolds < TURBULENT_FROM) return [first];
  const root = 1 / Math.sqrt(factor);
  return [first, step('1 / √f', '−2 × log10(e / (3.7 × d) + 2.51 / (Re × √f))', root, 'number')];
}

function factorNotes(reynolds: number): string[] {
  if (reynolds < LAMINAR_TO) return ['Below Re 2000 the flow is laminar and the roughness does not count.'];
  if (reynolds < TURBULENT_FROM) {
    return [
      'Between Re 2000 and 4000 f is read from a cubic that joins the laminar and the turbulent law in value and slope.',
    ];
  }
  return [
    'f is searched for until both sides of the Colebrook-White equation agree; here it stands put back into both.',
  ];
}

export const frictionFittings: Explainer = (context) => {
  const { facts, values } = context;
  const flow = facts.house.demand;
  const { dropPipe } = facts;
  const { line } = facts.house;
  const inDrop = flow === null ? null : velocityIn(flow, dropPipe.insideDiameter);
  const inLine = flow === null || line === null ? null : velocityIn(flow, line.insideDiameter);
  return {
    title: 'Loss in valves and fittings',
    symbol: 'h_f',
    terms: [
      term('Q', 'demand', flow, 'flow'),
      term('d_d', 'bore of the drop pipe', dropPipe.insideDiameter, 'bore'),
      term('d_l', 'bore of the line', line?.insideDiameter ?? null, 'bore'),
      term('K_d', dropPipeFittings(context), dropPipeLoss(facts), 'number'),
      term('K_l', lineFittings(context), line === null ? null : lineLoss(facts), 'number'),
      gravityTerm,
      term('v_d', 'velocity in the drop pipe', inDrop, 'velocity'),
      term('v_l', 'velocity in the line', inLine, 'velocity'),
    ],
    steps: [
      step('v_d', '4 × Q / (π × d_d²)', inDrop, 'velocity'),
      step('v_l', '4 × Q / (π × d_l²)', inLine, 'velocity'),
      step('h_f', 'K_d × v_d² / (2 × g) + K_l × v_l² / (2 × g)', values.frictionFittings, 'length'),
    ],
    as: 'length',
    range: within('fittings of the usual make, fully turbulent flow', null),
    source:
      'EPANET 2.2 User Manual, minor loss coefficients (valve, tee, elbow); insert fittings: contraction and Borda-Carnot expansion, from memory; pitless adapter: engineering estimate, no source',
    missing: [noDemand(context), noLine(context)],
  };
};

function dropPipeFittings({ facts }: Context): string {
  const valves = facts.string.checkValves.length;
  const parts = [
    `${valves} check valve${valves === 1 ? '' : 's'} of 2.5`,
    ...(facts.dropPipe.material === 'PE' ? ['two insert fittings of 0.76'] : []),
    facts.top.kind === 'pitless' ? 'the pitless adapter 1.5' : 'tee 1.8 and elbow 0.9',
  ];
  return `loss coefficients on the drop pipe: ${parts.join(', ')}`;
}

function lineFittings({ facts }: Context): string {
  const parts = [
    ...(facts.house.line?.material === 'PE' ? ['two insert fittings of 0.76'] : []),
    ...(facts.string.valveBetweenTopAndTank ? ['a check valve 2.5'] : []),
  ];
  return `loss coefficients on the line: ${parts.join(', ') || 'none'}`;
}

const HEADS: readonly (readonly [
  string,
  string,
  'lift' | 'rise' | 'pressureHead' | 'frictionDropPipe' | 'frictionLine' | 'frictionFittings',
])[] = [
  ['z', 'lift from the pumping level', 'lift'],
  ['r', 'rise to the tank', 'rise'],
  ['h_p', 'pressure at cut-out as a height of water', 'pressureHead'],
  ['h_d', 'friction in the drop pipe', 'frictionDropPipe'],
  ['h_l', 'friction in the buried line', 'frictionLine'],
  ['h_f', 'loss in valves and fittings', 'frictionFittings'],
];

export const totalDynamicHead: Explainer = (context) => ({
  title: 'Total dynamic head',
  symbol: 'H',
  terms: HEADS.map(([symbol, meaning, name]): Term => term(symbol, meaning, context.values[name], 'length')),
  steps: [step('H', HEADS.map(([symbol]) => symbol).join(' + '), context.values.totalDynamicHead, 'length')],
  as: 'length',
  range: within('at the demand, with the tank at cut-out', null),
  source: `${GEOMETRY} and the sum of the losses (EPANET 2.2 User Manual, ch. 3)`,
  notes: ['What the pump must reach at this flow; it runs where its curve meets what well and pipes ask for.'],
  missing: [
    noStaticLevel(context),
    noDrawdown(context),
    noDemand(context),
    noRise(context),
    noLine(context),
    noDistance(context),
  ],
});

export const frictionDropPipeHazenWilliams: Explainer = (context) =>
  hazenWilliams(context, {
    title: 'Friction in the drop pipe by Hazen-Williams',
    symbol: 'h_d′',
    pipe: context.facts.dropPipe,
    length: context.hangingLength,
    lengthIs: 'length of the drop pipe',
    result: context.values.frictionDropPipeHazenWilliams,
    missing: [noDemand(context)],
  });

export const frictionLineHazenWilliams: Explainer = (context) =>
  hazenWilliams(context, {
    title: 'Friction in the buried line by Hazen-Williams',
    symbol: 'h_l′',
    pipe: context.facts.house.line,
    length: context.facts.house.distance,
    lengthIs: 'length of the line from well to house',
    result: context.values.frictionLineHazenWilliams,
    missing: [noDemand(context), noLine(context), noDistance(context)],
  });

function hazenWilliams({ facts, values }: Context, run: PipeRun): Draft {
  const { pipe, length } = run;
  const darcy = run.symbol === 'h_d′' ? values.frictionDropPipe : values.frictionLine;
  const turbulent = pipe && facts.house.demand !== null && darcy !== null && length !== null && darcy > 0;
  return {
    title: run.title,
    symbol: run.symbol,
    terms: [
      term(
        'k',
        'constant of the formula',
        hazenWilliamsHead({ flow: 1, length: 1, insideDiameter: 1, coefficient: 1 }),
        'hazenWilliams',
      ),
      term('L', run.lengthIs, length, 'length'),
      term('Q', 'demand', facts.house.demand, 'flow'),
      term('C', 'coefficient of the pipe', pipe?.hazenWilliams ?? null, 'number'),
      term('d', 'bore of the pipe', pipe?.insideDiameter ?? null, 'bore'),
    ],
    steps: [step(run.symbol, 'k × L × (Q / C)^1.852 / d^4.871', run.result, 'length')],
    as: 'length',
    range: within(
      'turbulent flow of water near 16 °C (60 °F); 2 in pipe and larger by origin, used below by habit',
      turbulent ? false : null,
    ),
    source: 'EPANET 2.2 User Manual, ch. 3, pipe headloss formulas',
    notes: [
      'For comparison: it knows no temperature, and in small smooth pipe with cold water lies under Darcy-Weisbach.',
    ],
    missing: run.missing,
  };
}
