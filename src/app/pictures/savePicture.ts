/** The drawing as a file: for a screen as SVG or PNG, for paper as an SVG that measures what the sheet does. */
import type { Solution } from '../../model/solution.ts';
import { download, fileName } from '../header/downloads.ts';
import { paperFor } from '../header/paperFor.ts';
import type { Units } from '../state/settings.svelte.ts';
import { paperSvg, screenSvg } from './exportedSvg.ts';

export type PictureKind = 'svg' | 'png' | 'paper';

/** @throws Error when the browser cannot make a PNG */
export async function savePicture(kind: PictureKind, solution: Solution, units: Units): Promise<void> {
  const name = fileName(solution.facts.title);
  if (kind === 'svg') download(screenSvg(solution, units), `${name}.svg`, 'image/svg+xml');
  else if (kind === 'paper') {
    const sheet = paperFor(units);
    download(paperSvg(solution, units, sheet.paper), `${name}-${sheet.name}.svg`, 'image/svg+xml');
  } else {
    const { svgToPng } = await import('./svgToPng.ts');
    download(await svgToPng(screenSvg(solution, units)), `${name}.png`, 'image/png');
  }
}
