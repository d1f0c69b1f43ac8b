/** Heads: what the pump must lift, push and overcome. */
import { dropPipeLoss, lineLoss } from '../../figures/head.ts';
import { velocityIn } from '../../formulas/friction.ts';
import { gravityTerm, waterWeightTerm } from '../context.ts';
import type { Context } from '../context.ts';
import { everywhere, GEOMETRY, within } from '../draft.ts';
import type { Explainer } from '../draft.ts';
import { noDemand, noDistance, noDrawdown, noLine, noRise, noStaticLevel, notHeld } from '../missing.ts';
import { step, term } from '../sum.ts';
import type { Term } from '../sum.ts';
import { pumpingWaterLevel } from './places.ts';
import { either } from '../../units.ts';
import { isBarbed, isBuriedOnBarbs } from '../../tables/pipeMaterials.ts';

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
    range: within(`water between ${either(context.units, '32 and 104 °F', '0 and 40 °C')}`, context.waterInRange),
    source: 'hydrostatics; density of water: Tanaka et al. (2001), Metrologia 38, 301',
    missing: [],
  };
};

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
      term('Q', 'peak flow needed', flow, 'flow'),
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
    ...(isBarbed(facts.dropPipe) ? ['two insert fittings of 0.76'] : []),
    facts.top.kind === 'pitless' ? 'the pitless adapter 1.5' : 'tee 1.8 and elbow 0.9',
  ];
  return `loss coefficients on the drop pipe: ${parts.join(', ')}`;
}

function lineFittings({ facts }: Context): string {
  const parts = [
    ...(facts.house.line !== null && isBuriedOnBarbs(facts.house.line) ? ['two insert fittings of 0.76'] : []),
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
  ['h_l', 'friction in the line to the house', 'frictionLine'],
  ['h_f', 'loss in valves and fittings', 'frictionFittings'],
];

function meaningIn({ facts }: Context, name: string, meaning: string): string {
  return name === 'pressureHead' && facts.house.kind === 'open tank'
    ? 'pressure as a height of water: an open tank has none'
    : meaning;
}

export const totalDynamicHead: Explainer = (context) => ({
  title: 'Total dynamic head',
  symbol: 'H',
  terms: HEADS.map(([symbol, meaning, name]): Term =>
    term(symbol, meaningIn(context, name, meaning), context.values[name], 'length'),
  ),
  steps: [step('H', HEADS.map(([symbol]) => symbol).join(' + '), context.values.totalDynamicHead, 'length')],
  as: 'length',
  range: within(
    context.facts.house.kind === 'open tank'
      ? 'at the peak flow needed, into the open tank'
      : 'at the peak flow needed, with the tank at cut-out',
    null,
  ),
  source: `${GEOMETRY} and the sum of the losses (EPANET 2.2 User Manual, ch. 3)`,
  notes: ['What the pump must reach at this flow; it runs where its curve meets what well and pipes ask for.'],
  missing: [
    noStaticLevel(context),
    noDrawdown(context),
    notHeld(context),
    noDemand(context),
    noRise(context),
    noLine(context),
    noDistance(context),
  ],
});
