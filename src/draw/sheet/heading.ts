/** Title and the one sentence under it: what well this is, and from where its depths count. */
import type { Metres } from '../../model/si.ts';
import type { Solution } from '../../model/solution.ts';
import type { Show } from '../../model/units.ts';
import type { Shape } from '../scene.ts';
import { group, text } from '../shapes.ts';
import type { Ink } from '../theme.ts';
import type { Measure } from '../type/measure.ts';
import { hold } from '../type/width.ts';
import { lookOf } from '../hatch/materials.ts';

export function titleOf({ facts }: Solution): string {
  return facts.title === '' ? 'Drilled water well' : facts.title;
}

/** @param hold  keeps a figure and its unit on one line */
export function subtitleOf({ facts }: Solution, show: Show, hold = asItIs): string {
  const { casings, intake, bottom } = facts.well;
  const last = casings[casings.length - 1];
  const depth = (metres: Metres): string => hold(show.depth(metres));
  const material = last?.material === 'other' ? '' : `${last?.material ?? ''} `;
  const size = last === undefined || last.nominalSize === '' ? '' : `${hold(last.nominalSize)} `;
  const to = last?.bottom == null ? '' : ` to ${depth(last.bottom)}`;
  const unit = show.units === 'us' ? 'feet' : 'metres';
  const deepest = facts.well.layers[facts.well.layers.length - 1];
  const rock =
    deepest !== undefined && lookOf(deepest.material).ground === 'rock'
      ? ` ${deepest.material.toLowerCase()}`
      : ' hole';
  const below: Readonly<Record<typeof intake.kind, string>> = {
    'open hole': `open${rock} to ${depth(bottom)}`,
    screen: `screen to ${depth(intake.screens[intake.screens.length - 1]?.bottom ?? bottom)}`,
    'driven point': `driven point to ${depth(bottom)}`,
    dug: `dug to ${depth(bottom)}`,
  };
  const pipe = casings.length > 1 ? 'liner' : 'casing';
  const said = `${size}${material}${pipe}${to}, ${below[intake.kind]}. Depths from the ground, in ${unit}.`;
  return said.charAt(0).toUpperCase() + said.slice(1);
}

function asItIs(words: string): string {
  return words;
}

/** On one line; else one sentence a line, rather than the last word alone; else as it comes. */
export function subtitleLines(solution: Solution, show: Show, width: number, type: Measure): string[] {
  const said = subtitleOf(solution, show, hold);
  const lines = type.wrap(said, width, 13, 400, 2);
  if (lines.length === 1) return lines;
  const sentences = said.split(SENTENCES);
  return sentences.length === 2 && sentences.every((each) => type.width(each, 13) <= width) ? sentences : lines;
}

/** A full stop and a capital: not the point of a number. */
const SENTENCES = /(?<=\.) (?=[A-Z])/;

export function drawHeading(
  solution: Solution,
  lines: readonly string[],
  place: { x: number; width: number; size: number },
  ink: Ink,
  type: Measure,
): Shape {
  const { x, width, size } = place;
  return group('heading', [
    text('name', x, 14 + size * 0.82, type.shorten(titleOf(solution), width, size, 600), {
      size,
      weight: 600,
      fill: ink.ink,
    }),
    ...lines.map((line, i) =>
      text(`line/${i === 0 ? 'first' : 'second'}`, x, 14 + size + 15 + i * 17, line, { size: 13, fill: ink.ink2 }),
    ),
  ]);
}
