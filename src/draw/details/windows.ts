/** What each detail shows of the well: its depths, and how much it enlarges widths against them. */
import { feet, inches } from '../../model/units.ts';
import type { Metres } from '../../model/si.ts';
import type { Solution } from '../../model/solution.ts';
import { kindsWith } from '../kinds.ts';
import { NEAR_FACTOR } from '../looks.ts';
import type { DepthWindow } from '../view.ts';

export type Depths = Pick<DepthWindow, 'topDepth' | 'bottomDepth'>;

/** From a foot over the casing to 1.5 ft below the deepest of frost, pitless and seal; never under 6 ft tall. */
export function wellTopDepths({ facts, parts, values }: Solution): Depths {
  const casingTop = -facts.well.casingHeight;
  const highest = parts.reduce(
    (least, part) =>
      part.kind === 'plug' || part.kind === 'tap' || part.kind === 'cap' ? Math.min(least, part.top) : least,
    casingTop,
  );
  const topDepth = Math.min(casingTop - feet(1), highest - feet(0.5));
  const frost = values.frostDepth ?? facts.site.frostDepth ?? 0;
  const carrier = parts.find((part) => part.kind === 'pitlessAdapter' || part.kind === 'seal');
  const deepest = Math.max(frost, carrier?.bottom ?? 0, 0);
  return { topDepth, bottomDepth: Math.max(deepest + feet(1.5), topDepth + feet(6)) };
}

/** No taller than this, or its parts shrink too far. */
const MOST_PUMP_END: Metres = feet(14);
/** A splice or arrestor further up than this over the motor's foot does not stretch the view. */
const REACH_UP: Metres = feet(10);

const STRETCHES = kindsWith(({ stretches }) => stretches === true);

/**
 * The pump with valve, fitting, arrestor and splice; down to the bottom of the well when it is near enough. In a shallow
 * well it begins under what carries the string, and under the ground: the well top shows those.
 */
export function pumpEndDepths({ facts, parts }: Solution): Depths {
  const motor = parts.find((part) => part.kind === 'motor');
  const pump = parts.find((part) => part.kind === 'pump');
  const motorFoot = motor?.bottom ?? facts.pump.setting + feet(1);
  const upper = pump?.top ?? facts.pump.setting - feet(1);
  const carrier = parts.find((part) => part.kind === 'pitlessAdapter' || part.kind === 'seal');
  const highest = Math.min(Math.max(carrier?.bottom ?? 0, 0) + feet(0.2), upper - feet(0.3));
  const near = parts
    .filter(({ kind }) => STRETCHES.has(kind))
    .map((part) => part.top)
    .filter((top) => top > motorFoot - REACH_UP);
  const topDepth = Math.max(highest, Math.min(upper - feet(2), ...near) - feet(0.6));
  const toBottom = facts.well.bottom + feet(0.8);
  const bottomDepth =
    toBottom - topDepth <= MOST_PUMP_END ? Math.max(toBottom, motorFoot + feet(0.8)) : motorFoot + feet(1.6);
  return { topDepth, bottomDepth };
}

/** A window of a few feet about a depth, as tall as the frame's shape asks at one scale both ways. */
export function lensDepths(at: Metres, height: number, across: number): Depths {
  const tall = Math.min(feet(3), Math.max(feet(1.6), height / across));
  return { topDepth: at - tall / 2, bottomDepth: at + tall / 2 };
}

/** Half a step, and past it by a fifth of one: the step is a half, or a tenth where widths are drawn smaller than depths. */
const stays = (before: number, fits: number): number => (before < 1 || fits < 1 ? 0.12 : HALF_STEP + 0.1);
const HALF_STEP = 0.25;

/** The drop pipe is wanted this wide on paper, so that walls, barbs and clamps can be told apart; wider on a tall sheet. */
const LEAST_PIPE_PX = 17;
const MOST_PIPE_PX = 30;
const PIPE_SHARE = 0.045;
const MOST_FACTOR = NEAR_FACTOR;

/** What widths are enlarged for. */
export interface WidthsAsked {
  /** px per metre of depth. */
  readonly down: number;
  /** Of the frame [px]. */
  readonly height: number;
  /** What the bore and what stands beside it may take across [px], and how wide that is. */
  readonly room: number;
  readonly wide: Metres;
  readonly pipeDiameter: Metres;
  /** The factor that was shown last: it stays while it has room and is nearly the one that is wanted. */
  readonly before?: number | undefined;
}

/** One stated factor for all widths: the least that shows the pipe well, as far as the frame has room. */
export function widthFactor({ down, height, room, wide, pipeDiameter, before }: WidthsAsked): number {
  const pipePx = Math.min(MOST_PIPE_PX, Math.max(LEAST_PIPE_PX, height * PIPE_SHARE));
  const wanted = pipePx / Math.max(pipeDiameter, inches(1)) / down;
  const fits = room / wide / down;
  const factor = Math.min(MOST_FACTOR, wanted, fits);
  if (before !== undefined && before <= fits && Math.abs(before - factor) <= stays(before, fits)) return before;
  const halves = Math.round(factor * 2) / 2;
  // A dug well may be wider than the frame has room for: its widths are drawn smaller than its depths, and it is said.
  if (fits < 1) return Math.max(0.1, Math.floor(fits * 10) / 10);
  return Math.max(1, halves > fits ? Math.floor(fits * 2) / 2 : halves);
}
