/**
 * What is told of how far the well may go, and in words beside a level; as ticks at their depths. All of it is fetched
 * when the well is drawn.
 */
export { headroomToFind } from '../../model/headroom/headroom.ts';
import type { Headroom, HeadroomOf } from '../../model/headroom/told.ts';
import type { Metres } from '../../model/si.ts';
import type { Band, BandSetting, Severity } from '../../model/solution.ts';
import type { Show } from '../../model/units.ts';
import { sayBand } from '../../words/sayBand.ts';
import { sayHeadroom, type SaidStep } from '../../words/sayHeadroom.ts';
import { headroom } from '../../words/en/headroom.ts';
import { en } from '../language.ts';

/** What how far it may go is said with. */
export const words = { short: en.short, headroom };

/** The levels that can be taken hold of. */
const OF: Readonly<Record<string, HeadroomOf>> = {
  staticLevel: 'staticLevel',
  pumpSetting: 'pumpSetting',
  frostDepth: 'frostDepth',
};

export function linesOf(handle: string, lines: readonly Headroom[]): readonly Headroom[] {
  return lines.filter(({ of }) => of === OF[handle]);
}

function stepsBeside(lines: readonly Headroom[], show: Show): readonly SaidStep[] {
  return lines.flatMap((line) => sayHeadroom(line, words, show, 'brief').steps);
}

export interface Tick {
  readonly key: string;
  readonly depth: Metres;
  readonly severity: Severity;
}

/** Where a warning and where a danger begins; none for what is so already. A first danger may have a worse one beyond it. */
export function ticksOf(lines: readonly Headroom[]): readonly Tick[] {
  return lines.flatMap(({ direction, warning, danger }) => {
    const first = warning !== null && warning.at !== danger?.at ? [warning] : [];
    return [...first, ...(danger === null ? [] : [danger])]
      .filter(({ already }) => !already)
      .map((step) => ({
        key: `${direction}/${step === danger ? 'danger' : 'first'}`,
        depth: step.last,
        severity: step.severity,
      }));
  });
}

const BANDS: Readonly<Record<string, BandSetting>> = { pumpSetting: 'pump.setting', pitlessDepth: 'top.depth' };

/** What the bar beside the hole says, for those who do not see it; empty where there is none. */
function sayBands(handle: string, bands: readonly Band[], show: Show): readonly string[] {
  return bands
    .filter(({ setting, from, to }) => setting === BANDS[handle] && from !== null && to !== null)
    .map((band) => sayBand(band, words, show));
}

/** What is told of a level besides its own words, also as it is heard after those. */
export interface ToldBeside {
  readonly bands: readonly string[];
  readonly steps: readonly SaidStep[];
  readonly heard: string;
}

export function toldBeside(
  lines: readonly Headroom[],
  bands: readonly Band[],
  show: Show,
): ReadonlyMap<string, ToldBeside> {
  return new Map(
    [...new Set([...Object.keys(OF), ...Object.keys(BANDS)])].map((handle) => {
      const said = sayBands(handle, bands, show);
      const steps = stepsBeside(linesOf(handle, lines), show);
      return [handle, { bands: said, steps, heard: [...said, ...steps.map(({ text }) => text)].join(' ') }];
    }),
  );
}
