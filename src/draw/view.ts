/** What is asked of a drawing, and what comes back beside its shapes. */
import type { PartKind } from '../model/solution.ts';
import type { Metres } from '../model/si.ts';
import type { ShortLanguage } from '../words/words.ts';
import type { DetailLooks, Looks } from './looks.ts';
import type { Moment } from './moment.ts';
import type { Paper } from './paper.ts';
import type { Pieces } from './pieces.ts';
import type { Shape } from './scene.ts';
import type { Place } from './shapes.ts';
import type { DepthSpan } from './section/window.ts';

export type { Looks } from './looks.ts';
export type { Moment } from './moment.ts';
export type { Pieces, Showing } from './pieces.ts';
export type { DepthSpan } from './section/window.ts';

/** O is the section, A the well top, B the pump end, C the lens, D what stands in the house. */
export type ViewName = 'O' | 'A' | 'B' | 'C' | 'D';

export type Sheet = 'all' | 'section' | 'top' | 'pump' | 'house' | { readonly at: Metres };

export interface View {
  readonly sheet: Sheet;
  /** px */
  readonly width: number;
  /** px */
  readonly height: number;
  readonly units: 'us' | 'metric';
  /** The reader's language; English unless given. */
  readonly words?: ShortLanguage;
  /** Print is for white paper and black ink; the contrasts, black on white and white on black, for a screen. */
  readonly theme: 'light' | 'dark' | 'print' | 'contrast' | 'contrast-dark';
  /** The scales of the scene that stood when the pointer went down: kept until it goes up. */
  readonly frozen?: Frozen;
  /** The looks of the scene that is shown: they stay while the scale wanders about a threshold. Without them the thresholds alone count. */
  readonly looks?: Looks;
  /** The part of the well that the section shows; the whole where it is left out. Depths beyond the well's are not kept. */
  readonly window?: DepthSpan;
  /** What a lens over the section shows: told along its rail as the details are. */
  readonly lens?: DepthSpan;
  /** The handle that is dragged, with the depth it started from. */
  readonly held?: { readonly handle: string; readonly start: Metres };
  /** Keys of parts, or the number of a finding: lit in every view. */
  readonly lit?: string | readonly string[];
  /** Parts that are lit, ghosted or left out; nothing else moves for it. All are shown unless it says. */
  readonly pieces?: Pieces;
  /** The well while something in it moves; a picture for print, paper or export pays it no heed. */
  readonly moment?: Moment;
  /**
   * A sheet of paper of this size: width and height of the view are then what its margins leave, the depths of the
   * section are drawn to a standard scale, and the picture measures what it says in millimetres.
   */
  readonly paper?: Paper;
  /**
   * How much wider than in the shipped face the words may come out, as a factor: labels then leave that much room.
   * Default 1; a file that is opened where the face may be missing needs more.
   */
  readonly spare?: number;
  /**
   * The signs of the findings and all that they colour. False leaves them out, for a picture that judges nothing: its
   * title block then says that they are left out. Default true.
   */
  readonly marks?: boolean;
  /**
   * What draws the house for a drawer that was made without: a page fetches it when it is asked for. `draw` has its own.
   */
  readonly atHouse?: HouseDrawer;
  /** Title block and legend, for exports. */
  readonly caption?: boolean;
  /** What the title block says of date and version; the drawing itself knows no clock. */
  readonly imprint?: { readonly date?: string; readonly version?: string };
}

/** In a language. */
export type WordedView = View & Required<Pick<View, 'words'>>;

/**
 * What a view shows: depths in metres, linear in y; widths enlarged by one factor against depths. In D they count from the
 * floor of the house, which is at no depth of the well.
 */
export interface DepthWindow {
  readonly topDepth: Metres;
  readonly bottomDepth: Metres;
  readonly widthFactor: number;
}

/** How a chip stood: kept in order, and its collapse kept, while a pointer is down. */
export interface ChipState {
  readonly handle: string;
  /** px from its level to its middle. */
  readonly offset: number;
  /** Step of the ladder: 0 is the full chip. */
  readonly collapse: number;
}

export interface Frozen {
  readonly windows: Readonly<Partial<Record<ViewName, DepthWindow>>>;
  /** From the top down. */
  readonly chips: readonly ChipState[];
}

/** How the scene was drawn, for the one that follows it. */
export interface Scales extends Frozen {
  readonly looks: Looks;
}

export interface ChipPlace extends Place {
  /** Id of the handle, or of the level that has none. */
  readonly handle: string;
  /** y of the level it reads. */
  readonly lineY: number;
  /** Its level lies beyond the section's window, and the chip tells where. */
  readonly beyond?: 'above' | 'below';
}

export interface MarkPlace {
  /** Index of the finding + 1. */
  readonly number: number;
  /** Middle of the mark. */
  readonly x: number;
  readonly y: number;
  readonly size: number;
  readonly view: ViewName;
}

export interface FramePlace extends DepthWindow, Place {
  readonly view: ViewName;
}

export interface HitPlace extends Place {
  /** Key of the part. */
  readonly part: string;
  readonly kind: PartKind;
  readonly view: ViewName;
}

export interface Scene {
  readonly width: number;
  readonly height: number;
  readonly title: string;
  /** In a few sentences, for those who do not see it: long to say and, on a page, never asked for. */
  readonly describe: () => string;
  readonly background: string;
  /** The sheet of paper that it is drawn on; null on a screen. */
  readonly paper: Paper | null;
  readonly shapes: readonly Shape[];
  readonly scales: Scales;
  readonly chips: readonly ChipPlace[];
  readonly marks: readonly MarkPlace[];
  readonly frames: readonly FramePlace[];
  readonly hits: readonly HitPlace[];
  /** The details as they were drawn: a page that is short of time may show them once more beside a newer section. */
  readonly details: readonly DetailDrawing[];
}

export interface DetailScene extends DepthWindow {
  readonly shapes: readonly Shape[];
  readonly marks: readonly MarkPlace[];
  readonly hits: readonly HitPlace[];
  /** px per metre of depth. */
  readonly k: number;
  readonly looks: DetailLooks;
}

/** `drawAtHouse`, or one in another language: a view carries it and does not call it. */
export type HouseDrawer = (...asked: never[]) => DetailScene;

/** One detail, drawn, and where it stands on the sheet. */
export interface DetailDrawing {
  readonly place: FramePlace;
  readonly scene: DetailScene;
}
