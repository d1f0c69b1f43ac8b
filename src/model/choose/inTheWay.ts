/** What keeps every pump from doing the job, where it is one thing: with that alone changed, some do. */
import type { Facts } from '../facts.ts';
import { changed } from '../fixes/fixesOf.ts';
import { provenYield } from '../figures/provenYield.ts';
import type { ToldFinding } from '../place/told.ts';
import type { Plan } from '../plan/schema.ts';
import { mayMove } from '../rules/fix.ts';
import { meets } from '../rules/grace.ts';
import { floorTo } from '../rules/rounding.ts';
import { isThreaded } from '../rules/pipeRating.ts';
import type { Sentence } from '../rules/rule.ts';
import type { CubicMetresPerSecond } from '../si.ts';
import { findPipe } from '../tables/pipes.ts';
import type { Change, Solution } from '../solution.ts';
import { gpm, writeQuantity } from '../units.ts';
import { isPassing } from './byRules.ts';
import { WANTED_SHARE, type Does, type PumpFigures } from './fit.ts';
import type { WhyRow } from './pumpRow.ts';

/** `does` is how many pumps do the job without it; 0 where those that might depend on what nobody said. */
export type InTheWay =
  | Sentence<'flowLimiter', { limit: CubicMetresPerSecond; does: number }>
  /** The same of one that is not there, and would keep the pumps to what the well gives. */
  | Sentence<'noFlowLimiter', { limit: CubicMetresPerSecond; does: number }>
  | Sentence<'threadedPipe', { does: number }>
  /** All that would do otherwise do not get down. */
  | Sentence<'doesNotPass', { finding: ToldFinding }>
  /** Nobody said it; at which it would do [Hz]. */
  | Sentence<'frequency', { at: readonly number[] }>;

interface Tried {
  readonly key: string;
  readonly does: Does;
  readonly why: WhyRow;
  readonly figures: Pick<PumpFigures, 'share'>;
  readonly solution: Solution;
}

/** Without what stands in the way some may do, or nothing stands in it. */
const isAble = ({ does }: Tried) => does === 'yes' || does === 'depends';

/**
 * @param plan  as typed
 * @param rows  of it, in order
 * @param trying  the rows of another plan; of some pumps only, by their keys
 */
export function inTheWay(
  plan: Plan,
  rows: readonly Tried[],
  trying: (plan: Plan, only?: ReadonlySet<string>) => readonly Tried[],
): InTheWay[] {
  const [best] = rows;
  const facts = best?.solution.facts;
  if (best === undefined || facts === undefined) return [];
  const { why } = best;
  if (why.variant === 'finding' && isPassing(why.numbers.finding.rule))
    return [{ variant: 'doesNotPass', numbers: { finding: why.numbers.finding } }];
  if (rows.some(isAble)) return [];
  // Where some work as it is, only what lets one do with all that is asked is worth a word.
  const some = rows.some(({ does }) => does === 'works');
  const without = (changes: readonly Change[], only?: ReadonlySet<string>): number | null => {
    const able = trying(changed(plan, changes), only).filter(
      ({ does }) => does !== 'no' && !(some && does === 'works'),
    );
    return able.length === 0 ? null : able.filter(({ does }) => does === 'yes').length;
  };
  const found: InTheWay[] = [];
  const { flowLimiter } = facts.pump;
  if (typeof flowLimiter === 'number') {
    const does = without([{ path: 'pump.flowLimiter', to: undefined }]);
    if (does !== null) found.push({ variant: 'flowLimiter', numbers: { limit: flowLimiter, does } });
  }
  const limit = limitFor(facts);
  const tooMuch = new Set(rows.filter(givesTooMuch).map(({ key }) => key));
  if (limit !== null && tooMuch.size > 0) {
    const does = without([{ path: 'pump.flowLimiter', to: writeFlow(limit, facts) }], tooMuch);
    if (does !== null && does > 0) found.push({ variant: 'noFlowLimiter', numbers: { limit, does } });
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

/** What a valve may help: no pump that is too weak, but one that draws its water too low by what it gives. */
function givesTooMuch({ why, figures }: Tried): boolean {
  if (why.variant === 'lacksPressure') return meets((figures.share ?? 0) - WANTED_SHARE, 'ratio');
  return TOO_MUCH.has(why.variant) || (why.variant === 'finding' && why.numbers.finding.rule === 'PR-07');
}
const TOO_MUCH: ReadonlySet<string> = new Set(['takesTooMuch', 'outpumps', 'overRange']);

/** Half a gallon a minute, or a litre. */
const stepOf = ({ units }: Facts) => (units === 'us' ? gpm(0.5) : 0.001 / 60);

/** As much as the well gives, where that is what is asked of a pump; null where a valve is there, or none is of use. */
function limitFor(facts: Facts): CubicMetresPerSecond | null {
  const { demand } = facts.house;
  const gives = provenYield(facts);
  if (gives === null || demand === null || facts.house.control === 'variable speed') return null;
  if (facts.pump.flowLimiter !== null && facts.pump.flowLimiter !== false) return null;
  const step = stepOf(facts);
  const limit = floorTo(gives, step, step * 1e-6);
  return mayMove(facts, 'pump.flowLimiter') && meets(limit - WANTED_SHARE * demand, 'flow') ? limit : null;
}

function writeFlow(flow: CubicMetresPerSecond, facts: Facts): string {
  return writeQuantity(flow, 'flow', facts.units === 'us' ? 'gpm' : 'L/min', stepOf(facts));
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
