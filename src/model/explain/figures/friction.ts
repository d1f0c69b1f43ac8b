/** Friction in straight pipe, by Darcy-Weisbach and by Hazen-Williams to compare. */
import type { PipeFacts } from '../../facts.ts';
import {
  darcyFactor,
  hazenWilliamsHead,
  LAMINAR_TO,
  reynoldsNumber,
  TURBULENT_FROM,
  velocityIn,
} from '../../formulas/friction.ts';
import { inches, either } from '../../units.ts';
import { gravityTerm } from '../context.ts';
import type { Context } from '../context.ts';
import { within } from '../draft.ts';
import type { Draft, Explainer } from '../draft.ts';
import type { Missing } from '../explanation.ts';
import { noDemand, noDistance, noLine } from '../missing.ts';
import { step, term } from '../sum.ts';
import { factorAccount } from './frictionFactor.ts';

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
    title: 'Friction in the line to the house',
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
  const account =
    pipe === null || reynolds === null || factor === null
      ? { terms: [], steps: [], notes: [] }
      : factorAccount(reynolds, factor, pipe.roughness / pipe.insideDiameter);
  return {
    title: run.title,
    symbol: run.symbol,
    terms: [
      term('Q', 'peak flow needed', flow, 'flow'),
      term('L', run.lengthIs, length, 'length'),
      term('d', 'bore of the pipe', pipe?.insideDiameter ?? null, 'bore'),
      term('e', 'roughness of its wall', pipe?.roughness ?? null, 'roughness'),
      term('ν', 'kinematic viscosity of the water', viscosity, 'viscosity'),
      gravityTerm,
      term('v', 'velocity in the pipe', velocity, 'velocity'),
      term('Re', 'Reynolds number', reynolds, 'number'),
      term('f', 'Darcy friction factor', factor, 'number'),
      ...account.terms,
    ],
    steps: [
      step('v', '4 × Q / (π × d²)', velocity, 'velocity'),
      ...account.steps,
      step(run.symbol, reynolds === null ? '0 × L' : 'f × (L / d) × v² / (2 × g)', run.result, 'length'),
    ],
    as: 'length',
    range: within(
      'round pipe running full; between Re 2000 and 4000 no flow has one answer',
      reynolds === null ? null : waterInRange && (reynolds < LAMINAR_TO || reynolds >= TURBULENT_FROM),
    ),
    source: COLEBROOK,
    notes: account.notes,
    missing: run.missing,
  };
}

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
    title: 'Friction in the line to the house by Hazen-Williams',
    symbol: 'h_l′',
    pipe: context.facts.house.line,
    length: context.facts.house.distance,
    lengthIs: 'length of the line from well to house',
    result: context.values.frictionLineHazenWilliams,
    missing: [noDemand(context), noLine(context), noDistance(context)],
  });

function hazenWilliams({ facts, units, values }: Context, run: PipeRun): Draft {
  const { pipe, length } = run;
  const darcy = run.symbol === 'h_d′' ? values.frictionDropPipe : values.frictionLine;
  const small = pipe !== null && darcy !== null && darcy > 0 && pipe.insideDiameter < inches(2);
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
      term('Q', 'peak flow needed', facts.house.demand, 'flow'),
      term('C', 'coefficient of the pipe', pipe?.hazenWilliams ?? null, 'number'),
      term('d', 'bore of the pipe', pipe?.insideDiameter ?? null, 'bore'),
    ],
    steps: [step(run.symbol, 'k × L × (Q / C)^1.852 / d^4.871', run.result, 'length')],
    as: 'length',
    range: within(
      `turbulent flow of water near ${either(units, '60 °F', '16 °C')}; 2 in pipe and larger by origin, used below by habit`,
      small ? false : null,
    ),
    source: 'EPANET 2.2 User Manual, ch. 3, pipe headloss formulas',
    notes: [
      'For comparison: it knows no temperature, and in small smooth pipe with cold water lies under Darcy-Weisbach.',
    ],
    missing: run.missing,
  };
}
