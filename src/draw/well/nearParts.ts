/** The string as a window needs it: what is far away is left out, so that it may move without anything being drawn anew. */
import type { Metres } from '../../model/si.ts';
import type { PlacedPart } from '../../model/solution.ts';
import { kindsWith } from '../kinds.ts';
import type { Pen } from '../parts/pen.ts';

/** Past the window's edges; parts reach a hand's width beyond them at most. */
const MARGIN: Metres = 1.5;

/** A top's own parts are few and stay where they are. */
const LOCAL = kindsWith(({ local }) => local === true);

/** They run through a window from edge to edge. */
const LONG = kindsWith(({ runs }) => runs === true);

export function nearParts(parts: readonly PlacedPart[], { top, bottom }: Pen): PlacedPart[] {
  const highest = top - MARGIN;
  const lowest = bottom + MARGIN;
  const near: PlacedPart[] = [];
  for (const part of parts) {
    const { kind } = part;
    if (part.bottom > highest && part.top < lowest) near.push(LONG.has(kind) ? cut(part, highest, lowest) : part);
    else if (kind !== 'pump' && !LOCAL.has(kind)) near.push(part);
    // Cable and rope ask for the pump that they run to; how far below the window it is, is all one.
    else if (kind === 'pump' && part.top >= lowest) near.push({ ...part, top: lowest, bottom: lowest + MARGIN });
  }
  return near;
}

function cut(part: PlacedPart, highest: Metres, lowest: Metres): PlacedPart {
  return { ...part, top: Math.max(part.top, highest), bottom: Math.min(part.bottom, lowest) };
}

/** Of these what closes the well and leads water and wire away. */
export function topParts(near: readonly PlacedPart[]): PlacedPart[] {
  return near.filter(({ kind, key }) => OF_THE_TOP.has(key) || !OF_THE_STRING.has(kind));
}

/** The same from afar, where the cable is not seen there, and of the pipe only where it begins. */
export function closedTopParts(parts: readonly PlacedPart[]): PlacedPart[] {
  return topParts(parts)
    .filter(({ kind }) => kind !== 'cable')
    .concat(parts.filter(({ kind }) => kind === 'dropPipe').map((pipe) => ({ ...pipe, bottom: pipe.top })));
}

/** Keys of fittings end in the side of the joint that the barb is on: "insertFitting/pump", ".../above" point up. */
export const BARB_UP = /\/(pump|above)$/;

/** Drawn with the seal that they pass. */
export const OF_THE_TOP: ReadonlySet<string> = new Set(['nipple/top', 'coupling/top', 'nipple/seal']);
const OF_THE_STRING = kindsWith(({ of }) => of === 'string');
