/** Short words that several sentences share. */
import type { Metres } from '../../model/si.ts';
import { feet } from '../../model/units.ts';
import type { Show } from '../../model/units.ts';

/** A gap in the unit that one would measure it with: "12 in", "5.5 ft"; "46 cm", "1.7 m". */
export function gap(length: Metres, show: Show): string {
  const size = Math.abs(length);
  return size < feet(3) ? show.small(size) : show.depth(size);
}

/** Where water stands: "62 ft", and "3 ft over ground" in a flowing well. */
export function level(depth: Metres, show: Show): string {
  return depth < 0 ? `${gap(depth, show)} over ground` : show.depth(depth);
}

export function toSpare(length: Metres, show: Show): string {
  return `${gap(Math.max(length, 0), show)} to spare`;
}

/** For the first word of a sentence. */
export function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
