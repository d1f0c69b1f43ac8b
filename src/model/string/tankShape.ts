/** How tall and wide a tank of a volume is, and how high the water stands in it. Common proportions, no source. */
import type { CubicMetres, Metres, Ratio } from '../si.ts';

/** A standing cylinder between two heads, each half as tall as the radius: in metres, or in pixels of a true picture. */
export interface Vessel {
  readonly radius: number;
  /** Heads included. */
  readonly height: number;
}

/** Twice as tall as it is wide. */
export function vesselOf(volume: CubicMetres): Vessel {
  const radius = Math.cbrt((3 * volume) / (11 * Math.PI));
  return { radius, height: 4 * radius };
}

/** Of an open tank up to the water: a little taller than it is wide. */
export function openTankOf(volume: CubicMetres): { readonly radius: Metres; readonly water: Metres } {
  const radius = Math.cbrt(volume / (2.4 * Math.PI));
  return { radius, water: 2.4 * radius };
}

/** Half of the vessel's width at a height over its foot. */
export function halfWidthAt({ radius, height }: Vessel, at: number): number {
  const head = headOf({ radius, height });
  const into = at < head ? head - at : at > height - head ? at - (height - head) : 0;
  return radius * Math.sqrt(Math.max(0, 1 - (into / head) ** 2));
}

/** A vessel lower than both its heads has flatter ones. */
export function headOf({ radius, height }: Vessel): number {
  return Math.min(radius, height) / 2;
}

/** Height of the water over the vessel's foot, for the share of its volume that the water fills. */
export function waterLevel(vessel: Vessel, share: Ratio): number {
  const { height } = vessel;
  const wanted = Math.min(1, Math.max(0, share)) * filledTo(vessel, height);
  let low = 0;
  let high = height;
  // Halved until no pixel of any picture tells the two apart.
  for (let i = 0; i < 30; i++) {
    const middle = (low + high) / 2;
    if (filledTo(vessel, middle) < wanted) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/** What is in it, filled to a height: the volume over pi and the square of the radius. */
function filledTo(vessel: Vessel, at: number): number {
  const head = headOf(vessel);
  const inHead = (into: number): number => (into ** 2 * (3 * head - into)) / (3 * head ** 2);
  const whole = (2 / 3) * head;
  const straight = vessel.height - 2 * head;
  if (at <= head) return inHead(at);
  if (at <= head + straight) return whole + at - head;
  return 2 * whole + straight - inHead(vessel.height - at);
}
