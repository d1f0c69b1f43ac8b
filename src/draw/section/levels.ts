/** Water levels: a line from the hole to its chip, with the surveyor's triangle on it. */
import type { Metres } from '../../model/si.ts';
import type { Solution } from '../../model/solution.ts';
import type { Memory } from '../memory.ts';
import { stroke } from '../parts/outline.ts';
import type { Shape } from '../scene.ts';
import { group, inked, line, path, polygon, type Point } from '../shapes.ts';
import { LINE } from '../theme.ts';
import { within, type SectionFrame } from './frame.ts';

/** Half the width that a drop pipe takes in the middle of the bore [m]. */
const PIPE: Metres = 0.02;

/** Long dashes: a level that is there while the pump runs. */
const PUMPING_DASH = '9 4';
/** Short dashes: assumed, or of another season. */
const SHORT_DASH = '3 3';

/** A level as it is drawn. */
interface Level {
  readonly key: string;
  readonly depth: Metres;
  readonly ink: string;
  /** Inside radius of the casing. */
  readonly bore: Metres;
  /** While pumping: dashed, its triangle filled. */
  readonly pumping: boolean;
}

/** Each is drawn anew when it moves itself. */
export function drawLevels({ levels, facts }: Solution, frame: SectionFrame, { recall }: Memory): Shape[] {
  const { ink } = frame;
  const bore = (facts.well.casings[0]?.insideDiameter ?? 0) / 2;
  const kept = (name: string, level: Level, draw: (level: Level, frame: SectionFrame) => Shape[]): Shape[] =>
    recall(`level/${name}`, [level.depth, bore, frame], () => draw(level, frame));
  const { pumping, static: rest, pumpingDry, staticLowest, staticHighest } = levels;
  const [atRest, whilePumping] = [
    { bore, ink: ink.static, pumping: false },
    { bore, ink: ink.pumping, pumping: true },
  ];
  const others = [
    { ...whilePumping, key: 'pumpingLevelDry', depth: pumpingDry, beside: pumping },
    { ...atRest, key: 'staticLowest', depth: staticLowest, beside: rest },
    { ...atRest, key: 'staticHighest', depth: staticHighest, beside: rest },
  ];
  return [
    group('levels', [
      ...(pumping === null ? [] : kept('pumping', { ...whilePumping, key: 'pumpingLevel', depth: pumping }, drawLevel)),
      ...(rest === null ? [] : kept('static', { ...atRest, key: 'staticLevel', depth: rest }, drawLevel)),
      ...others.flatMap(({ depth, beside, ...each }) =>
        depth === null || !differs(depth, beside) ? [] : kept(each.key, { ...each, depth }, drawShort),
      ),
    ]),
  ];
}

function differs(a: Metres, b: Metres | null): boolean {
  return b === null || Math.abs(a - b) > 0.01;
}

function drawLevel(level: Level, frame: SectionFrame): Shape[] {
  const { key, depth, ink, bore, pumping } = level;
  const y = frame.y(depth);
  if (y < frame.top || y > frame.bottom) return [];
  const dash = pumping ? { 'stroke-dasharray': PUMPING_DASH } : {};
  return [
    line(key, frame.x(-bore), y, frame.right, y, { stroke: ink, 'stroke-width': 1.8, ...dash }),
    sign(level, y, frame),
  ];
}

/** A triangle standing with its point on the line, two bars under it: open at rest, filled while pumping. */
function sign({ key, ink, pumping, bore }: Level, y: number, frame: SectionFrame): Shape {
  const room = bore * frame.kx;
  const pipe = Math.max(3, PIPE * frame.kx);
  const size = Math.max(7, Math.min(14, room - pipe - 4));
  const x = frame.axis + (pipe + room) / 2;
  const triangle: Point[] = [
    [x, y - 1],
    [x - size / 2, y - size * 0.86],
    [x + size / 2, y - size * 0.86],
  ];
  return group(`${key}/sign`, [
    path('triangle', polygon(triangle), {
      fill: pumping ? ink : frame.ink.paper,
      stroke: ink,
      'stroke-width': 1.3,
      'stroke-linejoin': 'round',
    }),
    path(
      'bars',
      stroke(x - size * 0.36, y + 3.5, x + size * 0.36, y + 3.5) +
        stroke(x - size * 0.18, y + 6.5, x + size * 0.18, y + 6.5),
      inked(ink, 1.2),
    ),
  ]);
}

function drawShort({ key, depth, ink, bore }: Level, frame: SectionFrame): Shape[] {
  const y = within(frame, frame.y(depth));
  const attrs = inked(ink, LINE.narrow, SHORT_DASH);
  return [line(key, frame.x(-bore), y, frame.x(bore), y, attrs)];
}

/** Where a dragged level stood when the pointer went down. */
export function drawGhost(frame: SectionFrame): Shape[] {
  if (frame.held === undefined) return [];
  const y = frame.y(frame.held.start);
  if (y < frame.top || y > frame.bottom) return [];
  return [
    line('ghost', frame.axis - frame.holeHalf - 10, y, frame.right, y, inked(frame.ink.hair, LINE.narrow, '2 3')),
  ];
}
