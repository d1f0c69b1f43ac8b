/** The marks of the flow, read back from the path that draws them. */
import type { Shape } from '../../src/draw/scene.ts';

type Point = readonly [number, number];

export interface Chevron {
  readonly tip: Point;
  readonly middle: Point;
  /** Unit step from between the wings to the tip, to a tenth. */
  readonly towards: Point;
}

/** Corners of a path of straight relative steps, one list a stroke. */
export function strokesOf(d: string): Point[][] {
  const strokes: Point[][] = [];
  let [x, y] = [0, 0];
  for (const [, command = '', numbers = ''] of d.matchAll(/([MmlhvLHV])([^MmlhvLHV]*)/g)) {
    const [first = 0, second = 0] = (numbers.match(/-?(\d+\.?\d*|\.\d+)/g) ?? []).map(Number);
    if (command === 'M') [x, y] = [first, second];
    else if (command === 'h') x += first;
    else if (command === 'v') y += first;
    else if (command === 'm' || command === 'l') [x, y] = [x + first, y + second];
    else throw new Error(`strokesOf: no step "${command}" is known`);
    if (command === 'M' || command === 'm') strokes.push([]);
    strokes[strokes.length - 1]?.push([x, y]);
  }
  return strokes;
}

export function chevrons(shape: Shape): Chevron[] {
  return strokesOf(shape.d ?? '').map(([wing, tip, other]) => {
    if (wing === undefined || tip === undefined || other === undefined) throw new Error('chevrons: a mark has no tip');
    const between: Point = [(wing[0] + other[0]) / 2, (wing[1] + other[1]) / 2];
    const [dx, dy] = [tip[0] - between[0], tip[1] - between[1]];
    const long = Math.hypot(dx, dy);
    // Adding zero turns a negative zero into zero.
    const whole = (value: number): number => Math.round((value / long) * 10) / 10 + 0;
    return {
      tip,
      middle: [(tip[0] + between[0]) / 2, (tip[1] + between[1]) / 2],
      towards: [whole(dx), whole(dy)],
    };
  });
}
