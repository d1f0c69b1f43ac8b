/** What keeps every pump from doing the job, where it is one thing: with that alone changed, some do. */
import type { Facts, PipeMaterial } from '../facts.ts';
import { changed } from '../fixes/fixesOf.ts';
import { provenYield } from '../figures/provenYield.ts';
import { wantedOfPump } from '../figures/wantedOfPump.ts';
import { pumpPlaces } from '../place/pumpPlaces.ts';
import type { ToldFinding, WhyLeft } from '../place/told.ts';
import type { Plan } from '../plan/schema.ts';
import { mayMove } from '../rules/fix.ts';
import { meets } from '../rules/grace.ts';
import { findingsBy } from '../rules/index.ts';
import { floorTo } from '../rules/rounding.ts';
import type { Sentence } from '../rules/rule.ts';
import type { CubicMetresPerSecond, Pascals } from '../si.ts';
import { findPipe } from '../tables/pipes.ts';
import type { Change, Solution } from '../solution.ts';
import { gpm, psi, writeQuantity } from '../units.ts';
import { isPassing } from './byRules.ts';
import { WANTED_SHARE, type Does, type PumpFigures } from './fit.ts';
import type { PumpName } from './candidates.ts';
import type { WhyRow } from './pumpRow.ts';
import { isThreaded } from '../rules/pipeRating.ts';
import { isPlastic } from '../tables/pipeMaterials.ts';

/** `able` are the pumps that do the job without it, in order; none where those that might depend on what nobody said. */
export type InTheWay =
  | Sentence<'flowLimiter', { limit: CubicMetresPerSecond; able: readonly PumpName[] }>
  /** The same of one that is not there, and would keep the pumps to what the well gives. */
  | Sentence<'noFlowLimiter', { limit: CubicMetresPerSecond; able: readonly PumpName[] }>
  /** What the drop pipe is made of does not bear them; galvanized steel would. */
  | Sentence<'weakPipe', { material: PipeMaterial; threaded: boolean; able: readonly PumpName[] }>
  /** What hangs is PE that does not bear them; the strongest usual one would. */
  | Sentence<'newPipe', { rating: Pascals; able: readonly PumpName[] }>
  /** A house that wants so much at the most is served. */
  | Sentence<'demand', { most: CubicMetresPerSecond; able: readonly PumpName[] }>
  /** No depth leaves even the smallest water over its intake and room under its motor. */
  | Sentence<'noDepth', { why: WhyLeft }>
  /** All that would do otherwise do not get down. */
  | Sentence<'doesNotPass', { finding: ToldFinding }>
  /** Nobody said it; at which it would do [Hz]. */
  | Sentence<'frequency', { at: readonly number[] }>;

interface Tried {
  readonly key: string;
  readonly name: PumpName;
  readonly does: Does;
  readonly rated: CubicMetresPerSecond;
  readonly why: WhyRow;
  readonly figures: Pick<PumpFigures, 'share'>;
  readonly solution: Solution;
}

/** Those that do for sure with some changes; null where none may. */
type Without = (changes: readonly Change[], only?: ReadonlySet<string>) => readonly PumpName[] | null;

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
  const noDepth = noDepthFor(rows);
  if (noDepth !== null) return [{ variant: 'noDepth', numbers: { why: noDepth } }];
  // Where some work as it is, only what lets one do with all that is asked is worth a word.
  const some = rows.some(({ does }) => does === 'works');
  const without: Without = (changes, only) => {
    const able = trying(changed(plan, changes), only).filter(
      ({ does }) => does !== 'no' && !(some && does === 'works'),
    );
    return able.length === 0 ? null : able.filter(({ does }) => does === 'yes').map(({ name }) => name);
  };
  const found: InTheWay[] = [];
  const { flowLimiter } = facts.pump;
  if (typeof flowLimiter === 'number') {
    const able = without([{ path: 'pump.flowLimiter', to: undefined }]);
    if (able !== null) found.push({ variant: 'flowLimiter', numbers: { limit: flowLimiter, able } });
  }
  const limit = limitFor(best.solution);
  const tooMuch = new Set(rows.filter(givesTooMuch).map(({ key }) => key));
  if (limit !== null && tooMuch.size > 0) {
    const able = without([{ path: 'pump.flowLimiter', to: writeFlow(limit, facts) }], tooMuch);
    if (able !== null && able.length > 0) found.push({ variant: 'noFlowLimiter', numbers: { limit, able } });
  }
  const { material } = facts.dropPipe;
  const burst = new Set(rows.filter(isTooStrong).map(({ key }) => key));
  if (isPlastic(facts.dropPipe) && burst.size > 0) {
    const newPipe = material === 'PE' && !mayMove(facts, 'dropPipe.rating') ? inNewPe(facts, burst, without) : null;
    if (newPipe !== null) found.push({ variant: 'newPipe', numbers: newPipe });
    const able = newPipe === null ? without(inSteel(facts.dropPipe), burst) : null;
    if (able !== null)
      found.push({
        variant: 'weakPipe',
        numbers: { material, threaded: isThreaded(facts.dropPipe, 'dropPipe'), able },
      });
  }
  if (rows.some(({ solution }) => solution.facts.pump.frequency === null)) {
    const at = [50, 60].filter((hertz) => without([{ path: 'pump.frequency', to: `${hertz} Hz` }]) !== null);
    if (at.length > 0) found.push({ variant: 'frequency', numbers: { at } });
  }
  for (const { most, by } of found.length === 0 ? servedBy(rows, best.solution) : []) {
    const able = without([{ path: 'house.demand', to: writeFlow(most, facts) }], by);
    if (able === null) continue;
    found.push({ variant: 'demand', numbers: { most, able } });
    break;
  }
  return found;
}

/** Of the pump that draws the water down the least; null where one works as it is, or that one has a place. */
function noDepthFor(rows: readonly Tried[]): WhyLeft | null {
  if (rows.some(({ does }) => does === 'works')) return null;
  const [smallest] = rows.toSorted((one, other) => one.rated - other.rated);
  if (smallest === undefined || !mayMove(smallest.solution.facts, 'pump.setting')) return null;
  const places = pumpPlaces(smallest.solution, false);
  return places.kind === 'left' && places.why.variant === 'noRoomForPump' ? places.why : null;
}

/** What is too strong for its pipe, whatever else is said of it. */
const isTooStrong = ({ solution }: Tried): boolean =>
  findingsBy(OF_PIPE, solution).some(({ severity }) => severity !== 'note');
const OF_PIPE: ReadonlySet<string> = new Set(['PR-18', 'PR-48']);

/** A house that gets less than this of what it wants is not served. Common practice, no source. */
const LEAST_OF_DEMAND = 0.5;

/** Of the flows that pumps give which lack nothing else, no more than these are tried. */
const MOST_TRIED = 4;

/** What a house may want of pumps that lack nothing but flow, the most first, and which of them give so much. */
function servedBy(rows: readonly Tried[], solution: Solution) {
  const { facts } = solution;
  const { demand } = facts.house;
  if (demand === null || !mayMove(facts, 'house.demand')) return [];
  // What fills a tank is not asked at the house's busiest.
  if (wantedOfPump(solution)?.fillsTank === true) return [];
  const little = rows.flatMap(({ key, why }) =>
    why.variant === 'givesLittle' ? [{ key, flow: why.numbers.flow }] : [],
  );
  const step = stepOf(facts);
  const served = new Set(little.map(({ flow }) => floorTo(flow / WANTED_SHARE, step, step * 1e-6)));
  return [...served]
    .filter((most) => meets(most - LEAST_OF_DEMAND * demand, 'flow'))
    .toSorted((one, other) => other - one)
    .slice(0, MOST_TRIED)
    .map((most) => ({
      most,
      by: new Set(little.filter(({ flow }) => meets(flow - WANTED_SHARE * most, 'flow')).map(({ key }) => key)),
    }));
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
function limitFor(solution: Solution): CubicMetresPerSecond | null {
  const { facts } = solution;
  const wanted = wantedOfPump(solution)?.flow ?? null;
  const gives = provenYield(facts);
  if (gives === null || wanted === null || facts.house.control === 'variable speed') return null;
  if (facts.pump.flowLimiter !== null && facts.pump.flowLimiter !== false) return null;
  const step = stepOf(facts);
  const limit = floorTo(gives, step, step * 1e-6);
  return mayMove(facts, 'pump.flowLimiter') && meets(limit - WANTED_SHARE * wanted, 'flow') ? limit : null;
}

function writeFlow(flow: CubicMetresPerSecond, facts: Facts): string {
  return writeQuantity(flow, 'flow', facts.units === 'us' ? 'gpm' : 'L/min', stepOf(facts));
}

/** Of PE that every dealer has, the weakest first. Common practice, no source. */
const usualRatings = ({ units }: Facts): readonly Pascals[] =>
  units === 'us' ? [psi(160), psi(200), psi(250)] : [10e5, 12.5e5, 16e5];

/** The weakest usual class in which some do for sure, else the weakest in which some may; null where in none. */
function inNewPe(facts: Facts, burst: ReadonlySet<string>, without: Without) {
  const hangs = facts.dropPipe.rating ?? 0;
  let may: { readonly rating: Pascals; readonly able: readonly PumpName[] } | null = null;
  for (const rating of usualRatings(facts).filter((each) => each > hangs)) {
    const able = without(inStrongPe(rating, facts), burst);
    if (able === null) continue;
    if (able.length > 0) return { rating, able };
    may ??= { rating, able };
  }
  return may;
}

function inStrongPe(rating: Pascals, { units }: Facts): Change[] {
  const to =
    units === 'us' ? writeQuantity(rating, 'pressure', 'psi', psi(1)) : writeQuantity(rating, 'pressure', 'bar', 1e4);
  return [
    { path: 'dropPipe.rating', to },
    { path: 'dropPipe.ratio', to: undefined },
  ];
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
