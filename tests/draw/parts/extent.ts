/** Reads the extent of shapes back from their markup: the geometry that a viewer would see. */
import type { Shape } from '../../../src/draw/scene.ts';

export interface Extent {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** All corners and curve points of a path, curves followed in twenty steps. */
export function pathPoints(d: string): [number, number][] {
  const points: [number, number][] = [];
  let x = 0;
  let y = 0;
  let startX = 0;
  let startY = 0;
  for (const [, command, text] of d.matchAll(/([a-zA-Z])([^a-zA-Z]*)/g)) {
    const numbers = (text!.match(/-?(?:\d+\.?\d*|\.\d+)/g) ?? []).map(Number);
    const relative = command === command!.toLowerCase();
    const size = { m: 2, l: 2, h: 1, v: 1, c: 6, q: 4, s: 4, t: 2, a: 7, z: 0 }[command!.toLowerCase()] ?? 0;
    if (size === 0) {
      [x, y] = [startX, startY];
      continue;
    }
    for (let i = 0; i + size <= numbers.length; i += size) {
      const n = numbers.slice(i, i + size);
      const fromX = x;
      const fromY = y;
      const at = (j: number, base: number): number => (n[j] ?? 0) + (relative ? base : 0);
      switch (command!.toLowerCase()) {
        case 'h':
          x = at(0, fromX);
          break;
        case 'v':
          y = at(0, fromY);
          break;
        case 'c': {
          const [x1, y1, x2, y2] = [at(0, fromX), at(1, fromY), at(2, fromX), at(3, fromY)];
          x = at(4, fromX);
          y = at(5, fromY);
          for (let k = 1; k < 20; k++) {
            const t = k / 20;
            const u = 1 - t;
            points.push([
              u ** 3 * fromX + 3 * u * u * t * x1 + 3 * u * t * t * x2 + t ** 3 * x,
              u ** 3 * fromY + 3 * u * u * t * y1 + 3 * u * t * t * y2 + t ** 3 * y,
            ]);
          }
          break;
        }
        default:
          x = at(size - 2, fromX);
          y = at(size - 1, fromY);
      }
      if (command!.toLowerCase() === 'm' && i === 0) [startX, startY] = [x, y];
      points.push([x, y]);
    }
  }
  return points;
}

function pointsOf(shape: Shape): [number, number][] {
  const n = (name: string): number => Number(shape.attrs[name] ?? 0);
  const inside = (shape.children ?? []).flatMap(pointsOf);
  if (shape.tag === 'path') return [...inside, ...pathPoints(shape.d ?? '')];
  if (shape.tag === 'rect') return [...inside, [n('x'), n('y')], [n('x') + n('width'), n('y') + n('height')]];
  if (shape.tag === 'circle')
    return [...inside, [n('cx') - n('r'), n('cy') - n('r')], [n('cx') + n('r'), n('cy') + n('r')]];
  return inside;
}

export function extentOf(shape: Shape): Extent {
  const points = pointsOf(shape);
  const xs = points.map(([x]) => x);
  const ys = points.map(([, y]) => y);
  return { left: Math.min(...xs), right: Math.max(...xs), top: Math.min(...ys), bottom: Math.max(...ys) };
}

/** The shape with this key, at any depth; a path of keys narrows it ("motor", "body"). */
export function find(shapes: readonly Shape[], ...keys: readonly string[]): Shape {
  const [key, ...rest] = keys;
  const found = search(shapes, key ?? '');
  if (found === undefined) throw new Error(`no shape "${keys.join(' ')}" in the drawing`);
  return rest.length === 0 ? found : find(found.children ?? [], ...rest);
}

function search(shapes: readonly Shape[], key: string): Shape | undefined {
  for (const shape of shapes) {
    if (shape.key === key) return shape;
    const inside = search(shape.children ?? [], key);
    if (inside !== undefined) return inside;
  }
  return undefined;
}

export const has = (shapes: readonly Shape[], key: string): boolean => search(shapes, key) !== undefined;
