/** What hangs on the hook at each depth, on the way up and down; hands or hoist. */
import type { Context } from '../../explain/context.ts';
import { within } from '../../explain/draft.ts';
import { noPumpMass } from '../../explain/missing.ts';
import { step, term } from '../../explain/sum.ts';
import { pullLoad } from '../../formulas/hangLoad.ts';
import { HOIST_LOAD, LIFT_ONE_PERSON, LIFT_TWO_PEOPLE, teamLimit } from '../../formulas/lifting.ts';
import type { Newtons } from '../../si.ts';
import { feet, either } from '../../units.ts';
import { figure } from '../figure.ts';
import { known } from '../known.ts';
import type { SheetFigure, SheetTable } from '../sheet.ts';
import { cell, columns, row } from '../table.ts';
import { stringOf, waterBelow } from './hanging.ts';
import { isBarbed } from '../../tables/pipeMaterials.ts';

/** For a string that sticks. Common practice, no source. */
const STICKING = 1.5;
const MOST_ROWS = 80;

/** Who lifts so much. Threaded pipe wants a hoist at any weight. */
export function whoLifts(load: Newtons, rigid: boolean): string {
  if (rigid || load > HOIST_LOAD) return 'hoist';
  if (load <= LIFT_ONE_PERSON) return 'one person';
  if (load <= LIFT_TWO_PEOPLE) return 'two people';
  return load <= teamLimit(3) ? 'three people' : 'hoist, or more people';
}

export function pullFigures(context: Context): SheetFigure[] {
  const load = context.values.hangLoadDry;
  const stuck = known([load], (weight) => STICKING * weight);
  const rigid = !isBarbed(context.facts.dropPipe);
  const people = known([load], (weight) => weight / LIFT_ONE_PERSON);
  return [
    figure(
      context,
      {
        key: 'pullStuck',
        title: 'Pull to be ready for when lifting, with half more for sticking',
        symbol: 'F',
        value: stuck,
        as: 'force',
        missing: [noPumpMass(context)],
      },
      () => ({
        terms: [
          term('k', 'full and half more', STICKING, 'number'),
          term('T', 'hanging load, pipe full and well empty', load, 'force'),
        ],
        steps: [step('F', 'k × T', stuck, 'force')],
        range: within('stuck for good: stop, and call a rig', null),
        source: 'common practice, no source',
      }),
    ),
    figure(
      context,
      {
        key: 'lifters',
        title: 'Who lifts it',
        symbol: 'n',
        value: people,
        as: 'number',
        text: () => (load === null ? 'not known' : whoLifts(load, rigid)),
        missing: [noPumpMass(context)],
      },
      () => ({
        terms: [
          term('T', 'hanging load, pipe full and well empty', load, 'force'),
          term('T_1', 'most for one person, everything favourable', LIFT_ONE_PERSON, 'force'),
        ],
        steps: [step('n', 'T / T_1', people, 'number')],
        range: within(
          `two together ${either(context.units, '68 lb, three 76 lb, above 150 lb', '31 kg, three 34 kg, above 68 kg')} a hoist; threaded pipe always a hoist`,
          null,
        ),
        source: `NIOSH Applications Manual, DHHS 94-110 (${either(context.units, '51 lb', '23 kg')}); team shares and ${either(context.units, '150 lb', '68 kg')}: from memory, common practice`,
        notes: ['Pulling a wet string hand over hand is outside all of it: for orientation only.'],
      }),
    ),
  ];
}

export function pullTable(context: Context): SheetTable {
  const { show, units, hangingLength } = context;
  const string = stringOf(context);
  const water = waterBelow(context);
  const rigid = !isBarbed(context.facts.dropPipe);
  const usual = units === 'us' ? feet(20) : 5;
  const stepLength = Math.max(1, Math.ceil(hangingLength / usual / MOST_ROWS)) * usual;
  const rows = [];
  for (let out = 0; out <= hangingLength + 1e-9; out += stepLength) {
    const left = Math.max(hangingLength - out, 0);
    const pull = (columnHeld: boolean) =>
      string === null ? null : known([water], (waterDepth) => pullLoad({ ...string, waterDepth, columnHeld }, left));
    const full = pull(true);
    rows.push(
      row(
        null,
        cell(out, show.depth),
        cell(left, show.depth),
        cell(full, show.hook),
        cell(pull(false), show.hook),
        full === null ? '–' : whoLifts(full, rigid),
      ),
    );
  }
  return {
    key: 'pull',
    title: 'On the hook, length by length',
    columns: columns(
      ['out', 'Pipe out of the well'],
      ['left', 'Pipe still in it'],
      ['full', 'On the way up, pipe full'],
      ['drained', 'On the way down, or drained'],
      ['who', 'Who lifts it, full'],
    ),
    rows,
    source: 'balance of forces on the string with the water it holds',
    note: 'Up from the first row, full, since the check valve holds the water; down from the last row. Sticking comes on top.',
  };
}
