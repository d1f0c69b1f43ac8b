/** Lines for those who need strong contrast: every stroke a third wider, none thinner than a pixel. */
import type { Memory } from './memory.ts';
import type { Attributes, Shape } from './scene.ts';
import { shape } from './shapes.ts';

const WIDER = 1.35;
const LEAST = 1;

export function heavier(shapes: readonly Shape[], { recall }: Memory): Shape[] {
  return shapes.map((light) => recall(`heavier/${light.key}`, [light], () => heavy(light)));
}

function heavy(light: Shape): Shape {
  const { key, tag, d, attrs, text, children } = light;
  const heavierAttrs = isPipe(light) ? pipeAttributes(light) : heavyAttributes(attrs);
  return shape(key, tag, heavierAttrs, d, text, children?.map(heavy));
}

/** A pipe is drawn as strokes of its own width, one on another: a third wider, it would run into what hangs beside it. */
const PIPE: ReadonlySet<string> = new Set(['wall', 'body', 'shine', 'riser/wall', 'riser/body']);
const isPipe = ({ key, attrs }: Shape): boolean => PIPE.has(key) && attrs['fill'] === 'none';

/** Its edges alone grow, by as much as lines of their width do. */
function pipeAttributes({ key, attrs }: Shape): Attributes {
  const width = attrs['stroke-width'];
  return key.endsWith('wall') && typeof width === 'number' ? { ...attrs, 'stroke-width': width + EDGES } : attrs;
}

/** Both edges of a pipe together [px]. */
const EDGES = 0.8;

/** What was pale is drawn whole: two tones are all there are. */
function heavyAttributes(attrs: Attributes): Attributes {
  const pale = attrs['stroke-opacity'] === undefined ? {} : { 'stroke-opacity': 1 };
  const width = attrs['stroke-width'];
  const wide = typeof width === 'number' ? { 'stroke-width': Math.max(LEAST, width * WIDER) } : {};
  return { ...attrs, ...pale, ...wide };
}
