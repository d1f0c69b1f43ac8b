import type { Metres } from '../../si.ts';
import type { PlacedPart } from '../../solution.ts';
import type { PieceKind } from './piece.ts';

/** Where a piece is, before it is known what it is. */
export type Place = Pick<PlacedPart, 'key' | 'top' | 'bottom' | 'radius'> & {
  readonly kind: PieceKind;
  readonly cut: Metres | null;
  /** The part that it is cut from: what places that, places it. */
  readonly part: string;
  /** The part that a drawing shows it by, where that is another. */
  readonly drawn?: string;
};
