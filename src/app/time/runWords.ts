/** What is said of a well that is made to run. */
import type { Metres, Ratio, Seconds } from '../../model/si.ts';
import type { Solution } from '../../model/solution.ts';
import type { LevelCurve, Unknown } from '../../model/time/index.ts';
import { inches, type Show } from '../../model/units.ts';
import { sayTime } from './timeScale.ts';

/** "frost 31 in", to the whole inch or centimetre: finer than the frost itself is known. */
export function sayFrost(frost: Metres, show: Show): string {
  const step = show.units === 'us' ? inches(1) : 0.01;
  return `frost ${show.small(Math.round(frost / step) * step)}`;
}

/** "frost 31 in of 48 in" */
export function sayFrostOf(frost: Metres, { values }: Solution, show: Show): string {
  return `${sayFrost(frost, show)} of ${show.small(values.frostDepth ?? frost)}`;
}

/** Where in the freezing season, by the share of it that is over. */
export function saySeason(season: Ratio): string {
  if (season === 0) return 'Autumn, before the first frost';
  if (season === 1) return 'Spring, at the end of the frost';
  return `${Math.round(season * 100)} % of the freezing season over`;
}

/** Once, when the pump is switched. */
export function saySwitched(on: boolean, isBlocked: boolean, calm: boolean): string {
  if (on && isBlocked) return 'Pump on. The check valve’s arrow points down: no water comes past it.';
  if (on) return calm ? 'Pump on. The water is drawn at its pumping level.' : 'Pump on. The water falls from rest.';
  return calm ? 'Pump off. The water is drawn at rest.' : 'Pump off. The water comes back.';
}

/** Once, when the winter begins to pass, or is held where it is. */
export function sayWinter(passes: boolean, frost: string): string {
  return passes ? 'The winter passes in twelve seconds, and the frost goes down.' : `The winter is held: ${frost}.`;
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
  /** "frost 31 in"; null where it has reached its depth, as planned. */
  readonly frost: string | null;
}

/** What the drawing shows in place of the plan; empty where it shows the plan. */
export function sayDrawn({ curve, time, timed, pumping, frost }: Drawn): string {
  const pump = pumping === true ? 'pump on, water at its pumping level' : 'pump off, water at rest';
  // One line on a phone.
  const stands = frost === null ? 'water as it stands' : 'water';
  const water = timed ? `${stands} ${sayWhen(curve, time)}` : pumping === null ? null : pump;
  const all = [water, frost].filter((words) => words !== null).join(', ');
  return all === '' ? '' : `Drawn: ${all}`;
}
