/** What was put in, and what was measured at the first start, in words. */
import type { Row, Value } from '../model/asBuilt/asked.ts';
import type { Compared } from '../model/asBuilt/measured.ts';
import type { Show } from '../model/units.ts';
import type { AsBuiltWords } from './en/asBuilt.ts';
import { sayValue } from './en/plan/assumed.ts';
import { nameOfPath } from './en/plan/paths.ts';

export interface SaidRow {
  readonly name: string;
  readonly planned: string;
  /** Empty where nobody wrote it down. */
  readonly installed: string;
  readonly differs: string;
}

export function sayRow(
  { path, planned, assumed, installed, differs, fromCasingTop }: Row,
  words: AsBuiltWords,
  show: Show,
): SaidRow {
  const say = (value: Value): string => sayValue(path, value, show.units);
  const { notSaid, assumed: sayAssumed, differs: sayDiffers } = words.installed;
  return {
    name: words.installed.name(nameOfField(path, words), fromCasingTop),
    planned: planned === null ? notSaid : assumed ? sayAssumed(say(planned)) : say(planned),
    installed: installed === null ? '' : say(installed),
    differs: differs ? sayDiffers : '',
  };
}

/** What its figure counts from is in the name. */
function nameOfField(path: string, { installed: { heights } }: AsBuiltWords): string {
  const list = /^string\.(?:checkValves|splices)(?=\.\d)/.exec(path)?.[0];
  if (list === 'string.checkValves' || list === 'string.splices') {
    const number = Number(path.slice(list.length + 1)) + 1;
    return heights[list](number);
  }
  return nameOfPath(path);
}

export interface SaidReading {
  readonly name: string;
  readonly measured: string;
  readonly expected: string;
  readonly verdict: string;
  readonly causes: readonly string[];
}

export function sayCompared(compared: Compared, words: AsBuiltWords, show: Show): SaidReading {
  const { reading, kind, measured, expected, verdict, causes } = compared;
  const { start } = words;
  // Of a depth more is lower.
  const isLevel = kind === 'length' && (verdict === 'low' || verdict === 'high');
  return {
    name: words.readings[reading],
    measured: sayReading(kind, measured, show),
    expected: expected === null ? start.unknown : sayExpected(kind, expected, words, show),
    verdict: isLevel ? start.levels[verdict] : start.verdicts[verdict],
    causes: causes.map((cause) => (words.causes[cause.id] as (of: typeof cause, show: Show) => string)(cause, show)),
  };
}

export function sayExpected(
  kind: Compared['kind'],
  { least, most }: NonNullable<Compared['expected']>,
  { start }: AsBuiltWords,
  show: Show,
): string {
  const say = (value: number): string => sayReading(kind, value, show);
  if (most === null) return start.atLeast(say(least));
  return least === 0 ? start.upTo(say(most)) : start.between(say(least), say(most));
}

function sayReading(kind: Compared['kind'], value: number, show: Show): string {
  switch (kind) {
    case 'length':
      return show.depth(value);
    case 'voltage':
      return show.voltage(value);
    case 'current':
      return show.current(value);
    case 'flow':
      return show.flow(value);
    case 'pressure':
      return show.pressure(value);
    case 'time':
      return show.time(value);
  }
}
