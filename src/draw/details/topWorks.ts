/** What closes the well and leads water and wire away. */
import type { PartKind } from '../../model/solution.ts';
import type { Shape } from '../scene.ts';
import { drawPitlessTop } from './pitlessTop.ts';
import { drawSealTop } from './sealTop.ts';
import type { Stage } from './stage.ts';

export function drawTopWorks(stage: Stage): Shape[] {
  const {
    solution: { parts, facts },
    pen,
  } = stage;
  if (!parts.some((part) => TOP.has(part.kind) && part.bottom > pen.top && part.top < pen.bottom)) return [];
  return facts.top.kind === 'pitless' ? drawPitlessTop(stage) : drawSealTop(stage);
}

const TOP: ReadonlySet<PartKind> = new Set([
  'cap',
  'pitlessAdapter',
  'seal',
  'tee',
  'plug',
  'conduit',
  'bond',
  'buriedLine',
]);
