/** What the probe hangs beside: bare pipe, or the widest of what stands on the pipe or under it at its height. */
import type { Metres } from '../../model/si.ts';
import type { PlacedPart } from '../../model/solution.ts';
import { inches } from '../../model/units.ts';
import { kindsWith } from '../kinds.ts';
import type { ProbePlace } from './probe.ts';
import type { StringAxis } from './stringAxis.ts';

const WIDE = kindsWith(({ besideProbe }) => besideProbe !== undefined);

const GAP: Metres = inches(0.1);

/** From the probe's head down, as a share of its length. */
const STRAPS = [0.2, 0.58];
/** Where fittings stand beside it: over its head, round its wires. */
const OVER_HEAD: Metres = inches(1.5);

/** Over this height the wires come off the pipe, above what stands on it. */
const LEAVES: Metres = inches(5);

/** A strap holds on bare pipe or on the pump's shell, not on clamps and valves. */
const BARE = kindsWith(({ besideProbe }) => besideProbe === 'bare');

function straps({ top, bottom }: PlacedPart, beside: readonly PlacedPart[]): Metres[] {
  const isBare = (depth: Metres): boolean =>
    beside.every((part) => BARE.has(part.kind) || depth < part.top || depth > part.bottom);
  const bare = STRAPS.map((share) => top + (bottom - top) * share).filter(isBare);
  return bare.length > 0 ? bare : [top - OVER_HEAD].filter(isBare);
}

export interface ProbeRoom {
  /** Inside radius of the hole at the probe: its body stays within it. */
  readonly boreRadius: Metres;
  /** Where the wires come from. */
  readonly top: Metres;
}

export function probePlace(
  probe: PlacedPart,
  parts: readonly PlacedPart[],
  axis: StringAxis,
  { boreRadius, top }: ProbeRoom,
): ProbePlace {
  const near = parts.filter(
    (part) => WIDE.has(part.kind) && part.top < probe.bottom && part.bottom > probe.top - 2 * OVER_HEAD,
  );
  const beside = near.filter((part) => part.bottom > probe.top);
  const middle = axis.pipe((probe.top + probe.bottom) / 2);
  // A clamp's screw stands out of its band.
  const radius = beside.reduce(
    (most, { kind, radius: own }) =>
      Math.max(most, kind === 'clamp' ? own * 1.3 : kind === 'insertFitting' ? own * 1.3 : own),
    0,
  );
  const wanted = middle + radius + GAP + probe.radius;
  return {
    offset: Math.max(middle, Math.min(wanted, boreRadius - probe.radius)),
    strapped: beside.length === 0 ? null : { middle, radius, at: straps(probe, near) },
    top,
    leaves:
      beside.reduce((least, { kind, top: own }) => (kind === 'dropPipe' ? least : Math.min(least, own)), probe.top) -
      LEAVES,
  };
}
