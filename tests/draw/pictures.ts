/** What the tests of drawings share: shapes laid flat, boxes of text, plans drawn. */
import { draw } from '../../src/draw/index.ts';
import type { Scene, View } from '../../src/draw/index.ts';
import type { Shape } from '../../src/draw/scene.ts';
import { measureWith } from '../../src/draw/type/measure.ts';
import type { Weight } from '../../src/draw/type/width.ts';
import { solve, type Plan, type Solution } from '../../src/model/index.ts';

export const SHEET: View = { sheet: 'all', width: 1000, height: 960, units: 'us', theme: 'light' };

export function picture(plan: Plan, view: Partial<View> = {}): { solution: Solution; scene: Scene } {
  const solution = solve(plan);
  return { solution, scene: draw(solution, { ...SHEET, ...view }) };
}

/** What text takes from the shapes around it. */
interface Style {
  readonly anchor: string;
  readonly size: number;
  readonly weight: number;
}

const PLAIN: Style = { anchor: 'start', size: NaN, weight: 400 };

/** Every shape with the words of its ancestors: "string > pumpBody > outline". */
export function flat(
  shapes: readonly Shape[],
  above = '',
  style: Style = PLAIN,
): (Style & { path: string; shape: Shape })[] {
  return shapes.flatMap((shape) => {
    const path = above === '' ? shape.key : `${above} > ${shape.key}`;
    const { attrs } = shape;
    const own = {
      anchor: String(attrs['text-anchor'] ?? style.anchor),
      size: Number(attrs['font-size'] ?? style.size),
      weight: Number(attrs['font-weight'] ?? style.weight),
    };
    return [{ path, shape, ...own }, ...flat(shape.children ?? [], path, own)];
  });
}

export function find(shapes: readonly Shape[], path: string): Shape {
  const found = flat(shapes).find((each) => each.path === path || each.path.endsWith(` > ${path}`));
  if (found === undefined)
    throw new Error(
      `no shape "${path}"; there are ${flat(shapes)
        .map((each) => each.path)
        .join(', ')}`,
    );
  return found.shape;
}

export function number(shape: Shape, name: string): number {
  const value = shape.attrs[name];
  if (typeof value !== 'number') throw new Error(`${shape.key} has no number "${name}"`);
  return value;
}

export interface TextBox {
  readonly path: string;
  readonly words: string;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** The text of the sheet as it is seen: what a frame crops is as wide as the frame leaves it. */
export function seenText(scene: Scene, spare = 1): TextBox[] {
  const cropped = scene.shapes.flatMap((shape) => {
    if (shape.tag !== 'svg') return [];
    const left = number(shape, 'x');
    const top = number(shape, 'y');
    const frame = { left, top, right: left + number(shape, 'width'), bottom: top + number(shape, 'height') };
    return textBoxes([shape], spare).filter(
      (box) =>
        Math.min(box.right, frame.right) - Math.max(box.left, frame.left) > 0 &&
        Math.min(box.bottom, frame.bottom) - Math.max(box.top, frame.top) > 0,
    );
  });
  return [...textBoxes(ownShapes(scene), spare), ...cropped];
}

/** Boxes of all text, from baseline and size: capitals reach 0.72 of the size above the line, tails 0.2 below it. */
export function textBoxes(shapes: readonly Shape[], spare = 1): TextBox[] {
  const type = measureWith(spare);
  return flat(shapes)
    .filter(({ shape }) => shape.tag === 'text')
    .map(({ path, shape, anchor, size, weight }) => {
      const width = type.width(shape.text ?? '', size, weight as Weight);
      const x = number(shape, 'x');
      const left = anchor === 'end' ? x - width : anchor === 'middle' ? x - width / 2 : x;
      const y = number(shape, 'y');
      return { path, words: shape.text ?? '', left, right: left + width, top: y - 0.72 * size, bottom: y + 0.2 * size };
    });
}

/** By how much two boxes cover each other, along the direction where they do so least [px]; 0 when they do not. */
export function covered(a: TextBox, b: TextBox): number {
  const across = Math.min(a.right, b.right) - Math.max(a.left, b.left);
  const down = Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top);
  return Math.max(0, Math.min(across, down));
}

/** The section without the details, which have windows of their own. */
export function ownShapes(scene: Scene): Shape[] {
  return scene.shapes.filter((shape) => shape.tag !== 'svg');
}
