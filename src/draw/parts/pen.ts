/** How a part is put on paper: where the bore's axis is, how deep a pixel goes, and the tones of the materials. */
import type { Metres } from '../../model/si.ts';
import type { PartLooks, SectionLooks } from '../looks.ts';
import type { Tones } from '../theme.ts';

export interface Pen {
  /** Pixel of a distance from the bore's axis, positive towards the house. */
  x(offset: Metres): number;
  y(depth: Metres): number;
  /** Pixels for a metre across. */
  readonly across: number;
  /** Pixels for a metre of depth. */
  readonly down: number;
  readonly tones: Tones;
  readonly looks: PartLooks;
  /** How parts look from afar, where none is cut open; null where they are. */
  readonly closed: SectionLooks | null;
  /** Depths at the upper and lower edge of what is shown; parts may draw past them, the frame crops. */
  readonly top: Metres;
  readonly bottom: Metres;
}

export interface Scales {
  readonly axis: number;
  /** Pixel of depth `top`. */
  readonly topY: number;
  readonly top: Metres;
  readonly bottom: Metres;
  readonly across: number;
  readonly down: number;
  readonly tones: Tones;
  readonly looks: PartLooks;
  readonly closed?: SectionLooks | null;
}

export const makePen = ({ axis, topY, top, bottom, across, down, tones, looks, closed = null }: Scales): Pen => ({
  x: (offset) => axis + offset * across,
  y: (depth) => topY + (depth - top) * down,
  across,
  down,
  tones,
  looks,
  closed,
  top,
  bottom,
});
