/** How the section and the details share a sheet. */
import type { Metres } from '../model/si.ts';
import type { Box } from './hatch/clip.ts';
import { pxPerMetre } from './paper.ts';
import type { View, ViewName } from './view.ts';
import type { ChipColumn } from './section/chips.ts';

export interface DetailPlace {
  readonly view: Exclude<ViewName, 'O'>;
  readonly box: Box;
}

export interface SectionLayout {
  /** The ground, from its highest depth to its lowest. */
  readonly box: Box;
  readonly chips: ChipColumn;
  /** x of the brackets left of the rail; null where no detail stands beside. */
  readonly bracketX: number | null;
}

export interface SheetLayout {
  readonly width: number;
  readonly height: number;
  readonly heading: { readonly x: number; readonly width: number; readonly size: number };
  readonly section: SectionLayout | null;
  readonly details: readonly DetailPlace[];
  /** Legend and title block under everything; null unless asked for. */
  readonly caption: Box | null;
}

const LEAST_WIDTH = 280;
const LEAST_HEIGHT = 360;
const EDGE = 14;
const HEADING = 22;
/** Room above the ground for the house, which is a symbol and does not shrink with the scale. */
export const HEADROOM = 50;
const FOOT = 26;
/** Under legend and title block. */
const CAPTION_FOOT = 8;

export interface LayoutInput {
  readonly view: View;
  /** Lines under the title. */
  readonly subtitleLines: number;
  /** Of legend and title block; 0 without them [px]. */
  readonly captionHeight: number;
}

/** Width of legend and title block [px]. */
export function captionWidth(view: View): number {
  return Math.max(LEAST_WIDTH, view.width) - 2 * EDGE;
}

export function layoutSheet({ view, subtitleLines, captionHeight }: LayoutInput): SheetLayout {
  const width = Math.max(LEAST_WIDTH, view.width);
  const height = Math.max(LEAST_HEIGHT, view.height);
  const foot = captionHeight === 0 ? height : height - captionHeight - CAPTION_FOOT;
  const caption =
    captionHeight === 0 ? null : { left: EDGE, right: width - EDGE, top: foot, bottom: height - CAPTION_FOOT };
  const { sheet, spare = 1 } = view;
  if (sheet === 'all' || sheet === 'section') {
    const { heading, section, details } = (sheet === 'all' ? allOf : sectionOf)(width, foot, subtitleLines, spare);
    return { width, height, heading, section, details, caption };
  }
  const detail: DetailPlace = {
    view: typeof sheet === 'object' ? 'C' : ALONE[sheet],
    box: { left: EDGE, right: width - EDGE, top: headingFoot(subtitleLines, 20) + 34, bottom: foot - FOOT },
  };
  return {
    width,
    height,
    heading: { x: EDGE, width: width - 2 * EDGE, size: 20 },
    section: null,
    details: [detail],
    caption,
  };
}

/** The details that have a sheet of their own. */
const ALONE = { top: 'A', pump: 'B', house: 'D' } as const;

type Shared = Pick<SheetLayout, 'heading' | 'section' | 'details'>;

export function headingFoot(subtitleLines: number, size: number): number {
  return EDGE + size + subtitleLines * 17;
}

/** Section left, its chips beside it, well top above pump end at the right. */
function allOf(width: number, foot: number, subtitleLines: number, spare: number): Shared {
  const share = clamp((width - 760) / 640, 0, 1);
  const detailsWidth = Math.round(clamp(width * 0.352, 252, 520));
  const linkGap = Math.round(22 + share * 28);
  const left = Math.round(66 + share * 16);
  const room = width - EDGE - detailsWidth - linkGap - LEADER - left;
  const chipsWidth = chipsFor(Math.round(134 + share * 40), room, spare);
  const right = width - EDGE - detailsWidth - linkGap - chipsWidth - LEADER;
  const top = headingFoot(subtitleLines, HEADING) + HEADROOM;
  const bottom = foot - FOOT;
  const detailsLeft = width - EDGE - detailsWidth;
  const detailsTop = EDGE + 46;
  const between = 46;
  const upper = Math.round((bottom - detailsTop - between) * 0.49);
  return {
    heading: { x: left, width: right + chipsWidth - left, size: HEADING },
    section: {
      box: { left, right, top, bottom },
      chips: { x: right + LEADER, width: chipsWidth, top: top - 6, bottom: bottom + 6 },
      bracketX: left - 42,
    },
    details: [
      { view: 'A', box: { left: detailsLeft, right: width - EDGE, top: detailsTop, bottom: detailsTop + upper } },
      { view: 'B', box: { left: detailsLeft, right: width - EDGE, top: detailsTop + upper + between, bottom } },
    ],
  };
}

/** Of a room that they share with the ground, wider words take what they ask for as long as the ground keeps its least. */
function chipsFor(width: number, room: number, spare: number): number {
  return width + Math.round(clamp(room - width - LEAST_GROUND, 0, width * (spare - 1)));
}

/** Narrower, and the names of the layers would not stand beside the hole [px]. */
const LEAST_GROUND = 180;

/** Room for a leader's slant between ground and chips. */
const LEADER = 18;

/** The section alone, from a phone's width up. */
function sectionOf(width: number, foot: number, subtitleLines: number, spare: number): Shared {
  const share = clamp((width - 320) / 300, 0, 1);
  const left = Math.round(40 + share * 8);
  const edge = width < 420 ? 8 : EDGE;
  const chipsWidth = chipsFor(Math.round(116 + share * 42), width - edge - LEADER - left, spare);
  const right = width - edge - chipsWidth - LEADER;
  const size = width < 500 ? 18 : HEADING;
  const headingX = width < 500 ? edge : left;
  const top = headingFoot(subtitleLines, size) + HEADROOM;
  const bottom = foot - FOOT;
  return {
    heading: { x: headingX, width: width - edge - headingX, size },
    section: {
      box: { left, right, top, bottom },
      chips: { x: right + LEADER, width: chipsWidth, top: top - 6, bottom: bottom + 6 },
      bracketX: null,
    },
    details: [],
  };
}

function clamp(value: number, least: number, most: number): number {
  return Math.min(most, Math.max(least, value));
}

/** The section as tall as its depths are at the scale; the room below it stays free. */
export function atScale(layout: SheetLayout, length: Metres, scale: number): SheetLayout {
  const { section } = layout;
  if (section === null) return layout;
  const { box } = section;
  return { ...layout, section: { ...section, box: { ...box, bottom: box.top + length * pxPerMetre(scale) } } };
}

/** Lower, and its labels would tell of nothing but names [px]. */
const LEAST_HOUSE = 250;
/** From the section's foot to the border under it: scale and chips, then its own heading [px]. */
const OVER_HOUSE = 84;
/** Left of the section stand its depths and brackets; the house begins with them [px]. */
const HOUSE_LEFT = 52;

/** Under a section that leaves room on its paper, the house. @param whole  before the section was drawn to its scale */
export function withHouse(layout: SheetLayout, whole: SheetLayout): SheetLayout {
  const { section, details } = layout;
  if (section === null || whole.section === null || details.length === 0) return layout;
  const { box, chips } = section;
  const top = box.bottom + OVER_HOUSE;
  const { bottom } = whole.section.box;
  if (bottom - top < LEAST_HOUSE) return layout;
  const left = Math.max(EDGE, box.left - HOUSE_LEFT);
  return {
    ...layout,
    section: { ...section, chips: { ...chips, bottom: Math.min(chips.bottom, top - HEADING - EDGE) } },
    details: [...details, { view: 'D', box: { left, right: chips.x + chips.width, top, bottom } }],
  };
}
