/** A band in one sentence: from where to where a part may go, and what ends it there. */
import type { Metres } from '../model/si.ts';
import type { Band, BandSetting } from '../model/solution.ts';
import type { Show } from '../model/units.ts';
import { sayEnd } from './sayEnd.ts';
import type { HeadroomLanguage, ShortLanguage } from './words.ts';

/** What the bar beside the hole says; empty where there is none. */
export function sayBand(
  { kind, setting, from, to, fromEnd, toEnd }: Band,
  { short, headroom }: { readonly short: ShortLanguage; readonly headroom: HeadroomLanguage },
  show: Show,
): string {
  if (from === null || to === null) return '';
  const measure = measureOf(setting, show);
  return headroom.band[kind](
    { depth: measure(from), name: sayEnd(fromEnd, short, show) },
    { depth: measure(to), name: sayEnd(toEnd, short, show) },
  );
}

export function measureOf(setting: BandSetting, show: Show): (depth: Metres) => string {
  return setting === 'top.depth' ? show.small : show.depth;
}
