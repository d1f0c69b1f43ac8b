/** Lengths: drop pipe, lift-out pipe, wire, rope. */
import { LIFT_PIPE_ABOVE_CASING, ROPE_SLACK, ROPE_TIES, WIRE_LOOP, WIRE_SLACK } from '../../figures/allowances.ts';
import { fiftyYearStretch, hangingString } from '../../figures/hanging.ts';
import { modulusOfPipe, FIFTY_YEARS } from '../../formulas/stretch.ts';
import { pumpWeight } from '../../formulas/hangLoad.ts';
import { handbookWaterTerm } from '../context.ts';
import type { Context } from '../context.ts';
import { everywhere, GEOMETRY, within } from '../draft.ts';
import type { Draft, Explainer } from '../draft.ts';
import { noPumpMass, noStaticLevel, reason } from '../missing.ts';
import { isBarbed } from '../../tables/pipeMaterials.ts';
import { lengthToCut, pipeRun } from '../../string/pipeRun.ts';
import { step, term } from '../sum.ts';
import type { Term } from '../sum.ts';
import { hangingTerms } from './hanging.ts';
import { either } from '../../units.ts';
import { leadLength } from '../../string/wireLengths.ts';

const PRACTICE = 'geometry; allowances are common practice, no source';

const discharge = ({ values }: Context): Term =>
  term('z_d', 'depth of the pump discharge', values.pumpDischargeDepth, 'length');
const casingHeight = ({ facts }: Context): Term =>
  term('c', 'height of the casing above ground', facts.well.casingHeight, 'length');

export const dropPipeCutLength: Explainer = (context) => {
  const { facts, suspension, values } = context;
  const pitless = facts.top.kind === 'pitless';
  return {
    title: 'Hanging length of the drop pipe',
    symbol: 'L_d',
    terms: [
      discharge(context),
      pitless ? term('z_t', 'depth of the pitless outlet', suspension, 'length') : casingHeight(context),
    ],
    steps: [step('L_d', pitless ? 'z_d − z_t' : 'z_d + c', values.dropPipeCutLength, 'length')],
    as: 'length',
    range: everywhere,
    source: GEOMETRY,
    notes: ['Not the length to cut: fittings and valves take up some of it.'],
    missing: [],
  };
};

export const dropPipeToCut: Explainer = ({ facts, suspension, units, values }) => {
  const run = pipeRun(facts);
  const below = (values.pumpDischargeDepth ?? 0) - run.bottom;
  const threaded = !isBarbed(facts.dropPipe);
  return {
    title: 'Length of drop pipe to cut',
    symbol: 'L_c',
    terms: [
      term('L_d', 'hanging length of the drop pipe', values.dropPipeCutLength, 'length'),
      term('t', 'from where it hangs to the upper end of the pipe', run.top - suspension, 'length'),
      term('b', 'from the lower end of the pipe to the pump', below, 'length'),
      term('v', 'taken by valves in the pipe', run.bottom - run.top - lengthToCut(run), 'length'),
    ],
    steps: [step('L_c', 'L_d − t − b − v', values.dropPipeToCut, 'length')],
    as: 'length',
    range: within('fittings and valves of usual length; measure those in hand before cutting', null),
    source: 'geometry; lengths of fittings are common practice, no source',
    notes: [
      'All pieces together.',
      threaded
        ? `Add the thread that turns into valve or adapter, about ${either(units, '3/4 in', '2 cm')} at each end.`
        : 'Pipe that goes over the barbs is in it.',
    ],
    missing: [],
  };
};

export const liftPipeLength: Explainer = (context) => {
  const { facts, suspension, values } = context;
  const pitless = facts.top.kind === 'pitless';
  return {
    title: 'Length of the lift-out pipe',
    symbol: 'L_p',
    terms: [
      casingHeight(context),
      term('z_t', 'depth of the pitless outlet', pitless ? suspension : null, 'length'),
      term('a', 'length to hold on to above the casing', LIFT_PIPE_ABOVE_CASING, 'length'),
    ],
    steps: [step('L_p', 'c + z_t + a', values.liftPipeLength, 'length')],
    as: 'length',
    range: everywhere,
    source: PRACTICE,
    missing: [reason(!pitless, 'a pitless adapter: a seal on top needs no lift-out pipe')],
  };
};

export const wireLength: Explainer = (context) => ({
  title: 'Length of the wire in the well',
  symbol: 'L_w',
  terms: [
    discharge(context),
    term('y', 'height of the splice above the discharge', leadLength(context.facts), 'length'),
    casingHeight(context),
    term('k', 'slack along the pipe', 1 + WIRE_SLACK, 'number'),
    term('a', 'loop at the top', WIRE_LOOP, 'length'),
  ],
  steps: [step('L_w', '(z_d − y + c) × k + a', context.values.wireLength, 'length')],
  as: 'length',
  range: everywhere,
  source: PRACTICE,
  missing: [],
});

export const ropeLength: Explainer = (context) => {
  const { facts, values } = context;
  if (facts.rope === null) {
    return {
      title: 'Length of the rope',
      symbol: 'L_r',
      terms: [term('L_r', 'no rope in the plan', 0, 'length')],
      steps: [step('L_r', 'L_r', 0, 'length')],
      as: 'length',
      formula: 'L_r = 0 without a rope',
      range: everywhere,
      source: 'the plan',
      missing: [],
    };
  }
  const stretch = stretchAccount(context);
  return {
    title: 'Length of the rope',
    symbol: 'L_r',
    terms: [
      discharge(context),
      casingHeight(context),
      term('a', 'two tie-offs', ROPE_TIES, 'length'),
      term('b', 'slack', ROPE_SLACK, 'length'),
      ...stretch.terms,
    ],
    steps: [...stretch.steps, step('L_r', 'z_d + c + a + δ + b', values.ropeLength, 'length')],
    as: 'length',
    range: within(
      `the stretch holds at ${either(context.units, '73 °F', '23 °C')}; colder pipe is stiffer and gives less`,
      null,
    ),
    source: `${PRACTICE}; modulus: PPI Handbook of Polyethylene Pipe, ch. 3, Table B.1.1, or a data sheet for PVC and steel`,
    notes: ['δ is how much longer the drop pipe hangs after fifty years at rest.'],
    missing: [noPumpMass(context), noStaticLevel(context)],
  };
};

/** How much longer the pipe hangs after fifty years: Hooke's law on the load at every depth. */
function stretchAccount(context: Context): Pick<Draft, 'terms' | 'steps'> {
  const { facts, hangingLength, suspension } = context;
  const string = hangingString(facts, hangingLength);
  const stretch = fiftyYearStretch(facts, string, suspension, facts.water.staticLevel);
  if (string === null || stretch === null)
    return { terms: [term('δ', 'stretch of the drop pipe', null, 'length')], steps: [] };
  const level = Math.min(Math.max((facts.water.staticLevel ?? 0) - suspension, 0), hangingLength);
  const weight = pumpWeight({ ...string, waterDepth: level });
  return {
    terms: [
      ...hangingTerms(context, string, level),
      handbookWaterTerm,
      term('W', 'weight of pump and motor as they hang', weight, 'force'),
      term('E', 'modulus of the pipe after fifty years', modulusOfPipe(facts.dropPipe, FIFTY_YEARS), 'modulus'),
      term('δ', 'stretch of the drop pipe', stretch, 'length'),
    ],
    steps: [
      step(
        'δ',
        '((w_p + w_c) × L² / 2 + W × L − γ × (A_w + a_c) × (L² − h²) / 2 + γ × A_i × h² / 2) / (E × A_w)',
        stretch,
        'length',
      ),
    ],
  };
}
