/** What the drawing of a pitless adapter is hung on, in pixels: one answer for its two halves. */
import { inches } from '../../model/units.ts';
import type { Metres } from '../../model/si.ts';
import type { PlacedPart } from '../../model/solution.ts';
import type { Pen } from './pen.ts';

export interface PitlessPlace {
  /** Middle of the drop pipe under it. */
  readonly offset: Metres;
  readonly pipeRadius: Metres;
  readonly pipeBore: Metres;
  readonly casingInsideRadius: Metres;
  readonly casingOutsideRadius: Metres;
  /** Outlet on paper: top at its true depth. */
  readonly outletTop: number;
  readonly outletBottom: number;
}

/** Under this height the parts of an adapter run into one another: it is drawn this tall, upwards from its true foot. */
const LEAST_BODY_PX = 22;
/** Height of the body in the steps below: four inches of it, where they are seen. */
const BODY_UNITS = 32;
/** Thickness of the outlet that the sizes below are for; they grow with it. */
const OUTLET_PX = 11;
/** From the sliding half's face to the body's back: lip, slot and plate. */
const SADDLE: Metres = inches(0.85);
const LEAST_SADDLE_PX = 9;

export function measuresOf(part: PlacedPart, pen: Pen, place: PitlessPlace) {
  const { outletTop, outletBottom } = place;
  const middle = (outletTop + outletBottom) / 2;
  const bottom = Math.max(pen.y(part.bottom), outletBottom + 3);
  const wallIn = pen.x(place.casingInsideRadius);
  const wallOut = Math.max(pen.x(place.casingOutsideRadius), wallIn + 3);
  const gasket = Math.max(2.4, inches(0.16) * pen.across);
  const centre = pen.x(place.offset);
  const half = Math.max(place.pipeRadius * 1.22 * pen.across, 5);
  const back = wallIn - gasket;
  const saddle = Math.max(LEAST_SADDLE_PX, Math.min(SADDLE * pen.across, back - centre - half - 2));
  const face = back - saddle;
  const grow = Math.max(1, (outletBottom - outletTop) / OUTLET_PX, ((part.bottom - part.top) * pen.down) / BODY_UNITS);
  const up = (by: number): number => middle - by * grow;
  const thread = Math.max(8 * grow, Math.min(14, inches(1.6) * pen.down));
  // The upper end is a symbol's where the true one is too flat to read; the foot and the outlet are true.
  const shoulder = Math.min(pen.y(part.top), bottom - Math.max(LEAST_BODY_PX, half * 2), up(18));
  const way = Math.min(place.pipeBore * pen.across * 0.82, half - 3);
  const skin = Math.max(2.5, (outletBottom - outletTop) * 0.28) * 0.4;
  const nutLeft = wallOut + gasket;
  const nutRight = nutLeft + Math.max(5, inches(0.5) * pen.across);
  return {
    middle,
    grow,
    up,
    bottom,
    shoulder,
    thread,
    centre,
    half,
    way,
    waterTop: Math.max(outletTop + 1, middle - way),
    waterBottom: Math.min(outletBottom - 1, middle + way),
    neckTop: outletTop - skin,
    neckBottom: outletBottom + skin,
    wallIn,
    wallOut,
    gasket,
    /** From the bore outwards: the halves meet at the face; lip, slot and plate stand behind it. */
    face,
    lipEnd: face + saddle * 0.32,
    plate: face + saddle * 0.66,
    back,
    /** Upper end of the plate, of the lip, and the floor that the tongue stands on. */
    plateTop: up(16),
    lipTop: up(13),
    slotFloor: up(8),
    tongueTop: up(18),
    nutLeft,
    nutRight,
    end: nutRight + Math.max(4, inches(0.35) * pen.across),
  };
}
export type PitlessMeasures = ReturnType<typeof measuresOf>;
