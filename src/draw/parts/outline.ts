/**
 * Path text for parts: tenths of a pixel, relative steps, no sign or space that is not needed. A detail holds some
 * hundred outlines, so each byte of one counts.
 */
import { polygon, polyline, type Point } from '../shapes.ts';
import { nextTenths, tenthsText } from '../tenths.ts';

/** A tenth of a pixel is below what any of our screens or printers shows of a line. */
export const tenth = (value: number): number => Math.round(value * 10) / 10;

/** A path of straight lines; level and plumb ones are written with one step. */
export function straight(points: readonly Point[], closed = true): string {
  return closed ? polygon(points) : polyline(points);
}

/** A rectangle as a path, so that several can share one element. */
export function block(left: number, top: number, right: number, bottom: number): string {
  const x = Math.round(left * 10);
  const y = Math.round(top * 10);
  const wide = Math.round(right * 10) - x;
  return `M${tenthsText(x)}${nextTenths(y)}h${tenthsText(wide)}v${tenthsText(Math.round(bottom * 10) - y)}h${tenthsText(-wide)}z`;
}

/** A rectangle with round corners, as a path. */
export function roundBlock(left: number, top: number, right: number, bottom: number, r: number): string {
  const wide = Math.round((right - left - 2 * r) * 10);
  const tall = Math.round((bottom - top - 2 * r) * 10);
  const bend = Math.round(r * 10);
  const there = nextTenths(bend);
  const back = nextTenths(-bend);
  const start = `M${tenthsText(Math.round((left + r) * 10))}${nextTenths(Math.round(top * 10))}`;
  const onTop = `h${tenthsText(wide)}q${tenthsText(bend)} 0${there}${there}v${tenthsText(tall)}q0${there}${back}${there}`;
  const below = `h${tenthsText(-wide)}q${back} 0${back}${back}v${tenthsText(-tall)}q0${back}${there}${back}z`;
  return start + onTop + below;
}

/** One stroke from point to point. */
export function stroke(x1: number, y1: number, x2: number, y2: number): string {
  const x = Math.round(x1 * 10);
  const y = Math.round(y1 * 10);
  const dx = Math.round(x2 * 10) - x;
  const dy = Math.round(y2 * 10) - y;
  const start = 'M' + tenthsText(x) + nextTenths(y);
  if (dy === 0) return start + 'h' + tenthsText(dx);
  return dx === 0 ? start + 'v' + tenthsText(dy) : start + 'l' + tenthsText(dx) + nextTenths(dy);
}

/** A smooth curve given as a function of y, as cubic pieces that keep its value and slope at the joints. */
export function curveDown(x: (y: number) => number, from: number, to: number, pieces: number): string {
  const step = (to - from) / pieces;
  const h = step / 50;
  const slope = (y: number): number => (x(y + h) - x(y - h)) / (2 * h);
  let lastX = Math.round(x(from) * 10);
  let lastY = Math.round(from * 10);
  let d = 'M' + tenthsText(lastX) + nextTenths(lastY);
  // A run without length has no slope.
  if (Math.abs(step) < 1e-6) return d;
  let y = from;
  let leaving = slope(from);
  for (let i = 1; i <= pieces; i++) {
    const below = from + step * i;
    const arriving = slope(below);
    const firstX = Math.round((x(y) + (leaving * step) / 3) * 10);
    const secondX = Math.round((x(below) - (arriving * step) / 3) * 10);
    const endX = Math.round(x(below) * 10);
    const endY = Math.round(below * 10);
    const third = Math.round((step * 10) / 3);
    d += `c${tenthsText(firstX - lastX)}${nextTenths(third)}${nextTenths(secondX - lastX)}${nextTenths(endY - lastY - third)}${nextTenths(endX - lastX)}${nextTenths(endY - lastY)}`;
    lastX = endX;
    lastY = endY;
    y = below;
    leaving = arriving;
  }
  return d;
}

/** The same short stroke at every place: hatching that steps down or along. */
export function strokes(places: readonly Point[], dx: number, dy: number): string {
  let d = '';
  let lastX = 0;
  let lastY = 0;
  const stepX = Math.round(dx * 10);
  const stepY = Math.round(dy * 10);
  const step =
    stepY === 0
      ? 'h' + tenthsText(stepX)
      : stepX === 0
        ? 'v' + tenthsText(stepY)
        : 'l' + tenthsText(stepX) + nextTenths(stepY);
  for (const [pointX, pointY] of places) {
    const x = Math.round(pointX * 10);
    const y = Math.round(pointY * 10);
    d += (d === '' ? 'M' + tenthsText(x) + nextTenths(y) : 'm' + tenthsText(x - lastX) + nextTenths(y - lastY)) + step;
    lastX = x + stepX;
    lastY = y + stepY;
  }
  return d;
}
