import type { Solution } from '../model/solution.ts';

/**
 * The test foretells a level below the intake, which the water never takes: it falls to the intake and the pump draws air.
 * Where the water stands below it at rest already, that is told instead.
 */
export function fallsToIntake({ levels, facts }: Pick<Solution, 'levels' | 'facts'>): boolean {
  const { setting } = facts.pump;
  return levels.static !== null && levels.static < setting && levels.pumping !== null && levels.pumping > setting;
}
