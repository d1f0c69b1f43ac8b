/** The chips beside the section: names for a narrow column, and the second lines with what follows from a depth. */
import type { SiteFacts } from '../../model/facts.ts';
import type { HandleNames } from '../../model/handleNames.ts';
import type { CubicMetresPerSecond, Metres } from '../../model/si.ts';
import type { Show } from '../../model/units.ts';
import type { Note } from '../labels.ts';

/** Handles that have a chip in the section. */
export type ChipName = Exclude<keyof HandleNames, 'checkValve' | 'splice' | 'layerFoot'>;

const names: Readonly<Record<ChipName, string>> = {
  casingTop: 'Top',
  frostLine: 'Frost',
  pitlessAdapter: 'Pitless',
  staticLevel: 'Static',
  pumpingLevel: 'Pumping',
  pumpIntake: 'Intake',
  wellBottom: 'Bottom',
  casingBottom: 'Casing',
  linerBottom: 'Liner',
  screenTop: 'Screen top',
  screenBottom: 'Screen end',
};

/** Who said how deep the frost goes. */
const frostFrom: Readonly<Record<NonNullable<SiteFacts['frostFrom']>, string>> = {
  'local code': 'by local code',
  estimate: 'by estimate',
  adviser: 'by the adviser',
};

const airLiftOnly: Note = { long: 'only a yield is known: not known', short: 'yield only' };

export interface Depth {
  readonly depth: Metres;
}

export interface Gap {
  readonly gap: Metres;
}

export const chips = {
  names,
  notKnown: '?',
  /** What stands above the ground: "18 in up". */
  up: (height: string): string => `${height} up`,
  frostFrom,
  pumpOff: 'pump off',
  flowsWhenOpen: 'flows when open',
  inDrySeason: ({ depth }: Depth, show: Show): Note => figure(show.depth(depth), 'in a dry season', 'when dry'),
  drawdown: ({ drawdown, demand }: { drawdown: Metres; demand: CubicMetresPerSecond }, show: Show): Note =>
    figure(show.depth(drawdown), `drawdown at ${show.flow(demand)}`, 'drawdown'),
  airLiftOnly,
  belowFrost: ({ gap }: Gap, show: Show): Note => figure(show.small(gap), 'below frost', 'under frost'),
  aboveFrost: ({ gap }: Gap, show: Show): Note => figure(show.small(gap), 'above frost', 'above frost'),
  waterOverIntake: ({ gap }: Gap, show: Show): Note => figure(show.depth(gap), 'of water over it', 'over it'),
  wouldDraw: ({ demand }: { demand: CubicMetresPerSecond }, show: Show): Note => ({
    long: `where ${show.flow(demand)} would draw it`,
    short: `at ${show.flow(demand)}`,
  }),
  tooHighFor: ({ gap, demand }: Gap & { demand: CubicMetresPerSecond }, show: Show): Note =>
    figure(show.depth(gap), `too high for ${show.flow(demand)}`, 'too high'),
  intakeAboveWater: ({ gap }: Gap, show: Show): Note => figure(show.depth(gap), 'above the water', 'too high'),
  underMotor: ({ gap }: Gap, show: Show): Note => figure(show.depth(gap), 'under the motor', 'to motor'),
  drilledTo: ({ depth }: Depth, show: Show): string => `drilled to ${show.depth(depth)}`,
  linerFrom: ({ depth }: Depth, show: Show): string => `from ${show.depth(depth)}`,
  groutTo: ({ depth }: Depth, show: Show): string => `grout to ${show.depth(depth)}`,
  groutNotKnown: 'grout not known',
  /** Chips that found no room: "3 more, 198–204 ft". */
  more: ({ count, range }: { count: number; range: string }): string => `${count} more, ${range}`,
};

function figure(quantity: string, long: string, short: string): Note {
  return { long: `${quantity} ${long}`, short: `${quantity} ${short}` };
}
