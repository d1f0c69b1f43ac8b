/** Headings of a sheet and its details, and how their scales are told. */
import type { CasingFacts, WellFacts } from '../../model/facts.ts';
import type { Metres } from '../../model/si.ts';
import type { Show } from '../../model/units.ts';
import type { Note } from '../labels.ts';
import { capital } from './phrases.ts';

/** What well it is. */
export interface WellNumbers {
  /** The innermost pipe; null where nothing lines the hole. */
  readonly pipe: {
    readonly isLiner: boolean;
    /** As it is printed on it ("6 in"); empty where nobody knows. */
    readonly size: string;
    readonly material: CasingFacts['material'];
    readonly bottom: Metres | null;
  } | null;
  readonly intake: WellFacts['intake']['kind'];
  /** Where the intake ends. */
  readonly bottom: Metres;
  /** The rock that the hole ends in, as the report names it. */
  readonly rock: string | null;
}

const details: Readonly<Record<'A' | 'B' | 'C' | 'D', string>> = {
  A: 'Well top',
  B: 'Pump and motor',
  C: 'Close-up',
  D: 'At the house',
};

/** In a foot. */
const INCHES = 12;

const unit: Readonly<Record<Show['units'], string>> = { us: 'feet', metric: 'metres' };

export const sheet = {
  /** Of a well without a name. */
  title: 'Drilled water well',
  details,
  /** "6 in steel casing to 62 ft, open granite to 220 ft." */
  well: ({ pipe, intake, bottom, rock }: WellNumbers, show: Show): string =>
    capital(`${pipe === null ? '' : `${lining(pipe, show)}, `}${below(intake, rock)} to ${show.depth(bottom)}.`),
  depthsFrom: (show: Show): string => `Depths from the ground, in ${unit[show.units]}.`,
  trueProportion: 'true proportion',
  /** In the house. */
  fromFloor: 'heights from the floor, true proportion',
  /** Over a slim picture of the pump, one word a line: as wide as it is. */
  trueWidth: ['true', 'width'],
  /** Beside a bar of this length. */
  barAtTrueProportion: (length: string): string => `${length}, true proportion`,
  /** At the head of a detail. */
  widths: ({ factor }: { factor: number }): string => `depths to scale, widths ×${factor}`,
  /** Under the section. */
  widthsAlone: ({ factor }: { factor: number }): string => `widths ×${factor}`,
  /** As a reader of these units measures on paper. */
  scale: ({ scale }: { scale: number }, show: Show): Note =>
    show.units === 'us'
      ? { long: `1 in = ${scale / INCHES} ft (1:${scale})`, short: `1 in = ${scale / INCHES} ft` }
      : { long: `1:${scale}`, short: `1:${scale}` },
  scaleAndWidths: ({ scale, factor }: { scale: string; factor: number }): string =>
    `SCALE ${scale} vertical, widths ×${factor}`,
  ratioAndWidths: ({ scale, factor }: { scale: string; factor: number }): string => `${scale}, widths ×${factor}`,
};

function lining({ isLiner, size, material, bottom }: NonNullable<WellNumbers['pipe']>, show: Show): string {
  const pipe = [size, material === 'other' ? '' : material, isLiner ? 'liner' : 'casing'];
  return `${pipe.filter((word) => word !== '').join(' ')}${bottom === null ? '' : ` to ${show.depth(bottom)}`}`;
}

function below(intake: WellNumbers['intake'], rock: string | null): string {
  if (intake === null) return 'well';
  if (intake !== 'open hole') return intake;
  return `open ${rock?.toLowerCase() ?? 'hole'}`;
}
