/** A pipe of a plan with the dimensions of its standard. */
import type { PipeFacts } from '../../facts.ts';
import { millimetreNumber } from '../../tables/nominalSize.ts';
import { findPipe } from '../../tables/pipes.ts';
import { DEFAULTS } from '../defaults.ts';
import type { Defaults } from '../defaults.ts';
import { usualPipeSize } from '../usualPipeSize.ts';
import type { Plan } from '../schema.ts';
import type { Take } from '../take.ts';

type PipePlan = NonNullable<NonNullable<Plan['house']>['line']>;
type DropPipePlan = NonNullable<Plan['dropPipe']>;

/** The line to the house lies there already: a pipe of which nobody said more than the size has an unknown wall. */
export function lineFacts(line: PipePlan, take: Take): PipeFacts {
  return pipeFacts('house.line', line, take);
}

/**
 * The drop pipe is a choice of the build: without a material it is taken to be PE of a usual size and rating. One that
 * was named keeps the wall open that nobody said.
 */
export function dropPipeFacts(typed: DropPipePlan, usual: Defaults, take: Take): PipeFacts {
  const { material, rating, ratio, standard } = typed;
  const unnamed = material === undefined && rating === undefined && ratio === undefined && standard === undefined;
  const size = typed.size ?? usualPipeSize(typed, usual);
  // The rating follows the size's family, in whatever units the plan is.
  const usualRating = isInInches(size) ? usual.pipeRating : DEFAULTS.metricPipeRating;
  if (unnamed) take.assume('dropPipe.rating', usualRating);
  const pipe = {
    ...typed,
    material: take.option('dropPipe.material', material, DEFAULTS.pipeMaterial),
    size: take.option('dropPipe.size', typed.size, size),
    ...(unnamed && { rating: usualRating }),
  };
  return pipeFacts('dropPipe', pipe, take);
}

function isInInches(size: string): boolean {
  return millimetreNumber(size) === null;
}

/** Throws for a pipe that no table has: readPlan refuses such a plan. */
function pipeFacts(path: string, pipe: PipePlan, take: Take): PipeFacts {
  const { material, size, standard, ratio } = pipe;
  const rating = take.maybe(pipe.rating, 'pressure');
  const found = findPipe({ material, size, standard, ratio, rating, resin: pipe.resin });
  if (!found) throw new RangeError(`readFacts: ${path} is no pipe of the tables; read the plan with readPlan first`);
  if (standard === undefined) take.assume(`${path}.standard`, found.standard);
  if (material === 'PE' && pipe.resin === undefined) take.assume(`${path}.resin`, found.resin ?? DEFAULTS.resin);
  if (ratio === undefined && found.wallClass !== null) take.assume(`${path}.ratio`, found.wallClass);
  if (!found.wallKnown) take.unknown.push(found.rating === null ? `${path}.rating` : `${path}.ratio`);
  return found;
}
