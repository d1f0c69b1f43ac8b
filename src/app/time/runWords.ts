/** What is said of a well that is made to run. */
import type { Metres, Seconds } from '../../model/si.ts';
import type { LevelCurve, Unknown } from '../../model/time/index.ts';
import { inches, type Show } from '../../model/units.ts';
import { sayTime } from './timeScale.ts';
import { AUTUMN, SPRING, THAWED, type Frozen } from './wellRun.svelte.ts';

/** "frost 31 in" or "thawed to 12 in", to the whole inch or centimetre: finer than the frost itself is known. */
export function sayFrost({ reached, thawed }: Frozen, show: Show): string {
  return thawed > 0 ? `thawed to ${whole(thawed, show)}` : `frost ${whole(reached, show)}`;
}

function whole(depth: Metres, show: Show): string {
  const step = show.units === 'us' ? inches(1) : 0.01;
  return show.small(Math.round(depth / step) * step);
}

/** "frost 31 in of 48 in" */
export function sayFrostOf(frozen: Frozen, planned: Metres | null, show: Show): string {
  return `${sayFrost(frozen, show)} of ${whole(planned ?? frozen.reached, show)}`;
}

/** Where in the winter, by what is over of the freezing season and of the thaw behind it. */
export function saySeason(season: number): string {
  if (season === AUTUMN) return 'Autumn, before the first frost';
  if (season === SPRING) return 'Spring, at the end of the frost';
  if (season >= THAWED) return 'The end of the thaw';
  const [share, name] = season < SPRING ? [season, 'freezing season'] : [season - SPRING, 'thaw'];
  return `${Math.round(share * 100)} % of the ${name} over`;
}

/** Where the water is drawn while the pump runs and nobody knows its pumping level. */
const FALL_NOT_KNOWN = 'Pump on. How far the water falls is not known; drawn at rest.';

/**
 * Once, when the pump is switched.
 *
 * @param calm  the water is drawn where it ends up, and not on its way
 * @param levelKnown  somebody knows how far it falls
 */
export function saySwitched(on: boolean, isBlocked: boolean, calm: boolean, levelKnown: boolean): string {
  if (on && isBlocked) return 'Pump on. The check valve’s arrow points down: no water comes past it.';
  if (on && !levelKnown) return FALL_NOT_KNOWN;
  if (on) return calm ? 'Pump on. The water is drawn at its pumping level.' : 'Pump on. The water falls from rest.';
  return calm ? 'Pump off. The water is drawn at rest.' : 'Pump off. The water comes back.';
}

/** Once, when the winter begins to pass, or is held where it is. */
export function sayWinter(passes: boolean, frost: string): string {
  return passes
    ? 'The winter passes in twelve seconds: frost goes down, and thaws again.'
    : `The winter is held: ${frost}.`;
}

/** "12 min after the start", or "after the stop". */
export function sayWhen(curve: LevelCurve | Unknown | null, time: Seconds): string {
  if (curve === null || 'reason' in curve || curve.pumpFor === null || curve.phaseAt(time) !== 'recovery')
    return `${sayTime(time)} after the start`;
  return `${sayTime(time - curve.pumpFor)} after the stop`;
}

export interface Drawn {
  readonly curve: LevelCurve | Unknown | null;
  readonly time: Seconds;
  /** The water stands as the curve has it. */
  readonly timed: boolean;
  readonly pumping: boolean | null;
  /** Whether the solution has a level for the running pump. */
  readonly levelKnown: boolean;
  /** "frost 31 in"; null for the frost as planned. */
  readonly frost: string | null;
}

/** What the drawing shows in place of the plan; empty where it shows the plan. */
export function sayDrawn({ curve, time, timed, pumping, levelKnown, frost }: Drawn): string {
  if (pumping === true && !timed && !levelKnown)
    return frost === null ? FALL_NOT_KNOWN : `${FALL_NOT_KNOWN} ${frost.charAt(0).toUpperCase()}${frost.slice(1)}.`;
  const pump = pumping === true ? 'pump on, water at its pumping level' : 'pump off, water at rest';
  // One line on a phone.
  const stands = frost === null ? 'water as it stands' : 'water';
  const water = timed ? `${stands} ${sayWhen(curve, time)}` : pumping === null ? null : pump;
  const all = [water, frost].filter((words) => words !== null).join(', ');
  return all === '' ? '' : `Drawn: ${all}`;
}
