/** Ways the string can fail, with the load on the rope in each. */
import type { Context } from '../../explain/context.ts';
import { within } from '../../explain/draft.ts';
import { noPumpMass, noStaticLevel } from '../../explain/missing.ts';
import { step, term } from '../../explain/sum.ts';
import { hangLoad, pumpWeight } from '../../formulas/hangLoad.ts';
import {
  DESIGN_FACTOR,
  KNOT_EFFICIENCY,
  peakOnSlackRope,
  POLYPROPYLENE_ELONGATION,
  requiredRopeStrength,
  ropeFactor,
  ropeLoadLimit,
} from '../../formulas/rope.ts';
import { ROPE_FACTOR } from '../../rules/rope.ts';
import type { Newtons } from '../../si.ts';
import { ROPES, ropeStrength, thinnestRope } from '../../tables/ropes.ts';
import { feet, poundsForce } from '../../units.ts';
import { figure } from '../figure.ts';
import { known } from '../known.ts';
import type { Missing, SheetFigure, SheetTable } from '../sheet.ts';
import { cell, columns, row } from '../table.ts';
import { stringOf, waterBelow } from '../weight/hanging.ts';

/** Strength left after years of use out of the sun. Assumed, no source: an old rope is judged by looking at it. */
export const AGED_SHARE = 0.75;
/** Slack that the drop is figured with. */
const SLACK = feet(2);

export interface Failure {
  readonly key: string;
  readonly what: string;
  readonly load: Newtons | null;
}

export function failures(context: Context): readonly Failure[] {
  const { values } = context;
  const string = stringOf(context);
  const water = waterBelow(context);
  const strength = strengthOf(context);
  const length = lengthOf(context);
  const pump = string === null ? null : known([water], (waterDepth) => pumpWeight({ ...string, waterDepth }));
  const withCable =
    string === null
      ? null
      : known([water], (waterDepth) =>
          hangLoad({
            ...string,
            waterDepth,
            pipeMassPerLength: 0,
            pipeWallArea: 0,
            pipeBoreArea: 0,
            columnHeld: false,
          }),
        );
  const full = values.hangLoadAtRest;
  const onto = (load: Newtons | null) =>
    known([load, strength, length], (weight, breaking, long) =>
      peakOnSlackRope({ load: weight, slack: SLACK, ropeLength: long, breakingStrength: breaking }),
    );
  return [
    { key: 'topFull', what: 'Top joint opens, pipe stays full', load: full },
    { key: 'topDry', what: 'Top joint opens, pipe full, well pumped empty', load: values.hangLoadDry },
    { key: 'topDrained', what: 'Top joint opens, pipe drains', load: values.hangLoadLowering },
    { key: 'pumpJoint', what: 'Joint at the pump opens, pump alone', load: pump },
    { key: 'pumpAndCable', what: 'Joint at the pump opens, pump and cable', load: withCable },
    { key: 'noSlack', what: 'Full pipe comes onto a rope without slack', load: known([full], (weight) => 2 * weight) },
    { key: 'slack', what: `Full pipe falls ${context.show.small(SLACK)} onto a slack rope`, load: onto(full) },
    { key: 'slackDry', what: `The same with the well pumped empty`, load: onto(values.hangLoadDry) },
  ];
}

/** By its label, else by the table for its material and thickness. */
export function strengthOf({ facts }: Context): Newtons | null {
  const { rope } = facts;
  if (rope === null) return null;
  const { material } = rope;
  return rope.breakingStrength ?? known([rope.diameter], (diameter) => ropeStrength({ material, diameter }));
}

function lengthOf({ facts, values, hangingLength }: Context): number | null {
  return facts.rope === null ? null : (values.ropeLength ?? (hangingLength > 0 ? hangingLength : null));
}

export function failureTable(context: Context): SheetTable {
  const { show } = context;
  const strength = strengthOf(context);
  const factorOf = (load: Newtons | null, left: number) =>
    known([load, strength], (weight, breaking) => ropeFactor({ breakingStrength: breaking * left, load: weight }));
  const times = (factor: number) => `${factor.toFixed(1)} times`;
  return {
    key: 'failures',
    title: 'Load on the rope if something lets go',
    columns: columns(
      ['failure', 'What lets go'],
      ['load', 'Load on the rope'],
      ['factor', 'New and knotted it holds'],
      ['aged', 'Aged and knotted'],
      ['verdict', 'Does it hold?'],
    ),
    rows: failures(context).map(({ what, load }) => {
      const factor = factorOf(load, 1);
      const aged = factorOf(load, AGED_SHARE);
      const word = aged === null ? '–' : aged >= ROPE_FACTOR ? 'holds' : aged >= 1 ? 'just holds' : 'parts';
      return row(
        word === 'parts' ? 'does not do' : null,
        what,
        cell(load, show.hook),
        cell(factor, times),
        cell(aged, times),
        word,
      );
    }),
    source:
      'balance of forces; knot 0.5: Cordage Institute CI 1401-06; fall: balance of energy on a linear rope, drag left out; ageing 0.75: assumed, no source',
    note: 'For work with a rope the makers ask for 5 to 12 times; what may only catch once is asked 1.5 times here.',
  };
}

export function ropeFigures(context: Context): SheetFigure[] {
  const { facts, values } = context;
  const strength = strengthOf(context);
  const load = values.hangLoadDry;
  const { rope } = facts;
  const noRope: Missing | null = rope === null ? { path: 'rope', words: 'a rope in the plan' } : null;
  const noStrength: Missing | null =
    strength === null ? { path: 'rope.breakingStrength', words: 'the breaking strength of the rope' } : null;
  const knotted = known([strength], (breaking) => breaking * KNOT_EFFICIENCY);
  const limit = (designFactor: number) =>
    known([strength], (breaking) => ropeLoadLimit({ breakingStrength: breaking, designFactor }));
  const needed = known([load], (weight) => requiredRopeStrength({ load: weight, designFactor: ROPE_FACTOR }));
  const work = known([load], (weight) => requiredRopeStrength({ load: weight, designFactor: DESIGN_FACTOR.least }));
  const peak = failures(context).find(({ key }) => key === 'slack')?.load ?? null;
  const size = needed === null ? null : thinnestRope('polypropylene', needed);
  return [
    figure(
      context,
      {
        key: 'breakingStrength',
        title: 'Breaking strength of the rope, new',
        symbol: 'S',
        value: strength,
        as: 'force',
        missing: [noRope, noStrength],
      },
      () => ({
        terms: [
          term(
            'S',
            rope?.breakingStrength == null ? 'by the table for its material and thickness' : 'by its label',
            strength,
            'force',
          ),
        ],
        steps: [step('S', 'S', strength, 'force')],
        formula: 'S = the label, else the table',
        range: within('a new rope, pulled straight', null),
        source: 'the plan; table: published minimum strengths of three-strand rope',
      }),
    ),
    figure(
      context,
      {
        key: 'knottedStrength',
        title: 'Strength with a knot',
        symbol: 'S_k',
        value: knotted,
        as: 'force',
        missing: [noRope, noStrength],
      },
      () => ({
        terms: [
          term('S', 'breaking strength', strength, 'force'),
          term('η', 'share that a knot leaves', KNOT_EFFICIENCY, 'percent'),
        ],
        steps: [step('S_k', 'S × η', knotted, 'force')],
        range: within('a splice leaves about 90 %', null),
        source: 'Cordage Institute CI 1401-06',
      }),
    ),
    ...[DESIGN_FACTOR.least, DESIGN_FACTOR.most].map((designFactor) =>
      figure(
        context,
        {
          key: `workingLoad${designFactor}`,
          title: `Working load, knotted, at a design factor of ${designFactor}`,
          symbol: 'W',
          value: limit(designFactor),
          as: 'force',
          missing: [noRope, noStrength],
        },
        () => ({
          terms: [
            term('S', 'breaking strength', strength, 'force'),
            term('η', 'share that a knot leaves', KNOT_EFFICIENCY, 'percent'),
            term('f', 'design factor', designFactor, 'number'),
          ],
          steps: [step('W', 'S × η / f', limit(designFactor), 'force')],
          range: within('new rope, steady load; this rope is not for lifting', null),
          source: 'Cordage Institute CI 1401-06',
        }),
      ),
    ),
    figure(
      context,
      {
        key: 'strengthToCatch',
        title: 'Strength that a rope needs to hold the full string once',
        symbol: 'S_n',
        value: needed,
        as: 'force',
        missing: [noPumpMass(context)],
      },
      () => ({
        terms: [
          term('W', 'hanging load, pipe full and well empty', load, 'force'),
          term('f', 'factor', ROPE_FACTOR, 'number'),
          term('η', 'share that a knot leaves', KNOT_EFFICIENCY, 'percent'),
        ],
        steps: [step('S_n', 'W × f / η', needed, 'force')],
        range: within('steady load; a fall onto slack asks for more', null),
        source: 'common practice, no source; knot: Cordage Institute CI 1401-06',
        notes:
          size === null ? ['No usual polypropylene rope is that strong.'] : [`In polypropylene that is ${size.name}.`],
      }),
    ),
    figure(
      context,
      {
        key: 'strengthToWork',
        title: 'The same for work with a rope, design factor 5',
        symbol: 'S_w',
        value: work,
        as: 'force',
        missing: [noPumpMass(context)],
      },
      () => ({
        terms: [
          term('W', 'hanging load, pipe full and well empty', load, 'force'),
          term('f', 'design factor', DESIGN_FACTOR.least, 'number'),
          term('η', 'share that a knot leaves', KNOT_EFFICIENCY, 'percent'),
        ],
        steps: [step('S_w', 'W × f / η', work, 'force')],
        range: within('why nobody should lift a string by its rope', null),
        source: 'Cordage Institute CI 1401-06',
        notes: [
          `The strongest rope in the table holds ${context.show.hook(poundsForce(ROPES.polypropylene.at(-1)?.breakingPounds ?? 0))}.`,
        ],
      }),
    ),
    figure(
      context,
      {
        key: 'fallPeak',
        title: 'Peak when the full string falls onto the slack rope',
        symbol: 'F',
        value: peak,
        as: 'force',
        missing: [noRope, noStrength, noPumpMass(context), noStaticLevel(context)],
      },
      () => ({
        terms: [
          term('W', 'hanging load at rest, pipe full', values.hangLoadAtRest, 'force'),
          term('S', 'breaking strength', strength, 'force'),
          term('e', 'stretch at break', POLYPROPYLENE_ELONGATION, 'percent'),
          term('L', 'length of the rope', lengthOf(context), 'length'),
          term('s', 'slack', SLACK, 'length'),
        ],
        steps: [step('F', 'W × (1 + √(1 + 2 × S × s / (e × L × W)))', peak, 'force')],
        range: within('a rope that stretches evenly up to its break; drag of the water left out', null),
        source: 'textbook balance of energy',
        notes: ['Without any slack the peak is still twice the load.'],
      }),
    ),
  ];
}
