/** The well in one line, under its title. */
import type { Solution } from '../../model/solution.ts';
import type { Show } from '../../model/units.ts';

export function sayWell({ facts }: Solution, show: Show): string {
  const { well, depthsFrom } = facts;
  const casing = well.casings.at(-1);
  const foot = casing?.bottom ?? null;
  const cased =
    casing === undefined
      ? ''
      : `${casing.nominalSize} ${casing.material} casing${foot === null ? '' : ` to ${show.depth(foot)}`}, `;
  const datum = depthsFrom === 'ground' ? '' : ' The record counts from the casing top.';
  return `${cased}${well.intake.kind} to ${show.depth(well.bottom)}. Depths from the ground.${datum}`;
}
