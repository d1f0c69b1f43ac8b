/** The drawing as it leaves the page: the well as planned, on a sheet for screens or laid out for paper. */
import { draw, SPARE_ELSEWHERE, toSvg, type Paper } from '../../draw/index.ts';
import type { View } from '../../draw/view.ts';
import type { Solution } from '../../model/solution.ts';
import { imprint } from '../header/imprint.ts';
import type { Units } from '../state/settings.svelte.ts';

/** px of an exported sheet: section and both details side by side. */
const SHEET = { width: 1000, height: 920 } as const;

export function screenSvg(solution: Solution, units: Units): string {
  return exported(solution, units, { ...SHEET, theme: 'light' });
}

/** To a standard scale, in millimetres: what the Print button begins with. */
export function paperSvg(solution: Solution, units: Units, paper: Paper): string {
  return exported(solution, units, { width: 0, height: 0, theme: 'print', paper });
}

function exported(
  solution: Solution,
  units: Units,
  view: Pick<View, 'width' | 'height' | 'theme'> & { readonly paper?: Paper },
): string {
  // Who opens the file may not have the face.
  const spare = SPARE_ELSEWHERE;
  return toSvg(draw(solution, { sheet: 'all', ...view, units, caption: true, spare, imprint: imprint(solution) }));
}
