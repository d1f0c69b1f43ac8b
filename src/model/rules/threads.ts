/** Threads of two systems, which seem to fit and do not. */
import type { Facts } from '../facts.ts';
import { dischargeDepth } from '../string/pumpDepths.ts';
import { suspensionDepth } from '../string/topDepths.ts';
import { systemsDiffer, threadAt, writtenAt, type StringEnd } from '../string/threads.ts';
import { systemSaid } from '../tables/threadSizes.ts';
import { breaks, defineRule, doesNotApply, holds } from './rule.ts';

export const threadsMatch = defineRule({
  number: 'PR-65',
  part: 'nipple',
  restsOn: ['dropPipe.material', 'dropPipe.standard', 'dropPipe.size'],
  judge({ facts }) {
    // Fittings for pipe in mm come in either system: they are bought to suit.
    const said = (['adapter', 'pump'] as const).filter(
      (end) => systemOf(end, facts) !== null && threadAt(end, facts).pipe.system !== null,
    );
    if (said.length === 0) return doesNotApply;
    const [worst, ...others] = said.filter((end) => {
      const { system, pipe } = threadAt(end, facts);
      return systemsDiffer(system, pipe.system);
    });
    if (worst !== undefined) {
      const { size, system, pipe } = threadAt(worst, facts);
      const numbers = { ends: [worst, ...others], size, system, pipe: pipe.system };
      return breaks('twoSystems', 'warning', numbers, placeOf(worst, facts));
    }
    return holds('oneSystem', { ends: said });
  },
});

function systemOf(end: StringEnd, facts: Facts) {
  const written = writtenAt(end, facts);
  return written === null ? null : systemSaid(written);
}

function placeOf(end: StringEnd, facts: Facts) {
  return end === 'pump'
    ? { depth: dischargeDepth(facts.pump), part: 'nipple', partKind: 'nipple' as const }
    : { depth: suspensionDepth(facts), part: 'pitlessAdapter', partKind: 'pitlessAdapter' as const };
}
