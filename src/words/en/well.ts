/** The well in one line, under its title. */
import type { CasingFacts } from '../../model/facts.ts';
import type { Solution } from '../../model/solution.ts';
import type { Show } from '../../model/units.ts';
import { capital } from './phrases.ts';

export function sayWell({ facts }: Solution, show: Show): string {
  const { well, depthsFrom } = facts;
  const casing = well.casings.at(-1);
  const foot = casing?.bottom ?? null;
  const cased = casing === undefined ? '' : `${nameOf(casing)}${foot === null ? '' : ` to ${show.depth(foot)}`}, `;
  const datum = depthsFrom === 'ground' ? '' : ' The record counts from the casing top.';
  const screenFeet = well.intake.screens.map(({ bottom }) => bottom);
  const screened = well.intake.kind === 'screen' && screenFeet.length > 0 ? Math.max(...screenFeet) : well.bottom;
  const below = well.bottom - screened > 0.01 ? `, bottom at ${show.depth(well.bottom)}` : '';
  return `${capital(`${cased}${well.intake.kind ?? 'well'}`)} to ${show.depth(screened)}${below}. Depths from the ground.${datum}`;
}

/** "6 in steel casing", as far as anybody said. */
function nameOf({ nominalSize, material }: CasingFacts): string {
  return [nominalSize, material === 'other' ? '' : material, 'casing'].filter((word) => word !== '').join(' ');
}
