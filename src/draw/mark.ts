/** The numbered sign of a finding: octagon, triangle, circle, so that its shape says how bad it is before colour does. */
import type { Severity } from '../model/solution.ts';
import { straight } from './parts/outline.ts';
import type { Shape } from './scene.ts';
import { circle, faced, group, inked, path, text, type Point } from './shapes.ts';
import type { Ink } from './theme.ts';

export interface MarkLook {
  /** Index of the finding + 1: the same number stands in the list. */
  readonly number: number;
  readonly severity: Severity;
  /** Middle of the sign [px]. */
  readonly x: number;
  readonly y: number;
  /** Width and height [px]: 18 in the section, 22 in the details. */
  readonly size: number;
  readonly ink: Ink;
}

/** Of the numbers, for the group that holds the signs: said once, not at each of them. */
export const NUMBERS = { 'font-weight': 600, 'text-anchor': 'middle' } as const;

export function drawMark(mark: MarkLook): Shape {
  return group(`mark/${mark.number}`, signShapes(mark));
}

/** For a group of the caller's: the sign and its number. */
export function signShapes(mark: MarkLook): Shape[] {
  return [outline(mark), numberOf(mark)];
}

function numberOf({ number, severity, x, y, size, ink }: MarkLook): Shape {
  const drop = severity === 'warning' ? size * 0.36 : size * 0.24;
  const fill = severity === 'danger' ? ink.onDanger : severity === 'warning' ? ink.onWarning : ink.note;
  const digitsSize = size * (number > 9 ? 0.54 : 0.66) * (severity === 'warning' ? 0.88 : 1);
  return text('number', x, y + drop, String(number), { size: digitsSize, fill });
}

function outline({ severity, x, y, size, ink }: MarkLook): Shape {
  const r = size / 2;
  const halo = inked(ink.paper, 1.5);
  if (severity === 'danger') return path('sign', straight(octagon(x, y, r)), { fill: ink.danger, ...halo });
  if (severity === 'note') return circle('sign', x, y, r - 1, faced(ink.paper, ink.note, 2));
  const triangle: Point[] = [
    [x, y - r],
    [x + r * 1.12, y + r * 0.9],
    [x - r * 1.12, y + r * 0.9],
  ];
  return path('sign', straight(triangle), {
    fill: ink.warning,
    stroke: ink.onWarning,
    'stroke-width': 1.5,
    'stroke-linejoin': 'round',
  });
}

function octagon(x: number, y: number, r: number): Point[] {
  const short = r * Math.SQRT2 - r;
  return [
    [x - short, y - r],
    [x + short, y - r],
    [x + r, y - short],
    [x + r, y + short],
    [x + short, y + r],
    [x - short, y + r],
    [x - r, y + short],
    [x - r, y - short],
  ];
}
