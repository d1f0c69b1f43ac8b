/** What is said of the water at a time. */
import type { CubicMetresPerSecond, Seconds } from '../../model/si.ts';
import type { BreakRange, LevelCurve, TimeRange } from '../../model/time/index.ts';
import type { Show } from '../../model/units.ts';
import { span } from '../../words/en/phrases.ts';
import { sayTime } from './timeScale.ts';

/** "Water as it stands 4 h after the start: 92 ft deep, 88 ft over the intake." */
export function sayLevel(curve: LevelCurve, time: Seconds, intake: number, show: Show): string {
  const level = curve.levelAt(time);
  const over = intake - level;
  // Rounded first: a level at the intake is neither over nor under it by nothing.
  const at = show.depth(over) === show.depth(0);
  const where = at
    ? 'at the intake'
    : over > 0
      ? `${show.depth(over)} over the intake`
      : `${show.depth(-over)} under the intake`;
  const depth = level < 0 ? `${show.depth(-level)} above ground` : `${show.depth(level)} deep`;
  return `Water as it stands ${sayTime(time)} after the start: ${depth}, ${where}.`;
}

/** What the pump does at that time, and at what flow. */
export function sayPhase(
  curve: LevelCurve,
  time: Seconds,
  show: Show,
  sure: CubicMetresPerSecond | null = null,
): string {
  switch (curve.phaseAt(time)) {
    case 'pumping':
      return `The pump draws ${show.flow(curve.flow)}, ${curve.flowWords}.`;
    case 'at lowest':
      if (curve.breaksSuction === null)
        return `By the long-term fit alone the water would be down to ${DEEPEST[curve.lowest.by]}.`;
      return `The water is down to ${DEEPEST[curve.lowest.by]}: the pump gets only what the well gives, ${span(sure ?? curve.flowAt(time), curve.flowAt(time), show.flow)}.`;
    case 'recovery':
      return 'The pump is off, and the water comes back.';
  }
}

/** How deep the pump can draw the water. */
const DEEPEST: Readonly<Record<LevelCurve['lowest']['by'], string>> = {
  intake: 'the intake',
  'low-level cut-off': 'the probe of the dry-run protection',
};

/**
 * When it breaks suction, and how long half of the water in the bore takes to come back: from the earliest to the latest
 * that can be. Empty where it never does.
 */
export function sayBreak(range: BreakRange | null): string {
  if (range?.breaks == null) return '';
  const { breaks, lowest, byPump, byYield } = range;
  const what = lowest.by === 'intake' ? 'The pump breaks suction' : 'The dry-run protection stops the pump';
  const back = range.back(0.5);
  const rest = back === null ? '' : ` Half of the stored water is back ${sayRange(back, 'about ')} after a stop.`;
  const when = `${what} ${sayRange(breaks)} after the start`;
  if (breaks.latest !== null && sayTime(breaks.soonest) === sayTime(breaks.latest)) return `${when}.${rest}`;
  const first = byPump
    ? `with a strong pump of that rating${byYield ? ' and the least of the yield' : ''}`
    : 'on the least of the yield';
  const last = byPump ? `a weak one${byYield ? ' on all of the yield' : ''}` : 'on all of it';
  if (breaks.latest !== null) return `${when}: first ${first}, last ${byPump ? `with ${last}` : last}.${rest}`;
  return `${when}, ${first}; ${byPump ? `${last} never draws it so far` : `${last}, never`}.${rest}`;
}

/** "20 to 35 min", "at the earliest 2 h" */
function sayRange({ soonest, latest }: TimeRange, about = ''): string {
  return latest === null ? `at the earliest ${sayTime(soonest)}` : `${about}${span(soonest, latest, sayTime)}`;
}

/** What nobody measured: the level past the hours that the figures rest on, and where the fit puts it in the end. */
export function sayFit({ toldFor, fitReaches, lowest }: LevelCurve, time: Seconds): string {
  if (toldFor === null || (fitReaches === null && time <= toldFor.time)) return '';
  const end =
    fitReaches === null
      ? ''
      : ` By that fit alone a pump that never stops has the water at ${DEEPEST[lowest.by]} in about ${sayTime(fitReaches)}; only a longer test would tell.`;
  return `${PROVEN[toldFor.by](sayTime(toldFor.time))}, and what comes later is a long-term fit that nobody measured.${end}`;
}

const PROVEN: Readonly<Record<NonNullable<LevelCurve['toldFor']>['by'], (hours: string) => string>> = {
  test: (hours) => `The test’s ${hours} prove no more than the figures say`,
  'usual day': () => 'Nobody said how long the test ran, so it is taken as a day',
  aquifer: (hours) => `The figures take the drawdown after ${hours}`,
};

/** Empty from the time on from which something is claimed. */
export function sayNotClaimed(curve: LevelCurve, time: Seconds): string {
  return time < curve.claimedFrom
    ? `Nothing is claimed before ${sayTime(curve.claimedFrom)}: the level drawn is a guess.`
    : '';
}
