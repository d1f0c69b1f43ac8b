/** Which pipe to take instead: stronger, or wider and no weaker. */
import { velocityIn } from '../formulas/friction.ts';
import type { Facts, PipeFacts } from '../facts.ts';
import type { Plan } from '../plan/schema.ts';
import { valueAt } from '../plan/editPlan.ts';
import type { CubicMetresPerSecond, Pascals } from '../si.ts';
import type { Change, Solved } from '../solution.ts';
import { inchNumber, readNominalSize, writeDnName } from '../tables/nominalSize.ts';
import { classesOfSize, findPipe, isMetricPipe, pipeSizes } from '../tables/pipes.ts';
import { PIPE_MATERIALS } from '../tables/pipeMaterials.ts';
import { bars, psi, writeQuantity } from '../units.ts';
import { change, unitAt } from './fix.ts';
import { meets } from './grace.ts';
import type { Fix } from './rule.ts';
import { dropPipeNeed, lineNeed, MOST_VELOCITY } from './pipeNeeds.ts';
import { bornePressure, isPlastic, isThreaded, isTooThinForThreads } from './pipeRating.ts';

export type PipePlace = 'dropPipe' | 'house.line';

/** Usual ratings of PE pipe, the weakest first. */
export const USUAL_RATINGS: readonly Pascals[] = [160, 200, 250].map(psi);
/** The PN of metric PE pipe, the weakest first. */
const METRIC_RATINGS: readonly Pascals[] = [10, 12.5, 16, 20, 25].map(bars);

interface OtherPipe {
  readonly pipe: PipeFacts;
  /** What of the plan makes it so, besides the size. */
  readonly changes: readonly Change[];
}

function pipeAt({ facts }: Solved, place: PipePlace): PipeFacts | null {
  return place === 'dropPipe' ? facts.dropPipe : facts.house.line;
}

/** The pipe of a place in another size, and that size in stronger classes; the class it has comes first, then the weakest. */
function inSize(solved: Solved, place: PipePlace, size: string): OtherPipe[] {
  const pipe = pipeAt(solved, place);
  if (pipe === null) return [];
  const { material, standard, resin } = pipe;
  const typedRatio = valueAt(solved.plan, `${place}.ratio`);
  const ratio = typeof typedRatio === 'string' || typeof typedRatio === 'number' ? typedRatio : null;
  const ratingTyped = valueAt(solved.plan, `${place}.rating`) !== undefined;
  const query = { material, standard, size, resin } as const;
  const found: OtherPipe[] = [];
  // What is sold by its wall has another rating in another size, so that one is not taken along.
  const byPressure = PIPE_MATERIALS[material].soldBy === 'pressure';
  const rating = byPressure && (ratio === null || ratingTyped) ? pipe.rating : null;
  const same = isPlastic(pipe) && !byPressure && ratingTyped ? null : findPipe({ ...query, ratio, rating });
  if (same !== null) found.push({ pipe: same, changes: [] });
  if (!isPlastic(pipe)) return found;
  if (byPressure && (ratio === null || ratingTyped)) {
    for (const usual of isMetricPipe(pipe) ? METRIC_RATINGS : USUAL_RATINGS) {
      const asked = written(solved, place, usual);
      const made = findPipe({ ...query, rating: asked.rating });
      if (made === null || made.wallClass === null) continue;
      const ratios = ratio === null ? [] : [{ path: `${place}.ratio`, to: made.wallClass }];
      found.push({ pipe: made, changes: [{ path: `${place}.rating`, to: asked.text }, ...ratios] });
    }
    return found;
  }
  for (const wallClass of classesOfSize(standard, size)) {
    const made = findPipe({ ...query, ratio: wallClass });
    if (made === null || made.rating === null) continue;
    const ratings = ratingTyped ? [{ path: `${place}.rating`, to: written(solved, place, made.rating).text }] : [];
    found.push({ pipe: made, changes: [{ path: `${place}.ratio`, to: wallClass }, ...ratings] });
  }
  return found;
}

/** A rating as one would type it in that field: a whole number of psi, tenths of a bar. */
function written({ facts, plan }: Pick<Solved, 'facts' | 'plan'>, place: PipePlace, rating: Pascals) {
  const unit = unitAt(plan, `${place}.rating`, facts.units === 'us' ? 'psi' : 'bar', 'pressure');
  const step = unit === 'psi' ? psi(1) : 10_000;
  return { text: writeQuantity(rating, 'pressure', unit, step), rating: Math.round(rating / step) * step };
}

export function ratingText(plan: Plan, facts: Facts, rating: Pascals): string {
  return written({ plan, facts }, 'dropPipe', rating).text;
}

function bears(place: PipePlace, { facts }: Solved, { pipe }: OtherPipe, least: Pascals): boolean {
  if (isThreaded(pipe, place) && isTooThinForThreads(pipe)) return false;
  const borne = bornePressure(pipe, place, facts);
  return borne !== null && meets(borne - least, 'pressure');
}

/** The weakest usual pipe of the same size that bears so much in this water; null where there is none. */
export function strongerPipe(solved: Solved, place: PipePlace, least: Pascals, also: readonly Change[]) {
  const now = pipeAt(solved, place);
  const stronger =
    now === null
      ? undefined
      : inSize(solved, place, now.nominalSize).find(
          (other) => other.changes.length > 0 && bears(place, solved, other, least),
        );
  if (stronger === undefined) return null;
  const { pipe, changes } = stronger;
  const all = [...changes, ...also];
  return PIPE_MATERIALS[pipe.material].soldBy === 'pressure' && pipe.rating !== null
    ? change(solved.facts, all, 'strongerPipe', { rating: pipe.rating })
    : change(solved.facts, all, 'strongerSchedule', { wallClass: pipe.wallClass ?? '' });
}

/** The change, where there is one, and the words for those who cannot make it. */
export function orWords<Made extends Fix, Words extends Fix>(made: Made | null, otherwise: Words): (Made | Words)[] {
  return made === null ? [otherwise] : [made, otherwise];
}

/**
 * The next sizes up that carry the flow, for every pipe that is too small; named by the one at `place`. Each bears what
 * its place asks for, or at least what the narrow one bore. Null where there are none.
 */
export function widerPipes(solved: Solved, flow: CubicMetresPerSecond, place: PipePlace) {
  const changes: Change[] = [];
  let own: { readonly size: string; readonly pipe: PipeFacts; readonly stronger: boolean } | null = null;
  for (const each of ['dropPipe', 'house.line'] as const) {
    const pipe = pipeAt(solved, each);
    if (pipe === null || meets(MOST_VELOCITY - velocityIn(flow, pipe.insideDiameter), 'velocity')) continue;
    const wider = widerPipe(solved, each, pipe, flow);
    if (wider === null) return null;
    changes.push({ path: `${each}.size`, to: wider.size }, ...wider.changes);
    if (each === place) own = { size: wider.size, pipe: wider.pipe, stronger: wider.changes.length > 0 };
  }
  if (own === null) return null;
  const { size, pipe, stronger } = own;
  if (!stronger) return change(solved.facts, changes, 'widerPipe', { size });
  return PIPE_MATERIALS[pipe.material].soldBy === 'pressure' && pipe.rating !== null
    ? change(solved.facts, changes, 'widerPipeRated', { size, rating: pipe.rating })
    : change(solved.facts, changes, 'widerPipeOfClass', { size, wallClass: pipe.wallClass ?? '' });
}

/** What makes the drop pipe alone wide enough for a flow; nothing where it is, or no usual size would do. */
export function widerDropPipe(solved: Solved, flow: CubicMetresPerSecond): readonly Change[] {
  const pipe = solved.facts.dropPipe;
  if (meets(MOST_VELOCITY - velocityIn(flow, pipe.insideDiameter), 'velocity')) return [];
  const wider = widerPipe(solved, 'dropPipe', pipe, flow);
  return wider === null ? [] : [{ path: 'dropPipe.size', to: wider.size }, ...wider.changes];
}

/** The sizes that the standard of a pipe has, named as the plan names its own. */
function sizesLike({ plan }: Solved, place: PipePlace, { standard }: PipeFacts): readonly string[] {
  const typed = valueAt(plan, `${place}.size`);
  const inDn = typeof typed === 'string' && readNominalSize(typed)?.system === 'DN';
  const sizes = pipeSizes(standard);
  return inDn ? sizes.map((size) => writeDnName(inchNumber(size, true) ?? 0)) : sizes;
}

function widerPipe(
  solved: Solved,
  place: PipePlace,
  now: PipeFacts,
  flow: CubicMetresPerSecond,
): (OtherPipe & { readonly size: string }) | null {
  const asked = place === 'dropPipe' ? dropPipeNeed(solved) : lineNeed(solved);
  const borne = bornePressure(now, place, solved.facts);
  for (const size of sizesLike(solved, place, now)) {
    for (const other of inSize(solved, place, size)) {
      if (!meets(MOST_VELOCITY - velocityIn(flow, other.pipe.insideDiameter), 'velocity')) continue;
      // Metal is no weaker for its width; of what nobody knows the rating there is nothing to keep.
      const unrated = !isPlastic(now) || (borne === null && other.changes.length === 0);
      if (unrated || bears(place, solved, other, Math.min(asked, borne ?? asked))) return { ...other, size };
    }
  }
  return null;
}
