/** What keeps every pump from doing the job, where it is one thing of the plan: with that alone changed, some do. */
import type { Facts } from '../facts.ts';
import { changed } from '../fixes/fixesOf.ts';
import type { Plan } from '../plan/schema.ts';
import { isThreaded } from '../rules/pipeRating.ts';
import type { Sentence } from '../rules/rule.ts';
import type { CubicMetresPerSecond } from '../si.ts';
import { findPipe } from '../tables/pipes.ts';
import type { Change, Solution } from '../solution.ts';
import type { Does } from './fit.ts';

/** `does` is how many pumps do the job without it; 0 where those that might depend on what nobody said. */
export type InTheWay =
  | Sentence<'flowLimiter', { limit: CubicMetresPerSecond; does: number }>
  | Sentence<'threadedPipe', { does: number }>
  /** Nobody said it; at which it would do [Hz]. */
  | Sentence<'frequency', { at: readonly number[] }>;

interface Tried {
  readonly does: Does;
  readonly solution: Solution;
}

/**
 * @param plan  for which no row does
 * @param rows  of it
 * @param trying  the rows of another plan
 */
export function inTheWay(plan: Plan, rows: readonly Tried[], trying: (plan: Plan) => readonly Tried[]): InTheWay[] {
  const facts = rows[0]?.solution.facts;
  if (facts === undefined) return [];
  // Where some work as it is, only what lets one do with all that is asked is worth a word.
  const some = rows.some(({ does }) => does === 'works');
  const without = (changes: readonly Change[]): number | null => {
    const able = trying(changed(plan, changes)).filter(({ does }) => does !== 'no' && !(some && does === 'works'));
    return able.length === 0 ? null : able.filter(({ does }) => does === 'yes').length;
  };
  const found: InTheWay[] = [];
  const { flowLimiter } = facts.pump;
  if (typeof flowLimiter === 'number') {
    const does = without([{ path: 'pump.flowLimiter', to: undefined }]);
    if (does !== null) found.push({ variant: 'flowLimiter', numbers: { limit: flowLimiter, does } });
  }
  if (facts.dropPipe.material === 'PVC' && isThreaded(facts.dropPipe, 'dropPipe')) {
    const does = without(inSteel(facts.dropPipe));
    if (does !== null) found.push({ variant: 'threadedPipe', numbers: { does } });
  }
  if (rows.some(({ solution }) => solution.facts.pump.frequency === null)) {
    const at = [50, 60].filter((hertz) => without([{ path: 'pump.frequency', to: `${hertz} Hz` }]) !== null);
    if (at.length > 0) found.push({ variant: 'frequency', numbers: { at } });
  }
  return found;
}

const STEEL = 'galvanized steel';
/** Sizes in which drop pipe of steel is made. */
const STEEL_SIZES = ['1 in', '1-1/4 in', '1-1/2 in', '2 in', '2-1/2 in', '3 in', '4 in'] as const;

/** What holds of PVC is not said of steel; of a size in millimetres the steel pipe nearest to its outside is meant. */
function inSteel({ nominalSize, outsideDiameter }: Facts['dropPipe']): Change[] {
  const off = (size: string) =>
    Math.abs((findPipe({ material: STEEL, size })?.outsideDiameter ?? Infinity) - outsideDiameter);
  const [nearest] = STEEL_SIZES.toSorted((one, other) => off(one) - off(other));
  const isMade = findPipe({ material: STEEL, size: nominalSize }) !== null;
  return [
    { path: 'dropPipe.material', to: STEEL },
    ...(isMade ? [] : [{ path: 'dropPipe.size', to: nearest }]),
    { path: 'dropPipe.standard', to: undefined },
    { path: 'dropPipe.ratio', to: undefined },
    { path: 'dropPipe.rating', to: undefined },
  ];
}
