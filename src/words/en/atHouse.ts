/** Labels of what stands in the house: fetched with its drawing, apart from those that every drawing needs. */
import type { CubicMetres, Metres, Pascals } from '../../model/si.ts';
import type { Show } from '../../model/units.ts';
import type { PartLabel } from '../labels.ts';

const shutOff: PartLabel = {
  name: 'Shut-off to the house',
  short: 'Shut-off',
  note: 'after the tee, never before it',
  brief: 'never before the tee',
};
const gauge: PartLabel = { name: 'Gauge', note: 'at zero before any work' };
const tankTee: PartLabel = { name: 'Tank tee', note: 'no valve before it' };
const drain: PartLabel = { name: 'Drain', note: 'empties the tank' };
const disconnect: PartLabel = { name: 'Disconnect', note: 'off and locked before work', brief: 'off, locked' };
const controlBox: PartLabel = { name: 'Control box', note: 'for an electrician' };
const drive: PartLabel = { name: 'Drive, sets the speed', short: 'Drive', note: 'for an electrician' };
const float: PartLabel = { name: 'Float switch', note: 'stops the pump when full', brief: 'stops the pump' };

export const atHouse = {
  shutOff,
  gauge,
  tankTee,
  drain,
  disconnect,
  controlBox,
  drive,
  float,
  /** From an open tank the water goes on by itself, or by a pump of its own. */
  outlet: { name: 'Shut-off to the house', short: 'Shut-off', note: 'at the foot of the tank' } as PartLabel,
  tank: (
    { volume, open, water }: { volume: CubicMetres | null; open: boolean; water: CubicMetres | null },
    show: Show,
  ): PartLabel => {
    const name = open ? 'Open tank' : 'Pressure tank';
    return {
      name: volume === null ? name : `${name}, ${show.volume(volume)}`,
      short: name,
      note: volume === null ? 'size not known' : water === null ? '' : `gives ${show.volume(water)} a start`,
    };
  },
  air: ({ precharge }: { precharge: Pascals }, { pressure }: Show): PartLabel => ({
    name: 'Air',
    note: `${pressure(precharge)} while empty`,
  }),
  /** Where the water stands when the pump stops. */
  full: ({ cutOut, cutIn }: { cutOut: Pascals; cutIn: Pascals }, { pressure }: Show): PartLabel => ({
    name: `Water at ${pressure(cutOut)}`,
    note: `dashes: at ${pressure(cutIn)}`,
  }),
  switch: ({ cutIn, cutOut }: { cutIn: Pascals; cutOut: Pascals }, { pressure }: Show): PartLabel => ({
    name: 'Pressure switch',
    note: `on ${pressure(cutIn)}, off ${pressure(cutOut)}`,
  }),
  sensor: { name: 'Pressure sensor', note: 'tells the drive' } as PartLabel,
  reliefValve: { name: 'Relief valve', note: 'never plugged or capped', brief: 'never plugged' } as PartLabel,
  /** @param none  the plan says that there is none; else nobody said */
  noRelief: ({ none }: { none: boolean }): PartLabel =>
    none
      ? { name: 'No relief valve', note: 'as the plan says' }
      : { name: 'Relief valve? Not said', short: 'Relief valve?', note: 'none is drawn' },
  reliefPipe: ({ over }: { over: Metres }, { small }: Show): PartLabel => ({
    name: 'Relief pipe, open end',
    short: 'Relief pipe',
    note: `${small(over)} over floor or drain`,
    brief: `${small(over)} over floor`,
  }),
  /** @param freezes  the ground freezes here, as deep as anybody knows */
  riser: ({ freezes }: { freezes: boolean }): PartLabel =>
    freezes
      ? {
          name: 'Frost at this rise? Not said',
          short: 'Frost here? Not said',
          note: 'heated floor, or crawl space?',
          brief: 'heated floor?',
        }
      : { name: 'Rise into the house', short: 'Rise', note: '' },
  /** The line under the floor. */
  line: (
    { size, top, belowFrost }: { size: string | null; top: Metres; belowFrost: Metres | null },
    { small, depth }: Show,
  ): PartLabel => ({
    name: size === null ? 'Line from the well' : `Line from the well, ${size}`,
    short: 'Line from the well',
    note:
      belowFrost === null
        ? `at the well ${top > 0 ? `${depth(top)} deep` : 'above ground'}`
        : `at the well ${small(Math.abs(belowFrost))} ${belowFrost >= 0 ? 'below' : 'above'} frost`,
    brief: belowFrost === null ? '' : `${small(Math.abs(belowFrost))} ${belowFrost >= 0 ? 'below' : 'above'} frost`,
  }),
  floor: ({ rise }: { rise: Metres | null }, { depth }: Show): PartLabel => ({
    name: 'Floor',
    note:
      rise === null
        ? 'height over the well not known'
        : rise === 0
          ? 'level with the well’s ground'
          : `${depth(Math.abs(rise))} ${rise > 0 ? 'over' : 'under'} the well’s ground`,
    brief: rise === null ? 'height not known' : `${depth(Math.abs(rise))} ${rise >= 0 ? 'over' : 'under'} the well`,
  }),
};
