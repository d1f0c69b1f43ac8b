/**
 * What the sheet asks of a detail and what a detail gives back.
 *
 * The sheet draws the frame's border and its heading above it ("A  Well top", "depths to scale, widths x5").
 * The detail draws everything inside the window, in sheet coordinates, cropped to it.
 */
import type { Solution } from '../../model/solution.ts';
import type { ShortLanguage } from '../../words/words.ts';
import type { Memory } from '../memory.ts';
import type { DetailLooks } from '../looks.ts';
import type { Pieces } from '../pieces.ts';
import type { Place } from '../shapes.ts';
import type { Ink } from '../theme.ts';
import type { Measure } from '../type/measure.ts';
import type { DepthWindow, DetailScene, View } from '../view.ts';

/** Its place is the window, without heading. */
export interface DetailFrame extends Place {
  readonly view: 'A' | 'B' | 'C' | 'D';
  readonly units: View['units'];
  readonly words: ShortLanguage;
  readonly theme: View['theme'];
  readonly ink: Ink;
  readonly type: Measure;
  /** The window to keep while a pointer is down. */
  readonly frozen?: DepthWindow | undefined;
  /** As it was shown last. */
  readonly looks?: DetailLooks | undefined;
  readonly held?: View['held'];
  readonly moment?: View['moment'];
  /** Labels of what is absent are left out once all are laid out. */
  readonly pieces?: Pieces | undefined;
  readonly lit?: string | readonly string[] | undefined;
}

export type { DetailScene } from '../view.ts';

export type DetailDrawer = (solution: Solution, frame: DetailFrame, memory: Memory) => DetailScene;
