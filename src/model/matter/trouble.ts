/** From what somebody notices to what is looked at, in which order, and what this plan says of each. */
import { assumedPaths } from '../rules/assumed.ts';
import { isFlowing } from '../rules/highestStatic.ts';
import type { Solution } from '../solution.ts';
import type { Asked, Cause, CauseId, Judge, Likelihood, Looked, Trouble, WellCaution } from './cause.ts';
import { CAUTIONS } from './cautions.ts';
import { fieldsLacking, foundOf, holdsBySaid, isUnsaid } from './evidence.ts';
import { frostCauses } from './frostCauses.ts';
import { houseCauses } from './houseCauses.ts';
import { ALWAYS_FIRST, CAUSES_OF } from './orderOfLooking.ts';
import { powerCauses } from './powerCauses.ts';
import type { SymptomId } from './symptom.ts';
import { waterCauses } from './waterCauses.ts';
import { wayCauses } from './wayCauses.ts';

const JUDGES: Readonly<Record<CauseId, Judge>> = {
  ...powerCauses,
  ...waterCauses,
  ...wayCauses,
  ...houseCauses,
  ...frostCauses,
};

/**
 * @param units  the reader's
 *
 * Within what is looked at always, what is likely, what the plan leaves open and what it speaks against, the order is that
 * of the trade.
 */
export function troubleOf(
  solution: Solution,
  symptom: SymptomId,
  units: Asked['units'] = solution.facts.units,
): Trouble {
  const asked = { solution, symptom, units };
  const causes = CAUSES_OF[symptom].flatMap((id) => {
    const looked = JUDGES[id](asked);
    const cause = looked === null ? null : causeOf(id, looked, solution);
    return cause === null ? [] : [cause];
  });
  const rank = ({ id, likelihood }: Cause): number => (ALWAYS_FIRST[symptom] === id ? -1 : RANK[likelihood]);
  return {
    symptom,
    wellCautions: wellCautions(solution),
    causes: causes.toSorted((one, other) => rank(one) - rank(other)),
  };
}

const RANK: Readonly<Record<Likelihood, number>> = { likely: 0, open: 1, unlikely: 2 };

function wellCautions(solution: Solution): readonly WellCaution[] {
  return [
    ...(isFlowing(solution) ? (['flowing'] as const) : []),
    ...(solution.facts.well.inPit === true ? (['inPit'] as const) : []),
  ];
}

/** Null where the well has nothing drawn there. */
function causeOf(id: CauseId, looked: Looked, solution: Solution): Cause | null {
  const { at, says = [], likelyBy = [], unlikelyBy = [], decidedBy = [], rests = [] } = looked;
  const kind = at.find((each) => solution.parts.some((part) => part.kind === each));
  if (kind === undefined) return null;
  const found = foundOf(solution, likelyBy);
  const assumed = assumedPaths(solution);
  // Where nothing is told nothing rests on anything.
  const rested = says.length + found.length === 0 ? [] : rests.filter((path) => assumed.has(path));
  const likely = looked.shown === true || found.length > 0;
  const holds = likely ? [] : holdsBySaid(solution, unlikelyBy);
  // Of several rules that speak against it each has to; one that was not judged speaks for nothing.
  const against = holds.length === unlikelyBy.length ? holds : [];
  const unlikely = !likely && (looked.ruledOut === true || against.length > 0);
  const lacks = [...decidedBy.filter((path) => isUnsaid(solution, path)), ...fieldsLacking(solution, likelyBy)];
  const deciding = [...new Set(unlikely ? [] : lacks)];
  return {
    id,
    likelihood: likely ? 'likely' : unlikely ? 'unlikely' : 'open',
    kind,
    parts: solution.parts.filter((part) => part.kind === kind).map(({ key }) => key),
    says,
    found,
    against,
    deciding,
    assumed: [...new Set(rested)].filter((path) => !deciding.includes(path)),
    cautions: CAUTIONS[id],
  };
}
