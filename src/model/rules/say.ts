/** Short words that several rules share. */
import type { Metres, MetresPerSecond } from '../si.ts';
import type { PartKind, PlacedPart, Solved } from '../solution.ts';
import { feet, toFeet } from '../units.ts';
import type { Show } from '../units.ts';

/** A gap in the unit that one would measure it with: "12 in", "5.5 ft"; "46 cm", "1.7 m". */
export function gap(length: Metres, show: Show): string {
  const size = Math.abs(length);
  return size < feet(3) ? show.small(size) : show.depth(size);
}

export function toSpare(length: Metres, show: Show): string {
  return `${gap(Math.max(length, 0), show)} to spare`;
}

/** For the first word of a sentence. */
export function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

/** The first part of a kind as it is placed; undefined where none is. */
export function placed({ parts }: Solved, kind: PartKind): PlacedPart | undefined {
  for (const part of parts) if (part.kind === kind) return part;
  return undefined;
}

/** Slow water: the hundredths count. */
export function slow(velocity: MetresPerSecond, show: Show): string {
  return show.units === 'us' ? `${hundredths(toFeet(velocity))} ft/s` : `${hundredths(velocity)} m/s`;
}

function hundredths(value: number): number {
  return Math.round(value * 100) / 100;
}

export const ELECTRIC_CAUTION =
  'Switch the breaker off and lock it before opening the well. A licensed electrician and the local code decide on wiring.';
export const LIFTING_CAUTION =
  'A string that slips takes hands with it: hold it with a pipe clamp before any grip is released.';
export const DIGGING_CAUTION =
  'Have buried lines marked before digging; a deep trench can bury a person: shore it as the local code asks.';
export const PRESSURE_CAUTION = 'A burst tank or pipe throws parts: shut the pump off and let the pressure out first.';
export const FLOWING_CAUTION =
  'Do not open a flowing well: it can run away. A licensed contractor decides what is done.';
export const PIT_CAUTION = 'Do not climb into a well pit: bad air there has killed. Ask a licensed contractor.';
