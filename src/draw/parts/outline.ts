/** Path text for parts: rounded to a tenth of a pixel and written as short as it can be. */
import type { Point } from '../shapes.ts';

/** A tenth of a pixel is below what any of our screens or printers shows of a line. */
export const tenth = (value: number): number => Math.round(value * 10) / 10;

/** A path of straight lines; level and plumb ones are written with one coordinate. */
export function straight(points: readonly Point[], closed = true): string {
  let d = '';
  let lastX = NaN;
  let lastY = NaN;
  for (const [pointX, pointY] of points) {
    const x = tenth(pointX);
    const y = tenth(pointY);
    if (d === '') d = `M${x} ${y}`;
    else if (x === lastX && y === lastY) continue;
    else if (x === lastX) d += `V${y}`;
    else if (y === lastY) d += `H${x}`;
    else d += `L${x} ${y}`;
    lastX = x;
    lastY = y;
  }
  return closed ? `${d}z` : d;
}

/** A rectangle as a path, so that several can share one element. */
export const block = (left: number, top: number, right: number, bottom: number): string =>
  `M${tenth(left)} ${tenth(top)}H${tenth(right)}V${tenth(bottom)}H${tenth(left)}z`;

/** One stroke from point to point. */
export const stroke = (x1: number, y1: number, x2: number, y2: number): string =>
  straight([[x1, y1], [x2, y2]], false);

/** A smooth curve given as a function of y, as cubic pieces that keep its value and slope at the joints. */
export function curveDown(x: (y: number) => number, from: number, to: number, pieces: number, start = 'M'): string {
  const step = (to - from) / pieces;
  const h = Math.abs(step) / 50;
  const slope = (y: number): number => (x(y + h) - x(y - h)) / (2 * h);
  let y = from;
  let d = `${start}${tenth(x(from))} ${tenth(from)}`;
  for (let i = 1; i <= pieces; i++) {
    const next = from + step * i;
    d += `C${tenth(x(y) + (slope(y) * step) / 3)} ${tenth(y + step / 3)} ${tenth(x(next) - (slope(next) * step) / 3)} ${tenth(next - step / 3)} ${tenth(x(next))} ${tenth(next)}`;
    y = next;
  }
  return d;
}
