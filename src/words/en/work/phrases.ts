/** Sentences that several steps share. */
import type { Facts } from '../../../model/facts.ts';
import type { Metres } from '../../../model/si.ts';
import type { StepNumbers } from '../../../model/work/step.ts';
import type { Show } from '../../../model/units.ts';
import { gap } from '../phrases.ts';

/** A round figure in either kind of units: "50 to 100 ft" is no "15.24 to 30.48 m" to anybody. */
export function round({ units }: Show, us: string, metric: string): string {
  return units === 'us' ? us : metric;
}

/** As a tape is read by whoever cuts or marks: to the inch, "7 ft 4 in", or to the centimetre, "2.23 m". */
export function taped(length: Metres, show: Show): string {
  return show.units === 'us' ? show.length(length) : show.small(length);
}

export function clamps(count: number): string {
  return count === 1 ? 'the one clamp' : count === 2 ? 'both clamps' : 'the clamps';
}

/**
 * Source  two clamps, stainless: N.H. Admin. Rules We 702.05(g); screws opposed, warmed, tightened twice: common practice,
 *         no source
 */
export function onBarbs(count: number): readonly string[] {
  return [
    `Slide ${clamps(count)} on the pipe first, then warm its end in hot water, never in a flame.`,
    'Push it over every barb, up to the shoulder of the fitting.',
    count === 1
      ? 'Set the clamp over the barbs; most codes ask for a second, its screw on the other side.'
      : 'Set the clamps side by side over the barbs, screws on opposite sides; tighten warm, and again cold.',
  ];
}

/** Plastic female threads: common practice, no source; advice on the turns differs from maker to maker. */
export const PLASTIC_THREAD =
  'Where a thread is plastic: hand-tight and one or two turns, the fitting maker’s word first.';

/** Stainless on stainless: common practice, no source. */
export const TAPE_AND_PASTE =
  'Wrap tape on the thread and add paste: dry stainless threads gall, tear and lock for good.';

/** A plan may have it the wrong way round. */
export function arrow(points: Facts['string']['arrow']): string {
  return points === 'up'
    ? 'Its arrow points up, the way the water goes.'
    : 'The plan has its arrow down, where no water would pass: turn it to point up.';
}

/** Every 50 to 100 ft: common practice, no source. */
export function insulationOnTheWay(show: Show): string {
  return `Read the cable’s insulation again every ${round(show, '50 to 100 ft', '15 to 30 m')} of the way down.`;
}

/** Slack between ties: common practice, no source. */
export function ties({ count, every }: StepNumbers['lower']['ties'], show: Show): readonly string[] {
  if (count === 0) return [];
  const slack = 'a little slack between ties';
  if (count === 1) return [`One cable tie comes on here: leave the cable a little slack below it.`];
  return [`Tie the cable to the pipe every ${gap(every, show)}: ${count} ties here, with ${slack}.`];
}

export function guards(count: number): readonly string[] {
  if (count === 0) return [];
  return [
    count === 1
      ? 'Set the cable guard, a rubber ring that keeps the cable off the wall.'
      : `Set the ${count} cable guards of this stretch: rubber rings that keep the cable off the wall.`,
  ];
}
