/** Detail C, the lens: two or three feet of the well about a depth, at one scale both ways. */
import { inches, show } from '../../model/units.ts';
import type { Metres } from '../../model/si.ts';
import { kindsWith } from '../kinds.ts';
import type { Solution } from '../../model/solution.ts';
import type { Segment } from '../hatch/clip.ts';
import { forgetful } from '../memory.ts';
import type { Shape } from '../scene.ts';
import { group, inked, path, rect, text } from '../shapes.ts';
import { block, stroke } from '../parts/outline.ts';
import type { DetailFrame, DetailScene } from './contract.ts';
import { drawDetail } from './detail.ts';
import { labelsLeft } from './layout.ts';
import { isClear, nearestFree } from './leaders.ts';
import type { DetailContext } from './context.ts';
import { SLIDING_HALF } from '../well/stage.ts';
import { inflowsOf, type Wanted } from './wanted.ts';
import { RAIL_PX } from './rail.ts';
import { drilledRadius } from '../well/annulus.ts';
import { lensDepths } from './windows.ts';

export function drawLens(solution: Solution, at: Metres, frame: DetailFrame, memory = forgetful): DetailScene {
  const half = drilledRadius(solution, Math.max(at, 0.5)) + inches(1.2);
  const depths = lensDepths(at, frame.height, (frame.width * 0.5) / (2 * half));
  return drawDetail(
    solution,
    frame,
    {
      topDepth: depths.topDepth,
      bottomDepth: depths.bottomDepth,
      roomLeft: half,
      roomRight: half,
      sparePx: 10,
      trueProportion: true,
      wanted: wantedIn(solution, depths.topDepth, depths.bottomDepth),
      extra: (context, leaders) => [drawScaleBar(context, leaders)],
    },
    memory,
  );
}

/** Every part that shows, once a kind: two clamps need one label. */
function wantedIn(solution: Solution, top: Metres, bottom: Metres): Wanted[] {
  const wanted: Wanted[] = [];
  const kinds = new Set<string>();
  for (const part of solution.parts) {
    if (part.bottom <= top || part.top >= bottom || SILENT.has(part.kind) || kinds.has(part.kind)) continue;
    kinds.add(part.kind);
    wanted.push({ key: part.key, across: 0.7, down: LONG[part.kind] ?? 0.5 });
  }
  return [
    ...wanted,
    ...(kinds.has('pitlessAdapter') ? [{ key: SLIDING_HALF, across: 0.2, down: 0.3 }] : []),
    ...inflowsOf(solution),
    ...['frost', 'casing', 'grout', 'screen', 'openHole', 'staticLevel', 'pumpingLevel'].map((key, i) => ({
      key,
      across: 0.6,
      down: 0.86 - i * 0.05,
    })),
  ];
}
/** Long parts are pointed at where the short ones are not. */
const LONG: Readonly<Record<string, number>> = { dropPipe: 0.7, cable: 0.12, rope: 0.2, conduit: 0.3 };
const SILENT = kindsWith(({ unnamed }) => unnamed === true);

/** A bar of a round length: on a screen no ratio holds, a bar does. */
function drawScaleBar({ frame, pen }: DetailContext, leaders: readonly Segment[]): Shape {
  const { ink, type, units, words: language, x, y, height } = frame;
  const length = units === 'us' ? inches(6) : 0.1;
  const wide = length * pen.down;
  const left = x + RAIL_PX + 10;
  const size = show(units).small(length);
  const whole = language.sheet.barAtTrueProportion(size);
  const words = left + type.width(whole, 11) + 8 <= labelsLeft(frame) ? whole : size;
  const half = Math.max(wide, type.width(words, 11)) / 2 + 5;
  const lowest = y + height - 14;
  // Over the labels' leaders where they run low.
  const foot =
    nearestFree(lowest, { from: y + 20, to: lowest, step: 3 }, (at) =>
      isClear(leaders, left - 5 + half, at - 4, half, 12),
    ) ?? lowest;
  return group('scaleBar', [
    rect('patch', left - 5, foot - 16, 2 * half, 24, {
      fill: ink.paper,
      'fill-opacity': 0.85,
      rx: 3,
    }),
    path('bar', block(left, foot, left + wide / 2, foot + 4), { fill: ink.ink }),
    path(
      'outline',
      stroke(left, foot, left + wide, foot) +
        stroke(left, foot + 4, left + wide, foot + 4) +
        stroke(left + wide, foot, left + wide, foot + 4),
      inked(ink.ink, 1),
    ),
    text('words', left, foot - 5, words, { size: 11, fill: ink.ink }),
  ]);
}
