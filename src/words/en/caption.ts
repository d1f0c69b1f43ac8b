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

export interface ScaleNumbers {
  /** Of depths in the section; null on a screen. */
  readonly scale: number | null;
  readonly factors: readonly { readonly view: string; readonly factor: number }[];
}

export type CheckNumbers = Readonly<Record<Severity, number>> & { readonly notJudged: number };

export const caption = {
  legendTitle: 'Legend',
  legend,
  groundNotReported: 'ground not reported',
  /** Entries that found no room. */
  more: ({ count }: { count: number }): string => `${count} more`,
  depths: ({ date }: { date: string | null }, show: Show): string =>
    `${date === null ? '' : `Date ${date} · `}depths in ${unit[show.units]} from the ground surface`,
  scales: ({ scale, factors }: ScaleNumbers): string =>
    `${scale === null ? 'Depths to scale' : `Section: SCALE 1:${scale} vertical`}; widths enlarged: ${factors
      .map(({ view, factor }) => `${view} ×${factor}`)
      .join(', ')}`,
  checks: ({ danger, warning, note, notJudged }: CheckNumbers): string =>
    `Checks: ${counted('danger', danger)}, ${counted('warning', warning)}, ${counted('note', note)}, ${notJudged} could not be checked`,
  notEngineered: ({ version }: { version: string | null }): string =>
    `Not an engineered drawing; local code and licensed practice decide.${version === null ? '' : ` Version ${version}`}`,
};

function counted(severity: Severity, count: number): string {
  return `${count} ${severities[severity]}${count === 1 ? '' : 's'}`;
}
