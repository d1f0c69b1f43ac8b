/** What the pointer or the focus is on, ringed in every view that shows it. */
import type { Solution } from '../../model/solution.ts';
import type { Shape } from '../scene.ts';
import { group, rect } from '../shapes.ts';
import type { Ink } from '../theme.ts';
import type { HitPlace } from '../view.ts';

const ROOM = 4;

/** @param lit  keys or kinds of parts, or numbers of findings, whose parts are meant then */
export function drawLit(lit: readonly string[], solution: Solution, hits: readonly HitPlace[], ink: Ink): Shape[] {
  const drawn = new Map<string, number>();
  return lit
    .flatMap((each) => drawOne(each, solution, hits, ink))
    .map((ring) => {
      const before = drawn.get(ring.key) ?? 0;
      drawn.set(ring.key, before + 1);
      // One ring is as good as another: of several in a view each has a key of its own, and none takes the place of one.
      return before === 0 ? ring : { ...ring, key: `${ring.key}/${before + 1}` };
    });
}

function drawOne(lit: string, { findings }: Solution, hits: readonly HitPlace[], ink: Ink): Shape[] {
  const finding = /^\d+$/.test(lit) ? findings[Number(lit) - 1] : undefined;
  const part = finding?.part ?? lit;
  const stroke = finding?.severity === 'danger' ? ink.danger : ink.ink;
  return hits
    .filter((hit) => hit.part === part || hit.kind === part)
    .map(({ view, x, y, width, height }) => {
      const ring = (key: string, color: string, line: number) =>
        rect(key, x - ROOM, y - ROOM, width + 2 * ROOM, height + 2 * ROOM, {
          rx: 4,
          fill: 'none',
          stroke: color,
          'stroke-width': line,
        });
      return group(`lit/${view}`, [ring('halo', ink.paper, 4.5), ring('ring', stroke, 2)]);
    });
}
