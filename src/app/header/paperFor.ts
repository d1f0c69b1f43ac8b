/** Which paper a printer holds where a well is measured in these units. */
import { A4, LETTER, type Paper } from '../../draw/index.ts';
import type { Units } from '../state/settings.svelte.ts';

/** Feet and letter paper are used in the same countries: common practice, no source. */
export function paperFor(units: Units): { readonly name: 'letter' | 'a4'; readonly paper: Paper } {
  return units === 'us' ? { name: 'letter', paper: LETTER } : { name: 'a4', paper: A4 };
}
