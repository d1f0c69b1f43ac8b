/** Short words that several sentences share. */
import type { Facts } from '../../model/facts.ts';
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

/** "12 psi short"; so little that it rounds to none is told without its figure. */
export function wanting(amount: string): string {
  return /^0(?:\.0+)? /.test(amount) ? 'just short' : `${amount} short`;
}

/** Of a level that is too deep already without pumping, today or in the dry season. */
export function evenAtRest(dry: boolean): string {
  return dry ? 'in a dry season, even at rest,' : 'even at rest';
}

/** A sentence's end: a question has its own. */
export function ended(text: string): string {
  return /[.?!]$/.test(text) ? text : `${text}.`;
}

/** From one figure to another, the unit told once: "0.75 to 1.5 gpm"; one figure where both read the same. */
export function span(least: number, most: number, say: (value: number) => string): string {
  const [from, to] = [say(least), say(most)];
  if (from === to) return to;
  const unit = unitOf(to);
  return unit !== '' && unitOf(from) === unit ? `${from.slice(0, -unit.length)} to ${to}` : `${from} to ${to}`;
}

/** " gpm" of "1.5 gpm"; empty where a text has two units. */
function unitOf(said: string): string {
  return /^-?[\d.,]+( \D+)$/.exec(said)?.[1] ?? '';
}

/** For the first word of a sentence. */
export function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

/** Before a figure: "an 11.5 gpm", "a 10 gpm"; eleven, eighteen and all that begin with eight are spoken with a vowel. */
export function withArticle(figure: string): string {
  return `${/^(?:8|1[18](?!\d))/.test(figure) ? 'an' : 'a'} ${figure}`;
}

/** How the yield was found, before "the well gave". */
export function tested(how: Facts['well']['yieldFrom']): string {
  switch (how) {
    case 'air lift':
      return 'blown with air';
    case 'bailer':
      return 'bailed';
    case 'pump':
      return 'pumped';
    case null:
      return 'tested, nobody said how,';
  }
}

/** "a, b and c". */
export function listed(texts: readonly string[]): string {
  const last = texts.at(-1) ?? '';
  return texts.length < 2 ? last : `${texts.slice(0, -1).join(', ')} and ${last}`;
}
