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
  return shape(key, tag, heavyAttributes(attrs), d, text, children?.map(heavy));
}

/** What was pale is drawn whole: two tones are all there are. */
function heavyAttributes(attrs: Attributes): Attributes {
  const pale = attrs['stroke-opacity'] === undefined ? {} : { 'stroke-opacity': 1 };
  const width = attrs['stroke-width'];
  const wide = typeof width === 'number' ? { 'stroke-width': Math.max(LEAST, width * WIDER) } : {};
  return { ...attrs, ...pale, ...wide };
}
