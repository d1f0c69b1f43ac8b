/** What stands in the section beside its chips: inflows, dimensions, bands, layers, the rail. */
import type { Metres, Ratio } from '../../model/si.ts';
import type { Show } from '../../model/units.ts';
import type { Note } from '../labels.ts';

const unit: Readonly<Record<Show['units'], string>> = { us: 'ft', metric: 'm' };

export const section = {
  /** Over the figures of a rail. */
  unit,
  inflow: ({ share }: { share: Ratio | null }, show: Show): Note => {
    if (share === null) return { long: 'inflow, share not known', short: '?' };
    const short = show.percent(share);
    return { long: `inflow ${short}`, short };
  },
  probe: ({ depth }: { depth: Metres }, show: Show): Note => {
    return { long: `probe ${show.depth(depth)}`, short: 'probe' };
  },
  drawdown: ({ drawdown }: { drawdown: Metres }, show: Show): Note => {
    const short = show.depth(drawdown);
    return { long: `${short} drawdown`, short };
  },
  toHouse: ({ distance }: { distance: Metres }, show: Show): Note => {
    const short = show.depth(distance);
    return { long: `${short} to the house`, short };
  },
  /** Ends of a band. */
  from: (depth: string): string => `from ${depth}`,
  to: (depth: string): string => `to ${depth}`,
  allowed: ({ from, to }: { from: string; to: string }): string => `Allowed: ${from}; ${to}`,
  nobodyKnows: ({ from, to }: { from: string; to: string }): string => `Nobody knows: ${from}; ${to}`,
  /** Ground that no report tells of. */
  notReported: 'not reported',
  pumpOn: 'pump on',
  pumpOff: 'pump off',
};
