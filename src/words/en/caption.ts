/** Under an exported drawing: the legend, and the lines of the title block. */
import type { Severity } from '../../model/solution.ts';
import type { Show } from '../../model/units.ts';
import type { Note } from '../labels.ts';

/** What a legend explains beside the materials, which the plan names. */
export type LegendKey =
  | 'static'
  | 'pumping'
  | 'cone'
  | 'frost'
  | 'band'
  | 'openBand'
  | 'grout'
  | 'pack'
  | 'symbol'
  | 'assumed'
  | 'unknown'
  | 'anyFall';

const alone = (words: string): Note => ({ long: words, short: words });

const legend: Readonly<Record<LegendKey, Note>> = {
  static: { long: 'static water level, pump off', short: 'static level' },
  pumping: { long: 'pumping level, pump on', short: 'pumping level' },
  cone: { long: 'level in the ground; distance not to scale', short: 'level in the ground' },
  frost: alone('frost line'),
  band: { long: 'where the rules for depth hold', short: 'depth rules hold' },
  openBand: { long: 'hatched: right or not, nobody knows', short: 'nobody knows' },
  anyFall: { long: 'pumping may draw the water anywhere here', short: 'water may fall here' },
  grout: alone('grout'),
  pack: alone('gravel pack'),
  symbol: { long: 'dashed outline: symbol, not size', short: 'symbol, not size' },
  unknown: { long: 'dashed with “?”: nobody knows', short: 'dashed: not known' },
  assumed: { long: 'dotted underline: assumed, nobody said it', short: 'dotted: assumed' },
};

const unit: Readonly<Record<Show['units'], string>> = { us: 'feet and inches', metric: 'metres' };

const severities: Readonly<Record<Severity, string>> = { danger: 'danger', warning: 'warning', note: 'note' };

/** The signs of findings: a reader looks the number up in the list. */
const signs: Readonly<Record<Severity, Note>> = {
  danger: { long: 'danger, by its number in the list', short: 'danger, see list' },
  warning: { long: 'warning, by its number in the list', short: 'warning, see list' },
  note: { long: 'note, by its number in the list', short: 'note, see list' },
};

export interface ScaleNumbers {
  /** Of depths in the section, as the sheet says it; null on a screen. */
  readonly scale: string | null;
  /** Of each frame by its letter; the section, which has none over it, is O. */
  readonly factors: readonly { readonly view: string; readonly factor: number }[];
}

export type CheckNumbers = Readonly<Record<Severity, number>> & {
  readonly notJudged: number;
  /** Whether the picture shows them. */
  readonly signs: boolean;
};

export const caption = {
  legendTitle: 'Legend',
  legend,
  signs,
  groundNotReported: 'ground not reported',
  /** Entries that found no room. */
  more: ({ count }: { count: number }): string => `${count} more`,
  depths: ({ date }: { date: string | null }, show: Show): string =>
    `${date === null ? '' : `Date ${date} · `}depths in ${unit[show.units]} from the ground surface`,
  scales: ({ scale, factors }: ScaleNumbers): string =>
    `${scale === null ? 'Depths to scale' : `Section: SCALE ${scale} vertical`}; widths enlarged: ${factors
      .map(({ view, factor }) => `${view === 'O' ? 'section' : view}\u00a0×${factor}`)
      .join(', ')}`,
  checks: ({ danger, warning, note, notJudged, signs: shown }: CheckNumbers): string =>
    `Checks${shown ? '' : ' (signs left out)'}: ${counted('danger', danger)}, ${counted('warning', warning)}, ${counted('note', note)}, ${notJudged} could not be checked`,
  notEngineered: ({ version }: { version: string | null }): string =>
    `Not an engineered drawing; local code and licensed practice decide.${version === null ? '' : ` Version ${version}`}`,
};

function counted(severity: Severity, count: number): string {
  return `${count} ${severities[severity]}${count === 1 ? '' : 's'}`;
}
