/** The second lines of the chips: what follows from a depth, at length and, for a narrow column, shortly. */
import type { Metres } from '../../model/si.ts';
import type { PartKind, Solution } from '../../model/solution.ts';
import type { Show } from '../../model/units.ts';
import { hold } from '../type/width.ts';

export interface Note {
  readonly long: string;
  readonly short: string;
}

export interface ChipLook {
  /** Findings about these belong to the chip. */
  readonly parts: readonly PartKind[];
  readonly weight: number;
  /** Default: a depth. */
  readonly value?: (depth: Metres, show: Show) => string;
  readonly notes: (solution: Solution, show: Show) => readonly (Note | null)[];
}

/** By the kind of handle; a handle without a look has no chip in the section. */
export const CHIP_LOOKS: Readonly<Record<string, ChipLook | undefined>> = {
  casingHeight: {
    parts: ['cap', 'seal'],
    weight: 2,
    value: (depth, show) => `${show.small(-depth)} up`,
    notes: () => [],
  },
  frostDepth: {
    parts: ['frost'],
    weight: 4,
    value: shallow,
    notes: ({ facts: { site }, values }) => [
      site.frostDepth === null
        ? values.frostDepth === null
          ? null
          : say(FROST_FROM.estimate)
        : site.frostFrom === null
          ? null
          : say(FROST_FROM[site.frostFrom]),
    ],
  },
  pitlessDepth: {
    parts: ['pitlessAdapter', 'buriedLine'],
    weight: 4,
    value: shallow,
    notes: ({ values }, show) => [againstFrost(values.pitlessBelowFrost, show)],
  },
  staticLevel: {
    parts: ['staticLevel'],
    weight: 4,
    notes: ({ levels }, show) =>
      levels.static === null
        ? []
        : [
            say(levels.static < 0 ? 'flows when open' : 'pump off'),
            inDrySeason(levels.staticLowest, levels.static, show),
          ],
  },
  pumpingLevel: {
    parts: ['pumpingLevel'],
    weight: 4,
    notes: (solution, show) => [
      drawdown(solution, show),
      inDrySeason(solution.levels.pumpingDry, solution.levels.pumping, show),
    ],
  },
  pumpSetting: {
    parts: ['pump', 'intake', 'motor'],
    weight: 4,
    notes: ({ values }, show) => [overIntake(values.submergence, show)],
  },
  wellBottom: {
    parts: ['well'],
    weight: 4,
    notes: ({ facts, values }, show) => [
      values.clearanceToBottom === null
        ? null
        : withShort(show.depth(values.clearanceToBottom), 'under the motor', 'to motor'),
      facts.well.depth - facts.well.bottom < 0.01 ? null : say(`drilled to ${hold(show.depth(facts.well.depth))}`),
    ],
  },
  casingBottom: {
    parts: ['casing', 'grout'],
    weight: 2,
    notes: ({ facts: { well } }, show) => {
      const liner = well.casings.length > 1 ? well.casings.at(-1) : undefined;
      // Grout is round the outer casing.
      if (liner !== undefined) return [liner.top > 0 ? say(`from ${hold(show.depth(liner.top))}`) : null];
      return [say(well.groutBottom === null ? 'grout not known' : `grout to ${hold(show.depth(well.groutBottom))}`)];
    },
  },
  screenTop: { parts: ['screen'], weight: 2, notes: () => [] },
  screenBottom: { parts: [], weight: 2, notes: () => [] },
};

const FROST_FROM = { 'local code': 'by local code', estimate: 'by estimate', adviser: 'by the adviser' } as const;

/** A note with one way to say it. */
export function say(long: string, short = long): Note {
  return { long, short };
}

function withShort(quantity: string, long: string, short: string): Note {
  return say(`${hold(quantity)} ${long}`, `${hold(quantity)} ${short}`);
}

/** In inches or centimetres down to twelve feet: that is how codes give frost. */
function shallow(depth: Metres, show: Show): string {
  return depth < 3.7 ? show.small(depth) : show.depth(depth);
}

function againstFrost(below: Metres | null, show: Show): Note | null {
  if (below === null) return null;
  return below >= 0
    ? withShort(show.small(below), 'below frost', 'under frost')
    : withShort(show.small(-below), 'above frost', 'above frost');
}

function inDrySeason(dry: Metres | null, usual: Metres | null, show: Show): Note | null {
  if (dry === null || (usual !== null && Math.abs(dry - usual) < 0.01)) return null;
  return withShort(show.depth(dry), 'in a dry season', 'when dry');
}

function drawdown({ facts, values }: Solution, show: Show): Note | null {
  const { demand } = facts.house;
  if (values.drawdown === null || demand === null) {
    return facts.water.pumping?.kind === 'yield only' ? say('air-lift yield only: not known', 'air-lift yield') : null;
  }
  return withShort(show.depth(values.drawdown), `drawdown at ${hold(show.flow(demand))}`, 'drawdown');
}

function overIntake(submergence: Metres | null, show: Show): Note | null {
  if (submergence === null) return null;
  return submergence >= 0
    ? withShort(show.depth(submergence), 'of water over it', 'over it')
    : withShort(show.depth(-submergence), 'above the water', 'too high');
}
