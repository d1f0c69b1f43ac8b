/** Small parts from afar: no shorter than a symbol, about their true middle, and dashed where that is taller than they are. */
import type { PlacedPart } from '../../model/solution.ts';
import { SYMBOL } from '../looks.ts';
import type { Attributes } from '../scene.ts';
import type { Pen } from './pen.ts';

export interface OnPaper {
  /** Height of its middle [px]. */
  readonly middle: number;
  /** How tall it is drawn [px]. */
  readonly tall: number;
}

export function onPaper({ top, bottom }: Pick<PlacedPart, 'top' | 'bottom'>, pen: Pen): OnPaper {
  return { middle: pen.y((top + bottom) / 2), tall: Math.max(SYMBOL, (bottom - top) * pen.down) };
}

export const DASH: Attributes = { 'stroke-dasharray': '3 2' };

export function dashIfSymbol({ kind }: Pick<PlacedPart, 'kind'>, { closed }: Pen): Attributes {
  return closed === null || closed.toScale.includes(kind) ? {} : DASH;
}
