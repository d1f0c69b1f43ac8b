/** Which pipe to take instead: stronger, or wider. */
import { velocityIn } from '../formulas/friction.ts';
import { deratingFactor } from '../formulas/pipeStrength.ts';
import { valueAt } from '../plan/editPlan.ts';
import type { CubicMetresPerSecond, MetresPerSecond, Pascals } from '../si.ts';
import type { Change, Solved } from '../solution.ts';
import { findPipe } from '../tables/pipes.ts';
import { feet, psi, writeQuantity } from '../units.ts';
import { change, unitAt, words } from './fix.ts';
import { meets } from './grace.ts';

export const MOST_VELOCITY: MetresPerSecond = feet(5.6);

/** The weakest usual PE pipe that carries so much in this water. Other pipe is chosen by schedule: words. */
export function strongerPipe(solved: Solved, path: 'dropPipe' | 'house.line', least: Pascals, also: readonly Change[]) {
  const { facts, plan } = solved;
  const pipe = path === 'dropPipe' ? facts.dropPipe : facts.house.line;
  const otherwise = words('higherRating', {});
  if (pipe === null || pipe.material !== 'PE' || valueAt(plan, `${path}.ratio`) !== undefined) return otherwise;
  const factor = deratingFactor('PE', facts.site.waterTemperature);
  if (factor === null) return otherwise;
  for (const count of [160, 200, 250, 315]) {
    const rating = psi(count);
    const found = findPipe({
      material: 'PE',
      standard: pipe.standard,
      size: pipe.nominalSize,
      rating,
      resin: pipe.resin,
    });
    if (found === null || found.wallClass === null || !meets(rating * factor - least, 'pressure')) continue;
    const unit = unitAt(plan, `${path}.rating`, 'psi', 'pressure');
    const to = unit === 'psi' ? `${count} psi` : writeQuantity(rating, 'pressure', unit);
    return change(facts, [{ path: `${path}.rating`, to }, ...also], 'strongerPipe', { rating });
  }
  return otherwise;
}

/** The next sizes up that carry the flow, for every pipe that is too small; named by the one at `path`. */
export function widerPipes({ facts, plan }: Solved, flow: CubicMetresPerSecond, path: 'house.line' | 'dropPipe') {
  const changes: { readonly path: string; readonly to: string }[] = [];
  for (const place of ['dropPipe', 'house.line'] as const) {
    const pipe = place === 'dropPipe' ? facts.dropPipe : facts.house.line;
    if (pipe === null || meets(MOST_VELOCITY - velocityIn(flow, pipe.insideDiameter), 'velocity')) continue;
    const ratio = valueAt(plan, `${place}.ratio`);
    const size = ['1 in', '1-1/4 in', '1-1/2 in', '2 in'].find((name) => {
      const found = findPipe({
        material: pipe.material,
        standard: pipe.standard,
        size: name,
        rating: pipe.rating,
        resin: pipe.resin,
        ratio: typeof ratio === 'string' || typeof ratio === 'number' ? ratio : null,
      });
      return found !== null && meets(MOST_VELOCITY - velocityIn(flow, found.insideDiameter), 'velocity');
    });
    if (size === undefined) return words('widerOrLessFlow', {});
    changes.push({ path: `${place}.size`, to: size });
  }
  const own = changes.find((each) => each.path === `${path}.size`);
  return own === undefined ? words('widerOrLessFlow', {}) : change(facts, changes, 'widerPipe', { size: own.to });
}
