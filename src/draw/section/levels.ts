/** Water levels: a line from the hole to its chip, with the surveyor's triangle on it. */
import type { Metres } from '../../model/si.ts';
import type { Solution } from '../../model/solution.ts';
import type { Memory } from '../memory.ts';
import type { Shape } from '../scene.ts';
import { group, line, path, polygon, polyline, type Point } from '../shapes.ts';
import { LINE } from '../theme.ts';
import { within, type SectionFrame } from './frame.ts';

/** Half the width that a drop pipe takes in the middle of the bore [m]. */
const PIPE: Metres = 0.02;

/** Long dashes: a level that is there while the pump runs. */
const PUMPING_DASH = '9 4';
/** Short dashes: assumed, or of another season. */
const SHORT_DASH = '3 3';

/** Each is drawn anew when it moves itself. */
export function drawLevels({ levels, facts }: Solution, frame: SectionFrame, { recall }: Memory): Shape[] {
  const { ink } = frame;
  const bore = (facts.well.casings[0]?.insideDiameter ?? 0) / 2;
  const kept = (key: string, depth: Metres, make: () => Shape[]): Shape[] => recall(key, [depth, bore, frame], make);
  const shapes: Shape[] = [];
  const { pumping, static: rest, pumpingDry, staticLowest, staticHighest } = levels;
  if (pumping !== null) {
    const dash = { 'stroke-dasharray': PUMPING_DASH };
    shapes.push(
      ...kept('level/pumping', pumping, () => level('pumpingLevel', pumping, ink.pumping, dash, true, bore, frame)),
    );
  }
  if (rest !== null)
    shapes.push(...kept('level/static', rest, () => level('staticLevel', rest, ink.static, {}, false, bore, frame)));
  for (const [key, depth, beside, colour] of [
    ['pumpingLevelDry', pumpingDry, pumping, ink.pumping],
    ['staticLowest', staticLowest, rest, ink.static],
    ['staticHighest', staticHighest, rest, ink.static],
  ] as const) {
    if (depth === null || !differs(depth, beside)) continue;
    shapes.push(...kept(`level/${key}`, depth, () => [short(key, depth, colour, bore, frame)]));
  }
  return [group('levels', shapes)];
}

function differs(a: Metres, b: Metres | null): boolean {
  return b === null || Math.abs(a - b) > 0.01;
}

function level(
  key: string,
  depth: Metres,
  ink: string,
  dash: Readonly<Record<string, string>>,
  filled: boolean,
  bore: Metres,
  frame: SectionFrame,
): Shape[] {
  const y = frame.y(depth);
  if (y < frame.top || y > frame.bottom) return [];
  return [
    line(key, frame.x(-bore), y, frame.right, y, { stroke: ink, 'stroke-width': 1.8, ...dash }),
    sign(`${key}/sign`, y, ink, filled, bore, frame),
  ];
}

/** A triangle standing with its point on the line, two bars under it: open at rest, filled while pumping. */
function sign(key: string, y: number, ink: string, filled: boolean, bore: Metres, frame: SectionFrame): Shape {
  const room = bore * frame.kx;
  const pipe = Math.max(3, PIPE * frame.kx);
  const size = Math.max(7, Math.min(14, room - pipe - 4));
  const x = frame.axis + (pipe + room) / 2;
  const triangle: Point[] = [
    [x, y - 1],
    [x - size / 2, y - size * 0.86],
    [x + size / 2, y - size * 0.86],
  ];
  return group(key, [
    path('triangle', polygon(triangle), {
      fill: filled ? ink : frame.ink.paper,
      stroke: ink,
      'stroke-width': 1.3,
      'stroke-linejoin': 'round',
    }),
    path(
      'bars',
      polyline([
        [x - size * 0.36, y + 3.5],
        [x + size * 0.36, y + 3.5],
      ]) +
        polyline([
          [x - size * 0.18, y + 6.5],
          [x + size * 0.18, y + 6.5],
        ]),
      { stroke: ink, 'stroke-width': 1.2 },
    ),
  ]);
}

function short(key: string, depth: Metres, ink: string, bore: Metres, frame: SectionFrame): Shape {
  const y = within(frame, frame.y(depth));
  return line(key, frame.x(-bore), y, frame.x(bore), y, {
    stroke: ink,
    'stroke-width': LINE.narrow,
    'stroke-dasharray': SHORT_DASH,
  });
}

/** Where a dragged level stood when the pointer went down. */
export function drawGhost(frame: SectionFrame): Shape[] {
  if (frame.held === undefined) return [];
  const y = frame.y(frame.held.start);
  if (y < frame.top || y > frame.bottom) return [];
  return [
    line('ghost', frame.axis - frame.holeHalf - 10, y, frame.right, y, {
      stroke: frame.ink.hair,
      'stroke-width': LINE.narrow,
      'stroke-dasharray': '2 3',
    }),
  ];
}
