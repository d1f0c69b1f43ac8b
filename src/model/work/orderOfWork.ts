/** The whole work in the order in which it is done, each step with the pieces that it puts on. */
import { isFlowing } from '../rules/highestStatic.ts';
import type { Solved } from '../solution.ts';
import { graphOf } from '../string/graph/graph.ts';
import { atPumpSteps } from './atPump.ts';
import { trenchSteps } from './atTop.ts';
import { hangingSteps } from './atWellTop.ts';
import { beforeSteps, pullingSteps } from './before.ts';
import { houseSteps } from './inHouse.ts';
import { loweringSteps } from './lowering.ts';
import { inPhase, withKeys, type Job } from './making.ts';
import { pieceSets } from './pieceSets.ts';
import { afterSteps, startSteps } from './startUp.ts';
import type { Kind, Work } from './step.ts';
import { wayUp } from './wayUp.ts';

/**
 * @param kind  by default as the plan says: a pump that it tells as installed is drawn and another hung in its place
 *
 * Sources  the order: common practice, no source, but for what each step's words name
 */
export function orderOfWork(solved: Solved, kind: Kind = kindOf(solved)): Work {
  if (isFlowing(solved)) return { kind: 'stop', why: 'flowing' };
  if (solved.facts.well.inPit === true) return { kind: 'stop', why: 'inPit' };
  const job: Job = { solved, pieces: pieceSets(graphOf(solved)) };
  const way = wayUp(job);
  const steps = withKeys(
    [
      ...inPhase('before', beforeSteps(job, kind)),
      ...(kind === 'replace' ? inPhase('pulling', pullingSteps(job)) : inPhase('top', trenchSteps(job))),
      ...inPhase('pump', atPumpSteps(job, way)),
      ...inPhase('lowering', loweringSteps(job, way)),
      ...inPhase('hanging', hangingSteps(job, way, kind)),
      ...(kind === 'replace' ? [] : inPhase('house', houseSteps(job))),
      ...inPhase('start', startSteps(job, kind)),
      ...inPhase('after', afterSteps(job)),
    ],
    solved,
  );
  const put = new Set(steps.flatMap(({ puts }) => puts));
  const there = job.pieces.graph.pieces.map(({ key }) => key).filter((key) => !put.has(key));
  return { kind, steps, there };
}

function kindOf({ facts }: Pick<Solved, 'facts'>): Kind {
  const said = facts.status['pump.setting'] ?? facts.status['pump'];
  return said === 'installed' ? 'replace' : 'new';
}
