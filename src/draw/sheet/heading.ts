/** Title and what stands under it: which well this is, and from where its depths count. */
import type { Solution } from '../../model/solution.ts';
import type { Show } from '../../model/units.ts';
import type { ShortLanguage } from '../../words/words.ts';
import type { Shape } from '../scene.ts';
import { group, text } from '../shapes.ts';
import type { Ink } from '../theme.ts';
import type { Measure } from '../type/measure.ts';
import { unbroken } from '../type/unbroken.ts';
import { hold } from '../type/width.ts';
import { lookOf } from '../hatch/materials.ts';
import type { SheetLayout } from '../layout.ts';
import type { WordedView } from '../view.ts';

export function titleOf({ facts }: Solution, { sheet }: ShortLanguage): string {
  return facts.title === '' ? sheet.title : facts.title;
}

/**
 * Two sentences.
 *
 * @param hold  keeps a figure and its unit on one line, where `show` does so too
 */
export function subtitleOf(
  { facts: { well } }: Solution,
  { sheet }: ShortLanguage,
  show: Show,
  hold = asItIs,
): readonly [well: string, depths: string] {
  const { casings, intake, layers } = well;
  const last = casings[casings.length - 1];
  const deepest = layers[layers.length - 1];
  const screened = intake.kind === 'screen' ? intake.screens[intake.screens.length - 1] : undefined;
  const said = sheet.well(
    {
      pipe:
        last === undefined
          ? null
          : {
              isLiner: casings.length > 1,
              size: hold(last.nominalSize),
              material: last.material,
              bottom: last.bottom,
            },
      intake: intake.kind,
      bottom: screened?.bottom ?? well.bottom,
      rock: deepest !== undefined && lookOf(deepest.material).ground === 'rock' ? deepest.material : null,
    },
    show,
  );
  return [said, sheet.depthsFrom(show)];
}

function asItIs(words: string): string {
  return words;
}

/** On one line; else one sentence a line, rather than the last word alone; else as it comes. */
export function subtitleLines(
  solution: Solution,
  { words, units, sheet }: WordedView,
  width: number,
  type: Measure,
): readonly string[] {
  const [well, depths] = subtitleOf(solution, words, unbroken(units), hold);
  // In the house heights count from its floor, as its own frame says.
  const sentences = sheet === 'house' ? [well] : [well, depths];
  const lines = type.wrap(sentences.join(' '), width, 13, 2);
  if (lines.length === 1) return lines;
  return sentences.every((each) => type.width(each, 13) <= width) ? sentences : lines;
}

export interface Heading {
  readonly title: string;
  readonly lines: readonly string[];
}

export function drawHeading(
  { title, lines }: Heading,
  { x, width, size }: SheetLayout['heading'],
  ink: Ink,
  type: Measure,
): Shape {
  return group('heading', [
    text('name', x, 14 + size * 0.82, type.shorten(title, width, size, 600), {
      size,
      weight: 600,
      fill: ink.ink,
    }),
    ...lines.map((line, i) =>
      text(`line/${i === 0 ? 'first' : 'second'}`, x, 14 + size + 15 + i * 17, line, { size: 13, fill: ink.ink2 }),
    ),
  ]);
}
