/** Zoomed in far enough, the well stands in the section as it does in the details: every part cut open, at its own size. */
import type { Solution } from '../../model/solution.ts';
import { drawWell } from '../details/wellScene.ts';
import { memoryUnder, type Memory } from '../memory.ts';
import type { Moment } from '../moment.ts';
import { makePen } from '../parts/pen.ts';
import { tonesOf } from '../parts/tones.ts';
import type { Shape } from '../scene.ts';
import { group } from '../shapes.ts';
import type { HitPlace } from '../view.ts';
import type { SectionFrame } from './frame.ts';

export interface NearWell {
  readonly shapes: readonly Shape[];
  readonly hits: readonly HitPlace[];
}

/** The section draws its levels itself, across the ground. */
const LEVELS: ReadonlySet<string> = new Set(['staticLevel', 'pumpingLevel']);

/** @param right  where line and conduit leave for the house [px] */
export function drawNearWell(
  solution: Solution,
  frame: SectionFrame,
  right: number,
  memory: Memory,
  moment?: Moment,
): NearWell {
  const { recall } = memory;
  const pen = recall('nearPen', [frame], () =>
    makePen({
      axis: frame.axis,
      topY: frame.top,
      top: frame.topDepth,
      bottom: frame.bottomDepth,
      across: frame.kx,
      down: frame.k,
      tones: tonesOf[frame.theme],
      looks: frame.looks,
    }),
  );
  const well = drawWell(solution, pen, frame.ink, right, memoryUnder('near', memory), moment);
  return recall('nearWell', [well], () => ({
    shapes: [
      group(
        'well',
        well.shapes.filter(({ key }) => !LEVELS.has(key)),
        { 'stroke-width': 1.1, 'stroke-linejoin': 'round' },
      ),
    ],
    hits: well.placed
      .filter(({ part }) => !LEVELS.has(part) && !part.startsWith('inflow/'))
      .map(({ part, kind, left, right: end, top, bottom }) => ({
        part,
        kind,
        x: left,
        y: top,
        width: end - left,
        height: bottom - top,
        view: 'O' as const,
      })),
  }));
}
