/** How a frame is shared out: rail at the left, labels at the right, the well between them, and the scales that follow. */
import type { Box } from '../hatch/clip.ts';
import type { Metres } from '../../model/si.ts';
import type { PartLooks } from '../looks.ts';
import { makePen, type Pen } from '../parts/pen.ts';
import { THEMES } from '../theme.ts';
import type { DepthWindow } from '../view.ts';
import type { Track } from './callouts.ts';
import type { DetailFrame } from './contract.ts';
import { RAIL_PX } from './rail.ts';
import { widthFactor } from './windows.ts';

const EDGE_PX = 6;
/**
 * The labels' column has a width of its own, whatever they say: words change while something is dragged, and the well
 * must not move sideways for that.
 */
const LABELS_SHARE = 0.41;
const LABELS_MOST_PX = 150;
/** Wider words get some of the width that they ask for; the well needs the rest. */
function labelsWidth(width: number, spare: number): number {
  return Math.min(Math.round(LABELS_MOST_PX * spare), Math.round(width * LABELS_SHARE * (1 + (spare - 1) / 2)));
}

/** Room between the last part and the labels, where leaders turn. */
export const LEADER_PX = 22;

/** Where the labels' column begins [px]. */
export function labelsLeft({ x, width, type }: Pick<DetailFrame, 'x' | 'width' | 'type'>): number {
  return x + width - EDGE_PX - labelsWidth(width, type.spare);
}

export interface Room {
  /** Beside the axis, what must have room left and right [m]. */
  readonly roomLeft: Metres;
  readonly roomRight: Metres;
  /** Fixed room besides, for what does not grow with widths [px]. */
  readonly sparePx: number;
  /** Kept free between the rail and the well [px]. */
  readonly leftPx?: number;
  /** One scale both ways. */
  readonly trueProportion: boolean;
}

export interface Layout {
  readonly pen: Pen;
  readonly box: Box;
  readonly track: Track;
}

/** Between rail and labels, for what grows with widths [px]. */
export function roomIn(frame: DetailFrame, { sparePx, leftPx = 0 }: Pick<Room, 'sparePx' | 'leftPx'>): number {
  return labelsLeft(frame) - LEADER_PX - (frame.x + RAIL_PX) - sparePx - leftPx;
}

/** What all widths in the frame are enlarged by. */
export function factorIn(frame: DetailFrame, down: number, pipeDiameter: Metres, plan: Room): number {
  if (plan.trueProportion) return 1;
  const { frozen, looks, height } = frame;
  const wide = plan.roomLeft + plan.roomRight;
  const before = looks?.widthFactor;
  return frozen?.widthFactor ?? widthFactor({ down, height, room: roomIn(frame, plan), wide, pipeDiameter, before });
}

export function layOutFrame(frame: DetailFrame, shown: DepthWindow, looks: PartLooks, plan: Room): Layout {
  const { topDepth, bottomDepth, widthFactor: factor } = shown;
  const { x, y, width, height, theme } = frame;
  const down = height / (bottomDepth - topDepth);
  const right = x + width - EDGE_PX;
  const left = labelsLeft(frame);
  const room = roomIn(frame, plan);
  const wide = plan.roomLeft + plan.roomRight;
  const across = down * factor;
  // What is left over goes half to either side.
  const slack = Math.max(0, room + plan.sparePx - wide * across);
  const axis = x + RAIL_PX + (plan.leftPx ?? 0) + plan.roomLeft * across + slack / 2;
  return {
    pen: makePen({
      axis,
      topY: y,
      top: topDepth,
      bottom: bottomDepth,
      across,
      down,
      tones: THEMES[theme].tones,
      looks,
    }),
    box: { left: x + RAIL_PX, top: y, right: x + width, bottom: y + height },
    track: { left, right, top: y + EDGE_PX, bottom: y + height - EDGE_PX, elbow: left - LEADER_PX + 4 },
  };
}
