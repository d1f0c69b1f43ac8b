/** A pipe of a plan with the dimensions of its standard. */
import type { PipeFacts } from '../../facts.ts';
import { findPipe } from '../../tables/pipes.ts';
import { DEFAULTS } from '../defaults.ts';
import type { Plan } from '../schema.ts';
import type { Take } from '../take.ts';

type PipePlan = NonNullable<Plan['house']['line']>;

/** Throws for a pipe that no table has: readPlan refuses such a plan. */
export function pipeFacts(path: string, pipe: PipePlan, take: Take): PipeFacts {
  const { material, size, standard, ratio } = pipe;
  const rating = take.maybe(pipe.rating, 'pressure');
  const found = findPipe({ material, size, standard, ratio, rating, resin: pipe.resin });
  if (!found) throw new RangeError(`readFacts: ${path} is no pipe of the tables; read the plan with readPlan first`);
  if (standard === undefined) take.assumed.push({ path: `${path}.standard`, value: found.standard });
  if (material === 'PE' && pipe.resin === undefined)
    take.assumed.push({ path: `${path}.resin`, value: DEFAULTS.resin });
  if (ratio === undefined && found.wallClass !== null)
    take.assumed.push({ path: `${path}.ratio`, value: found.wallClass });
  if (found.wallClass === null && found.rating === null) take.unknown.push(`${path}.rating`);
  return found;
}
