/** What lines the hole: casings in one another, screens, and what closes the lowest of them. */
import { drawCasing, wallCut } from '../parts/casing.ts';
import { entryArrows } from '../parts/entries.ts';
import { block, straight } from '../parts/outline.ts';
import { drawScreen } from '../parts/screen.ts';
import type { Shape } from '../scene.ts';
import { faced, path, type Point } from '../shapes.ts';
import { packRadius } from './annulus.ts';
import { counter } from './counter.ts';
import { solidCasings } from './solidCasings.ts';
import { within, type Stage } from './stage.ts';

export function drawWalls(stage: Stage): Shape[] {
  const { solution, pen } = stage;
  const shapes: Shape[] = [];
  for (const casing of solidCasings(solution)) {
    if (!within(stage, casing.top, casing.bottom ?? Infinity)) continue;
    shapes.push(drawCasing(casing.key, pen, casing, wallCut(casing.material, pen)));
  }
  const name = counter();
  for (const stretch of solution.bore) {
    if (stretch.kind !== 'screen') continue;
    const key = name('screen');
    if (!within(stage, stretch.top, stretch.bottom)) continue;
    shapes.push(drawScreen(key, pen, stretch));
    const top = pen.y(Math.max(stretch.top, pen.top));
    const foot = pen.y(Math.min(stretch.bottom, pen.bottom));
    if (foot - top < 12) continue;
    shapes.push(
      path(
        `${key}/entry`,
        entryArrows(pen.x(0), packRadius(solution, stretch) * pen.across, top, foot),
        faced('none', pen.tones.waterEdge, 1.4),
      ),
    );
  }
  const { bottom, intake } = solution.facts.well;
  const last = solution.bore[solution.bore.length - 1];
  if (last !== undefined && last.kind !== 'openHole' && within(stage, bottom - 0.1, bottom + 0.1)) {
    const y = pen.y(bottom);
    const half = last.outsideRadius * pen.across + 1;
    const tip: Point[] = [
      [pen.x(0) - half, y - 2],
      [pen.x(0) + half, y - 2],
      [pen.x(0), y + half * 1.6],
    ];
    shapes.push(
      intake.kind === 'driven point'
        ? path('drivePoint', straight(tip), { fill: pen.tones.steel.shadow, stroke: pen.tones.steel.edge })
        : path('bottomPlate', block(pen.x(-last.outsideRadius), y - 3, pen.x(last.outsideRadius), y), {
            fill: pen.tones.metalWall.fill,
            stroke: pen.tones.metalWall.ink,
          }),
    );
  }
  return shapes;
}
