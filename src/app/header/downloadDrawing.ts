/** The drawing as an SVG file: the same scene as on the screen, with its title block. */
import { draw, SPARE_ELSEWHERE, toSvg } from '../../draw/index.ts';
import type { Solution } from '../../model/solution.ts';
import { download, fileName } from './downloads.ts';
import { imprint } from './imprint.ts';

/** px of an exported sheet: section and both details side by side. */
const SHEET = { width: 1000, height: 920 } as const;

export function downloadDrawing(solution: Solution, units: 'us' | 'metric'): void {
  // Who opens the file may not have the face.
  const spare = SPARE_ELSEWHERE;
  const scene = draw(solution, {
    sheet: 'all',
    ...SHEET,
    units,
    theme: 'light',
    caption: true,
    spare,
    imprint: imprint(solution),
  });
  download(toSvg(scene), `${fileName(solution.facts.title)}.svg`, 'image/svg+xml');
}
