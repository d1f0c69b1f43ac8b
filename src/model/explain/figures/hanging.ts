/** What hangs from the top: while it is lowered, at rest, while pumping, and with the well empty. */
import { hangingString } from '../../figures/hanging.ts';
import { levelsOf } from '../../figures/levels.ts';
import { pumpWeight } from '../../formulas/hangLoad.ts';
import type { HangingString } from '../../formulas/hangLoad.ts';
import { STANDARD_GRAVITY } from '../../formulas/water.ts';
import type { ValueName } from '../../solution.ts';
import { handbookWaterTerm } from '../context.ts';
import type { Context } from '../context.ts';
import { within } from '../draft.ts';
import type { Draft, Explainer } from '../draft.ts';
import type { Missing } from '../explanation.ts';
import { noDemand, noDrawdown, noPumpMass, noStaticLevel } from '../missing.ts';
import { step, term } from '../sum.ts';
import type { Term } from '../sum.ts';

export const hangLoadLowering: Explainer = (context) =>
  load(context, {
    name: 'hangLoadLowering',
    title: 'Hanging load in place, pipe not yet filled above the water',
    level: context.facts.water.staticLevel,
    full: false,
    missing: [noPumpMass(context), noStaticLevel(context)],
  });

export const hangLoadAtRest: Explainer = (context) =>
  load(context, {
    name: 'hangLoadAtRest',
    title: 'Hanging load at rest, pipe full',
    level: context.facts.water.staticLevel,
    full: true,
    missing: [noPumpMass(context), noStaticLevel(context)],
  });

export const hangLoadPumping: Explainer = (context) =>
  load(context, {
    name: 'hangLoadPumping',
    title: 'Hanging load while pumping',
    level: drawnTo(context),
    full: true,
    missing: [noPumpMass(context), noStaticLevel(context), noDrawdown(context), noDemand(context)],
  });

export const hangLoadDry: Explainer = (context) =>
  load(context, {
    name: 'hangLoadDry',
    title: 'Hanging load with the pipe full and the well empty',
    level: Infinity,
    full: true,
    missing: [noPumpMass(context)],
  });

/** Never below the intake, where the pump draws air. */
function drawnTo({ facts }: Context): number | null {
  const { falls } = levelsOf(facts);
  return falls === null ? null : Math.min(falls, facts.pump.setting);
}

interface Hanging {
  readonly name: ValueName;
  readonly title: string;
  /** Depth of the water outside. */
  readonly level: number | null;
  readonly full: boolean;
  readonly missing: readonly (Missing | null)[];
}

function load(context: Context, { name, title, level, full, missing }: Hanging): Draft {
  const { facts, hangingLength, suspension, values } = context;
  const string = hangingString(facts, hangingLength);
  const along = level === null ? null : Math.min(Math.max(level - suspension, 0), hangingLength);
  const pump = string === null || along === null ? null : pumpWeight({ ...string, waterDepth: along });
  return {
    title,
    symbol: 'T',
    terms: [
      ...hangingTerms(context, string, along),
      handbookWaterTerm,
      term(
        'W',
        along === hangingLength
          ? 'weight of pump and motor'
          : 'weight of pump and motor, less a fifth that the water bears',
        pump,
        'force',
      ),
    ],
    steps: [
      step(
        'T',
        `(w_p + w_c) × L + W − γ × (A_w + a_c) × (L − h)${full ? ' + γ × A_i × h' : ''}`,
        values[name],
        'force',
      ),
    ],
    as: 'force',
    range: within('hanging still; without rope, valves and clamps. Starting and lifting add to it', null),
    source:
      'Archimedes’ principle on the string with the water it holds; mass of pump and motor by power: common practice, no source',
    notes: ['Cable as a model of flat jacketed cable: real cable differs by 15 %.'],
    missing,
  };
}

/** Lengths, weights and areas that loads and stretch have in common. */
export function hangingTerms({ hangingLength }: Context, string: HangingString | null, level: number | null): Term[] {
  const weigh = (mass: number | undefined) => (mass === undefined ? null : mass * STANDARD_GRAVITY);
  return [
    term('w_p', 'weight of the dry pipe by length', weigh(string?.pipeMassPerLength), 'weightPerLength'),
    term(
      'w_c',
      'weight of the cable by length, ground wire included',
      weigh(string?.cableMassPerLength),
      'weightPerLength',
    ),
    term('L', 'length that hangs', hangingLength, 'length'),
    term('h', 'depth of the water outside, along the string', level, 'length'),
    term('A_w', 'section of the pipe’s wall', string?.pipeWallArea ?? null, 'area'),
    term('A_i', 'section of the pipe’s bore', string?.pipeBoreArea ?? null, 'area'),
    term('a_c', 'section of the cable', string?.cableArea ?? null, 'area'),
  ];
}
