/** The well at a moment, while something in it moves: for the page alone, never for a picture that is kept or printed. */
import type { Metres, Ratio } from '../model/si.ts';
import type { Levels } from '../model/solution.ts';

export interface Moment {
  /** Without it nothing is told of the pump, and the water stands as it is usually drawn. */
  readonly pumping?: boolean;
  /** Depth of the water in the well; without it the pumping level while the pump runs, else the one at rest. */
  readonly water?: Metres;
  /** How far the check valves stand open, 0 to 1; without it as far as they go while the pump runs. */
  readonly valveOpen?: Ratio;
  /** How far the flow marks have come towards the place of the next, 0 to 1; without it there are none. */
  readonly flow?: Ratio;
  /** Share of the frost depth that the winter has reached; without it all of it. */
  readonly frostShare?: Ratio;
  /** Share of the frost depth that has thawed again from the surface down; without it none. */
  readonly thawShare?: Ratio;
}

interface Asked {
  readonly moment?: Moment;
  readonly theme: string;
  readonly paper?: unknown;
  readonly caption?: boolean;
}

/** On paper and in exports there are no moments. */
export function momentOf({ moment, theme, paper, caption }: Asked): Moment | undefined {
  return theme === 'print' || paper !== undefined || caption === true ? undefined : moment;
}

/** Depth of the water in the well; null where no level is known. */
export function surfaceOf(
  { pumping, static: rest }: Pick<Levels, 'pumping' | 'static'>,
  moment?: Moment,
): Metres | null {
  if (moment?.pumping === undefined) return pumping ?? rest;
  return moment.water ?? (moment.pumping ? (pumping ?? rest) : (rest ?? pumping));
}

/** Whether water goes up the pipe: a check valve that points down lets none past. */
export function flows(moment: Moment | undefined, arrow: 'up' | 'down'): boolean {
  return moment?.pumping === true && arrow === 'up';
}

/** How far the check valves stand open. */
export function valveOpenAt(moment: Moment | undefined, arrow: 'up' | 'down'): Ratio {
  if (moment === undefined || arrow === 'down') return 0;
  return moment.valveOpen ?? (moment.pumping === true ? 1 : 0);
}

export type Inflow = 'none' | 'weak' | 'strong';

/** Water comes in as long as it stands lower than at rest: much while the pump draws it down, less as it comes back. */
export function inflowAt({ pumping, static: rest }: Pick<Levels, 'pumping' | 'static'>, moment?: Moment): Inflow {
  if (moment?.pumping === undefined) return 'none';
  if (moment.pumping) return 'strong';
  const surface = surfaceOf({ pumping, static: rest }, moment);
  return rest !== null && surface !== null && surface > rest + AT_REST ? 'weak' : 'none';
}

/** Nearer to the level at rest than this, nothing is seen to flow. */
const AT_REST: Metres = 0.05;
