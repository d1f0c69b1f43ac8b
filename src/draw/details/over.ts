/** What lies over the drawing in every detail, and the scene that comes of both: faults, rail, labels and signs. */
import type { Segment } from '../hatch/clip.ts';
import type { DetailLooks, PartLooks } from '../looks.ts';
import { NUMBERS } from '../mark.ts';
import type { Memory } from '../memory.ts';
import type { Shape } from '../scene.ts';
import { group, rect } from '../shapes.ts';
import type { DetailScene, HitPlace } from '../view.ts';
import { drawCallouts, labelsShown, layOut, type Callout, type Labels } from './callouts.ts';
import type { DetailContext } from './context.ts';
import type { DetailFrame } from './contract.ts';
import type { Layout } from './layout.ts';
import { leadersOf } from './leaders.ts';
import { faultBoxes, type Marked } from './marks.ts';
import { drawRail, tickStep } from './rail.ts';

export interface Labelled {
  /** As they are shown. */
  readonly told: Labels;
  /** Of all that were laid out. */
  readonly leaders: readonly Segment[];
}

export function layLabels(
  callouts: readonly Callout[],
  layout: Pick<Layout, 'track'>,
  { pieces }: DetailFrame,
  memory: Memory,
): Labelled {
  const { track } = layout;
  const laid = memory.recall('laid', [callouts, layout], () => layOut(callouts, track));
  const leaders = memory.recall('leaders', [laid], () => leadersOf(laid, track));
  return { told: labelsShown({ callouts, laid }, pieces, memory), leaders };
}

export interface Over {
  readonly layout: Omit<Layout, 'box'>;
  readonly told: Labels;
  readonly marked: Marked;
  readonly looks: PartLooks;
  readonly widthFactor: number;
  /** The rail tells heights over depth nought. */
  readonly upward?: boolean;
}

/** @param drawn  all that lies between the paper and the faults, from the ground up */
export function sceneOf(context: DetailContext, over: Over, drawn: readonly Shape[], memory: Memory): DetailScene {
  const { frame, pen } = context;
  const { x, y, width, height, ink, type, units, words } = frame;
  const { layout, told, marked, widthFactor, upward = false } = over;
  const { recall, same } = memory;
  const before = frame.looks?.tickStep;
  const step = recall('tickStep', [layout, units, type, before], () => tickStep(pen, { units, type }, before));
  const looks: DetailLooks = { ...over.looks, widthFactor, tickStep: step };
  return {
    topDepth: pen.top,
    bottomDepth: pen.bottom,
    widthFactor,
    k: pen.down,
    looks: same('detailLooks', looks),
    shapes: [
      recall('paper', [layout, ink], () => rect('paper', x, y, width, height, { fill: ink.paper })),
      ...drawn,
      ...faultBoxes(context),
      recall('rail', [layout, ink, units, words, type, step], () =>
        drawRail(pen, ink, { x, y, height, units, words, type, upward }, step),
      ),
      ...recall('callouts', [told, layout, words, ink, type], () => drawCallouts(told, layout.track, frame, memory)),
      ...(marked.shapes.length === 0
        ? []
        : [recall('marks', marked.shapes, () => group('marks', marked.shapes, NUMBERS))]),
    ],
    marks: marked.marks,
    hits: hitsIn(context),
  };
}

/** What of the parts answers to the pointer. */
function hitsIn({ placed, window, frame: { view } }: DetailContext): HitPlace[] {
  const hits: HitPlace[] = [];
  for (const { part, kind, left, right, top, bottom } of placed) {
    const x = Math.max(left, window.left);
    const y = Math.max(top, window.top);
    const width = Math.min(right, window.right) - x;
    const height = Math.min(bottom, window.bottom) - y;
    if (width > 0 && height > 0) hits.push({ part, kind, x, y, width, height, view });
  }
  return hits;
}
