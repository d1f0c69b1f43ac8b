/** What can be wrong with the labels of a sheet, found from their places alone. */
import type { Scene } from '../../../src/draw/index.ts';
import type { Shape } from '../../../src/draw/scene.ts';
import { extentOf, pathPoints } from '../parts/extent.ts';
import { undercut, withoutFigure } from './leaders.ts';
import { covered, flat, seenText, type TextBox } from '../pictures.ts';

/** A pixel of overlap is a descender beside a capital, no more. */
const GRACE = 1;

interface Box {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** Words over words, by which both are lost. */
export function overlaps(words: readonly TextBox[]): string[] {
  const sorted = [...words].sort((a, b) => a.top - b.top);
  const found: string[] = [];
  sorted.forEach((a, i) => {
    for (let j = i + 1; j < sorted.length; j++) {
      const b = sorted[j];
      if (b === undefined || b.top >= a.bottom) break;
      if (covered(a, b) > GRACE) found.push(`"${a.words}" (${a.path}) over "${b.words}" (${b.path})`);
    }
  });
  return found;
}

/** Words past an edge of the sheet, or in a detail past its frame, which cuts them. */
export function clipped(scene: Scene, words: readonly TextBox[]): string[] {
  const sheet: Box = { left: 0, top: 0, right: scene.width, bottom: scene.height };
  const frames = new Map(
    scene.frames.map(({ view, x, y, width, height }) => [
      `detail/${view}`,
      { left: x, top: y, right: x + width, bottom: y + height },
    ]),
  );
  return words
    .filter((box) => !contains(frames.get(box.path.split(' > ')[0] ?? '') ?? sheet, box))
    .map(({ words: each, path }) => `"${each}" (${path}) is cut`);
}

/** Words that leave the box that was drawn for them: chips, and the labels of the details. */
export function outOfBox(scene: Scene, words: readonly TextBox[]): string[] {
  const found: string[] = [];
  for (const { path, shape } of flat(scene.shapes)) {
    if (!/(^| > )(chips|beyond) > [^>]+ > body$/.test(path) || shape.tag !== 'rect') continue;
    const owner = path.slice(0, -' > body'.length);
    const box = extentOf(shape);
    for (const each of words)
      if (each.path === `${owner} > name` || each.path === `${owner} > value`)
        if (!contains(box, each)) found.push(`"${each.words}" (${each.path}) leaves its chip`);
  }
  for (const detail of scene.details) {
    const { view } = detail.place;
    const boxes = calloutBoxes(detail.scene.shapes);
    for (const each of words) {
      if (!each.path.startsWith(`detail/${view} > labels > `) || each.path.includes('/sign')) continue;
      if (!boxes.some((box) => contains(box, each))) found.push(`"${each.words}" (${each.path}) leaves its label`);
    }
  }
  return found;
}

function calloutBoxes(shapes: readonly Shape[]): Box[] {
  return flat(shapes)
    .filter(({ path, shape }) => /^boxes > /.test(path) && shape.tag === 'path')
    .flatMap(({ shape }) => (shape.d ?? '').split('z'))
    .filter((d) => d !== '')
    .map((d) => {
      const points = pathPoints(d);
      const xs = points.map(([x]) => x);
      const ys = points.map(([, y]) => y);
      return { left: Math.min(...xs), right: Math.max(...xs), top: Math.min(...ys), bottom: Math.max(...ys) };
    });
}

type Segment = readonly [number, number, number, number];

/** Leaders of the section that cross one another, or run through words. */
export function crossings(scene: Scene, words: readonly TextBox[]): string[] {
  const leaders = flat(scene.shapes)
    .filter(({ path }) => /^leaders > /.test(path))
    .map(({ path, shape }) => ({ path, segments: segmentsOf(shape.d ?? '') }));
  const found: string[] = [];
  leaders.forEach((mine, i) => {
    for (const other of leaders.slice(i + 1))
      if (mine.segments.some((a) => other.segments.some((b) => cross(a, b))))
        found.push(`${mine.path} crosses ${other.path}`);
    for (const box of words)
      if (mine.segments.some((each) => runsThrough(each, box))) found.push(`${mine.path} runs through "${box.words}"`);
  });
  return found;
}

function segmentsOf(d: string): Segment[] {
  const points = pathPoints(d);
  return points.slice(1).map(([x, y], i): Segment => {
    const [fromX, fromY] = points[i] ?? [x, y];
    return [fromX, fromY, x, y];
  });
}

/** Do two segments cross at an inner point? By the signs of the four triangles that they span. */
export function cross([ax, ay, bx, by]: Segment, [cx, cy, dx, dy]: Segment): boolean {
  const side = (px: number, py: number, qx: number, qy: number, rx: number, ry: number): number =>
    Math.sign((qx - px) * (ry - py) - (qy - py) * (rx - px));
  return (
    side(ax, ay, bx, by, cx, cy) * side(ax, ay, bx, by, dx, dy) < 0 &&
    side(cx, cy, dx, dy, ax, ay) * side(cx, cy, dx, dy, bx, by) < 0
  );
}

/** Through the letters, not along their edge. */
function runsThrough([ax, ay, bx, by]: Segment, { left, right, top, bottom }: Box): boolean {
  const inner = { left: left + GRACE, right: right - GRACE, top: top + GRACE, bottom: bottom - GRACE };
  const inside = (x: number, y: number): boolean =>
    x > inner.left && x < inner.right && y > inner.top && y < inner.bottom;
  const corners: Segment[] = [
    [inner.left, inner.top, inner.right, inner.bottom],
    [inner.left, inner.bottom, inner.right, inner.top],
  ];
  return inside(ax, ay) || inside(bx, by) || corners.some((each) => cross(each, [ax, ay, bx, by]));
}

/** Chips out of the order of what they read, or over each other. */
export function disorder({ chips: unordered, marks }: Scene): string[] {
  const found: string[] = [];
  const chips = [...unordered].sort((a, b) => a.y - b.y);
  chips.forEach((chip, i) => {
    const above = chips[i - 1];
    if (above === undefined) return;
    if (chip.y < above.y + above.height - 1e-6) found.push(`chip ${chip.handle} lies over ${above.handle}`);
    if (chip.lineY < above.lineY - 1e-6) found.push(`chip ${chip.handle} stands below ${above.handle}`);
  });
  const own = marks.filter(({ view }) => view === 'O');
  own.forEach((mark, i) => {
    for (const other of own.slice(i + 1))
      if (Math.abs(mark.y - other.y) < mark.size - 1e-6) found.push(`mark ${mark.number} lies over ${other.number}`);
  });
  return found;
}

function contains(outer: Box, inner: Box): boolean {
  return (
    inner.left >= outer.left - GRACE &&
    inner.right <= outer.right + GRACE &&
    inner.top >= outer.top - GRACE &&
    inner.bottom <= outer.bottom + GRACE
  );
}

export function labelFaults(scene: Scene, spare: number): string[] {
  const words = seenText(scene, spare);
  return [
    ...overlaps(words),
    ...clipped(scene, words),
    ...outOfBox(scene, words),
    ...crossings(scene, words),
    ...disorder(scene),
    ...undercut(scene, spare),
    ...withoutFigure(scene),
  ];
}
