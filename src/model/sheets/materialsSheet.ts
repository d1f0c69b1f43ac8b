/** Materials: dissimilar metals, fittings against size systems, lead, drinking-water certification. */
import { contextOf } from '../explain/context.ts';
import type { Context } from '../explain/context.ts';
import { within } from '../explain/draft.ts';
import type { UnitSystem } from '../explain/measure.ts';
import { step, term } from '../explain/sum.ts';
import { galvanicDifference, LEAD_FREE_LIMIT } from '../formulas/corrosion.ts';
import type { Solution, Solved } from '../solution.ts';
import { figure } from './figure.ts';
import { metalCouples, metalTable, waterOf } from './materials/pairs.ts';
import { barbGap, sizeSystemTable } from './materials/sizes.ts';
import type { Missing, Sheet, SheetFigure } from './sheet.ts';
import { either, inches } from '../units.ts';

export function materialsSheet(solution: Solution | Solved, units: UnitSystem): Sheet {
  const context = contextOf(solution, units);
  return {
    key: 'materials',
    title: 'Materials',
    figures: [...waterFigures(context), worstFigure(context), barbFigure(context), leadFigure(context)],
    tables: [metalTable(context), sizeSystemTable(context)],
    notes: [
      WATER_WORDS[waterOf(context)],
      'Never make the small part the one that gives way: a galvanized nipple on a stainless pump loses its zinc, then its thread.',
      'Plastic drop pipe does not part the metals: the ground wire joins them again.',
    ],
    cautions: [
      'Everything that touches the water must be lead free, 0.25 % at most on average over its wetted surface (42 U.S.C. 300g-6). Look for the mark of NSF/ANSI/CAN 61 and 372 on each part: this sheet cannot tell whether a part bears it.',
      'Never take a required ground or bond wire off to stop corrosion.',
    ],
  };
}

const WATER_WORDS = {
  mild: 'The water is mild to metals: little conductivity and no acid.',
  between: 'The water is not known to be mild: it is judged as one that attacks metals.',
  aggressive: 'The water attacks metals: acid, or much dissolved in it.',
} as const;

function waterFigures(context: Context): SheetFigure[] {
  const { acidity, conductivity } = context.facts.water;
  const source =
    'pH: guidance on monitoring wells after Driscoll (1986), Groundwater and Wells; conductivity: a choice, no source';
  return [
    figure(
      context,
      {
        key: 'acidity',
        title: 'pH of the water',
        symbol: 'pH',
        value: acidity,
        as: 'number',
        missing: [{ path: 'water.pH', words: 'the pH of the water' }],
      },
      () => ({
        terms: [term('x', 'pH as reported', acidity, 'number')],
        steps: [step('x', 'x', acidity, 'number')],
        formula: 'pH = as reported',
        range: within('7 or more is mild', acidity === null ? null : acidity >= 7),
        source,
      }),
    ),
    figure(
      context,
      {
        key: 'conductivity',
        title: 'Conductivity of the water',
        symbol: 'κ',
        value: conductivity,
        as: 'number',
        text: (value) => `${Math.round(value * 1e4)} µS/cm`,
        missing: [{ path: 'water.conductivity', words: 'the conductivity of the water' }],
      },
      () => ({
        terms: [term('κ', 'as reported, in µS/cm', conductivity === null ? null : conductivity * 1e4, 'number')],
        steps: [step('κ', 'κ', conductivity === null ? null : conductivity * 1e4, 'number')],
        formula: 'κ = as reported',
        range: within(
          'under 500 µS/cm is mild, over 1,500 µS/cm attacks',
          conductivity === null ? null : conductivity < 0.05,
        ),
        source,
      }),
    ),
  ];
}

/** The widest difference among metals that something joins. */
function worstFigure(context: Context): SheetFigure {
  const joined = metalCouples(context).filter(({ areas }) => areas !== 'apart');
  const worst = joined.reduce<(typeof joined)[number] | null>(
    (most, each) =>
      most === null ||
      galvanicDifference(each.first.metal, each.second.metal) > galvanicDifference(most.first.metal, most.second.metal)
        ? each
        : most,
    null,
  );
  const value = worst === null ? null : galvanicDifference(worst.first.metal, worst.second.metal);
  return figure(
    context,
    {
      key: 'widestDifference',
      title: 'Widest difference of metals that are joined',
      symbol: 'ΔE',
      value,
      as: 'volts',
      missing: [{ path: null, words: 'two metals that are joined: there are none' }],
    },
    () => ({
      terms: [
        term(
          'ΔE',
          worst === null ? 'difference' : `${worst.first.name} and ${worst.second.name}, ${worst.joined}`,
          value,
          'volts',
        ),
      ],
      steps: [step('ΔE', 'ΔE', value, 'volts')],
      formula: 'ΔE = difference of the two potentials',
      range: within(
        'to 0.15 V harmless even in a harsh place, to 0.25 V in a normal one',
        value === null ? null : value <= 0.25 + 1e-9,
      ),
      source: 'galvanic series of the kind ASTM G82 describes; limits: common practice',
    }),
  );
}

function barbFigure(context: Context): SheetFigure {
  const { dropPipe } = context.facts;
  const gap = barbGap(dropPipe);
  const none: Missing = { path: null, words: 'a pipe that takes insert fittings' };
  return figure(
    context,
    {
      key: 'barbPlay',
      title: 'Play of the usual insert fitting in the drop pipe',
      symbol: 'g',
      value: gap,
      as: 'bore',
      missing: [none],
    },
    () => ({
      terms: [
        term('d', 'bore of the pipe', dropPipe.insideDiameter, 'bore'),
        term('d_b', 'bore that the barb was made for', gap === null ? null : dropPipe.insideDiameter - gap, 'bore'),
      ],
      steps: [step('g', 'd − d_b', gap, 'bore')],
      range: within(
        `up to ${either(context.units, '0.010 in', '0.25 mm')} either way it fits`,
        gap === null ? null : Math.abs(gap) <= inches(0.01) + 1e-9,
      ),
      source: 'ASTM D2239, D3035, D2737; limits: a choice, no source',
    }),
  );
}

function leadFigure(context: Context): SheetFigure {
  return figure(
    context,
    {
      key: 'leadAverage',
      title: 'Lead, on average over the wetted surface',
      symbol: 'w',
      value: null,
      as: 'percent',
      missing: [{ path: null, words: 'the lead of each part, from its maker: no plan holds it' }],
    },
    () => ({
      terms: [term('w_m', 'most that counts as lead free', LEAD_FREE_LIMIT, 'percent')],
      steps: [],
      formula: 'w = Σ lead × area / Σ area',
      range: within('0.25 % at most; solder and flux 0.2 %', null),
      source: '42 U.S.C. 300g-6(d), the federal rule on lead in plumbing',
    }),
  );
}
