/** Leaders of the details that run under a sign or through words, found from what was drawn. */
import type { Scene } from '../../../src/draw/index.ts';
import { clipSegment, type Box, type Segment } from '../../../src/draw/hatch/clip.ts';
import { extentOf, pathPoints } from '../parts/extent.ts';
import { find, flat, seenText, type TextBox } from '../pictures.ts';

/** Each leader of a detail with its segments; all halos are one path, in which every leader begins with a move. */
export function leadersOf(scene: Scene, view: string): Segment[][] {
  const halos = flat(scene.shapes).find(({ path }) => path === `detail/${view} > leaders > halos`);
  const runs = String(halos?.shape.attrs['d'] ?? '').split(/(?=M)/);
  return runs.filter((run) => run !== '').map(segmentsOf);
}

function segmentsOf(run: string): Segment[] {
  const points = pathPoints(run);
  return points.slice(1).map(([x, y], i): Segment => {
    const [fromX, fromY] = points[i] ?? [x, y];
    return [fromX, fromY, x, y];
  });
}

/** Signs of the findings, numbers of dimensions, the ruler's figures, the word on the motor: whatever is read. */
export function undercut(scene: Scene, spare: number): string[] {
  const words = seenText(scene, spare);
  return scene.details.flatMap(({ place: { view } }) => {
    const leaders = leadersOf(scene, view).flat();
    const signs = scene.marks
      .filter((mark) => mark.view === view)
      .map(({ number }) => ({
        name: `sign ${number}`,
        box: extentOf(find(scene.shapes, `detail/${view} > marks > mark/${number}`)),
      }));
    const texts = words
      .filter(({ path }) => path.startsWith(`detail/${view} > `))
      .map((each: TextBox) => ({ name: `"${each.words}" (${each.path})`, box: each }));
    return [...signs, ...texts]
      .filter(({ box }) => leaders.some((line) => runsInto(line, box)))
      .map(({ name }) => `${view}: a leader runs into ${name}`);
  });
}

/** Hidden by an edge of less than half a pixel is not hidden. */
const GRACE = 0.5;

function runsInto(line: Segment, { left, right, top, bottom }: Box): boolean {
  return (
    clipSegment(line, { left: left + GRACE, right: right - GRACE, top: top + GRACE, bottom: bottom - GRACE }) !== null
  );
}

/** Dimensions whose figure found no place. */
export function withoutFigure(scene: Scene): string[] {
  const shapes = flat(scene.shapes);
  return shapes
    .filter(({ path }) => path.endsWith('Clearance > heads'))
    .map(({ path }) => path.replace(/heads$/, 'figure'))
    .filter((figure) => !shapes.some(({ path }) => path === figure));
}
